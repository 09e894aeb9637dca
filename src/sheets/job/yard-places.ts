/** Where the goods of every stair of the workbook are gathered; a further stair adds its own to this formula. */
export const YARD_GATHERED = "AA8";
/** What is to be mended before the order goes out. */
export const YARD_CAUTION = "A14";
