import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import type { MendingReport } from "../../src/cli/mend";
import { calledIn } from "../../src/cli/calling";
import { dependants, type FormulaOfBook, keyOf } from "../../src/cli/dependants";
import { rowsFunctions } from "../../src/calc/rows-functions";
import { cellAddress, cellPlace } from "../../src/sheets/cell-address";
import { type ReadWorkbook, readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { isStoredError, type StoredValue } from "../../src/workbook-file/sheet/cell-value";
import { addressOf, fileFor, inCalc, installed, officeFolder, removeFolder, type ShownCell, type Step } from "./office";

/** How far a number of Calc's may be from ours, of 1 or of itself. */
const CLOSE = 1e-11;

const project = path.resolve(__dirname, "../..");
const built = (name: string): string => path.join(project, `dist/workbooks/${name}.xlsx`);
const DEMOS = ["demo-stair-job-inches", "demo-stair-job-millimetres"].map((name) =>
  ({ name, file: built(name), values: built(`${name}-values`) }));

/** The demos; or files told of in TREADSHEET_WORKBOOKS, with commas between, such as the last file of `npm run soak -- 1000 7 job`. */
const BOOKS: readonly BookFile[] = process.env["TREADSHEET_WORKBOOKS"]?.split(",").map((file) =>
  ({ name: path.basename(file, ".xlsx"), file })) ?? DEMOS;

/** A workbook, and where its values stand alone: of the demos as the build writes them, else as the command does. */
interface BookFile {
  readonly name: string;
  readonly file: string;
  readonly values?: string;
}

interface SheetShown {
  readonly cells: readonly (readonly ShownCell[])[];
  readonly formulas: readonly (readonly string[])[];
}
type BookShown = Readonly<Record<string, SheetShown>>;

interface Opened {
  /** The demo as our engine works it out: the same sheets with values alone, as the build writes them. */
  readonly read: ReadWorkbook;
  readonly formulas: readonly FormulaOfBook[];
  readonly out: LeftOut;
  readonly mended: string;
  readonly recalculated: BookShown;
  readonly again: Readonly<Record<"ods" | "xlsx", BookShown>>;
}

const FILTERS = { ods: "calc8", xlsx: "Calc MS Excel 2007 XML" } as const;

let folder: string;
let opened: ReadonlyMap<string, Opened>;

/** The demo as the command writes it for a spreadsheet without spills, and the blocks that its arrays take up. */
const spillFree = ({ name, file: from }: BookFile): { readonly file: string; readonly blocks: ReadonlyMap<string, string> } => {
  const file = path.join(folder, `${name}.xlsx`);
  const { status, stdout, stderr } = spawnSync(
    process.execPath, [COMMAND, "mend", from, "--without-spills", "--out", file, "--json"],
    { encoding: "utf8", maxBuffer: Number.POSITIVE_INFINITY },
  );
  if (status !== 0 && status !== 2) throw new Error(stderr);
  const { mended } = JSON.parse(stdout) as MendingReport;
  const blocks = new Map(mended.map(({ sheet = "", address, cells = address }) => [keyOf({ sheet, address }), cells]));
  return { file: fileFor(folder, `${name}-opened.xlsx`, file), blocks };
};

const COMMAND = path.join(project, "dist/tools/treadsheet.cjs");

const valuesOf = ({ name, file, values }: BookFile): string => {
  if (values !== undefined) return values;
  const out = path.join(folder, `${name}-values.xlsx`);
  const { status, stderr } = spawnSync(process.execPath, [COMMAND, "recalc", file, "--values", "--out", out], { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr);
  return out;
};

const readBook = (file: string): ReadWorkbook => readWorkbookFile(new Uint8Array(readFileSync(file)));

const formulasOf = ({ sheets }: ReadWorkbook, blocks: ReadonlyMap<string, string>): readonly FormulaOfBook[] =>
  sheets.flatMap(({ name: sheet, cells }) => Object.entries(cells).flatMap(([address, { formula }]) => {
    if (formula === undefined) return [];
    const [first = address, last = first] = (blocks.get(keyOf({ sheet, address })) ?? address).split(":");
    const [from, to] = [cellPlace(first), cellPlace(last)];
    return [{ sheet, address, formula, rows: to.row - from.row + 1, columns: to.column - from.column + 1 }];
  }));

const bare = (name: string): string => name.replace(/^(_xlfn[.])?(_xlws[.])?/i, "").toUpperCase();

interface LeftOut {
  /** Formulas that call what this Calc does not have, and which functions those are. */
  readonly calling: readonly FormulaOfBook[];
  readonly functions: ReadonlyMap<string, number>;
  /** Those that read such cells. */
  readonly reading: readonly FormulaOfBook[];
  /** Every cell of both. */
  readonly cells: ReadonlySet<string>;
}

const cellsOf = ({ sheet, address, rows, columns }: FormulaOfBook): readonly string[] => {
  const { row, column } = cellPlace(address);
  return Array.from({ length: rows * columns }, (_, index) =>
    keyOf({ sheet, address: cellAddress({ row: row + Math.floor(index / columns), column: column + (index % columns) }) }));
};

const leftOut = (formulas: readonly FormulaOfBook[], known: readonly string[]): LeftOut => {
  // What Mend puts into the place of those that this Calc has not.
  const has = new Set([...known.map(bare), ...rowsFunctions.map(({ name }) => name), "LET"]);
  const functions = new Map<string, number>();
  const calling = formulas.filter(({ formula }) => {
    const unknown = new Set(calledIn(formula).map(bare).filter((name) => !has.has(name) && !name.startsWith("STAIR.")));
    for (const name of unknown) functions.set(name, (functions.get(name) ?? 0) + 1);
    return unknown.size > 0;
  });
  const behind = new Set(dependants(calling, formulas).map(keyOf));
  const reading = formulas.filter((one) => behind.has(keyOf(one)));
  return { calling, functions, reading, cells: new Set([...calling, ...reading].flatMap(cellsOf)) };
};

const asShown = (value: StoredValue | undefined): unknown => {
  if (isStoredError(value)) return { error: value.error };
  return typeof value === "boolean" ? Number(value) : (value ?? "");
};

const differs = (shown: unknown, own: unknown): boolean => {
  if (typeof shown !== "number" || typeof own !== "number") return JSON.stringify(shown) !== JSON.stringify(own);
  return Math.abs(shown - own) > CLOSE * Math.max(1, Math.abs(own));
};

/** Cells that show something else than our engine made of them; how many were compared. */
const compared = (book: BookShown, { stored, sheets }: ReadWorkbook, isLeftOut: (key: string) => boolean) => {
  let count = 0;
  const different: string[] = [];
  for (const { name: sheet, cells } of sheets) {
    for (const address of new Set([...Object.keys(stored[sheet] ?? {}), ...Object.keys(cells)])) {
      if (isLeftOut(keyOf({ sheet, address }))) continue;
      const { row, column } = cellPlace(address);
      const own = asShown(stored[sheet]?.[address] ?? cells[address]?.value);
      const shown = book[sheet]?.cells[row]?.[column] ?? "";
      count += 1;
      if (differs(shown, own)) different.push(`${sheet}!${address}: Calc ${JSON.stringify(shown)}, ours ${JSON.stringify(own)}`);
    }
  }
  return { count, different };
};

const placesOf = (cells: ReadonlySet<string>): Record<string, [row: number, column: number][]> => {
  const places: Record<string, [row: number, column: number][]> = {};
  for (const key of cells) {
    const [sheet = "", address = ""] = key.split("!");
    const { row, column } = cellPlace(address);
    (places[sheet] ??= []).push([row, column]);
  }
  return places;
};

/** A file of values alone shows nothing in the place of an error: that stands in the file with the formulas. */
const withErrors = (values: ReadWorkbook, { stored }: ReadWorkbook): ReadWorkbook => ({
  ...values,
  stored: Object.fromEntries(values.sheets.map(({ name }) => {
    const errors = Object.entries(stored[name] ?? {}).filter(([, value]) => isStoredError(value));
    return [name, { ...values.stored[name], ...Object.fromEntries(errors) }];
  })),
});

const openedIn = (profile: string, book: BookFile, known: readonly string[]): Opened => {
  const { name } = book;
  const [own, { file, blocks }] = [readBook(book.file), spillFree(book)];
  const read = withErrors(readBook(valuesOf(book)), own);
  const formulas = formulasOf(own, blocks);
  const out = leftOut(formulas, known);
  const places = placesOf(out.cells);
  const saved = (form: "ods" | "xlsx"): string => addressOf(path.join(folder, `${name}-saved.${form}`));
  const steps: readonly Step[] = [
    ["open", addressOf(file)], ["menu", "mend"], ["calculate"], ["sheets", places],
    ["save", saved("ods"), FILTERS.ods], ["save", saved("xlsx"), FILTERS.xlsx],
    ["open", saved("ods")], ["calculate"], ["sheets", places],
    ["open", saved("xlsx")], ["calculate"], ["sheets", places],
  ];
  const answers = inCalc(folder, profile, steps);
  return {
    read, formulas, out, mended: answers[1] as string, recalculated: answers[3] as BookShown,
    again: { ods: answers[8] as BookShown, xlsx: answers[11] as BookShown },
  };
};

beforeAll(() => {
  folder = officeFolder();
  const profile = installed(folder);
  const [, known] = inCalc(folder, profile, [["open"], ["known"]]);
  opened = new Map(BOOKS.map((book) => [book.name, openedIn(profile, book, known as string[])]));
});
afterAll(() => removeFolder(folder));

describe.each(BOOKS.map(({ name }) => name))("%s, opened and recalculated in Calc", (name) => {
  const all = (): Opened => opened.get(name) as Opened;

  test("Mend finds every name as Excel saves it", () => {
    expect(all().mended).toMatch(/^\d+ formulas had names as Excel saves them, and are mended[.]$/);
    const left = Object.values(all().recalculated).flatMap(({ formulas }) => formulas.flat().filter((one) => /_xldudf_/i.test(one)));
    expect(left).toEqual([]);
  });

  test("every cell that this Calc can work out shows what our engine does", () => {
    const { read, formulas, out } = all();
    const { count, different } = compared(all().recalculated, read, (key) => out.cells.has(key));
    const total = count + out.cells.size;
    process.stdout.write(
      `${name}: ${count} cells compared, ${different.length} differ; left out ${out.calling.length} of ${formulas.length} formulas ` +
        `that call functions this Calc has not (${[...out.functions].map(([one, times]) => `${one} ${times}`).join(", ")}) and ` +
        `${out.reading.length} that read them, ${out.cells.size} of ${total} cells:\n` +
        `  calling: ${out.calling.map(keyOf).join(" ")}\n  reading: ${out.reading.map(keyOf).join(" ")}\n`,
    );
    expect(different).toEqual([]);
    expect(count).toBeGreaterThan(0);
  });

  test.each(["ods", "xlsx"] as const)("saved as .%s and opened again it shows the same", (form) => {
    const { read, out: { cells } } = all();
    const { different } = compared(all().again[form], read, (key) => cells.has(key));
    expect(different).toEqual([]);
    const names = Object.values(all().again[form]).flatMap(({ formulas }) => formulas.flat().filter((one) => one.includes("STAIR.")));
    expect(names.length).toBeGreaterThan(50);
  });
});
