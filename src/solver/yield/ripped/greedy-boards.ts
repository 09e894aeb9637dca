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
  // as pieces are laid no board comes to hold more, so what was reckoned before is a bound
  const held = yard.boards.map(() => Infinity);
  const fresh = yard.boards.map(() => false);
  const reckon = (board: number): void => {
    held[board] = yard.boards[board]!.stretches.reduce(
      (sum, stretch) => sum + stretchWorth(yard, options[stretch]!, { worth, wanted: filling.left }, stretch, effort).value, 0,
    );
    fresh[board] = true;
  };
  const best = (): number => {
    for (;;) {
      let chosen = -1;
      let most = 0;
      for (let board = 0; board < held.length; board += 1) {
        const rate = has[board]! ? 0 : held[board]! / costOf(board);
        if (rate <= most) continue;
        most = rate;
        chosen = board;
      }
      if (chosen < 0 || fresh[chosen]!) return chosen;
      reckon(chosen);
    }
  };
  while (!isFull(filling) && !isSpent(effort)) {
    fresh.fill(false);
    const chosen = best();
    if (chosen < 0) break;
    has[chosen] = true;
    const { lot, stretches } = yard.boards[chosen]!;
    if (lot >= 0) bought[lot] = true;
    fillStretches(yard, options, filling, stretches, worth, effort);
  }
  return filling;
};
