import { NAMESPACE } from "../functions/formula";
import type { Block, CellHost, MendingHost, Place, PutBlock, SheetUse } from "./host";
import { messageOf } from "./message-of";
import { placeText } from "./place-text";

/** Cells read at a time; the limit of a call is five million cells: resource limits and performance optimization for Office Add-ins. */
const CELLS_A_READ = 50_000;
/** Cells written at a time, so that a large workbook is not kept busy by one call. */
const CELLS_A_WRITE = 100;
/** Cells named in the report; the rest are counted. */
const NAMED = 5;

const UNBOUND = "#NAME?";
const OURS = new RegExp(`\\b${NAMESPACE}\\.[A-Z]`, "i");

interface Unbound {
  readonly place: Place;
  readonly formula: string;
}

const strips = (used: Block): Block[] => {
  const height = Math.max(1, Math.floor(CELLS_A_READ / used.columns));
  return Array.from({ length: Math.ceil(used.rows / height) }, (_, strip) => ({
    ...used, row: used.row + strip * height, rows: Math.min(height, used.rows - strip * height),
  }));
};

const unboundIn = async ({ used }: SheetUse, cells: CellHost): Promise<Unbound[]> => {
  const found: Unbound[] = [];
  for (const strip of used === undefined ? [] : strips(used)) {
    const [held = []] = await cells.read([strip]);
    for (const [down, row] of held.entries()) {
      for (const [right, { formula, value }] of row.entries()) {
        const isUnbound = typeof value === "object" && value !== null && value.error === UNBOUND;
        if (isUnbound && formula !== undefined && OURS.test(formula))
          found.push({ place: { sheet: strip.sheet, row: strip.row + down, column: strip.column + right }, formula });
      }
    }
  }
  return found;
};

const put = ({ place, formula }: Unbound): PutBlock => ({ at: place, cells: [[{ formula }]] });

interface Refused {
  readonly place: Place;
  readonly says: string;
}

/**
 * Writes each formula to its own cell, a batch at a time; where a batch is refused, cell by cell, so that one refusal does not keep the
 * others.
 */
const rewritten = async (unbound: readonly Unbound[], cells: CellHost): Promise<Refused[]> => {
  const refused: Refused[] = [];
  for (let first = 0; first < unbound.length; first += CELLS_A_WRITE) {
    const batch = unbound.slice(first, first + CELLS_A_WRITE);
    try {
      await cells.write(batch.map(put));
    } catch {
      for (const one of batch) {
        try {
          await cells.write([put(one)]);
        } catch (error) {
          refused.push({ place: one.place, says: messageOf(error) });
        }
      }
    }
  }
  return refused;
};

const stillUnbound = async (unbound: readonly Unbound[], cells: CellHost): Promise<Place[]> => {
  const held = await cells.read(unbound.map(({ place }) => ({ ...place, rows: 1, columns: 1 })));
  return unbound.flatMap(({ place }, index) => {
    const value = held[index]?.[0]?.[0]?.value;
    return typeof value === "object" && value !== null && value.error === UNBOUND ? [place] : [];
  });
};

const named = (places: readonly Place[]): string =>
  `${places.slice(0, NAMED).map(placeText).join(", ")}${places.length > NAMED ? ` and ${places.length - NAMED} more` : ""}`;

const cellsText = (count: number): string => (count === 1 ? "1 cell" : `${count} cells`);

/**
 * Writes each of our formulas that shows #NAME? to its own cell, which binds it to the functions again, and works everything out once more.
 * Protected sheets are left and named. Answers what came of it, a sentence a line.
 */
export const mended = async (cells: CellHost, mending: MendingHost): Promise<readonly string[]> => {
  const says: string[] = [];
  const open: Unbound[] = [];
  const locked: string[] = [];
  for (const use of await mending.uses()) {
    const unbound = await unboundIn(use, cells);
    if (unbound.length === 0) continue;
    if (use.isProtected) locked.push(`${use.name} (${cellsText(unbound.length)})`);
    else open.push(...unbound);
  }
  if (open.length === 0 && locked.length === 0) says.push(`No cell with a function of ${NAMESPACE} shows ${UNBOUND}.`);
  if (open.length > 0) {
    const refused = await rewritten(open, cells);
    await mending.recalculate();
    const still = await stillUnbound(open, cells);
    const mendedCount = open.length - still.length;
    says.push(
      `${cellsText(mendedCount)} that showed ${UNBOUND} ${mendedCount === 1 ? "was" : "were"} mended by writing the formula to ` +
        `its own cell.`,
    );
    for (const { place, says: why } of refused.slice(0, NAMED)) says.push(`${placeText(place)} was refused: ${why}`);
    if (still.length > 0)
      says.push(
        `Still ${UNBOUND}: ${named(still)}. A name in the formula is unknown here: look for a misspelt function, or one that ` +
          `this spreadsheet is too old for.`,
      );
  }
  if (locked.length > 0)
    says.push(`Protected and left as they are: ${locked.join(", ")}. Unprotect them (Review, Unprotect Sheet) and mend again.`);
  return says;
};
