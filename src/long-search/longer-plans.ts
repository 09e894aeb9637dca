import { received, sent } from "../solver/length/sent";
import { isProblem } from "../solver/problem";
import type { CuttingJob } from "../solver/yield/cutting-job";
import { type Answer, better, longPlan } from "./long-plan";

/** A plan that is better than a cell's: what both cost in all and how many sticks they take, before and now. */
export interface BetterPlan {
  readonly cost: readonly [inACell: number, now: number];
  readonly sticks: readonly [inACell: number, now: number];
  readonly verdict: string;
}

/** Plans of all jobs that were asked for, as plain data; each is a cell's until a longer search has found a better one. */
export interface LongerPlans {
  readonly plan: (job: unknown, inACell: () => unknown) => unknown;
  /** Searches the jobs that were not searched yet, for so many seconds together; answers whether it found a better plan. */
  readonly search: (seconds: number) => Promise<boolean>;
  readonly better: () => readonly BetterPlan[];
}

interface Planned {
  readonly job: CuttingJob;
  readonly inACell: Answer;
  now: Answer;
  isSearched: boolean;
}

const MILLISECONDS = 1000;

/** Infinity, which a limit of stock may be, has no form in JSON. */
const keyOf = (job: unknown): string => JSON.stringify(job, (_, value: unknown) => (value === Infinity ? "no limit" : value));

/** A plan that costs less, or no more and takes fewer sticks. */
const isBetter = ({ inACell, now }: Planned): boolean =>
  !isProblem(now) && !isProblem(inACell) &&
  (now.cost.lt(inACell.cost) || (now.cost.eq(inACell.cost) && now.sticksUsed < inACell.sticksUsed));

/** The better plan of the two; one that is no cheaper, only proven better, is not worth more sticks. */
const chosen = (inACell: Answer, found: Answer): Answer => {
  const isMore = !isProblem(inACell) && !isProblem(found) && found.cost.eq(inACell.cost) && found.sticksUsed > inACell.sticksUsed;
  return isMore ? inACell : better(inACell, found);
};

const isOpen = ({ inACell, isSearched }: Planned): boolean => !isSearched && !isProblem(inACell) && !inACell.gap.isZero();

export const longerPlans = (longer: typeof longPlan = longPlan): LongerPlans => {
  const jobs = new Map<string, Planned>();
  return {
    plan: (job, inACell) => {
      const key = keyOf(job);
      const known = jobs.get(key);
      if (known !== undefined) return sent(known.now);
      const plan = received(inACell()) as Answer;
      jobs.set(key, { job: received(job) as CuttingJob, inACell: plan, now: plan, isSearched: false });
      return sent(plan);
    },
    search: async (seconds) => {
      const end = performance.now() + seconds * MILLISECONDS;
      const open = [...jobs.values()].filter(isOpen);
      let hasBetter = false;
      for (const [at, one] of open.entries()) {
        const share = (end - performance.now()) / MILLISECONDS / (open.length - at);
        if (share <= 0) break;
        const found = chosen(one.inACell, await longer(one.job, share));
        Object.assign(one, { now: found, isSearched: true });
        hasBetter ||= found !== one.inACell;
      }
      return hasBetter;
    },
    better: () => [...jobs.values()].filter(isBetter).flatMap(({ inACell, now }) => (isProblem(now) || isProblem(inACell) ? [] : [{
      cost: [inACell.cost.toNumber(), now.cost.toNumber()], sticks: [inACell.sticksUsed, now.sticksUsed], verdict: now.verdict,
    }])),
  };
};
