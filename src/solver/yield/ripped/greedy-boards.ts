import { type Effort, isSpent } from "../shelf/effort";
import type { BoardCosts } from "./board-costs";
import { emptyFilling, type Filling, fillStretches, isFull } from "./filled-layout";
import type { Options } from "./refutation";
import { stretchWorth } from "./stretch-worth";
import type { Yard } from "./yard";

/** Board after board that holds most worth for what it costs more, until all pieces lie or no board takes any. */
export const greedyBoards = (yard: Yard, options: Options, costs: BoardCosts, worth: ArrayLike<number>, effort: Effort): Filling => {
  const filling = emptyFilling(yard);
  const has = yard.boards.map(() => false);
  const bought = yard.lots.map(() => false);
  const costOf = (board: number): number => {
    const { lot } = yard.boards[board]!;
    return costs.boards[board]! + (lot < 0 || bought[lot]! ? 0 : costs.lots[lot]!);
  };
  while (!isFull(filling) && !isSpent(effort)) {
    let chosen = -1;
    let most = 0;
    for (const [board, { stretches }] of yard.boards.entries()) {
      if (has[board]!) continue;
      const held = stretches.reduce(
        (sum, stretch) => sum + stretchWorth(yard, options[stretch]!, { worth, wanted: filling.left }, stretch, effort).value, 0,
      );
      if (held / costOf(board) <= most) continue;
      most = held / costOf(board);
      chosen = board;
    }
    if (chosen < 0) break;
    has[chosen] = true;
    const { lot, stretches } = yard.boards[chosen]!;
    if (lot >= 0) bought[lot] = true;
    fillStretches(yard, options, filling, stretches, worth, effort);
  }
  return filling;
};
