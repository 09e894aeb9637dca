import { besideBadRows } from "../../solver/bad-row";
import { closureLimits } from "../../solver/fit/closure-limits";
import { riserActs } from "../../solver/fit/riser-acts";
import { STAIR_LABELS } from "../../solver/stair-labels";
import { ACT_COLUMNS, actRows } from "../act-words";
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
    readings: riserRows,
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
          [2, 7, 36, 36, "square"],
        ],
        openEnd: "right",
        lap: 0.25,
      },
      shows: [{ step: 2, number: 1, act: "RIP", distance: 7, tape: "7", unit: "in" }],
      from: "by hand: 36 square and 1/4 past the open skirt, 7 high",
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
