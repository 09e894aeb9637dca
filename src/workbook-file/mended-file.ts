import type { CellBlock } from "../sheets/cell-blocks";
import { EditedBook } from "./edited-book";
import { type KnownWords, mendedFormula } from "./formula/mended-formula";
import { namesInPlace } from "./formula/names-in-place";
import { type SpillFreeing, spillFreeFormula } from "./formula/spill-free-formula";
import { type FileText, fileTexts } from "./mended-texts";
import { type KeptFile, readWorkbookFile } from "./read-workbook-file";
import { boundCells, cellsText, type MendedCell, mendedSplices, spillFreeCells } from "./sheet/mended-cells";
import { isClosed, type Splice } from "./xml-splices";
import { escapedText } from "./xml-text";

export interface MendingOptions {
  /** Whether we have a function, by its name in capitals: STAIR.RISERS. */
  readonly isOurs: (name: string) => boolean;
  /** Whether it is for a spreadsheet that knows no spills. */
  readonly isWithoutSpills?: boolean;
}

/** Where a formula stands: a cell, or a name, the cells of a rule or a list, or a column of a table; a name may be on no sheet. */
interface Place {
  readonly sheet?: string;
  readonly address: string;
}

/** A formula that is another one now, both as the file has them. */
export interface Mended extends Place {
  readonly was: string;
  readonly is: string;
  /** What its cell has become, where it was something else: an array of as many cells as it comes to, or of a set block. */
  readonly becomes?: "dynamic array" | "array";
  /** The cells of that. */
  readonly cells?: string;
}

/** A formula that is not right, or not for a spreadsheet without spills, and stays so. */
export interface NotMended extends Place {
  readonly formula: string;
  readonly why: string;
}

export interface MendedFile {
  readonly bytes: Uint8Array;
  /** How many formulas the file has. */
  readonly formulas: number;
  readonly mended: readonly Mended[];
  readonly notMended: readonly NotMended[];
}

const placeOf = (sheet: string | undefined, address: string): Place => (sheet === undefined ? { address } : { sheet, address });

const isMended = ({ text, now, kind, becomes }: MendedCell): boolean => now !== text || becomes !== kind;

const mendedCell = (sheet: string, one: MendedCell): Mended => ({
  sheet, address: one.address, was: `=${one.text}`, is: `=${one.now}`,
  ...(one.becomes === one.kind || one.becomes === "plain"
    ? {}
    : { becomes: one.becomes === "dynamic" ? "dynamic array" : "array", cells: cellsText(one) }),
});

const notMended = (place: Place, formula: string, left: readonly string[]): readonly NotMended[] =>
  left.map((why) => ({ ...place, formula: `=${formula}`, why }));

const knownWords = (file: KeptFile, texts: readonly FileText[], isOurs: MendingOptions["isOurs"]): KnownWords => ({
  isOurs,
  defined: new Set(texts.filter(({ part }) => part === file.book).map(({ of }) => of.toLowerCase())),
  hasMacros: file.parts.relations(file.book).some(({ type }) => type === "vbaProject"),
});

/** The cells that arrays take up, by sheet and address. */
const blocksOf = (sheets: readonly (readonly [name: string, cells: readonly MendedCell[]])[]): SpillFreeing["block"] => {
  const blocks = new Map<string, CellBlock>();
  const key = (sheet: string, address: string): string => `${sheet.toLowerCase()}!${address}`;
  for (const [name, cells] of sheets)
    for (const { address, block, becomes } of cells) if (becomes !== "plain") blocks.set(key(name, address), block);
  return (sheet, address) => blocks.get(key(sheet, address));
};

interface MendedText extends FileText {
  readonly now: string;
  readonly left: readonly string[];
}

const textSplice = (before: string, { element, now }: MendedText): Splice =>
  ({ from: element.opened, to: before.lastIndexOf("</", element.to - 1), text: escapedText(now) });

/**
 * A file with its formulas in the form that Excel binds, or in one for a spreadsheet without spills. Values stay as they are, and so does
 * every part, and everything in a sheet, that no formula has changed in. No formula comes or goes, so the order of calculation stays right.
 */
export const mendedFile = (bytes: Uint8Array, { isOurs, isWithoutSpills = false }: MendingOptions): MendedFile => {
  const { file } = readWorkbookFile(bytes, { isBare: true });
  const book = new EditedBook(file);
  const texts = fileTexts(file);
  const known = knownWords(file, texts, isOurs);
  const named = namesInPlace(file.names);
  const mending = { named, mend: (formula: string) => mendedFormula(formula, known) };
  const bound = file.sheets.map((sheet) => [sheet.name, boundCells(sheet, mending)] as const);
  const block = blocksOf(bound);
  const cells = !isWithoutSpills ? bound : bound.map(([name, all]) =>
    [name, spillFreeCells(all, mending, name, block, spillFreeFormula)] as const);
  const others = texts.map((one): MendedText => {
    const { formula, left } = mendedFormula(one.text, known, one.isRule);
    if (!isWithoutSpills) return { ...one, now: formula, left };
    const sheet = one.sheet ?? "";
    const standing = named({ sheet, row: 0, column: 0 });
    const free = spillFreeFormula(formula, { block, standing: undefined, sheet, named: standing, isArray: true });
    return { ...one, now: free.formula, left: [...left, ...free.left] };
  });
  const changed = others.filter(({ text, now }) => now !== text);
  const splices = new Map<string, Splice[]>();
  const add = (part: string, more: readonly Splice[]): void => {
    const all = splices.get(part) ?? [];
    splices.set(part, all);
    for (const one of more) all.push(one);
  };
  for (const one of changed) if (!isClosed(one.element)) add(one.part, [textSplice(file.parts.text(one.part), one)]);
  for (const [at, { part }] of file.sheets.entries())
    add(part, mendedSplices(file.parts.text(part), cells[at]?.[1] ?? [], () => book.dynamic()));
  for (const [part, all] of splices) book.edited.splice(part, all);
  const mended = [
    ...cells.flatMap(([name, all]) => all.filter(isMended).map((one) => mendedCell(name, one))),
    ...changed.map(({ sheet, of, text, now }): Mended => ({ ...placeOf(sheet, of), was: `=${text}`, is: `=${now}` })),
  ];
  return {
    bytes: mended.length === 0 ? bytes : book.bytes(),
    formulas: cells.reduce((count, [, all]) => count + all.length, 0),
    mended,
    notMended: [
      ...cells.flatMap(([name, all]) => all.flatMap((one) => notMended({ sheet: name, address: one.address }, one.text, one.left))),
      ...others.flatMap(({ sheet, of, text, left }) => notMended(placeOf(sheet, of), text, left)),
    ],
  };
};
