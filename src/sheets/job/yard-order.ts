import { DAY } from "../result-looks";
import { type Answer, type Block, DECIMALS, type Entry, page, passing } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { UNTOLD, YARD_GOODS } from "./cut-plan";
import { type Filling, lengthFormat } from "./filling";
import { JOB } from "./job";
import { YARD_CAUTION, YARD_GATHERED } from "./yard-places";

/** Lines to fill in; headings; goods. */
const FIELDS = 8;
const HEADINGS = 16;
const FIRST = HEADINGS + 1;
const GOODS = `A${FIRST}`;
/** Rows with lines to write on, as many as one stair can fill; and rows that have the formats of their columns. */
const LINES = 20;
const ROWS = 60;

/** Their places in what is gathered. */
const SIZES = [1, 2, 3, 4];
const QUANTITY = 5;
const BOARD_FEET = 6;

const OF_US = ["order no.", "date", "needed by", "deliver to", "our name, telephone"];
const OF_THE_YARD = ["yard", "can deliver on", "freight", "total with freight", "signed"];
const DAYS: readonly string[] = ["date", "needed by", "can deliver on"];

const gathered = (place: number): string => `CHOOSECOLS(g,${place})`;

/** Goods alike in name and sizes, whichever stair they are for, are one row with how many there are of them in all. */
const goods = (hasBoardFeet: boolean): string => {
  const alike = SIZES.map(gathered).join('&"|"&');
  const columns = [
    ...SIZES.map((place) => `XLOOKUP(u,k,${gathered(place)})`),
    `MMULT(s,${gathered(QUANTITY)})`,
    ...(hasBoardFeet ? [`LET(f,MMULT(s,IF(ISNUMBER(${gathered(BOARD_FEET)}),${gathered(BOARD_FEET)},0)),IF(f=0,"",f))`] : []),
  ];
  return `LET(g,DROP(${YARD_GATHERED}#,1),k,${alike},u,UNIQUE(k),s,--(u=TRANSPOSE(k)),HSTACK(${columns.join()}))`;
};

const shown = (place: number): string => `CHOOSECOLS(${GOODS}#,${place})`;

/** Goods that a yard could not tell by what stands here. */
const untold = `SUM((${shown(QUANTITY)}<>0)*((${shown(3)}="")+(${shown(3)}="${UNTOLD}")+(${shown(4)}="")+(${shown(4)}="${UNTOLD}")>0))`;

const CAUTIONS =
  `=IFERROR(IF(${untold}=0,"","Without all its sizes: "&${untold}&". Give each blank and board on Order and Cut plan a name of its own, ` +
  'its width and its thickness."),"")';

/** The last column, of remarks; where there are no board feet a column less. */
const lastOf = (hasBoardFeet: boolean): string => (hasBoardFeet ? "H" : "G");

const answers = (hasBoardFeet: boolean): readonly Answer[] => [
  { over: ["A", "A"], name: "goods", value: `ROWS(${GOODS}#)`, from: GOODS, under: "a row each" },
  { over: ["B", "C"], name: "pieces", value: `SUM(${shown(QUANTITY)})`, from: GOODS, under: "in all" },
  ...(hasBoardFeet
    ? [{
        over: ["D", "E"], name: "board feet", value: `SUM(${shown(BOARD_FEET)})`, from: GOODS, format: DECIMALS,
        under: "under 1 in thick as 1 in",
      } as const]
    : []),
  {
    over: hasBoardFeet ? ["F", "H"] : ["D", "G"], name: "for the job", value: `IF(${JOB.job}="","–",${JOB.job})`, from: GOODS, isText: true,
    under: "to stand on the bill, please",
  },
];

/** A label and a line beside it: ours to type on, the yard's to write on. */
const fields = (hasBoardFeet: boolean): readonly Block[] =>
  OF_US.flatMap((label, down): readonly Block[] => {
    const theirs = OF_THE_YARD[down] ?? "";
    const line = (at: string, name: string, cells: number): Block => ({
      at: `${at}${FIELDS + down}`, style: "byHand", rows: [Array.from({ length: cells }, () => "")],
      ...(DAYS.includes(name) ? { formats: { 0: DAY } } : {}),
    });
    return [
      { at: `A${FIELDS + down}`, rows: [[label]] }, line("B", label, 3),
      { at: `E${FIELDS + down}`, rows: [[theirs]] }, line("G", theirs, hasBoardFeet ? 2 : 1),
    ];
  });

const blocks = ({ unit }: Filling, hasBoardFeet: boolean): readonly Block[] => {
  const part = (at: string, text: string, beside: number): Block => ({
    at, style: "part", rows: [[text, ...Array.from({ length: beside }, () => "")]],
  });
  const headings: readonly Entry[] = [
    "item", `length, ${unit}`, `width, ${unit}`, `thickness, ${unit}`, "pieces", ...(hasBoardFeet ? ["board feet"] : []), "price of one",
    "remarks",
  ];
  return [
    part("A7", "From us", 3),
    part("E7", "From the yard", hasBoardFeet ? 3 : 2),
    ...fields(hasBoardFeet),
    { at: YARD_CAUTION, style: "caution", rows: [[CAUTIONS]] },
    { at: `A${HEADINGS}`, headings: true, numbers: hasBoardFeet ? [1, 2, 3, 4, 5] : [1, 2, 3, 4], rows: [headings] },
    { at: GOODS, rows: [[`=${passing(YARD_GATHERED, goods(hasBoardFeet))}`]] },
    { at: `${hasBoardFeet ? "G" : "F"}${FIRST}`, style: "byHand", rows: Array.from({ length: LINES }, () => ["", ""]) },
    part("AA7", "To buy, of every stair, as each Cut plan has it", 0),
    { at: YARD_GATHERED, rows: [[`=VSTACK('Cut plan'!${YARD_GOODS}#)`]] },
  ];
};

/** What the lumber yard is asked for, on a page of its own, without a price of the shop; the yard writes its own beside it. */
export const yardOrder = (filling: Filling): SheetData => {
  const hasBoardFeet = filling.unit === "in";
  const length = lengthFormat(filling.unit);
  const last = lastOf(hasBoardFeet);
  const lines = [["B", "D"], ["E", "F"], ...(hasBoardFeet ? [["G", last]] : [])];
  const merged = OF_US.flatMap((_, down) => lines.map(([from = "", to = ""]) => `${from}${FIELDS + down}:${to}${FIELDS + down}`));
  return page({
    name: "Yard order",
    title: `="Yard order: "&${JOB.job}`,
    // Read by the yard: what is bought comes from Order and Cut plan.
    says:
      "For the lumber yard: please write the price of one beside each row, and what is short or comes in another size, and send this " +
      "page back.",
    answers: answers(hasBoardFeet),
    // An upright page is 700 wide.
    widths: hasBoardFeet
      ? { A: 156, B: 66, C: 62, D: 78, E: 56, F: 66, G: 84, H: 132 }
      : { A: 156, B: 70, C: 66, D: 84, E: 56, F: 88, G: 180 },
    heights: Object.fromEntries([
      ...OF_US.map((_, down) => [FIELDS + down, 24]), [HEADINGS, 34], ...Array.from({ length: LINES }, (_, down) => [FIRST + down, 24]),
    ]),
    merged: [...merged, `${YARD_CAUTION}:${YARD_CAUTION.replace("A", last)}`],
    blocks: blocks(filling, hasBoardFeet),
    spills: [
      {
        at: GOODS, rows: ROWS, formats: { 1: length, 2: length, 3: length, ...(hasBoardFeet ? { 5: DECIMALS } : {}) },
        styles: { 2: "right", 3: "right" },
      },
    ],
  });
};
