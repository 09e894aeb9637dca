import fc from "fast-check";
import { lengthOf } from "../../../../src/solver/length/length";
import { isProblem } from "../../../../src/solver/problem";
import { gradeAllowance } from "../../../../src/solver/yield/tally/grade-allowance";
import { lumberOrder, type OrderAllowance, type OrderPiece } from "../../../../src/solver/yield/tally/lumber-order";
import { roughName } from "./board";

const piece = (quantity: number, length: number, width: number, thickness: number, grade: string, species = ""): OrderPiece => ({
  name: "piece", quantity, grade, species,
  length: lengthOf(length, "in"), width: lengthOf(width, "in"), thickness: lengthOf(thickness, "in"),
});
const allowance = (item: string, share: number, least?: number): OrderAllowance => ({
  item, allowance: share, row: 1, ...(least === undefined ? {} : { least }),
});

const ordered = (pieces: readonly OrderPiece[], allowances: readonly OrderAllowance[] = []) => {
  const rows = lumberOrder(pieces, allowances, "exact");
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};
const quantities = (pieces: readonly OrderPiece[], allowances?: readonly OrderAllowance[]) =>
  ordered(pieces, allowances).map(({ item, quantity }) => [item, quantity.toNumber()]);

const JOB = [piece(13, 40, 7.25, 0.75, "1C"), piece(2, 132, 9.25, 0.75, "FAS"), piece(13, 43, 11.5, 1, "FAS")];

describe("an order of risers, skirts and treads", () => {
  // By hand: 13 x 40 x 7.25 / 144 = 26.181; 2 x 132 x 9.25 / 144 = 16.958; 13 x 43 x 11.5 x 1.25 / 144 = 55.803.
  test("with 30, 15 and 15 % added: 34.03, 19.50, 64.17, each up to the next whole", () => {
    const own = [allowance("1C", 0.3), allowance("4/4 FAS", 0.15), allowance("5/4 FAS", 0.15)];
    expect(quantities(JOB, own)).toEqual([["4/4 1C", 35], ["4/4 FAS", 20], ["5/4 FAS", 65]]);
  });

  test("with what the grades' least clear faces leave: 39.27, 20.35, 66.96", () => {
    expect(quantities(JOB)).toEqual([["4/4 1C", 40], ["4/4 FAS", 21], ["5/4 FAS", 67]]);
  });
});

describe("thickness", () => {
  // Hardwood thickness table: 4/4 dresses to 13/16, 5/4 to 1 1/16, 8/4 to 1 3/4; 6/4 to 1 5/16, 10/4 to 2 1/4, 12/4 to 2 3/4 from memory.
  test.each([
    [0.75, "4/4"], [0.8125, "4/4"], [0.8126, "5/4"], [1, "5/4"], [1.0625, "5/4"], [1.25, "6/4"], [1.5, "8/4"], [1.75, "8/4"], [2, "10/4"],
    [2.75, "12/4"], [2.8, undefined],
  ])("%s in comes from %s", (finished, rough) => {
    expect(roughName(finished)).toBe(rough);
  });
});

describe("allowance", () => {
  // Purdue University, Cassens 2016, after the NHLA Rules: the least clear face is 83 1/3, 66 2/3 and 50 %. By hand: 1 / (5/6) = 1.2;
  // 1 / (2/3) = 1.5; 1 / (1/2) = 2.
  test.each([
    ["FAS", 0.2], ["F1F", 0.2], ["Selects", 0.2], ["No. 1 Common", 0.5], ["1C", 0.5], ["No. 2A Common", 1], ["2A", 1],
  ])("of %s", (grade, share) => {
    expect(gradeAllowance(grade)?.allowance.toNumber()).toBe(share);
  });

  test("what says most of a row counts: thickness, grade and species before thickness and grade before grade", () => {
    const pieces = [piece(1, 144, 12, 0.75, "FAS", "red oak")];
    const all = [allowance("4/4 FAS red oak", 0.4), allowance("4/4 FAS", 0.3), allowance("FAS red oak", 0.25), allowance("fas", 0.1)];
    // By hand: 12 board feet and 40, 30, 25 or 10 % of it: 16.8, 15.6, 15, 13.2.
    expect([0, 1, 2, 3].map((from) => quantities(pieces, all.slice(from))[0]?.[1])).toEqual([17, 16, 15, 14]);
    expect(quantities(pieces, [allowance("5/4 FAS", 9), allowance("FAS ash", 9)])[0]?.[1]).toBe(15);
  });

  test("the least sold counts where it is more, up to the next whole", () => {
    const pieces = [piece(1, 144, 12, 0.75, "FAS")];
    expect(quantities(pieces, [allowance("FAS", 0, 12.5)])).toEqual([["4/4 FAS", 13]]);
    expect(quantities(pieces, [allowance("FAS", 0, 11)])).toEqual([["4/4 FAS", 12]]);
  });

  test("a third of a share leaves no dust: 3 x 1/3 of a board foot is 1, not 2", () => {
    expect(quantities([piece(3, 8, 6, 0.75, "x")], [allowance("x", 0)])).toEqual([["4/4 x", 1]]);
  });

  test.each([
    // By hand: 64 x 2 x 1.25 x 5 / 144 = 5 5/9, times 1.8 = 10; 9 x 2/3 more = 15.
    ["80 % on 5 5/9 board feet", piece(5, 64, 2, 1, "x"), 0.8, 10],
    ["two thirds on 9 board feet", piece(9, 12, 12, 0.75, "x"), 2 / 3, 15],
  ])("nor does %s", (_case, one, share, quantity) => {
    expect(quantities([one], [allowance("x", share)])[0]?.[1]).toBe(quantity);
  });
});

const BARE = { name: "a", quantity: 1, grade: "FAS", species: "", length: lengthOf(9, "in") };

test.each<[string, OrderPiece, readonly OrderAllowance[]]>([
  ["piece-without-width", { ...BARE, thickness: lengthOf(1, "in") }, []],
  ["piece-without-thickness", { ...BARE, width: lengthOf(1, "in") }, []],
  ["piece-without-grade", piece(1, 9, 9, 1, ""), []],
  ["too-thick", piece(1, 9, 3, 3, "FAS"), []],
  ["no-allowance", piece(1, 9, 9, 1, "prime"), [allowance("4/4 prime", 0.1)]],
  ["two-allowances", piece(1, 9, 9, 1, "FAS"), [allowance("FAS", 0.1), allowance("fas", 0.2)]],
])("refused: %s", (problem, one, allowances) => {
  expect(lumberOrder([one], allowances, "exact")).toMatchObject({ problem });
});

const anyPiece = fc
  .tuple(
    fc.integer({ min: 1, max: 9 }), fc.integer({ min: 6, max: 144 }), fc.integer({ min: 2, max: 14 }),
    fc.constantFrom(0.75, 1, 1.25), fc.constantFrom("FAS", "1C", "2A"),
  )
  .map((all) => piece(...all));
const jobs = fc.array(anyPiece, { minLength: 1, maxLength: 12 });
const sorted = (rows: ReturnType<typeof quantities>) => [...rows].sort((one, other) => String(one[0]).localeCompare(String(other[0])));

describe("laws", () => {
  test("rows in another order, and like pieces in rows of one, order the same", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const single = [...job].reverse().flatMap((one) => Array.from({ length: one.quantity }, () => ({ ...one, quantity: 1 })));
        expect(sorted(quantities(single))).toEqual(sorted(quantities(job)));
      }),
    );
  });

  test("never less than the net, and less than a board foot more than net and allowance", () => {
    fc.assert(
      fc.property(jobs, fc.integer({ min: 0, max: 100 }), (job, percent) => {
        const own = ["FAS", "1C", "2A"].map((grade) => allowance(grade, percent / 100));
        for (const { quantity, net } of ordered(job, own)) {
          const needed = (net.toNumber() * (100 + percent)) / 100;
          expect(quantity.toNumber()).toBeGreaterThanOrEqual(needed - 1e-9);
          expect(quantity.toNumber()).toBeLessThan(needed + 1);
        }
      }),
    );
  });
});
