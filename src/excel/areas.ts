/** Blocks of cells together: what is set for them is set for all at once. */
export const formatsOfAreas = (sheet: Excel.Worksheet, addresses: string): Excel.ConditionalFormatCollection =>
  sheet.getRanges(addresses).conditionalFormats;
