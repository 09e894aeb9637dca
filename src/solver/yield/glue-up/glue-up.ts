import { Exact } from "../../length/exact";
import type { Unit } from "../../length/length";
import { isProblem, type Problem } from "../../problem";
import type { TallyBoard } from "../tally/tally-board";
import type { GluePanel } from "./glue-panel";
import { gapOf, gluePlan, type GluePlan, type NoGluePlan } from "./glue-plan";
import type { GlueTerms } from "./glue-terms";

const PERCENT = 100;

/** The share of a plan that may be saved, rounded up to a tenth of a percent: never better than it is. */
const words = ({ gap, isSearched, job: { isOfMoney } }: GluePlan): string => {
  const how = isSearched ? "searched, not certified" : "proven";
  if (gap === 0) return `best possible (${how}): no choice of boards ${isOfMoney ? "costs less" : "is of fewer board feet"}`;
  const share = new Exact(gap).times(PERCENT).toDecimalPlaces(1, Exact.ROUND_UP).toString();
  return `at most ${share} % ${isOfMoney ? "" : "of the board feet "}could still be saved`;
};

const mixed = ({ strips, job }: GluePlan): number => {
  const boards = new Map<string, Set<number>>();
  for (const { kind, panel, wood } of strips) {
    const key = `${kind} ${panel}`;
    boards.set(key, (boards.get(key) ?? new Set()).add(wood));
  }
  return job.work.isOfOneBoard ? 0 : [...boards.values()].filter(({ size }) => size > 1).length;
};

const plural = (count: number, one: string, several: string): string => (count === 1 ? `1 ${one}` : `${count} ${several}`);

/** A plan, and what it costs more to make each panel of one board, in words, where that is another plan and money counts. */
export interface GlueUp {
  readonly plan: GluePlan;
  readonly same?: string;
}

const withSameBoard = (
  panels: readonly GluePanel[], tally: readonly TallyBoard[], terms: GlueTerms, unit: Unit, plan: GluePlan,
): GlueUp => {
  const count = mixed(plan);
  if (count === 0 || !plan.job.isOfMoney) return { plan };
  const other = gluePlan(panels, tally, { ...terms, together: "board" }, unit);
  const mix = plural(count, "panel mixes boards", "panels mix boards");
  if (isProblem(other)) return { plan, same: `${mix}; no plan with each of one board was found` };
  const { bound, isSearched } = plan;
  if (other.paid < plan.paid) return { plan: { ...other, bound, gap: gapOf(other.paid, bound), isSearched } };
  const more = other.cost.minus(plan.cost);
  return { plan, same: `${mix}; same board costs ${more.isZero() ? "no" : more.toFixed(2)} more` };
};

/** The glue-up at least cost; where panels of one board each cost less than what was found, that. */
export const glueUp = (
  panels: readonly GluePanel[], tally: readonly TallyBoard[], terms: GlueTerms, unit: Unit,
): GlueUp | Problem<NoGluePlan> => {
  const found = gluePlan(panels, tally, terms, unit);
  return isProblem(found) ? found : withSameBoard(panels, tally, terms, unit, found);
};

/** How good the plan is, and what panels of one board each cost more. */
export const inWords = ({ plan, same }: GlueUp): string => [words(plan), same].filter((part) => part !== undefined).join("; ");
