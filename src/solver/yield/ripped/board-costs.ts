import type { Yard } from "./yard";

/**
 * What sets of boards cost, in one whole number: money first, then board feet newly cut, then boards. A lot is paid once if any of its
 * boards is cut.
 */
export interface BoardCosts {
  readonly boards: readonly number[];
  readonly lots: readonly number[];
  /** One unit of money in these numbers. */
  readonly moneyStep: number;
}

export const boardCosts = ({ boards, lots }: Yard): BoardCosts => {
  const feetStep = boards.length + 1;
  const moneyStep = boards.reduce((sum, { feet }) => sum + feet * feetStep + 1, 1);
  return {
    boards: boards.map(({ money, feet }) => money * moneyStep + feet * feetStep + 1),
    lots: lots.map((money) => money * moneyStep),
    moneyStep,
  };
};

export const costOfSet = ({ boards }: Yard, costs: BoardCosts, set: Iterable<number>): number => {
  const lots = new Set<number>();
  let sum = 0;
  for (const board of set) {
    sum += costs.boards[board]!;
    if (boards[board]!.lot >= 0) lots.add(boards[board]!.lot);
  }
  for (const lot of lots) sum += costs.lots[lot]!;
  return sum;
};
