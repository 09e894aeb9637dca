import { besideBadRows } from "../../solver/bad-row";
import { closureLimits } from "../../solver/fit/closure-limits";
import { riserFits } from "../../solver/fit/riser-fit";
import { STAIR_LABELS } from "../../solver/stair-labels";
import { SAW_CAUTION } from "../caution";
import { declare, headings, unit } from "../declare";
import { FIT_PROBLEMS } from "../fit-problems";
import { riserReadings } from "../tables";
import { tapeDivisions } from "../tape-divisions";

/** A saw does not tilt further. Common practice, no source. */
const STEEPEST_UNDERCUT = 45;

export const RISERFIT = declare({
  id: "RISERFIT",
  words: "riser fit",
  group: "Fit",
  says: "Cut lengths, angles and tilts of risers, step by step from tape readings.",
  parameters: {
    readings: {
      kind: "table",
      table: riserReadings,
      badRows: "answer",
      rows: 2_000,
      says: "One row per riser: height, top, bottom, and what fixes the ends; or height, top and both angles.",
    },
    openEnd: {
      kind: "choice",
      options: STAIR_LABELS.openEnd.options,
      default: STAIR_LABELS.openEnd.default.value,
      says: "Ends where the riser runs past the skirt.",
    },
    runPast: {
      kind: "reading",
      sign: "not negative",
      default: STAIR_LABELS.runPast.default.inches,
      says: "How far it runs past the open skirt.",
    },
    thickness: { kind: "reading", sign: "positive", default: STAIR_LABELS.riserThickness.default.inches, says: "Thickness of the riser." },
    gap: { kind: "reading", sign: "not negative", default: 0, says: "Clearance to the skirt at each closed end, square to the skirt." },
    undercut: {
      kind: "number",
      sign: "not negative",
      most: STEEPEST_UNDERCUT,
      default: 0,
      says: "Degrees every closed end is undercut by on purpose: the face stays, the back is relieved.",
    },
    tape: tapeDivisions,
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per riser. Lengths are on the face. Angles are in degrees: a cut angle is positive where the bottom is longer, a " +
      "tilt where the face is longer (undercut) and negative where the back is longer; left set and right set say both in words.",
    columns: {
      step: { kind: "label", says: "Step of the reading." },
      length: { kind: "reading", says: "Blank: from end to end of face and back, with what runs past." },
      longPoint: { kind: "reading", says: "Over all." },
      shortPoint: { kind: "reading", says: "Where top and bottom overlap." },
      top: { kind: "reading", says: "Along the top edge." },
      bottom: { kind: "reading", says: "Along the piece's own bottom edge." },
      leftAngle: { kind: "angle", says: "Cut angle of the left end, from square." },
      rightAngle: { kind: "angle", says: "Cut angle of the right end, from square." },
      leftTilt: {
        kind: "angle",
        says: "Tilt of the saw at the left end, square to the cut: positive is face longer (undercut), negative is back longer.",
      },
      rightTilt: { kind: "angle", says: "Tilt of the saw at the right end, alike." },
      height: { kind: "reading", says: "Height of the piece." },
      closure: {
        kind: "reading",
        says:
          "What the two diagonals, or lengths and angles, disagree by. Up to the limit a quarter of the diagonals' is added to top " +
          "and bottom.",
      },
      leftSet: {
        kind: "text",
        says:
          "Left end at the saw, piece face up, bottom toward you: which way the near end of the blade's path swings, and which " +
          "side is longer. Blade over the piece: back longer; away from it: face longer.",
      },
      rightSet: { kind: "text", says: "Right end at the saw, alike." },
      note: { kind: "text", says: "What to look at again, or why the row has no answer." },
    },
  },
  problems: {
    ...FIT_PROBLEMS,
    "nothing-gives-the-far-line": {
      cell: "#VALUE!",
      says: 'bottom: is missing; give bottom, or left angle and right angle ("square" for a measured zero, as 0 counts as empty)',
    },
  },
  examples: [
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [1, 7.5, 36, 36, "square"],
        ],
        openEnd: "right",
      },
      shows: [{ step: 1, length: 36.25, top: 36.25, bottom: 36.25, leftAngle: 0, rightAngle: 0, height: 7.5 }],
      from: "by hand: 36 square and 1/4 past the open skirt",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset", "cut height"],
          [2, 8, 36, 36.5, "square", 6],
        ],
      },
      shows: [{ step: 2, top: 36, bottom: 36.375, longPoint: 36.375, shortPoint: 36, height: 6 }],
      from: "by hand: the end runs out 1/2 over 8, so 3/8 over a piece 6 high from the top down",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "left angle", "right angle", "left flare", "right flare"],
          [4, 10, 36, "square", "square", 45, -45],
        ],
        gap: 0,
        undercut: 0,
      },
      shows: [
        {
          step: 4,
          top: 36,
          bottom: 36,
          length: 36.75,
          leftTilt: 45,
          rightTilt: -45,
          leftSet: "square, face longer 45.00°",
          rightSet: "square, back longer 45.00°",
        },
      ],
      from:
        "by hand: skirts at 45 degrees in plan move each end by the 3/4 of the thickness, one out and one in; the blank holds face " +
        "and back, 36 + 3/4",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom"],
          [3, 8, 36, 36],
        ],
      },
      shows: [
        { step: 3, note: 'diagonal: is missing; give a diagonal, a left offset or an angle, and write "square" for a measured zero' },
      ],
      from: "by hand: two lengths alone leave the ends free to lean together",
    },
  ],
  source:
    "Plane coordinates of the four corners, from the two lines measured and a diagonal, offset or angle. Tilt = atan(tan flare x " +
    "cos angle); a gap c takes c / (cos angle x cos tilt) off an end.",
  caution: SAW_CAUTION,
  solve: ({ readings, tape, unit: used, headings: _headings, ...piece }) =>
    besideBadRows(
      readings,
      (good): readonly object[] => riserFits(good, { ...piece, unit: used, closure: closureLimits(tape, used) }),
      ({ label, bad }) => ({ step: label, bad }),
    ),
});
