import { type Length } from "../../length/length";
import { type Cutting } from "./sheet-shelf";
import { type SheetJob } from "./sheet-job";
import { type SheetPlan } from "./sheet-plan";

export interface SheetRow {
  /** Sheets are numbered from 1. */
  readonly sheet: number;
  /** The stock's label, or its length where it has none. */
  readonly stock: string | number | Length;
  readonly first: Cutting;
  readonly strip: number;
  readonly along: Length;
  readonly across: Length;
  readonly label: string | number;
  readonly length: Length;
  readonly width: Length;
  readonly turned: boolean;
  /** At the end of the strip, the same on each of its rows. */
  readonly leftOver: Length;
}

/** One row per piece, sheet after sheet and strip after strip. */
export const sheetList = (job: SheetJob, plan: SheetPlan): SheetRow[] =>
  plan.sheets.flatMap(({ stock, first, strips }, sheet) =>
    strips.flatMap(({ pieces, leftOver }, strip) =>
      pieces.map(({ piece, along, across, turned }) => {
        const { label, length, width } = job.pieces[piece]!;
        const { label: name, length: long } = job.stock[stock]!;
        return {
          sheet: sheet + 1, stock: name === "" ? long : name, first, strip: strip + 1, along, across, label, length, width: width!, turned,
          leftOver,
        };
      }),
    ),
  );
