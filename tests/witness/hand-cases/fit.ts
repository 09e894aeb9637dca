import type { WorkedCase } from "../case-kind";

/**
 * Angles of the triangles 3-4-5 and 5-12-13: atan(3/4), its half taken from and added to 45 degrees (tangents 1/2 and 2), and atan(5/12).
 */
const A345 = 36.86989764584402;
const A51213 = 22.61986494804043;
const MITRE_OUT = 26.56505117707799;
const MITRE_IN = 63.43494882292201;

export const fitCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  TREADFIT: [
    {
      given: {
        readings: [
          ["step", "depth", "back", "front", "left offset"],
          [7, 11, 36, 36, "square"],
        ],
      },
      shows: [{ step: 7, depth: 11, back: 36 }],
      from: "by hand: read at the piece's own back and nose, 11 apart",
    },
    {
      given: {
        readings: [
          ["step", "run", "at", "back", "left angle", "right angle"],
          [8, 12, 4, 30, "square", A345],
        ],
        nosing: 0,
      },
      shows: [{ step: 8, back: 27, front: 36, leftAngle: 0, rightAngle: A345 }],
      from: "by hand: 3 in 4: 30 at 4 in front of the back line is 27 at the back and 36 at 12",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset", "left gap", "right gap", "back gap"],
          [9, 10, 36, 36, "square", "1/16", "none", "none"],
          [10, 10, 36, 36, "square", "none", "1/16", 0.25],
          [11, 10, 36, 36, "square", "", "", ""],
        ],
        gap: 0.125,
        backGap: 0.125,
      },
      shows: [
        { step: 9, back: 35.9375, depth: 11.25 },
        { step: 10, back: 35.9375, depth: 11 },
        { step: 11, back: 35.75, depth: 11.125 },
      ],
      from: "by hand: 36 less 1/16 and nothing, less 1/8 and 1/8 where the step says none of its own; 11 1/4 less nothing, 1/4 and 1/8",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset", "left lean"],
          [12, 9.25, 36, 36, "square", A345],
        ],
        thickness: 1.5,
        riserOn: "behind",
        riserThickness: 0.5,
      },
      shows: [{ step: 12, back: 37.125, depth: 11 }],
      from: "by hand: 3/4 of the 1 1/2 in; 9 1/4 + 1/2 + 1 1/4",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [13, 12, 34.9, 34.9, 37, 37],
        ],
        nosing: 0,
        tape: 8,
      },
      shows: [{ step: 13, closure: 0.2, back: 34.95, note: "" }],
      from: "by hand: 12-35-37: 70 against 69.8; two divisions of 1/8 allow 1/4, a quarter of the 0.2 goes to each edge",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [14, 12, 34.9, 34.9, 37, 37],
        ],
        nosing: 0,
      },
      shows: [{ step: 14, closure: 0.2, back: 34.9, note: "the diagonals disagree: read this step again" }],
      from: "by hand: 0.2 is more than two sixteenths, and nothing is shared out",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [1, 12, 30, 34, 5],
        ],
        nosing: 0,
      },
      shows: [
        {
          step: 1,
          leftAngle: -A51213,
          rightAngle: A345,
          back: 30,
          front: 34,
          longPoint: 39,
          shortPoint: 25,
          length: 39,
          leftTilt: 0,
          rightTilt: 0,
          leftSet: "right 22.62°, upright",
          rightSet: "right 36.87°, upright",
        },
      ],
      from: "by hand: corners at 0 and 30, and at 5 and 39, 12 in front of them: 5-12-13 and 3-4-5; 39 over all, from 5 to 30 they overlap",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset", "left lean", "right lean"],
          [2, 10, 36, 36, "square", A345, -45],
        ],
      },
      shows: [
        {
          step: 2,
          back: 35.75,
          front: 35.75,
          longPoint: 35.75,
          shortPoint: 35.75,
          length: 36.75,
          leftTilt: A345,
          rightTilt: -45,
          leftSet: "square, face longer 36.87°",
          rightSet: "square, underside longer 45.00°",
        },
      ],
      from:
        "by hand: an inch up the left skirt is 3/4 away and the right one 1 nearer: 36 + 3/4 - 1; the underside still reaches to " +
        "36 where the face begins 3/4 before 0",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [3, 12, 34.98, 34.98, 37, 37],
        ],
        nosing: 0,
      },
      shows: [{ step: 3, closure: 0.04, back: 34.99, front: 34.99, leftAngle: 0, rightAngle: 0, note: "" }],
      from: "by hand: 12-35-37, so each diagonal says 35: together 70 against 34.98 + 34.98; a quarter of the 0.04 goes to each edge",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [4, 12, 30, 39, "square"],
        ],
        nosing: 0,
        openEnd: "both",
        overhang: 1,
        returnWidth: 2,
      },
      shows: [
        {
          step: 4,
          depth: 12,
          leftDepth: 12,
          rightDepth: 12,
          length: 41.25,
          toe: 41.25,
          leftToe: 41.25,
          heel: 37.25,
          leftHeel: 39.25,
          mitre: MITRE_OUT,
          leftMitre: 45,
          mitreLine: 4.47213595499958,
          leftMitreLine: 2.8284271247461903,
          heelAtTheHook: 35.25,
          returnLine: 27.75,
          returnLength: 16.25,
          leftReturnLength: 13,
        },
      ],
      from:
        "by hand: the right end 9 out over 12, 3-4-5; its overhang 1 along the nose is 1 1/4, so toe to toe 39 + 1 + 1 1/4; half " +
        "of 90 - 36.87 has the tangent 1/2: heel 2 x 2 short of its toe, the mitre 2√5; the square one 2 short, 2√2; heel to heel " +
        "41 1/4 - 4 - 2. The lines lie 2 within the outer edges, 2 1/2 along the nose at the right: at the back 30 + 1 1/4 - 2 1/2, " +
        "and 1 - 2 from the left, 28 3/4 - 1. Returns (12 + 1) / 0.8 and 13",
    },
    {
      given: {
        readings: [
          ["step", "run", "left run", "right run", "back", "front", "left offset"],
          [6, 12, 18, 9, 12, 15, "square"],
          [7, "", 9, 18, 12, 15, "square"],
        ],
        nosing: 0,
      },
      shows: [
        { step: 6, leftAngle: A345, rightAngle: -A345, leftDepth: 14.4, rightDepth: 7.2, depth: 14.4, back: 12, front: 15 },
        { step: 7, leftAngle: -A345, rightAngle: A345, leftDepth: 7.2, rightDepth: 14.4, depth: 14.4, back: 12, front: 15 },
      ],
      from:
        "by hand: 15 that runs out 9 is 12 along, 3-4-5; both skirts square to the back, so turned by 36.87 degrees to the nose: " +
        "18 x 4/5 and 9 x 4/5 square to it",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [5, 12, 39, 30, 9],
        ],
        nosing: 0,
        openEnd: "left",
        overhang: 1,
        returnWidth: 2,
      },
      shows: [
        {
          step: 5,
          leftAngle: -A345,
          rightAngle: 0,
          length: 39,
          toe: 31.25,
          heel: 30.25,
          mitre: MITRE_IN,
          mitreLine: 2.23606797749979,
          heelAtTheHook: 30.25,
          returnLine: 37.75,
          returnLength: 16.25,
          leftHeel: "",
          leftToe: "",
          leftMitre: "",
        },
      ],
      from:
        "by hand: the left end 9 in over 12; toe 30 + 1 1/4 from the wall; the mitre's tangent is 2, so the heel is 1 nearer and " +
        "the mitre √5; at the back 39 + 1 1/4 - 2 1/2; (12 + 1) / 0.8",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [6, 12, 39, 30, 9],
        ],
        nosing: 0,
        openEnd: "right",
        overhang: 1,
        returnWidth: 2,
      },
      shows: [{ step: 6, leftAngle: -A345, rightAngle: 0, toe: 31, heel: 29, heelAtTheHook: 30.5, mitre: 45, returnLine: 38, length: 40 }],
      from:
        "by hand: 30 + 1; heel 2 nearer; on its own line, 2 behind the nose, the wall end begins 1 1/2 further left; 39 + 1 - 2 at " +
        "the back; the blank from 0 to 39 and 1 past it",
    },
  ],
  RISERFIT: [
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [5, 6, 36, 38, 2.5],
        ],
        openEnd: "left",
        gap: 0.12,
        runPast: 0.5,
      },
      shows: [{ step: 5, top: 36.35, bottom: 38.35 }],
      from: "by hand: the right end, 3-4-5, loses 0.12 x 5/4 along the top; the left one has no gap and stands 1/2 past",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset", "left gap", "right gap"],
          [6, 8, 36, 36, "square", "1/16", "none"],
          [7, 8, 36, 36, "square", "none", "1/16"],
          [8, 8, 36, 36, "square", "", ""],
        ],
        gap: 0.125,
      },
      shows: [
        { step: 6, top: 35.9375 },
        { step: 7, top: 35.9375 },
        { step: 8, top: 35.75 },
      ],
      from: "by hand: 36 less 1/16 and nothing; less 1/8 and 1/8 where the step says none of its own",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset", "left flare"],
          [9, 8, 36, 36, "square", 45],
        ],
        thickness: 0.5,
      },
      shows: [{ step: 9, top: 36.5, leftTilt: 45 }],
      from: "by hand: at 45 degrees the face is longer by the thickness",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [10, 8, 36, 36, "square"],
        ],
        undercut: 2,
      },
      shows: [{ step: 10, top: 36, leftTilt: 2, rightTilt: 2, leftSet: "square, face longer 2.00°" }],
      from: "by hand: the face stays, both ends are undercut by 2",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "diagonal", "second diagonal"],
          [11, 7, 23.9, 23.9, 25, 25],
        ],
        tape: 8,
      },
      shows: [{ step: 11, closure: 0.2, top: 23.95, note: "" }],
      from: "by hand: 7-24-25: 48 against 47.8; two divisions of 1/8 allow 1/4, a quarter of the 0.2 goes to each edge",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "diagonal", "second diagonal"],
          [12, 7, 23.9, 23.9, 25, 25],
        ],
      },
      shows: [{ step: 12, closure: 0.2, top: 23.9, note: "the diagonals disagree: read this step again" }],
      from: "by hand: 0.2 is more than two sixteenths, and nothing is shared out",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [1, 6, 36, 38, 2.5],
        ],
      },
      shows: [{ step: 1, leftAngle: -A51213, rightAngle: A345, top: 36, bottom: 38, longPoint: 40.5, shortPoint: 33.5, length: 40.5 }],
      from: "by hand: corners at 0 and 36, and at 2 1/2 and 40 1/2, 6 below them: 5-12-13 and 3-4-5",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "diagonal", "second diagonal"],
          [2, 7, 23.98, 23.98, 25, 25],
        ],
      },
      shows: [{ step: 2, closure: 0.04, top: 23.99, bottom: 23.99, note: "" }],
      from: "by hand: 7-24-25, so each diagonal says 24: together 48 against 23.98 + 23.98; a quarter of the 0.04 goes to each edge",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [3, 6, 36, 38, 2.5],
        ],
        openEnd: "left",
        runPast: 0.5,
      },
      shows: [{ step: 3, leftAngle: -A51213, rightAngle: A345, top: 36.5, bottom: 38.5, longPoint: 41, length: 41 }],
      from: "by hand: the left end stands 1/2 further out, all along",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [4, 6, 36, 38, 2.5],
        ],
        openEnd: "both",
        runPast: 0.5,
      },
      shows: [{ step: 4, top: 37, bottom: 39, longPoint: 41.5, length: 41.5 }],
      from: "by hand: each end stands 1/2 further out",
    },
  ],
  MARKS: [
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset", "left lean"],
          [12, 9.25, 36, 36, "square", A345],
        ],
        thickness: 1.5,
        riserOn: "behind",
        riserThickness: 0.5,
      },
      shows: [{ act: "RIP", distance: 11 }, { act: "MARK RIGHT BACK", distance: 37.125 }],
      from: "by hand: 3/4 of the 1 1/2 in; 9 1/4 + 1/2 + 1 1/4",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [13, 10, 36, 36, "square"],
        ],
        gap: 0.125,
        backGap: 0.125,
        undercut: 45,
      },
      shows: [
        { act: "RIP", distance: 11.125 },
        { act: "MARK RIGHT BACK", distance: 35.75 },
        {
          act: "SAW RIGHT END",
          tilt: "45.0°, top of the blade to the right, away from the piece: face longer; square on the end: light shows at the underside",
        },
      ],
      from: "by hand: 10 + 1 1/4 - 1/8; 36 less 1/8 at each end; the face stays",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [6, 12, 39, 30, 9],
        ],
        nosing: 0,
        openEnd: "right",
        overhang: 1,
        returnWidth: 2,
      },
      shows: [
        { number: 2, act: "SAW LEFT END", swing: "36.9°, near end of the cut to the right", offset: "nose in by 9" },
        { number: 3, act: "GAUGE", distance: 2 },
        { number: 4, act: "MARK RIGHT TOE", distance: 31 },
        { number: 5, act: "MARK RIGHT HEEL", distance: 30.5 },
        { number: 6, act: "MARK RIGHT BACK", distance: 38 },
      ],
      from:
        "by hand: 30 + 1; the heel 2 nearer, and on its own line, 2 behind the nose, the wall end begins 1 1/2 further left; 39 + 1 - 2 " +
        "at the back",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [14, 12, 34.9, 34.9, 37, 37],
        ],
        nosing: 0,
        tape: 8,
      },
      shows: [{ act: "MARK RIGHT BACK", distance: 34.95 }],
      from: "by hand: 12-35-37: two divisions of 1/8 allow the 0.2, a quarter of which goes to each edge",
    },
  ],
  RISERMARKS: [
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "left offset"],
          [5, 6, 36, 36, "square"],
        ],
        openEnd: "left",
        runPast: 0.5,
        thickness: 0.5,
        gap: 0.125,
        undercut: 45,
        skirtThickness: 1,
        lap: 0.375,
        clearance: 0.125,
        bevel: 45,
      },
      shows: [
        { number: 1, act: "RIP", distance: 6 },
        {
          number: 2,
          act: "SAW RIGHT END",
          tilt: "45.0°, top of the blade to the right, away from the piece: face longer; square on the end: light shows at the back",
        },
        { number: 3, act: "MARK LEFT TOP", hookOn: "hook the right top corner, along the top", distance: 36.375 },
        { number: 7, act: "SAW LEFT END", tilt: "upright" },
        { number: 8, act: "MARK NOTCH", hookOn: "hook the left end, along the bottom", distance: 1.625 },
        { number: 9, act: "MARK NOTCH", hookOn: "hook the bottom, up the left end", distance: 0.5 },
        { number: 11, act: "MARK BEVEL", hookOn: "hook the left end, along the top of the back", distance: 1.625 },
        { number: 12, act: "BEVEL TOP", offset: "back in by 1/2", note: "by plane, up to the bevel mark: a saw would run past it" },
      ],
      from: "by hand: 36 - 1/8 + 1/2; 1/2 + 1 + 1/8 along and 3/8 + 1/8 up; at 45 degrees the thickness",
    },
    {
      given: {
        readings: [
          ["step", "height", "top", "bottom", "diagonal", "second diagonal"],
          [6, 7, 23.9, 23.9, 25, 25],
        ],
        tape: 8,
        bevel: 4,
      },
      shows: [
        { number: 3, act: "MARK RIGHT TOP", distance: 23.95, tape: "23 15/16 strong" },
        { number: 8, act: "BEVEL TOP", offset: "back in by 3/64", note: "from end to end" },
      ],
      from:
        "by hand: 7-24-25: 48 against 47.8; two divisions of 1/8 allow 1/4, a quarter of the 0.2 goes to each edge: 23.95 is 23 15/16 " +
        "and 0.0125; 3/4 x tan 4 = 0.0524, 3.4/64",
    },
  ],
  RISERHEIGHT: [
    {
      given: { rise: 7.75, treadThickness: 1, lap: 0.25, first: 1 },
      gives: [[6.75]],
      from: "by hand: 7 3/4 - 1; the first riser laps nothing",
    },
    { given: { rise: 7.75, treadThickness: 1, lap: 0.25, first: 2 }, gives: [[7]], from: "by hand: 7 3/4 - 1 + 1/4" },
  ],
};
