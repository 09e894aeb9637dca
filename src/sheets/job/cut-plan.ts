import { RISERFIT } from "../../functions/fit/riserfit";
import { TOINCHES } from "../../functions/notation/toinches";
import { TOMM } from "../../functions/notation/tomm";
import { BLANK } from "../../functions/order/blank";
import { ORDER } from "../../functions/order/order";
import { pieces, stock } from "../../functions/tables";
import { BUY } from "../../functions/yield/buy";
import { CUTS } from "../../functions/yield/cuts";
import { OFFCUTS } from "../../functions/yield/offcuts";
import { PLAN } from "../../functions/yield/plan";
import { SHEETCUTS } from "../../functions/yield/sheetcuts";
import { MILLIMETRES_PER_INCH } from "../../solver/length/length";
import { chosen, headingsOf, placesOf, spillOf, viewOf } from "../result-looks";
import { type Answer, asking, ASKS_IN, asksFor, type Block, DECIMALS, type Entry, lacks, MONEY, page, passing, whileAsking } from "../sheet-builder";
import type { SheetData } from "../sheet-data";
import { call } from "./call";
import { type Filling, lengthFormat, moneyOf, onTape } from "./filling";
import { RISERS_FITTED } from "./fit";
import { JOB } from "./job";
import { BLANKS_TYPED } from "./order";

const FIRST = 9;
/** Rows for the boards to be had. */
const BOARDS = 14;
const LAST = FIRST + BOARDS - 1;
const LENGTHS = `B${FIRST}:B${LAST}`;
/** Heading row of the saw and of the pieces below the boards. */
const SAW = LAST + 2;
/** Skirts, rail and returns, a row each, and under them what boards are still asked for. */
const OTHER_PIECES = 4;
const PIECES = `FILTER(D${SAW}:H${SAW + OTHER_PIECES},E${SAW}:E${SAW + OTHER_PIECES}<>"")`;
const REQUEST = `A${SAW + OTHER_PIECES + 1}`;
const OFFCUT_ROW = SAW + OTHER_PIECES + 4;
/**
 * In full: what is bought for risers, and for the rest; how good each plan is; the risers; all to buy as the books read it; the boards;
 * all to buy with its sizes, as the order to the yard reads it.
 */
export const RISER_BUY = "AA8";
const RISER_PLAN = "AA26";
export const RAIL_BUY = "AI8";
const RAIL_PLAN = "AI26";
const RISER_PIECES = "AQ8";
export const ALL_BOUGHT = "BK8";
const STOCK_READ = "BR8";
/**
 * The trim off the ends alone: a number with a point whatever the spreadsheet writes; one over 20,000 goes on as it is, for it is refused
 * as a date.
 */
const endsTrimmed = (trim: string): string =>
  `IF(ISNUMBER(${trim})*(${trim}>20000),${trim},IF(${trim}="",0,IF(ISNUMBER(${trim}),SUBSTITUTE(${trim}&"",",","."),${trim}))&" x 0")`;

/** In a cell of its own, for Calc takes no formula of any length. */
const TRIMMED = "CT8";
/** The pieces and the saw as Bid reads them for its alternates, and Boards. */
export const CUT = {
  risers: `'Cut plan'!${RISER_PIECES}`,
  others: `FILTER('Cut plan'!D${SAW}:H${SAW + OTHER_PIECES},'Cut plan'!E${SAW}:E${SAW + OTHER_PIECES}<>"")`,
  /** The first two rows: an open skirt and a closed one. */
  skirts: `FILTER('Cut plan'!D${SAW + 1}:H${SAW + 2},'Cut plan'!E${SAW + 1}:E${SAW + 2}<>"")`,
  stock: `'Cut plan'!${STOCK_READ}#`, kerf: `'Cut plan'!B${SAW + 1}`, trim: `'Cut plan'!${TRIMMED}`,
  keep: `'Cut plan'!B${SAW + 3}`,
  bought: [`'Cut plan'!${RISER_BUY}`, `'Cut plan'!${RAIL_BUY}`],
} as const;
export const YARD_GOODS = "CB8";
/** What is bought for the yard, and the sizes typed of it: in cells of their own, as a spreadsheet without LET writes each name out. */
const YARD_BOUGHT = "CI8";
const YARD_SIZES = "CN8";
const SAWN = { stock: `${STOCK_READ}#`, kerf: `B${SAW + 1}`, trim: `B${SAW + 2}`, keep: `B${SAW + 3}` };
/** Risers, returns, skirts and rail of a long flight, a row each. */
const ROWS = 80;
const BUY_VIEW = ["item", "length", "quantity", "price", "cost"] as const;
/** An end as stock for the next job; what it is worth is for the books. */
const KEPT_VIEW = ["label", "length", "width", "thickness", "price", "available", "owned", "grade"] as const;
/** What RECONCILE reads of what has a price. */
const PLANNED = ["item", "quantity", "price", "net", "gross"] as const;
/** What an order to the yard has of what is bought; gross is board feet where a board has width and thickness. */
const ORDERED = ["item", "length", "quantity", "gross"] as const;

const FITTED = `Fit!${RISERS_FITTED}`;

const DESIGNED_PLACES = placesOf(BLANK, "item", "length", "width", "thickness", "quantity");
const [ITEM, ...SIZES] = DESIGNED_PLACES;
const DESIGNED = `FILTER(Order!G8#,CHOOSECOLS(Order!G8#,${String(ITEM)})="riser")`;
const [LENGTH_AT, WIDTH_AT, THICKNESS_AT, QUANTITY_AT] = SIZES.map(String);

/** The risers as designed while none were read. */
const AS_DESIGNED = passing("Order!G8", `VSTACK(TAKE(Order!G8#,1),${DESIGNED})`);

/** The risers that were read, and as designed those that were not: every riser of the stair is cut and paid for. */
const AS_READ = passing(
  "Order!G8",
  `LET(f,DROP(${FITTED}#,1),n,ROWS(f),d,${DESIGNED},t,INDEX(d,1,${THICKNESS_AT}),unread,INDEX(d,1,${QUANTITY_AT})-n,` +
    `read,HSTACK(${chosen(RISERFIT, "f", "step", "length", "height")},SEQUENCE(n,1,t,0),SEQUENCE(n,1,1,0)),` +
    `VSTACK({${headingsOf(pieces, "label", "length", "width", "thickness", "quantity").map((one) => `"${one}"`).join()}},` +
    `IF(unread>0,VSTACK(read,HSTACK("as designed",INDEX(d,1,${LENGTH_AT}),INDEX(d,1,${WIDTH_AT}),t,unread)),read)))`,
);
const risers = `=${whileAsking(FITTED, AS_DESIGNED, AS_READ)}`;

/** Which of the two the plan rests on, and how many were read where not all were. */
const WHICH =
  `=IF(${lacks(FITTED)},"risers as designed",LET(n,ROWS(${FITTED}#)-1,all,INDEX(${DESIGNED},1,${QUANTITY_AT}),` +
  `IF(n<all,n&" of "&all&" risers taped","risers as taped")))`;

const cutting = (
  filling: Filling, declaration: typeof BUY | typeof CUTS | typeof SHEETCUTS | typeof PLAN | typeof OFFCUTS, what: "risers" | "rail",
): string => {
  // boards have straight edges: of those that are ripped the ends alone are trimmed
  const trim = declaration === CUTS ? SAWN.trim : TRIMMED;
  const cut = call(declaration, filling.unit, { pieces: what === "risers" ? `${RISER_PIECES}#` : PIECES, ...SAWN, trim });
  return passing(what === "risers" ? RISER_PIECES : "Layout!AA7", asking(LENGTHS, `Cut plan A${FIRST}`, passing(REQUEST, cut)));
};

/** The boards as the plans read them: where nothing is typed for how many there are, any number. */
const boardsRead = (): string => {
  const [lengths, available] = [`B8:B${LAST}`, `F8:F${LAST}`];
  return `=HSTACK(A8:E${LAST},IF((${available}="")*(${lengths}<>""),"any",${available}),G8:H${LAST})`;
};

/** What CUTS takes for a saw that nobody measured, as a formula. */
const kerfAssumed = ({ unit }: Filling): string => {
  const inches = String(CUTS.parameters.kerf.default);
  return unit === "mm" ? `TEXT(${MILLIMETRES_PER_INCH.toString()}*${inches},"0.0")&" mm"` : `"${inches} in"`;
};

/** A board of each grade that is cut here, and one without for the risers, before anything is planned. */
const request = (filling: Filling): string => {
  const [lengths, grades] = [`E${SAW + 1}:E${SAW + OTHER_PIECES}`, `G${SAW + 1}:G${SAW + OTHER_PIECES}`];
  const boards = `H${FIRST}:H${LAST}`;
  const free = `XMATCH("",${LENGTHS}&"")`;
  const row = `${FIRST - 1}+IFERROR(${free},${BOARDS})`;
  const where = `IF(ISNA(${free}),": every row is taken; in the place of a board that is not cut, one ",": a board ")`;
  return (
    `=IF(COUNTA(${LENGTHS})=0,"",LET(isMissing,ISNUMBER(${lengths})*ISNA(XMATCH(${grades},${boards})),` +
    `isPlainMissing,SUM((${LENGTHS}<>"")*(${boards}=""))=0,missing,UNIQUE(FILTER(${grades},isMissing,"")),` +
    `IF((SUM(isMissing)=0)*NOT(isPlainMissing),IF(B${SAW + 1}="","No kerf typed: "&${kerfAssumed(filling)}&" is taken.",""),` +
    `"${ASKS_IN}Cut plan A"&${row}&${where}&` +
    `IF(isPlainMissing,"without a grade for the risers","of grade "&TEXTJOIN(" and one of grade ",TRUE,missing)))))`
  );
};

/** The verdict of a plan that no other beats. */
const PROVEN = "best possible (proven)";
/** How every verdict of a plan begins to which no better one was found. */
const BEST = "best possible";

const plan = (at: string, label: string): string => `STAIR.PICK(${at}#,"${label}")`;
const planOf = (label: string): string => `${plan(RISER_PLAN, label)}+${plan(RAIL_PLAN, label)}`;

const answers = (filling: Filling): readonly Answer[] => [
  { over: ["A", "B"], name: "cost of the boards", value: planOf("cost"), from: "J8", format: MONEY, under: moneyOf(filling) },
  {
    over: ["C", "D"], name: "boards to buy",
    value: `SUM(DROP(${chosen(BUY, `${RISER_BUY}#`, "quantity")},1))+SUM(DROP(${chosen(BUY, `${RAIL_BUY}#`, "quantity")},1))`, from: "J8",
    under: WHICH,
  },
  {
    over: ["E", "H"], name: "yield: risers, all else",
    value: `TEXT(${plan(RISER_PLAN, "yield")},"0%")&", "&TEXT(${plan(RAIL_PLAN, "yield")},"0%")`, from: "J8",
    under: "of what is cut into", isText: true,
  },
  {
    over: ["J", "L"], name: "is there a cheaper plan?", from: "J8", under: "for risers, and for all else", isText: true,
    value:
      `LET(v,VSTACK(${plan(RISER_PLAN, "verdict")},${plan(RAIL_PLAN, "verdict")}),IF(SUM(--(v="${PROVEN}"))=2,"✓ no, proven",` +
      `IF(SUM(--(LEFT(v,${BEST.length})="${BEST}"))=2,"✓ none was found",` +
      `"○ "&TEXT(MAX(${plan(RISER_PLAN, "most still to save")},${plan(RAIL_PLAN, "most still to save")}),"0.0%")&" at most")))`,
  },
  {
    over: ["M", "Q"], name: "back to the rack", value: `${planOf("offcuts kept")}`, from: "J8",
    under:
      `=IF(SUM(--(VSTACK(${RISER_PLAN}#,${RAIL_PLAN}#)="offcut length"))<2,"pieces",` +
      `"pieces, "&${onTape(filling.unit, `(${planOf("offcut length")})`)}&" in all")`,
  },
];

/** Nothing while the stair is still to be typed, which Layout asks for; what cannot be worked out is an error. */
const laidOut = (answer: string): string => whileAsking("Layout!AA7", '""', answer);

const otherPieces = (): readonly (readonly Entry[])[] => {
  // A side that is open has an open skirt, the other one a closed one; a rail on each side that has one.
  const openSides = `SWITCH(${JOB.openEnd},"both",2,"none",0,1)`;
  const closedSides = `(2-${openSides})`;
  const rails = `SWITCH(${JOB.handrails},"both",2,"none",0,1)`;
  const skirt = (what: string, sides: string): string => `=${laidOut(`IF(${sides}=0,"",STAIR.PICK(Layout!N8#,"${what}"))`)}`;
  const isReturn = `CHOOSECOLS(Order!G8#,${String(ITEM)})="return"`;
  const returns = (place: string | undefined): string =>
    `=IF(SUM(--(${isReturn}))=0,"",INDEX(FILTER(Order!G8#,${isReturn}),1,${String(place)}))`;
  return [
    ["open skirt", skirt("open skirt length", openSides), skirt("open skirt width", openSides), "skirt", `=${laidOut(openSides)}`],
    [
      "closed skirt", skirt("closed skirt length", closedSides), skirt("closed skirt width", closedSides), "skirt",
      `=${laidOut(closedSides)}`,
    ],
    [
      "rail", `=${laidOut(`IF(${rails}=0,"",STAIR.PICK(Layout!N17#,"rail length"))`)}`,
      `=IFERROR(INDEX(FILTER(C${FIRST}:C${LAST},H${FIRST}:H${LAST}="rail"),1),"")`, "rail", `=${laidOut(rails)}`,
    ],
    ["return", returns(LENGTH_AT), returns(WIDTH_AT), "return", returns(QUANTITY_AT)],
  ];
};

/** A table of both plans, once both have an answer. */
const bothPlans = (table: string): string => `=${passing(RISER_PLAN, passing(RAIL_PLAN, table))}`;

/**
 * The list of one plan: stock, its number, piece, length, along, across, width, left over. Where pieces lie side by side on a board it is
 * ripped, and the list is that of SHEETCUTS with which cut comes first behind the stock; else that of CUTS, where across and width are
 * the board's own.
 */
const cutList = (filling: Filling, what: "risers" | "rail"): string => {
  // the third row of PLAN counts sticks, or sheets
  const isRipped = `CHOOSECOLS(TAKE(DROP(${what === "risers" ? RISER_PLAN : RAIL_PLAN}#,2),1),1)="sheets"`;
  const of = (declaration: typeof CUTS | typeof SHEETCUTS): string => `DROP(${cutting(filling, declaration, what)},1)`;
  return (
    `IF(${isRipped},LET(c,${of(SHEETCUTS)},HSTACK(${chosen(SHEETCUTS, "c", "stock")}&", "&${chosen(SHEETCUTS, "c", "first")}&" first",` +
    `${chosen(SHEETCUTS, "c", "sheet", "label", "length", "along", "across", "width", "leftOver")})),` +
    `LET(c,${of(CUTS)},none,IF(${chosen(CUTS, "c", "stick")}>0,"",""),` +
    `HSTACK(${chosen(CUTS, "c", "stock", "stick", "label", "length", "position")},none,none,${chosen(CUTS, "c", "leftOver")})))`
  );
};

/** Board by board: the risers, then all else, the boards counted on. */
const boardByBoard = (filling: Filling): string => {
  const label = "CHOOSECOLS(r,3)";
  const named = `IF(${label}="riser","riser",IF(${label}="","riser","riser "&${label}))`;
  return (
    `LET(r,${cutList(filling, "risers")},s,${cutList(filling, "rail")},n,MAX(CHOOSECOLS(r,2)),VSTACK(` +
    `HSTACK(CHOOSECOLS(r,1,2),${named},CHOOSECOLS(r,4,5,6,7,8)),` +
    "HSTACK(CHOOSECOLS(s,1),CHOOSECOLS(s,2)+n,CHOOSECOLS(s,3,4,5,6,7,8))))"
  );
};

/** Ends of both plans that go back to the rack, as stock for the next job. */
const keptEnds = (filling: Filling): string => {
  const ends = `VSTACK(${cutting(filling, OFFCUTS, "risers")},DROP(${cutting(filling, OFFCUTS, "rail")},1))`;
  const stacked = chosen(OFFCUTS, ends, ...KEPT_VIEW);
  const kept = `LET(e,${stacked},n,CHOOSECOLS(e,${KEPT_VIEW.indexOf("available") + 1}),k,FILTER(e,IF(ISNUMBER(n),n>0,TRUE)),` +
    'IF(ROWS(k)=1,"no end is as long as that",k))';
  return bothPlans(`IF(B${SAW + 3}="",${asksFor(`B${SAW + 3}`)},${kept})`);
};

/** Rows of ORDER that are blanks to buy. */
const BLANKS = `FILTER(Order!A17#,ISNUMBER(INDEX(Order!A17#,0,${placesOf(ORDER, "price").join()})))`;

/** What is bought of everything, once Order and both plans have an answer. */
const bought = (table: string): string => `=${passing("Order!A17", passing(RISER_BUY, passing(RAIL_BUY, table)))}`;

/** A plan of boards that are all on the rack has a row that says so; it stands only where there is nothing else. */
const allToBuy = bought(
  `LET(a,VSTACK(${chosen(ORDER, BLANKS, ...BUY_VIEW)},DROP(${chosen(BUY, `${RISER_BUY}#`, ...BUY_VIEW)},1),` +
    `DROP(${chosen(BUY, `${RAIL_BUY}#`, ...BUY_VIEW)},1)),FILTER(a,CHOOSECOLS(a,3)<>0,TAKE(a,-1)))`,
);

const planned = bought(
  `VSTACK(${chosen(ORDER, "TAKE(Order!A17#,1)", ...PLANNED)},${chosen(ORDER, BLANKS, ...PLANNED)},` +
    `DROP(${chosen(BUY, `${RISER_BUY}#`, ...PLANNED)},1),DROP(${chosen(BUY, `${RAIL_BUY}#`, ...PLANNED)},1))`,
);

/** Two boards of one name and length: which is meant cannot be told. */
export const UNTOLD = "?";

const yardBought = bought(
  `LET(a,VSTACK(${chosen(ORDER, BLANKS, ...ORDERED)},DROP(${chosen(BUY, `${RISER_BUY}#`, ...ORDERED)},1),` +
    `DROP(${chosen(BUY, `${RAIL_BUY}#`, ...ORDERED)},1)),FILTER(a,CHOOSECOLS(a,3)<>0,TAKE(a,-1)))`,
);

/** Sizes as they are typed on Order and above, with what they are known again by: name and length, which may be typed as a text. */
const yardSizes = ({ unit }: Filling): string => {
  const length = `IFERROR(${call(unit === "mm" ? TOMM : TOINCHES, unit, { measure: "CHOOSECOLS(t,2)" })},"")`;
  const known = `IF(CHOOSECOLS(t,1)="","",CHOOSECOLS(t,1)&"|"&${length})`;
  return `=LET(t,VSTACK(Order!${BLANKS_TYPED},A${FIRST}:D${LAST}),HSTACK(${known},CHOOSECOLS(t,3,4)))`;
};

/** All to buy with its sizes. */
const yardGoods = (): string => {
  const [goods, sizes] = [`${YARD_BOUGHT}#`, `${YARD_SIZES}#`];
  const found = (place: number, order: number): string =>
    `XLOOKUP(CHOOSECOLS(${goods},1)&"|"&CHOOSECOLS(${goods},2),CHOOSECOLS(${sizes},1),CHOOSECOLS(${sizes},${place}),"",0,${order})`;
  const sizeOf = (place: number): string => `LET(f,${found(place, 1)},IF(f&""<>${found(place, -1)}&"","${UNTOLD}",IF(f=0,"",f)))`;
  const table =
    `LET(w,${sizeOf(2)},h,${sizeOf(3)},VSTACK({"item","length","width","thickness","quantity","board feet"},` +
    `HSTACK(CHOOSECOLS(${goods},1,2),w,h,CHOOSECOLS(${goods},3),IF(ISNUMBER(w)*ISNUMBER(h),CHOOSECOLS(${goods},4),""))))`;
  return `=${passing(YARD_BOUGHT, table)}`;
};

const typedBlocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const length = lengthFormat(unit);
  const rows = Array.from({ length: BOARDS }, (_, row) => filling.boards[row] ?? Array.from({ length: 8 }, () => ""));
  return [
    {
      at: "A7", style: "part",
      rows: [[`Boards to be had; ${unit}, ${moneyOf(filling)} each; without a grade: for risers`, "", "", "", "", "", "", ""]],
    },
    {
      at: "A8", headings: true, numbers: [1, 2, 3, 4, 5], inputs: [0, 1, 2, 3, 4, 5, 6, 7], formats: {
        1: length, 2: length, 3: length, 4: MONEY,
      },
      rows: [headingsOf(stock, "label", "length", "width", "thickness", "price", "available", "owned", "grade"), ...rows],
    },
    {
      at: `A${SAW}`, headings: true, numbers: [1], inputs: [1], formats: { 1: length },
      rows: [["the saw", unit], ["kerf", filling.kerf], ["trim per end", filling.trim], ["keep from", filling.keep]],
    },
    {
      at: `D${SAW}`, headings: true, numbers: [1, 2, 4], formats: { 1: length, 2: length },
      rows: [headingsOf(pieces, "label", "length", "width", "grade", "quantity"), ...otherPieces()],
    },
    { at: REQUEST, style: "caution", rows: [[request(filling)]] },
    { at: `A${OFFCUT_ROW - 1}`, style: "part", rows: [["Ends worth the rack", "", "", "", "", "", "", ""]] },
    {
      at: `A${OFFCUT_ROW}`,
      rows: [
        [
          keptEnds(filling),
        ],
      ],
    },
  ];
};

const blocks = (filling: Filling): readonly Block[] => {
  const { unit } = filling;
  const part = (at: string, text: string): Block => ({ at, style: "part", rows: [[text]] });
  return [
    ...typedBlocks(filling),
    {
      at: "J7", headings: true, numbers: [1, 3, 4, 5, 6, 7],
      rows: [
        ["stock", "board", "piece", `length, ${unit}`, "from end", "from edge", "width", "left over"],
        [bothPlans(boardByBoard(filling))],
      ],
    },
    {
      at: "S7", headings: true, numbers: [1, 2, 3, 4],
      rows: [["to buy", `length, ${unit}`, "how many", `price, ${moneyOf(filling)}`, `cost, ${moneyOf(filling)}`], [allToBuy]],
    },
    part("AA7", "Risers: what to buy, in full"),
    { at: RISER_BUY, rows: [[`=${cutting(filling, BUY, "risers")}`]] },
    part("AA25", "Risers: how good the plan is"),
    { at: RISER_PLAN, rows: [[`=${cutting(filling, PLAN, "risers")}`]] },
    part("AI7", "Skirts, rail and returns: what to buy, in full"),
    { at: RAIL_BUY, rows: [[`=${cutting(filling, BUY, "rail")}`]] },
    part("AI25", "Skirts, rail and returns: how good the plan is"),
    { at: RAIL_PLAN, rows: [[`=${cutting(filling, PLAN, "rail")}`]] },
    part("AQ7", "Risers to cut: as taped, and as designed those that are not taped"),
    { at: RISER_PIECES, rows: [[risers]] },
    part("BK7", "All to buy, as Books reads it"),
    { at: ALL_BOUGHT, rows: [[planned]] },
    part("BR7", "The boards as the plans read them"),
    { at: STOCK_READ, rows: [[boardsRead()]] },
    part("CB7", "All to buy with its sizes, as Yard order reads it"),
    { at: YARD_GOODS, rows: [[yardGoods()]] },
    part("CI7", "What is bought, for Yard order"),
    { at: YARD_BOUGHT, rows: [[yardBought]] },
    part("CT7", "The trim as plans of ripped boards read it: ends x edges"),
    { at: TRIMMED, rows: [[`=${endsTrimmed(SAWN.trim)}`]] },
    part("CN7", "Sizes as typed, by name and length"),
    { at: YARD_SIZES, rows: [[yardSizes(filling)]] },
  ];
};

/** What to buy, each board in cutting order, what is left of it, and how good the plan is. */
export const cutPlan = (filling: Filling): SheetData => {
  const { unit } = filling;
  const length = lengthFormat(unit);
  const boardFeet = { net: DECIMALS, gross: DECIMALS };
  return page({
    name: "Cut plan",
    title: "Cut plan: risers, skirts, rail and returns",
    says:
      "Type the boards to be had, with the grade skirt, rail or return for those, and the kerf, what is trimmed off an end and the " +
      "shortest piece to keep. Out come what to buy and each board in cutting order; one that holds pieces side by side says what is cut " +
      "first, and where each lies from its edge. Owned costs nothing; available left empty is any.",
    answers: answers(filling),
    heights: { 7: 34 },
    widths: {
      A: 138, B: 64, C: 74, D: 92, E: 72, F: 78, G: 60, H: 76, I: 4, J: 150, K: 50, L: 94, M: 76, N: 74, O: 62, P: 64, Q: 62, R: 10, S: 112,
      T: 70, U: 78, V: 70, W: 76,
    },
    lists: [
      { cells: `G${FIRST}:G${LAST}`, options: ["yes", "no"] },
      { cells: `H${FIRST}:H${LAST}`, options: ["skirt", "rail", "return"] },
    ],
    merged: [`${REQUEST}:H${SAW + OTHER_PIECES + 1}`],
    blocks: blocks(filling),
    spills: [
      { at: "J8", rows: ROWS, formats: { 3: length, 4: length, 5: length, 6: length, 7: length }, styles: { 1: "right" } },
      { at: "S8", rows: 20, formats: { 1: length, 3: MONEY, 4: MONEY } },
      ...viewOf(OFFCUTS, KEPT_VIEW, `A${OFFCUT_ROW}`, 8, unit),
      ...[RISER_BUY, RAIL_BUY].flatMap((at) => spillOf(BUY, at, BOARDS + 1, unit, boardFeet)),
      ...[RISER_PLAN, RAIL_PLAN].flatMap((at) => spillOf(PLAN, at, 12, unit)),
      ...spillOf(BLANK, RISER_PIECES, 24, unit),
      ...viewOf(ORDER, PLANNED, ALL_BOUGHT, 24, unit, boardFeet),
    ],
  });
};

