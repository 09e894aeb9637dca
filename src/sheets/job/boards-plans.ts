import { BLANK } from "../../functions/order/blank";
import { rippedPieces } from "../../functions/tables";
import { PLAN } from "../../functions/yield/plan";
import { GLUEUP } from "../../functions/yield/glueup";
import { SHEETCUTS } from "../../functions/yield/sheetcuts";
import { TALLYCUTS } from "../../functions/yield/tallycuts";
import { headingsOf, placesOf } from "../result-looks";
import { ASKS, lacks, passing } from "../sheet-builder";
import {
  GLUE, GLUED, GRADES, OTHER_BOARDS, PAINTED, PANELS, PIECES_LISTED, RIPPED, RIPPED_CUTS, SHEET_CUTS, SHEET_GOODS, SHEET_TRIM, STRIPS,
  STRIPS_IN_ORDER, STRIPS_LISTED, TREAD_BOARDS, TRIM,
} from "./boards-places";
import { call } from "./call";
import { CUT } from "./cut-plan";
import type { Filling } from "./filling";

const PIECES = headingsOf(rippedPieces, "label", "length", "width", "thickness", "grade", "alsoFrom", "quantity")
  .map((one) => `"${one}"`)
  .join();

/** What is asked for here is no part of the bid: the job does not wait for it, so it does not ask as the other sheets do. */
const askingFor = (what: string, { lengths, first }: { lengths: string; first: number }, plan: string): string =>
  `IF(COUNTA(${lengths})=0,"${ASKS} ${what} at A${first}",${plan})`;

/** Grade and what else will do, as typed. */
const gradeOf = (what: keyof typeof GRADES): readonly string[] => [`G${GRADES[what]}&""`, `H${GRADES[what]}&""`];

/** One value down as many rows as a column has. */
const downAlong = (column: string, value: string): string => `IF(ISTEXT(${column}),${value},${value})`;

/** Treads and nosings: what Order has of the width of a blank; returns and risers are sawn. */
export const panelsToGlue = (): string => {
  const [item, length, width, thickness, quantity] = placesOf(BLANK, "item", "length", "width", "thickness", "quantity").map(String);
  const is = (what: string): string => `(CHOOSECOLS(Order!G8#,${item})="${what}")`;
  const table =
    `LET(p,FILTER(DROP(Order!G8#,1),DROP(1-${is("return")}-${is("riser")},1)),n,CHOOSECOLS(p,${item}),VSTACK({${PIECES}},` +
    `HSTACK(n,CHOOSECOLS(p,${length}),CHOOSECOLS(p,${width}),CHOOSECOLS(p,${thickness}),` +
    `${gradeOf("treads").map((value) => downAlong("n", value)).join()},CHOOSECOLS(p,${quantity}))))`;
  return passing("Order!G8", table);
};

export const glued = ({ unit }: Filling): string =>
  passing(PANELS, askingFor("boards for treads", TREAD_BOARDS, call(GLUEUP, unit, {
    panels: `${PANELS}#`, tally: `A${TREAD_BOARDS.heading}:I${TREAD_BOARDS.last}`, glue: GLUE,
  })));

/** Roughed out up to the next mark of the tape, so that what is read off it is what was planned. */
const roughed = (unit: Filling["unit"], size: string): string =>
  unit === "mm" ? `ROUNDUP(ROUND(${size},3),0)` : `ROUNDUP(ROUND(${size},4)*16,0)/16`;

/** Risers all alike, as the longest and the widest of them; then the skirts. */
export const piecesToRip = ({ unit }: Filling): string => {
  const [risers, skirts] = [CUT.risers, CUT.skirts];
  const greatest = (place: number): string => roughed(unit, `MAX(CHOOSECOLS(r,${place}))`);
  const size = (place: number): string => roughed(unit, `CHOOSECOLS(s,${place})`);
  // Where nobody has said how thick a skirt is, any board will do.
  const thickness = 'IFERROR(STAIR.PICK(Layout!AA7#,"skirt thickness"),"")';
  const table =
    `LET(r,DROP(${risers}#,1),s,${skirts},n,CHOOSECOLS(s,1),VSTACK({${PIECES}},` +
    `HSTACK("riser",${greatest(2)},${greatest(3)},MAX(CHOOSECOLS(r,4)),${gradeOf("risers").join()},SUM(CHOOSECOLS(r,5))),` +
    `HSTACK(n,${size(2)},${size(3)},${[thickness, ...gradeOf("skirts")].map((value) => downAlong("n", value)).join()},CHOOSECOLS(s,5))))`;
  return passing(CUT.risers, table);
};

export const ripped = ({ unit }: Filling, declaration: typeof TALLYCUTS | typeof PLAN): string =>
  passing(RIPPED, askingFor("boards for the rest", OTHER_BOARDS, call(declaration, unit, {
    pieces: `${RIPPED}#`, [declaration.id === "PLAN" ? "stock" : "tally"]: `A${OTHER_BOARDS.heading}:I${OTHER_BOARDS.last}`,
    kerf: CUT.kerf, trim: TRIM, keep: CUT.keep,
  })));

/** Paint covers any grade. */
export const piecesToPaint = (): string => passing(RIPPED, `CHOOSECOLS(${RIPPED}#,1,2,3,4,7)`);

export const painted = ({ unit }: Filling, declaration: typeof SHEETCUTS | typeof PLAN): string =>
  passing(PAINTED, askingFor("sheets", SHEET_GOODS, call(declaration, unit, {
    pieces: `${PAINTED}#`, stock: `A${SHEET_GOODS.heading}:E${SHEET_GOODS.last}`, kerf: CUT.kerf, trim: SHEET_TRIM, keep: CUT.keep,
    first: '"either"',
  })));

/** What is cut first, with its number. */
const firstCut = (first: string, number: string): string => `IF(${first}="rip","rip strip ","crosscut section ")&${number}`;

/** Columns of a table, as formulas, by their keys. */
const columnsIn = (
  table: string, declaration: typeof GLUEUP | typeof SHEETCUTS | typeof TALLYCUTS, ...keys: readonly string[]
): readonly string[] => placesOf(declaration, ...keys).map((place) => `CHOOSECOLS(${table},${place})`);

/** Rows of panels that are strips, as they are glued. */
export const stripsGlued = (): string => {
  const [number = ""] = columnsIn(`${GLUED}#`, GLUEUP, "strip");
  return passing(GLUED, `FILTER(DROP(${GLUED}#,1),ISNUMBER(DROP(${number},1)))`);
};

/** The same as they lie on the boards. */
export const stripsInOrder = (): string => {
  const [board = "", along = "", across = ""] = columnsIn(`${STRIPS}#`, GLUEUP, "board", "along", "across");
  return passing(STRIPS, `SORTBY(${STRIPS}#,IFERROR(XMATCH(${board},${TREAD_BOARDS.labels}),0),1,${along},1,${across},1)`);
};

export const stripsListed = (): string => {
  const keys = ["board", "section", "along", "across", "panel", "strip", "length", "roughWidth"] as const;
  const [board = "", section, along, across, panel, strip, length, width] = columnsIn(`${STRIPS_IN_ORDER}#`, GLUEUP, ...keys);
  const columns = [
    `${board}&""`, `"crosscut section "&${section ?? ""}`, along, across, `${panel ?? ""}&", strip "&${strip ?? ""}`, length, width,
    downAlong(board, '""'),
  ];
  return passing(STRIPS_IN_ORDER, `HSTACK(${columns.join()})`);
};

const PLACED = ["along", "across", "label", "length", "width"] as const;

export const piecesListed = (): string => {
  const keys = ["board", "grade", "first", "strip", ...PLACED, "leftOver"] as const;
  const [board = "", grade = "", first = "", strip = "", ...placed] = columnsIn(`DROP(${RIPPED_CUTS}#,1)`, TALLYCUTS, ...keys);
  return passing(RIPPED_CUTS, `HSTACK(${[`${board}&IF(${grade}="","",", "&${grade})`, firstCut(first, strip), ...placed].join()})`);
};

/** Treads, then what is ripped; the one where the other has no answer. */
export const boardList = (): string =>
  `IF(${lacks(STRIPS_LISTED)},${PIECES_LISTED}#,IF(${lacks(PIECES_LISTED)},${STRIPS_LISTED}#,VSTACK(${STRIPS_LISTED}#,${PIECES_LISTED}#)))`;

export const sheetList = (): string => {
  const keys = ["sheet", "stock", "first", "strip", ...PLACED] as const;
  const [sheet = "", ofStock = "", first = "", strip = "", ...placed] = columnsIn(`DROP(${SHEET_CUTS}#,1)`, SHEETCUTS, ...keys);
  return passing(SHEET_CUTS, `HSTACK(${[`"no. "&${sheet}&": "&${ofStock}`, firstCut(first, strip), ...placed].join()})`);
};
