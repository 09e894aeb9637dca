import { cellAddress } from "../sheets/cell-address";
import { isDateFormat } from "../sheets/cell-format";
import { DAYS_TO_1904 } from "./date-number";
import { EditedPackage } from "./edited-package";
import type { KeptFile, SheetPart } from "./read-workbook-file";
import type { Calculated, CalculatedValue } from "./sheet/calculated";
import { type KeptBlock, keptSheet } from "./sheet/kept-sheet";
import { isStoredError, type StoredValue } from "./sheet/cell-value";
import { plainError } from "./sheet/value-xml";
import { splicedSheet, type SheetChanges } from "./sheet/spliced-sheet";

/** A formula whose value stays what it was when the file was saved. */
export interface Unsaved {
  readonly sheet: string;
  readonly address: string;
  readonly why: string;
}

/** A cell whose value is another now, both as the file holds them; null for nothing. */
export interface ChangedValue {
  readonly address: string;
  readonly was: StoredValue | null;
  readonly is: CalculatedValue;
}

export interface SavedOver {
  readonly bytes: Uint8Array;
  /** By sheet, cells that another one spills into too. */
  readonly changed: Readonly<Record<string, readonly ChangedValue[]>>;
  readonly unsaved: readonly Unsaved[];
}

/** Numbers nearer to each other than this are the same one, worked out in another order; */
const SAME = 1e-11;
/** large ones by this part of them: beyond some thousands a double is that coarse itself (IEEE 754, 53 bits, so 1.1e-16 for each step). */
const SAME_PART = 1e-14;

/** Cells of all blocks of a sheet together. */
const MOST_CELLS = 2_000_000;

export const isSameValue = (one: StoredValue | undefined, other: CalculatedValue): boolean => {
  const now = other === null ? undefined : other;
  if (typeof one === "number" && typeof now === "number") return Math.abs(one - now) <= Math.max(SAME, SAME_PART * Math.abs(one));
  if (isStoredError(one) && isStoredError(now)) return plainError(one.error) === plainError(now.error);
  return one === now;
};

/** What a block comes to that has no room to spill. */
const NO_ROOM = "#SPILL!";
const SEVERAL = "comes to several cells here and to one of them in the file";
const OTHER_SIZE = "comes to another number of rows or columns here than the cells that the file sets for it";

interface Changing {
  readonly file: KeptFile;
  readonly sheet: SheetPart;
  readonly calculated: Calculated;
  readonly unsaved: Unsaved[];
}

/** What a formula comes to, as many rows and columns of it as its cells in the file may take up; or why it stays as it was. */
const blockNow = (
  { kind, address, rows, columns }: KeptBlock, { sheet, calculated }: Changing,
): readonly (readonly CalculatedValue[])[] | string => {
  const spilled = calculated.spill(sheet.name, address);
  const block = spilled.length === 0 ? [[calculated.value(sheet.name, address)]] : spilled;
  if (kind === "dynamic") return block;
  const [first] = block[0] ?? [];
  const isInTheWay = isStoredError(first) && first.error === NO_ROOM;
  if (kind === "one") return block.length === 1 && block[0]?.length === 1 && !isInTheWay ? block : SEVERAL;
  // How another size is filled differs by what wrote the file, and no live sheet fills cells by it.
  return block.length === rows && block[0]?.length === columns && !isInTheWay ? block : OTHER_SIZE;
};

interface ChangesOfSheet extends SheetChanges {
  readonly changed: readonly ChangedValue[];
}

const changesOf = (changing: Changing): ChangesOfSheet => {
  const { file, sheet, unsaved } = changing;
  const kept = keptSheet(file, sheet);
  const values = new Map<string, CalculatedValue>();
  const spillsTo = new Map<string, { readonly rows: number; readonly columns: number }>();
  let cells = 0;
  for (const block of kept.blocks) {
    if (file.isKept(sheet.name, block.address)) continue;
    cells += block.rows * block.columns;
    const now = cells > MOST_CELLS ? "takes up more cells than are saved" : blockNow(block, changing);
    if (typeof now === "string") {
      unsaved.push({ sheet: sheet.name, address: block.address, why: now });
      continue;
    }
    const size = { rows: now.length, columns: now[0]?.length ?? 1 };
    if (block.kind === "dynamic" && (size.rows !== block.rows || size.columns !== block.columns)) spillsTo.set(block.address, size);
    for (let row = 0; row < Math.max(size.rows, block.rows); row += 1)
      for (let column = 0; column < Math.max(size.columns, block.columns); column += 1) {
        const address = cellAddress({ row: block.row + row, column: block.column + column });
        const value = now[row]?.[column];
        // A formula that leads to an empty cell shows 0.
        if (value !== undefined) values.set(address, value ?? 0);
        // A cell that it takes up no more shows what another block or a person has put there.
        else if (!values.has(address)) values.set(address, changing.calculated.value(sheet.name, address));
      }
  }
  const changed: ChangedValue[] = [];
  for (const [address, value] of values) {
    const format = kept.format(address);
    const isDate = file.countsFrom1904 && typeof value === "number" && format !== undefined && isDateFormat(format);
    const stored = isDate ? value - DAYS_TO_1904 : value;
    const was = kept.value(address);
    if (isSameValue(was, stored)) values.delete(address);
    else {
      values.set(address, stored);
      changed.push({ address, was: was ?? null, is: stored });
    }
  }
  return { values, spillsTo, changed };
};

/**
 * An opened file with what its formulas come to now. Every part in which nothing changed stays byte for byte as it was packed; in a sheet
 * only values, their types, the cells blocks spill into, the references of those, and the dimension are written.
 */
export const savedOver = (file: KeptFile, calculated: Calculated): SavedOver => {
  const unsaved: Unsaved[] = [];
  const changed: Record<string, readonly ChangedValue[]> = {};
  const edited = new EditedPackage(file.parts);
  for (const sheet of file.sheets) {
    const changes = changesOf({ file, sheet, calculated, unsaved });
    if (changes.values.size + changes.spillsTo.size === 0) continue;
    edited.replace(sheet.part, splicedSheet(file.parts.text(sheet.part), sheet.root, changes));
    changed[sheet.name] = changes.changed;
  }
  return { bytes: edited.bytes(), changed, unsaved };
};
