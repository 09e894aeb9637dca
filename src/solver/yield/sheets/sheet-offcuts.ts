import { cents } from "../../bid/cents";
import { type Problem, problem } from "../../problem";
import { sticksByRow } from "../buy-list";
import { type Offcut, type OffcutsProblem } from "../offcuts";
import { type LaidSheet } from "./laid-sheets";
import { type KeptSize, type SheetJob } from "./sheet-job";
import { type SheetPlan } from "./sheet-plan";

/** What one sheet leaves in whole pieces: the end of each strip, and what is uncut beside the last. */
const leftOf = ({ first, strips, usableLength, usableWidth, uncut }: LaidSheet): KeptSize[] => [
  ...strips.map(({ length, width, leftOver }) => (first === "rip" ? { length: leftOver, width } : { length, width: leftOver })),
  first === "rip" ? { length: usableLength, width: uncut } : { length: uncut, width: usableWidth },
];

/** What of a sheet is at least as large as what is kept, largest first. */
export const keptOf = (sheet: LaidSheet, keep: KeptSize): KeptSize[] =>
  leftOf(sheet)
    .filter(({ length, width }) => length.gt(0) && width.gt(0) && length.gte(keep.length) && width.gte(keep.width))
    .sort((one, other) => other.length.times(other.width).cmp(one.length.times(one.width)) || other.length.cmp(one.length));

/** What is kept, as rows of tomorrow's stock, row by row of the stock table; equal ones in one row. Their value is their share by area. */
export const sheetOffcuts = (job: SheetJob, { sheets: sticks }: SheetPlan): Offcut[] | Problem<OffcutsProblem> => {
  const { keep } = job;
  if (keep === undefined) return problem("keep-missing");
  return sticksByRow(job, { sticks }).flatMap((sheets, row): Offcut[] => {
    const { label, grade, thickness, price, length: long, width: wide } = job.stock[row]!;
    const found = new Map<string, { readonly size: KeptSize; count: number }>();
    const keyOf = ({ length, width }: KeptSize): string => `${length.toString()}/${width.toString()}`;
    for (const size of sheets.flatMap((sheet) => keptOf(sheet, keep))) {
      const known = found.get(keyOf(size));
      if (known === undefined) found.set(keyOf(size), { size, count: 1 });
      else known.count += 1;
    }
    return [...found.values()].map(({ size: { length, width }, count }) => ({
      length, width, available: count, grade,
      label: label === "" ? "offcut" : `offcut of ${label}`,
      ...(thickness === undefined ? {} : { thickness }),
      value: cents(price.times(length).times(width).div(long).div(wide!)),
    }));
  });
};
