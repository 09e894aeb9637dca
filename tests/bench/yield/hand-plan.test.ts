import { cuttingJob, type PlainJob } from "../../solver/yield/job";
import { handCost } from "./hand-plan";

const rows = (pairs: readonly (readonly [number, number])[]) => pairs.map(([length, quantity]) => ({ length, quantity }));

describe("the hand plan", () => {
  test.each<[string, PlainJob, number]>([
    [
      "4 + 4, 3 + 3 + 3 and a 3 left: three sticks where two would do",
      {
        pieces: rows([
          [4, 2],
          [3, 4],
        ]),
        stock: [{ length: 10, cents: 100 }],
      },
      300,
    ],
    [
      "10s opened: 6 + 4 and 5 + 3, so 200; 6s opened: four of them, 280",
      {
        pieces: rows([
          [6, 1],
          [5, 1],
          [4, 1],
          [3, 1],
        ]),
        stock: [
          { length: 10, cents: 100 },
          { length: 6, cents: 70 },
        ],
      },
      200,
    ],
    [
      "10s opened: 6 + 3 and 5, and the second changed for a 6: 170; 6s opened: three of them, 210",
      {
        pieces: rows([
          [6, 1],
          [5, 1],
          [3, 1],
        ]),
        stock: [
          { length: 10, cents: 100 },
          { length: 6, cents: 70 },
        ],
      },
      170,
    ],
    [
      "the 6s opened are the cheaper try: 6 and 6 at 40 each, where the 10s changed come to the same; a 9 has to have a 10 at 100",
      {
        pieces: rows([
          [9, 1],
          [6, 2],
        ]),
        stock: [
          { length: 10, cents: 100 },
          { length: 6, cents: 40 },
        ],
      },
      180,
    ],
    [
      "5 + 5 from a 10 at 100 and the third from the only offcut",
      {
        pieces: rows([[5, 3]]),
        stock: [
          { length: 10, cents: 100 },
          { length: 5, available: 1, owned: true },
        ],
      },
      100,
    ],
    [
      "two offcuts for two lone pieces of 6; the third has to be bought",
      {
        pieces: rows([[6, 3]]),
        stock: [
          { length: 10, cents: 100 },
          { length: 7, available: 2, owned: true },
        ],
      },
      100,
    ],
    [
      "kerf and trim: 30 + 1/8 + 30 is just what 61 less two trims of 7/16 holds",
      { pieces: rows([[30, 2]]), stock: [{ length: 61, cents: 100 }], kerf: 1 / 8, trim: 7 / 16 },
      100,
    ],
    ["a trim a mark wider: two sticks", { pieces: rows([[30, 2]]), stock: [{ length: 61, cents: 100 }], kerf: 1 / 8, trim: 29 / 64 }, 200],
    [
      "grades apart: 50 and 70",
      {
        pieces: [{ length: 3, grade: "Clear" }, { length: 4 }],
        stock: [
          { length: 8, cents: 50, grade: "clear" },
          { length: 8, cents: 70 },
        ],
      },
      120,
    ],
    [
      "one stick of 10 for two pieces of 6: no plan",
      { pieces: rows([[6, 2]]), stock: [{ length: 10, cents: 100, available: 1 }] },
      Infinity,
    ],
  ])("by hand, %s", (_, job, cents) => {
    expect(handCost(cuttingJob(job))).toBe(cents);
  });
});
