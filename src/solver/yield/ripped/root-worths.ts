import { type Effort, isSpent } from "../shelf/effort";
import type { BoardCosts } from "./board-costs";
import { leastCostOf } from "./board-sets";
import { type Column, linearProgram, type Row } from "./linear-program";
import { type Case, NO_TERMS, type Options } from "./refutation";
import { addPattern, type Patterns } from "./set-search";
import { stretchWorth } from "./stretch-worth";
import type { Yard } from "./yard";

/** Costs are scaled to so much for the dearest board, worths are so many times finer and whole. */
const DEAREST = 1_000;
const WORTH_STEPS = 1_000;
const SHORTAGE_TIMES = 20;
const MOST_ROUNDS = 200;
/** Rounds without a better bound after which the linear program has told what it can. */
const MOST_WITHOUT_GAIN = 25;
const KEPT = 12;

/** What the linear program over boards tells: worths as cases, the best first, and what one piece of a kind is worth in the best. */
export interface RootWorths {
  readonly cases: readonly Case[];
  readonly bound: number;
  readonly worth: readonly number[];
}

const rowsOf = (yard: Yard, dearest: number): Row[] => [
  ...yard.kinds.map(({ wanted }): Row => ({ isLeast: true, right: wanted, shortage: SHORTAGE_TIMES * dearest })),
  ...yard.boards.map(({ lot }): Row => ({ isLeast: false, right: lot < 0 ? 1 : 0, shortage: 0 })),
  ...yard.lots.map((): Row => ({ isLeast: false, right: 1, shortage: 0 })),
];

/** A lot bought makes room for each of its boards. */
const lotColumn = ({ kinds, boards }: Yard, lot: number, cost: number): Column => {
  const held = boards.flatMap((board, place) => (board.lot === lot ? [kinds.length + place] : []));
  return { cost, rows: [...held, kinds.length + boards.length + lot], values: [...held.map(() => -1), 1] };
};

/** The linear program of all boards: worths of pieces that show how dear a plan must be. */
export const rootWorths = (
  yard: Yard, options: Options, costs: BoardCosts, patterns: Patterns, effort: Effort,
): RootWorths => {
  const { kinds, boards } = yard;
  const scale = DEAREST / Math.max(1, ...costs.boards, ...costs.lots);
  const columns: Column[] = costs.lots.map((cost, lot) => lotColumn(yard, lot, cost * scale));
  const program = linearProgram(rowsOf(yard, DEAREST), columns);
  const wanted = kinds.map((kind) => kind.wanted);
  const cases: { one: Case; least: number }[] = [];
  let bound = 0;
  let without = 0;
  for (let round = 0; round < MOST_ROUNDS && without < MOST_WITHOUT_GAIN && !isSpent(effort); round += 1) {
    const { worth } = program.solve(effort);
    const whole = kinds.map((_, kind) => Math.max(0, Math.round(worth[kind]! * WORTH_STEPS)));
    let isNew = false;
    const holds = new Float64Array(boards.length);
    for (const [board, { stretches }] of boards.entries()) {
      const held = stretches.map((stretch) => stretchWorth(yard, options[stretch]!, { worth: whole, wanted }, stretch, effort));
      holds[board] = held.reduce((sum, each) => sum + each.value, 0);
      if (holds[board]! / WORTH_STEPS <= costs.boards[board]! * scale - worth[kinds.length + board]! + 1e-3) continue;
      const counts = new Int32Array(kinds.length);
      for (const [place, stretch] of stretches.entries()) {
        addPattern(patterns, { stretch, strip: -1 }, held[place]!);
        held[place]!.counts().forEach((count, kind) => (counts[kind]! += count));
      }
      const filled = [...counts.keys()].filter((kind) => counts[kind]! > 0);
      const values = [...filled.map((kind) => counts[kind]!), 1];
      columns.push({ cost: costs.boards[board]! * scale, rows: [...filled, kinds.length + board], values });
      isNew = true;
    }
    const needed = whole.reduce((sum, each, kind) => sum + each * wanted[kind]!, 0);
    const one: Case = { terms: NO_TERMS, worth: whole, limitWorth: [], needed, holds, without: [] };
    const least = leastCostOf(yard, costs, one);
    without = least > bound ? 0 : without + 1;
    bound = Math.max(bound, least);
    cases.push({ one, least });
    if (!isNew) break;
  }
  const best = cases.sort((one, other) => other.least - one.least).slice(0, KEPT);
  return { cases: best.map(({ one }) => one), bound, worth: best[0]?.one.worth ?? wanted };
};
