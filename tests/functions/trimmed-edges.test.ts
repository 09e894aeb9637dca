import { call } from "../../src/functions/call";
import { ALTERNATES } from "../../src/functions/bid/alternates";
import { PLAN } from "../../src/functions/yield/plan";

const RISERS = [["label", "length", "width", "quantity"], ["riser", 36, 5, 8]];
const BOARDS = [["length", "width", "price"], [96, 10.5, 20]];

const costOf = (trim: unknown): unknown => {
  const rows = call(PLAN, [RISERS, BOARDS, 0.125, trim]);
  return Array.isArray(rows) ? rows.find(([label]) => label === "cost")?.[1] : rows;
};

// By hand: 5 + 1/8 + 5 = 10 1/8 of 10 1/2, two along 95: four to a board; with the edges trimmed by 1/2 9 1/2 is left, and two.
test("a second size of the trim is that of the edges, one size is for all four", () => {
  expect([costOf("1/2 x 0"), costOf("1/2"), costOf("1/2 x 3/16"), costOf("1/2 x 1/4")]).toEqual([40, 80, 40, 80]);
});

test("ALTERNATES buys by the same trim", () => {
  const costs = [["item", "cost"], ["wood", 100]];
  const given = { costs, terms: [["profit of price", 0.1]], pieces: RISERS, stock: BOARDS, kerf: 0.125 };
  const boards = (trim: unknown): string => {
    const cells = Object.keys(ALTERNATES.parameters).map((name) => (name === "trim" ? trim : given[name as keyof typeof given]));
    const rows = call(ALTERNATES, cells);
    if (!Array.isArray(rows)) throw new Error(JSON.stringify(rows));
    return String(rows[1]?.[rows[0]!.indexOf("boards to buy")]);
  };
  expect([boards("1/2 x 0"), boards("1/2")]).toEqual(['2: 2 of 96"', '4: 4 of 96"']);
});

test("of a tally the edges are not trimmed by it", () => {
  const tally = [["length", "width", "thickness", "board foot price"], [96, 10.5, "4/4", 6]];
  const says = "trim: of a tally only the ends are trimmed; write one length, and the edges under edge";
  expect(call(PLAN, [RISERS, tally, 0.125, "1/2 x 3"])).toMatchObject({ says });
});
