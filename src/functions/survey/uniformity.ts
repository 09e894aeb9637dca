import { uniformity } from "../../solver/survey/uniformity";
import { CAUTION } from "../caution";
import { declare, headings, unit } from "../declare";

export const UNIFORMITY = declare({
  id: "UNIFORMITY",
  group: "Survey",
  says: "How alike the rises or runs of a flight are.",
  parameters: {
    values: {
      kind: "lengths",
      sign: "positive",
      badCells: "refuse",
      says: "Rises or runs of one flight, bottom first; empty cells take no part.",
    },
    tolerance: {
      kind: "length",
      sign: "positive",
      optional: true,
      says: "Greatest spread your code allows; one equal to it passes.",
      without: "Left out: 3/8 in (9.525 mm), that of the IRC, and the verdict says assumed.",
    },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says: "One row per label.",
    columns: {
      label: { kind: "label", says: "largest, smallest, spread, worst neighbours, verdict." },
      value: {
        kind: "value",
        says:
          "The value; the verdict pass or fail, assumed: would pass or assumed: would fail without a tolerance, not given for a " +
          "single value.",
      },
      where: { kind: "text", says: "Place in the column, counted from the bottom." },
    },
  },
  problems: {},
  examples: [
    {
      given: { values: [[7.375], [7.5], [7.75]] },
      gives: [
        ["label", "value", "where"],
        ["largest", 7.75, "3"],
        ["smallest", 7.375, "1"],
        ["spread", 0.375, ""],
        ["worst neighbours", 0.25, "2 and 3"],
        ["verdict", "assumed: would pass", "tolerance assumed: 3/8 in of the IRC; give that of your code"],
      ],
      from: "IRC 2021 R311.7.5.1: 7 3/8 to 7 3/4 spread exactly 3/8, which passes; nobody gave the tolerance",
    },
    {
      given: { values: [[180], [185], [190], [195]], tolerance: "10 mm", unit: "mm", headings: false },
      gives: [
        ["largest", 195, "4"],
        ["smallest", 180, "1"],
        ["spread", 15, ""],
        ["worst neighbours", 5, "1 and 2"],
        ["verdict", "fail", ""],
      ],
      from: "Ontario Building Code Part 9: 180, 185, 190, 195 pass neighbour by neighbour and fail over the flight, 15 > 10",
    },
    {
      given: { values: [[7.5], [-7.5]] },
      fails: "#VALUE!",
      says: "values, row 2: must be more than 0, got -7.5",
      from: "common practice, no source: a rise is more than 0",
    },
  ],
  source: "Largest less smallest, in exact arithmetic. Without a tolerance: the spread the IRC allows within a flight, R311.7.5.1: 3/8 in.",
  caution: CAUTION,
  solve: ({ values, tolerance }) => {
    const { largest, largestAt, smallest, smallestAt, spread, neighbours, verdict } = uniformity(values, tolerance);
    return [
      { label: "largest", value: { kind: "length", value: largest }, where: String(largestAt) },
      { label: "smallest", value: { kind: "length", value: smallest }, where: String(smallestAt) },
      { label: "spread", value: { kind: "length", value: spread } },
      {
        label: "worst neighbours",
        value: neighbours && { kind: "length", value: neighbours.difference },
        where: neighbours ? `${neighbours.at} and ${neighbours.at + 1}` : "a single value has no neighbour",
      },
      {
        label: "verdict",
        value: verdict,
        where: tolerance === undefined && verdict !== "not given" ? "tolerance assumed: 3/8 in of the IRC; give that of your code" : "",
      },
    ];
  },
});
