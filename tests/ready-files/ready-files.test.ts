/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { Cell, Workbook as ExceljsWorkbook } from "exceljs";
import { readyFile } from "../../src/ready-files/ready-file";
import { type FileForm, readyFileName, type ReadyWorkbook, readyWorkbooks } from "../../src/sheets/ready-workbooks";
import type { SheetData } from "../../src/sheets/sheet-data";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { savedOver } from "../../src/workbook-file/saved-over";
import type { Workbook } from "../../src/workbook/workbook";
import { closeWorkbooks, openedWorkbook } from "../workbook/opened-workbook";
import { otherCell, readByExceljs } from "../workbook-file/read-by-exceljs";

/** For the engine to work a job out twice on a busy machine, in milliseconds. */
const ENGINE_TIME = 400_000;
const BUILT = path.resolve(__dirname, "../../dist/workbooks");

interface Built {
  readonly ready: ReadyWorkbook;
  readonly bytes: Readonly<Record<FileForm, Uint8Array>>;
  readonly read: Readonly<Record<FileForm, ExceljsWorkbook>>;
}

const files = new Map<string, Built>();
let book: Workbook;

const builtFile = (ready: ReadyWorkbook, form: FileForm): Uint8Array =>
  new Uint8Array(readFileSync(path.join(BUILT, readyFileName(ready, form))));

beforeAll(async () => {
  book = await openedWorkbook({ Sheet1: {} });
  for (const ready of readyWorkbooks) {
    const bytes = { formulas: builtFile(ready, "formulas"), values: builtFile(ready, "values") };
    const read = { formulas: await readByExceljs(bytes.formulas), values: await readByExceljs(bytes.values) };
    files.set(ready.file, { ready, bytes, read });
  }
}, ENGINE_TIME);
afterAll(closeWorkbooks);

const of = (file: string): Built => {
  const found = files.get(file);
  if (found === undefined) throw new Error(`there is no ready workbook ${file}`);
  return found;
};

const cellsOf = (read: ExceljsWorkbook): readonly { readonly at: string; readonly cell: Cell }[] => {
  const found: { at: string; cell: Cell }[] = [];
  read.eachSheet((sheet) => sheet.eachRow((row) => row.eachCell((cell) => found.push({ at: `${sheet.name}!${cell.address}`, cell }))));
  return found;
};

const valueAt = (read: ExceljsWorkbook, place: string): unknown => {
  const [sheet = "", address = ""] = place.split("!");
  return otherCell(read.getWorksheet(sheet)?.getCell(address)).value;
};

const formulaCount = (sheets: readonly SheetData[]): number =>
  sheets.flatMap(({ cells }) => Object.values(cells)).filter(({ formula }) => formula !== undefined).length;

const FILES = readyWorkbooks.map(({ file }) => file);

test("the build wrote each of them, with formulas and as values, and made again they are the same byte for byte", async () => {
  const names = readyWorkbooks.flatMap((ready) => [readyFileName(ready, "formulas"), readyFileName(ready, "values")]);
  expect(readdirSync(BUILT).sort()).toEqual([...names].sort());
  const { ready, bytes } = of("blank-stair-job-inches");
  const written = await readyFile(ready, book);
  for (const form of ["formulas", "values"] as const) expect([form, Buffer.compare(written(form), bytes[form])]).toEqual([form, 0]);
}, ENGINE_TIME);

describe.each(FILES)("%s", (file) => {
  test("has every formula of its sheets in the one file and none in the other, and no cell in error in either", () => {
    const { ready, read } = of(file);
    const formulas = (form: FileForm) => cellsOf(read[form]).filter(({ cell }) => otherCell(cell).formula !== undefined);
    expect(formulas("formulas")).toHaveLength(formulaCount(ready.sheets()));
    expect(formulas("values")).toEqual([]);
    for (const form of ["formulas", "values"] as const) {
      const inError = cellsOf(read[form]).filter(({ cell }) => typeof otherCell(cell).value === "object" && otherCell(cell).value !== null);
      expect(inError.map(({ at }) => at)).toEqual([]);
    }
  });

  test("gives the same sheets back when it is opened, and the engine comes to every value that stands in it", async () => {
    const { ready, bytes } = of(file);
    const { sheets, file: opened, notShown, keptFormulas } = readWorkbookFile(bytes.formulas);
    expect(sheets).toEqual(ready.sheets());
    expect([notShown, Object.values(keptFormulas).flat()]).toEqual([[], []]);
    book.load({ version: 1, sheets });
    await book.settled();
    book.recalculate();
    await book.settled();
    expect(savedOver(opened, book)).toMatchObject({ changed: {}, unsaved: [] });
  }, ENGINE_TIME);

  test("is printed on pages with the name of the job and of the sheet, without a day, and without what only other sheets read", () => {
    const { ready, read } = of(file);
    for (const form of ["formulas", "values"] as const) {
      for (const { name } of ready.sheets()) {
        const sheet = read[form].getWorksheet(name);
        expect(sheet?.headerFooter.oddHeader).toBe(`${ready.job === undefined ? "" : `&L${ready.job}`}&C${name}`);
        expect([sheet?.pageSetup.fitToWidth ?? 1, sheet?.pageSetup.fitToHeight]).toEqual([1, 0]);
        expect(sheet?.pageSetup.printArea).toMatch(/^A1:[A-Z]\d+$/);
      }
    }
  });

  test("says in the workbook itself whether its job, people and prices are invented", () => {
    const { ready, read } = of(file);
    for (const form of ["formulas", "values"] as const) {
      const texts = cellsOf(read[form]).map(({ cell }) => String(otherCell(cell).value));
      const isFilled = file.startsWith("demo");
      expect(texts.some((text) => text.includes("The job, people and prices are invented."))).toBe(isFilled);
      expect(String(valueAt(read[form], "Job!A1")).includes("(invented job)")).toBe(isFilled);
      expect(ready.says.includes("invented")).toBe(isFilled);
    }
  });
});

test.each([
  // By hand in tests/jobs/one-stair and tests/jobs/demo.
  ["demo-stair-job-inches", { "Bid!A25": "direct", "Bid!B25": 2769.51, "Bid!A32": "total", "Bid!B32": 3886.44 }],
  // By hand in tests/jobs/metric-stair, and of Order 574 + 14.50.
  [
    "demo-stair-job-millimetres",
    {
      "Survey!D4": 14, "Layout!D4": 3500, "Layout!G4": 2025, "Order!C4": 588.5, "Cut plan!A4": 83.7, "Fit!L4": 25, "Fit!N4": 7,
      "Takeoff!B8": "23.38 m", "Takeoff!B14": 3, "Bid!B25": 1974.69, "Bid!B27": 236.96, "Bid!B28": 390.29, "Bid!B30": 2601.94,
      "Bid!B31": 520.39, "Bid!B32": 3122.33,
    },
  ],
  // By hand in tests/jobs/turned-stair.
  [
    "demo-l-shaped-stair-millimetres",
    {
      "Flights!D4": 1448, "Flights!E4": "quarter right", "Flights!H4": "2775.0 × 2490.0", "Job!B11": 1448, "Job 2!B11": 1267,
      "Layout!D4": 1855, "Layout 2!D4": 1590, "Order!C4": 297, "Order 2!C4": 272.5, "Fit 2!L4": 25, "Takeoff!B8": "11.865 m",
      "Bid!B25": 2901.68, "Bid!B30": 3989.81, "Bid!B32": 4388.79,
    },
  ],
])("%s has the figures that were worked out by hand, in both files", (file, figures) => {
  const { read } = of(file);
  for (const form of ["formulas", "values"] as const)
    expect(Object.fromEntries(Object.keys(figures).map((at) => [at, valueAt(read[form], at)]))).toEqual(figures);
  if (file === "demo-stair-job-millimetres") {
    // The packing, the first tread's length and the pitch, by hand in tests/jobs/metric-stair; all of it in millimetres.
    expect(["Survey!D12", "Survey!E8", "Survey!E12", "Survey!F12"].map((at) => valueAt(read.values, at))).toEqual([
      5, 183, 180, "pack 5.0 mm under sub-tread 5",
    ]);
    expect(valueAt(read.values, "Layout!E4")).toBeCloseTo(36.25384, 5);
    expect(valueAt(read.values, "Fit!J9")).toBeCloseTo(948.04855, 4);
    expect(new Set(["Survey!AE9", "Survey!AE26"].map((at) => valueAt(read.values, at)))).toEqual(new Set(["mm"]));
    expect(valueAt(read.values, "Bid!A4")).toBe(2601.94);
  }
});

describe.each(["blank-stair-job-inches", "blank-stair-job-millimetres"])("%s", (file) => {
  /** Rows in which a step is read: src/sheets/job/survey.ts and fit.ts. */
  const READINGS = 24;
  const STEPS = Array.from({ length: READINGS }, (_, step) => step + 1);

  test("has no number typed but those of the steps, no code, no money, and yellow cells that are empty", () => {
    const { ready, read } = of(file);
    const typed = ready.sheets().flatMap(({ name, cells }) =>
      Object.entries(cells).flatMap(([address, { value }]) =>
        (typeof value === "number" ? [`${name} ${address.charAt(0)} ${value}`] : [])));
    const steps = [...STEPS, ...STEPS].map((step) => `Fit A ${step}`).concat(STEPS.map((step) => `Survey A ${step}`));
    expect(typed.sort()).toEqual(steps.sort());
    for (const address of ["B8", "B9", "B10", "B11", "B13", "B14", "B15", "B16"]) {
      const cell = read.formulas.getWorksheet("Job")?.getCell(address);
      expect([address, cell?.value ?? null, cell?.fill?.type]).toEqual([address, null, "pattern"]);
    }
    const texts = cellsOf(read.values).map(({ cell }) => String(otherCell(cell).value));
    expect(texts.filter((text) => /[$£€]/.test(text))).toEqual([]);
  });

  test("offers what can be chosen, the codes among it, and asks for what is typed first", () => {
    const job = of(file).read.formulas.getWorksheet("Job");
    expect(["B10", "B15", "B16"].map((address) => job?.getCell(address).dataValidation?.type)).toEqual(["list", "list", "list"]);
    expect(job?.getCell("B15").dataValidation.formulae).toEqual(['"none,left,right,both"']);
    expect(valueAt(of(file).read.values, "Layout!AA7")).toBe("– type in Job B11");
    expect(valueAt(of(file).read.values, "Job!B12")).toBe("");
  });

  test("once the first cells of Job are typed it goes on as a job of one's own does", async () => {
    const { ready } = of(file);
    const isMetric = file.endsWith("millimetres");
    book.load({ version: 1, sheets: ready.sheets() });
    await book.settled();
    book.put("Job", { B11: { value: isMetric ? 2700 : 106.125 }, B13: { value: isMetric ? 250 : 10 }, B15: { value: "right" } });
    await book.settled();
    expect([book.value("Layout", "AA7"), book.value("Layout", "D4")]).toEqual(["– type in Job B14", "–"]);
    book.put("Job", { B14: { value: isMetric ? 900 : 36.75 } });
    await book.settled();
    expect([book.value("Layout", "AA7"), book.value("Check", "A8")]).toEqual(["label", "– type in Job B10"]);
    book.put("Job", { B10: { value: isMetric ? "uk-adk-private" : "irc-2021" } });
    await book.settled();
    // As in tests/sheets/started-job.test.ts: 2700 / 220 = 12.3 and 106 1/8 / 7 3/4 = 13.7.
    expect(book.value("Job", "B12")).toBe(isMetric ? 13 : 14);
    // 12 treads of 250, 13 of 10.
    expect(book.value("Layout", "D4")).toBe(isMetric ? 3000 : 130);
    expect(book.value("Check", "A4")).toBe("○ not taped");
  }, ENGINE_TIME);
});
