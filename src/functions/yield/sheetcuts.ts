import { isProblem } from "../../solver/problem";
import { sharedSheets } from "../../solver/yield/sheets/shared-sheets";
import { sheetList } from "../../solver/yield/sheets/sheet-list";
import { CAUTION, SAW_CAUTION } from "../caution";
import { namedStock } from "../cutting";
import { declare } from "../declare";
import { SHEET_PROBLEMS, sheetJobOf, SHEETS } from "../sheets";

const BOARDS = [
  ["label", "length", "width", "price", "available"],
  ["A", 96, 11, 66, 1],
  ["B", 96, 7.5, 45, 1],
  ["C", 96, 5, 30, 1],
] as const;

export const SHEETCUTS = declare({
  id: "SHEETCUTS",
  words: "sheet cuts",
  group: "Cut plan",
  says: "Which piece to cut from which sheet, or from which board that is ripped, at least cost.",
  parameters: SHEETS,
  result: {
    kind: "table",
    says:
      "One row per piece: sheet after sheet, and strip after strip, widest first. A narrower piece of a strip is ripped again by " +
      "itself.",
    columns: {
      sheet: { kind: "count", says: "Number of the sheet." },
      stock: { kind: "label", says: "Label of the stock the sheet is taken from; its length where it has none." },
      first: { kind: "text", says: "rip: the strips are ripped along the sheet, then crosscut; crosscut: the other way round." },
      strip: { kind: "count", says: "Number of the strip on its sheet, from the edge or end measured from." },
      along: { kind: "length", says: "Along the sheet's length from its end to the start of the piece; the trim is counted." },
      across: { kind: "length", says: "Across the sheet from its edge to the start of the piece; the trim is counted." },
      label: { kind: "label", says: "What the piece is." },
      length: { kind: "length", says: "Length of the piece." },
      width: { kind: "length", says: "Width of the piece." },
      turned: { kind: "text", says: "yes where the piece's length lies across the sheet." },
      leftOver: { kind: "length", says: "What the strip leaves at its end, between its last kerf and the trim." },
    },
  },
  problems: SHEET_PROBLEMS,
  examples: [
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["riser", 42, 7.25, 2], ["nosing", 42, 3.5, 2]],
        stock: BOARDS,
        first: "rip",
      },
      gives: [
        ["sheet", "stock", "first", "strip", "along", "across", "label", "length", "width", "turned", "left over"],
        [1, "A", "rip", 1, 0, 0, "riser", 42, 7.25, "", 11.75],
        [1, "A", "rip", 1, 42.125, 0, "riser", 42, 7.25, "", 11.75],
        [1, "A", "rip", 2, 0, 7.375, "nosing", 42, 3.5, "", 11.75],
        [1, "A", "rip", 2, 42.125, 7.375, "nosing", 42, 3.5, "", 11.75],
      ],
      from:
        "by hand: 7 1/4 + 1/8 + 3 1/2 = 10 7/8 of 11, 2 x 42 1/8 = 84 1/4 of 96; A alone is 66, one piece across each board " +
        "takes B and C, " +
        "75",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["step", 42, 5.5, 4]],
        stock: [["label", "length", "width", "price", "available"], ["A", 96, 11, 60, 2], ["B", 96, 11.125, 63, 1]],
        kerf: 0.125,
        first: "rip",
        headings: false,
      },
      gives: [
        [1, "B", "rip", 1, 0, 0, "step", 42, 5.5, "", 11.75],
        [1, "B", "rip", 1, 42.125, 0, "step", 42, 5.5, "", 11.75],
        [1, "B", "rip", 2, 0, 5.625, "step", 42, 5.5, "", 11.75],
        [1, "B", "rip", 2, 42.125, 5.625, "step", 42, 5.5, "", 11.75],
      ],
      from: "by hand: 5 1/2 + 1/8 + 5 1/2 = 11 1/8, an exact fit on B; on A one strip fits, so two of A at 60",
    },
    {
      given: {
        pieces: [
          ["label", "length", "width", "quantity", "grain"],
          ["panel", 46, 23.5, 3, "fixed"],
          ["shelf", 22, 30, 3, "free"],
        ],
        stock: [["label", "length", "width", "price", "available"], ["4 x 8", 96, 48, 62, 2], ["half", 48, 48, 36, 2]],
      },
      shows: [{ sheet: 1, stock: "4 x 8" }, { sheet: 2, stock: "half" }, { label: "shelf", length: 22, width: 30, turned: "yes" }],
      from:
        "by hand: the pieces, 5,223 square inches, are more than two halves or one 4 x 8, 4,608 each, so 62 + 36 = 98 is the least that " +
        "holds them; the 4 x 8 holds two panels and beside them three shelves turned, 23 1/2 + 1/8 + 22 of 48 and 3 x 30 1/8 of 96; the " +
        "half the third panel",
    },
    {
      given: {
        pieces: [["label", "length", "width"], ["panel", 40, 60]],
        stock: [["label", "length", "width", "price"], ["4 x 8", 96, 48, 62]],
      },
      fails: "#N/A",
      says: 'grain: piece panel (40" x 60") fits only across the grain; write free under grain where it may be turned',
      from: "by hand: 60 is more than the 48 across, and less than the 96 along",
    },
    {
      given: {
        pieces: [["label", "length", "width"], ["panel", 40, 60]],
        stock: [["label", "length", "width", "price"], ["5 x 5", 60, 60, 52]],
        trim: 0.25,
      },
      fails: "#N/A",
      says: 'length: piece panel (40" x 60") fits on no available sheet of its grade; the largest is 60" x 60" before its trims',
      from: "by hand: 60 less two trims of 1/4 is 59 1/2",
    },
    {
      given: { pieces: [["label", "length"], ["panel", 40]], stock: [["length", "width", "price"], [96, 48, 62]] },
      fails: "#VALUE!",
      says:
        'width: piece panel (40") has none; give its finished width, or leave the width out of all pieces and cut them with CUTS',
      from: "common practice, no source: a sheet is cut both ways",
    },
    {
      given: {
        pieces: [["label", "length", "width", "quantity"], ["panel", 50, 40, 2]],
        stock: [["length", "width", "price", "available"], [96, 48, 62, 1]],
      },
      fails: "#N/A",
      says:
        'available: the sheets cannot hold all pieces, the largest of them panel (50" x 40"); add sheets, or write "any"',
      from: "by hand: 2 x 50 is more than 96, 2 x 40 more than 48, and there is one sheet",
    },
  ],
  source:
    "Two stages: a sheet is ripped into strips and each strip crosscut, or crosscut into strips and each ripped; a strip is as " +
    "wide as its " +
    "widest piece. Strips and their kerfs add to no more than the width less both trims and plus one kerf, pieces in a strip " +
    "likewise along " +
    "it: an exact fit fits. Least cost, then least area, as far as a fixed amount of work goes. A piece is cut only from stock " +
    "of its own " +
    "grade that is at least as thick. Numbers of sheets are taken in the order of their cost, and each is shown to hold the pieces or to " +
    "be too small: by worths given to the pieces (Gilmore and Gomory 1965, from memory), or by a search of all ways to fill " +
    "them. Planned " +
    "on marks of 1/64 in or 0.1 mm, pieces rounded up, stock down. One plan takes up to 1,000 pieces, 100 rows of stock, and 100 " +
    "sizes of " +
    "pieces and 20 of sheets in a grade; more is refused. The work is counted: a large job gets a plan and the most that could still be " +
    "saved, not always the proof.",
  caution: `${CAUTION} ${SAW_CAUTION}`,
  solve: (given) => {
    const job = sheetJobOf(given);
    const plan = sharedSheets(job);
    if (isProblem(plan)) return plan;
    return sheetList(job, plan).map((row) => ({ ...row, stock: namedStock(row.stock), turned: row.turned ? "yes" : undefined }));
  },
});
