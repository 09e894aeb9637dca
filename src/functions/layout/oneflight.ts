import { oneFlight } from "../../solver/layout/flights/one-flight";
import { isProblem } from "../../solver/problem";
import { words } from "../../solver/words";
import { declare, headings } from "../declare";
import { FLIGHT_PROBLEMS } from "../flight-problems";
import { flights } from "../tables";

/** As FLIGHTS takes. */
const MOST_FLIGHTS = 30;

export const ONEFLIGHT = declare({
  id: "ONEFLIGHT",
  words: "one flight",
  group: "Layout",
  says: "One flight of a stair of several, as a stair table of its own.",
  parameters: {
    stair: { kind: "stair", says: "The whole stair, as FLIGHTS takes it." },
    flights: { kind: "table", table: flights, badRows: "refuse", rows: MOST_FLIGHTS, says: "One row per flight, from the bottom." },
    number: { kind: "count", sign: "positive", says: "Which flight, counted from the bottom." },
    headings,
  },
  result: {
    kind: "table",
    says:
      "A stair table: it goes into LAYOUT, SKIRT, RAIL, CHECK, BLANK, ORDER and TAKEOFF as it stands. The total rise is the " +
      "flight's own, from one floor or landing to the next; the other labels are the stair's or the flight's row. A flight that ends " +
      "on a landing has a landing tread in place of the landing nosing.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in, mm or deg." },
      assumed: { kind: "text", says: "What the stair given had assumed for it." },
    },
  },
  problems: {
    ...FLIGHT_PROBLEMS,
    "no-such-flight": {
      cell: "#VALUE!",
      says: "number: {number} is more than the flights there are, {flights}; count them from the bottom",
    },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 108.5],
          ["run", 10],
          ["width", 36],
          ["upper build up", 0.75],
          ["open end", "none"],
        ],
        flights: [
          ["flight", "risers", "turn", "open end", "landing build up"],
          [1, 7, "quarter left", "", 0.5],
          [2, 8, "", "left", ""],
        ],
        number: 2,
      },
      shows: [
        { label: "total rise", value: 57.86666666666667, unit: "in", assumed: "" },
        { label: "risers", value: 8 },
        { label: "run", value: 10 },
        { label: "width", value: 36 },
        { label: "open end", value: "left" },
        { label: "lower build up", value: 0.5 },
        { label: "upper build up", value: 0.75 },
        { label: "stair height", value: 108.5 },
        { label: "stair risers", value: 15 },
        { label: "risers before turn", value: 8 },
      ],
      from: "by hand: 8 x 108 1/2 / 15; it stands on the landing and ends on the upper floor, and its own row says that its left is open",
    },
    {
      given: {
        stair: [
          ["total rise", 108.5],
          ["run", 10],
          ["width", 36],
        ],
        flights: [
          ["flight", "risers", "turn", "landing tread"],
          [1, 7, "quarter left", 5.5],
          [2, 8, "", ""],
        ],
        number: 1,
      },
      shows: [
        { label: "total rise", value: 50.63333333333333 },
        { label: "landing", value: "turn" },
        { label: "landing depth", value: 36 },
        { label: "landing width", value: 36 },
        { label: "landing tread", value: 5.5 },
        { label: "risers before turn", value: 7 },
      ],
      from: "by hand: 7 x 108 1/2 / 15; the landing is as deep as the next flight is wide, and as wide as this one",
    },
    {
      given: {
        stair: [
          ["total rise", 108.5],
          ["run", 10],
          ["width", 36],
        ],
        flights: [
          ["flight", "risers"],
          [1, 7],
          [2, 8],
        ],
        number: 3,
      },
      fails: "#VALUE!",
      says: "number: 3 is more than the flights there are, 2; count them from the bottom",
      from: "by hand: there are two",
    },
  ],
  source: "The flight's total rise = its risers x total rise / all risers, exactly; its ends' build ups are those of the floor or landing.",
  solve: ({ stair, flights: rows, number }) => {
    const lines = oneFlight(stair.given, stair.assumed, rows, number);
    return isProblem(lines)
      ? lines
      : [
          { label: "unit", value: { kind: "text", value: stair.unit }, assumed: "" },
          ...lines.map(({ key, kind, value, assumed }) => ({
            label: words(key),
            value: value === undefined ? undefined : { kind, value },
            assumed,
          })),
        ];
  },
});
