import { measure } from "../../solver/length/length";
import { rail } from "../../solver/layout/rail";
import { type NewelFace, railBetweenNewels, type RailPiece } from "../../solver/layout/rail-between-newels";
import { resolvedStair } from "../../solver/layout/resolved-stair";
import { flight } from "../../solver/layout/stair-skirt";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, headings, type ResultRow } from "../declare";
import { labelRows } from "../label-rows";
import { STAIR_PROBLEMS } from "../stair-problems";
import { newels } from "../tables";

const WANTS_HEIGHT = "give handrail height";
const MOST_NEWELS = 200;

const reading = (label: string, value: number | undefined, note: string): ResultRow => ({
  label,
  value: value === undefined ? undefined : { kind: "reading", value },
  note: value === undefined ? WANTS_HEIGHT : note,
});

/** Top of the rail where it meets a newel, over the lower floor and over what the newel stands on. */
const faceRows = (face: NewelFace): readonly ResultRow[] => {
  const where = `${face.side} face of newel ${face.newel}`;
  const overFloor = reading(`height over the lower floor, ${where}`, face.heightOverTheLowerFloor, "");
  if (face.footing === "lower floor") return [overFloor];
  const note = face.tread === undefined ? "" : `tread ${face.tread} from the bottom`;
  return [overFloor, reading(`height over the ${face.footing}, ${where}`, face.heightOverTheFooting, note)];
};

const pieceRows = ({ from, to, length }: RailPiece): readonly ResultRow[] => [
  reading(`length between newels ${from.newel} and ${to.newel}`, length, "along the rake, face to face, both ends at the cut angle"),
  ...faceRows(from),
  ...faceRows(to),
];

export const RAIL = declare({
  id: "RAIL",
  group: "Layout",
  says: "Handrail on the rake: length, cut angle, heights.",
  parameters: {
    stair: { kind: "stair", says: "The stair, or the result of LAYOUT; with `handrail height` for the heights." },
    newels: {
      kind: "table",
      table: newels,
      badRows: "refuse",
      rows: MOST_NEWELS,
      optional: true,
      says: "Newels the rail is cut between, from the bottom up.",
      without: "Left out: the rail from nosing to nosing alone.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per label, from the first nosing to the landing nosing; then, between each newel and the next, the rail's length and " +
      "where its top meets their faces.",
    columns: {
      label: { kind: "label", says: "What the value is." },
      value: { kind: "value", says: "The value, in the unit beside it." },
      unit: { kind: "text", says: "in, mm or deg." },
      note: { kind: "text", says: "What is wanted to find it, or how it is measured." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise with risers or max rise" },
    "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
    "single-rise": { cell: "#VALUE!", says: "risers: {risers} has no rake for a rail; give 2 or more" },
    "one-newel": { cell: "#VALUE!", says: "newels: has one row; give two newels or more, or leave the table out" },
    "newels-meet": {
      cell: "#VALUE!",
      says:
        "place: newel {upper} begins {to length} behind the first nosing, newel {lower} ends {from length} behind it; give newels " +
        "from the bottom up, with room for a rail between them",
    },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
          ["handrail height", 35],
        ],
      },
      gives: [
        ["label", "value", "unit", "note"],
        ["rail length", 90, "in", ""],
        ["cut angle", 36.86989764584402, "deg", ""],
        ["height over the nosings", 35, "in", ""],
        ["square height", 28, "in", ""],
        ["height over the lower floor at the first nosing", 41, "in", ""],
        ["height over the upper floor at the landing nosing", 35, "in", ""],
      ],
      from: "by hand on the 3-4-5 triangle: 9 x 10; atan(6/8); 35; 35 x 8 / 10; 35 + 6 of the first rise; 35",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
        ],
      },
      shows: [
        { label: "rail length", value: 90 },
        { label: "square height", value: "", note: "give handrail height" },
      ],
      from: "by hand: 9 x 10; no height is given",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
          ["handrail height", 35],
        ],
        newels: [
          ["place", "width"],
          [-3, 4],
          [30, 3],
          [75, 4],
        ],
      },
      shows: [
        { label: "rail length", value: 90 },
        { label: "length between newels 1 and 2", value: 36.875, unit: "in" },
        { label: "height over the lower floor, upper face of newel 1", value: 40.25 },
        { label: "height over the lower floor, lower face of newel 2", value: 62.375 },
        { label: "height over the tread, lower face of newel 2", value: 38.375, note: "tread 4 from the bottom" },
        { label: "length between newels 2 and 3", value: 51.875 },
        { label: "height over the lower floor, upper face of newel 2", value: 64.625 },
        { label: "height over the tread, upper face of newel 2", value: 40.625, note: "tread 4 from the bottom" },
        { label: "height over the lower floor, lower face of newel 3", value: 95.75 },
        { label: "height over the upper floor, lower face of newel 3", value: 35.75 },
      ],
      from:
        "by hand on the 3-4-5 triangle: faces at -1 and 28 1/2, 31 1/2 and 73: 29 1/2 and 41 1/2 x 10/8; 6 + 35 + 3/4 of each place; " +
        "nosing 4 lies 24 behind the first, the tread 24 up; 73 is past the landing nosing at 72, 60 up",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
        ],
        newels: [
          ["place", "width"],
          [30, 4],
          [32, 4],
        ],
      },
      fails: "#VALUE!",
      says:
        'place: newel 2 begins 30" behind the first nosing, newel 1 ends 32" behind it; give newels from the bottom up, with room for a ' +
        "rail between them",
      from: "by hand: 32 - 2 and 30 + 2",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
        ],
      },
      fails: "#VALUE!",
      says: "run: is missing, empty or 0; give run, total run or available run",
      from: "by hand: no run, no rake",
    },
  ],
  source:
    "The rail lies parallel to the line of the nosings: (risers - 1) x hypot(rise, run), cut at the pitch. Between newels it is the " +
    "level distance of their faces over cos pitch; its top x behind the first nosing is rise + handrail height + x * rise / run over " +
    "the lower floor.",
  caution: CAUTION,
  solve: ({ stair, newels: between }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const found = flight(resolved, stair.unit);
    if (isProblem(found)) return found;
    const height = resolved.handrailHeight && measure(resolved.handrailHeight, stair.unit);
    const pieces = between === undefined ? [] : railBetweenNewels(between, { ...found, handrailHeight: height });
    if (isProblem(pieces)) return pieces;
    const rows = labelRows(
      rail(found.rise, found.run, found.risers, height),
      {
        railLength: "reading",
        cutAngle: "angle",
        heightOverTheNosings: "reading",
        squareHeight: "reading",
        heightOverTheLowerFloorAtTheFirstNosing: "reading",
        heightOverTheUpperFloorAtTheLandingNosing: "reading",
      },
      {
        heightOverTheNosings: WANTS_HEIGHT,
        squareHeight: WANTS_HEIGHT,
        heightOverTheLowerFloorAtTheFirstNosing: WANTS_HEIGHT,
        heightOverTheUpperFloorAtTheLandingNosing: WANTS_HEIGHT,
      },
    );
    return [...rows, ...pieces.flatMap(pieceRows)];
  },
});
