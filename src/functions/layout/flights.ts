import { flightFigures } from "../../solver/layout/flights/flight-figures";
import { flightStair } from "../../solver/layout/flights/flight-stair";
import { isProblem } from "../../solver/problem";
import { words } from "../../solver/words";
import { CAUTION } from "../caution";
import { declare, headings } from "../declare";
import { FLIGHT_PROBLEMS } from "../flight-problems";
import { flights } from "../tables";

/** More than any stair between two floors has; every flight is looked at under every other. */
const MOST_FLIGHTS = 30;

export const FLIGHTS = declare({
  id: "FLIGHTS",
  group: "Layout",
  says: "A stair of several flights with landings: one equal rise, landing heights, sizes in plan, opening, rails at turns.",
  parameters: {
    stair: {
      kind: "stair",
      says:
        "The whole stair: total rise, and what all flights share, such as run, width and nosing; for the opening headroom and floor " +
        "thickness, for the rails handrail height and landing guard height.",
    },
    flights: { kind: "table", table: flights, badRows: "refuse", rows: MOST_FLIGHTS, says: "One row per flight, from the bottom." },
    headings,
  },
  result: {
    kind: "table",
    says:
      "The stair first, then each flight with the landing at its top, from the bottom. Left and right are as seen going up. Sizes in " +
      "plan are between riser faces, landing edges and skirts. Headroom under a landing is not worked out: nobody says how thick it is.",
    columns: {
      flight: { kind: "label", says: "Name of the flight, or stair." },
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in or mm." },
      note: { kind: "text", says: "Where it is taken from, or what is wanted to find it." },
    },
  },
  problems: FLIGHT_PROBLEMS,
  examples: [
    {
      given: {
        stair: [
          ["total rise", 108.5],
          ["run", 10],
          ["width", 36],
          ["headroom", 80],
          ["floor thickness", 11],
        ],
        flights: [
          ["flight", "risers", "turn"],
          [1, 7, "quarter left"],
          [2, 8, ""],
        ],
      },
      shows: [
        { flight: "stair", label: "unit rise", value: 7.233333333333333, unit: "in" },
        { flight: "stair", label: "length in plan", value: 96 },
        { flight: "stair", label: "width in plan", value: 106 },
        { flight: 1, label: "landing height", value: 50.63333333333333 },
        { flight: 1, label: "opening over this flight", value: 45.80645161290323 },
        { flight: 2, label: "opening over this flight", value: "all" },
      ],
      from:
        "by hand: 108 1/2 / 15; 6 x 10 + 36 and 36 + 7 x 10; 7 x 7.2333; 80 + 11 is 33.1333 more than the 57.8667 of the upper " +
        "flight, and 33.1333 x 10 / 7.2333 = 45.81",
    },
    {
      given: {
        stair: [
          ["total rise", 108.5],
          ["run", 10],
          ["width", 36],
          ["handrail height", 36],
        ],
        flights: [
          ["flight", "risers", "turn", "well", "newel past"],
          [1, 8, "half right", 4, 2],
          [2, 7, "", "", ""],
        ],
      },
      shows: [
        { flight: "stair", label: "length in plan", value: 106 },
        { flight: "stair", label: "width in plan", value: 76 },
        {
          flight: "stair", label: "top riser face from the first", value: 10,
          note: "past the first riser face, seen going up flight 1",
        },
        { flight: 1, label: "landing height", value: 57.86666666666667 },
        { flight: 1, label: "rails apart at the newel", value: 4.34, note: "the rail from above is higher" },
      ],
      from:
        "by hand: 7 x 10 + 36; 36 + 4 + 36; 7 runs up and 6 back; 8 x 7.2333; one rise less 2 + 2 in of the 10 in run, 7.2333 x " +
        "0.6 = 4.34",
    },
    {
      given: {
        stair: [
          ["total rise", 108.5],
          ["risers", 14],
          ["run", 10],
          ["width", 36],
        ],
        flights: [
          ["flight", "risers", "turn"],
          [1, 7, "quarter left"],
          [2, 8, ""],
        ],
      },
      fails: "#VALUE!",
      says: "risers: the flights have 15 in all, which disagrees with 14 of the stair; change one of them, or leave the stair's out",
      from: "by hand: 7 + 8",
    },
  ],
  source:
    "Coordinates in plan and height: rise = total rise / all risers; a rail runs on along its nosing line to the newel's centre, so " +
    "with one run two rails meet r x (1 - (newel past + newel short) / run) apart; opening = (headroom + floor thickness) x run / " +
    "rise, carried over the landing onto the flight below.",
  caution: CAUTION,
  solve: ({ stair, flights: rows }) => {
    const found = flightStair(stair.given, stair.assumed, rows);
    if (isProblem(found)) return found;
    return flightFigures(found).map(({ flight, key, kind, value, note = "" }) => ({
      flight,
      label: words(key),
      value: value === undefined ? undefined : { kind, value },
      note,
    }));
  },
});
