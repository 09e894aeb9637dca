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

const LETTERS = ["a", "b", "c"];

/** Every word that one slip makes of a word, and itself: a letter out, in or another, or two neighbours exchanged. */
const oneSlipFrom = (word: string): readonly string[] => [
  word,
  ...Array.from({ length: word.length + 1 }, (_, at) => [word.slice(0, at), word.slice(at)] as const).flatMap(([before, after]) => [
    before + after.slice(1),
    before + after.slice(1, 2) + after.slice(0, 1) + after.slice(2),
    ...LETTERS.flatMap((letter) => [before + letter + after, before + letter + after.slice(1)]),
  ]),
];

/** Two slips part two words where one slip makes one word of both: each can be undone. */
const isWithin = (slips: number, one: string, other: string): boolean => {
  if (slips === 1) return oneSlipFrom(one).includes(other);
  const near = new Set(oneSlipFrom(one));
  return oneSlipFrom(other).some((word) => near.has(word));
};

test("the index finds just the names that comparing all pairs finds", () => {
  const word = fc.string({ unit: fc.constantFrom(...LETTERS), minLength: 1, maxLength: 12 });
  const slip = fc.nat().map((place) => (from: string): string => {
    const all = oneSlipFrom(from).filter((made) => made !== "");
    return all[place % all.length] ?? from;
  });
  // Names of chance are seldom near: each second one is another with up to three slips.
  const pair = fc.tuple(word, fc.array(slip, { maxLength: 3 })).map(([one, slips]) => [one, slips.reduce((from, next) => next(from), one)]);
  const marked = fc.tuple(pair, fc.constantFrom("", " 4", " 4/4")).map(([words, mark]) => words.map((each) => each + mark));
  const names = fc.array(marked, { minLength: 1, maxLength: 4 }).map((pairs) => [...new Set(pairs.flat())]);
  fc.assert(
    fc.property(names, (names) => {
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
