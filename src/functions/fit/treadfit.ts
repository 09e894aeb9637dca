import { closureLimits } from "../../solver/fit/closure-limits";
import { treadFits } from "../../solver/fit/tread-fit";
import { besideBadRows } from "../beside-bad-rows";
import { declare, headings, unit } from "../declare";
import { FIT_PROBLEMS } from "../fit-problems";
import { treadReadings } from "../tables";

export const TREADFIT = declare({
  id: "TREADFIT",
  group: "Fit",
  says: "Cut lengths, angles, tilts and mitres of treads, step by step from tape readings.",
  parameters: {
    readings: { kind: "table", table: treadReadings, badRows: "answer", says: "One row a tread: run, back, front, and what fixes the ends." },
    nosing: { kind: "reading", sign: "not negative", default: "1 1/4", says: "How far the tread projects past the riser face below it." },
    openEnd: { kind: "choice", options: ["none", "left", "right", "both"], default: "none", says: "Ends with a mitred return." },
    overhang: { kind: "reading", sign: "not negative", defaultsTo: "nosing", says: "How far the return stands past the skirt." },
    returnWidth: { kind: "reading", sign: "positive", defaultsTo: "overhang", says: "Width of the return." },
    thickness: { kind: "reading", sign: "positive", default: 1, says: "Thickness of the tread; a leaning skirt moves the cut by it." },
    tape: { kind: "count", sign: "positive", most: 64, optional: true, says: "Divisions of the unit on the tape used; twice a division is the most that diagonals may disagree by.", without: "Left out: 16 of an inch, 1 of a millimetre." },
    unit,
    headings,
  },
  result: {
    kind: "table",
    says: "One row a tread. Lengths are on the face, angles in degrees, positive where the front is longer; distances along the nose are from the far end of the blank.",
    columns: {
      step: { kind: "label", says: "Step of the reading." },
      length: { kind: "reading", says: "Blank: from end to end with the return's overhang and every undercut." },
      longPoint: { kind: "reading", says: "Over all, skirt to skirt." },
      shortPoint: { kind: "reading", says: "Where back and front overlap." },
      back: { kind: "reading", says: "Along the back edge." },
      front: { kind: "reading", says: "Along the piece's own front edge." },
      leftAngle: { kind: "angle", says: "Cut angle of the left end, from square." },
      rightAngle: { kind: "angle", says: "Cut angle of the right end, from square." },
      leftTilt: { kind: "angle", says: "Blade tilt of the left end; negative undercuts." },
      rightTilt: { kind: "angle", says: "Blade tilt of the right end; negative undercuts." },
      depth: { kind: "reading", says: "Depth of the piece, back to nose." },
      heel: { kind: "reading", says: "Along the nose to where the mitre starts." },
      toe: { kind: "reading", says: "Along the nose to the outer edge of the return." },
      mitre: { kind: "angle", says: "Mitre from the nose; 45 only where the skirt is square to it." },
      returnLength: { kind: "reading", says: "Length of the return along its outer edge." },
      closure: { kind: "reading", says: "What the two diagonals disagree by." },
      leftHeel: { kind: "reading", says: "Heel of the left return where both ends are open." },
      leftToe: { kind: "reading", says: "Toe of the left return where both ends are open." },
      leftMitre: { kind: "angle", says: "Mitre of the left return where both ends are open." },
      leftReturnLength: { kind: "reading", says: "Length of the left return where both ends are open." },
      note: { kind: "text", says: "What to look at again, or why the row has no answer." },
    },
  },
  problems: {
    ...FIT_PROBLEMS,
    "no-distance": { cell: "#VALUE!", says: "run: is empty or 0; give the distance between the two lines measured" },
    "nothing-left": { cell: "#VALUE!", says: "back: nothing is left between the two ends; read this step again" },
  },
  examples: [
    {
      given: { readings: [["step", "run", "back", "front", "left offset"], [1, 10, 36, 36, "square"]] },
      shows: [{ step: 1, length: 36, longPoint: 36, shortPoint: 36, back: 36, front: 36, leftAngle: 0, rightAngle: 0, depth: 11.25, heel: "", note: "unchecked: one more diagonal would check this step" }],
      from: "by hand: a square opening of 36 in takes a square tread, 10 + 1 1/4 deep",
    },
    {
      given: { readings: [["step", "run", "back", "front", "left offset"], [2, 12, 30, 39, "square"]], nosing: 0 },
      shows: [{ step: 2, back: 30, front: 39, leftAngle: 0, rightAngle: 36.86989764584402, longPoint: 39, shortPoint: 30, length: 39 }],
      from: "by hand: the right side runs 9 out over 12, a 3-4-5 triangle, atan(9/12) = 36.8698976 deg",
    },
    {
      given: { readings: [["step", "run", "back", "front", "diagonal"], [3, 10, 36, 36, 9]] },
      shows: [{ step: 3, length: "#VALUE! diagonal: 9 is no longer than the 10 between the two lines; read it again", note: "diagonal: 9 is no longer than the 10 between the two lines; read it again" }],
      from: "by hand: a diagonal is longer than the distance it spans",
    },
  ],
  source: "Plane coordinates of the four corners, from the two lines measured and a diagonal, offset or angle; closure is the difference of the two diagonals' answers.",
  caution: "A tapered step is not covered by one run: type the mean, and scribe the back. Test cut in scrap, guards on.",
  solve: ({ readings, nosing, openEnd, overhang, returnWidth, thickness, tape, unit: used }) =>
    besideBadRows(readings, (good) =>
      treadFits(good, { nosing, openEnd, overhang, returnWidth, thickness, closure: closureLimits(tape, used) }),
    ),
});
