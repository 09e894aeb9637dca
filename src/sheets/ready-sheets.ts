import { cellPlace } from "./cell-address";
import { demo } from "./demo/demo";
import type { CellData, SheetData } from "./sheet-data";

/** A ready sheet of the job, as it is offered. */
export interface ReadySheet {
  readonly name: string;
  readonly says: string;
  /** Names of the ready sheets that its formulas read. */
  readonly reads: readonly string[];
}

/** A cell by which a ready sheet is known again, whatever it is called: where its function stands that others read. */
export interface ReadyMark {
  readonly address: string;
  /** How its formula starts: =STAIR.LAYOUT( */
  readonly starts: string;
}

const NAMED_SHEET = /"(?:[^"]|"")*"|(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!(\$?[A-Z]{1,3}\$?\d+)?/gu;
const OUR_CALL = /^=STAIR\.[A-Z]+\(/;
/** Sheet names are shorter than 32 characters: Excel specifications, Worksheet.name. */
const LONGEST_NAME = 31;

interface Named {
  readonly sheet: string;
  readonly address: string | undefined;
}

const formulasOf = ({ cells }: SheetData): readonly string[] => Object.values(cells).flatMap(({ formula }) => formula ?? []);

const namedIn = (formula: string): Named[] =>
  [...formula.matchAll(NAMED_SHEET)].flatMap(([found, quoted, plain, address]) =>
    found.startsWith('"') ? [] : [{ sheet: quoted?.replaceAll("''", "'") ?? plain ?? "", address }],
  );

/** The sheets that formulas of a sheet name. */
export const sheetsReadBy = (sheet: SheetData): ReadonlySet<string> =>
  new Set(
    formulasOf(sheet)
      .flatMap(namedIn)
      .map(({ sheet: name }) => name),
  );

const readBy = (sheet: SheetData): readonly string[] => {
  const names = sheetsReadBy(sheet);
  return demo.filter(({ name }) => name !== sheet.name && names.has(name)).map(({ name }) => name);
};

/** The ready sheets in the order of the job. */
export const readySheets: readonly ReadySheet[] = demo.map((sheet) => ({
  name: sheet.name,
  says: String(sheet.cells["A2"]?.value ?? ""),
  reads: readBy(sheet),
}));

/** The cells of a ready sheet that the others read and that call a function of ours. */
export const readyMarks = (name: string): readonly ReadyMark[] => {
  const sheet = demo.find((one) => one.name === name);
  const addresses = new Set(
    demo
      .flatMap((other) => (other === sheet ? [] : formulasOf(other).flatMap(namedIn)))
      .flatMap((named) => (named.sheet === name ? (named.address ?? []) : [])),
  );
  return [...addresses].flatMap((address) => {
    const starts = OUR_CALL.exec(sheet?.cells[address]?.formula ?? "")?.[0];
    return starts === undefined ? [] : [{ address, starts }];
  });
};

/** Every ready sheet that one rests on, nearest last, without those that stand in the workbook already and what only they rest on. */
const missingFor = (name: string, standing: ReadonlyMap<string, string>, found = new Set<string>()): ReadonlySet<string> => {
  for (const read of readySheets.find((one) => one.name === name)?.reads ?? []) {
    if (standing.has(read) || found.has(read)) continue;
    missingFor(read, standing, found);
    found.add(read);
  }
  return found;
};

/** The sheets, of those a ready sheet rests on, to look for in the workbook. */
export const restsOn = (name: string): readonly string[] => [...missingFor(name, new Map())];

const freeName = (wanted: string, taken: ReadonlySet<string>): string => {
  if (!taken.has(wanted.toLowerCase())) return wanted;
  for (let number = 2; ; number += 1) {
    const name = `${wanted.slice(0, LONGEST_NAME - ` ${number}`.length)} ${number}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
};

const sheetText = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_]*$/u.test(name) && !isAddress(name) ? name : `'${name.replaceAll("'", "''")}'`;

const isAddress = (name: string): boolean => {
  try {
    cellPlace(name);
    return true;
  } catch {
    return false;
  }
};

/** The formula with its sheets under other names. */
export const withSheetNames = (formula: string, names: ReadonlyMap<string, string>): string =>
  formula.replace(NAMED_SHEET, (found: string, quoted?: string, plain?: string, address = "") => {
    const name = names.get(quoted?.replaceAll("''", "'") ?? plain ?? "");
    return name === undefined || found.startsWith('"') ? found : `${sheetText(name)}!${address}`;
  });

const renamed = (cell: CellData, names: ReadonlyMap<string, string>): CellData =>
  cell.formula === undefined ? cell : { ...cell, formula: withSheetNames(cell.formula, names) };

/**
 * A ready sheet for a workbook, with the ready sheets it rests on where they are missing there; it comes first, then they in the order of
 * the job. No name of the workbook is used again, and formulas read the sheets that stand there or come with it.
 *
 * @param standing the sheet of the workbook that stands for a ready one, by the ready one's name
 */
export const sheetsToAdd = (name: string, taken: readonly string[], standing: ReadonlyMap<string, string>): readonly SheetData[] => {
  const missing = missingFor(name, standing);
  const added = demo.filter((sheet) => sheet.name === name || missing.has(sheet.name));
  const used = new Set(taken.map((one) => one.toLowerCase()));
  const names = new Map(standing);
  for (const sheet of added) {
    const free = freeName(sheet.name, used);
    used.add(free.toLowerCase());
    names.set(sheet.name, free);
  }
  return added
    .map((sheet): SheetData & { readonly isWanted: boolean } => ({
      ...sheet,
      name: names.get(sheet.name) ?? sheet.name,
      cells: Object.fromEntries(Object.entries(sheet.cells).map(([address, cell]) => [address, renamed(cell, names)])),
      isWanted: sheet.name === name,
    }))
    .sort((one, other) => Number(other.isWanted) - Number(one.isWanted))
    .map(({ isWanted: _isWanted, ...sheet }) => sheet);
};
