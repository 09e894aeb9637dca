import { distance } from "fastest-levenshtein";
import * as fc from "fast-check";
import { nearNames, suspectNote } from "../../../src/solver/goods/near-names";

const find = (...items: readonly string[]) => nearNames(items.map((item, index) => ({ item, row: index + 1 })));

/** Each name with the one it is suspected to be. */
const suspects = (...items: readonly string[]): readonly (string | undefined)[] => {
  const near = find(...items);
  return items.map((item) => near(item)?.item as string | undefined);
};

test.each([
  // One slip: a letter more, less, another, or two that changed places.
  ["cove", "coven"], ["cape", "cap"], ["cape", "cope"], ["oak blank", "oak blnak"],
  // Two from nine letters on.
  ["oak blank x", "oka blnak x"], ["white oak board", "wite oak bord"],
  // Numbers alike, in the same order.
  ["poplar 16 ft", "popplar 16 ft"], ["2 x 4 stud", "2 x 4 studs"],
  // Only marks differ.
  ["oak 4/4", "oak 44"], ["oak 1 1/4", "oak 11/4"], ["A", "A-"],
])("%s may be %s, and the other way round", (one, other) => expect(suspects(one, other)).toEqual([other, one]));

test.each([
  ["poplar 16 ft", "poplar 10 ft"],
  ["2 x 4", "4 x 2"],
  ["oak", "ash"],
  ["MD", "HD"],
  ["oak blank", "oak plenk"],
  ["left skirt", "right skirt"],
  // The same name, and two items of a takeoff that differ by two letters.
  ["Oak Blank", "oakblank"],
  ["tread without return", "tread with one return"],
])("%s is never suspected to be %s", (one, other) => expect(suspects(one, other)).toEqual([undefined, undefined]));

test("the note names the first of its kind, with its row and the table", () => {
  expect(suspectNote(find("oak", "elm blank", "oak blank", "oak blnak")("oak blnak"))).toBe('like "oak blank" in row 3: same goods?');
  expect(suspectNote({ item: "oak", row: 2, table: "bought" })).toBe('like "oak" in row 2 of bought: same goods?');
  expect(suspectNote(undefined)).toBe("");
});

/** Whether letters alone differ by at most so many slips; an exchange of neighbours is one. */
const isWithin = (slips: number, one: string, other: string): boolean => {
  if (distance(one, other) <= slips) return true;
  if (slips === 0) return false;
  return Array.from(
    { length: Math.max(0, one.length - 1) },
    (_, at) => one.slice(0, at) + (one[at + 1] ?? "") + (one[at] ?? "") + one.slice(at + 2),
  ).some((exchanged) => isWithin(slips - 1, exchanged, other));
};

test("the index finds just the names that comparing all pairs finds", () => {
  const name = fc.tuple(
    fc.string({ unit: fc.constantFrom("a", "b", "c"), minLength: 1, maxLength: 12 }),
    fc.constantFrom("", " 4", " 4/4"),
  );
  fc.assert(
    fc.property(fc.uniqueArray(name.map((parts) => parts.join("")), { minLength: 2, maxLength: 8 }), (names) => {
      const near = find(...names);
      const letters = (text: string): string => text.replace(/[^a-c]/g, "");
      const numbers = (text: string): string => text.replace(/[^4]/g, " ").trim();
      const isSuspect = (one: string, other: string): boolean => {
        const [short, long] = [letters(one), letters(other)].sort((a, b) => a.length - b.length) as [string, string];
        // Fewer than three letters are not compared, nine allow two slips.
        return one !== other && numbers(one) === numbers(other) && short.length >= 3 && isWithin(short.length >= 9 ? 2 : 1, short, long);
      };
      for (const one of names) {
        const found = near(one)?.item as string | undefined;
        const isAlike = (other: string): boolean => other !== one && other.replace(/[^a-c4]/g, "") === one.replace(/[^a-c4]/g, "");
        expect(found !== undefined).toBe(names.some((other) => isSuspect(one, other) || isAlike(other)));
        if (found !== undefined) expect(isSuspect(one, found) || isAlike(found)).toBe(true);
      }
    }),
  );
});
