import { closureLimits } from "../../solver/fit/closure-limits";
import { riserFits } from "../../solver/fit/riser-fit";
import { besideBadRows } from "../beside-bad-rows";
import { declare, headings, unit } from "../declare";
import { FIT_PROBLEMS } from "../fit-problems";
import { riserReadings } from "../tables";

export const RISERFIT = declare({
  id: "RISERFIT",
  group: "Fit",
  says: "Cut lengths, angles and tilts of risers, step by step from tape readings.",
  parameters: {
    readings: { kind: "table", table: riserReadings, badRows: "answer", says: "One row a riser: height, top, bottom, and what fixes the ends." },
    openEnd: { kind: "choice", options: ["none", "left", "right", "both"], default: "none", says: "Ends where the riser runs past the skirt." },
    runPast: { kind: "reading", sign: "not negative", default: "1/4", says: "How far it runs past the open skirt." },
    thickness: { kind: "reading", sign: "positive", default: "3/4", says: "Thickness of the riser." },
    tape: { kind: "count", sign: "positive", most: 64, optional: true, says: "Divisions of the unit on the tape used; twice a division is the most that diagonals may disagree by.", without: "Left out: 16 of an inch, 1 of a millimetre." },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says: "One row a riser. Lengths are on the face, angles in degrees, positive where the bottom is longer.",
    columns: {
      step: { kind: "label", says: "Step of the reading." },
      length: { kind: "reading", says: "Blank: from end to end with what runs past and every undercut." },
      longPoint: { kind: "reading", says: "Over all." },
      shortPoint: { kind: "reading", says: "Where top and bottom overlap." },
      top: { kind: "reading", says: "Along the top edge." },
      bottom: { kind: "reading", says: "Along the piece's own bottom edge." },
      leftAngle: { kind: "angle", says: "Cut angle of the left end, from square." },
      rightAngle: { kind: "angle", says: "Cut angle of the right end, from square." },
      leftTilt: { kind: "angle", says: "Blade tilt of the left end; negative undercuts." },
      rightTilt: { kind: "angle", says: "Blade tilt of the right end; negative undercuts." },
      height: { kind: "reading", says: "Height of the piece." },
      closure: { kind: "reading", says: "What the two diagonals disagree by." },
      note: { kind: "text", says: "What to look at again, or why the row has no answer." },
    },
  },
  problems: FIT_PROBLEMS,
  examples: [
    {
      given: { readings: [["step", "height", "top", "bottom", "left offset"], [1, 7.5, 36, 36, "square"]], openEnd: "right" },
      shows: [{ step: 1, length: 36.25, top: 36.25, bottom: 36.25, leftAngle: 0, rightAngle: 0, height: 7.5 }],
      from: "by hand: 36 square and 1/4 past the open skirt",
    },
    {
      given: { readings: [["step", "height", "top", "bottom", "left offset", "cut height"], [2, 8, 36, 36.5, "square", 6]] },
      shows: [{ step: 2, top: 36, bottom: 36.375, longPoint: 36.375, shortPoint: 36, height: 6 }],
      from: "by hand: the end runs out 1/2 over 8, so 3/8 over a piece 6 high from the top down",
    },
    {
      given: { readings: [["step", "height", "top", "bottom"], [3, 8, 36, 36]] },
      shows: [{ step: 3, note: "diagonal: is missing; give a diagonal, a left offset or a left angle, and write `square` for a measured zero" }],
      from: "by hand: two lengths alone leave the ends free to lean together",
    },
  ],
  source: "Plane coordinates of the four corners, from the two lines measured and a diagonal, offset or angle.",
  caution: "Test cut in scrap, guards on.",
  solve: ({ readings, openEnd, runPast, thickness, tape, unit: used }) =>
    besideBadRows(readings, (good) => riserFits(good, { openEnd, runPast, thickness, closure: closureLimits(tape, used) })),
});
