import { isProblem } from "../../../src/solver/problem";
import { buyList } from "../../../src/solver/yield/buy-list";
import { cuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { measure } from "../../../src/solver/length/length";
import { unproven } from "./certificate-checker";
import { everyPlan } from "./every-plan";
import { cents, checkedPlan, cuttingJob, type PlainJob } from "./job";
import { faults } from "./plan-checker";
import { TINY_COUNT } from "./tiny-count";
import { tinySectionJobs } from "./tiny-jobs";

const problemOf = (plain: PlainJob): { problem: string; details: Readonly<Record<string, unknown>> } => {
  const plan = cuttingPlan(cuttingJob(plain));
  if (!isProblem(plan)) throw new Error(plan.verdict);
  return plan;
};

const inches = (value: unknown): number => measure(value as Parameters<typeof measure>[0], "in");

const testTime = 300_000;

test(`${TINY_COUNT} tiny seeded jobs with widths: the solver and every plan there is come to one least cost, proven`, () => {
  let solvable = 0;
  let joint = 0;
  for (const [number, plain] of tinySectionJobs(31_001, TINY_COUNT).entries()) {
    const job = cuttingJob(plain);
    const plan = cuttingPlan(job);
    const least = everyPlan(plain);
    expect({ number, solver: isProblem(plan) ? Infinity : cents(plan.cost) }).toEqual({ number, solver: least?.cents ?? Infinity });
    if (isProblem(plan)) continue;
    solvable += 1;
    if (plan.proofs.some(({ stockRows }) => new Set(stockRows.flat().map((row) => `${plain.stock[row]!.width}`)).size > 1)) joint += 1;
    expect([number, plan.verdict.startsWith("best possible"), faults(job, plan), unproven(job, plan)]).toEqual([number, true, [], []]);
  }
  // counted, so that the test cannot pass by meeting no job that can be cut, or none in which widths meet
  expect(solvable).toBeGreaterThan(TINY_COUNT / 3);
  expect(joint).toBeGreaterThan(TINY_COUNT / 10);
}, testTime);

describe("one piece across the board", () => {
  const tread = { length: 38, quantity: 2, width: 11.25, label: "tread" };
  const narrow = { length: 96, cents: 1800, width: 7.25, label: "poplar" };
  const wide = { length: 96, cents: 4800, width: 11.5, label: "oak" };

  test("an 11 1/4 in tread does not come out of a 7 1/4 in board", () => {
    const { problem, details } = problemOf({ pieces: [tread], stock: [narrow] });
    expect([problem, details["piece"], inches(details["width"]), inches(details["widest"])]).toEqual([
      "piece-too-wide",
      "tread",
      11.25,
      7.25,
    ]);
    const plan = checkedPlan({ pieces: [tread], stock: [narrow, wide] });
    expect([cents(plan.cost), plan.sticks.map(({ stock }) => stock)]).toEqual([4800, [1]]);
  });

  test("nor a 1 1/4 in tread out of a 1 in board, nor one out of a wide thin board and a thick narrow one", () => {
    const thick = { ...tread, thickness: 1.25 };
    const { problem, details } = problemOf({ pieces: [thick], stock: [{ ...wide, thickness: 1 }] });
    expect([problem, inches(details["thickness"]), inches(details["thickest"])]).toEqual(["piece-too-thick", 1.25, 1]);
    expect(
      problemOf({
        pieces: [thick],
        stock: [
          { ...wide, thickness: 1 },
          { ...narrow, thickness: 1.5 },
        ],
      }).problem,
    ).toBe("piece-fits-no-section");
  });

  test("an exact fit fits, and as long as a sixty-fourth is missing it does not", () => {
    expect(cents(checkedPlan({ pieces: [{ ...tread, width: 11.5 }], stock: [wide] }).cost)).toBe(4800);
    expect(problemOf({ pieces: [{ ...tread, width: 11.515625 }], stock: [wide] }).problem).toBe("piece-too-wide");
  });

  test("stock whose width nobody gave is refused by name where a piece has one, and may stand in another grade", () => {
    const { width: _, ...unknown } = narrow;
    const { problem, details } = problemOf({ pieces: [tread], stock: [wide, unknown] });
    expect([problem, details["stock"], details["piece"]]).toEqual(["stock-without-width", "poplar", "tread"]);
    expect(cents(checkedPlan({ pieces: [tread], stock: [wide, { ...unknown, grade: "paint" }] }).cost)).toBe(4800);
    expect(cents(checkedPlan({ pieces: [tread], stock: [wide, { ...unknown, available: 0 }] }).cost)).toBe(4800);
    expect(cents(checkedPlan({ pieces: [{ length: 38, quantity: 2 }], stock: [unknown] }).cost)).toBe(1800);
  });

  test("a stick long enough but too narrow is no help: the longest that is wide enough is named", () => {
    const { problem, details } = problemOf({ pieces: [{ ...tread, length: 120 }], stock: [{ ...narrow, length: 144 }, wide] });
    expect([problem, inches(details["longest"])]).toEqual(["piece-fits-no-stock-of-section", 96]);
  });

  test("a wider board serves a narrower piece where that costs less, and only there", () => {
    // By hand: the oak holds two treads of 38 and has 19 1/2 left after two kerfs of 1/4, which holds a riser of 19; the poplar is not
    // bought.
    const riser = { length: 19, width: 6.875, label: "riser" };
    const plan = checkedPlan({ pieces: [tread, riser], stock: [narrow, wide], kerf: 0.25 });
    expect([cents(plan.cost), plan.verdict]).toEqual([4800, "best possible (proven)"]);
    // By hand: a riser of 20 does not fit there: 48.00 + 18.00, where a second oak would make it 96.00.
    expect(cents(checkedPlan({ pieces: [tread, { ...riser, length: 20 }], stock: [narrow, wide], kerf: 0.25 }).cost)).toBe(6600);
  });

  test("what no board has in common is planned apart, each with its own proof", () => {
    const rail = { length: 90, width: 2.25, thickness: 2.5, label: "rail" };
    const stock = [{ ...wide, thickness: 1 }, { length: 96, cents: 5000, width: 2.25, thickness: 2.5 }];
    const plan = checkedPlan({ pieces: [{ ...tread, thickness: 1 }, rail], stock });
    expect([plan.proofs.length, cents(plan.cost), plan.verdict]).toEqual([2, 9800, "best possible (proven)"]);
  });

  test("a piece without a width takes any board", () => {
    // By hand: two of 38 and a tread of 19 1/2 fit the oak with kerfs of 1/4: 96 exactly.
    const plan = checkedPlan({ pieces: [{ length: 38, quantity: 2 }, { length: 19.5, width: 11 }], stock: [narrow, wide], kerf: 0.25 });
    expect(cents(plan.cost)).toBe(4800);
  });

  test("the plan says what has to be planed", () => {
    const stock = [{ ...wide, thickness: 1 }];
    const notes = (width: number, thickness: number) =>
      checkedPlan({ pieces: [{ length: 20, quantity: 3, width, thickness }], stock, kerf: 0.125 }).notes;
    expect(notes(11.25, 1)).toEqual([]);
    expect(notes(11.25, 0.75)).toEqual(["pieces cut from thicker stock and planed down: 3"]);
  });

  test("board feet in pieces go by the piece's own width and thickness, in boards by the board's", () => {
    const plain: PlainJob = {
      pieces: [{ length: 36, quantity: 2, width: 10, thickness: 1 }, { length: 20 }],
      stock: [{ length: 96, cents: 2450, width: 12, thickness: 1.25 }],
    };
    const [row] = buyList(cuttingJob(plain), checkedPlan(plain));
    // By hand: 2 x 1 x 10 x 36 / 144 = 5, and 1.25 x 12 x 20 / 144 = 2.08333 for the piece that takes its board's; bought 10.
    expect(row!.net.toNumber()).toBeCloseTo(7.083333333, 9);
    expect(row!.gross.toNumber()).toBe(10);
  });
});

describe("laws of width", () => {
  const jobs = tinySectionJobs(32_001, 60).filter((plain) => everyPlan(plain) !== undefined);
  const costOf = (plain: PlainJob): number => cents(checkedPlan(plain).cost);

  test("pieces without width and thickness, or stock an inch wider and thicker, never cost more", () => {
    for (const plain of jobs) {
      const cost = costOf(plain);
      expect(
        costOf({
          ...plain,
          pieces: plain.pieces.map(({ length, quantity }) => ({ length, ...(quantity === undefined ? {} : { quantity }) })),
        }),
      ).toBeLessThanOrEqual(cost);
      expect(
        costOf({ ...plain, stock: plain.stock.map((stock) => ({ ...stock, width: stock.width! + 1, thickness: stock.thickness! + 1 })) }),
      ).toBeLessThanOrEqual(cost);
    }
  });

  test("the order of rows changes nothing, nor does one width for all that all stock has", () => {
    for (const plain of jobs) {
      expect(costOf({ ...plain, pieces: [...plain.pieces].reverse(), stock: [...plain.stock].reverse() })).toBe(costOf(plain));
      const bare = {
        ...plain,
        pieces: plain.pieces.map(({ length, quantity }) => ({ length, ...(quantity === undefined ? {} : { quantity }) })),
      };
      const alike = { ...bare, pieces: bare.pieces.map((piece) => ({ ...piece, width: 3, thickness: 1 })) };
      expect(costOf(alike)).toBe(costOf(bare));
    }
  });
});
