import type { Unit } from "../solver/length/length";
import type { Given } from "./cells";
import type { Columns } from "./columns";

/** Rows below which a table is read again sooner than its cells are compared. */
const FEW = 500;
/** Rows of all that is remembered, two of the largest tables. */
const MOST = 45_000;

/** A row of a table, and its place in the cells given. */
export interface PlacedRow {
  readonly row: readonly Given[];
  readonly number: number;
}

interface Remembered {
  readonly columns: Columns;
  readonly key: string;
  readonly rows: readonly unknown[];
}

/** The last read is the last. */
let remembered: readonly Remembered[] = [];

/**
 * The rows of a large table as they are read. Several functions of a workbook read one table, and each calls for it in cells of its own:
 * it is known again by what it holds, where its columns stand and what its bare numbers are in, on which alone the reading depends.
 */
export const rememberedRows = <Row>(
  columns: Columns, places: ReadonlyMap<string, number>, unit: Unit | undefined, data: readonly PlacedRow[], read: () => readonly Row[],
): readonly Row[] => {
  if (data.length < FEW) return read();
  const key = JSON.stringify([unit ?? "", [...places], data]);
  const known = remembered.find((one) => one.columns === columns && one.key === key);
  const found = known ?? { columns, key, rows: read() };
  const kept = [...remembered.filter((one) => one !== known), found];
  let all = kept.reduce((sum, { rows }) => sum + rows.length, 0);
  remembered = kept.filter((one) => {
    const isKept = one === found || all <= MOST;
    if (!isKept) all -= one.rows.length;
    return isKept;
  });
  return found.rows as readonly Row[];
};
