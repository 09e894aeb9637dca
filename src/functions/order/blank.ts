import { resolvedStair } from "../../solver/layout/resolved-stair";
import { blankList } from "../../solver/order/blank-list";
import { isProblem } from "../../solver/problem";
import { declare, headings } from "../declare";
import { ORDER_PROBLEMS } from "../order-problems";
import { withReadings } from "../with-readings";

export const BLANK = declare({
  id: "BLANK",
  group: "Order",
  says: "Sizes of the blanks a stair needs: treads, returns, landing nosing or landing tread, risers.",
  parameters: {
    stair: { kind: "stair", says: "The stair, or the result of LAYOUT with width and open end." },
    readings: withReadings,
    headings,
  },
  result: {
    kind: "table",
    says: "One row per kind of piece, at the size that serves every step.",
    columns: {
      item: { kind: "label", says: "Kind of piece." },
      length: { kind: "length", says: "Skirt to skirt with the overhang of returns and the saw allowance." },
      width: { kind: "length", says: "For a tread its depth, run + nosing and the saw allowance; for a riser its height." },
      thickness: { kind: "length", says: "Thickness of the piece." },
      quantity: { kind: "count", says: "How many." },
      note: { kind: "text", says: "Where the size comes from." },
    },
  },
  problems: ORDER_PROBLEMS,
  examples: [
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
          ["width", 36.75],
          ["open end", "right"],
        ],
      },
      shows: [
        { item: "tread", length: 38, width: 11.25, thickness: 1, quantity: 13, note: "from the nominal width" },
        { item: "return", length: 12.5, width: 1.25, quantity: 13 },
        { item: "landing nosing", quantity: 1 },
        {
          item: "riser",
          length: 37,
          thickness: 0.75,
          quantity: 14,
          note:
            "rise less tread, plus lap; the first has no lap; 1/4 in longer at each open end " +
            "(assumed: type run past where that is not so)",
        },
      ],
      from:
        "by hand: 36 3/4 + 1 1/4 overhang = 38; 10 + 1 1/4 = 11 1/4; 11 1/4 + 1 1/4 = 12 1/2; a riser 1/4 past the open skirt, 36 " +
        "3/4 + 1/4 = 37; 13 treads under a floor that is the last",
    },
    {
      given: {
        stair: [
          ["total rise", 52.5],
          ["risers", 7],
          ["run", 10],
          ["width", 36],
          ["landing tread", 5.5],
          ["landing tread length", 76],
        ],
      },
      shows: [
        { item: "tread", length: 36, width: 11.25, quantity: 6 },
        {
          item: "landing tread", length: 76, width: 5.5, thickness: 1, quantity: 1,
          note: "nosing piece of the landing at the top of the flight",
        },
        { item: "riser", length: 36, quantity: 7 },
      ],
      from: "by hand: six treads under a landing that is the last; its own piece once, across both flights of a half turn, 36 + 4 + 36",
    },
    {
      given: {
        stair: [
          ["total rise", 107.5],
          ["risers", 14],
          ["run", 10],
        ],
      },
      fails: "#VALUE!",
      says: "width: is missing, empty or 0; give width, skirt to skirt, or a table of readings",
      from: "by hand: neither a width nor a reading gives a length",
    },
  ],
  source:
    "Depth = run + nosing (+ trim), length = skirt to skirt + overhang of each return (+ trim), riser height = rise - tread " +
    "thickness + lap. Common practice, no source.",
  solve: ({ stair, readings }) => {
    const resolved = resolvedStair(stair.given);
    return isProblem(resolved) ? resolved : blankList(resolved, readings, stair.unit);
  },
});
