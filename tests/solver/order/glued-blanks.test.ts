import { call } from "../../../src/functions/call";
import { ORDER } from "../../../src/functions/order/order";
import { GLUEUP } from "../../../src/functions/yield/glueup";
import { draws } from "../../bench/yield/draws";

type Rows = readonly (readonly unknown[])[];

const rowsOf = (found: unknown): Rows => {
  if (!Array.isArray(found)) throw new Error(JSON.stringify(found));
  return found as Rows;
};

const columnOf = (rows: Rows, heading: string): readonly unknown[] => {
  const at = rows[0]!.indexOf(heading);
  return rows.slice(1).map((row) => row[at]);
};

const sum = (values: readonly unknown[]): number => values.reduce<number>((all, value) => all + Number(value), 0);

/** An invented tally: boards of one wood, two of them a lot, one on hand. */
const tallyOf = (draw: () => number): Rows => {
  const boards = Array.from({ length: 10 }, (_, at) => {
    const length = 44 + Math.floor(draw() * 120);
    const width = 4 + Math.floor(draw() * 48) / 8;
    const price = Math.round(length * width * (3 + draw() * 2)) / 100;
    const [lot, lotPrice] = at > 7 ? ["pile", at === 8 ? Math.round(price * 150) / 100 : ""] : ["", ""];
    // the first is on hand
    return [at + 1, length, width, "5/4", at > 7 || at === 0 ? "" : price, lot, lotPrice, at === 0 ? "yes" : ""];
  });
  return [["label", "length", "width", "thickness", "price", "lot", "lot price", "owned"], ...boards];
};

const STAIR: Rows = [["total rise", 37.5], ["risers", 5], ["run", 10], ["width", 40]];

describe("what no blank covers, glued up from measured boards", () => {
  // GLUEUP's own plans stand beside every plan there is in tests/solver/yield/glue-up; here only that the order buys what it plans.
  test.each(Array.from({ length: 12 }, (_, at) => at + 1))("tally %i: the boards GLUEUP cuts, each once, for the same money", (seed) => {
    const tally = tallyOf(draws(seed));
    const covered = seed % 3;
    const stock: Rows = [
      ["label", "length", "width", "thickness", "price", "available"], ["oak 42", 42, 11.5, 1, 44, Math.max(covered, 1)],
      ["poplar", 40, 7, 0.75, 9, "any"],
    ];
    const narrow = covered === 0 ? stock.map((row, at) => (at === 1 ? ["oak 42", 42, 9, 1, 44, "any"] : row)) : stock;
    const order = rowsOf(call(ORDER, [STAIR, narrow, undefined, undefined, tally]));
    const panels: Rows = [
      ["item", "length", "width", "thickness", "quantity"], ["tread", 40, 11.25, 1, 4 - covered],
      // an oak 42 left over from the treads is no blank for the nosing: the treads take them all
      ["landing nosing", 40, 2, 1, 1],
    ];
    const wanted = covered === 0 ? panels.filter(([item]) => item !== "landing nosing") : panels;
    const glued = rowsOf(call(GLUEUP, [wanted, tally]));
    const cut = new Set(columnOf(glued, "board").filter((board) => board !== ""));
    const total = glued.findIndex(([panel]) => panel === "total");
    const items = columnOf(order, "item").map(String);
    const bought = order.slice(1).filter(([item]) => /^board \d+$|^lot pile$/.test(String(item)));
    const singles = [...cut].filter((board) => Number(board) < 9).map((board) => `board ${Number(board)}`);
    const lots = [...cut].some((board) => Number(board) > 8) ? ["lot pile"] : [];
    expect(bought.map(([item]) => item).sort()).toEqual([...singles, ...lots].sort());
    expect(sum(bought.map((row) => row[order[0]!.indexOf("cost")]))).toBeCloseTo(Number(glued[total]![glued[0]!.indexOf("cost")]), 9);
    // By hand: finished length x width x 1 1/4 / 144, as many as are glued.
    const feetOf = ([, length, width, , quantity]: readonly unknown[]): number =>
      (Number(length) * Number(width) * 1.25 * Number(quantity)) / 144;
    const feet = sum(wanted.slice(1).map(feetOf));
    expect(sum(bought.map((row) => row[order[0]!.indexOf("net")]))).toBeCloseTo(feet, 9);
    expect(items.filter((item) => item === "tread" || item === "landing nosing")).toEqual([]);
  });

  // By hand: 3 x 42 x 11 1/4 in, need 11 1/2 each; A nets 2 x 6 1/8, D 2 x 5 1/8, E 3 x 4 3/8; 36 + 29 + 37.50. In mm a joint is rounded
  // up to 1.6, so a section nets 161.9, 130.1 and 111.1: 917.3 of 3 x 292.1.
  test.each([["in", 1], ["mm", 25.4]] as const)("in %s: the same boards for the same money", (unit, scale) => {
    const sized = (rows: Rows): Rows =>
      rows.map((row) => row.map((cell, at) => (at > 0 && at < 3 && typeof cell === "number" ? cell * scale : cell)));
    const stair: Rows = [
      ["unit", unit], ["total rise", 30 * scale], ["risers", 4], ["run", 10 * scale], ["width", 42 * scale], ["landing nosing", "no"],
    ];
    const boards = sized([
      ["label", "length", "width", "thickness", "price"], ["A", 92, 6.5, "5/4", 36], ["B", 92, 8, "5/4", 44.5], ["C", 138, 6.25, "5/4", 52],
      ["D", 92, 5.25, "5/4", 29], ["E", 138, 4.5, "5/4", 37.5],
    ]);
    const stock: Rows = [["label", "length", "width", "thickness", "price"], ["oak", 42 * scale, 10 * scale, scale, 44]];
    const order = rowsOf(call(ORDER, [stair, stock, undefined, undefined, boards]));
    expect(order.slice(1).map((row) => [row[0], row[order[0]!.indexOf("cost")]])).toEqual([
      ["riser", ""], ["A", 36], ["D", 29], ["E", 37.5], ["total", 102.5],
    ]);
  });
});

describe("what is glued, and what is not", () => {
  const WIDE: Rows = [["total rise", 30], ["risers", 4], ["run", 10], ["width", 42], ["landing nosing", "no"]];
  const WITH_NOSING: Rows = WIDE.slice(0, 4);
  const headings = ["label", "length", "width", "thickness", "price"];
  const orderOf = (stair: Rows, stock: Rows, tally: Rows): Rows => rowsOf(call(ORDER, [stair, stock, undefined, undefined, tally]));
  const noteOf = (rows: Rows, item: string): string => String(rows.find(([found]) => found === item)?.[rows[0]!.indexOf("note")]);
  const costOf = (rows: Rows, item: string): unknown => rows.find(([found]) => found === item)?.[rows[0]!.indexOf("cost")];

  // By hand: a board of 96 holds two treads of 42, so two boards at 40 against a board of 500.
  test("treads that a stick in stock holds are left to CUTS", () => {
    const rows = orderOf(WIDE, [headings, ["oak 8 ft", 96, 12, 1, 40]], [headings, ["A", 138, 12.5, "5/4", 500]]);
    expect(noteOf(rows, "tread")).toContain("cut them from it with CUTS");
    expect(rows.some(([item]) => item === "A")).toBe(false);
  });

  // By hand: the board is 30 long, a nosing in the rough 43; three blanks at 44 are 132.
  test("a nosing that cannot be glued stays as it was, and the order has its total", () => {
    const rows = orderOf(WITH_NOSING, [[...headings, "available"], ["oak 42", 42, 12, 1, 44, 3]], [headings, ["A", 30, 6.5, "5/4", 36]]);
    expect([noteOf(rows, "landing nosing"), costOf(rows, "total")]).toEqual([
      "no blank in the stock is of this size: cut it from sticks with CUTS", 132,
    ]);
  });

  test("a tally that is not needed is not judged", () => {
    const rows = orderOf(WIDE, [headings, ["oak 42", 42, 12, 1, 44]], [["length", "width", "thickness"], [92, 8, "5/4"]]);
    expect(costOf(rows, "total")).toBe(132);
  });

  test("a board called as a blank is, and a lot called a lot, have names of their own", () => {
    const stock: Rows = [[...headings, "available"], ["oak", 42, 12, 1, 44, 1]];
    const rows = orderOf(WIDE, stock, [headings, ["oak", 92, 14, "5/4", 30]]);
    expect(rows.map(([item]) => item).filter((item) => item !== "riser" && item !== "item")).toEqual(["oak", "board oak", "total"]);
    const lots = orderOf(WIDE, stock, [
      [...headings, "lot", "lot price"], [1, 92, 14, "5/4", "", "lot 3", 30], [2, 60, 4, "5/4", "", "lot 3", ""],
    ]);
    expect(lots.map(([item]) => item)).toContain("lot 3");
  });
});
