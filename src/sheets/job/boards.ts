import { BLANK } from "../../functions/order/blank";
import { rippedPieces, stock, tally } from "../../functions/tables";
import { GLUEUP } from "../../functions/yield/glueup";
import { PLAN } from "../../functions/yield/plan";
import { SHEETCUTS } from "../../functions/yield/sheetcuts";
import { TALLYCUTS } from "../../functions/yield/tallycuts";
import { headingsOf, spillOf } from "../result-looks";
import { type Block, type Entry, MONEY, page, type Spill, type SpilledHeadings, TYPED_LENGTH } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import {
  ABOUT, ASSUMED, BOARD_LIST, BOARDS, GLUE_TERMS, GLUED, GRADES, OTHER_BOARDS, PAINTED, PANELS, PIECES_LISTED, RIPPED, RIPPED_CUTS,
  RIPPED_PLAN, SHEET_CUTS, SHEET_GOODS, SHEET_LIST, SHEET_PLAN, SHEETS, STRIPS, STRIPS_IN_ORDER, STRIPS_LISTED, TERMS, TREAD_BOARDS,
  TWICE, WAYS,
} from "./boards-places";
import {
  boardList, glued, painted, panelsToGlue, piecesListed, piecesToPaint, piecesToRip, ripped, sheetList, stripsGlued, stripsInOrder,
  stripsListed,
} from "./boards-plans";
import { answers, assumedTerms, standTwice, ways } from "./boards-answers";
import { CUT } from "./cut-plan";
import { type Filling, lengthFormat, moneyOf, type PileFilling } from "./filling";

/** Rows of a list at the saw that have the formats of their columns. */
const ROWS = 90;

/** Columns of a table of boards; a yard that works in millimetres has a price a board. */
const boardHeadings = ({ unit }: Filling): readonly string[] => {
  const price = unit === "mm" ? "price" : "boardFootPrice";
  return headingsOf(tally, "label", "length", "width", "thickness", "grade", price, "owned", "defects", "edge");
};
const SHEET_COLUMNS = ["label", "length", "width", "thickness", "price"] as const;

const filledUp = (rows: readonly (readonly Entry[])[], count: number, columns: number): readonly (readonly Entry[])[] =>
  Array.from({ length: count }, (_, row) => rows[row] ?? Array.from({ length: columns }, () => ""));

const white = (cell: string): string => `=IF(${cell}="","",${cell})`;

/** The unit as a word in a title. */
const written = ({ unit }: Filling): string => (unit === "mm" ? "millimetres" : "inches");

/** What a term is of, beside it. */
const SAYS: Readonly<Record<string, string>> = {
  kerf: "from Cut plan",
  trim: "off each end of a board",
  joint: "off each edge of a strip",
  "rough length": "a panel is glued longer by",
  "rough width": "and wider by",
  "greatest strip": "once jointed",
};

const typedBlocks = (filling: Filling, pile: PileFilling): readonly Block[] => {
  const { unit } = filling;
  const length = lengthFormat(unit);
  const price = unit === "mm" ? "a board" : "a board foot";
  const part = (at: string, text: string, beside: number): Block => ({
    at, style: "part", rows: [[text, ...Array.from({ length: beside }, () => "")]],
  });
  const boards = (at: number, rows: PileFilling["treadBoards"]): Block => ({
    at: `A${at}`, headings: true, numbers: [1, 2, 5, 8], inputs: [0, 1, 2, 3, 4, 5, 6, 7, 8],
    // 5/4 typed into a cell of numbers is the 5th of April, and so is a range of them.
    formats: { 1: length, 2: length, 3: unit === "mm" ? length : TYPED_LENGTH, 5: MONEY, 7: TYPED_LENGTH, 8: length },
    rows: [boardHeadings(filling), ...filledUp(rows, BOARDS, boardHeadings(filling).length)],
  });
  return [
    part(`A${TERMS - 1}`, `The saw and the glue-up, ${written(filling)}`, 3),
    {
      at: `A${TERMS}`, headings: true, numbers: [1], inputs: [1], formats: { 1: length },
      rows: [
        ["label", "value"],
        ...GLUE_TERMS.map((label) => [label, label === "kerf" ? white(CUT.kerf) : (pile.terms[label] ?? ""), SAYS[label] ?? ""]),
        ["trim of sheets", pile.sheetTrim, "off all four edges; empty is none"],
        ["keep from", white(CUT.keep), "from Cut plan: shortest end kept; of a sheet both ways"],
      ],
    },
    part(`F${TERMS - 1}`, "Grades wanted", 3),
    {
      at: `F${TERMS}`, headings: true, inputs: [1, 2],
      rows: [
        ["for", ...headingsOf(rippedPieces, "grade", "alsoFrom")],
        ...Object.keys(GRADES).map((what, row) => [what, ...(pile.grades[row] ?? ["", ""])]),
      ],
    },
    part(TREAD_BOARDS.part, `Boards for treads and nosing: ${written(filling)}, rough thickness, ${moneyOf(filling)} ${price}`, 8),
    boards(TREAD_BOARDS.heading, pile.treadBoards),
    part(OTHER_BOARDS.part, `Boards for risers and skirts: ${written(filling)}, rough thickness, ${moneyOf(filling)} ${price}`, 8),
    boards(OTHER_BOARDS.heading, pile.otherBoards),
    part(SHEET_GOODS.part, `Sheets and primed boards for paint, as many as it takes: ${written(filling)}, ${moneyOf(filling)} each`, 8),
    {
      at: `A${SHEET_GOODS.heading}`, headings: true, numbers: [1, 2, 3, 4], inputs: [0, 1, 2, 3, 4],
      formats: { 1: length, 2: length, 3: length, 4: MONEY },
      rows: [headingsOf(stock, ...SHEET_COLUMNS), ...filledUp(pile.sheets, SHEETS, SHEET_COLUMNS.length)],
    },
  ];
};

const aboutText = ({ unit }: Filling): string =>
  "Not in the bid: another way to the same pieces. Buy from here or from Order and Cut plan, not from both. A board stands in one of the " +
  `two lists, so that it is cut once: ${unit === "mm" ? "41 mm" : "5/4"} for treads, ${unit === "mm" ? "27 mm" : "4/4"} for the rest. ` +
  "Edge is what straightening takes off both edges together; defects are from end 0, over the full width. Risers are roughed out alike, " +
  "as the longest and the widest of them; Fit has the size of each. The list says what is done first on a board: crosscut it into " +
  "sections or rip it into strips; then each of those is cut the other way. The rough edge is the one straightened first, as it came.";

const blocks = (filling: Filling, pile: PileFilling): readonly Block[] => {
  const { unit } = filling;
  const part = (at: string, text: string): Block => ({ at, style: "part", rows: [[text]] });
  // So short that a list is no wider than a page that lies.
  const places = (what: string, end: string, edge: string): readonly string[] => [
    what, "done first", `along, from ${end}`, `across, from ${edge}`, "piece", `saw length, ${unit}`, `saw width, ${unit}`,
  ];
  return [
    ...ways(filling),
    { at: TWICE, style: "caution", rows: [[standTwice()]] },
    { at: ABOUT, style: "says", rows: [[aboutText(filling)]] },
    ...typedBlocks(filling, pile),
    { at: `A${ASSUMED}`, style: "says", rows: [[assumedTerms()]] },
    part("K7", `Board by board, ${written(filling)}: along from the end chalked 0, across from the rough edge`),
    {
      at: "K8", headings: true, numbers: [2, 3, 5, 6, 7],
      rows: [[...places("board", "end 0", "rough edge"), `left at end, ${unit}`], [`=${boardList()}`]],
    },
    part("T7", `Sheet by sheet, for paint, ${written(filling)}: along the grain`),
    {
      at: "T8", headings: true, numbers: [2, 3, 5, 6],
      rows: [places("sheet or primed board", "its end", "its edge"), [`=${sheetList()}`]],
    },
    part("AA7", "Panels to glue up, as Order has them"),
    { at: PANELS, rows: [[`=${panelsToGlue()}`]] },
    part("AI7", "Panel by panel, in full"),
    { at: GLUED, rows: [[`=${glued(filling)}`]] },
    part("AY7", "Pieces to rip: risers alike, skirts"),
    { at: RIPPED, rows: [[`=${piecesToRip(filling)}`]] },
    part("BG7", "How they are ripped, in full"),
    { at: RIPPED_CUTS, rows: [[`=${ripped(filling, TALLYCUTS)}`]] },
    part("BR7", "How good that is"),
    { at: RIPPED_PLAN, rows: [[`=${ripped(filling, PLAN)}`]] },
    part("BU7", "The same for paint, of any grade"),
    { at: PAINTED, rows: [[`=${piecesToPaint()}`]] },
    part("CA7", "How they are cut from sheets, in full"),
    { at: SHEET_CUTS, rows: [[`=${painted(filling, SHEETCUTS)}`]] },
    part("CM7", "How good that is"),
    { at: SHEET_PLAN, rows: [[`=${painted(filling, PLAN)}`]] },
    part("CP7", "Strips of the panels, as they are glued"),
    { at: STRIPS, rows: [[`=${stripsGlued()}`]] },
    part("DE7", "The same as they lie on the boards"),
    { at: STRIPS_IN_ORDER, rows: [[`=${stripsInOrder()}`]] },
    part("DT7", "As they are listed at the saw"),
    { at: STRIPS_LISTED, rows: [[`=${stripsListed()}`]] },
    part("EC7", "What is ripped, as it is listed at the saw"),
    { at: PIECES_LISTED, rows: [[`=${piecesListed()}`]] },
  ];
};

const spills = (unit: Filling["unit"]): readonly (Spill | SpilledHeadings)[] => {
  const length = lengthFormat(unit);
  const formats = { 2: length, 3: length, 5: length, 6: length, 7: length };
  const list = (at: string): Spill => ({ at, rows: ROWS, formats, styles: { 7: "right" } });
  return [
    list(BOARD_LIST), list(SHEET_LIST),
    ...spillOf(GLUEUP, GLUED, ROWS, unit),
    ...spillOf(TALLYCUTS, RIPPED_CUTS, 30, unit),
    ...spillOf(SHEETCUTS, SHEET_CUTS, 30, unit),
    ...[RIPPED_PLAN, SHEET_PLAN].flatMap((at) => spillOf(PLAN, at, 12, unit)),
    ...spillOf(BLANK, PANELS, 6, unit),
  ];
};

/** The job from measured boards and from sheets, beside the blanks and boards of Order and Cut plan. */
export const boards = (filling: Filling, pile: PileFilling): SheetData => {
  const { unit } = filling;
  return page({
    name: "Boards",
    title: "Boards: glued up, ripped, or from sheets",
    says:
      "Type the boards of the pile as measured, each in one list, and what sheets and primed boards cost. Out come treads glued up, " +
      "risers and skirts ripped, and the same in paint grade: what each costs, and where to cut." +
      (pile.says === undefined ? "" : ` ${pile.says}`),
    answers: answers(filling),
    heights: { 8: 64, 13: 80, [ASSUMED]: 34, [TREAD_BOARDS.heading]: 34, [OTHER_BOARDS.heading]: 34 },
    widths: {
      A: 156, B: 66, C: 66, D: 92, E: 104, F: 78, G: 70, H: 112, I: 80, J: 10, K: 80, L: 134, M: 70, N: 76, O: 156, P: 72, Q: 70, R: 66,
      S: 10, T: 176, U: 110, V: 70, W: 70, X: 92, Y: 72, Z: 70,
    },
    lists: [TREAD_BOARDS, OTHER_BOARDS].map(({ first, last }) => ({ cells: `G${first}:G${last}`, options: ["yes", "no"] })),
    merged: [
      ...[0, 1, 2].map((row) => `F${WAYS + row}:I${WAYS + row}`), `${TWICE}:I12`, `${ABOUT}:I13`, `A${ASSUMED}:I${ASSUMED}`,
    ],
    verdicts: [`F${WAYS}:F${WAYS + 2}`],
    blocks: blocks(filling, pile),
    spills: spills(unit),
  });
};
