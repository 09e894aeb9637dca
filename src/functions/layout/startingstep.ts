import { measure } from "../../solver/length/length";
import { resolvedStair } from "../../solver/layout/resolved-stair";
import { type StartingStep, startingStep } from "../../solver/layout/starting-step";
import { isProblem, problem } from "../../solver/problem";
import { SAW_CAUTION } from "../caution";
import { declare, headings } from "../declare";
import { labelRows } from "../label-rows";
import { STAIR_PROBLEMS } from "../stair-problems";

const WANTS_WIDTH = "give width, from the wall skirt to the face of the open skirt";

const SHAPE = {
  riserRadius: "reading",
  straightBeforeTheBend: "reading",
  bendOnTheFace: "reading",
  straightAfterTheBend: "reading",
  riserLengthOnTheFace: "reading",
  riserLengthLaidFlat: "reading",
  treadLength: "reading",
  treadDepthAtTheEnd: "reading",
  treadRadius: "reading",
} as const;
const VENEER = { blockRadius: "reading", veneerLength: "reading" } as const;
const KERFS = { kerfs: "count", kerfDepth: "reading", kerfSpacing: "reading" } as const;

export const STARTINGSTEP = declare({
  id: "STARTINGSTEP",
  words: "starting step",
  group: "Layout",
  says: "A first step with a rounded end past the open skirt: lengths of its riser and tread, and how the riser is bent.",
  parameters: {
    stair: { kind: "stair", says: "The stair, or the result of LAYOUT; with `width` for the lengths that count from the wall skirt." },
    past: {
      kind: "reading",
      sign: "positive",
      says: "How far the end of the riser stands past the face of the open skirt; the tread stands a nosing further.",
    },
    end: {
      kind: "choice",
      options: ["half round", "quarter round"],
      default: "half round",
      says:
        "half round: round to the line of the second riser and back to its end. quarter round: only the front corner is round, the side " +
        "runs straight to that line, and the back of the end stays open. A scroll (curtail) is cut by its template, not by figures.",
    },
    bend: {
      kind: "choice",
      options: ["veneer", "kerfs"],
      default: "veneer",
      says: "veneer: the riser thinned to a leaf and bent round a block. kerfs: saw cuts across its back.",
    },
    leaf: {
      kind: "reading",
      sign: "positive",
      default: "1/8",
      says: "Thickness of the veneer, or what the saw leaves under the face. The default is common practice; no source.",
    },
    kerf: { kind: "reading", sign: "positive", default: "1/8", says: "Width of a saw cut." },
    radius: {
      kind: "reading",
      sign: "positive",
      optional: true,
      without: "Left out: half the run.",
      says: "Radius of a quarter round, on the face of the riser; a half round has half the run.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per label, for a step against a wall skirt at its other end; left and right alike. Lengths of the riser are on its face " +
      "and count from the wall skirt round the end. Net sizes.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in or mm; empty beside a count." },
      note: { kind: "text", says: "What is wanted to find it." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
    "radius-of-a-half-round": {
      cell: "#VALUE!",
      says: "radius: a half round has half the run, {half length}, got {radius length}; leave it out, or make the end a quarter round",
    },
    "radius-over-the-run": {
      cell: "#VALUE!",
      says: "radius: {radius length} is more than the run of {run length} the step has; give a smaller one",
    },
    "past-too-short": {
      cell: "#VALUE!",
      says:
        "past: {past length} is less than the {least length} that a {end} end takes to clear the second riser, which runs " +
        "{runPast length} past the open skirt; give {least length} or more",
    },
    "bend-past-the-wall": {
      cell: "#VALUE!",
      says: "radius: {radius length} is more than the {room length} from the wall skirt to the end of the step; a smaller radius",
    },
    "leaf-too-thick": {
      cell: "#VALUE!",
      says: "leaf: {leaf length} leaves nothing to take off a riser {riserThickness length} thick; give less",
    },
    "riser-too-thick": {
      cell: "#VALUE!",
      says: "riser thickness: {riserThickness length} fills a bend with a radius of {radius length}; give a thinner riser",
    },
    "kerfs-too-wide": {
      cell: "#VALUE!",
      says: "kerf: {kerf length} is too wide for cuts {depth length} deep round a radius of {radius length}; give a thinner saw",
    },
  },
  examples: [
    {
      given: {
        stair: [
          ["run", 10],
          ["nosing", 1.25],
          ["width", 36],
          ["run past", 0.25],
        ],
        past: 8,
      },
      shows: [
        { label: "riser radius", value: 5, unit: "in" },
        { label: "straight before the bend", value: 39 },
        { label: "bend on the face", value: 15.707963267948966 },
        { label: "straight after the bend", value: 2.75 },
        { label: "riser length on the face", value: 57.45796326794897 },
        { label: "riser length laid flat", value: 57.26161372709961 },
        { label: "tread length", value: 45.25 },
        { label: "tread depth at the end", value: 12.5 },
        { label: "tread radius", value: 6.25 },
        { label: "block radius", value: 4.875 },
        { label: "veneer length", value: 15.511613727099606 },
      ],
      from:
        "by hand: half the run of 10; 36 + 8 - 5; 5 pi; 8 - 5 - 1/4; a nosing past the end, and one on either side; 5 - 1/8, and pi " +
        "(5 - 1/16) in the middle of the leaf",
    },
    {
      given: {
        stair: [
          ["run", 11],
          ["width", 40],
          ["riser thickness", 0.75],
        ],
        past: 9,
        bend: "kerfs",
        leaf: 0.125,
        kerf: 0.125,
      },
      shows: [
        { label: "bend on the face", value: 17.27875959474386 },
        { label: "riser length laid flat", value: 64.02875959474386 },
        { label: "kerfs", value: 16, unit: "" },
        { label: "kerf depth", value: 0.625 },
        { label: "kerf spacing", value: 1.0799224746714913 },
      ],
      from: "by hand: half round at 5 1/2: 5.5 pi; pi (3/4 - 1/8) / (1/8) = 15.7, so 16 cuts; 40 + 9 - 5 1/2, and 9 - 5 1/2 - 1/4",
    },
    {
      given: {
        stair: [
          ["run", 10],
          ["nosing", 1],
          ["width", 36],
          ["riser thickness", 0.875],
        ],
        past: 8,
        end: "quarter round",
        bend: "kerfs",
        leaf: 0.25,
        kerf: 0.0625,
        radius: 6,
        headings: false,
      },
      gives: [
        ["riser radius", 6, "in", ""],
        ["straight before the bend", 38, "in", ""],
        ["bend on the face", 9.42477796076938, "in", ""],
        ["straight after the bend", 4, "in", ""],
        ["riser length on the face", 51.42477796076938, "in", ""],
        ["riser length laid flat", 51.42477796076938, "in", ""],
        ["tread length", 45, "in", ""],
        ["tread depth at the end", 11, "in", ""],
        ["tread radius", 7, "in", ""],
        ["kerfs", 16, "", ""],
        ["kerf depth", 0.625, "in", ""],
        ["kerf spacing", 0.5890486225480862, "in", ""],
      ],
      from: "by hand: 36 + 8 - 6; 3 pi; 10 - 6; 36 + 8 + 1; 10 + 1; 6 + 1; pi / 2 x (7/8 - 1/4) / (1/16) = 15.7, so 16; 3 pi / 16",
    },
    {
      given: { stair: [["run", 10]], past: 8 },
      shows: [
        { label: "riser radius", value: 5, note: "" },
        { label: "tread length", value: "", note: WANTS_WIDTH },
      ],
      from: "by hand: half of 10; nobody gave the width",
    },
    {
      given: { stair: [["run", 10], ["run past", 0.25]], past: 4 },
      fails: "#VALUE!",
      says:
        'past: 4" is less than the 5 1/4" that a half round end takes to clear the second riser, which runs 1/4" past the open skirt; ' +
        'give 5 1/4" or more',
      from: "by hand: 5 + 1/4",
    },
  ],
  source:
    "Straights and an arc on the plan of the step. A veneer keeps its length in the middle of its thickness. Kerfs: as many as together " +
    "close the bend, angle x (riser thickness - leaf) / kerf, rounded up and spread evenly on the face.",
  caution: SAW_CAUTION,
  solve: ({ stair, past, end, bend, leaf, kerf, radius }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const { run, nosing, width, runPast, riserThickness } = resolved;
    if (run === undefined) return problem("no-run");
    const found = startingStep({
      run: measure(run, stair.unit),
      nosing: measure(nosing, stair.unit),
      width: width && measure(width, stair.unit),
      runPast: measure(runPast, stair.unit),
      riserThickness: measure(riserThickness, stair.unit),
      past,
      end,
      radius,
      bend,
      leaf,
      kerf,
    });
    if (isProblem(found)) return found;
    const notes = {
      straightBeforeTheBend: WANTS_WIDTH, riserLengthOnTheFace: WANTS_WIDTH, riserLengthLaidFlat: WANTS_WIDTH, treadLength: WANTS_WIDTH,
    };
    const bent =
      bend === "veneer"
        ? labelRows<Pick<StartingStep, keyof typeof VENEER>>(found, VENEER)
        : labelRows<Pick<StartingStep, keyof typeof KERFS>>(found, KERFS);
    return [...labelRows<Pick<StartingStep, keyof typeof SHAPE>>(found, SHAPE, notes), ...bent];
  },
});
