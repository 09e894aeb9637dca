import type { Rows, WorkedCase } from "../case-kind";

const COSTS = [["item", "cost", "option"], ["oak", 100, ""], ["oak", 20, "wide"]] as const;
const TERMS = [["profit of price", 0.5]] as const;
/** Of an 8 ft board in two widths, and one of oak twice as thick. */
const STOCK = [
  ["label", "length", "width", "thickness", "grade", "price"],
  ["narrow", 96, 7.25, 0.75, "", 18],
  ["broad", 96, 11.5, 0.75, "", 30],
  ["thick", 96, 11.5, 1.5, "", 50],
  ["clear", 96, 11.5, 1.5, "clear", 90],
] as const;

/** A cell of the row of an alternate. */
const cellOf = (rows: Rows, option: string, heading: string): string => {
  const [headings = [], ...data] = rows;
  return String(data.find(([first]) => first === option)?.[headings.indexOf(heading)] ?? "");
};

const hasVerdict = (option: string, begins: string) => (rows: Rows): boolean =>
  cellOf(rows, option, "verdict").startsWith(begins) && /; \d+ to settle$/.test(cellOf(rows, option, "verdict"));

const cut = (
  pieces: readonly (readonly (string | number)[])[], drawn: string, wide: string, from: string, further: WorkedCase["given"] = {},
): WorkedCase => ({
  given: { costs: COSTS, terms: TERMS, pieces, stock: STOCK, ...further },
  shows: [{ option: "as drawn", boardsToBuy: drawn, verdict: "no stair given" }, { option: "wide", boardsToBuy: wide }],
  from,
});

const RISE_OF_15 = [["total rise", 109.25], ["risers", 14], ["run", 10]] as const;

export const alternateCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  ALTERNATES: [
    {
      given: {
        costs: [
          ["part", "item", "kind", "taxed", "quantity", "unit", "cost", "price", "option"],
          ["hall", "oak", "material", "", 1, "each", 200, 200, ""],
          ["hall", "plugs", "material", "no", 1, "each", 50, 50, ""],
          ["hall", "fitting", "", "", 2, "hour", 100, 50, ""],
          ["hall", "hanging", "labour", "", 3, "each", 60, 20, ""],
          ["hall", "cove", "", "", 1, "each", 0, "included", ""],
          ["hall", "cap", "", "", 1, "each", "included", "", ""],
          ["hall", "dust", "", "", 1, "each", "", "", ""],
          ["hall", "total", "", "", "", "", 410, "", ""],
          ["Ash for oak", "ash", "", "", 1, "each", -80, -80, "ash"],
          ["Ash for oak", "sanding", "subcontract", "", 90, "minute", 30, 20, "ash"],
          ["Ash for oak", "fitting", "", "", -30, "minute", -25, 50, "ash"],
        ],
        terms: [["label", "rate"], ["tax paid on materials", 0.1], ["burden", 0.5]],
      },
      gives: [
        ["option", "cost", "price", "add or deduct", "hours", "verdict", "boards to buy", "note"],
        [
          "as drawn", 510, 510, 0, 2, "no stair given", "no pieces given",
          "cost is 0 or empty in row 8 (dust); hours not given for row 5 (hanging): quantity and a unit of time",
        ],
        ["ash", 414.5, 414.5, -95.5, 1.5, "no stair given", "no pieces given", "Ash for oak"],
      ],
      from:
        "by hand: 200 and 50 of goods, 20 of tax on the oak, 160 of labour and 80 of burden are 510; the ash takes off 80, its tax 8, 25 " +
        "of labour and 12.50, and adds 30; half an hour less",
    },
    {
      given: {
        costs: [["item", "cost", "kind", "option"], ["fitting", 80, "labour", ""], ["railing", 50, "labour", ""], ["ash", 20, "", "ash"]],
        terms: TERMS,
        stair: RISE_OF_15,
        pieces: [["length"], [40]],
        headings: false,
      },
      gives: [
        [
          "as drawn", 130, 260, 0, "not given", "no code given", "no stock given",
          "hours not given for row 2 (fitting) and 1 more: quantity and a unit of time",
        ],
        ["ash", 150, 300, 40, "not given", "no code given", "no stock given", ""],
      ],
      from: "by hand: 130 / 0.5 and 150 / 0.5",
    },
    {
      given: {
        costs: COSTS, terms: TERMS, stair: RISE_OF_15, code: "irc-2021",
        changes: [["option", "label", "value"], ["wide", "risers", 15]],
      },
      keeps: (rows) =>
        hasVerdict("as drawn", "fails riser height (R311.7.5.1);")(rows) && hasVerdict("wide", "none fail;")(rows) &&
        cellOf(rows, "as drawn", "boards to buy") === "no pieces given",
      from: "IRC 2021 R311.7.5.1, at most 7 3/4: by hand 109 1/4 / 14 = 7.804, / 15 = 7.283",
    },
    {
      given: {
        costs: COSTS, terms: TERMS, stair: RISE_OF_15, code: "irc-2021",
        changes: [["option", "label", "value"], ["wide", "run", 9.5]],
        amendments: [["item", "limit", "authority"], ["riser height", "8 in", "Alder County (invented)"]],
      },
      keeps: (rows) => hasVerdict("as drawn", "none fail;")(rows) && hasVerdict("wide", "fails tread depth (R311.7.5.2);")(rows),
      from: "by hand: 7.804 is under 8; 9 1/2 is under the 10 of IRC 2021 R311.7.5.2",
    },
    {
      given: { costs: COSTS, terms: TERMS, stair: [["total rise", 108.5], ["risers", 14], ["run", 11.5]], code: "nbc-ca-2020" },
      keeps: (rows) => cellOf(rows, "as drawn", "verdict").startsWith("none fail; may fail riser height public (Table 9.8.4.1.); "),
      from: "NBC 2020 Table 9.8.4.1.: private 125 to 200 mm, public 125 to 180 mm, and nobody gave the use; by hand 7 3/4 x 25.4 = 196.85",
    },
    cut(
      [
        ["label", "length", "quantity", "option"],
        ["tread", 40, 2, ""], ["riser", 90, 3, ""], ["tread", 50, 2, "wide"], ["riser", 90, "none", "wide"],
      ],
      "4: 4 narrow", "2: 2 narrow",
      "by hand: two of 40 on one board, a 90 on each of three; two of 50 are 100 and more than 96, and the risers are left out",
    ),
    cut(
      [["label", "length", "width", "thickness", "grade", "option"],
        ["tread", 40, 11, 0.75, "", ""], ["riser", 40, 7, 0.75, "", ""],
        ["tread", 40, 11, 1.25, "", "wide"], ["riser", 40, 7, 0.75, "clear", "wide"]],
      "1: 1 broad", "2: 1 thick, 1 clear",
      "by hand: an 11 wide tread needs the broad board, which holds the riser too; at 1 1/4 the thick one, and clear its own",
    ),
    cut(
      [["item", "length", "depth", "option"], ["tread", 90, 7, ""], ["post", 90, 7, ""], ["post", 40, 11, "wide"]],
      "2: 2 narrow", "2: 1 narrow, 1 broad", "by hand: the post alone is another, 11 deep",
    ),
    cut(
      [["step", "length", "height", "option"], [1, 90, 7, ""], [2, 90, 7, ""], [2, 40, 11, "wide"]],
      "2: 2 narrow", "2: 1 narrow, 1 broad", "by hand: the second step alone is another, 11 high",
    ),
    cut(
      [["length", "quantity", "option"], [47.9, 2, ""], [47.4, 2, "wide"]],
      "1: 1 narrow", "1: 1 narrow", "by hand: 2 x 47.9 and a kerf of 1/8 are 95.925; 2 x 47.4 less",
      { kerf: 0.125 },
    ),
    cut(
      [["length", "quantity", "option"], [47.9, 2, ""], [47.4, 2, "wide"]],
      "2: 2 narrow", "1: 1 narrow", "by hand: a kerf of 1/2 and 2 x 47.9 are 96.3, and with 2 x 47.4 95.3",
      { kerf: 0.5 },
    ),
    cut(
      [["length", "quantity", "option"], [47.4, 2, ""], [46.4, 2, "wide"]],
      "2: 2 narrow", "1: 1 narrow", "by hand: 1 is trimmed off each end: 94 hold 2 x 46.4 and 1/8, and 2 x 47.4 not",
      { trim: 1 },
    ),
    {
      given: {
        costs: COSTS, terms: TERMS, pieces: [["length", "option"], [400, ""], [800, "wide"]], stock: [["length", "price"], [500, 9]],
        unit: "mm",
      },
      shows: [
        { option: "as drawn", boardsToBuy: "1: 1 of 500 mm" },
        {
          option: "wide",
          boardsToBuy:
            "cannot be cut: length: piece number 1 is 800 mm, more than the 500 mm that can be cut from the longest stock of its grade",
        },
      ],
      from: "by hand: 400 is under 500, and 800 over",
    },
    {
      given: {
        costs: COSTS, terms: TERMS, pieces: [["length", "option"], [40, ""], [80, "wide"]], stock: [["length", "price"], [50, 9]],
        unit: "in",
      },
      shows: [{ option: "as drawn", boardsToBuy: '1: 1 of 50"' }],
      from: "by hand: 40 is under 50",
    },
    {
      given: {
        costs: COSTS, terms: TERMS, pieces: [["label", "length", "option"], ["post", "long", "wide"], ["rail", 40, ""]],
        stock: [["length", "price"], [50, 9]],
      },
      shows: [
        { option: "as drawn", boardsToBuy: '1: 1 of 50"' },
        {
          option: "wide",
          boardsToBuy:
            'not planned: length in row 2 (post): read "long", which is not a length; write 7 5/8", 9\' 1 1/2" or "2781 mm"',
        },
      ],
      from: "by hand: what cannot be read is of one alternate, and the bid as drawn stands",
    },
    {
      given: {
        costs: COSTS, terms: TERMS, stair: RISE_OF_15, code: "irc-2021",
        changes: [["option", "label", "value"], ["wide", "run", ""], ["wide", "risers", 15]],
      },
      shows: [{ option: "wide", verdict: "not checked: value in row 2 (run): is empty or 0; give a value" }],
      from: "by hand: no run is typed",
    },
    {
      given: {
        costs: COSTS, terms: TERMS, stair: RISE_OF_15, code: "irc-2021",
        changes: [["option", "label", "value"], ["wide", "run", 10], ["wide", "total run", 117]],
      },
      shows: [
        {
          option: "wide", verdict: 'no stair: run: 10" disagrees with 9", the total run over the treads; they may differ by 1/64" at most',
          boardsToBuy: "no pieces given",
        },
      ],
      from: "by hand: 117 over 13 treads is 9",
    },
  ],
};
