import { Decimal } from "decimal.js";
import { codeCheck, type Verdict } from "../code/check";
import { coverage } from "../code/coverage";
import { answeredAsTaken, openQuestions, takenWords } from "../code/open-question";
import { namedLimit } from "../code/named-limit";
import type { CodeProfile } from "../code/profile";
import { sizeOf } from "../code/profile";
import { Exact } from "../length/exact";
import { type Length, lengthOf, type Unit } from "../length/length";
import { isProblem, type Problem, problem } from "../problem";
import { pitch } from "./pitch";

/** The words of CHECK that a choice can have, the best first. */
export const CHOICE_VERDICTS = [
  "pass", "assumed: would pass", "caution", "not on file", "not given", "assumed: would fail", "fail",
] as const;
export type ChoiceVerdict = (typeof CHOICE_VERDICTS)[number];

/** One workable number of risers. */
export interface Choice {
  readonly risers: number;
  readonly rise: Length;
  readonly run: Length;
  readonly pitch: number;
  readonly twiceRisePlusRun: Length;
  readonly totalRun: Length;
  readonly verdict: ChoiceVerdict;
  readonly note: string;
}

/** Rises a person climbs without thinking: common practice, no source. */
const LEAST_RISE = lengthOf(5, "in");
const GREATEST_RISE = lengthOf("8.25", "in");

/** Two rises and a run: US Army Engineer School EN5156. */
const STRIDE = lengthOf(25, "in");

/** Without a code no run is planned under this: common practice, no source. */
const USUAL_LEAST_RUN = lengthOf(10, "in");

const leastRun = (profile: CodeProfile | undefined): Length => {
  const rule = profile === undefined ? undefined : namedLimit(profile, "tread depth")?.rule;
  return rule !== undefined && (rule.comparator === "min" || rule.comparator === "range") ? sizeOf(rule.min) : USUAL_LEAST_RUN;
};

interface Found {
  readonly verdict: ChoiceVerdict;
  readonly note: string;
}

/**
 * The hardest word of the code's rows that the rise and the run decide, for a stair of the kind a check takes it for. Where those rows
 * would read otherwise for another kind, the verdict is assumed, as it is in a check. A row that is left to a person turns on more than is
 * asked here, so its verdict is not given.
 */
const verdictOf = (profile: CodeProfile | undefined, totalRise: Length, risers: number, rise: Length, run: Length, unit: Unit): Found => {
  if (profile === undefined) return { verdict: "not given", note: "no code given" };
  const sizes = { unit, totalRise, risers, riserHeight: rise, treadDepth: run };
  const rows = codeCheck(answeredAsTaken(profile.limits, sizes), profile);
  const asked = codeCheck(sizes, profile);
  if (isProblem(rows) || isProblem(asked)) return { verdict: "not given", note: "this row could not be checked against the code" };
  const wordOf = (word: Verdict) => rows.filter(({ verdict }) => verdict === word);
  const clausesOf = (word: Verdict): string => wordOf(word).map(({ item, clause }) => `${item} (${clause})`).join(", ");
  const hardest = (["fail", "judge", "caution"] as const).find((word) => wordOf(word).length > 0);
  const unknown = profile.isCode === false ? [] : (["rise", "run"] as const).filter((topic) => coverage(topic, profile) === "not on file");
  if (hardest !== "fail" && unknown.length > 0) return { verdict: "not on file", note: `not on file: ${unknown.join(", ")}` };
  if (hardest === "judge") return { verdict: "not given", note: `${clausesOf(hardest)}: CHECK says what it turns on` };
  if (hardest === undefined && wordOf("pass").length === 0)
    return { verdict: "not given", note: "the code has no limit that rise and run decide" };
  const deciding = wordOf(hardest ?? "pass").map(({ item }) => item);
  const assumed = asked.filter(({ item, verdict }) => deciding.includes(item) && verdict.startsWith("assumed")).map(({ item }) => item);
  // One limit that fails whatever the answers are is enough; a pass needs every limit.
  const isAssumed = hardest === "fail" ? assumed.length === deciding.length : hardest === undefined && assumed.length > 0;
  const words = takenWords(
    profile.limits.filter(({ item }) => assumed.includes(item)).flatMap((limit) => openQuestions(limit, sizes)),
  ).join(", ");
  const note = hardest === undefined ? [] : [clausesOf(hardest)];
  const verdict = hardest ?? "pass";
  return {
    verdict: isAssumed ? (verdict === "fail" ? "assumed: would fail" : "assumed: would pass") : verdict,
    note: [...note, ...(isAssumed ? [`assumes ${words}; CHECK takes another answer`] : [])].join("; "),
  };
};

const runOf = (rise: Length, risers: number, availableRun: Length | undefined, least: Length): Length =>
  availableRun === undefined ? Exact.max(least, STRIDE.minus(rise.times(2))) : availableRun.div(risers - 1);

/** Numbers of risers that give a rise a person climbs well, those that pass the code first, then nearest to the stride, then fewer. */
export const choices = (
  totalRise: Length, availableRun: Length | undefined, profile: CodeProfile | undefined, unit: Unit,
): readonly Choice[] | Problem<"no-workable-count"> => {
  const least = Math.max(2, totalRise.div(GREATEST_RISE).toDecimalPlaces(0, Decimal.ROUND_UP).toNumber());
  const most = totalRise.div(LEAST_RISE).toDecimalPlaces(0, Decimal.ROUND_DOWN).toNumber();
  if (least > most) return problem("no-workable-count", { totalRise, least: LEAST_RISE, greatest: GREATEST_RISE });
  const found = Array.from({ length: most - least + 1 }, (_, more): Choice => {
    const risers = least + more;
    const rise = totalRise.div(risers);
    const run = runOf(rise, risers, availableRun, leastRun(profile));
    return {
      risers,
      rise,
      run,
      pitch: pitch(rise.toNumber(), run.toNumber()),
      twiceRisePlusRun: rise.times(2).plus(run),
      totalRun: run.times(risers - 1),
      ...verdictOf(profile, totalRise, risers, rise, run, unit),
    };
  });
  const place = ({ verdict }: Choice): number => CHOICE_VERDICTS.indexOf(verdict);
  const offStride = (choice: Choice): Length => choice.twiceRisePlusRun.minus(STRIDE).abs();
  return found.sort(
    (one, other) =>
      place(one) - place(other) || offStride(one).cmp(offStride(other)) || one.risers - other.risers,
  );
};
