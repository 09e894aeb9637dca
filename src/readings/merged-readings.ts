import { exact } from "../solver/length/exact";
import { lengthIn, type Unit } from "../solver/length/length";
import { parseLength } from "../solver/length/parse-length";
import { tapeText } from "../solver/length/tape-text";
import { isProblem } from "../solver/problem";
import { words } from "../solver/words";
import type { ReadingSet, ReadStep } from "./reading-set";
import { readingText } from "./readings-text";
import { PART_NAMES, type Part, PARTS } from "./text-form";
import type { Unread } from "./text-lines";

/** A cell of a table of readings in a sheet. */
export interface SheetCell {
  readonly value: number | string | boolean | null;
  /** Whether the value is worked out rather than typed. */
  readonly isFormula: boolean;
}

/** A row of a table of readings in a sheet. */
export interface SheetRow {
  /** As it stands under the heading of the steps. */
  readonly step: number | string | null;
  /** By heading; none for a heading that the table does not have. */
  readonly cells: Readonly<Record<string, SheetCell>>;
}

/** What a Fit sheet has, row by row; a part is missing where the sheet has no such table. */
export interface SheetReadings {
  readonly name: string;
  readonly unit: Unit | undefined;
  readonly parts: Readonly<Partial<Record<Part, readonly SheetRow[]>>>;
}

/** What becomes of one reading: only what is new or differs is written. */
export interface MergedReading {
  readonly heading: string;
  /** The heading in words. */
  readonly name: string;
  readonly becomes: "same" | "new" | "differs" | "stays";
  readonly read: number;
  /** As the tape shows it. */
  readonly now: string;
  /** What the sheet has; empty where it has nothing. */
  readonly was: string;
  /** In words: by how much the reading differs, or why the sheet stays as it is. */
  readonly says: string;
}

export interface MergedStep {
  readonly part: Part;
  readonly step: number;
  /** Counted from 0 within the table; undefined where the step has no row and there is no room for one. */
  readonly row: number | undefined;
  /** Whether the step is written into a row that was free. */
  readonly isAppended: boolean;
  readonly kept: boolean;
  readonly readings: readonly MergedReading[];
}

/** Finer than any tape; a number typed in a sheet may have more. */
const DECIMALS = 4;
const FINEST_TAPE = 64;
const UNIT_WORDS: Readonly<Record<Unit, string>> = { in: "inches", mm: "millimetres" };
const PIECES: Readonly<Record<Part, string>> = { treads: "tread", risers: "riser" };

/** A piece by its name: tread 4. */
export const pieceName = ({ part, step }: Pick<MergedStep, "part" | "step">): string => `${PIECES[part]} ${step}`;

const sizeText = (value: number, unit: Unit): string => {
  const size = exact(value);
  return unit === "in" && size.times(FINEST_TAPE).isInteger()
    ? tapeText(size, { denominator: FINEST_TAPE, feet: false, strong: false }).replace(/"$/, "")
    : size.toDecimalPlaces(DECIMALS).toFixed();
};

/** A typed cell as a length; undefined where it is none. */
const lengthOfCell = (value: SheetCell["value"], unit: Unit): number | undefined => {
  if (typeof value === "number") return value;
  if (typeof value !== "string") return undefined;
  const length = parseLength(value, unit);
  return isProblem(length) ? undefined : lengthIn(length, unit).toNumber();
};

const isEmpty = ({ value, isFormula }: SheetCell): boolean =>
  !isFormula && (value === null || (typeof value === "string" && value.trim() === ""));

/** By how much a reading is longer or shorter than what stands in the sheet. */
const differenceText = (heading: string, was: number, now: number, unit: Unit): string => {
  const by = exact(now).minus(exact(was));
  const [more, less] = heading === "height" ? ["higher", "lower"] : ["longer", "shorter"];
  return `${sizeText(by.abs().toNumber(), unit)}${unit === "mm" ? " mm" : ""} ${by.isNegative() ? less : more}`;
};

const mergedReading = (heading: string, read: number, cell: SheetCell | undefined, set: ReadingSet): MergedReading => {
  const now = readingText(read, set);
  const one = { heading, name: words(heading), read, now };
  if (cell === undefined) return { ...one, becomes: "stays", was: "", says: "no such column in the sheet" };
  if (isEmpty(cell)) return { ...one, becomes: "new", was: "", says: "new" };
  const had = lengthOfCell(cell.value, set.unit);
  const was = had === undefined ? String(cell.value ?? "") : sizeText(had, set.unit);
  const isSame = had !== undefined && exact(had).eq(exact(read));
  if (isSame) return { ...one, becomes: "same", was, says: "" };
  const difference = had === undefined ? "no length in the sheet" : differenceText(heading, had, read, set.unit);
  return cell.isFormula
    ? { ...one, becomes: "stays", was, says: `${difference}; the sheet has a formula, which stays` }
    : { ...one, becomes: "differs", was, says: difference };
};

const stepOf = ({ step }: SheetRow): number | undefined => {
  const number = typeof step === "string" && step.trim() !== "" ? Number(step) : step;
  return typeof number === "number" ? number : undefined;
};

const isFree = (row: SheetRow): boolean =>
  (row.step === null || row.step === "") && Object.values(row.cells).every(isEmpty);

/** The row of a table that each step of a set goes into, its own or the next free one below all that is used; or why there is none. */
const rowsFor = (steps: readonly ReadStep[], rows: readonly SheetRow[]): ReadonlyMap<number, number | string> => {
  const placed = new Map<number, number | string>();
  let free = rows.reduce((last, row, place) => (isFree(row) ? last : place), -1) + 1;
  for (const { step } of steps) {
    const [own, another] = rows.flatMap((row, place) => (stepOf(row) === step ? [place] : []));
    if (another !== undefined) placed.set(step, "stands in two rows of the sheet; leave one of them out");
    else if (own !== undefined) placed.set(step, own);
    else if (free >= rows.length) placed.set(step, "has no row in the sheet; insert one in the table and write the step in it");
    else {
      placed.set(step, free);
      free += 1;
    }
  }
  return placed;
};

const mergedStep = (
  part: Part, { step, read, kept }: ReadStep, place: number | string | undefined, rows: readonly SheetRow[], set: ReadingSet,
): MergedStep => {
  const headings = PARTS[part].filter((heading) => read[heading] !== undefined);
  const common = { part, step, kept };
  if (typeof place !== "number") {
    const says = place ?? `is of ${part}, and the sheet has no table of them`;
    const readings = headings.map((heading): MergedReading => {
      const value = read[heading] ?? 0;
      return { heading, name: words(heading), becomes: "stays", read: value, now: readingText(value, set), was: "", says };
    });
    return { ...common, row: undefined, isAppended: false, readings };
  }
  const row = rows[place];
  const readings = headings.map((heading) => mergedReading(heading, read[heading] ?? 0, row?.cells[heading], set));
  return { ...common, row: place, isAppended: row === undefined || stepOf(row) !== step, readings };
};

/**
 * What a set of readings would change in a Fit sheet, step by step, or one sentence why it cannot be taken in. Nothing is converted: a
 * reading stays as the tape gave it, so a set in the other unit is refused. Steps that only the sheet has are not named and stay.
 */
export const mergedReadings = (sheet: SheetReadings, set: ReadingSet): readonly MergedStep[] | Unread => {
  if (sheet.unit === undefined)
    return { says: `${sheet.name} does not say its unit; write "Treads as taped, in" or "Treads as taped, mm" above its treads.` };
  if (sheet.unit !== set.unit) {
    const units = `The readings are in ${UNIT_WORDS[set.unit]} and ${sheet.name} is in ${UNIT_WORDS[sheet.unit]}`;
    return { says: `${units}: a reading stays as the tape gave it, so choose a stair in ${UNIT_WORDS[set.unit]} or read again.` };
  }
  return PART_NAMES.flatMap((part) => {
    const rows = sheet.parts[part];
    const places = rows === undefined ? undefined : rowsFor(set[part], rows);
    return set[part].map((step) => mergedStep(part, step, places?.get(step.step), rows ?? [], set));
  });
};

/** Whether a reading is written. */
export const isWritten = ({ becomes }: MergedReading): boolean => becomes === "new" || becomes === "differs";
