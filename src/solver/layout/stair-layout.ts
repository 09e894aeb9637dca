import type { Length, Unit } from "../length/length";
import { isProblem, type Problem, problem } from "../problem";
import { pitch } from "./pitch";
import { AGREEMENT, isWithinAgreement, resolvedStair, type Stair, type StairProblem } from "./resolved-stair";
import { sizeText } from "../code/size-text";
import { words } from "../words";
import { STAIR_DEFAULTS } from "./stair-defaults";
import type { StairFacts } from "./stair-facts";

export type LayoutProblem = StairProblem | "no-total-rise" | "no-run";

/** One line of a layout: the key of its label, its value with kind, and what was assumed for it. */
export interface LayoutLine {
  readonly key: string;
  readonly kind: "length" | "count" | "angle" | "number" | "text";
  readonly value: Length | number | string | undefined;
  readonly assumed: string;
}

interface Computed {
  readonly pitch: number;
  readonly slopeLength: Length;
  readonly throat: Length;
  readonly drop: Length;
  readonly hang: Length;
  readonly "2R+T": Length;
  readonly openingNeededFromTheLandingNosing: Length | undefined;
  readonly openingNeededFromTheFace: Length | undefined;
  readonly headroomFound: Length | undefined;
  readonly boardDepth: Length;
}

const computed = (stair: Stair, unitRise: Length, run: Length): Computed => {
  const slopeLength = unitRise.pow(2).plus(run.pow(2)).sqrt();
  const { headroom, floorThickness, opening, treadThickness, lowerBuildUp, upperBuildUp, nosing } = stair;
  const needed =
    headroom === undefined || floorThickness === undefined ? undefined : headroom.plus(floorThickness).times(run).div(unitRise);
  return {
    boardDepth: run.plus(nosing),
    pitch: pitch(unitRise.toNumber(), run.toNumber()),
    slopeLength,
    throat: stair.stringerBoard.minus(unitRise.times(run).div(slopeLength)),
    drop: treadThickness.minus(lowerBuildUp),
    hang: stair.topTread === "floor" ? unitRise.minus(upperBuildUp).plus(treadThickness) : treadThickness.minus(upperBuildUp),
    "2R+T": unitRise.times(2).plus(run),
    openingNeededFromTheLandingNosing: needed,
    openingNeededFromTheFace: needed?.plus(nosing),
    headroomFound: opening === undefined || floorThickness === undefined ? undefined : opening.times(unitRise).div(run).minus(floorThickness),
  };
};

const DEGREES = Math.PI / 180;

/** Labels that follow from the others and were given too: they must agree. */
const contradiction = (facts: StairFacts, found: Computed, unitRise: Length, run: Length): Problem<LayoutProblem> | undefined => {
  for (const key of Object.keys(found) as (keyof Computed)[]) {
    const [given, value] = [facts[key], found[key]];
    if (given === undefined || value === undefined) continue;
    if (typeof given === "number" || typeof value === "number") {
      const rise = run.times(Math.tan(Number(given) * DEGREES).toPrecision(15));
      if (!isWithinAgreement(rise, unitRise)) return problem("labels-disagree", { label: "pitch", value: Number(given), other: "pitch of rise and run", otherValue: Number(value), within: AGREEMENT });
    } else if (!isWithinAgreement(given, value)) {
      return problem("labels-disagree", { label: words(key), value: given, other: `${words(key)} of the other labels`, otherValue: value, within: AGREEMENT });
    }
  }
  return undefined;
};

const line = (key: string, kind: LayoutLine["kind"], value: LayoutLine["value"], assumed = ""): LayoutLine => ({ key, kind, value, assumed });

const kindOf = (key: string, value: unknown): LayoutLine["kind"] => {
  if (typeof value === "number") return key === "pitch" ? "angle" : "count";
  return typeof value === "object" ? "length" : "text";
};

/** The layout of a straight flight: every value that follows from rise and run, in the order the carpenter marks them, then what else was given. */
export const stairLayout = (facts: StairFacts & Readonly<Record<string, unknown>>, unit: Unit): readonly LayoutLine[] | Problem<LayoutProblem> => {
  const stair = resolvedStair(facts);
  if (isProblem(stair)) return stair;
  const { totalRise, risers, unitRise, treads, run, totalRun, assumed } = stair;
  if (totalRise === undefined || risers === undefined || unitRise === undefined || treads === undefined) return problem("no-total-rise");
  if (run === undefined || totalRun === undefined) return problem("no-run");
  const found = computed(stair, unitRise, run);
  const wrong = contradiction(facts, found, unitRise, run);
  if (wrong) return wrong;
  const because = (key: string): string => (assumed.has(key) ? `assumed: ${assumed.get(key) ?? ""}` : "");
  const without = (value: Length | undefined, wants: string): string => (value === undefined ? `give ${wants}` : "");
  const lines = [
    line("unit", "text", unit),
    line("totalRise", "length", totalRise),
    line("risers", "count", risers, assumed.has("risers") ? `assumed: from a max rise of ${sizeText(STAIR_DEFAULTS.maxRise.value, unit)}: ${assumed.get("risers") ?? ""}` : ""),
    line("unitRise", "length", unitRise, because("unitRise")),
    line("run", "length", run, because("run")),
    line("treads", "count", treads, because("topTread")),
    line("nosing", "length", stair.nosing, because("nosing")),
    line("treadThickness", "length", stair.treadThickness, because("treadThickness")),
    line("boardDepth", "length", found.boardDepth),
    line("totalRun", "length", totalRun),
    line("pitch", "angle", found.pitch),
    line("slopeLength", "length", found.slopeLength),
    line("stringerBoard", "length", stair.stringerBoard, because("stringerBoard")),
    line("throat", "length", found.throat),
    line("drop", "length", found.drop, because("lowerBuildUp")),
    line("hang", "length", found.hang, because("upperBuildUp")),
    line("2R+T", "length", found["2R+T"]),
    line("openingNeededFromTheLandingNosing", "length", found.openingNeededFromTheLandingNosing, without(found.openingNeededFromTheLandingNosing, "headroom and floor thickness")),
    line("openingNeededFromTheFace", "length", found.openingNeededFromTheFace, without(found.openingNeededFromTheFace, "headroom and floor thickness")),
    line("headroomFound", "length", found.headroomFound, without(found.headroomFound, "opening and floor thickness")),
  ];
  const printed = new Set(lines.map(({ key }) => key));
  const others = Object.entries(facts).flatMap(([key, value]) => {
    if (printed.has(key) || value === undefined) return [];
    const shown = typeof value === "boolean" ? (value ? "yes" : "no") : (value as Length | number | string);
    return [line(key, kindOf(key, shown), shown)];
  });
  return [...lines, ...others];
};
