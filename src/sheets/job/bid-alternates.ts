import { ALTERNATES } from "../../functions/bid/alternates";
import { PRICECHANGE } from "../../functions/bid/pricechange";
import { alternatePieces, changes as changesTable } from "../../functions/tables";
import { chosen, headingsOf, spillOf, viewOf } from "../result-looks";
import { type Block, DECIMALS, type Entry, lacks, MONEY, type Page, passing, SIGNED_MONEY } from "../sheet-builder";
import { COSTS_AT, TERMS } from "./bid-places";
import { call } from "./call";
import { CUT } from "./cut-plan";
import { type Filling, lengthFormat, moneyOf } from "./filling";
import { JOB } from "./job";

/** Under the lines of the bid, whose rows may reach this far. */
const TITLE_ROW = 90;
const SHOWN = TITLE_ROW + 1;
/** Says so where the sheet is opened; between the terms and the bid. */
const POINTER = "A17";
/** Rows for alternates, and for the bid as drawn. */
const ROWS = 9;
/** The boards of each, whose words take the width of the lines. */
const BOARDS = SHOWN + ROWS + 2;
const NOTES = BOARDS + ROWS + 2;
const TYPED = NOTES + 2;
const TYPED_ROWS = 6;
const FIRST = TYPED + 2;
const LAST = FIRST + TYPED_ROWS - 1;
const WALK = LAST + 2;
const CHOSEN = `B${WALK + 1}`;
/** Rows of the walk: its ends, the rows of a bid, and what an alternate adds. */
const WALK_ROWS = 18;

/** In full, where other sheets do not look: the pieces, the alternates, the walk. */
const PIECES_READ = "AV8";
const ALTERNATES_AT = "BD8";
const WALK_AT = "BM8";

const rowsOf = (typed: Filling["changes"], columns: number): readonly (readonly Entry[])[] =>
  Array.from({ length: TYPED_ROWS }, (_, row) => Array.from({ length: columns }, (__, column) => typed[row]?.[column] ?? ""));

/** What is cut as drawn, and under it the pieces of alternates; nothing until the cut plan has an answer. */
const piecesRead = (): string => {
  const of = (table: string, heading: string): string => `DROP(CHOOSECOLS(${table},XMATCH("${heading}",TAKE(${table},1))),1)`;
  const headings = headingsOf(alternatePieces, "label", "length", "width", "grade", "quantity", "option").map((one) => `"${one}"`).join();
  const stacked =
    `LET(r,${CUT.risers}#,o,DROP(${CUT.others},1),e,IF(SEQUENCE(ROWS(r)-1),""),VSTACK({${headings}},` +
    `HSTACK(IF(SEQUENCE(ROWS(r)-1),"riser"),${of("r", "length")},${of("r", "width")},e,${of("r", "quantity")},e),` +
    `HSTACK(o,IF(SEQUENCE(ROWS(o)),"")),` +
    `HSTACK(J${FIRST}:L${LAST},H${FIRST}:H${LAST},M${FIRST}:M${LAST},G${FIRST}:G${LAST})))`;
  return `=${CUT.bought.reduceRight((inner, at) => `IF(${lacks(at)},"",${inner})`, stacked)}`;
};

/** A range, or nothing where its first cell has none. */
const unless = (isMissing: string, range: string): string => `IF(${isMissing},"",${range})`;

const inFull = (filling: Filling, bidAt: string): string => {
  const changes = `HSTACK(A${FIRST - 1}:A${LAST},D${FIRST - 1}:E${LAST})`;
  const alternates = call(ALTERNATES, filling.unit, {
    costs: `${COSTS_AT}#`, terms: TERMS.all,
    changes: unless(`COUNTA(A${FIRST}:A${LAST})=0`, changes),
    stair: unless(lacks("Layout!AA7"), "Layout!AA7#"), code: JOB.code,
    pieces: unless(`${PIECES_READ}=""`, `${PIECES_READ}#`), stock: CUT.stock, kerf: CUT.kerf, trim: CUT.trim,
  });
  return `=${passing(bidAt, alternates)}`;
};

/** Columns of the table in full, once it has an answer; nothing before. */
const shown = (...keys: readonly string[]): string => `=IF(${lacks(ALTERNATES_AT)},"",${chosen(ALTERNATES, `${ALTERNATES_AT}#`, ...keys)})`;

/** The verdicts with their marks. */
const verdicts = (): string =>
  `=IF(${lacks(ALTERNATES_AT)},"",LET(v,${chosen(ALTERNATES, `${ALTERNATES_AT}#`, "verdict")},` +
  'IF((v="verdict")+(v="as drawn"),v,IF(LEFT(v,5)="fails","✗ ",IF(LEFT(v,9)="none fail","✓ ","○ "))&v)))';

/** What the notes of the alternates say, each with its alternate. */
const notes = (): string =>
  `=IF(${lacks(ALTERNATES_AT)},"",LET(t,DROP(${chosen(ALTERNATES, `${ALTERNATES_AT}#`, "option", "note")},2),n,CHOOSECOLS(t,2),` +
  'IFERROR(TEXTJOIN("; ",TRUE,IF(n="","",CHOOSECOLS(t,1)&": "&n)),"")))';

const walk = (filling: Filling, bidAt: string): string => {
  const change = call(PRICECHANGE, filling.unit, { before: `${COSTS_AT}#`, after: `${COSTS_AT}#`, terms: TERMS.all, option: CHOSEN });
  return `=IF(${CHOSEN}="","",${passing(bidAt, change)})`;
};

const walked = (...keys: readonly string[]): string => chosen(PRICECHANGE, `${WALK_AT}#`, ...keys);

const part = (at: string, text: string, columns: number): Block => ({
  at, style: "part", rows: [[text, ...Array.from({ length: columns - 1 }, () => "")]],
});

const typedBlocks = (filling: Filling): readonly Block[] => {
  const length = lengthFormat(filling.unit);
  const [changes, pieces] = [rowsOf(filling.changes, 3), rowsOf(filling.ownPieces, 6)];
  const pick = (rows: readonly (readonly Entry[])[], ...columns: readonly number[]): readonly (readonly Entry[])[] =>
    rows.map((row) => columns.map((column) => row[column] ?? ""));
  return [
    part(`A${TYPED}`, "What an alternate changes of the stair", 5),
    { at: `A${FIRST - 1}`, headings: true, inputs: [0], rows: [headingsOf(changesTable, "option"), ...pick(changes, 0)] },
    {
      at: `D${FIRST - 1}`, headings: true, numbers: [1], inputs: [0, 1],
      rows: [headingsOf(changesTable, "label", "value"), ...pick(changes, 1, 2)],
    },
    part(`G${TYPED}`, "Its pieces, in place of those of the same label", 7),
    {
      at: `G${FIRST - 1}`, headings: true, inputs: [0, 1],
      rows: [headingsOf(alternatePieces, "option", "grade"), ...pick(pieces, 0, 1)],
    },
    {
      at: `J${FIRST - 1}`, headings: true, numbers: [1, 2, 3], inputs: [0, 1, 2, 3], formats: { 1: length, 2: length },
      rows: [headingsOf(alternatePieces, "label", "length", "width", "quantity"), ...pick(pieces, 2, 3, 4, 5)],
    },
  ];
};

/** The bid as drawn and its alternates, what is typed of them, and the walk to one of them; `bidAt` is where the bid stands in full. */
export const alternateBlocks = (filling: Filling, bidAt: string): readonly Block[] => [
  { at: POINTER, rows: [[`="Alternates: from row "&ROW(A${TITLE_ROW})`]] },
  part(`A${TITLE_ROW}`, `The bid as drawn and its alternates, ${moneyOf(filling)}; stair and boards as on Layout and Cut plan`, 13),
  { at: `A${SHOWN}`, rows: [[`=${passing(ALTERNATES_AT, chosen(ALTERNATES, `${ALTERNATES_AT}#`, "option", "cost"))}`]] },
  { at: `D${SHOWN}`, rows: [[shown("price", "addOrDeduct", "hours")]] },
  { at: `J${SHOWN}`, rows: [[verdicts()]] },
  { at: `A${BOARDS}`, rows: [[shown("option", "boardsToBuy")]] },
  { at: `A${NOTES}`, style: "caution", rows: [[notes()]] },
  ...typedBlocks(filling),
  part(`A${WALK}`, "What changes the price, with this alternate", 13),
  { at: `A${WALK + 1}`, inputs: [1], rows: [["alternate", filling.besides[0]?.[3] ?? ""]] },
  { at: `A${WALK + 2}`, rows: [[`=IF(${CHOSEN}="","none typed",${passing(WALK_AT, walked("cause", "amount"))})`]] },
  { at: `D${WALK + 2}`, rows: [[`=IF((${CHOSEN}="")+${lacks(WALK_AT)},"",${walked("item", "note")})`]] },
  part("AV7", "Pieces as ALTERNATES reads them", 1),
  { at: PIECES_READ, rows: [[piecesRead()]] },
  part("BD7", "Alternates, in full", 1),
  { at: ALTERNATES_AT, rows: [[inFull(filling, bidAt)]] },
  part("BM7", "What changes the price, in full", 1),
  { at: WALK_AT, rows: [[walk(filling, bidAt)]] },
];

/** How they look, and the cells of their verdicts and notes. */
export const alternateLooks = ({ unit }: Filling): {
  readonly spills: NonNullable<Page["spills"]>; readonly verdicts: string; readonly merged: string; readonly headingRow: number;
} => {
  const signed = { addOrDeduct: SIGNED_MONEY, hours: DECIMALS };
  return {
    verdicts: `J${SHOWN + 1}:J${SHOWN + ROWS}`,
    merged: `A${NOTES}:M${NOTES}`,
    headingRow: SHOWN,
    spills: [
      ...viewOf(ALTERNATES, ["option", "cost"], `A${SHOWN}`, ROWS, unit),
      ...viewOf(ALTERNATES, ["price", "addOrDeduct", "hours"], `D${SHOWN}`, ROWS, unit, signed),
      ...viewOf(ALTERNATES, ["verdict"], `J${SHOWN}`, ROWS, unit),
      ...viewOf(ALTERNATES, ["option", "boardsToBuy"], `A${BOARDS}`, ROWS, unit),
      ...viewOf(PRICECHANGE, ["cause", "amount"], `A${WALK + 2}`, WALK_ROWS, unit, { amount: MONEY }),
      ...viewOf(PRICECHANGE, ["item", "note"], `D${WALK + 2}`, WALK_ROWS, unit),
      ...spillOf(ALTERNATES, ALTERNATES_AT, ROWS, unit, signed),
      ...spillOf(PRICECHANGE, WALK_AT, WALK_ROWS, unit),
    ],
  };
};
