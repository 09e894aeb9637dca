import { type BetterPlan, type LongerPlans, longerPlans } from "../long-search/longer-plans";
import { isFileFault } from "../workbook-file/file-fault";
import type { NotShown } from "../workbook-file/not-shown";
import { type ReadWorkbook, readWorkbookFile } from "../workbook-file/read-workbook-file";
import { type SavedOver, savedOver } from "../workbook-file/saved-over";
import { isStoredError, type StoredValue } from "../workbook-file/sheet/cell-value";
import { fileBlock } from "../workbook-file/sheet/file-block";
import type { Refusing } from "../workbook-file/sheet/read-cells";
import { valuesFile } from "../workbook-file/write-workbook-file";
import { formulaFault } from "../workbook/formula-limits";
import type { HeadlessWorkbook } from "../workbook/headless-workbook";
import type { NodeWorkbook } from "../workbook/node/open-workbook";
import { DATA_VERSION, isSoundSheet, workbookData } from "../workbook/workbook-data";
import { calledIn } from "./calling";
import type { RecalcAsked } from "./command-line";
import { type BlockOfBook, type CellOfBook, dependants, type FormulaOfBook, keyOf, readers } from "./dependants";
import { EXIT } from "./exit-codes";
import { refusal } from "./refusal";
import { type Limit, timeLimit } from "./time-limit";
import { bytesOf, writeAsked } from "./written-file";

/** A formula in error, with the sentence that says why. */
export interface InError extends CellOfBook {
  readonly formula: string;
  readonly error: string;
  readonly says: string;
}

/** A formula that kept the value it had, and why. */
export interface Kept extends CellOfBook {
  readonly formula: string;
  readonly why: string;
}

/** A cell that has another value now. */
export interface Changed extends CellOfBook {
  readonly was: StoredValue | null;
  readonly is: StoredValue | null;
}

/** What came of a recalculation. */
export interface Recalculated {
  readonly file: string;
  readonly formulas: number;
  readonly changed: readonly Changed[];
  readonly inError: readonly InError[];
  readonly kept: readonly Kept[];
  /** What rests on a value that was kept. */
  readonly restsOnKept: readonly CellOfBook[];
  /** What the file has and a copy of values has not. */
  readonly leftOut: readonly NotShown[];
  readonly written: readonly string[];
  /** With the long search: the plans it found that are better than a cell's, and the formulas that come to something else for them. */
  readonly longer?: { readonly plans: readonly BetterPlan[]; readonly formulas: readonly CellOfBook[] };
}

/** Functions that answer by the clock, and those that answer by chance. */
const BY_CLOCK: readonly string[] = ["TODAY", "NOW"];
const BY_CHANCE: readonly string[] = ["RAND", "RANDBETWEEN", "RANDARRAY"];

/** What was found to keep its value once it was worked out, by the cell, and why. */
type Keeping = ReadonlyMap<string, string>;

/** Why a formula is left as it is; undefined for one that is worked out. */
export const refusing = (book: Pick<HeadlessWorkbook, "knows">, isClockSet: boolean, keeping: Keeping): Refusing => (formula, cell) => {
  // First, so that what is read of a formula is no longer and no deeper than one may be.
  const fault = formulaFault(formula);
  if (fault !== undefined) return fault;
  const called = calledIn(formula);
  const unknown = called.find((name) => !book.knows(name));
  if (unknown !== undefined) return `calls ${unknown}, which cannot be worked out here`;
  const chance = called.find((name) => BY_CHANCE.includes(name));
  if (chance !== undefined) return `calls ${chance}, which answers differently each time`;
  const clock = called.find((name) => BY_CLOCK.includes(name));
  if (clock !== undefined && !isClockSet) return `calls ${clock}; say which day with --at`;
  return cell && keeping.get(keyOf(cell));
};

const formulasOf = (book: HeadlessWorkbook, { sheets }: ReadWorkbook): readonly FormulaOfBook[] =>
  sheets.flatMap(({ name, cells }) => Object.entries(cells).flatMap(([address, { formula }]) => {
    if (formula === undefined) return [];
    const block = book.spill(name, address);
    return [{ sheet: name, address, formula, rows: Math.max(block.length, 1), columns: Math.max(block[0]?.length ?? 1, 1) }];
  }));

const errorsAmong = (book: HeadlessWorkbook, formulas: readonly FormulaOfBook[]): readonly InError[] =>
  formulas.flatMap(({ sheet, address, formula }) => {
    const value = book.value(sheet, address);
    if (!isStoredError(value)) return [];
    return [{ sheet, address, formula, error: value.error, says: book.errorMessage(sheet, address) ?? "" }];
  });

/** A workbook worked out, and what is saved of it. */
interface Worked {
  readonly read: ReadWorkbook;
  readonly formulas: readonly FormulaOfBook[];
  readonly inError: readonly InError[];
  readonly saved: SavedOver;
}

const blocksAmong = (formulas: readonly FormulaOfBook[], cells: readonly CellOfBook[]): readonly FormulaOfBook[] => {
  const keys = new Set(cells.map(keyOf));
  return formulas.filter((one) => keys.has(keyOf(one)));
};

/** What a formula rightly comes to where what it reads has changed: a divisor of 0, and what is looked up and is not there. */
const RIGHTLY: readonly string[] = ["#DIV/0!", "#N/A"];

/** Formulas in error for no reason of ours where the file held a value, and that read no cell that is in error with good reason. */
const failing = ({ read, formulas, inError }: Worked): readonly InError[] => {
  const isFailing = ({ sheet, address, error, says }: InError): boolean => {
    const was = read.stored[sheet]?.[address];
    return says === "" && !RIGHTLY.includes(error) && was !== undefined && !isStoredError(was);
  };
  const rightly = blocksAmong(formulas, inError.filter((one) => !isFailing(one)));
  const behind = new Set(dependants(rightly, formulas).map(keyOf));
  return inError.filter((one) => isFailing(one) && !behind.has(keyOf(one)));
};

/** Of cells those that read none of the others, where there are such. */
const firstOf = <Cell extends CellOfBook>(cells: readonly Cell[], formulas: readonly FormulaOfBook[]): readonly Cell[] => {
  const read = readers(blocksAmong(formulas, cells), formulas);
  const first = cells.filter((one) => !read.has(keyOf(one)));
  return first.length === 0 ? cells : first;
};

/** What has to keep its value yet, so that what reads it reads that: where it begins, and in the last round all of it. */
const stillToKeep = (worked: Worked, isLast: boolean): Keeping => {
  const { formulas, saved: { unsaved } } = worked;
  const errors = failing(worked);
  const behind = new Set(dependants(blocksAmong(formulas, unsaved), formulas).map(keyOf));
  const [failed, unfit] = isLast
    ? [errors, unsaved]
    : [firstOf(errors, formulas).filter((one) => !behind.has(keyOf(one))), firstOf(unsaved, formulas)];
  return new Map([
    ...failed.map((one) => [keyOf(one), `comes to ${one.error} here and to a value in the file`] as const),
    ...unfit.map((one) => [keyOf(one), one.why] as const),
  ]);
};

/** How often a workbook is worked out anew with what it keeps. */
const MOST_ROUNDS = 5;

/** Works a workbook out until nothing more has to keep the value it had. */
const workedOut = async (bytes: Uint8Array, asked: RecalcAsked, book: HeadlessWorkbook, limit: Limit): Promise<Worked> => {
  const keeping = new Map<string, string>();
  for (let round = 0; ; round += 1) {
    const read = readWorkbookFile(bytes, { refuses: refusing(book, asked.at !== undefined, keeping), isSound: isSoundSheet });
    const { sheet: only, file } = asked;
    if (only !== undefined && !read.sheets.some(({ name }) => name === only)) {
      throw refusal(`--sheet: ${file} has no sheet "${only}"; it has ${read.sheets.map(({ name }) => name).join(", ")}`);
    }
    limit.check();
    book.load(workbookData({ version: DATA_VERSION, sheets: read.sheets }));
    await limit.within(book.settled());
    const formulas = formulasOf(book, read);
    const worked: Worked = { read, formulas, inError: errorsAmong(book, formulas), saved: savedOver(read.file, book) };
    limit.check();
    const more = round < MOST_ROUNDS ? stillToKeep(worked, round === MOST_ROUNDS - 1) : new Map<string, string>();
    if (more.size === 0) return worked;
    for (const [key, why] of more) keeping.set(key, why);
  }
};

/** What is left of the time for what comes behind a search, as a part of what working the workbook out took, and in seconds besides. */
const SPARE_PART = 2;
const SPARE_SECONDS = 2;

/** What the formulas come to, as text. */
const cameTo = (book: HeadlessWorkbook, formulas: readonly FormulaOfBook[]): ReadonlyMap<string, string> =>
  new Map(formulas.map((one) => [keyOf(one), JSON.stringify(book.spill(one.sheet, one.address))]));

/**
 * Works a workbook out with a longer search for its cutting plans: first as its cells do, which says the jobs there are, and again with
 * what was found for them, as long as that leads to jobs that were not there before.
 */
const workedOutLonger = async (
  bytes: Uint8Array, asked: RecalcAsked, book: NodeWorkbook, limit: Limit, plans: LongerPlans,
): Promise<Worked & Pick<Recalculated, "longer">> => {
  const before = limit.left();
  book.planOutside(plans.plan);
  let worked = await workedOut(bytes, asked, book, limit);
  const spare = SPARE_PART * (before - limit.left()) + SPARE_SECONDS;
  const inACell = cameTo(book, worked.formulas);
  for (let round = 0; round < MOST_ROUNDS && (await plans.search(limit.left() - spare)); round += 1) {
    book.planOutside(plans.plan);
    worked = await workedOut(bytes, asked, book, limit);
  }
  const now = cameTo(book, worked.formulas);
  const formulas = worked.formulas.filter((one) => now.get(keyOf(one)) !== inACell.get(keyOf(one)));
  return { ...worked, longer: { plans: plans.better(), formulas: formulas.map(({ sheet, address }) => ({ sheet, address })) } };
};

/** The formulas that kept their value, and all they take up. */
const keptAmong = (book: HeadlessWorkbook, { read, saved }: Worked): readonly (Kept & BlockOfBook)[] => [
  ...Object.entries(read.keptFormulas).flatMap(([sheet, list]) =>
    list.map(({ cells, ...one }) => {
      const { rows, columns } = fileBlock(cells ?? one.address) ?? { rows: 1, columns: 1 };
      return { sheet, ...one, rows, columns };
    })),
  ...saved.unsaved.map((one) => ({ formula: book.formula(one.sheet, one.address) ?? "", ...one, rows: 1, columns: 1 })),
];

const withoutSize = ({ sheet, address, formula, why }: Kept): Kept => ({ sheet, address, formula, why });

const recalculated = async (asked: RecalcAsked, book: NodeWorkbook, progress: (step: string) => void): Promise<Recalculated> => {
  const { file, sheet: only } = asked;
  const limit = timeLimit(asked.limit);
  progress(`reading ${file}`);
  // The engine has its functions together once it has a workbook.
  book.load({ version: DATA_VERSION, sheets: [{ name: "Sheet1", cells: {} }] });
  await book.settled();
  const before = bytesOf(file);
  progress("working it out");
  const worked: Worked & Pick<Recalculated, "longer"> = asked.isLong
    ? await workedOutLonger(before, asked, book, limit, longerPlans())
    : await workedOut(before, asked, book, limit);
  const { read, formulas, saved, inError, longer } = worked;
  const kept = keptAmong(book, worked);
  const isShown = ({ sheet }: CellOfBook): boolean => only === undefined || sheet === only;
  const changed = Object.entries(saved.changed).flatMap(([sheet, cells]) => cells.map((one) => ({ sheet, ...one })));
  const bytes = asked.isValues ? valuesFile(read.sheets, { calculated: book, look: book.look }) : saved.bytes;
  limit.check();
  const written = writeAsked(asked, before, bytes, changed.length > 0, progress);
  return {
    file, formulas: formulas.length, changed: changed.filter(isShown), inError: inError.filter(isShown),
    kept: kept.filter(isShown).map(withoutSize), restsOnKept: dependants(kept, formulas).filter(isShown),
    leftOut: asked.isValues ? read.notShown : [], written, ...(longer === undefined ? {} : { longer }),
  };
};

/** Works a workbook out anew and writes it where that was asked; answers what came of it. */
export const recalc = async (asked: RecalcAsked, book: NodeWorkbook, progress: (step: string) => void): Promise<Recalculated> => {
  try {
    return await recalculated(asked, book, progress);
  } catch (error) {
    throw isFileFault(error) ? refusal(`${asked.file}: ${error.message}`) : error;
  }
};

/** How the command ends. */
export const exitOf = ({ isCheck }: RecalcAsked, { changed, kept }: Recalculated): number => {
  if (isCheck && changed.length > 0) return EXIT.differs;
  return kept.length > 0 ? EXIT.kept : EXIT.done;
};
