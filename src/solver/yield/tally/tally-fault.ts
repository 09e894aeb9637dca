import { goodsKey } from "../../goods/goods-key";
import { isProblem, type Problem, problem } from "../../problem";
import { boardName, type TallyBoard } from "./tally-board";

export type TallyFault =
  | "label-twice" | "two-prices" | "no-price" | "lot-price-without-lot" | "lot-without-price" | "lot-and-own-price" | "two-lot-prices"
  | "defects-and-clear" | "ranges-of-several" | "range-backwards" | "range-past-end" | "edge-takes-all";

/** Labels alike are two boards nobody can tell apart at the saw. */
const twiceLabelled = (boards: readonly TallyBoard[]): Problem<TallyFault> | undefined => {
  const rows = new Map<string, number>();
  for (const { label, row } of boards) {
    if (label === undefined || label === "") continue;
    const key = goodsKey(label);
    const first = rows.get(key);
    if (first !== undefined) return problem("label-twice", { board: String(label), first, second: row });
    rows.set(key, row);
  }
  return undefined;
};

const rangeFault = (board: TallyBoard): Problem<TallyFault> | undefined => {
  const name = boardName(board);
  if (board.defects.length > 0 && board.clear.length > 0) return problem("defects-and-clear", { board: name });
  const column = board.defects.length > 0 ? "defects" : "clear";
  const ranges = [...board.defects, ...board.clear];
  if (ranges.length > 0 && board.quantity > 1) return problem("ranges-of-several", { column, board: name, quantity: board.quantity });
  for (const { from, to } of ranges) {
    if (to.lte(from)) return problem("range-backwards", { column, board: name, from, to });
    if (to.gt(board.length)) return problem("range-past-end", { column, board: name, from, to, length: board.length });
  }
  return board.edge.gte(board.width) ? problem("edge-takes-all", { board: name, edge: board.edge, width: board.width }) : undefined;
};

/** Prices of the lots by name; each is given once, or alike on every row. */
const lotPrices = (boards: readonly TallyBoard[]): ReadonlyMap<string, string> | Problem<TallyFault> => {
  const prices = new Map<string, string>();
  for (const board of boards) {
    const { lot, lotPrice } = board;
    if (lotPrice === undefined) continue;
    if (lot === undefined || lot === "") return problem("lot-price-without-lot", { board: boardName(board), price: lotPrice.toString() });
    const first = prices.get(goodsKey(lot));
    const second = lotPrice.toString();
    if (first !== undefined && first !== second) return problem("two-lot-prices", { lot: String(lot), first, second });
    prices.set(goodsKey(lot), second);
  }
  return prices;
};

export const isPriced = ({ price, boardFootPrice, lotPrice }: TallyBoard): boolean =>
  price !== undefined || boardFootPrice !== undefined || lotPrice !== undefined;

/** Where no board has a price the tally only counts; where one has, every board that is not owned has. */
const priceFault = (boards: readonly TallyBoard[]): Problem<TallyFault> | undefined => {
  const lots = lotPrices(boards);
  if (isProblem(lots)) return lots;
  const hasPrices = boards.some(isPriced);
  for (const board of boards) {
    const { price, boardFootPrice, lot, owned } = board;
    const name = boardName(board);
    if (price !== undefined && boardFootPrice !== undefined)
      return problem("two-prices", { board: name, price: price.toString(), each: boardFootPrice.toString() });
    const ofLot = lot === undefined ? undefined : lots.get(goodsKey(lot));
    const own = price ?? boardFootPrice;
    if (ofLot !== undefined && own !== undefined)
      return problem("lot-and-own-price", { board: name, lot: String(lot), price: ofLot, own: own.toString() });
    if (!hasPrices || owned || ofLot !== undefined || own !== undefined) continue;
    return lot === undefined || lot === ""
      ? problem("no-price", { board: name })
      : problem("lot-without-price", { lot: String(lot), board: name });
  }
  return undefined;
};

/** What is wrong with a tally as a whole, the first of it. */
export const tallyFault = (boards: readonly TallyBoard[]): Problem<TallyFault> | undefined => {
  const twice = twiceLabelled(boards);
  if (twice !== undefined) return twice;
  for (const board of boards) {
    const fault = rangeFault(board);
    if (fault !== undefined) return fault;
  }
  return priceFault(boards);
};
