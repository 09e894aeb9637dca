import { isFileFault } from "../workbook-file/file-fault";
import { type MendedFile, mendedFile } from "../workbook-file/mended-file";
import { type FunctionsJson, worksheetName } from "../workbook/function-metadata";
import type { MendAsked } from "./command-line";
import { EXIT } from "./exit-codes";
import { refusal } from "./refusal";
import { bytesOf, writeAsked } from "./written-file";

/** What came of mending. */
export interface MendingReport extends Omit<MendedFile, "bytes"> {
  readonly file: string;
  readonly written: readonly string[];
}

/** Mends the formulas of a workbook and writes it where that was asked; answers what came of it. */
export const mend = (asked: MendAsked, { functions }: FunctionsJson, progress: (step: string) => void): MendingReport => {
  const { file, isWithoutSpills } = asked;
  const names = new Set(functions.map(worksheetName));
  progress(`reading ${file}`);
  const before = bytesOf(file);
  try {
    const { bytes, ...found } = mendedFile(before, { isOurs: (name) => names.has(name), isWithoutSpills });
    return { file, ...found, written: writeAsked(asked, before, bytes, found.mended.length > 0, progress) };
  } catch (error) {
    throw isFileFault(error) ? refusal(`${file}: ${error.message}`) : error;
  }
};

/** How the command ends. */
export const exitOfMending = ({ isCheck }: MendAsked, { mended, notMended }: MendingReport): number => {
  if (isCheck && mended.length > 0) return EXIT.differs;
  return notMended.length > 0 ? EXIT.kept : EXIT.done;
};
