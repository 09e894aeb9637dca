/** A cell as it is printed: its text, and how many columns it covers where what is right of it is empty. */
export interface PrintedCell {
  readonly text: string;
  readonly covers: number;
  /** A line of its own: a title, what the sheet is for, a caution. */
  readonly isLine: boolean;
  readonly isHeading: boolean;
}

/** The cells of a sheet with something to print, by row and by column. */
export type PrintedCells = ReadonlyMap<number, ReadonlyMap<number, PrintedCell>>;

/** What stands together on a sheet: a line, a table, or such parts under or beside one another. */
export type Region =
  | { readonly kind: "line"; readonly row: number; readonly column: number }
  | { readonly kind: "table"; readonly rows: readonly number[]; readonly columns: readonly number[]; readonly headings: number }
  | { readonly kind: "under" | "beside"; readonly parts: readonly Region[] };

interface Columns {
  readonly from: number;
  readonly to: number;
}

type Row = readonly (readonly [column: number, cell: PrintedCell])[];

const within = (cells: PrintedCells, row: number, { from, to }: Columns): Row =>
  [...(cells.get(row) ?? [])].filter(([column]) => column >= from && column <= to).sort(([one], [other]) => one - other);

/** Numbers that follow one another, together. */
const runs = (numbers: readonly number[]): readonly (readonly number[])[] => {
  const found: number[][] = [];
  for (const number of numbers) {
    const last = found.at(-1);
    if (last !== undefined && last.at(-1) === number - 1) last.push(number);
    else found.push([number]);
  }
  return found;
};

const isLine = (row: Row): boolean => row.length === 1 && row[0]?.[1].isLine === true;

/** Rows that follow one another, a line for itself. */
const bands = (cells: PrintedCells, rows: readonly number[], columns: Columns): readonly (readonly number[])[] => {
  const filled = rows.filter((row) => within(cells, row, columns).length > 0);
  return runs(filled).flatMap((run) => {
    const parts: number[][] = [];
    let open = false;
    for (const row of run) {
      if (isLine(within(cells, row, columns))) {
        parts.push([row]);
        open = false;
      } else if (open) parts.at(-1)?.push(row);
      else {
        parts.push([row]);
        open = true;
      }
    }
    return parts;
  });
};

const covered = (cells: PrintedCells, rows: readonly number[], columns: Columns): readonly number[] => {
  const found = new Set<number>();
  for (const row of rows) {
    for (const [column, { covers }] of within(cells, row, columns))
      for (let step = 0; step < covers && column + step <= columns.to; step += 1) found.add(column + step);
  }
  return [...found].sort((one, other) => one - other);
};

const headingRows = (cells: PrintedCells, rows: readonly number[], columns: Columns): number => {
  const isHeading = (row: number): boolean => within(cells, row, columns).some(([, cell]) => cell.isHeading);
  let count = 0;
  // A label right over the headings goes with them.
  const [first = -1, second = -1] = rows;
  if (rows.length > 2 && !isHeading(first) && isHeading(second) && within(cells, first, columns).length === 1) count = 1;
  while (count < rows.length && isHeading(rows[count] ?? -1)) count += 1;
  return count === rows.length ? 0 : count;
};

/**
 * A sheet as parts: what is parted by an empty row stands under one another, what is parted by an empty column beside one another. So a
 * table keeps its headings over its rows when it goes on to another page.
 */
export const printedRegions = (cells: PrintedCells, rows: readonly number[], columns: Columns): Region | undefined => {
  const found = bands(cells, rows, columns);
  if (found.length === 0) return undefined;
  if (found.length > 1) {
    const parts = found.flatMap((band) => printedRegions(cells, band, columns) ?? []);
    return { kind: "under", parts };
  }
  const [band = []] = found;
  const [first] = within(cells, band[0] ?? -1, columns);
  if (band.length === 1 && first !== undefined && isLine(within(cells, band[0] ?? -1, columns)))
    return { kind: "line", row: band[0] ?? 0, column: first[0] };
  const groups = runs(covered(cells, band, columns));
  if (groups.length > 1) {
    const parts = groups.flatMap((group) => printedRegions(cells, band, { from: group[0] ?? 0, to: group.at(-1) ?? 0 }) ?? []);
    return { kind: "beside", parts };
  }
  const filled = [...new Set(band.flatMap((row) => within(cells, row, columns).map(([column]) => column)))];
  filled.sort((one, other) => one - other);
  return { kind: "table", rows: band, columns: filled, headings: headingRows(cells, band, columns) };
};
