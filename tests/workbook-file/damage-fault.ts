import { FAULTS, isFileFault } from "../../src/workbook-file/file-fault";
import { type ReadWorkbook, readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { savedOver } from "../../src/workbook-file/saved-over";
import { MOST_ELEMENTS, noWork } from "../../src/workbook-file/xml-tree";
import { formulaFault } from "../../src/workbook/formula-limits";
import { isSoundSheet, workbookData } from "../../src/workbook/workbook-data";

const SENTENCES: readonly string[] = Object.values(FAULTS);

/** What a file came to: it was read, or refused with one of the sentences. */
export type Outcome = "read" | keyof typeof FAULTS;

/** The name of the sentence that refused a file; anything else thrown is a fault of ours. */
const refusal = (error: unknown): Outcome => {
  if (!isFileFault(error)) throw error;
  const said = error.message.replace(/ \(Part: [^)]*\.\)$/, "");
  const [name] = (Object.entries(FAULTS).find(([, sentence]) => sentence === said) ?? []) as [Outcome?];
  if (name === undefined || !SENTENCES.includes(said)) throw new Error(`not one of the sentences: ${error.message}`);
  return name;
};

const open = (bytes: Uint8Array): ReadWorkbook => {
  const work = noWork();
  try {
    return readWorkbookFile(bytes, { refuses: formulaFault, isSound: isSoundSheet, work });
  } finally {
    // One element more than may be is what stops the reading.
    if (work.elements > 2 * MOST_ELEMENTS) throw new Error(`reading took ${work.elements} steps`);
  }
};

/**
 * Reads a file and saves into it, whatever it is. Throws where anything but a sentence comes of it, where what is read is not what a live
 * sheet takes, or where what was saved cannot be read again.
 */
export const outcomeOf = (bytes: Uint8Array): Outcome => {
  const before = bytes.slice();
  try {
    const read = open(bytes);
    workbookData({ version: 1, sheets: read.sheets });
    const over = savedOver(read.file, { value: () => 7, spill: () => [[7, 8], [9, 10]] });
    open(over.bytes);
    return "read";
  } catch (error) {
    return refusal(error);
  } finally {
    if (Buffer.compare(before, bytes) !== 0) throw new Error("the file that was given is another now");
  }
};
