import { type CellPlace, cellPlace } from "../sheets/cell-address";

/** A place within the workbook; on the sheet of the link itself where it names none. */
export interface LinkTarget extends CellPlace {
  readonly sheet: string | undefined;
  /** The engine's own name of a sheet, by which it keeps a link to one that was there. */
  readonly sheetId?: string;
}

const CELLS = String.raw`(\$?[A-Z]{1,3}\$?[1-9]\d{0,6})(?::.*)?$`;
/** #Survey!A1, #'Cut plan'!$B$2:C9, #B7. */
const WITHIN = new RegExp(String.raw`^#(?:(?:'((?:[^']|'')+)'|([^'!=]+))!)?${CELLS}`, "i");
const BY_ID = new RegExp(String.raw`^#gid=([^&]+)&range=${CELLS}`, "i");

/** Where a link of =HYPERLINK leads within the workbook; undefined for one that leads anywhere else. */
export const linkTarget = (link: string): LinkTarget | undefined => {
  const [, sheetId, there] = BY_ID.exec(link) ?? [];
  if (sheetId !== undefined && there !== undefined) return { sheet: undefined, sheetId, ...cellPlace(there) };
  const [, quoted, plain, address] = WITHIN.exec(link.trim()) ?? [];
  return address === undefined ? undefined : { sheet: quoted?.replaceAll("''", "'") ?? plain, ...cellPlace(address) };
};
