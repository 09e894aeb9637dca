import { cellAddress, cellPlace } from "./cell-address";
import type { CellData, PlainValue, SheetData, StyleName } from "./sheet-data";

/** Number formats of the ready sheets. Lengths that are typed are text, so that 1/2 or 7-5/8 never becomes a date. */
export const TYPED_LENGTH = "@";
export const SIXTEENTHS = "# ??/16";
export const MONEY = "#,##0.00";
export const ANGLE = "0.00";
export const DECIMALS = "0.00";
export const THOUSANDTHS = "0.000";
export const PERCENT = "0.0%";
/** Sizes of one column that holds lengths, counts and angles under one another. */
export const MIXED = "0.0###";
export const MILLIMETRES = "0.0";

/** A text that starts with = is a formula; null leaves the cell alone. */
type Entry = PlainValue | null;

export interface Block {
  /** Top left cell. */
  readonly at: string;
  readonly rows: readonly (readonly Entry[])[];
  readonly headings?: true;
  /** The first column names what stands beside it. */
  readonly labels?: true;
  /** Columns, counted from 0, that are typed by the user. */
  readonly inputs?: readonly number[];
  readonly formats?: Readonly<Record<number, string>>;
  readonly style?: StyleName;
}

/** Number formats for the cells a formula spills into: columns counted from the first, rows from the anchor. */
export interface Spill {
  readonly at: string;
  readonly rows: number;
  readonly formats: Readonly<Record<number, string>>;
}

/** The headings a formula spills above its rows: how many columns of them. */
export interface SpilledHeadings {
  readonly at: string;
  readonly headings: number;
}

const addressAt = (at: string, down: number, right: number): string => {
  const { row, column } = cellPlace(at);
  return cellAddress({ row: row + down, column: column + right });
};

const styleOf = (block: Block, down: number, right: number, isFormula: boolean): StyleName | undefined => {
  if (block.style !== undefined) return block.style;
  if (block.headings === true && down === 0) return "heading";
  if (block.inputs?.includes(right) === true && !isFormula) return "input";
  return block.labels === true && right === 0 ? "label" : undefined;
};

const blockCells = (block: Block): [string, CellData][] =>
  block.rows.flatMap((row, down) =>
    row.flatMap((entry, right): [string, CellData][] => {
      if (entry === null) return [];
      const isFormula = typeof entry === "string" && entry.startsWith("=");
      const style = styleOf(block, down, right, isFormula);
      const isHeading = block.headings === true && down === 0;
      // A formula in a cell of text would be taken for text when it is typed again.
      const written = isHeading ? undefined : block.formats?.[right];
      const format = isFormula && written === TYPED_LENGTH ? SIXTEENTHS : written;
      return [
        [
          addressAt(block.at, down, right),
          {
            ...(isFormula ? { formula: entry } : { value: entry }),
            ...(format === undefined ? {} : { format }),
            ...(style === undefined ? {} : { style }),
          },
        ],
      ];
    }),
  );

const spillCells = (spill: Spill | SpilledHeadings): [string, CellData][] =>
  "headings" in spill
    ? Array.from({ length: spill.headings }, (_, right): [string, CellData] => [addressAt(spill.at, 0, right), { style: "heading" }])
    : formatCells(spill);

const formatCells = ({ at, rows, formats }: Spill): [string, CellData][] =>
  Array.from({ length: rows }, (_, down) => down).flatMap((down) =>
    Object.entries(formats).map(([right, format]): [string, CellData] => [addressAt(at, down, Number(right)), { format }]),
  );

/** A ready sheet: its title, the line that says what to type and what comes out, its blocks, and formats for what spills. */
export const sheet = (
  name: string,
  title: string,
  says: string,
  blocks: readonly Block[],
  spills: readonly (Spill | SpilledHeadings)[] = [],
  columnWidths: Readonly<Record<string, number>> = {},
): SheetData => {
  const cells = new Map<string, CellData>([
    ["A1", { value: title, style: "title" }],
    ["A2", { value: says, style: "says" }],
  ]);
  for (const [address, cell] of [...spills.flatMap(spillCells), ...blocks.flatMap(blockCells)])
    cells.set(address, { ...cells.get(address), ...cell });
  return { name, cells: Object.fromEntries(cells), columnWidths, frozenRows: 2 };
};
