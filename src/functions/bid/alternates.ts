import { alternateRows } from "../alternate-rows";
import { BID_PROBLEMS, COST_RULES, TERM_RULES } from "../bid-rules";
import { withTerms } from "../bid-terms";
import { CAUTION } from "../caution";
import { CODE_PROBLEMS } from "../code-problems";
import { CUTTING } from "../cutting";
import { PLANNED } from "../sheets";
import { declare, headings } from "../declare";
import { alternatePieces, amendments, changes, countedCosts, terms as termTable } from "../tables";

const COSTS = [
  ["part", "item", "quantity", "unit", "cost", "option"],
  ["stair", "blanks and boards", "", "", 900, ""],
  ["stair", "fitting", 10, "hour", 580, ""],
  ["White oak for red", "white oak", "", "", 236.8, "white oak"],
  ["One riser more", "blank and board", "", "", 74, "15 risers"],
  ["One riser more", "fitting", 45, "minute", 43.5, "15 risers"],
] as const;

const TERMS = [["label", "rate"], ["overhead on cost", 0.12], ["profit of price", 0.15], ["round up to", 5]] as const;

const STAIR = [["total rise", 109.25], ["risers", 14], ["run", 10], ["nosing", 1.25]] as const;

export const ALTERNATES = declare({
  id: "ALTERNATES",
  group: "Takeoff and bid",
  says: "The bid as drawn and its alternates side by side: cost, price, hours, what the code says, and the boards to buy.",
  parameters: {
    costs: {
      kind: "table",
      table: countedCosts,
      rows: 2_000,
      badRows: "refuse",
      says: "Costs, as for BID; `option` names an alternate. Labour with a quantity in a unit of time gives the hours.",
    },
    terms: { kind: "table", table: termTable, rows: 100, badRows: "refuse", says: "The terms, as for BID." },
    changes: {
      kind: "table",
      table: changes,
      rows: 500,
      badRows: "answer",
      optional: true,
      says:
        "What of the stair is another with an alternate. What LAYOUT works out follows anew; what was measured or typed, such as a guard " +
        "gap, stands as drawn unless it is changed too.",
      without: "Left out: no alternate changes the stair.",
    },
    stair: {
      kind: "stair",
      optional: true,
      says: "The stair as drawn, or the result of LAYOUT.",
      without: "Left out: nothing is checked.",
    },
    code: { kind: "text", default: "", says: "The code and its edition, as for CHECK; left empty, nothing is checked." },
    amendments: {
      kind: "table",
      table: amendments,
      rows: 500,
      badRows: "refuse",
      optional: true,
      says: "Limits the local authority has changed, as for CHECK.",
      without: "Left out: the code as printed.",
    },
    pieces: {
      kind: "table",
      table: alternatePieces,
      rows: 500,
      badRows: "answer",
      optional: true,
      says: "What is to be cut, as for BUY; `option` names an alternate, whose pieces stand in place of those of the same label.",
      without: "Left out: no boards are counted.",
    },
    stock: { ...CUTTING.stock, rows: 200, optional: true, without: "Left out: no boards are counted." },
    kerf: CUTTING.kerf,
    trim: { ...PLANNED.trim, says: "Cut off each end of every stick, of sheets off all four edges; as `1/2 x 0` ends x edges." },
    unit: { kind: "unit", default: "in", says: "Unit of bare numbers where no stair is given; a stair table has its own." },
    headings,
  },
  result: {
    kind: "table",
    says: "The bid as drawn, then a row per alternate in the order in which they are first named.",
    columns: {
      option: { kind: "label", says: "as drawn, or the alternate as first written." },
      cost: { kind: "money", says: "Direct cost: the row `direct` of BID. `not in costs` where no cost names the alternate." },
      price: { kind: "money", says: "Price before tax, rounded up as the terms say: the row `price` of BID." },
      addOrDeduct: { kind: "money", says: "Price less the price as drawn; a deduct is negative." },
      hours: { kind: "number", says: "Hours of labour, by its rows with a unit of time; `not given` where no labour says hours." },
      verdict: {
        kind: "text",
        says:
          "What CHECK makes of the stair: `fails` and `may fail`, by what nobody gave, with limit and clause; `none fail`; how many rows " +
          "a person has to settle. `as drawn` where the alternate changes nothing of the stair; why, where it is no stair.",
      },
      boardsToBuy: {
        kind: "text",
        says:
          "How many boards BUY lists, then how many of each. `as drawn` where the alternate has no pieces of its own; why, where they " +
          "cannot be cut.",
      },
      note: {
        kind: "text",
        says: "The part that the alternate's costs name; costs that are 0 or empty; labour that does not say its hours.",
      },
    },
  },
  problems: {
    "taxed-without-goods": BID_PROBLEMS["taxed-without-goods"],
    "nothing-left": BID_PROBLEMS["nothing-left"],
    ...CODE_PROBLEMS,
    "amended-limit-unreadable": {
      cell: "#VALUE!",
      says: 'amendments, {item}: read "{given}", which is no limit of that kind; write it as CHECK prints it, or none',
    },
    "too-many-alternates": {
      cell: "#VALUE!",
      says: "costs: {count} alternates are more than one table takes; give {most} or fewer",
    },
    "stair-in-inches": {
      cell: "#VALUE!",
      says: "stair: is in inches, but unit is mm; give the stair a row unit with mm, or leave unit out",
    },
  },
  examples: [
    {
      given: {
        costs: COSTS, terms: TERMS, stair: STAIR, code: "irc-2021",
        changes: [["option", "label", "value"], ["15 risers", "risers", 15]],
        pieces: [
          ["label", "length", "quantity", "option"],
          ["riser", 36, 14, ""],
          ["skirt", 160, 2, ""],
          ["riser", 36, 15, "15 risers"],
        ],
        stock: [["label", "length", "price"], ["poplar 8 ft", 96, 18], ["poplar 16 ft", 192, 38]],
      },
      shows: [
        {
          option: "as drawn", cost: 1480, price: 1955, addOrDeduct: 0, hours: 10, boardsToBuy: "6: 2 poplar 8 ft, 4 poplar 16 ft", note: "",
        },
        {
          option: "white oak", cost: 1716.8, price: 2265, addOrDeduct: 310, hours: 10, verdict: "as drawn", boardsToBuy: "as drawn",
          note: "White oak for red",
        },
        {
          option: "15 risers", cost: 1597.5, price: 2105, addOrDeduct: 150, hours: 10.75, boardsToBuy: "5: 5 poplar 16 ft",
          note: "One riser more",
        },
      ],
      from:
        "by hand: 1,480 x 1.12 / 0.85 = 1,950.12, to the next whole 5; 1,716.80 gives 2,262.14, 1,597.50 gives 2,104.94; 45 minutes are " +
        "3/4 h; a skirt takes a 16 ft board, which holds 5 risers, an 8 ft one 2: for 14 two and two at 112, for 15 three at 114",
    },
    {
      given: {
        costs: [
          ["item", "cost", "kind", "option"],
          ["oak", 100, "", ""],
          ["fitting", 50, "labour", ""],
          ["longer treads", 20, "", "wide"],
          ["cap", "", "", "wide"],
        ],
        terms: [["profit of price", 0.25]],
        stair: STAIR,
        code: "irc-2021",
        changes: [["option", "label", "value"], ["wide", "rissers", 15], ["wid", "risers", 13]],
        pieces: [["label", "length", "option"], ["tread", 36, ""], ["tread", 100, "wide"]],
        stock: [["length", "price"], [96, 30]],
      },
      shows: [
        {
          option: "as drawn", cost: 150, price: 200, hours: "not given", boardsToBuy: '1: 1 of 96"',
          note: "hours not given for row 3 (fitting): quantity and a unit of time",
        },
        {
          option: "wide", cost: 170, price: 226.67, addOrDeduct: 26.67, hours: "not given",
          verdict: 'not checked: changes, label: "rissers" is not known; nearest is "risers"',
          boardsToBuy: 'cannot be cut: length: piece tread is 100", more than the 96" that can be cut from the longest stock of its grade',
          note: "cost is 0 or empty in row 5 (cap)",
        },
        {
          option: "wid", cost: "not in costs", price: "not in costs", addOrDeduct: "not in costs", hours: "not in costs",
          boardsToBuy: "as drawn", note: 'in no row of costs; nearest is "wide": write one name, or its costs',
        },
      ],
      from: "by hand: 150 / 0.75 and 170 / 0.75; a piece of 100 is longer than the only board; wid is a slip of wide",
    },
    {
      given: { costs: [["item", "cost"], ["oak", 100]], terms: [["profit of price", 1.5]] },
      fails: "#VALUE!",
      says:
        'rate in row 1 (profit of price): 1.5 is 150 %, more than the whole; write "150%" if it is meant, else a share under 1',
      from: "common practice, no source: no price is profit alone",
    },
  ],
  source: `Each row is a BID, a CHECK and a BUY of the alternate. ${TERM_RULES} ${COST_RULES}`,
  caution: CAUTION,
  solve: ({ terms, ...given }) => withTerms("terms", terms, (stated) => alternateRows(given, stated)),
});
