import type { Highs } from "highs";
import type { WholeSearch } from "../solver/yield/shelf/pattern-branching";
import { provenLeast, wholeUnits } from "../solver/yield/shelf/certificate";
import type { Use } from "../solver/yield/shelf/pattern";

/** Steps of the solver's own loops in a second, about. */
export const STEPS_A_SECOND = 400_000_000;
/** The seconds HiGHS is asked to keep to. It may take longer: whoever waits stops the worker. */
const FEWEST_SECONDS = 0.5;
const MOST_SECONDS = 20;

/**
 * Whole uses of the patterns as an integer program in HiGHS, with a row that holds the cost to the target. What it closes rests on its
 * tolerance of 1e-6, so a plan is called searched by it, never certified.
 */
export const highsWholeSearch =
  (highs: Highs): WholeSearch =>
  (shelf, limits, { steps, worth, charges }, patterns, target, _masterOf, effort) => {
    const { kinds, sticks } = shelf;
    const prices = patterns.map(({ pattern }) => sticks[pattern.stick]!.price);
    const rows = kinds.length + sticks.length + 1;
    const starts = [0];
    const indices: number[] = [];
    const values: number[] = [];
    for (const [place, { pattern }] of patterns.entries()) {
      indices.push(...pattern.kinds, kinds.length + pattern.stick, rows - 1);
      values.push(...pattern.counts, 1, prices[place]!);
      starts.push(indices.length);
    }
    const held = charges.map((charge, stick) => ({ worth: sticks[stick]!.price * steps - charge }));
    const least = wholeUnits(provenLeast(shelf, limits, steps, worth, held), steps);
    return highs.withModel(
      {
        numCols: patterns.length,
        numRows: rows,
        colCost: prices,
        colLower: patterns.map(() => 0),
        colUpper: patterns.map(() => highs.infinity),
        rowLower: [...kinds.map((kind) => kind.wanted), ...limits.least, 0],
        rowUpper: [...kinds.map(() => highs.infinity), ...limits.most, target],
        matrix: { format: "csc", numCols: patterns.length, numRows: rows, starts, indices, values },
        integrality: patterns.map(() => 1),
      },
      (model) => {
        model.options.set({
          output_flag: false,
          random_seed: 1,
          time_limit: Math.min(MOST_SECONDS, Math.max(FEWEST_SECONDS, effort.left / STEPS_A_SECOND)),
          mip_rel_gap: 0,
          mip_abs_gap: 0.5,
          objective_target: least,
        });
        const { modelStatus } = model.run();
        const isInfeasible = modelStatus === highs.constants.modelStatus.infeasible;
        const isOptimal = modelStatus === highs.constants.modelStatus.optimal;
        const { colValue } = model.getSolution();
        const uses: Use[] = patterns.flatMap(({ pattern }, place) => {
          const times = Math.round(colValue[place] ?? 0);
          return times > 0 ? [{ pattern, times }] : [];
        });
        const cost = uses.reduce((sum, { pattern, times }) => sum + times * sticks[pattern.stick]!.price, 0);
        const given = kinds.map(() => 0);
        const used = sticks.map(() => 0);
        for (const { pattern, times } of uses) {
          used[pattern.stick]! += times;
          for (const [place, kind] of pattern.kinds.entries()) given[kind]! += times * pattern.counts[place]!;
        }
        const isPlan =
          !isInfeasible &&
          cost <= target &&
          given.every((count, kind) => count >= kinds[kind]!.wanted) &&
          used.every((count, stick) => count <= limits.most[stick]!);
        return { best: isPlan ? { cost, uses } : undefined, isClosed: isInfeasible || (isPlan && isOptimal) };
      },
    );
  };
