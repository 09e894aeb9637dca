import { associated } from "../host/stand-in";
import { JOBCOST_OF_MARCH, MONTH_MOVES } from "../solver/books/worked-month";

/**
 * A job of an invented month, through the built functions: what was bid, bought, billed. The costs of the jobs were reckoned apart from
 * this project, twice, by a moving weighted average of the rack; beside each figure stands what it comes to by hand.
 */

const functions = associated();

type Cells = readonly (readonly unknown[])[];

const answered = (id: string, ...cells: readonly unknown[]): Cells => {
  const solve = functions.get(id);
  if (solve === undefined) throw new Error(`${id} is not built`);
  return solve(...cells) as Cells;
};

/** What a job took, as a ledger gives it at the end of the month. */
const costsOf = (job: string): Cells => JOBCOST_OF_MARCH.filter(([of], row) => row === 0 || of === job);

const PLAN: Cells = [
  ["item", "quantity", "unit", "price"],
  ["oak blank 42", 13, "each", 52],
  ["poplar 16 ft", 4, "each", 38],
  ["maple newel", 2, "each", 85],
  ["skirt board", 1, "each", 84],
  ["freight", 1, "each", 60],
];

test("what JOBCOST says of a job goes into RECONCILE and BIDVARIANCE as it stands", () => {
  const costs = answered("JOBCOST", MONTH_MOVES, "Elm 12", "2026-03-31");
  expect(costs.map(([, item]) => item)).toEqual(costsOf("Elm 12").map(([, item]) => item));
  for (const id of ["RECONCILE", "BIDVARIANCE"]) expect(answered(id, PLAN, costs)).toEqual(answered(id, PLAN, costsOf("Elm 12")));
});

test("a job's costs go into RECONCILE as they stand, every cell up to the charges", () => {
  const rows = answered("RECONCILE", PLAN, costsOf("Elm 12"));
  const [headings = []] = rows;
  const at = ["item", "unit", "planned", "bought", "used", "planned cost", "spent", "price variance", "usage variance", "scope",
    "on the rack", "charges", "note"].map((heading) => headings.indexOf(heading));
  expect(rows.slice(1).map((row) => at.map((place) => row[place]))).toEqual([
    // 630.87 - 47.44 = 583.43, less 11 x 52; (11 - 13) x 52.
    ["oak blank 42", "each", 13, 11, 11, 676, 630.87, 11.43, -104, 0, 0, 47.44, ""],
    // 132.09 - 9.06 = 123.03, less 3.25 x 38 = 123.50; (3.25 - 4) x 38.
    ["poplar 16 ft", "each", 4, 3.25, 3.25, 152, 132.09, -0.47, -28.5, 0, 0, 9.06, ""],
    // 189.48 - 17.98 = 171.50, less 170.
    ["maple newel", "each", 2, 2, 2, 170, 189.48, 1.5, 0, 0, 0, 17.98, ""],
    ["skirt board", "each", 1, 0, 0, 84, 0, 0, 0, -84, 0, 0, "planned, not bought"],
    ["freight and tax", "", "", "", "", 60, 0, 0, 0, 0, 0, -60, "planned; what was paid stands with its goods"],
    // 952.44 - 1,142 = -189.56 = 12.46 - 132.50 - 84 + 14.48; 47.44 + 9.06 + 17.98 - 60 = 14.48.
    ["total", "", "", "", "", 1142, 952.44, 12.46, -132.5, -84, 0, 14.48,
      "spent less planned cost is price, usage, scope, rack and charges together"],
  ]);
});

test("all jobs of a month in one call", () => {
  // By hand: 189.48 + 630.87 + 132.09 + 458.81 + 114.70 + 99.44 + 15.24 + 123.51 + 50.40 = 1,814.54; nothing was planned, so goods are
  // scope: 1,814.54 less charges of 17.98 + 47.44 + 9.06 + 34.50 + 8.63 + 1.05 + 10.04 = 128.70.
  const rows = answered("RECONCILE", [["item", "quantity", "price"], ["skirt board", 1, 84]], JOBCOST_OF_MARCH);
  const [headings = []] = rows;
  const total = rows.at(-1)!;
  expect(["spent", "scope", "charges"].map((heading) => total[headings.indexOf(heading)])).toEqual([1814.54, 1601.84, 128.7]);
});

describe("BIDVARIANCE", () => {
  test("goods and labour of one job", () => {
    const bid = [...PLAN, ["labour", 30, "hour", 58]];
    const actual = [...costsOf("Elm 12"), ["Elm 12", "labour", "hour", 33.5, "", 1976.5, "", "", "", ""]];
    expect(answered("BIDVARIANCE", bid, actual)).toEqual([
      ["cause", "amount"],
      // 1,142 + 30 x 58.
      ["bid", 2882],
      ["price", 12.46],
      ["usage", -132.5],
      ["waste", 0],
      // 1,976.50 - 33.5 x 58; 3.5 x 58.
      ["rate", 33.5],
      ["hours", 203],
      ["freight and tax", 14.48],
      ["not bid", 0],
      ["bid, not done", -84],
      // 952.44 + 1,976.50.
      ["actual", 2928.94],
    ]);
  });

  test("a blank spoiled is waste and no usage", () => {
    const bid = [["oak blank 42", 7, "each", 52, 364]];
    expect(answered("BIDVARIANCE", bid, costsOf("Birch 4"))).toEqual([
      ["cause", "amount"],
      ["bid", 364],
      // 458.81 - 34.50 = 424.31, less 8 x 52.
      ["price", 8.31],
      ["usage", 0],
      ["waste", 52],
      ["rate", 0],
      ["hours", 0],
      ["freight and tax", 34.5],
      ["not bid", 0],
      ["bid, not done", 0],
      ["actual", 458.81],
    ]);
  });
});

describe("PROGRESSBILLING", () => {
  const schedule = (done: readonly number[]): Cells => [
    ["item", "value", "done", "change"],
    ...[
      ["Main stair", 5991.81, "no"], ["Basement stair", 2184.32, "no"], ["Rail", 2063.87, "no"],
      ["Change 1: two more balusters", 310, "yes"],
    ].map(([item, value, change], row) => [item, value, done[row], change]),
  ];

  test("the first bill: the main stair at 60 %, 5 % held back, a deposit of 2,500", () => {
    expect(answered("PROGRESSBILLING", schedule([0.6, 0, 0, 0]), "5%", 0, 2500)).toEqual([
      ["item", "value", "done", "earned", "balance"],
      // 5,991.81 x 0.6 = 3,595.086.
      ["Main stair", 5991.81, 0.6, 3595.09, 2396.72],
      ["Basement stair", 2184.32, 0, 0, 2184.32],
      ["Rail", 2063.87, 0, 0, 2063.87],
      ["Change 1: two more balusters", 310, 0, 0, 310],
      ["contract", 10240, "", "", ""],
      ["changes", 310, "", "", ""],
      ["earned", 10550, "", 3595.09, 6954.91],
      // 3,595.09 x 0.05 = 179.7545; 2,500 x 3,595.09 / 10,550 = 851.917.
      ["retainage", "", "", -179.75, ""],
      ["deposit credited", "", "", -851.92, ""],
      ["paid", "", "", 0, ""],
      ["due", "", "", 2563.42, ""],
    ]);
  });

  test("the last bill: all done, nothing held back; the bills and the deposit are contract and changes", () => {
    expect(answered("PROGRESSBILLING", schedule([1, 1, 1, 1]), 0, 2563.42, 2500)).toEqual([
      ["item", "value", "done", "earned", "balance"],
      ["Main stair", 5991.81, 1, 5991.81, 0],
      ["Basement stair", 2184.32, 1, 2184.32, 0],
      ["Rail", 2063.87, 1, 2063.87, 0],
      ["Change 1: two more balusters", 310, 1, 310, 0],
      ["contract", 10240, "", "", ""],
      ["changes", 310, "", "", ""],
      ["earned", 10550, "", 10550, 0],
      ["retainage", "", "", 0, ""],
      ["deposit credited", "", "", -2500, ""],
      ["paid", "", "", -2563.42, ""],
      // 2,500 + 2,563.42 + 5,486.58 = 10,550.
      ["due", "", "", 5486.58, ""],
    ]);
  });
});
