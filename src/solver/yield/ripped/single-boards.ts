import { cents } from "../../bid/cents";
import { goodsKey } from "../../goods/goods-key";
import { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import { boardFeet } from "../board-feet";
import { clearStretches, type Stretch } from "../tally/clear-stretches";
import { footage } from "../tally/footage";
import { ROUGH_THICKNESSES } from "../tally/rough-thickness";
import type { TallyBoard } from "../tally/tally-board";

/** One board of a tally; a row of several is as many. */
export interface SingleBoard {
  readonly row: TallyBoard;
  /** What it costs by itself; 0 where owned or sold in a lot. */
  readonly price: Exact;
  /** Name of the lot it is paid with; undefined where it is sold by itself. */
  readonly lot: string | undefined;
  /** Board feet as measured. */
  readonly feet: Exact;
  /** The thickest finished piece it gives. */
  readonly dressed: Length;
  readonly clear: readonly Stretch[];
}

/** Finished thickness of rough lumber by the table; one that is no rough thickness, or is surfaced, is finished as it is. */
const dressedOf = ({ thickness, surfaced }: TallyBoard): Length =>
  surfaced ? thickness : (ROUGH_THICKNESSES.find(({ rough }) => rough.eq(thickness))?.dressed ?? thickness);

/** A saw cut takes a kerf: what is spoilt over less length is widened to one, as far as the board goes. */
const widened = ({ from, to }: Stretch, kerf: Length, length: Length): Stretch => {
  const more = kerf.minus(to.minus(from)).div(2);
  if (more.lte(0)) return { from, to };
  return { from: Exact.max(0, from.minus(more)), to: Exact.min(length, to.plus(more)) };
};

/** What of a board is clear when each defect takes at least a kerf. */
const clearOf = ({ length, defects, clear }: TallyBoard, kerf: Length): readonly Stretch[] => {
  const spoilt = clear.length === 0 ? defects : clearStretches(length, clearStretches(length, [], clear), []);
  return clearStretches(length, spoilt.map((defect) => widened(defect, kerf, length)), []);
};

/** Lots that are sold as such: those with a price. */
const lotsSold = (boards: readonly TallyBoard[]): ReadonlySet<string> =>
  new Set(boards.flatMap(({ lot, lotPrice }) => (lot === undefined || lotPrice === undefined ? [] : [goodsKey(lot)])));

/** Price of each lot by name. */
export const lotPrices = (boards: readonly TallyBoard[]): ReadonlyMap<string, Exact> =>
  new Map(
    boards.flatMap(({ lot, lotPrice }) => (lot === undefined || lotPrice === undefined ? [] : [[goodsKey(lot), cents(lotPrice)] as const])),
  );

/** The boards one by one, in the order of the tally, priced by surface measure where the price is by the board foot. */
export const singleBoards = (boards: readonly TallyBoard[], kerf: Length): readonly SingleBoard[] => {
  const rows = boards.flatMap((row) => Array.from({ length: row.quantity }, () => row));
  const counted = footage("surface measure", rows.map((row) => ({ ...row, quantity: 1 })));
  const lots = lotsSold(boards);
  return rows.map((row, place): SingleBoard => {
    const { price, boardFootPrice, owned, paperFeet, quantity } = row;
    const lot = row.lot === undefined || owned || !lots.has(goodsKey(row.lot)) ? undefined : goodsKey(row.lot);
    const feet = paperFeet === undefined ? counted[place]!.boardFeet : new Exact(paperFeet).div(quantity);
    const own = price ?? (boardFootPrice === undefined ? new Exact(0) : boardFootPrice.times(feet));
    return {
      row, lot,
      price: owned || lot !== undefined ? new Exact(0) : cents(own),
      feet: boardFeet(row.thickness, row.width, row.length, 1),
      dressed: dressedOf(row),
      clear: clearOf(row, kerf),
    };
  });
};
