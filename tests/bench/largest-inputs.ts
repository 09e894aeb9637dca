import type { WorksheetFunction } from "../host/stand-in";
import { shopMoves } from "./shop-moves";

/** The most seconds the largest promised input of a function may take. */
const SECONDS = 2;

/** The largest input the reference promises for a function: what it is in words, and the arguments of the call. */
interface LargestInput {
  readonly id: string;
  readonly says: string;
  readonly cells: () => readonly unknown[];
  /** The answer is the sentence of this error, as where a label is looked for that is not there. */
  readonly answers?: "#N/A";
}

const rows = (count: number, row: (index: number) => readonly unknown[]): unknown[][] =>
  Array.from({ length: count }, (_, index) => [...row(index)]);

/** A word of letters alone that no other number has. */
const word = (index: number): string => Array.from(String(index), (digit) => "abcdefghij".charAt(Number(digit))).join("");

/** A name of ten to twenty-one letters that looks like no other, the same each time. */
const scattered = (index: number): string => {
  // Numerical Recipes' generator, from memory: any that spreads would do.
  let state = (index + 1) * 2_654_435_761;
  return Array.from({ length: 10 + (index % 12) }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return "abcdefghijklmnopqrstuvwxyz".charAt(Math.floor(state / 2 ** 32 * 26));
  }).join("");
};

/** Readings typed as fractions, with both diagonals and leans: what takes longest to read and to fit. */
const fits = (distance: unknown, lean: string) => [
  [
    "step",
    lean === "lean" ? "run" : "height",
    lean === "lean" ? "back" : "top",
    lean === "lean" ? "front" : "bottom",
    "diagonal",
    "second diagonal",
    `left ${lean}`,
    `right ${lean}`,
  ],
  ...rows(1_999, (n) => [
    n + 1,
    distance,
    "36 1/2",
    "36 3/4",
    lean === "lean" ? "37 7/8" : "37 5/16",
    lean === "lean" ? "37 13/16" : "37 1/4",
    1.5,
    -1,
  ]),
];

/** The same, as far as tickets go, with diagonals that close: what does not close has no acts. */
const closing = (distance: unknown, lean: string) => {
  const diagonals = lean === "lean" ? ["38 1/8", "37 13/16"] : ["37 1/2", "37 1/4"];
  const [headings = [], ...readings] = fits(distance, lean);
  return [headings, ...readings.slice(0, 499).map((row) => [...row.slice(0, 4), ...diagonals, ...row.slice(6)])];
};

/** Pieces of so many lengths, to a 64th. */
const pieces = (lengths: number, quantity: number) => [
  ["length", "quantity"],
  ...rows(lengths, (n) => [10 + ((n * 2_657) % 5_000) / 64, quantity]),
];

/** One line a function; the answer must be an answer, not the sentence that says the input is too large. */
const LARGEST: readonly LargestInput[] = [
  {
    id: "PICK",
    says: "200,000 rows, the last label",
    cells: () => [rows(200_000, (n) => [`blank of oak ${word(n)}`, n]), `blank of oak ${word(199_999)}`],
  },
  {
    id: "PICK",
    says: "200,000 rows, a label that is not there",
    cells: () => [rows(200_000, (n) => [`blank of oak ${word(n)}`, n]), "blank of maple"],
    answers: "#N/A",
  },
  {
    id: "PICK",
    says: "2,000 labels of 2,000 letters, none of them right",
    cells: () => [rows(2_000, (n) => [`${word(n)}${"oak".repeat(666)}`, n]), "ash".repeat(666)],
    answers: "#N/A",
  },
  { id: "TAPE", says: "20,000 cells of text", cells: () => [rows(20_000, (n) => [`${n % 96} ${(n % 15) + 1}/16"`])] },
  {
    id: "PITCH",
    says: "two ranges of 20,000 cells",
    cells: () => [rows(20_000, (n) => [7 + n / 20_000]), rows(20_000, (n) => [10 + n / 20_000])],
  },
  { id: "FINISHED", says: "20,000 rises as metric text", cells: () => [rows(20_000, (n) => [`${180 + (n % 7)} mm`]), "25 mm"] },
  { id: "PACKING", says: "20,000 readings", cells: () => [rows(20_000, (n) => [(n % 16) / 16])] },
  { id: "UNIFORMITY", says: "20,000 rises", cells: () => [rows(20_000, (n) => [7.5 + (n % 3) / 16])] },
  { id: "RISERHEIGHT", says: "20,000 rises", cells: () => [rows(20_000, (n) => [7.5 + (n % 3) / 16]), 1] },
  {
    id: "EQUALIZE",
    says: "100 rises of 100 remainders, on a 1/64 tape",
    cells: () => [rows(100, (n) => [7 + ((n * 37) % 100) / 99]), 1, 0.75, 0.75, 0.5, "", 64, 0.5, 0.5, 8.25],
  },
  { id: "TREADFIT", says: "1,999 readings as fractions", cells: () => [fits("10", "lean"), "1 1/4", "right"] },
  { id: "MARKS", says: "499 readings as fractions, both ends open", cells: () => [closing("10", "lean"), "1 1/4", "both"] },
  {
    id: "RISERMARKS",
    says: "499 readings as fractions, notch and bevel at both ends",
    cells: () => [closing("7 1/2", "flare"), "both", 0.25, 0.75, 0, 0, 0.75, 0.25, 0, 4],
  },
  { id: "TREADFIT", says: "30 readings, as many as a flight has", cells: () => [fits("10", "lean").slice(0, 31)] },
  {
    id: "MISREAD",
    says: "30 treads and 30 risers",
    cells: () => [fits("10", "lean").slice(0, 31), fits("7 1/2", "flare").slice(0, 31)],
  },
  {
    id: "NEXTSTEP",
    says: "30 treads and 30 risers",
    cells: () => [fits("10", "lean").slice(0, 31), fits("7 1/2", "flare").slice(0, 31)],
  },
  { id: "RISERFIT", says: "1,999 readings as fractions", cells: () => [fits("7 1/2", "flare"), "right"] },
  {
    id: "BUY",
    says: "300 pieces, 1,000 rows to buy",
    cells: () => [pieces(100, 3), [["length", "price"], ...rows(1_000, (n) => [60 + n / 10, 10 + n / 20])]],
  },
  {
    id: "CUTS",
    says: "5,000 pieces, 1,000 boards on hand",
    cells: () => [
      pieces(1_000, 5),
      [["length", "price", "available", "owned"], ...rows(999, (n) => [12 + ((n * 7_919) % 132), "", 1, "yes"]), [144, 30, "any", "no"]],
    ],
  },
  {
    id: "SHEETCUTS",
    says: "1,000 pieces of 100 sizes that may be turned, 20 sizes of sheets",
    cells: () => [
      [
        ["length", "width", "quantity", "grain"],
        ...rows(100, (n) => [10 + ((n * 37) % 50) + n / 64, 6 + ((n * 53) % 20) + (n % 7) / 8, 10, "free"]),
      ],
      [["length", "width", "price"], ...rows(20, (n) => [60 + 3 * n, 48 + (n % 4) * 4, 40 + 3 * n + (n % 3)])],
      0.125, 0.25, 12,
    ],
  },
  {
    id: "PLAN",
    says: "40 pieces of 40 sizes that may be turned, three sheets",
    cells: () => [
      [["length", "width", "grain"], ...rows(40, (n) => [10 + ((n * 37) % 50) + n / 64, 6 + ((n * 53) % 20) + n / 32, "free"])],
      [["length", "width", "price"], [96, 48, 62], [60, 60, 52], [120, 48, 79]],
    ],
  },
  {
    id: "PLAN",
    says: "5,000 pieces of 200 grades, 1,000 rows to buy",
    cells: () => [
      [["length", "quantity", "grade"], ...rows(5_000, (n) => [10 + ((n * 2_657) % 5_000) / 64, 1, `grade ${n % 200}`])],
      [["length", "price", "grade"], ...rows(1_000, (n) => [96 + 24 * (n % 2) + n / 64, 30 + 7 * (n % 2), `grade ${n % 200}`])],
    ],
  },
  {
    id: "OFFCUTS",
    says: "500 widths of pieces and of boards, one piece across each",
    cells: () => [
      [["length", "quantity", "width"], ...rows(500, (n) => [10 + ((n * 37) % 78), 2, 8 + n / 64])],
      [["length", "price", "width"], ...rows(500, (n) => [96 + 24 * (n % 3), 30 + n / 10, 8.125 + n / 64])],
      0.125,
      0,
      12,
    ],
  },
  {
    id: "PLAN",
    says: "5,000 pieces of 200 lengths, 100 rows to buy, half of them limited",
    cells: () => [
      pieces(200, 25),
      [["length", "price", "available"], ...rows(100, (n) => [60 + n, 10 + n / 3 + (n % 3) / 4, n % 2 === 0 ? 5 : "any"])],
    ],
  },
  {
    id: "ORDER",
    says: "2,000 boards to cut from",
    cells: () => [
      [
        ["total rise", 105],
        ["risers", 14],
        ["run", 10],
        ["width", 37.25],
      ],
      [
        ["length", "width", "thickness", "price", "available"],
        ...rows(2_000, (n) => [38 + ((n * 7_919) % 2_000) / 16, 11.5, 1, 50 + n / 10, 1]),
      ],
    ],
  },
  {
    id: "EXTEND",
    says: "5,000 items without a price, 5,000 prices",
    cells: () => [
      rows(5_000, (n) => [`profile of oak ${word(n)}`, 1, "each"]),
      rows(5_000, (n) => [`moulding of ash ${word(n)}`, 2.5, "each"]),
    ],
  },
  {
    id: "EXTEND",
    says: "5,000 items, 5,000 prices, names of no pattern",
    cells: () => [rows(5_000, (n) => [scattered(n), 1, "each"]), rows(5_000, (n) => [scattered(n + 5_000), 2.5, "each"])],
  },
  {
    id: "EXTEND",
    says: "5,000 items, half of them among 5,000 prices",
    cells: () => [rows(5_000, (n) => [scattered(n), 1, "each"]), rows(5_000, (n) => [scattered(n + 2_500), 2.5, "each"])],
  },
  {
    id: "HOURS",
    says: "5,000 items without a rate, 5,000 rates",
    cells: () => [rows(5_000, (n) => [`scribing of ${word(n)}`, 1]), rows(5_000, (n) => [`mitring of ${word(n)}`, 0.5])],
  },
  {
    id: "HOURS",
    says: "5,000 items, 5,000 rates, names of no pattern",
    cells: () => [rows(5_000, (n) => [scattered(n), 1]), rows(5_000, (n) => [scattered(n + 5_000), 0.5])],
  },
  {
    id: "RECONCILE",
    says: "three tables of 2,000 rows, no item in two of them",
    cells: () => [
      [["item", "quantity", "price"], ...rows(2_000, (n) => [`plan of oak ${word(n)}`, 3, 38.005])],
      [["item", "quantity", "cost"], ...rows(2_000, (n) => [`invoice of ash ${word(n)}`, 3, 114.02])],
      rows(2_000, (n) => [`used on site ${word(n)}`, 3]),
    ],
  },
  {
    id: "RECONCILE",
    says: "three tables of 2,000 rows, names of no pattern",
    cells: () => [
      [["item", "quantity", "price"], ...rows(2_000, (n) => [scattered(n), 3, 38.005])],
      [["item", "quantity", "cost"], ...rows(2_000, (n) => [scattered(n + 2_000), 3, 114.02])],
      rows(2_000, (n) => [scattered(n + 4_000), 3]),
    ],
  },
  {
    id: "BIDVARIANCE",
    says: "two tables of 2,000 rows, names of no pattern",
    cells: () => [
      [["item", "quantity", "price", "waste"], ...rows(2_000, (n) => [scattered(n), 3, 38.005, 1])],
      [["item", "quantity", "cost", "charges", "waste"], ...rows(2_000, (n) => [scattered(n + 1_000), 3, 114.02, 7.5, 1])],
    ],
  },
  {
    id: "PROGRESSBILLING",
    says: "2,000 rows, with retainage and a deposit",
    cells: () => [[["item", "value", "done", "stored"], ...rows(2_000, (n) => [`part ${n}`, 100.005, 0.5, 10.005])], 0.1, 500, 900],
  },
  {
    id: "TALLY",
    says: "1,000 boards with defects, 40 prices, 50 lots",
    cells: () => [
      [
        ["label", "length", "width", "thickness", "grade", "board foot price", "lot", "lot price", "defects"],
        ...rows(1_000, (n) => [
          n + 1, 96 + (n % 97), `${5 + (n % 7)} 3/8`, "5/4", `grade ${n % 20}`,
          ...(n % 2 === 0 ? [3.35 + (n % 40), "", ""] : ["", n % 50, 95]),
          "31 to 34; 88 1/2 to 92",
        ]),
      ],
      "surface measure", 0.07,
    ],
  },
  {
    id: "TALLYCUTS",
    says: "100 pieces of as many lengths and seven widths, 60 boards, half of them with a knot, either way round",
    cells: () => [
      [
        ["length", "width", "grade", "also from"],
        ...rows(100, (n) => [
          12 + ((n * 2_657) % 2_400) / 64, [7.25, 9.25, 3.5, 2, 5, 4.125, 6][n % 7], n % 5 === 0 ? "FAS" : "1C", n % 5 === 0 ? "" : "FAS",
        ]),
      ],
      [
        ["label", "length", "width", "thickness", "grade", "board foot price", "defects"],
        ...rows(60, (n) => [
          n + 1, 96 + ((n * 37) % 97), 5 + ((n * 29) % 57) / 8, "4/4", n % 3 === 0 ? "FAS" : "1C", n % 3 === 0 ? 8.4 : 5.6,
          n % 2 === 0 ? "" : `${20 + (n % 40)} to ${24 + (n % 40)}`,
        ]),
      ],
      "1/8", 1,
    ],
  },
  {
    id: "LUMBERORDER",
    says: "2,000 pieces of 400 grades, 500 allowances",
    cells: () => [
      [
        ["length", "width", "thickness", "grade", "species"],
        ...rows(2_000, (n) => [`${20 + (n % 97)} 5/16`, 7.25, 0.75 + (n % 3) / 4, `grade ${n % 400}`, "red oak"]),
      ],
      rows(500, (n) => [`grade ${n}`, 0.2]),
      "exact",
    ],
  },
  {
    id: "GLUEUP",
    says: "200 panels, each of its own length, 400 boards with defects",
    cells: () => [
      [["label", "length", "width"], ...rows(200, (n) => [`tread ${n}`, 36 + n / 16, 9 + (n % 40) / 16])],
      [
        ["label", "length", "width", "thickness", "board foot price", "defects"],
        ...rows(400, (n) => [n + 1, 96 + (n % 97), `${5 + (n % 7)} 3/8`, "5/4", 3.35 + (n % 11), "31 to 34; 88 1/2 to 92"]),
      ],
      [["strips", 6], ["trim", 1]],
    ],
  },
  {
    id: "GLUEUP",
    says: "200 panels alike, 400 boards",
    cells: () => [
      [["label", "length", "width", "quantity"], ["tread", 42, 11.25, 200]],
      [
        ["label", "length", "width", "thickness", "price"],
        ...rows(400, (n) => [n + 1, 96 + (n % 97), 5 + (n % 40) / 8, "5/4", 20 + (n % 53)]),
      ],
    ],
  },
  { id: "ALLOCATE", says: "20,000 weights", cells: () => [1_234_567.89, rows(20_000, (n) => [1 + (n % 97) / 7])] },
  { id: "STOCKLEDGER", says: "20,000 moves of 60 jobs, 300 items", cells: () => [shopMoves(20_000)] },
  { id: "STOCKLEDGER", says: "the same again, reckoned before", cells: () => [shopMoves(20_000)] },
  { id: "RACK", says: "20,000 moves, 4,000 items", cells: () => [shopMoves(20_000, 4_000)] },
  { id: "JOBCOST", says: "the same again, reckoned before", cells: () => [shopMoves(20_000, 4_000)] },
  { id: "MONTHCLOSE", says: "the same again, reckoned before", cells: () => [shopMoves(20_000, 4_000)] },
  {
    id: "MONTHCLOSE",
    says: "20,000 moves but one edited",
    cells: () => [shopMoves(20_000, 4_000).map((row, place) => (place === 10_001 ? row.map((cell) => (cell === 120 ? 121 : cell)) : row))],
  },
  {
    id: "STOCKLEDGER",
    says: "20,000 purchases of names of no pattern on 400 invoices",
    cells: () => [
      [
        ["date", "item", "quantity", "unit", "cost", "kind", "invoice"],
        ...rows(20_000, (n) => ["2026-03-02", scattered(n), 3, "each", 38.005, "purchase", `A-${n % 400}`]),
      ],
    ],
  },
  { id: "BID", says: "20,000 costs", cells: () => [rows(20_000, (n) => [`goods ${n}`, 38.005]), [["profit of price", 0.15]]] },
  {
    id: "QUOTE",
    says: "20,000 costs of 2,000 parts",
    cells: () => [
      [["item", "cost", "part"], ...rows(20_000, (n) => [`goods ${n}`, 38.005, `part ${n % 2_000}`])],
      [["profit of price", 0.15]],
    ],
  },
  {
    id: "ALTERNATES",
    says: "20 alternates over 2,000 costs, each another stair, three of them cut otherwise from 200 boards",
    cells: () => [
      [
        ["item", "cost", "quantity", "unit", "option"],
        ...rows(1_999, (n) => [scattered(n), 38.005, n % 7, n % 3 === 0 ? "hour" : "each", n % 4 === 0 ? `option ${(n / 4) % 20}` : ""]),
      ],
      [["profit of price", 0.15]],
      [["option", "label", "value"], ...rows(20, (n) => [`option ${n}`, "run", 9 + n / 16])],
      [["total rise", 107.5], ["risers", 14], ["run", 10], ["nosing", 1.25]],
      "irc-2021",
      null,
      [
        ["length", "quantity", "label", "option"],
        ...rows(499, (n) => [10 + ((n * 2_657) % 5_000) / 64, 1, `piece ${n % 350}`, n < 350 ? "" : `option ${n % 3}`]),
      ],
      [["length", "price"], ...rows(199, (n) => [60 + n / 2, 10 + n / 4])],
    ],
  },
  {
    id: "PRICECHANGE",
    says: "2,000 costs, and 2,000 others",
    cells: () => [
      rows(2_000, (n) => [scattered(n), 38.005]),
      rows(2_000, (n) => [scattered(n + 2_000), 38.005]),
      [["profit of price", 0.15]],
    ],
  },
];

/** Each largest input with its seconds, and whether they are within the limit; an error instead of an answer ends the run. */
export const largestInputRows = (functions: ReadonlyMap<string, WorksheetFunction>): readonly (readonly string[])[] =>
  LARGEST.map(({ id, says, cells, answers }) => {
    const solve = functions.get(id);
    if (solve === undefined) throw new Error(`functions.js does not associate ${id}`);
    const given = cells();
    const began = performance.now();
    try {
      solve(...given);
    } catch (error) {
      if (answers === undefined || (error as { code?: unknown }).code !== answers) throw error;
    }
    const seconds = (performance.now() - began) / 1000;
    return [id, says, `${seconds.toFixed(2)} s`, seconds <= SECONDS ? "met" : `missed: over ${SECONDS} s`];
  });
