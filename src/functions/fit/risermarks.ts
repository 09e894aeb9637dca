import { besideBadRows } from "../../solver/bad-row";
import { closureLimits } from "../../solver/fit/closure-limits";
import { riserActs } from "../../solver/fit/riser-acts";
import { STAIR_LABELS } from "../../solver/stair-labels";
import { ACT_COLUMNS, actRows, MOST_STEPS } from "../act-words";
import { CAUTION, SAW_CAUTION } from "../caution";
import { declare, headings, unit } from "../declare";
import { tapeDivisions } from "../tape-divisions";
import { RISERFIT } from "./riserfit";

/** A bevel past this takes off more of the edge than it leaves: common practice, no source. */
const STEEPEST_BEVEL = 45;

const { readings: riserRows, openEnd, runPast, thickness, gap, undercut } = RISERFIT.parameters;

export const RISERMARKS = declare({
  id: "RISERMARKS",
  words: "riser marks",
  group: "Fit",
  says: "What is marked and sawn to make each riser, act by act in cutting order: the ticket for the bench.",
  parameters: {
    readings: { ...riserRows, rows: MOST_STEPS },
    openEnd,
    runPast,
    thickness,
    gap,
    undercut,
    skirtThickness: {
      kind: "length", sign: "not negative", default: "3/4", says: "Thickness of the open skirt, over which the notch goes.",
    },
    lap: {
      kind: "length",
      sign: "not negative",
      default: STAIR_LABELS.lap.default.inches,
      says:
        "How far the riser laps below the top of the tread; with none there is no notch, and riser 1, on the floor, has none either.",
    },
    clearance: { kind: "length", sign: "not negative", default: 0, says: "Room for the tread, added to the notch both ways." },
    bevel: {
      kind: "number",
      sign: "not negative",
      most: STEEPEST_BEVEL,
      default: 0,
      says: "Degrees the back of the top edge is bevelled by, for adhesive.",
    },
    tape: tapeDivisions,
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per act, step after step. An end at a skirt comes first, then both marks from it, both diagonals, the other end with " +
      "what runs past in it, the notch and the bevel. A step whose readings disagree says READ AGAIN and gives nothing to saw.",
    columns: ACT_COLUMNS,
  },
  problems: RISERFIT.problems,
  examples: [
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [2, 7, 23.75, 23.75, "square"],
        ],
        openEnd: "right",
        runPast: 0.25,
        lap: 0.25,
        bevel: 45,
      },
      shows: [
        {
          step: 2,
          number: 1,
          act: "RIP",
          distance: 7,
          tape: "7",
          unit: "in",
          note:
            "high, bottom edge to the rip fence; 24 long when done; begin with a longer blank; unchecked: one more diagonal would check " +
            "this step",
        },
        {
          number: 2,
          act: "SAW LEFT END",
          swing: "square",
          tilt: "upright",
          note: "face up, bottom toward you, top edge at the saw's fence; strike it first; leave the line",
        },
        { number: 3, act: "MARK RIGHT TOP", hookOn: "hook the left top corner, along the top", distance: 24, tape: "24" },
        { number: 4, act: "MARK RIGHT BOTTOM", hookOn: "hook the left bottom corner, along the bottom", distance: 24 },
        { number: 5, act: "CHECK", hookOn: "hook the left top corner, to mark 4", distance: 25, tape: "25" },
        { number: 6, act: "CHECK", hookOn: "hook the left bottom corner, to mark 3", distance: 25 },
        { number: 8, act: "MARK NOTCH", hookOn: "hook the right end, along the bottom", distance: 1, tape: "1" },
        { number: 9, act: "MARK NOTCH", hookOn: "hook the bottom, up the right end", distance: 0.25, note: "on the face and on the back" },
        {
          number: 10,
          act: "SAW NOTCH",
          note: "off the lower right corner, parallel to the end and to the bottom; notch right through",
        },
        { number: 11, act: "MARK BEVEL", distance: 1, note: "the bevel stops here: leave the last 1 unbevelled" },
        {
          number: 12, act: "BEVEL TOP", offset: "back in by 3/4", tilt: "45.0°, off the back of the top edge, not off the face",
        },
      ],
      from:
        "by hand: 23 3/4 and 1/4 past the open skirt, 7-24-25; the notch 1/4 + 3/4 along and 1/4 up, as much of the top stays square; " +
        "at 45 degrees the bevel takes off the thickness",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "left angle", "right angle", "left flare", "right flare"],
          [4, 10, 36, "square", "square", 45, -45],
        ],
      },
      shows: [
        {
          act: "SAW LEFT END",
          tilt:
            "45.0°, top of the blade to the left, away from the piece: face longer; square on the end: light shows at the back",
        },
        {
          act: "SAW RIGHT END",
          tilt: "45.0°, top of the blade to the left, over the piece: back longer; square on the end: light shows at the face",
          note: "face up, bottom toward you, top edge at the saw's fence; from mark 3 to mark 4; leave the line",
        },
      ],
      from: "by hand: the left skirt opens to the front, so the face reaches further; the right one closes, so the back does",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [1, 6, 36, 40.5, "square"],
        ],
        lap: 0.25,
      },
      shows: [
        {
          step: 1,
          number: 7,
          act: "SAW RIGHT END",
          swing: "36.9°, near end of the cut to the right",
          offset: "top in by 4 1/2",
          note: "face up, bottom toward you, top edge at the saw's fence; from mark 3 to mark 4; leave the line",
        },
      ],
      from: "by hand: 4 1/2 over 6, a 3-4-5 triangle; riser 1 has no notch",
    },
  ],
  source: `${RISERFIT.source} Notch and square stretch: skirt thickness + run past + clearance.`,
  caution: `${CAUTION} ${SAW_CAUTION}`,
  solve: ({ readings, tape, unit: used, headings: _headings, ...piece }) =>
    besideBadRows(
      readings,
      (good) => riserActs(good, { ...piece, unit: used, closure: closureLimits(tape, used) }).map((acts) => actRows(acts, used)),
      ({ label, bad }) => actRows({ step: label, acts: [], bad }, used),
    ).flat(),
});
