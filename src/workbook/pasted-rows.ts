// A cell with a line break or a tab in it is put in quotes by every spreadsheet that copies it, its own quotes doubled.
const CELL = /(?:"((?:[^"]|"")*)"(?=\t|\n|$)|([^\t\n]*))(\t|\n|$)/g;

/** The rows of a text that was copied from a sheet; undefined for a text of one cell. */
export const pastedRows = (text: string): readonly (readonly string[])[] | undefined => {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n$/, "");
  if (!/[\n\t]/.test(lines)) return undefined;
  const rows: string[][] = [[]];
  for (const [, quoted, plain = "", end] of lines.matchAll(CELL)) {
    // In quotes for no reason that shows: they are the cell's own.
    const isQuoted = quoted !== undefined && /[\n\t]/.test(quoted);
    const asItStands = quoted === undefined ? plain : `"${quoted}"`;
    rows.at(-1)?.push(isQuoted ? quoted.replaceAll('""', '"') : asItStands);
    if (end === "\n") rows.push([]);
    if (end === "") break;
  }
  return rows;
};
