import { sizeText } from "../code/size-text";
import type { Unit } from "../length/length";
import { isProblem, type Problem, problem } from "../problem";
import { type LayoutLine, layoutLine as line } from "./layout-line";
import { resolvedStair, type Stair, type StairProblem } from "./resolved-stair";
import { STAIR_DEFAULTS } from "./stair-defaults";
import type { StairFacts, StairLabelName } from "./stair-facts";

export type LayoutProblem = StairProblem | "no-total-rise" | "no-run";

/** Labels in the order the carpenter marks them, each with the label whose stand-in it says beside it. */
const PRINTED = [
  ["totalRise"],
  ["risers"],
  ["unitRise", "unitRise"],
  ["run", "run"],
  ["treads", "topTread"],
  ["nosing", "nosing"],
  ["treadThickness", "treadThickness"],
  ["boardDepth"],
  ["totalRun"],
  ["pitch"],
  ["slopeLength"],
  ["stringerBoard", "stringerBoard"],
  ["throat"],
  ["drop", "lowerBuildUp"],
  ["hang", "upperBuildUp"],
  ["2R+T"],
  ["openingNeededFromTheLandingNosing"],
  ["openingNeededFromTheFace"],
  ["headroomFound"],
] as const satisfies readonly (readonly [label: keyof Stair, because?: keyof Stair])[];

/** What finds a value that the rise and the run alone do not. */
const WANTS: Partial<Record<StairLabelName, string>> = {
  openingNeededFromTheLandingNosing: "headroom and floor thickness",
  openingNeededFromTheFace: "headroom and floor thickness",
  headroomFound: "opening and floor thickness",
};

const beside = (label: (typeof PRINTED)[number][0], because: keyof Stair | undefined, stair: Stair, unit: Unit): string => {
  const wants = stair[label] === undefined ? WANTS[label] : undefined;
  if (wants !== undefined) return `give ${wants}`;
  const why = stair.assumed.get(label === "risers" ? label : (because ?? ""));
  if (why === undefined) return "";
  return label === "risers" ? `assumed: from a max rise of ${sizeText(STAIR_DEFAULTS.maxRise, unit)}: ${why}` : `assumed: ${why}`;
};

/**
 * The layout of a straight flight: every value that follows from rise and run, in the order the carpenter marks them, then what else was
 * given.
 */
export const stairLayout = (facts: StairFacts, unit: Unit): readonly LayoutLine[] | Problem<LayoutProblem> => {
  const stair = resolvedStair(facts);
  if (isProblem(stair)) return stair;
  if (stair.totalRise === undefined || stair.risers === undefined) return problem("no-total-rise");
  if (stair.run === undefined) return problem("no-run");
  const printed: readonly StairLabelName[] = PRINTED.map(([label]) => label);
  const others = (Object.keys(facts) as (keyof StairFacts)[]).filter((key) => !printed.includes(key) && facts[key] !== undefined);
  return [
    line("unit", unit),
    ...PRINTED.map(([label, because]) => line(label, stair[label], beside(label, because, stair, unit))),
    ...others.map((key) => line(key, facts[key])),
  ];
};
