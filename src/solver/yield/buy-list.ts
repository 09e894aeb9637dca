import { cents } from "../bid/cents";
import { Exact } from "../length/exact";
import { type Length } from "../length/length";
import { boardFeet } from "./board-feet";
import { type CuttingJob } from "./cutting-job";
import { type CuttingPlan } from "./cutting-plan";

export interface BuyRow {
  /** The stock's label, or its length where it has none. */
  readonly item: string | number | Length;
  readonly length: Length;
  readonly quantity: number;
  readonly price: Exact;
  /** Price x quantity in whole cents. */
  readonly cost: Exact;
  /** What the pieces take of it and what is bought: board feet, or lengths where the stock has no width and thickness. */
  readonly net: Exact;
  readonly gross: Exact;
  readonly measuredIn: "board feet" | "length";
}

/** The sticks of each row of the stock table, in cutting order. */
export const sticksByRow = <Stick extends { readonly stock: number }>(
  { stock }: Pick<CuttingJob, "stock">, { sticks }: { readonly sticks: readonly Stick[] },
): readonly (readonly Stick[])[] => {
  const rows = stock.map((): Stick[] => []);
  for (const stick of sticks) rows[stick.stock]!.push(stick);
  return rows;
};

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), new Exact(0));

/** The sticks to be bought, one row for each row of the stock table that is used; owned sticks are not goods. */
export const buyList = (job: CuttingJob, plan: CuttingPlan): BuyRow[] =>
  sticksByRow(job, plan).flatMap((sticks, row): BuyRow[] => {
    const stock = job.stock[row]!;
    if (stock.owned || sticks.length === 0) return [];
    const { length, width, thickness, price } = stock;
    const quantity = sticks.length;
    const pieces = sticks.flatMap((stick) => stick.pieces.map(({ piece }) => job.pieces[piece]!));
    const goods = { item: stock.label === "" ? length : stock.label, length, quantity, price, cost: cents(price.times(quantity)) };
    return [
      width === undefined || thickness === undefined
        ? { ...goods, net: sum(pieces.map((piece) => piece.length)), gross: length.times(quantity), measuredIn: "length" }
        : {
            ...goods,
            net: sum(pieces.map((piece) => boardFeet(piece.thickness ?? thickness, piece.width ?? width, piece.length, 1))),
            gross: boardFeet(thickness, width, length, quantity),
            measuredIn: "board feet",
          },
    ];
  });
