import { besideBadRows } from "../../solver/bad-row";
import { closureLimits } from "../../solver/fit/closure-limits";
import { treadActs } from "../../solver/fit/tread-acts";
import { ACT_COLUMNS, actRows, MOST_STEPS } from "../act-words";
import { SAW_CAUTION } from "../caution";
import { declare } from "../declare";
import { TREADFIT } from "./treadfit";

export const MARKS = declare({
  id: "MARKS",
  group: "Fit",
  says: "What is marked and sawn to make each tread, act by act in cutting order: the ticket for the bench.",
  parameters: { ...TREADFIT.parameters, readings: { ...TREADFIT.parameters.readings, rows: MOST_STEPS } },
  result: {
    kind: "table",
    says:
      "One row per act, step after step. An end at a skirt comes first, then every mark from it, then the checks, then the other " +
      "end; with both ends open every mark is hooked on the blank's own left end, sawn square. A step whose readings disagree says READ " +
      "AGAIN and gives nothing to saw.",
    columns: ACT_COLUMNS,
  },
  problems: TREADFIT.problems,
  examples: [
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [1, 10, 36, 36, "square"],
        ],
        openEnd: "right",
      },
      shows: [
        {
          step: 1,
          number: 1,
          act: "RIP",
          distance: 11.25,
          tape: "11 1/4",
          unit: "in",
          note:
            "deep, nose edge, not yet rounded, to the rip fence; 37 1/4 long when done; begin with a longer blank; unchecked: one " +
            "more diagonal would check this step",
        },
        {
          number: 2,
          act: "SAW LEFT END",
          swing: "square",
          tilt: "upright",
          note: "face up, nose toward you, back edge at the saw's fence; strike it first; leave the line",
        },
        { number: 3, act: "GAUGE", hookOn: "the nose", distance: 1.25, tape: "1 1/4" },
        { number: 4, act: "MARK RIGHT TOE", hookOn: "hook the left nose corner, along the nose", distance: 37.25, tape: "37 1/4" },
        { number: 5, act: "MARK RIGHT HEEL", hookOn: "hook the left end, on the gauged line", distance: 36, tape: "36" },
        { number: 6, act: "MARK RIGHT BACK", hookOn: "hook the left back corner, along the back", distance: 36, tape: "36" },
        { number: 7, act: "CHECK", hookOn: "from mark 4 to mark 5", distance: 1.767766952966369, tape: "1 25/32 shy" },
        { number: 8, act: "CHECK", hookOn: "from mark 5 to mark 6", distance: 10, tape: "10" },
        {
          number: 11,
          act: "SAW RIGHT END",
          swing: "square",
          note:
            "face up, nose toward you, back edge at the saw's fence; from mark 6 to mark 5; stop the saw where its kerf on the face " +
            "reaches mark 5, the rest by hand saw; leave the line",
        },
        {
          number: 12,
          act: "MITRE RIGHT END",
          swing: "45.0° on the saw's scale, near end of the cut to the right (45.0° from the nose)",
          offset: "heel in by 1 1/4",
          note:
            "from mark 4 to mark 5; by hand saw: a round blade may only begin it, and stops where its kerf on the face reaches mark 5; " +
            "leave the line",
        },
        {
          number: 13,
          act: "MITRE RIGHT RETURN",
          offset: "inner edge in by 1 1/4",
          note:
            "of a long stick ripped 1 1/4 wide; face up, outer edge toward you: the mitre is its left end, outer edge longer",
        },
        {
          number: 14,
          act: "SAW RIGHT RETURN",
          hookOn: "hook the long point of its mitre, along the outer edge",
          distance: 12.5,
          swing: "square",
          tilt: "upright",
        },
      ],
      from:
        "by hand: a square opening of 36 in, 10 + 1 1/4 deep; the toe 1 1/4 past it, the heel as much nearer; 1 1/4 x √2 = 1.7678, " +
        "which is 57/32 less 0.0135; 11 1/4 - 1 1/4 from heel to back; the return runs 1 1/4 past the riser",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean"],
          [4, 10, "36 11/16", 37, "38 1/4", "38 1/8", -1.72],
        ],
        openEnd: "right",
      },
      shows: [
        {
          step: 4,
          act: "SAW LEFT END",
          swing: "0.5°, near end of the cut to the left",
          offset: "back in by 7/64",
          tilt: "1.7°, top of the blade to the right, over the piece: underside longer; square on the end: light shows at the face",
        },
        {
          step: 4,
          act: "MARK RIGHT TOE",
          hookOn: "burn an inch at the left nose corner, along the nose",
          tape: "39 1/4 strong, the 1 at the corner",
        },
        {
          step: 4,
          number: 10,
          act: "CHECK",
          hookOn: "from mark 4 to the left back corner, nothing burnt",
          note: "off by more than 1/32: mark again; if the marks hold, an end already sawn is wrong",
        },
      ],
      from:
        "by hand: legs 36.9197 and 36.7902, so the front left corner lies 0.0915 left of the back one: 0.52 deg, 11 1/4 x 0.00915 = " +
        "0.103; nose 37.0090 and a quarter of the closure of 0.0222, toe + 1 1/4 / cos 1.27 = 38.2649, with the inch 39.2649",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "left offset"],
          [2, 10, 36, 36, "square"],
        ],
        openEnd: "both",
      },
      shows: [
        { number: 2, act: "SQUARE LEFT END", swing: "square", tilt: "upright", note: "of the blank: every mark is hooked on it" },
        { number: 4, act: "MARK LEFT TOE", hookOn: "hook the squared left end, along the nose", distance: 0.5 },
        { number: 5, act: "MARK RIGHT TOE", distance: 39 },
        { number: 6, act: "MARK LEFT HEEL", distance: 1.75 },
        { number: 7, act: "MARK RIGHT HEEL", hookOn: "hook the squared left end, on the gauged line", distance: 37.75 },
        { number: 8, act: "MARK LEFT BACK", distance: 1.75 },
        { number: 9, act: "MARK RIGHT BACK", distance: 37.75 },
      ],
      from: "by hand: 1/2 of waste, then 1 1/4, 36 and 1 1/4 along the nose; heels and backs 1 1/4 within the toes",
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
        { number: 1, act: "RIP", distance: 14.4 },
        { number: 2, act: "SAW LEFT END", swing: "36.9°, near end of the cut to the right", offset: "nose in by 10 51/64" },
        { act: "MARK LEFT DEPTH", hookOn: "hook the left nose corner, along the left end", distance: 9, tape: "9" },
        { act: "SCRIBE BACK", note: "from mark 8 to the right back corner; saw outside the line, plane to the riser" },
      ],
      from:
        "by hand: both skirts are square to the back and 36.87 degrees off the nose, 3-4-5; 18 x 4/5 deep at the right; 14.4 x 3/4 = " +
        "10.8 off square; the left skirt is 9 long",
    },
    {
      given: {
        readings: [
          ["step", "run", "back", "front", "diagonal", "second diagonal"],
          [3, 12, 34.9, 34.9, 37, 37],
        ],
        nosing: 0,
      },
      shows: [
        {
          step: 3,
          number: 1,
          act: "READ AGAIN",
          distance: "",
          note: "nothing is sawn from these readings; the diagonals disagree: read this step again",
        },
      ],
      from: "by hand: 12-35-37, 70 against 69.8; 0.2 is more than two sixteenths",
    },
  ],
  source: TREADFIT.source,
  caution: SAW_CAUTION,
  solve: ({ readings, tape, unit: used, headings: _headings, ...piece }) =>
    besideBadRows(
      readings,
      (good) => treadActs(good, { ...piece, unit: used, closure: closureLimits(tape, used) }).map((acts) => actRows(acts, used)),
      ({ label, bad }) => actRows({ step: label, acts: [], bad }, used),
    ).flat(),
});
