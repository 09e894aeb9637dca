import { BID_LABELS } from "../../src/solver/bid/bid";
import { associated } from "../host/stand-in";

/**
 * Bids through the built functions, every figure but the notes. The figures were reckoned by two programs that share no code with this one
 * or with each other: one in decimals, one in whole cents with fractions. 1,724 and 1,452 are published, as 32 % and 10 % of revenue and on
 * cost.
 */
type Cells = readonly (readonly unknown[])[];

const functions = associated();

const answered = (id: string, ...cells: readonly unknown[]): Cells => {
  const solve = functions.get(id);
  if (solve === undefined) throw new Error(`functions.js does not associate ${id}`);
  return solve(...cells) as Cells;
};

const SIGNIFICANT = 12;
const rounded = (cell: unknown): unknown => (typeof cell === "number" ? Number(cell.toPrecision(SIGNIFICANT)) : cell);

/** Label, cost and share of the price. */
const bidden = (...cells: readonly unknown[]): Cells =>
  answered("BID", ...cells).slice(1).map(([label, cost, ofPrice]) => [label, cost, rounded(ofPrice)]);

const expected = (costs: readonly number[], ofPrice: readonly number[]): Cells =>
  BID_LABELS.map((label, place) => [label, costs[place], rounded(ofPrice[place])]);

const THOUSAND = [["item", "cost"], ["material", 1000]];

test.each([
  {
    overhead: "overhead of price",
    profit: "profit of price",
    costs: [1000, 0, 0, 0, 0, 1000, 0, 551.72, 172.42, 0, 1724.14, 0, 1724.14],
    ofPrice: [
      0.579999304000835, 0, 0, 0, 0, 0.579999304000835,
      0, 0.319997216003341, 0.100003479995824, 0, 1, 0, 1,
    ],
  },
  {
    overhead: "overhead on cost",
    profit: "profit on cost",
    costs: [1000, 0, 0, 0, 0, 1000, 0, 320, 132, 0, 1452, 0, 1452],
    ofPrice: [
      0.68870523415978, 0, 0, 0, 0, 0.68870523415978,
      0, 0.220385674931129, 0.0909090909090909, 0, 1, 0, 1,
    ],
  },
  {
    overhead: "overhead on cost",
    profit: "profit of price",
    costs: [1000, 0, 0, 0, 0, 1000, 0, 320, 146.67, 0, 1466.67, 0, 1466.67],
    ofPrice: [
      0.681816632234927, 0, 0, 0, 0, 0.681816632234927,
      0, 0.218181322315177, 0.100002045449897, 0, 1, 0, 1,
    ],
  },
])("1,000 with $overhead 32 % and $profit 10 %", ({ overhead, profit, costs, ofPrice }) => {
  expect(bidden(THOUSAND, [["label", "rate"], [overhead, 0.32], [profit, 0.1]])).toEqual(expected(costs, ofPrice));
});

describe("three parts and an alternate", () => {
  const costs = [
    ["part", "item", "cost", "kind", "option"],
    ["Main stair", "blanks and boards", 1312.45, "material", ""],
    ["Main stair", "fitting", 2088, "labour", ""],
    ["Basement stair", "boards", 417.38, "material", ""],
    ["Basement stair", "fitting", 812, "labour", ""],
    ["Rail", "rail and newels", 640, "material", ""],
    ["Rail", "hang rail", 348, "labour", ""],
    ["Rail", "finisher", 275, "subcontract", ""],
    ["White oak instead of red", "difference", 236.8, "material", "white oak"],
  ];
  const terms = [
    ["label", "rate"],
    ["burden", 0.28],
    ["contingency", 0.03],
    ["overhead of price", 0.22],
    ["profit of price", 0.08],
    ["tax paid on materials", 0.065],
    ["round up to", 10],
  ];

  test("without it", () => {
    const figures = [
      2369.83, 154.04, 3248, 909.44, 275, 6956.31, 208.69,
      2251.86, 818.85, 4.29, 10240, 0, 10240,
    ];
    const ofPrice = [
      0.2314287109375, 0.01504296875, 0.3171875, 0.0888125, 0.02685546875,
      0.6793271484375, 0.0203798828125, 0.219908203125, 0.0799658203125, 0.0004189453125, 1, 0, 1,
    ];
    expect(bidden(costs, terms)).toEqual(expected(figures, ofPrice));
  });

  test("with it", () => {
    const figures = [
      2606.63, 169.43, 3248, 909.44, 275, 7208.5, 216.26,
      2333.5, 848.54, 3.2, 10610, 0, 10610,
    ];
    const ofPrice = [
      0.245676720075401, 0.0159688972667295, 0.30612629594722, 0.0857153628652215, 0.0259189443920829,
      0.679406220546654, 0.020382657869934, 0.219934024505184, 0.0799754948162111, 0.000301602262016965, 1, 0, 1,
    ];
    expect(bidden(costs, terms, "white oak")).toEqual(expected(figures, ofPrice));
  });

  test("as a quote", () => {
    expect(answered("QUOTE", costs, terms)).toEqual([
      ["part", "option", "price", "tax", "total"],
      ["Main stair", "", 5991.81, 0, 5991.81],
      ["Basement stair", "", 2184.32, 0, 2184.32],
      ["Rail", "", 2063.87, 0, 2063.87],
      ["total", "", 10240, 0, 10240],
      ["White oak instead of red", "white oak", 370, 0, 370],
    ]);
  });
});
