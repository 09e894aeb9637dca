import { cellAddress, cellPlace, columnName, columnPlace } from "./cell-address";
import { TOTAL_LOOK, VERDICT_LOOKS } from "./cell-looks";
import type { CellData, ChoiceList, PlainValue, RuleLook, SheetData, StyleName } from "./sheet-data";

/** Number formats of the ready sheets. A typed length is a number shown as on the tape; feet and inches together stay text. */
export const TYPED_LENGTH = "@";
export const SIXTEENTHS = "# ??/16";
export const THIRTYSECONDS = "# ??/32";
export const SIXTYFOURTHS = "# ??/64";
export const MILLIMETRES = "0.0";
export const MONEY = "#,##0.00";
export const SIGNED_MONEY = "+#,##0.00;-#,##0.00;0.00";
export const ANGLE = '0.0"°"';
export const DECIMALS = "0.00";
export const SIGNED = "+0.000;-0.000;0.000";
export const PERCENT = "0.0%";
/** Sizes of one column that holds lengths, counts and angles under one another. */
export const MIXED = "0.0###";

/** A text that starts with = is a formula; null leaves the cell alone, an empty text sets its look and nothing else. */
export type Entry = PlainValue | null;

export interface Block {
  /** Top left cell. */
  readonly at: string;
  readonly rows: readonly (readonly Entry[])[];
  readonly headings?: true;
  /** Columns, counted from 0, that hold numbers: their headings and typed cells stand right. */
  readonly numbers?: readonly number[];
  /** Columns, counted from 0, that are typed by the user. */
  readonly inputs?: readonly number[];
  readonly formats?: Readonly<Record<number, string>>;
  /** Of every cell. */
  readonly style?: StyleName;
  readonly styles?: Readonly<Record<number, StyleName>>;
}

/** Looks of the cells a formula spills into: columns counted from the first, rows from the anchor. */
export interface Spill {
  readonly at: string;
  readonly rows: number;
  readonly formats: Readonly<Record<number, string>>;
  readonly styles?: Readonly<Record<number, StyleName>>;
}

/** The headings a formula spills above its rows: how many columns of them, and which stand over numbers. */
export interface SpilledHeadings {
  readonly at: string;
  readonly headings: number;
  readonly numbers?: readonly number[];
}

/** One answer of the strip: its name, the formula that answers, and what the answer is in. Where there is none yet it shows a dash. */
export interface Answer {
  /** Its columns, first and last. */
  readonly over: readonly [string, string];
  readonly name: string;
  /** Without the equals sign, as are the formulas of `under`. */
  readonly value: string;
  /** The cell the answer stands or falls by: where it is in error, or asks for something to be typed, the strip says "see" it. */
  readonly from?: string;
  readonly format?: string;
  /** What stands below: a text, or a formula after an equals sign. */
  readonly under?: string;
  /** Words take a smaller size than figures. */
  readonly isText?: true;
}

export interface Page {
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly answers: readonly Answer[];
  readonly blocks: readonly Block[];
  readonly spills?: readonly (Spill | SpilledHeadings)[];
  readonly widths: Readonly<Record<string, number>>;
  readonly heights?: Readonly<Record<string, number>>;
  readonly merged?: readonly string[];
  readonly hidesGridLines?: true;
  /** Cells of verdicts beside the strip's. */
  readonly verdicts?: readonly string[];
  readonly lists?: readonly ChoiceList[];
  /** Where a row that begins with "total" stands out, wherever the spill ends. */
  readonly totals?: readonly string[];
}

const addressAt = (at: string, down: number, right: number): string => {
  const { row, column } = cellPlace(at);
  return cellAddress({ row: row + down, column: column + right });
};

const isFormula = (entry: Entry | undefined): entry is string => typeof entry === "string" && entry.startsWith("=");

const held = (entry: Entry | undefined): CellData => {
  if (entry === undefined || entry === null || entry === "") return {};
  return isFormula(entry) ? { formula: entry } : { value: entry };
};

const styleOf = (block: Block, down: number, right: number, entry: Entry): StyleName | undefined => {
  if (block.style !== undefined) return block.style;
  const isNumber = block.numbers?.includes(right) === true;
  if (block.headings === true && down === 0) return isNumber ? "headingRight" : "heading";
  if (block.inputs?.includes(right) === true && !isFormula(entry)) return isNumber ? "input" : "inputText";
  return block.styles?.[right] ?? (isNumber ? "right" : undefined);
};

const blockCells = (block: Block): [string, CellData][] =>
  block.rows.flatMap((row, down) =>
    row.flatMap((entry, right): [string, CellData][] => {
      if (entry === null) return [];
      const style = styleOf(block, down, right, entry);
      const format = block.headings === true && down === 0 ? undefined : block.formats?.[right];
      const looks = { ...(format === undefined ? {} : { format }), ...(style === undefined ? {} : { style }) };
      return [[addressAt(block.at, down, right), { ...held(entry), ...looks }]];
    }),
  );

const formatCells = ({ at, rows, formats, styles = {} }: Spill): [string, CellData][] =>
  Array.from({ length: rows }, (_, down) => down).flatMap((down) =>
    [...new Set([...Object.keys(formats), ...Object.keys(styles)].map(Number))].map((right): [string, CellData] => {
      const [format, style] = [formats[right], styles[right]];
      return [addressAt(at, down, right), { ...(format === undefined ? {} : { format }), ...(style === undefined ? {} : { style }) }];
    }),
  );

const spillCells = (spill: Spill | SpilledHeadings): [string, CellData][] =>
  "headings" in spill
    ? Array.from({ length: spill.headings }, (_, right): [string, CellData] => [
        addressAt(spill.at, 0, right),
        { style: spill.numbers?.includes(right) === true ? "headingRight" : "heading" },
      ])
    : formatCells(spill);

/** Rows of the strip; what a sheet is filled with begins at row 7. */
const [NAMES, ANSWERS, UNITS, GAP] = [3, 4, 5, 6];
/** In pixels. */
const HEIGHTS = { 1: 30, 2: 34, [NAMES]: 18, [ANSWERS]: 30, [UNITS]: 20, [GAP]: 4 };

const columnsOver = ([first, last]: readonly [string, string]): readonly string[] =>
  Array.from({ length: columnPlace(last) - columnPlace(first) + 1 }, (_, right) => columnName(columnPlace(first) + right));

/** Lines of a table that cost something; quantities to two decimals. */
export const costing = (lines: string, cost: number): string =>
  `LET(b,${lines},f,FILTER(b,CHOOSECOLS(b,${cost})<>0),HSTACK(CHOOSECOLS(f,1),ROUND(CHOOSECOLS(f,2),2),CHOOSECOLS(f,3,4,5)))`;

/** What asks for something to be typed begins so; whatever reads it passes it on instead of working with it. */
export const ASKS = "– type";
/** The dash of a request and the space after it, which the strip leaves out. */
const BEFORE_REQUEST = 2;
/** Of a column whose width nobody has set, in pixels. */
const USUAL_WIDTH = 88;

/** And so where it names the cell. */
export const ASKS_IN = `${ASKS} in `;

/** Asks for what belongs in a cell, named with its sheet where another sheet passes it on: short, for it stands in narrow columns. */
export const asksFor = (cell: string): string => `"${ASKS_IN}${cell}"`;

/** Whether a cell has no answer: it is in error, or asks for something to be typed. */
export const lacks = (cell: string): string => `IFERROR(LEFT(${cell},${ASKS.length})="${ASKS}",TRUE)`;

/** The call, or what the cell it rests on says where that has no answer. */
export const passing = (cell: string, call: string): string => `IF(${lacks(cell)},${cell},${call})`;

/** One call while nothing is typed in a cell's table yet, another once there is an answer; an error stays one. */
export const whileAsking = (cell: string, asks: string, answers: string): string =>
  `IF(ISERROR(${cell}),${cell},IF(LEFT(${cell},${ASKS.length})="${ASKS}",${asks},${answers}))`;

/** The call, or a request to type what it works with while there is nothing of it; `cell` is where to begin. */
export const asking = (cells: string, cell: string, call: string): string => `IF(COUNTA(${cells})=0,${asksFor(cell)},${call})`;

/** Pixels a letter of the line under an answer takes up, and those that stay free beside it. */
const LETTER = 6;
const FREE = 8;

/** Where there is no answer: the request itself where it has room in so many pixels, otherwise the cell to look at. */
const missing = (from: string, width: number): string => {
  const see = `"see ${from.replace(/'/g, "")}"`;
  const letters = Math.trunc((width - FREE) / LETTER);
  return `IFERROR(IF(LEN(${from})<=${letters + BEFORE_REQUEST},MID(${from},${BEFORE_REQUEST + 1},${letters}),${see}),${see})`;
};

const answerCells = (answer: Answer, widths: Page["widths"]): [string, CellData][] => {
  const { over, name, value, from, format, under = "", isText } = answer;
  const columns = columnsOver(over);
  const width = columns.reduce((sum, column) => sum + (widths[column] ?? USUAL_WIDTH), 0);
  const [first = ""] = columns;
  const answers = from === undefined ? `=IFERROR(${value},"–")` : `=IF(${lacks(from)},"–",IFERROR(${value},"–"))`;
  const said = isFormula(under) ? `IFERROR(${under.slice(1)},"")` : `"${under}"`;
  const plain = isFormula(under) ? `=${said}` : under;
  const unit = from === undefined ? plain : `=IF(${lacks(from)},${missing(from, width)},${said})`;
  const strip: [string, CellData][] = columns.flatMap((column): [string, CellData][] => [
    [`${column}${NAMES}`, { style: "name" }],
    [`${column}${ANSWERS}`, { style: isText === true ? "answerText" : "answer" }],
    [`${column}${UNITS}`, { style: "answerUnit" }],
  ]);
  const shown = format === undefined ? {} : { format };
  return [
    ...strip,
    [`${first}${NAMES}`, { value: name, style: "name" }],
    [`${first}${ANSWERS}`, { formula: answers, ...shown, style: isText === true ? "answerText" : "answer" }],
    [`${first}${UNITS}`, { ...held(unit), style: "answerUnit" }],
  ];
};

const mergedAnswers = (answers: readonly Answer[]): readonly string[] =>
  answers.flatMap(({ over: [first, last] }) =>
    first === last ? [] : [NAMES, ANSWERS, UNITS].map((row) => `${first}${row}:${last}${row}`),
  );

const verdictRules = (cells: string): readonly RuleLook[] => {
  const [first = ""] = cells.split(":");
  return VERDICT_LOOKS.map(({ mark, look }) => ({ cells, when: `=LEFT(${first},1)="${mark}"`, look }));
};

const totalRule = (cells: string): RuleLook => {
  const [first = ""] = cells.split(":");
  return { cells, when: `=$${first}="total"`, look: TOTAL_LOOK };
};

/**
 * A ready sheet: its title, the line that says what to type and what comes out, the strip of its answers in rows 3 to 5, its blocks, and
 * looks for what spills. Title, line and strip stay in view.
 */
export const page = (given: Page): SheetData => {
  const { name, title, says, answers, blocks, spills = [], widths, heights = {}, merged = [], verdicts = [], lists, totals = [] } = given;
  const last = answers[answers.length - 1]?.over[1] ?? "A";
  const cells = new Map<string, CellData>();
  for (const column of columnsOver(["A", last]))
    for (const row of [NAMES, ANSWERS, UNITS]) cells.set(`${column}${row}`, { style: row === UNITS ? "answerUnit" : "strip" });
  cells.set("A1", { ...held(title), style: "title" });
  cells.set("A2", { value: says, style: "says" });
  const strip = answers.flatMap((one) => answerCells(one, widths));
  for (const [address, cell] of [...strip, ...spills.flatMap(spillCells), ...blocks.flatMap(blockCells)])
    cells.set(address, { ...cells.get(address), ...cell });
  return {
    name,
    cells: Object.fromEntries(cells),
    columnWidths: widths,
    frozenRows: GAP,
    rowHeights: { ...HEIGHTS, ...heights },
    merged: [`A1:${last}1`, `A2:${last}2`, ...mergedAnswers(answers), ...merged],
    rules: [...[`A${ANSWERS}:${last}${ANSWERS}`, ...verdicts].flatMap(verdictRules), ...totals.map(totalRule)],
    ...(lists === undefined ? {} : { lists }),
    ...(given.hidesGridLines === undefined ? {} : { hidesGridLines: given.hidesGridLines }),
  };
};
