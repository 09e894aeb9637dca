import { type CellPlace, cellPlace } from "../sheets/cell-address";

/** A place within the workbook; on the sheet of the link itself where it names none. */
export interface LinkTarget extends CellPlace {
  readonly sheet: string | undefined;
}

/** #Survey!A1, #'Cut plan'!$B$2:C9, #B7. */
const WITHIN = /^#(?:(?:'((?:[^']|'')+)'|([^'!]+))!)?(\$?[A-Z]{1,3}\$?[1-9]\d{0,6})(?::.*)?$/i;

/** Where a link of =HYPERLINK leads within the workbook; undefined for one that leads anywhere else. */
export const linkTarget = (link: string): LinkTarget | undefined => {
  const [, quoted, plain, address] = WITHIN.exec(link.trim()) ?? [];
  return address === undefined ? undefined : { sheet: quoted?.replaceAll("''", "'") ?? plain, ...cellPlace(address) };
};
