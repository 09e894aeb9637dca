import { besideBadRows } from "../../solver/bad-row";
import { closureLimits } from "../../solver/fit/closure-limits";
import { treadFits } from "../../solver/fit/tread-fit";
import { STAIR_LABELS } from "../../solver/stair-labels";
import { SAW_CAUTION } from "../caution";
import { declare, headings, unit } from "../declare";
import { FIT_PROBLEMS } from "../fit-problems";
import { treadReadings } from "../tables";
import { tapeDivisions } from "../tape-divisions";

/** A saw does not tilt further. Common practice, no source. */
const STEEPEST_UNDERCUT = 45;

export const TREADFIT = declare({
  id: "TREADFIT",
  words: "tread fit",
  group: "Fit",
  says: "Cut lengths, angles, tilts and mitres of treads, step by step from tape readings.",
  parameters: {
    readings: {
      kind: "table",
      table: treadReadings,
      badRows: "answer",
      rows: 2_000,
      says: "One row per tread: run, back, front, and what fixes the ends; or run, back and both angles.",
    },
    nosing: {
      kind: "reading",
      sign: "not negative",
      default: STAIR_LABELS.nosing.default.inches,
      says: "How far the tread projects past the riser face below it.",
    },
    openEnd: {
      kind: "choice",
      options: STAIR_LABELS.openEnd.options,
      default: STAIR_LABELS.openEnd.default.value,
      says: "Ends with a mitred return.",
    },
    overhang: { kind: "reading", sign: "not negative", defaultsTo: "nosing", says: "How far the return stands past the skirt." },
    returnWidth: { kind: "reading", sign: "positive", defaultsTo: "overhang", says: "Width of the return." },
    thickness: {
      kind: "reading",
      sign: "positive",
      default: STAIR_LABELS.treadThickness.default.inches,
      says: "Thickness of the tread; a leaning skirt moves the cut by it.",
    },
    riserOn: {
      kind: "choice",
      options: STAIR_LABELS.riserOn.options,
      default: STAIR_LABELS.riserOn.default.value,
      says:
        "Finished risers in place when the tread was read: `off` from the rough riser to the sub-tread's edge, `behind` from the " +
        "finished riser to the sub-tread's edge, `both` from finished face to finished face.",
    },
    riserThickness: {
      kind: "reading",
      sign: "not negative",
      default: STAIR_LABELS.riserThickness.default.inches,
      says: "Thickness of the finished risers; counts where one was not in place.",
    },
    gap: {
      kind: "reading",
      sign: "not negative",
      default: 0,
      says:
        "Clearance to the skirt at each closed end, square to the skirt. For room to fit and for " +
        "finish: wood hardly moves along the grain.",
    },
    backGap: {
      kind: "reading",
      sign: "not negative",
      default: 0,
      says:
        "Clearance between the back edge and the riser: room for the wood to move, which it does across the grain. Seen from above " +
        "unless the riser covers it.",
    },
    undercut: {
      kind: "number",
      sign: "not negative",
      most: STEEPEST_UNDERCUT,
      default: 0,
      says: "Degrees every closed end is undercut by on purpose: the face stays, the underside is relieved.",
    },
    tape: tapeDivisions,
    unit,
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per tread. Lengths are on the face, at the piece's own edges. Angles are in degrees, from square to the nose: a cut " +
      "angle is positive where the front is longer, a tilt where the face is longer (undercut) and negative where the underside is " +
      "longer; left set and right set say both in words. Marks along the nose are from the finished nose corner at the wall; with " +
      "both ends open, from the other end's toe.",
    columns: {
      step: { kind: "label", says: "Step of the reading." },
      length: { kind: "reading", says: "Blank: from end to end of face and underside, with the return's overhang." },
      longPoint: { kind: "reading", says: "Over all, skirt to skirt." },
      shortPoint: { kind: "reading", says: "Where back and front overlap." },
      back: { kind: "reading", says: "Along the back edge." },
      front: { kind: "reading", says: "Along the piece's own front edge." },
      leftAngle: { kind: "angle", says: "Cut angle of the left end, from square to the nose." },
      rightAngle: { kind: "angle", says: "Cut angle of the right end, from square to the nose." },
      leftTilt: {
        kind: "angle",
        says: "Tilt of the saw at the left end, square to the cut: positive is face longer (undercut), negative is underside longer.",
      },
      rightTilt: { kind: "angle", says: "Tilt of the saw at the right end, alike." },
      depth: { kind: "reading", says: "Depth of the piece, back to nose, less the back gap; of a tapered step the larger, to rip to." },
      heel: { kind: "reading", says: "Parallel to the nose to where the mitre starts; it lies the return's width behind the nose." },
      toe: { kind: "reading", says: "Along the nose to the outer edge of the return." },
      mitre: { kind: "angle", says: "Mitre from the nose; 45 only where the skirt is square to it." },
      returnLength: { kind: "reading", says: "Length of the return along its outer edge." },
      closure: {
        kind: "reading",
        says:
          "What the two diagonals, or lengths and angles, disagree by. Up to the limit a quarter of the diagonals' is added to " +
          "back and front.",
      },
      leftHeel: { kind: "reading", says: "Heel of the left return where both ends are open." },
      leftToe: { kind: "reading", says: "Toe of the left return where both ends are open." },
      leftMitre: { kind: "angle", says: "Mitre of the left return where both ends are open." },
      leftReturnLength: { kind: "reading", says: "Length of the left return where both ends are open." },
      leftSet: {
        kind: "text",
        says:
          "Left end at the saw, piece face up, nose toward you: which way the near end of the blade's path swings, and which side " +
          "is longer. Blade over the piece: underside longer; away from it: face longer.",
      },
      rightSet: { kind: "text", says: "Right end at the saw, alike." },
      leftDepth: {
        kind: "reading",
        says:
          "Depth at the left skirt, square to the nose, to the back corner on the face. Where it differs from the right depth, " +
          "scribe the back from one to the other.",
      },
      rightDepth: { kind: "reading", says: "Depth at the right skirt, alike." },
      heelAtTheHook: {
        kind: "reading",
        says:
          "The heel with the tape hooked on the finished wall end, the return's width behind the nose: the one to mark. With both " +
          "ends open, heel to heel. Over an end whose underside is longer a hook stands off: burn an inch.",
      },
      mitreLine: { kind: "reading", says: "Toe to heel along the mitre; proves both marks." },
      returnLine: {
        kind: "reading",
        says:
          "Along the back edge, from the finished back corner at the wall to the line the return lies on; with both ends open, " +
          "from line to line.",
      },
      leftMitreLine: { kind: "reading", says: "Toe to heel of the left return where both ends are open." },
      note: { kind: "text", says: "What to look at again, or why the row has no answer." },
    },
  },
  problems: {
    ...FIT_PROBLEMS,
    "nothing-gives-the-far-line": {
      cell: "#VALUE!",
      says: 'front: is missing; give front, or left angle and right angle ("square" for a measured zero, as 0 counts as empty)',
    },
    "one-run-missing": { cell: "#VALUE!", says: "{missing} run: is missing beside {given} run; give both, or run alone" },
    "runs-disagree": {
      cell: "#VALUE!",
      says: "run: {run length} does not lie between the left run, {left length}, and the right run, {right length}; keep the two",
    },
    "runs-too-different": {
      cell: "#VALUE!",
      says: "left run: {left length} against a right run of {right length} leaves no depth at one end; read both again",
    },
    "depth-of-a-tapered-step": {
      cell: "#VALUE!",
      says: "depth: {depth length} cannot be the depth of a tapered step, which has another at each end; leave depth empty",
    },
    "no-depth-left": { cell: "#VALUE!", says: "back gap: {backGap length} takes all of the depth" },
    "return-too-wide": { cell: "#VALUE!", says: "return width: {returnWidth length} is as much as the tread is deep, {depth length}" },
    "no-distance": { cell: "#VALUE!", says: "run: is empty or 0; give the distance between the two lines measured" },
    "nothing-left": { cell: "#VALUE!", says: "back: nothing is left between the two ends; read this step again" },
  },
  examples: [
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [1, 10, 36, 36, "square"],
        ],
      },
      shows: [
        {
          step: 1,
          length: 36,
          longPoint: 36,
          shortPoint: 36,
          back: 36,
          front: 36,
          leftAngle: 0,
          rightAngle: 0,
          depth: 11.25,
          heel: "",
          note: "unchecked: one more diagonal would check this step",
        },
      ],
      from: "by hand: a square opening of 36 in takes a square tread, 10 + 1 1/4 deep",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [2, 12, 30, 39, "square"],
        ],
        nosing: 0,
      },
      shows: [{ step: 2, back: 30, front: 39, leftAngle: 0, rightAngle: 36.86989764584402, longPoint: 39, shortPoint: 30, length: 39 }],
      from: "by hand: the right side runs 9 out over 12, a 3-4-5 triangle, atan(9/12) = 36.8698976 deg",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean"],
          [4, 10, "36 11/16", 37, "38 1/4", "38 1/8", -1.72],
        ],
        openEnd: "right",
      },
      shows: [{ step: 4, depth: 11.25, leftSet: "left 0.52°, underside longer 1.72°", rightSet: "right 1.27°, upright", note: "" }],
      from:
        "by hand: legs 36.9197 and 36.7902, so the front left corner lies 0.0915 left of the back one: atan(0.00915) = 0.52 deg; " +
        "the right one 0.2210 right: 1.27 deg; atan(tan 1.72 x cos 0.52) = 1.72",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "left angle", "right angle"],
          [5, "9 1/4", 36, "square", "square"],
        ],
        openEnd: "both",
        riserOn: "behind",
      },
      shows: [
        {
          step: 5,
          depth: 11.25,
          back: 36,
          front: 36,
          toe: 38.5,
          leftToe: 38.5,
          heel: 37.25,
          heelAtTheHook: 36,
          mitre: 45,
          returnLength: 12.5,
          leftSet: "square",
          rightSet: "square",
        },
      ],
      from:
        "by hand: up to the sub-tread's edge, so 9 1/4 + 3/4 riser + 1 1/4 nosing = 11 1/4; square ends: toe to toe 36 + 2 x 1 " +
        "1/4, each heel 1 1/4 nearer, heel to heel 36",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [6, 10, 36, 36, "square"],
        ],
        gap: "1/32",
        backGap: "1/8",
        undercut: 2,
      },
      shows: [
        {
          step: 6,
          length: 35.9375,
          back: 35.9375,
          front: 35.9375,
          depth: 11.125,
          leftSet: "square, face longer 2.00°",
          rightSet: "square, face longer 2.00°",
        },
      ],
      from: "by hand: two gaps of 1/32 off 36; 11 1/4 less 1/8; the underside is relieved by 2 degrees, the face stays",
    },
    {
      given: {
        readings: [
          ["step", "left run", "right run", "back", "front", "left offset"],
          [7, 9, 18, 12, 15, "square"],
        ],
        nosing: 0,
      },
      shows: [
        {
          step: 7,
          leftAngle: -36.86989764584402,
          rightAngle: 36.86989764584402,
          back: 12,
          front: 15,
          leftDepth: 7.2,
          rightDepth: 14.4,
          depth: 14.4,
          note:
            "tapered: rip to the larger depth, scribe the back from left depth to right depth; or instead of the taper: pack between " +
            "the stringers and the riser behind, 9 in at its right end to nothing at the other, and read this step anew; unchecked: " +
            "one more diagonal would check this step",
        },
      ],
      from:
        "by hand: a front of 15 that runs out 9 is 12 along the back, a 3-4-5 triangle, and both skirts are square to the back: " +
        "turned by 36.87 degrees to the nose, 9 x 4/5 and 18 x 4/5 square to it",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal"],
          [3, 10, 36, 36, 9],
        ],
      },
      shows: [
        {
          step: 3,
          length: '#VALUE! diagonal: 9" is no longer than the 10" between the two lines; read it again',
          note: 'diagonal: 9" is no longer than the 10" between the two lines; read it again',
        },
      ],
      from: "by hand: a diagonal is longer than the distance it spans",
    },
  ],
  source:
    "Plane coordinates of the four corners, from the two lines measured and a diagonal, offset or angle; closure is the " +
    "difference of the two diagonals' answers. A tapered step is turned by asin((right run - left run) / front), so that its nose " +
    "lies level. Tilt = atan(tan lean x cos angle); a gap c takes c / (cos angle x cos tilt) off an " +
    "end; heel = toe - return width x tan(45 + angle / 2).",
  caution: SAW_CAUTION,
  solve: ({ readings, tape, unit: used, headings: _headings, ...piece }) =>
    besideBadRows(
      readings,
      (good): readonly object[] => treadFits(good, { ...piece, unit: used, closure: closureLimits(tape, used) }),
      ({ label, bad }) => ({ step: label, bad }),
    ),
});
