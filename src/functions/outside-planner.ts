import { received, sent } from "../solver/length/sent";
import { type CuttingAnswer, planBy } from "../solver/yield/shared-plan";

/** A planner in another copy of the solver, to which jobs and plans go as plain data. */
export type OutsidePlanner = (job: unknown, inACell: () => unknown) => unknown;

/** Lets whoever runs the functions plan by a search that has more time than a cell; no sheet does. */
export const planOutside = (planner: OutsidePlanner): void =>
  planBy((job, inACell) => received(planner(sent(job), () => sent(inACell()))) as CuttingAnswer);
