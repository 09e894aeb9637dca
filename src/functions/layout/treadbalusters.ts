import { sizeText } from "../../solver/code/size-text";
import { resolvedStair } from "../../solver/layout/resolved-stair";
import { type TreadBalusters, treadBalusters } from "../../solver/layout/tread-balusters";
import type { Unit } from "../../solver/length/length";
import { isProblem } from "../../solver/problem";
import { CAUTION } from "../caution";
import { declare, headings } from "../declare";
import { STAIR_PROBLEMS } from "../stair-problems";

/** Which limit the gap was held against, and how it was met. */
const gapNote = ({ limit, fewest, touches, balusters }: TreadBalusters, isAsked: boolean, unit: Unit): string => {
  const which = limit.isGiven ? "the guard gap of the stair" : "assumed: type guard gap in the stair where another holds";
  const most = `${sizeText(limit.most, unit)} (${which})`;
  const count = balusters.length;
  if (touches && !limit.isGiven) return `gap equals the limit of ${most}; make it smaller`;
  if (!isAsked) return `the fewest that keep the gap within ${most}`;
  if (fewest === undefined) return `gap is over ${most}, and no more of this width fit`;
  return count < fewest ? `gap is over ${most}; ${fewest} to a tread keep it` : `gap is within ${most}`;
};

export const TREADBALUSTERS = declare({
  id: "TREADBALUSTERS",
  words: "tread balusters",
  group: "Layout",
  says: "Balusters that stand on the treads: centres, lengths, gap.",
  parameters: {
    stair: { kind: "stair", says: "The stair, or the result of LAYOUT; with `handrail height` for the lengths." },
    width: { kind: "length", sign: "positive", says: "Width of a baluster." },
    perTread: {
      kind: "count",
      sign: "positive",
      optional: true,
      says: "Balusters to a tread.",
      without: "Left out: the fewest that keep the gap within the `guard gap` of the stair, or 3 15/16 in.",
    },
    railDepth: {
      kind: "length",
      sign: "positive",
      optional: true,
      says: "Depth of the rail, square to its own length.",
      without: "Left out: no lengths.",
    },
    headings,
  },
  result: {
    kind: "table",
    says:
      "One row per baluster of a tread, from the nosing back; the same on every tread. The first is flush with the riser face below. " +
      "Lengths are from the tread to the underside of the rail: add what goes into either. Tops are cut at RAIL's cut angle.",
    columns: {
      baluster: { kind: "label", says: "Counted from the riser face below." },
      centre: {
        kind: "reading",
        says: "From the riser face below, level, to its centre; the same distance serves across the end of the tread.",
      },
      length: { kind: "reading", says: "On its centre." },
      longPoint: { kind: "reading", says: "At its face up the stair." },
      shortPoint: { kind: "reading", says: "At its face down the stair." },
      gap: { kind: "reading", says: "Clear, level, to the next one, on the same tread or the next; the rake does not narrow it." },
      rake: { kind: "reading", says: "Along the rail, from its centre to the next one's." },
      note: { kind: "text", says: "On the first row: the limit of the gap and where it comes from, and what is wanted for lengths." },
    },
  },
  problems: {
    ...STAIR_PROBLEMS,
    "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise with risers or max rise" },
    "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
    "single-rise": { cell: "#VALUE!", says: "risers: {risers} has no rake for balusters; give 2 or more" },
    "no-room-for-balusters": {
      cell: "#VALUE!",
      says:
        "width: {width} leaves no gap on a run of {opening} (balusters wanted: {count}); give thinner balusters, fewer, or, where " +
        "your code allows it, a wider guard gap",
    },
    "too-many-balusters": { cell: "#VALUE!", says: "perTread: more than {most} to a tread; read the width and the guard gap again" },
    "rail-too-deep": {
      cell: "#VALUE!",
      says: "railDepth: {depth} leaves nothing under a handrail {height} over the nosings; read both again",
    },
  },
  examples: [
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
          ["nosing", 1],
          ["handrail height", 35],
        ],
        width: 1,
        railDepth: 2,
      },
      gives: [
        ["baluster", "centre", "length", "long point", "short point", "gap", "rake", "note"],
        [
          1, 0.5, 33.625, 34, 33.25, 3, 5,
          "the fewest that keep the gap within 3 15/16 in (assumed: type guard gap in the stair where another holds)",
        ],
        [2, 4.5, 36.625, 37, 36.25, 3, 5, ""],
      ],
      from:
        "by hand on the 3-4-5 triangle: 8 / (1 + 3 15/16) = 1.6, so 2, 4 apart, 5 along the rail; a rail 2 deep is 2 1/2 plumb, so " +
        "32 1/2 over the nosings; 32 1/2 + (1 + 1/2) x 3/4, half a rise more for the second, 3/8 either way at the faces",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
        ],
        width: 1,
        perTread: 1,
      },
      shows: [
        {
          baluster: 1,
          centre: 0.5,
          length: "",
          gap: 7,
          rake: 10,
          note:
            "gap is over 3 15/16 in (assumed: type guard gap in the stair where another holds); 2 to a tread keep it; for lengths " +
            "give handrail height and rail depth",
        },
      ],
      from: "by hand: one 1 wide on a run of 8 leaves 7; 8 / (1 + 3 15/16) = 1.6",
    },
    {
      given: {
        stair: [
          ["total rise", 60],
          ["risers", 10],
          ["run", 8],
        ],
        width: 4,
        perTread: 2,
      },
      fails: "#VALUE!",
      says:
        'width: 4" leaves no gap on a run of 8" (balusters wanted: 2); give thinner balusters, fewer, or, where your code allows it, a ' +
        "wider guard gap",
      from: "by hand: 2 x 4 = 8",
    },
  ],
  source:
    "Balusters run / number apart. Length = handrail height - rail depth / cos pitch + (nosing + centre) x unit rise / run; the " +
    "rail rises by unit rise / number from one to the next.",
  caution: CAUTION,
  solve: ({ stair, width, perTread, railDepth }) => {
    const resolved = resolvedStair(stair.given);
    if (isProblem(resolved)) return resolved;
    const found = treadBalusters(resolved, { width, perTread, railDepth }, stair.unit);
    if (isProblem(found)) return found;
    const wants = [
      ...(resolved.handrailHeight === undefined ? ["handrail height"] : []),
      ...(railDepth === undefined ? ["rail depth"] : []),
    ];
    const notes = [
      gapNote(found, perTread !== undefined, stair.unit),
      wants.length === 0 ? "" : `for lengths give ${wants.join(" and ")}`,
    ];
    return found.balusters.map((one, index) => ({
      ...one,
      gap: found.gap,
      rake: found.rake,
      note: index === 0 ? notes.filter(Boolean).join("; ") : "",
    }));
  },
});
