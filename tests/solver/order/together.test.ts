import fc from "fast-check";
import { resolvedStair } from "../../../src/solver/layout/resolved-stair";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { exact } from "../../../src/solver/length/exact";
import { type Length, lengthOf } from "../../../src/solver/length/length";
import { blankList } from "../../../src/solver/order/blank-list";
import { blankOrder } from "../../../src/solver/order/blank-order";
import type { BlankStock } from "../../../src/solver/order/blank-stock";
import { isProblem } from "../../../src/solver/problem";

const inches = (value: number): Length => lengthOf(value, "in");

const board = (label: string, length: number, width: number, price: number, more: Partial<BlankStock> = {}): BlankStock => ({
  label, length: inches(length), width: inches(width), thickness: inches(1), price: exact(price), available: Infinity, owned: false,
  ...more,
});

/** So many treads 36 x 11 1/4, and a landing nosing 36 x 2 (1 1/4 + 3/4), all an inch thick; risers have no stock here. */
const savings = (treads: number, stock: readonly BlankStock[], facts: StairFacts = {}): readonly string[] => {
  const stair = resolvedStair({ totalRise: inches(7 * (treads + 1)), risers: treads + 1, run: inches(10), width: inches(36), ...facts });
  if (isProblem(stair)) throw new Error(stair.problem);
  const blanks = blankList(stair, undefined, "in");
  if (isProblem(blanks)) throw new Error(blanks.problem);
  const rows = blankOrder(blanks, stock, "in");
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows.flatMap(({ item, note = "" }) => (item === "saving" ? [note] : []));
};

const OAK = board("oak 36", 36, 11.5, 48);
const NOSING = board("oak nosing", 36, 3.5, 20);

// By hand: a tread, a cut and a nosing are 11 1/4 + 1/8 + 2 = 13 3/8 wide. 48 + 55 = 103 against 2 x 48 + 20 = 116.
const WIDE =
  "2 x tread and 1 x landing nosing together from 1 of oak 36 and 1 of wide: 103.00, 13.00 less than as ordered above, the least there " +
  "is; SHEETCUTS plans them; a cut takes 1/8 in (3.175 mm)";

test("kinds of one thickness side by side on a wider board are told where they cost less, with the boards, the money and how", () => {
  expect(savings(2, [OAK, NOSING, board("wide", 36, 14, 55)])).toEqual([WIDE]);
  expect(savings(2, [OAK, NOSING, board("wide", 36, 13.375, 55)])).toEqual([WIDE]);
});

test("and not where the board is a 64th too narrow, too thin, costs as much, or is not to be had", () => {
  for (const wide of [
    board("wide", 36, 13.375 - 1 / 64, 55), board("wide", 36, 14, 55, { thickness: inches(0.75) }), board("wide", 36, 14, 68),
    board("wide", 36, 14, 55, { available: 0 }),
  ]) expect(savings(2, [OAK, NOSING, wide])).toEqual([]);
  expect(savings(2, [OAK, NOSING, board("wide", 36, 14, 67.99)])).toEqual([expect.stringContaining(": 115.99, 0.01 less than")]);
});

test("a saving of one kind above is taken into account, and what it uses is free again", () => {
  // By hand: two treads and a cut, 72 1/8, out of one board 8 ft: 80 against 2 x 48, and a nosing 20. One 14 wide holds both treads and the
  // nosing beside one of them: 90.
  expect(savings(2, [OAK, NOSING, board("long", 96, 11.5, 80), board("long and wide", 96, 14, 90)])).toEqual([
    expect.stringMatching(/^2 x tread from 1 of long: 80.00, 16.00 less, the least there is/),
    expect.stringMatching(
      /^2 x tread and 1 x landing nosing together from 1 of long and wide: 90.00, 10.00 less than with the savings above, the least/,
    ),
  ]);
});

test("a board without a label is told by its length and width", () => {
  expect(savings(2, [OAK, NOSING, board("", 36, 14, 55)])).toEqual([
    expect.stringContaining("from 1 of oak 36 and 1 of the board of 36 in x 14 in: 103.00"),
  ]);
});

/** Boards by length, width and price. */
type Boards = readonly (readonly [length: number, width: number, price: number])[];

const sectionsOf = (length: number): number => Math.floor((length + 0.125) / 36.125);

/** The least that so many of one kind cost by themselves, one piece across a board, one board more at a time. */
const alone = (wanted: number, boards: Boards): number => {
  const least = Array.from({ length: wanted + 1 }, () => Infinity);
  least[0] = 0;
  for (let count = 1; count <= wanted; count += 1)
    for (const [length, , price] of boards)
      least[count] = Math.min(least[count]!, price + least[Math.max(0, count - sectionsOf(length))]!);
  return least[wanted]!;
};

/** The least that so many treads and one nosing cost: the nosing is on a board of its own, or beside treads. */
const together = (treads: number, boards: Boards): number =>
  Math.min(...boards.map(([length, width, price]) => {
    // on this board lies the nosing: beside a tread where it is wide enough, else in a section of its own
    const given = width >= 11.25 + 0.125 + 2 ? sectionsOf(length) : sectionsOf(length) - 1;
    return price + alone(Math.max(0, treads - given), boards);
  }));

test("the cheapest of all ways to buy boards for both kinds, tried one by one", () => {
  const size = fc.tuple(fc.integer({ min: 36, max: 110 }), fc.integer({ min: 46, max: 64 }), fc.integer({ min: 20, max: 150 }));
  const sizes = fc.array(size, { maxLength: 3 });
  let told = 0;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 20, max: 90 }), sizes, (treads, price, others) => {
      const boards = [[36, 46, price] as const, ...others].map(([length, quarters, cost]) => [length, quarters / 4, cost] as const);
      const notes = savings(treads, boards.map(([length, width, cost], at) => board(`board ${at}`, length, width, cost)));
      const said = notes.flatMap((note) => (note.includes("together") ? [Number(/: ([0-9.]+),/.exec(note)![1])] : []));
      const least = together(treads, boards);
      expect(said).toEqual(least < alone(treads, boards) + alone(1, boards) ? [least] : []);
      told += said.length;
    }),
    { seed: 8_141, numRuns: 200 },
  );
  expect(told).toBeGreaterThan(20);
});
