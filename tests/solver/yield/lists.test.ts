import { type Exact } from "../../../src/solver/length/exact";
import { measure } from "../../../src/solver/length/length";
import { buyList } from "../../../src/solver/yield/buy-list";
import { cutList } from "../../../src/solver/yield/cut-list";
import { planSummary } from "../../../src/solver/yield/plan-summary";
import { checkedPlan, cuttingJob, type PlainJob } from "./job";

const inches = (value: unknown): unknown => (typeof value === "object" ? measure(value as Exact, "in") : value);

/** Hand calculation: 96 - 1/2 trim twice = 95; two treads of 36 and one riser of 20 with three 1/8 kerfs take 92 3/8: 2 5/8 left over. */
const stair: PlainJob = {
  pieces: [{ length: 36, quantity: 2, label: "tread" }, { length: 20, quantity: 1, label: "riser" }],
  stock: [{ length: 96, cents: 2450, label: "oak 8 ft", width: 12, thickness: 1.25 }],
  kerf: 0.125,
  trim: 0.5,
  keep: 2.5,
};

describe("lists made from a plan", () => {
  test("the cut list has one row a piece: position, length, and what the stick leaves", () => {
    const rows = cutList(cuttingJob(stair), checkedPlan(stair)).map(({ stick, stock, position, label, length, leftOver }) =>
      [stick, stock, inches(position), label, inches(length), inches(leftOver)]);
    // Hand calculation: 1/2; 1/2 + 36 1/8 = 36 5/8; 36 5/8 + 36 1/8 = 72 3/4.
    expect(rows).toEqual([
      [1, "oak 8 ft", 0.5, "tread", 36, 2.625],
      [1, "oak 8 ft", 36.625, "tread", 36, 2.625],
      [1, "oak 8 ft", 72.75, "riser", 20, 2.625],
    ]);
  });

  test("goods with width and thickness are counted in board feet, pieces and sticks both", () => {
    const [row, ...others] = buyList(cuttingJob(stair), checkedPlan(stair));
    expect(others).toEqual([]);
    // Hand calculation: gross 1.25 x 12 x 96 / 144 = 10; net 1.25 x 12 x 92 / 144 = 9.58333.
    expect([row!.item, row!.quantity, row!.cost.toNumber(), row!.gross.toNumber(), row!.measuredIn]).toEqual([
      "oak 8 ft",
      1,
      24.5,
      10,
      "board feet",
    ]);
    expect(row!.net.toNumber()).toBeCloseTo(9.583333333, 9);
  });

  test("goods without a label are called by their length, and counted in length", () => {
    const plain: PlainJob = { pieces: [{ length: 40, quantity: 3 }], stock: [{ length: 96, cents: 1000 }] };
    const [row] = buyList(cuttingJob(plain), checkedPlan(plain));
    // Hand calculation: two to a stick, so two sticks: 192 in bought, 120 in used.
    expect([inches(row!.item), row!.quantity, inches(row!.net), inches(row!.gross), row!.measuredIn]).toEqual([96, 2, 120, 192, "length"]);
  });

  test("owned sticks are not goods", () => {
    const plain: PlainJob = {
      pieces: [{ length: 40, quantity: 3 }],
      stock: [
        { length: 96, cents: 1000 },
        { length: 84, owned: true, available: 1, label: "rack" },
      ],
    };
    const goods = buyList(cuttingJob(plain), checkedPlan(plain)).map((row) => [inches(row.item), row.quantity, inches(row.net)]);
    // Hand calculation: two 40s from the 84, the third from one bought 96.
    expect(goods).toEqual([[96, 1, 40]]);
  });

  test("the summary gives cost, sticks, yield, lowest possible cost, what could still be saved, verdict and ends kept", () => {
    const rows = planSummary(cuttingJob(stair), checkedPlan(stair)).map(({ label, value }) => [
      label,
      typeof value === "object" ? value.toNumber() : value,
    ]);
    // Hand calculation: yield 92 / 96; one end of 2 5/8 in = 66.675 mm is kept, as it is at least 2 1/2.
    expect(rows).toEqual([
      ["cost", 24.5],
      ["sticks", 1],
      ["yield", 92 / 96],
      ["lowest possible cost", 24.5],
      ["most still to save", 0],
      ["verdict", "best possible (proven)"],
      ["offcuts kept", 1],
      ["offcut length", 66.675],
    ]);
  });

  test("without keep no offcuts are counted, and a finer piece is told in a note", () => {
    const plain: PlainJob = { pieces: [{ length: 10.01 }], stock: [{ length: 96, cents: 1000 }] };
    expect(planSummary(cuttingJob(plain), checkedPlan(plain)).map((row) => row.label)).toEqual([
      "cost",
      "sticks",
      "yield",
      "lowest possible cost",
      "most still to save",
      "verdict",
      "note",
    ]);
  });
});
