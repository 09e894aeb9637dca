import type { Declaration } from "../functions/declare";
import { blockText, placeText } from "./place-text";
import type { Block, CellHost, HeldCell, InsertedBlock, Place, PutBlock, PutCell } from "./host";
import { type LaidOut, laidOut } from "./laid-out";

/** Asks the user whether to go on. */
export type Ask = (text: string, yes: string, no: string) => Promise<boolean>;

/** An insert as it can be taken back: what was there before, and what the sheet made of what was put there. */
export interface Insertion {
  readonly id: string;
  readonly block: Block;
  readonly before: PutBlock;
  /** Contents of the cells that were written, as they stood when that was done; a change since then is the user's. */
  readonly after: readonly (readonly (string | undefined)[])[];
  readonly takeBack: InsertedBlock["takeBack"];
}

export interface Done<Left> {
  /** What came of it, in words. */
  readonly says: string;
  readonly left?: Left;
}

/** The furthest row and column of a sheet, counted from 1: Excel specifications and limits, worksheet size. */
const LAST_ROW = 1_048_576;
const LAST_COLUMN = 16_384;

const isEmpty = ({ formula, value }: HeldCell): boolean => formula === undefined && (value === null || value === "");

const contents = ({ formula, value }: HeldCell): PutCell => {
  if (formula !== undefined) return { formula };
  // An error that was typed has no formula, and put back as a value it would be text.
  return typeof value === "object" && value !== null ? { formula: `=${value.error}` } : { value };
};

const hasContents = (cell: PutCell | undefined): boolean =>
  cell?.formula !== undefined || (cell?.value !== undefined && cell.value !== null);

const contentText = ({ formula, value }: HeldCell): string => formula ?? JSON.stringify(value);

const only = (blocks: readonly (readonly (readonly HeldCell[])[])[]): readonly (readonly HeldCell[])[] => blocks[0] ?? [];

/** Why a block cannot stand where it would, whatever stands there now. */
const lacksPlace = async (id: string, block: Block, host: CellHost): Promise<string | undefined> => {
  if (block.row + block.rows > LAST_ROW || block.column + block.columns > LAST_COLUMN) {
    return (
      `${id} needs ${block.rows} rows and ${block.columns} columns from ${placeText(block)} on, more than the sheet has: select a cell ` +
      `further up or to the left.`
    );
  }
  return (await host.touchesSpill(block))
    ? `${blockText(block)} reaches into a table that a formula spills, which would then not fit: select a cell with ` +
        `${block.rows} free rows and ${block.columns} free columns.`
    : undefined;
};

type Sizes = Pick<LaidOut, "widths" | "heights">;

/** The sizes that are wanted where they are larger than what is there: columns and rows that are large enough stay as they are. */
const grown = ({ widths, heights }: Sizes, there: Sizes): Pick<PutBlock, "widths" | "heights"> => {
  const larger = (wanted: number | undefined, there: number | undefined): number | undefined =>
    wanted !== undefined && there !== undefined && wanted > there ? wanted : undefined;
  return {
    widths: widths.map((width, column) => larger(width, there.widths[column])),
    heights: heights.map((height, row) => larger(height, there.heights[row])),
  };
};

/** What there is of the size, and of the look, of what is to be written. */
const heldBefore = async (
  { at, cells, widths = [], heights = [] }: PutBlock, held: readonly (readonly HeldCell[])[], there: Sizes, host: CellHost,
): Promise<PutBlock> => {
  const place = (down: number, right: number): Place => ({ ...at, row: at.row + down, column: at.column + right });
  const wrapping = cells.flatMap((row, down) => row.flatMap((cell, right) => (cell?.wraps === undefined ? [] : [place(down, right)])));
  const wraps = await host.wraps(wrapping);
  const wrapOf = new Map(wrapping.map((one, index) => [placeText(one), wraps[index] ?? false]));
  return {
    at,
    widths: widths.map((width, column) => (width === undefined ? undefined : there.widths[column])),
    heights: heights.map((height, row) => (height === undefined ? undefined : there.heights[row])),
    cells: cells.map((row, down) =>
      row.map((cell, right) => {
        const before = held[down]?.[right];
        if (cell === undefined || before === undefined) return undefined;
        const wrap = wrapOf.get(placeText(place(down, right)));
        return { ...contents(before), format: before.format, ...(wrap === undefined ? {} : { wraps: wrap }) };
      }),
    ),
  };
};

/** Writes the block, by the host's own way of inserting where it has one. */
const written = async (whole: PutBlock, host: CellHost): Promise<InsertedBlock> => {
  if (host.insert !== undefined) return host.insert(whole);
  await host.write([whole]);
  return { takeBack: (before) => host.write([before]) };
};

/** Puts a call with its arguments laid out at the selected cell, after asking where something stands. */
export const inserted = async (declaration: Declaration, host: CellHost, ask: Ask): Promise<Done<Insertion>> => {
  const at = await host.selected();
  if (at === undefined) return { says: "No cell is selected: select an empty cell of a sheet, then insert again." };
  const { cells, formula, ...needed } = laidOut(declaration, at);
  const block: Block = { ...at, rows: cells.length, columns: Math.max(...cells.map((row) => row.length)) };
  const lacking = await lacksPlace(declaration.id, block, host);
  if (lacking !== undefined) return { says: lacking };
  const held = only(await host.read([block]));
  const full = cells.flatMap((row, down) =>
    row.flatMap((cell, right) => {
      const there = held[down]?.[right];
      return cell === undefined || there === undefined || isEmpty(there)
        ? []
        : [placeText({ ...at, row: at.row + down, column: at.column + right })];
    }),
  );
  if (full.length > 0) {
    const [first] = full;
    const which =
      full.length === 1 ? `${first ?? ""} is not empty` : `${full.length} cells of ${blockText(block)} are not empty, ${first ?? ""} first`;
    if (!(await ask(`${declaration.id} takes ${blockText(block)}. ${which}. Replace what stands there?`, "Replace it", "Leave it"))) {
      return { says: `${declaration.id} was not inserted: what stands at ${first ?? ""} was left.` };
    }
  }
  // A cell that only spills is emptied where the user agreed, so that nothing blocks it.
  const put = cells.map((row) => row.map((cell) => (cell === undefined || hasContents(cell) ? cell : { ...cell, value: null })));
  const there: Sizes = { widths: await host.widths(block), heights: await host.heights(block) };
  const whole: PutBlock = { at, cells: put, ...grown(needed, there) };
  const before = await heldBefore(whole, held, there, host);
  const { takeBack, refused } = await written(whole, host);
  const now = only(await host.read([block]));
  const result = now[formula.row - at.row]?.[formula.column - at.column]?.value;
  const isBlocked = typeof result === "object" && result !== null && result.error === "#SPILL!";
  return {
    says: isBlocked
      ? `${declaration.id} stands at ${placeText({ ...at, ...formula })}, but its result does not fit there (#SPILL!): undo the ` +
        `insert, and select a cell away from merged cells and tables.`
      : `${declaration.id} inserted at ${blockText(block)}: its arguments, and the formula in ${placeText({ ...at, ...formula })}.` +
        (refused === undefined ? "" : ` Fractions there are not shown in lowest terms: ${refused}`),
    left: {
      id: declaration.id,
      block,
      before,
      takeBack,
      after: now.map((row, down) => row.map((cell, right) => (hasContents(cells[down]?.[right]) ? contentText(cell) : undefined))),
    },
  };
};

/**
 * Takes an insert back: what was there before is there again, its number formats too. Asks where the user has changed what was inserted.
 */
export const takenBack = async (insertion: Insertion, host: CellHost, ask: Ask): Promise<Done<Insertion>> => {
  const { id, block, before, after } = insertion;
  const now = only(await host.read([block]));
  const changed = after.flatMap((row, down) =>
    row.flatMap((content, right) => {
      const cell = now[down]?.[right];
      return content === undefined || cell === undefined || contentText(cell) === content
        ? []
        : [placeText({ ...block, row: block.row + down, column: block.column + right })];
    }),
  );
  if (
    changed.length > 0 &&
    !(await ask(
      `${changed.join(", ")} changed since ${id} was inserted. Put back what was there before the insert?`,
      "Put it back",
      "Keep it",
    ))
  ) {
    return { says: `The insert of ${id} stays.`, left: insertion };
  }
  await insertion.takeBack(before);
  return { says: `The insert of ${id} is undone: ${blockText(block)} is as it was.` };
};

