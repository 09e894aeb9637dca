import { cents } from "../../bid/cents";
import { Exact } from "../../length/exact";
import type { Unit } from "../../length/length";
import { isProblem, type Problem, problem } from "../../problem";
import { lengthOfMarks } from "../mark";
import type { TallyBoard } from "../tally/tally-board";
import { type TallyFault, tallyFault } from "../tally/tally-fault";
import { type GlueFault, glueJob, type GlueJob, paidOfWeight } from "./glue-job";
import { type GluePanel, panelName } from "./glue-panel";
import { type GlueSearch, glueSearch } from "./glue-search";
import type { GlueTerms } from "./glue-terms";
import type { GluedStrip } from "./glue-work";

export type NoGluePlan = TallyFault | GlueFault | "tally-too-small" | "panels-too-many" | "no-plan-found";

/** Boards and strips of a glue-up at least cost, and how far from the least it may be. */
export interface GluePlan {
  readonly job: GlueJob;
  readonly strips: readonly GluedStrip[];
  readonly cost: Exact;
  /** What is paid and what no plan pays less than, in thousandths of money or of board feet. */
  readonly paid: number;
  readonly bound: number;
  /** The share of what is paid that a better plan could save at most. */
  readonly gap: number;
  /** Cheaper choices of boards were looked through, not shown too small by what they give. */
  readonly isSearched: boolean;
}

/** What a search may spend, in steps: well within two seconds. */
const EFFORT = 2_000_000;

const sum = (amounts: readonly number[]): number => amounts.reduce((all, each) => all + each, 0);

export const gapOf = (paid: number, bound: number): number => (paid === 0 ? 0 : Math.max(0, (paid - bound) / paid));

/** Why no boards hold the panels. */
const unheld = (
  job: GlueJob, panels: readonly GluePanel[], found: Exclude<ReturnType<typeof glueSearch>, GlueSearch>, unit: Unit,
): Problem<NoGluePlan> => {
  if (!("row" in found)) return problem("no-plan-found", { panel: panelName(panels[job.panelsOf[found.without]![0]!]!) });
  const { kind, need } = found.row;
  if (kind === undefined) return problem("panels-too-many", { panels: sum(job.work.kinds.map(({ count }) => count)) });
  return problem("tally-too-small", {
    panel: panelName(panels[job.panelsOf[kind]![0]!]!),
    gives: lengthOfMarks(found.given, unit),
    need: lengthOfMarks(need, unit),
    length: lengthOfMarks(job.work.kinds[kind]!.length, unit),
  });
};

/** The plan, or what makes the glue-up none. */
export const gluePlan = (
  panels: readonly GluePanel[], tally: readonly TallyBoard[], terms: GlueTerms, unit: Unit,
): GluePlan | Problem<NoGluePlan> => {
  const fault = tallyFault(tally);
  if (isProblem(fault)) return fault;
  const job = glueJob(panels, tally, terms, unit);
  if (isProblem(job)) return job;
  const found = glueSearch(job.work, { left: EFFORT });
  if (!("strips" in found)) return unheld(job, panels, found, unit);
  const usedWoods = new Set(found.strips.map(({ wood }) => wood));
  const offers = found.offers.filter((offer) => job.work.offers[offer]!.woods.some((wood) => usedWoods.has(wood)));
  const paid = sum(offers.map((offer) => job.paid[offer]!));
  const bound = typeof found.bound === "number" ? paidOfWeight(found.bound) : sum(found.bound.map((offer) => job.paid[offer]!));
  return {
    job,
    strips: found.strips,
    cost: cents(offers.reduce((all, offer) => all.plus(job.prices[offer]!), new Exact(0))),
    paid,
    bound,
    gap: gapOf(paid, bound),
    isSearched: found.isSearched,
  };
};
