/** Where things stand on Boards. */

/** What each way comes to: treads, risers and skirts, the same in paint grade. */
export const WAYS = 9;
/** What is wrong, and what the sheet is for. */
export const TWICE = "A12";
export const ABOUT = "A13";
/** Heading row of the terms, and those of the glue-up among them; below them what only the other plans read. */
export const TERMS = 15;
export const GLUE_TERMS = ["kerf", "trim", "joint", "rough length", "rough width", "greatest strip"] as const;
const LAST_GLUE = TERMS + GLUE_TERMS.length;
export const TRIM = `B${TERMS + 2}`;
export const SHEET_TRIM = `B${LAST_GLUE + 1}`;
/** What stands in for the terms that nobody typed. */
export const ASSUMED = LAST_GLUE + 3;
/** The terms of the glue-up that have a value, under their headings. */
export const GLUE = `FILTER(A${TERMS}:B${LAST_GLUE},B${TERMS}:B${LAST_GLUE}<>"")`;
/** Grade, and what else will do. */
export const GRADES = { treads: TERMS + 1, risers: TERMS + 2, skirts: TERMS + 3 } as const;

/** A table of boards: its heading row, its first and its last. */
const table = (heading: number, rows: number) => {
  const [first, last] = [heading + 1, heading + rows];
  return { part: `A${heading - 1}`, heading, first, last, lengths: `B${first}:B${last}`, labels: `A${first}:A${last}` };
};

/** Rows for measured boards, and for sheets. */
export const BOARDS = 12;
export const SHEETS = 6;
export const TREAD_BOARDS = table(LAST_GLUE + 5, BOARDS);
export const OTHER_BOARDS = table(TREAD_BOARDS.last + 3, BOARDS);
export const SHEET_GOODS = table(OTHER_BOARDS.last + 3, SHEETS);

/** Whether any plan could be cheaper, in the strip of answers. */
export const CHEAPER = "K4";

/** At the saw: board by board, and sheet by sheet. */
export const BOARD_LIST = "K9";
export const SHEET_LIST = "T9";

/** In full: panels and how they are glued up, pieces, how they are ripped and how good that is, and the same from sheets. */
export const PANELS = "AA8";
export const GLUED = "AI8";
export const RIPPED = "AY8";
export const RIPPED_CUTS = "BG8";
export const RIPPED_PLAN = "BR8";
export const PAINTED = "BU8";
export const SHEET_CUTS = "CA8";
export const SHEET_PLAN = "CM8";
/** For the list at the saw, in cells of their own, as a spreadsheet without LET writes each name out: strips, in order, listed; pieces. */
export const STRIPS = "CP8";
export const STRIPS_IN_ORDER = "DE8";
export const STRIPS_LISTED = "DT8";
export const PIECES_LISTED = "EC8";
