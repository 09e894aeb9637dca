import { goodsKey } from "../../goods/goods-key";
import { Exact, exact } from "../../length/exact";
import { footage } from "../tally/footage";
import type { TallyBoard } from "../tally/tally-board";
import { isPriced } from "../tally/tally-fault";

/** What one board of a row costs and holds. */
export interface PricedBoard {
  /** Of a board of a lot nothing: the lot is paid for. */
  readonly price: Exact;
  readonly boardFeet: Exact;
  /** The lot it is bought with, by key. */
  readonly lot?: string;
}

export interface BoardPrices {
  readonly rows: readonly PricedBoard[];
  readonly lots: ReadonlyMap<string, Exact>;
  /** Whether the tally has prices at all, or all of it is owned. */
  readonly hasPrices: boolean;
}

const NOTHING = new Exact(0);

/** Boards by themselves: their price, or that of a board foot times what surface measure, or the paper, says of them. */
export const boardPrices = (boards: readonly TallyBoard[]): BoardPrices => {
  const lots = new Map<string, Exact>();
  for (const { lot, lotPrice } of boards) if (lot !== undefined && lotPrice !== undefined) lots.set(goodsKey(lot), lotPrice);
  const counts = footage("surface measure", boards);
  const rows = boards.map((board, place): PricedBoard => {
    const { owned, lot, price, boardFootPrice, quantity, paperFeet } = board;
    const boardFeet = (paperFeet === undefined ? counts[place]!.boardFeet : exact(paperFeet)).div(quantity);
    const key = lot === undefined || owned ? undefined : goodsKey(lot);
    if (key !== undefined && lots.has(key)) return { price: NOTHING, boardFeet, lot: key };
    return { price: owned ? NOTHING : (price ?? boardFootPrice?.times(boardFeet) ?? NOTHING), boardFeet };
  });
  return { rows, lots, hasPrices: boards.some(isPriced) || boards.every(({ owned }) => owned) };
};
