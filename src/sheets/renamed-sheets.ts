import { cellPlace } from "./cell-address";
import { ASKS_IN } from "./sheet-builder";
import type { CellData, SheetData } from "./sheet-data";

const NAMED_SHEET = /"(?:[^"]|"")*"|(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!(\$?[A-Z]{1,3}\$?\d+)?/gu;
/** Sheet names are shorter than 32 characters: Excel specifications, Worksheet.name. */
const LONGEST_NAME = 31;

interface Named {
  readonly sheet: string;
  readonly address: string | undefined;
}

export const formulasOf = ({ cells }: SheetData): readonly string[] => Object.values(cells).flatMap(({ formula }) => formula ?? []);

export const namedIn = (formula: string): Named[] =>
  [...formula.matchAll(NAMED_SHEET)].flatMap(([found, quoted, plain, address]) =>
    found.startsWith('"') ? [] : [{ sheet: quoted?.replace(/''/g, "'") ?? plain ?? "", address }],
  );

/** The sheets that formulas of a sheet name. */
export const sheetsReadBy = (sheet: SheetData): ReadonlySet<string> =>
  new Set(
    formulasOf(sheet)
      .flatMap(namedIn)
      .map(({ sheet: name }) => name),
  );

const freeName = (wanted: string, taken: ReadonlySet<string>): string => {
  if (!taken.has(wanted.toLowerCase())) return wanted;
  for (let number = 2; ; number += 1) {
    const name = `${wanted.slice(0, LONGEST_NAME - ` ${number}`.length)} ${number}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
};

/** Names for sheets that come into a workbook, none of which is taken there, by the names they come with. */
export const freeNames = (wanted: readonly string[], taken: readonly string[]): ReadonlyMap<string, string> => {
  const used = new Set(taken.map((one) => one.toLowerCase()));
  const names = new Map<string, string>();
  for (const name of wanted) {
    const free = freeName(name, used);
    used.add(free.toLowerCase());
    names.set(name, free);
  }
  return names;
};

/** A sheet as a formula names it. */
export const sheetText = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_]*$/u.test(name) && !isAddress(name) ? name : `'${name.replace(/'/g, "''")}'`;

const isAddress = (name: string): boolean => {
  try {
    cellPlace(name);
    return true;
  } catch {
    return false;
  }
};

const LINK = /"#(?:'((?:[^']|'')+)'|([^'"!]+))!([A-Z]+\d+)","[^"]*"/g;

/** Links name the sheet they lead to in a text, and once more in what is shown. */
const withLinks = (formula: string, names: ReadonlyMap<string, string>): string =>
  formula.replace(LINK, (found: string, quoted: string | undefined, plain: string | undefined, address: string) => {
    const was = quoted?.replace(/''/g, "'") ?? plain ?? "";
    const name = names.get(was);
    return name === undefined ? found : `"#${sheetText(name)}!${address}","${name} ›"`;
  });

/** A text of a formula that sends its reader to a cell of a sheet: "– type in Cut plan A9", "see Bid!A14"; the row can follow it. */
const SENDING = new RegExp(`^"(${ASKS_IN}|see )(.+?)([ !][A-Z]{1,3}\\d*(?:: [^"]*)?)"$`);

const sentTo = (text: string, names: ReadonlyMap<string, string>): string =>
  text.replace(SENDING, (found: string, begins: string, sheet: string, rest: string) => {
    const name = names.get(sheet);
    return name === undefined ? found : `"${begins}${name.replace(/"/g, '""')}${rest}"`;
  });

/** The formula with its sheets under other names. */
export const withSheetNames = (formula: string, names: ReadonlyMap<string, string>): string => {
  const renamed = formula.replace(NAMED_SHEET, (found: string, quoted?: string, plain?: string, address = "") => {
    if (found.startsWith('"')) return sentTo(found, names);
    const name = names.get(quoted?.replace(/''/g, "'") ?? plain ?? "");
    return name === undefined ? found : `${sheetText(name)}!${address}`;
  });
  return renamed.startsWith("=HYPERLINK(") ? withLinks(renamed, names) : renamed;
};

const renamedCell = (cell: CellData, names: ReadonlyMap<string, string>): CellData =>
  cell.formula === undefined ? cell : { ...cell, formula: withSheetNames(cell.formula, names) };

/** Sheets under other names, with every formula that reads them. */
export const renamedSheets = (sheets: readonly SheetData[], names: ReadonlyMap<string, string>): readonly SheetData[] =>
  sheets.map((sheet) => ({
    ...sheet,
    name: names.get(sheet.name) ?? sheet.name,
    cells: Object.fromEntries(Object.entries(sheet.cells).map(([address, cell]) => [address, renamedCell(cell, names)])),
  }));

