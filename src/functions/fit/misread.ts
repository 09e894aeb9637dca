import { closureLimits } from "../../solver/fit/closure-limits";
import { misread } from "../../solver/fit/misread";
import { MOST_STEPS } from "../../solver/fit/skirt-surface/surface-verdict";
import { declare, headings, unit } from "../declare";
import { SKIRT_PROBLEMS } from "../skirt-problems";
import { riserReadings, treadReadings } from "../tables";
import { tapeDivisions } from "../tape-divisions";

export const MISREAD = declare({
  id: "MISREAD",
  words: "misread",
  group: "Fit",
  says: "Which reading of a flight is likely wrong, and what it should be: every step is held against the two skirts of all the others.",
  parameters: {
    treads: {
      kind: "table",
      table: treadReadings,
      badRows: "refuse",
      rows: MOST_STEPS,
      says: "Tread readings of one flight, as for TREADFIT; 4 treads with back, front and a diagonal at least. Nothing in it is changed.",
    },
    risers: {
      kind: "table",
      table: riserReadings,
      badRows: "refuse",
      rows: MOST_STEPS,
      optional: true,
      says:
        "Riser readings of the same flight, as for RISERFIT; step k is the riser under tread k. Taken as read at the same faces as " +
        "the treads, which holds where no finished riser was on yet.",
      without: "Left out: treads alone.",
    },
    tape: tapeDivisions,
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per doubtful reading, or one row that says nothing stands out. Lengths are in the unit of the call, leans and angles " +
      "in degrees. Read it again; nothing is changed by itself. A row without a word under sure says what the skirts cannot tell.",
    columns: {
      step: { kind: "label", says: "Step of the reading; without one its row." },
      reading: { kind: "text", says: "Which reading, as its own table calls it; readings of risers say so." },
      read: { kind: "value", says: "What was typed." },
      likely: { kind: "value", says: "What it likely is, to a division of the tape." },
      why: { kind: "text", says: "What is wrong with it, or why nothing is said." },
      sure: {
        kind: "text",
        says: "`named`: no other explanation comes near; `either`: another is as likely, in a row of its own.",
      },
      unit: { kind: "text", says: "Unit of read and likely: in, mm or deg." },
    },
  },
  problems: { "step-twice": SKIRT_PROBLEMS["step-twice"] },
  examples: [
    {
      given: {
        treads: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [1, 10, 36, 35.9375, 37.125, 37.5625],
          [2, 10, 36.0625, 35.9375, 37.125, 37.625],
          [3, 10, 36.0625, 36, 37.125, 37.625],
          [4, 10, 36.0625, 37, 37.1875, 37.625],
          [5, 10, 36.125, 36, 37.1875, 37.6875],
        ],
      },
      gives: [
        ["step", "reading", "read", "likely", "why", "sure", "unit"],
        [4, "front", 37, 36, "a whole inch too long", "named", "in"],
      ],
      from: "by hand: an inch was added to a front of 36 in a flight whose other fronts are 35 15/16 to 36",
    },
    {
      given: {
        treads: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [1, 10, 36, 35.9375, 37.125, 37.5625],
          [2, 10, 36.0625, 35.9375, 37.125, 37.625],
          [3, 10, 36.0625, 36, 37.625, 37.125],
          [4, 10, 36.0625, 36, 37.1875, 37.625],
          [5, 10, 36.125, 36, 37.1875, 37.6875],
        ],
      },
      shows: [
        {
          step: 3,
          reading: "diagonal",
          read: 37.625,
          likely: 37.125,
          why: "diagonal and second diagonal exchanged",
          sure: "named",
          unit: "in",
        },
        { step: 3, reading: "second diagonal", read: 37.125, likely: 37.625, why: "diagonal and second diagonal exchanged" },
      ],
      from: "by hand: the two were put in each other's place; they close as well either way, so the step by itself cannot tell",
    },
    {
      given: {
        treads: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [1, 10, 36, 35.9375, 37.125, 37.5625],
          [2, 10, 36.0625, 35.9375, 37.125, 37.625],
          [3, 10, 36.0625, 36, 37.125, 37.625],
          [4, 10, 36.0625, 36, 37.1875, 37.625],
          [5, 10, 36.125, 36, 37.1875, 37.6875],
        ],
      },
      gives: [
        ["step", "reading", "read", "likely", "why", "sure", "unit"],
        ["", "", "", "", "nothing stands out", "", ""],
      ],
      from: "by hand: every column of the flight moves by a sixteenth from step to step",
    },
  ],
  source:
    "Generalised least squares: each skirt is a plane with slow waves, roughness and steps out of square, in three grades of " +
    "straightness; what each single reading, or each exchange, takes off the weighted sum of squares. Weights by trial on made-up flights.",
  solve: ({ treads, risers, tape, unit: used }) => {
    const found = misread({ treads, risers: risers ?? [], unit: used, closure: closureLimits(tape, used) });
    if ("problem" in found) return found;
    return found.map(({ read, likely, ...row }) => ({
      ...row, read, likely, unit: read === undefined ? "" : read.kind === "angle" ? "deg" : used,
    }));
  },
});
