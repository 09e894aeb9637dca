import { cents } from "../../bid/cents";
import { Exact } from "../../length/exact";
import { lengthOf } from "../../length/length";
import { boardFeet } from "../board-feet";
import { type BuyRow, sticksByRow } from "../buy-list";
import { type SheetJob } from "./sheet-job";
import { type SheetPlan } from "./sheet-plan";

const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), new Exact(0));

/** A sheet whose thickness nobody gave counts as an inch thick: its board feet are square feet. */
const AN_INCH = lengthOf(1, "in");

/** The sheets to be bought, one row for each row of the stock table that is used; owned sheets are not goods. */
export const sheetGoods = (job: SheetJob, { sheets: sticks }: SheetPlan): BuyRow[] =>
  sticksByRow(job, { sticks }).flatMap((sheets, row): BuyRow[] => {
    const { owned, label, length, width, thickness = AN_INCH, price } = job.stock[row]!;
    if (owned || sheets.length === 0) return [];
    const quantity = sheets.length;
    const pieces = sheets.flatMap(({ strips }) => strips.flatMap((strip) => strip.pieces.map(({ piece }) => job.pieces[piece]!)));
    return [
      {
        item: label === "" ? length : label, length, quantity, price, cost: cents(price.times(quantity)),
        net: sum(pieces.map((piece) => boardFeet(piece.thickness ?? thickness, piece.width!, piece.length, 1))),
        gross: boardFeet(thickness, width!, length, quantity),
        measuredIn: "board feet",
      },
    ];
  });

/** What owned sheets with a price cost, in cents row by row. */
export const ownedSheets = (job: SheetJob, { sheets: sticks }: SheetPlan): Exact =>
  sum(
    sticksByRow(job, { sticks }).flatMap((sheets, row) => {
      const { owned, price } = job.stock[row]!;
      return owned ? [cents(price.times(sheets.length))] : [];
    }),
  );
