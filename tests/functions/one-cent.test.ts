import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";

/**
 * One amount in every function that turns a price into a cost. By hand: 3 x 38.005 = 114.015, half a cent away from zero 114.02; 1 x 38.005
 * is 38.01, and three such rows are 114.03: two different papers.
 */
const PRICE = 38.005;
const ONE_ROW = 114.02;
const EACH_OF_THREE = 38.01;
const THREE_ROWS = 114.03;

type Cells = readonly (readonly (string | number)[])[];

const answered = (id: string, ...given: readonly unknown[]): Cells => {
  const declaration = catalogue.find((each) => each.id === id);
  if (declaration === undefined) throw new Error(id);
  const answer = call(declaration, given);
  if (!Array.isArray(answer)) throw new Error(`${id}: ${isFailed(answer) ? answer.says : String(answer)}`);
  return answer as Cells;
};

/** The cells under a heading, without the rows labelled total. */
const under = (heading: string, [headings = [], ...rows]: Cells): number[] =>
  rows.filter(([label]) => label !== "total").map((row) => row[headings.indexOf(heading)] as number);

const sum = (amounts: readonly number[]): number => Math.round(amounts.reduce((all, each) => all + each, 0) * 100) / 100;

/** A length a stick holds one of, so that three pieces take three sticks. */
const PIECES = [["length", "quantity"], [60, 3]];
const STICK = 96;
const oneStick: Cells = [["label", "length", "price", "available"], ["oak", STICK, PRICE, 3]];
const threeSticks: Cells = [
  ["label", "length", "price", "available"],
  ["oak a", STICK, PRICE, 1],
  ["oak b", STICK, PRICE, 1],
  ["oak c", STICK, PRICE, 1],
];

/** Three treads of 38 x 11 1/4 x 1 under a floor; blanks of one row, or of three. */
const STAIR = [["total rise", 30], ["risers", 4], ["run", 10], ["width", 38], ["landing nosing", "no"]];
const BLANK_HEADINGS = ["label", "length", "width", "thickness", "price", "available"];
const oneBlank = [BLANK_HEADINGS, ["oak", 42, 11.5, 1, PRICE, 3]];
const threeBlanks = [BLANK_HEADINGS, ...["oak a", "oak b", "oak c"].map((label) => [label, 42, 11.5, 1, PRICE, 1])];
const bought = (cells: Cells): number[] => under("cost", cells).filter((cost) => typeof cost === "number");

const goods = (rows: readonly (readonly (string | number)[])[]): Cells => [["item", "quantity", "unit"], ...rows];
const prices: Cells = [["item", "price", "unit"], ["oak", PRICE, "each"]];

/** The direct cost of a bid without terms. */
const direct = (costs: Cells): unknown => answered("BID", costs, [["burden", 0]]).find(([label]) => label === "direct")?.[1];

describe("three boards at 38.005", () => {
  test("EXTEND", () => {
    expect(under("cost", answered("EXTEND", goods([["oak", 3, "each"]]), prices))).toEqual([ONE_ROW]);
    const three = under("cost", answered("EXTEND", goods([["oak", 1, "each"], ["oak", 1, "each"], ["oak", 1, "each"]]), prices));
    expect([three, sum(three)]).toEqual([[EACH_OF_THREE, EACH_OF_THREE, EACH_OF_THREE], THREE_ROWS]);
  });

  test("BUY", () => {
    expect(under("cost", answered("BUY", PIECES, oneStick))).toEqual([ONE_ROW]);
    const three = under("cost", answered("BUY", PIECES, threeSticks));
    expect([three, sum(three)]).toEqual([[EACH_OF_THREE, EACH_OF_THREE, EACH_OF_THREE], THREE_ROWS]);
  });

  test("PLAN costs what BUY's rows come to, and is judged by the prices as they stand", () => {
    for (const [stock, cost] of [[oneStick, ONE_ROW], [threeSticks, THREE_ROWS]] as const) {
      const plan = new Map(answered("PLAN", PIECES, stock).map(([label, value]) => [label, value]));
      expect(plan.get("cost")).toBe(cost);
      // By hand: three sticks are needed and cost 114.015 as they are priced.
      expect([plan.get("lowest possible cost"), plan.get("most still to save"), plan.get("verdict")]).toEqual([
        114.015,
        0,
        "best possible (proven)",
      ]);
    }
  });

  test("RECONCILE", () => {
    const priced = (count: number, quantity: number): Cells => [
      ["item", "quantity", "unit", "price"],
      ...Array.from({ length: count }, () => ["oak", quantity, "each", PRICE]),
    ];
    const used = goods([["oak", 3, "each"]]);
    for (const [rows, money] of [[priced(1, 3), ONE_ROW], [priced(3, 1), THREE_ROWS]] as const) {
      const answer = answered("RECONCILE", rows, rows, used);
      expect([under("planned cost", answer), under("spent", answer)]).toEqual([[money], [money]]);
    }
  });

  test("BID, from a row typed and from EXTEND", () => {
    expect(direct([["item", "cost"], ["oak", 3 * PRICE]])).toBe(ONE_ROW);
    expect(direct([["item", "cost"], ["oak", PRICE], ["oak", PRICE], ["oak", PRICE]])).toBe(THREE_ROWS);
    expect(direct(answered("EXTEND", goods([["oak", 3, "each"]]), prices))).toBe(ONE_ROW);
  });

  test("STOCKLEDGER and MONTHCLOSE", () => {
    const paper = (count: number, quantity: number): Cells => [
      ["date", "item", "quantity", "unit", "cost", "kind"],
      ...Array.from({ length: count }, () => ["2026-03-02", "oak", quantity, "each", quantity * PRICE, "purchase"]),
    ];
    const closing = (rows: Cells): unknown => under("closing", answered("MONTHCLOSE", rows)).at(-1);
    expect([under("cost", answered("STOCKLEDGER", paper(1, 3))), closing(paper(1, 3))]).toEqual([[ONE_ROW], ONE_ROW]);
    expect([under("cost", answered("STOCKLEDGER", paper(3, 1))), closing(paper(3, 1))]).toEqual([
      [EACH_OF_THREE, EACH_OF_THREE, EACH_OF_THREE],
      THREE_ROWS,
    ]);
  });

  test("ORDER", () => {
    expect(bought(answered("ORDER", STAIR, oneBlank))).toEqual([ONE_ROW]);
    const three = bought(answered("ORDER", STAIR, threeBlanks));
    expect([three, sum(three)]).toEqual([[EACH_OF_THREE, EACH_OF_THREE, EACH_OF_THREE], THREE_ROWS]);
  });
});

test("owned sticks that have a price are in PLAN's cost, which says that BUY leaves them out", () => {
  const stock = [["length", "price", "available", "owned"], [STICK, PRICE, 2, "yes"], [STICK, 50, 1, "no"]];
  const plan = new Map(answered("PLAN", PIECES, stock).map(([label, value]) => [label, value]));
  // By hand: two owned at 38.005 are 76.01, one bought at 50.
  expect([plan.get("cost"), plan.get("note")]).toEqual([126.01, "76.01 of the cost is owned stock, which BUY leaves out"]);
});

describe("what an order says of its own rows is no goods where it goes on", () => {
  // By hand: 3 blanks at 38.005 are 114.02; a board of 60.00 would give three of 38, and the total says what all comes to.
  const order = answered("ORDER", STAIR, [...oneBlank, ["oak 10 ft", 120, 11.5, 1, 60, "any"]]);
  const said = order.map(([item]) => item);

  test("ORDER has a saving and a total", () => {
    expect([said.includes("saving"), said.at(-1), order.at(-1)![5]]).toEqual([true, "total", ONE_ROW]);
  });

  test("EXTEND passes them over, so that no cost counts twice", () => {
    const rows = answered("EXTEND", order, [["item", "price"], ["oak", PRICE], ["riser", 9]]);
    expect(rows.map(([item]) => item)).toEqual(["item", "oak", "riser"]);
  });

  test("BID counts what is ordered once", () => {
    expect(direct(order.filter(([item]) => item !== "riser"))).toBe(ONE_ROW);
  });
});
