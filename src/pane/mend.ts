import { NAMESPACE } from "../functions/formula";
import { ownNames } from "./formula/own-names";
import type { Block, CellHost, MendingHost, Place, PutBlock, SheetUse } from "./host";
import { messageOf } from "./message-of";
import { placeText } from "./place-text";

/**
 * Cells read at a time: with the longest formulas (8,192 characters: Excel specifications and limits) 500 come to 4 MB of the 5 MB that
 * Excel on the web answers with (Microsoft, Resource limits and performance optimization for Office Add-ins).
 */
const CELLS_A_READ = 500;
/** Cells looked through at a time for errors, of which only the blocks are answered. */
const CELLS_A_LOOK = 20_000;
/** Cells written at a time, so that a large workbook is not kept busy by one call. */
const CELLS_A_WRITE = 100;
/** Cells named in the report; the rest are counted. */
const NAMED = 5;

const UNBOUND = "#NAME?";

/** How somebody watches the mending, and ends it. */
export interface MendWatch {
  readonly isStopped: () => boolean;
  readonly say: (text: string) => void;
}

const UNWATCHED: MendWatch = { isStopped: () => false, say: () => undefined };

interface Unbound {
  readonly place: Place;
  /** As it is to be written. */
  readonly formula: string;
}

interface Refused {
  readonly place: Place;
  readonly says: string;
}

/** Everything that is found out and done on the way. */
interface Mending {
  readonly cells: CellHost;
  readonly host: MendingHost;
  readonly watch: MendWatch;
  readonly refused: Refused[];
}

/** A block in blocks of no more than so many cells. */
const pieces = (block: Block, cells: number): Block[] => {
  const width = Math.min(block.columns, cells);
  const height = Math.max(1, Math.floor(cells / width));
  const found: Block[] = [];
  for (let row = 0; row < block.rows; row += height)
    for (let column = 0; column < block.columns; column += width)
      found.push({
        sheet: block.sheet, row: block.row + row, column: block.column + column,
        rows: Math.min(height, block.rows - row), columns: Math.min(width, block.columns - column),
      });
  return found;
};

/** Blocks together, as many as are read at a time. */
const batches = (blocks: readonly Block[]): Block[][] => {
  const found: Block[][] = [];
  let room = 0;
  for (const block of blocks.flatMap((one) => pieces(one, CELLS_A_READ))) {
    const size = block.rows * block.columns;
    if (size > room) {
      found.push([]);
      room = CELLS_A_READ;
    }
    found[found.length - 1]?.push(block);
    room -= size;
  }
  return found;
};

/** Does one piece after the other until it is stopped; what is refused is noted, and the next one goes on. */
const eachOf = async <Piece>(
  all: readonly Piece[], { watch, refused }: Mending, at: (piece: Piece) => Place, work: (piece: Piece) => Promise<void>,
): Promise<void> => {
  for (const piece of all) {
    if (watch.isStopped()) return;
    try {
      await work(piece);
    } catch (error) {
      refused.push({ place: at(piece), says: messageOf(error) });
    }
  }
};

const firstOf = ([first]: readonly Block[]): Place => first ?? { sheet: "", row: 0, column: 0 };

/** Where errors stand, where the host can tell; all that is in use where it cannot. */
const errorBlocks = async ({ used }: SheetUse, mending: Mending): Promise<Block[]> => {
  const { errors } = mending.host;
  if (used === undefined || errors === undefined) return used === undefined ? [] : [used];
  const found: Block[] = [];
  await eachOf(pieces(used, CELLS_A_LOOK), mending, (piece) => piece, async (piece) => void found.push(...(await errors(piece))));
  return found;
};

const unboundIn = async (use: SheetUse, mending: Mending): Promise<Unbound[]> => {
  const found: Unbound[] = [];
  await eachOf(batches(await errorBlocks(use, mending)), mending, firstOf, async (blocks) => {
    mending.watch.say(`Looking through ${use.name} …`);
    const held = await mending.cells.read(blocks);
    for (const [index, { sheet, row, column }] of blocks.entries()) {
      for (const [down, line] of (held[index] ?? []).entries()) {
        for (const [right, { formula: now, value }] of line.entries()) {
          if (now === undefined || typeof value !== "object" || value === null) continue;
          const { formula, isOurs } = ownNames(now);
          if (isOurs && (value.error === UNBOUND || formula !== now))
            found.push({ place: { sheet, row: row + down, column: column + right }, formula });
        }
      }
    }
  });
  return found;
};

const put = ({ place, formula }: Unbound): PutBlock => ({ at: place, cells: [[{ formula }]] });

/** Writes each formula to its own cell, a batch at a time; where a batch is refused, cell by cell. Answers those written. */
const rewritten = async (unbound: readonly Unbound[], mending: Mending): Promise<Unbound[]> => {
  const { cells, watch } = mending;
  const done: Unbound[] = [];
  for (let first = 0; first < unbound.length && !watch.isStopped(); first += CELLS_A_WRITE) {
    watch.say(`Mending ${first + 1} of ${unbound.length} …`);
    const batch = unbound.slice(first, first + CELLS_A_WRITE);
    try {
      await cells.write(batch.map(put));
      done.push(...batch);
    } catch {
      await eachOf(batch, mending, ({ place }) => place, async (one) => {
        await cells.write([put(one)]);
        done.push(one);
      });
    }
  }
  return done;
};

const stillUnbound = async (written: readonly Unbound[], mending: Mending): Promise<Place[]> => {
  const still: Place[] = [];
  const blocks = batches(written.map(({ place }) => ({ ...place, rows: 1, columns: 1 })));
  await eachOf(blocks, { ...mending, watch: UNWATCHED }, firstOf, async (batch) => {
    const held = await mending.cells.read(batch);
    still.push(...batch.filter((_, index) => {
      const value = held[index]?.[0]?.[0]?.value;
      return typeof value === "object" && value !== null && value.error === UNBOUND;
    }));
  });
  return still;
};

const named = (places: readonly Place[]): string =>
  `${places.slice(0, NAMED).map(placeText).join(", ")}${places.length > NAMED ? ` and ${places.length - NAMED} more` : ""}`;

const cellsText = (count: number): string => (count === 1 ? "1 cell" : `${count} cells`);

/** What was found: where it may be written, and the protected sheets with how much is on each. */
const found = async (mending: Mending): Promise<{ readonly open: readonly Unbound[]; readonly locked: readonly string[] }> => {
  const open: Unbound[] = [];
  const locked: string[] = [];
  for (const use of await mending.host.uses()) {
    if (mending.watch.isStopped()) break;
    const unbound = await unboundIn(use, mending);
    if (unbound.length === 0) continue;
    if (use.isProtected) locked.push(`${use.name} (${cellsText(unbound.length)})`);
    else open.push(...unbound);
  }
  return { open, locked };
};

/**
 * Writes each of our formulas that lost its function to its own cell, under the name that it is typed by, which binds it again, and works
 * everything out once more. Protected sheets are left and named. Answers what came of it, a sentence a line.
 */
export const mended = async (cells: CellHost, host: MendingHost, watch: MendWatch = UNWATCHED): Promise<readonly string[]> => {
  const says: string[] = [];
  const mending: Mending = { cells, host, watch, refused: [] };
  const { open, locked } = await found(mending);
  if (open.length > 0) {
    const written = await rewritten(open, mending);
    if (written.length > 0) await host.recalculate();
    const still = await stillUnbound(written, mending);
    const count = written.length - still.length;
    says.push(`${cellsText(count)} that had lost ${count === 1 ? "its" : "their"} function ${count === 1 ? "was" : "were"} mended by ` +
      `writing the formula to its own cell.`);
    if (still.length > 0)
      says.push(
        `Still ${UNBOUND}: ${named(still)}. A name in the formula is unknown here: look for a misspelt function, or one that ` +
          `this spreadsheet is too old for.`,
      );
  } else if (locked.length === 0 && !watch.isStopped() && mending.refused.length === 0)
    says.push(`No cell with a function of ${NAMESPACE} shows ${UNBOUND}.`);
  for (const { place, says: why } of mending.refused.slice(0, NAMED)) says.push(`${placeText(place)} was refused: ${why}`);
  if (mending.refused.length > NAMED) says.push(`So were ${mending.refused.length - NAMED} more.`);
  if (locked.length > 0)
    says.push(`Protected and left as they are: ${locked.join(", ")}. Unprotect them (Review, Unprotect Sheet) and mend again.`);
  if (watch.isStopped()) says.push("Stopped before the end: the other cells are as they were. Press Mend to go on with them.");
  return says;
};
