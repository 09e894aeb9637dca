import { bundlesOf, type Filling, sectionsOf } from "../../../../src/solver/yield/shelf/bundles";
import { knapsackOf } from "../../../../src/solver/yield/shelf/knapsack";
import { knapsackLists, listFillings } from "../../../../src/solver/yield/shelf/knapsack-lists";
import { tableFillings } from "../../../../src/solver/yield/shelf/knapsack-table";
import { type Shelf, takesKind } from "../../../../src/solver/yield/shelf/shelf";
import { seeded } from "../job";
import { seededShelves } from "./shelves";

/** The most worth of a stick by trying every number of every kind. */
const mostByTrial = (shelf: Shelf, stick: number, worth: readonly number[], kind = 0, room = shelf.sticks[stick]!.holds): number => {
  const { kinds } = shelf;
  const each = kinds[kind];
  if (each === undefined) return 0;
  const most = takesKind(shelf, stick, kind) ? Math.min(each.wanted, Math.floor(room / each.width)) : 0;
  let best = 0;
  for (let count = 0; count <= most; count += 1) {
    const rest = mostByTrial(shelf, stick, worth, kind + 1, room - count * each.width);
    best = Math.max(best, count * worth[kind]! + rest);
  }
  return best;
};

/** What is wrong with a filling as a way to cut a stick. */
const faultsOf = (shelf: Shelf, stick: number, worth: readonly number[], { kinds, counts, worth: held }: Filling): string[] => {
  const sum = (of: (kind: number) => number): number => kinds.reduce((total, kind, place) => total + of(kind) * counts[place]!, 0);
  return [
    ...(sum((kind) => shelf.kinds[kind]!.width) > shelf.sticks[stick]!.holds ? ["too wide"] : []),
    ...(sum((kind) => worth[kind]!) !== held ? ["not worth what it says"] : []),
    ...(kinds.some((kind, place) => counts[place]! > shelf.kinds[kind]!.wanted) ? ["more than is wanted"] : []),
    ...(kinds.some((kind) => !takesKind(shelf, stick, kind)) ? ["a piece that does not go on the stick"] : []),
  ];
};

test("200 seeded shelves: lists, the table and every filling there is hold the same", () => {
  const draw = seeded(9_101);
  for (const shelf of seededShelves(9_001, 200)) {
    const worth = shelf.kinds.map(() => draw(50));
    const wanted = shelf.kinds.map((kind) => kind.wanted);
    for (const section of sectionsOf(shelf)) {
      const bundles = bundlesOf(shelf, section, wanted);
      const most = new Float64Array(section.longest + 1);
      const taken = new Uint8Array(bundles.length * (section.longest + 1));
      const byTable = tableFillings(shelf, section, bundles, worth, { most, taken }, { left: Infinity });
      const byList = listFillings(shelf, section, bundles, worth, knapsackLists(section), { left: Infinity });
      for (const [place, stick] of section.sticks.entries()) {
        const least = mostByTrial(shelf, stick, worth);
        expect(byTable[place]!.worth).toBe(least);
        expect(faultsOf(shelf, stick, worth, byTable[place]!)).toEqual([]);
        if (byList === undefined) continue;
        expect(byList[place]!.worth).toBe(least);
        expect(faultsOf(shelf, stick, worth, byList[place]!)).toEqual([]);
      }
    }
    const fillings = knapsackOf(shelf)!.fill(worth, wanted, { left: Infinity });
    expect(fillings.map((each) => each.worth)).toEqual(shelf.sticks.map((_, stick) => mostByTrial(shelf, stick, worth)));
  }
});

// By hand: where worth is width, no sum of widths makes another needless, and sums come close to every width there is.
test("lists that grow too long give way to the table", () => {
  const kinds = Array.from({ length: 60 }, (_, kind) => ({ width: 120 - kind, wanted: 1 }));
  const stick = { section: 0, holds: 600, usable: 600, price: 1, newLength: 600, available: 9 };
  const shelf: Shelf = { kinds, sticks: [stick], takes: [kinds.map(() => true)], marks: 1, keep: 0 };
  const worth = kinds.map(({ width }) => width);
  const wanted = kinds.map(() => 1);
  const [section] = sectionsOf(shelf);
  const bundles = bundlesOf(shelf, section!, wanted);
  expect(listFillings(shelf, section!, bundles, worth, knapsackLists(section!), { left: Infinity })).toBeUndefined();
  // By hand: 120 + 119 + 118 + 117 = 474, and 65 + 61 = 126 make 600, the whole stick.
  expect(knapsackOf(shelf)!.fill(worth, wanted, { left: Infinity })[0]!.worth).toBe(600);
});
