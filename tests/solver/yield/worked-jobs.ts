import type { PlainJob } from "./job";

/** Jobs small enough to be worked by hand, for whatever claims to find the least cost. */
export interface WorkedJob {
  readonly name: string;
  readonly job: PlainJob;
  /** By hand. */
  readonly least: number;
}

const rows = (pairs: readonly (readonly [number, number])[]) => pairs.map(([length, quantity]) => ({ length, quantity }));

export const WORKED_JOBS: readonly WorkedJob[] = [
  {
    name: "4 + 3 + 3 twice: 20 of wood in two sticks of 10, where longest first takes three",
    job: {
      pieces: rows([
        [4, 2],
        [3, 4],
      ]),
      stock: [{ length: 10, cents: 100 }],
    },
    least: 200,
  },
  {
    name: "more and shorter sticks: two of 5 at 100 are cheaper than the one of 10 at 250 that also holds both pieces",
    job: {
      pieces: rows([[5, 2]]),
      stock: [
        { length: 10, cents: 250 },
        { length: 5, cents: 100 },
      ],
    },
    least: 200,
  },
  {
    name: "one stick of 5 left: 100 and 250 for the two, so the one of 10 at 250",
    job: {
      pieces: rows([[5, 2]]),
      stock: [
        { length: 10, cents: 250 },
        { length: 5, cents: 100, available: 1 },
      ],
    },
    least: 250,
  },
  {
    name: "an offcut on hand: the first 5 for nothing, the second at 100",
    job: {
      pieces: rows([[5, 2]]),
      stock: [
        { length: 10, cents: 250 },
        { length: 5, cents: 100 },
        { length: 5, available: 1, owned: true },
      ],
    },
    least: 100,
  },
  {
    name: "two rows of one length at two prices: the single cheap one, then a dear one",
    job: {
      pieces: rows([[6, 2]]),
      stock: [
        { length: 8, cents: 90 },
        { length: 8, cents: 50, available: 1 },
      ],
    },
    least: 140,
  },
  {
    name: "kerf and trim: 30 + 1/8 + 30 is just what 61 less two trims of 7/16 holds",
    job: { pieces: rows([[30, 2]]), stock: [{ length: 61, cents: 100 }], kerf: 1 / 8, trim: 7 / 16 },
    least: 100,
  },
  {
    name: "a trim a mark wider: two sticks",
    job: { pieces: rows([[30, 2]]), stock: [{ length: 61, cents: 100 }], kerf: 1 / 8, trim: 29 / 64 },
    least: 200,
  },
  {
    name: "marks: 2.49 mm is cut as 2.5 and 7.49 mm of stock as 7.4, so three pieces take two sticks",
    job: { pieces: rows([[2.49, 3]]), stock: [{ length: 7.49, cents: 100 }], unit: "mm" },
    least: 200,
  },
  {
    name: "grades apart: 50 for the clear piece, 70 for the other, though one stick of either would hold both",
    job: {
      pieces: [{ length: 3, grade: "Clear" }, { length: 4 }],
      stock: [
        { length: 8, cents: 50, grade: " clear" },
        { length: 8, cents: 70 },
      ],
    },
    least: 120,
  },
  {
    name: "prices that part the lengths: 7 and 5 in a 12 at 130; 7 in an 8 at 90 and 5 in a 6 at 50 come to 140",
    job: {
      pieces: rows([
        [7, 1],
        [5, 1],
      ]),
      stock: [
        { length: 6, cents: 50 },
        { length: 8, cents: 90 },
        { length: 12, cents: 130 },
      ],
    },
    least: 130,
  },
  {
    name: "the stock runs out: two pieces of 6 and one stick of 10",
    job: { pieces: rows([[6, 2]]), stock: [{ length: 10, cents: 100, available: 1 }] },
    least: Infinity,
  },
  {
    name: "a piece longer than any stick",
    job: {
      pieces: rows([
        [11, 1],
        [2, 1],
      ]),
      stock: [{ length: 10, cents: 100 }],
    },
    least: Infinity,
  },
];
