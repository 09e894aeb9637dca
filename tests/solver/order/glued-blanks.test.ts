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
    return [at + 1, length, width, "5/4", at > 7 ? "" : price, at > 7 ? "pile" : "", at === 8 ? Math.round(price * 150) / 100 : "", at === 0 ? "yes" : ""];
  });
  return [["label", "length", "width", "thickness", "price", "lot", "lot price", "owned"], ...boards].map((row) =>
    row[7] === "yes" ? [...row.slice(0, 4), "", ...row.slice(5)] : row,
  );
};

const STAIR: Rows = [["total rise", 37.5], ["risers", 5], ["run", 10], ["width", 40]];

describe("what no blank covers, glued up from measured boards", () => {
  // GLUEUP's own plans stand beside every plan there is in tests/solver/yield/glue-up; here only that the order buys what it plans.
  test.each(Array.from({ length: 12 }, (_, at) => at + 1))("tally %i: the boards that GLUEUP cuts, each once, for the same money", (seed) => {
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
    expect(bought.map(([item]) => item).sort()).toEqual([...singles, ...([...cut].some((board) => Number(board) > 8) ? ["lot pile"] : [])].sort());
    expect(sum(bought.map((row) => row[order[0]!.indexOf("cost")]))).toBeCloseTo(Number(glued[total]![glued[0]!.indexOf("cost")]), 9);
    // By hand: finished length x width x 1 1/4 / 144, as many as are glued.
    const feet = wanted.slice(1).reduce((all, [, length, width, , quantity]) => all + (Number(length) * Number(width) * 1.25 * Number(quantity)) / 144, 0);
    expect(sum(bought.map((row) => row[order[0]!.indexOf("net")]))).toBeCloseTo(feet, 9);
    expect(items.filter((item) => item === "tread" || item === "landing nosing")).toEqual([]);
  });
});
