import { catalogue } from "../../src/functions/catalogue";
import { excelHost } from "../../src/excel/excel-host";
import { type Ask, inserted, takenBack } from "../../src/pane/insertion";
import { jobStarted, takesStairs } from "../../src/pane/job-started";
import { mended } from "../../src/pane/mend";
import { readySheetAdded } from "../../src/pane/ready-sheet";
import { why } from "../../src/pane/why";
import { laidOut } from "../../src/pane/laid-out";
import { cellAddress, cellPlace } from "../../src/sheets/cell-address";
import { demo } from "../../src/sheets/demo/demo";
import { columnsOf } from "../../src/sheets/result-looks";
import { associated } from "../host/stand-in";
import { type MockedExcel, mockedExcel, type MockedWorkbook } from "./mocked-excel";

let excel: MockedExcel | undefined;

afterEach(() => excel?.restore());

const opened = (workbook: MockedWorkbook) => {
  excel = mockedExcel(workbook);
  const { cells, sheets, mending } = excelHost(() => true);
  if (cells === undefined || sheets === undefined || mending === undefined) throw new Error("a part of the host is missing");
  return { excel, cells, sheets, mending };
};

const declared = (id: string) => {
  const found = catalogue.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no function ${id}`);
  return found;
};

const never: Ask = async (text) => {
  throw new Error(`asked: ${text}`);
};
const yes: Ask = async () => true;

test("the mock lets nothing be read that was not loaded", async () => {
  opened({ sheets: [{ name: "Mine", cells: { A1: { value: 7 } } }] });
  const read = await Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Mine").getRangeByIndexes(0, 0, 1, 1);
    range.load("values");
    const early = String(range.values);
    await context.sync();
    return [early, range.values, String(range.formulas)];
  });
  expect(read).toEqual(["Error, context.sync() was not called", [[7]], "Error, property was not loaded"]);
});

describe("entries are read as Excel reads them", () => {
  const written = async (format: string, value: string, order: "format first" | "entry first" = "format first") => {
    const { excel: book } = opened({ sheets: [{ name: "Mine" }] });
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getItem("Mine").getRangeByIndexes(0, 0, 1, 1);
      if (order === "format first") range.numberFormat = [[format]];
      range.formulas = [[value]];
      if (order === "entry first") range.numberFormat = [[format]];
      await context.sync();
    });
    return book.cell("Mine", "A1");
  };

  // By hand: 2 January 2026 is the day after 46,023.
  test("1/2 is a date, unless the cell is of text or fractions or an apostrophe says text; in the order asked for", async () => {
    expect(await written("General", "1/2")).toMatchObject({ value: 46_024, format: "d-mmm" });
    expect(await written("General", "'1/2")).toMatchObject({ value: "1/2", format: "General" });
    expect(await written("@", "1/2")).toMatchObject({ value: "1/2" });
    expect(await written("# ??/16", "1/2")).toMatchObject({ value: 0.5 });
    expect(await written("General", "7 1/2")).toMatchObject({ value: 7.5 });
    expect(await written("@", "1/2", "entry first")).toMatchObject({ value: 46_024, format: "@" });
  });

  test("our host puts a text in as that text, in a cell of text and in one that is not", async () => {
    const { excel: book, cells } = opened({ sheets: [{ name: "Mine" }] });
    const at = { sheet: "Mine", row: 0, column: 0 };
    await cells.write([
      { at, cells: [[{ value: "1/2", format: "@" }, { value: "1/2" }, { value: "12" }, { value: "true" }, { value: "-3" }]] },
    ]);
    expect(["A1", "B1", "C1", "D1", "E1"].map((address) => book.cell("Mine", address).value)).toEqual(["1/2", "1/2", "12", "true", "-3"]);
  });

  test("a ready sheet's text stays text too", async () => {
    const { excel: book, sheets } = opened({ sheets: [{ name: "Mine" }] });
    await sheets.add([
      { name: "New", cells: { A1: { value: "1/2", format: "@" }, A2: { value: "1/2" }, A3: { value: 0.5, format: "# ??/16" } } },
    ]);
    expect(["A1", "A2", "A3"].map((address) => book.cell("New", address).value)).toEqual(["1/2", "1/2", 0.5]);
  });
});

describe("insert", () => {
  test("arguments stand under their names, lengths as numbers; the formula has its namespace, the spill its formats", async () => {
    const { excel: book, cells } = opened({ sheets: [{ name: "Mine" }], selected: ["Mine", "B2"] });
    const { says } = await inserted(declared("STORYPOLE"), cells, never);
    expect(says).toMatch(/^STORYPOLE inserted at Mine B2:F\d+: its arguments, and the formula in Mine B8\.$/);
    expect(["B2", "B3"].map((address) => book.cell("Mine", address).value)).toEqual(["totalRise", "risers"]);
    expect(book.cell("Mine", "C2").format).toBe("# ??/16");
    expect(typeof book.cell("Mine", "C2").value).toBe("number");
    expect(book.cell("Mine", "B8").formula).toBe("=STAIR.STORYPOLE(C2,C3,,C4,C5,C6)");
    expect(book.cell("Mine", "C9").format).toBe("# ??/16");
    // The names of the arguments are wider than a column of 64 pixels, which is 48 points; by hand: "totalRise" has 9 letters.
    expect(Number(book.sheet("Mine").widths["B"])).toBeGreaterThan(48);
  });

  test("columns that were made wider are as wide as before after undo, and wide ones were left", async () => {
    const { excel: book, cells } = opened({ sheets: [{ name: "Mine" }], selected: ["Mine", "B2"] });
    const block = { sheet: "Mine", row: 0, column: 0, rows: 1, columns: 3 };
    await cells.write([{ at: { sheet: "Mine", row: 0, column: 0 }, cells: [], widths: [undefined, undefined, 400] }]);
    const { left } = await inserted(declared("STORYPOLE"), cells, never);
    // By hand: 400 pixels are 300 points.
    expect(book.sheet("Mine").widths["C"]).toBe(300);
    expect((await cells.widths(block))[1]).toBeGreaterThan(64);
    if (left === undefined) throw new Error("nothing to undo");
    await takenBack(left, cells, never);
    expect(await cells.widths(block)).toEqual([64, 64, 400]);
  });

  test("notes wrap in rows as high as they need, and undone neither is left", async () => {
    const { excel: book, cells } = opened({ sheets: [{ name: "Mine" }], selected: ["Mine", "B2"] });
    const { left } = await inserted(declared("ORDER"), cells, never);
    const { looks, heights } = book.sheet("Mine");
    const { formula, heights: wanted } = laidOut(declared("ORDER"), { row: 1, column: 1 });
    const note = formula.column + Object.keys(columnsOf(declared("ORDER"))).indexOf("note");
    // One row under the headings at least, and nothing beside the notes.
    const [wrapped] = looks.filter(({ format }) => format["wrapText"] === true);
    expect(wrapped?.cells.startsWith(cellAddress({ row: formula.row + 1, column: note }))).toBe(true);
    // By hand: pixels of 96 to the inch are 0.75 points.
    const higher = wanted.flatMap((height, row) => (height === undefined ? [] : [[String(row + 2), height * 0.75] as const]));
    expect(higher.length).toBeGreaterThan(0);
    expect(heights).toEqual(Object.fromEntries(higher));
    if (left === undefined) throw new Error("nothing to undo");
    await takenBack(left, cells, never);
    const place = { sheet: "Mine", row: formula.row + 1, column: note };
    expect(await cells.wraps([place])).toEqual([false]);
    // 15 points: 20 pixels.
    expect(new Set(await cells.heights({ ...place, rows: 5, columns: 1 }))).toEqual(new Set([20]));
  });

  test.each([["blocks of cells together", 17], ["one block after the other", 8]])(
    "what is inserted shows lengths as on a tape (%s); undone, the rules for it are gone and others stay", async (_, newest) => {
    excel = mockedExcel({ sheets: [{ name: "Mine" }], selected: ["Mine", "B2"] });
    const { cells, sheets } = excelHost((__, version) => Number(version.split(".")[1]) <= newest);
    if (cells === undefined) throw new Error("no cells");
    await sheets?.add([{ name: "Other", cells: {}, rules: [{ cells: "B2:C9", when: "=B2>7", look: { bold: true } }] }]);
    const { rules: others } = excel.sheet("Other");
    excel.select("Other", "B2");
    const [mine] = others;
    const { left } = await inserted(declared("STORYPOLE"), cells, never);
    const { rules } = excel.sheet("Other");
    const inSixteenths = rules.filter(({ set }) => JSON.stringify(set).includes("ROUND(RC*16,0)"));
    // 0, a whole, a half, a quarter and an eighth.
    expect(new Set(inSixteenths.map(({ set }) => (set["custom"] as RuleSet).format.numberFormat))).toEqual(
      new Set(["0;0", "0", "# ?/2", "# ?/4", "# ?/8"]),
    );
    const covered = inSixteenths.flatMap((rule) => rule.cells.split(","));
    // The total rise, which is typed, and the heights that spill.
    expect(["C2", "C9"].map((cell) => covered.some((block) => block.startsWith(cell)))).toEqual([true, true]);
    if (left === undefined) throw new Error("nothing to undo");
    await takenBack(left, cells, never);
    expect(excel.sheet("Other").rules).toEqual([mine]);
  });

  test("what stands there is asked about, and undo puts back formula, text and format as they were", async () => {
    const { excel: book, cells } = opened({
      sheets: [
        {
          name: "Mine",
          cells: {
            B2: { value: "1/2", format: "General" },
            C2: { formula: "=A1*2", value: 14, format: "0.00" },
            C3: { value: 5, format: "0.0" },
          },
        },
      ],
      selected: ["Mine", "B2"],
      answers: { "=A1*2": 14 },
    });
    const asked: string[] = [];
    const { left } = await inserted(declared("PITCH"), cells, async (text) => {
      asked.push(text);
      return true;
    });
    expect(asked).toEqual(["PITCH takes Mine B2:C4. 3 cells of Mine B2:C4 are not empty, Mine B2 first. Replace what stands there?"]);
    expect(book.cell("Mine", "C4").formula).toBe("=STAIR.PITCH(C2,C3)");
    if (left === undefined) throw new Error("nothing to undo");
    expect((await takenBack(left, cells, never)).says).toBe("The insert of PITCH is undone: Mine B2:C4 is as it was.");
    // The text behind an apostrophe is a text again, not the first of February.
    expect(book.cell("Mine", "B2")).toEqual({ formula: undefined, value: "1/2", format: "General" });
    expect(book.cell("Mine", "C2")).toEqual({ formula: "=A1*2", value: 14, format: "0.00" });
    expect(book.cell("Mine", "C3")).toEqual({ formula: undefined, value: 5, format: "0.0" });
    expect(book.cell("Mine", "B4")).toEqual({ formula: undefined, value: "", format: "General" });
  });

  test("an error that was typed comes back as that error, not as a text", async () => {
    const { excel: book, cells } = opened({
      sheets: [{ name: "Mine", cells: { B1: { value: "#N/A" } } }],
      selected: ["Mine", "A1"],
      answers: { "=#N/A": "#N/A" },
    });
    const { left } = await inserted(declared("PITCH"), cells, yes);
    if (left === undefined) throw new Error("nothing to undo");
    await takenBack(left, cells, never);
    expect(book.cell("Mine", "B1")).toEqual({ formula: "=#N/A", value: "#N/A", format: "General" });
  });

  test("a block that a formula spills into is not written to", async () => {
    const { excel: book, cells } = opened({
      sheets: [{ name: "Mine", cells: { A3: { formula: "=STAIR.STORYPOLE(31,4)", value: "riser" } }, spills: { A3: [5, 5] } }],
      selected: ["Mine", "B1"],
    });
    expect((await inserted(declared("PITCH"), cells, never)).says).toContain("Mine B1:C3 reaches into a table that a formula spills");
    expect(book.batches).toEqual([]);
  });

  test("a result that does not fit after all is told", async () => {
    const { cells } = opened({ sheets: [{ name: "Mine" }], selected: ["Mine", "A1"], answers: { "=STAIR.PITCH(B1,B2)": "#SPILL!" } });
    expect((await inserted(declared("PITCH"), cells, never)).says).toBe(
      "PITCH stands at Mine B3, but its result does not fit there (#SPILL!): undo the insert, and select a cell away from merged " +
        "cells and tables.",
    );
  });
});

/** A rule that shows a number, as it was set. */
interface RuleSet {
  readonly format: { readonly numberFormat: string };
}

describe("add a ready sheet", () => {
  test("it comes with what it rests on, after the others, with formats, looks, widths and frozen rows; what is there stays", async () => {
    const mine = { A1: { value: "mine" }, B7: { formula: "=A1", value: "mine" } };
    const { excel: book, cells, sheets } = opened({ sheets: [{ name: "layout", cells: mine }] });
    const says = await readySheetAdded("Layout", cells, sheets);
    expect(says).toBe(
      "Added Layout 2, and Job and Survey, which it reads. Its numbers are an invented example: type yours over the yellow cells.",
    );
    expect(book.sheetNames()).toEqual(["layout", "Layout 2", "Job", "Survey"]);
    expect([book.cell("layout", "A1").value, book.cell("layout", "B7").formula]).toEqual(["mine", "=A1"]);
    const layout = demo.find(({ name }) => name === "Layout");
    for (const [address, cell] of Object.entries(layout?.cells ?? {})) {
      const held = book.cell("Layout 2", address);
      expect([address, held.formula]).toEqual([address, cell.formula]);
      if (cell.value !== undefined) expect([address, held.value]).toEqual([address, cell.format === "@" ? String(cell.value) : cell.value]);
      if (cell.format !== undefined) expect([address, held.format]).toEqual([address, cell.format]);
    }
    const { looks, widths, frozen } = book.sheet("Layout 2");
    // Typed cells are yellow: src/sheets/cell-looks.ts. By hand: a pixel is 0.75 points.
    expect(looks.some(({ format }) => (format["fill"] as { readonly color?: string } | undefined)?.color === "#fff6d6")).toBe(true);
    expect(widths["A"]).toBe((layout?.columnWidths?.["A"] ?? 0) * 0.75);
    expect(frozen["rows"]).toBe(layout?.frozenRows);
    expect(book.activated).toEqual(["Layout 2"]);
  });

  test("a sheet that stands for one it reads is used, whatever its name", async () => {
    const {
      excel: book,
      cells,
      sheets,
    } = opened({
      sheets: [
        {
          name: "Smith",
          // As the ready sheet stands under another name.
          cells: Object.fromEntries(
            Object.entries(demo.find(({ name }) => name === "Layout")?.cells ?? {}).flatMap(([address, { formula }]) =>
              formula === undefined ? [] : [[address, { formula, value: "label" }]],
            ),
          ),
        },
      ],
    });
    expect(await readySheetAdded("Order", cells, sheets)).toBe(
      "Added Order. It reads Smith of this workbook. Its numbers are an invented example: type yours over the yellow cells.",
    );
    expect(book.cell("Order", "A17").formula).toContain("STAIR.ORDER(Smith!AA7#,A8:E14)");
    expect(book.sheetNames()).toEqual(["Smith", "Order"]);
  });
});

describe("start a job of one's own", () => {
  const asked = { job: "Hall stair", unit: "in", code: "irc-2021", totalRise: 106.125, run: 10, width: 36.75, openEnd: "right" } as const;

  test("its sheets go after those that are there, and one more stair is taken in by Bid and Books", async () => {
    const { excel: book, cells, sheets } = opened({ sheets: [{ name: "Mine", cells: { A1: { value: "mine" } } }] });
    expect(await takesStairs(cells, sheets)).toBe(false);
    await expect(jobStarted(asked, true, cells, sheets)).rejects.toThrow("This workbook has no Bid and Books that gather stairs");
    const says = await jobStarted(asked, false, cells, sheets);
    expect(says).toBe(
      "Added Job, Survey, Layout, Check, Order, Cut plan, Boards, Yard order, Fit, Takeoff, Bid, Quote, Books and Register. " +
        "Type what is known in the yellow cells.",
    );
    expect([book.cell("Mine", "A1").value, book.cell("Job", "B8").value, book.cell("Job", "B11").value]).toEqual([
      "mine", "Hall stair", 106.125,
    ]);
    expect(await takesStairs(cells, sheets)).toBe(true);
    await jobStarted({ ...asked, job: "Cellar stair" }, true, cells, sheets);
    expect(book.cell("Job 2", "B8").value).toBe("Cellar stair");
    expect(book.cell("Bid", "AA8").formula).toMatch(/^=VSTACK\(.*,DROP\('Takeoff 2'!AY8#,1\)\)$/);
    expect(book.cell("Books", "AA8").formula).toMatch(/^=VSTACK\(.*,DROP\('Cut plan 2'!BK8#,1\)\)$/);
    expect(book.cell("Yard order", "AA8").formula).toBe("=VSTACK('Cut plan'!CB8#,DROP('Cut plan 2'!CB8#,1))");
  });
});

describe("Excel's own Undo", () => {
  const book: MockedWorkbook = { sheets: [{ name: "Mine", cells: { A1: { value: "mine" } } }], selected: ["Mine", "B3"] };
  const upTo = (newest: number) => (_set: string, version: string): boolean => Number(version.split(".")[1]) <= newest;
  const hosted = (newest: number, workbook = book) => {
    excel = mockedExcel(workbook);
    const { cells, sheets } = excelHost(upTo(newest));
    if (cells === undefined || sheets === undefined) throw new Error("a part of the host is missing");
    return { excel, cells, sheets };
  };

  // RunOptions.mergeUndoGroup: ExcelApi 1.20.
  test.each([[20, 1], [19, 2]])("with ExcelApi 1.%d an insert is taken back in %d", async (newest, steps) => {
    const { excel: now, cells } = hosted(newest);
    await inserted(declared("STORYPOLE"), cells, never);
    expect([now.undoSteps(), now.sheet("Mine").rules.length > 0]).toEqual([steps, true]);
  });

  test.each([[20, 1], [19, 2]])("with ExcelApi 1.%d ready sheets are taken back in %d", async (newest, steps) => {
    const { excel: now, cells, sheets } = hosted(newest);
    await readySheetAdded("Bid", cells, sheets);
    expect([now.sheetNames().includes("Bid"), now.undoSteps()]).toEqual([true, steps]);
  });

  test.each([20, 19])("with ExcelApi 1.%d the pane takes an insert back in one step, its rules and its cells together", async (newest) => {
    const { excel: now, cells } = hosted(newest);
    const { left } = await inserted(declared("STORYPOLE"), cells, never);
    if (left === undefined) throw new Error("nothing to undo");
    const steps = now.undoSteps();
    await takenBack(left, cells, never);
    expect([now.undoSteps() - steps, now.sheet("Mine").rules, now.cell("Mine", "B3").value]).toEqual([1, [], ""]);
  });

  const further = {
    job: "Cellar stair", unit: "in", code: "irc-2021", totalRise: 106.125, run: 10, width: 36.75, openEnd: "right",
  } as const;
  const gathers = (name: string, formula: string, isProtected = false): MockedWorkbook["sheets"][number] =>
    ({ name, isProtected, cells: { AA8: { formula, value: "item" } } });
  const [bid, books] = ["=VSTACK(DROP(Takeoff!AY8#,1))", "=VSTACK(DROP('Cut plan'!BK8#,1))"];

  test.each([[20, 1], [19, 2]])("with ExcelApi 1.%d one more stair, with what gathers it, is taken back in %d", async (newest, steps) => {
    const { excel: now, cells, sheets } = hosted(newest, { sheets: [gathers("Bid", bid), gathers("Books", books)] });
    await jobStarted(further, true, cells, sheets);
    expect(now.cell("Books", "AA8").formula).toBe("=VSTACK(DROP('Cut plan'!BK8#,1),DROP('Cut plan'!BK8#,1))");
    expect([now.sheetNames().includes("Job"), now.undoSteps()]).toEqual([true, steps]);
  });

  test.each([20, 19])("with ExcelApi 1.%d, where Books takes nothing in, no sheet is added and Bid is as it was", async (newest) => {
    const { excel: now, cells, sheets } = hosted(newest, { sheets: [gathers("Bid", bid), gathers("Books", books, true)] });
    await expect(jobStarted(further, true, cells, sheets)).rejects.toThrow("Books is protected.");
    expect(now.sheetNames()).toEqual(["Bid", "Books"]);
    expect([now.cell("Bid", "AA8").formula, now.cell("Books", "AA8").formula]).toEqual([bid, books]);
  });

  test("where Excel takes no group, the same is there without one, and nothing twice", async () => {
    const { excel: now, cells, sheets } = hosted(20, { ...book, refusesGroups: true });
    const { says } = await inserted(declared("STORYPOLE"), cells, never);
    expect(says).toMatch(/^STORYPOLE inserted at/);
    expect(now.sheet("Mine").rules.length).toBeGreaterThan(0);
    await readySheetAdded("Bid", cells, sheets);
    const names = now.sheetNames();
    expect(new Set(names).size).toBe(names.length);
    expect(now.cell("Bid", "A1").value).not.toBe("");
  });

  test("an insert whose lengths Excel will not reduce is there, and says so", async () => {
    const { excel: now, cells } = hosted(20, { ...book, refusesRules: "InvalidArgument" });
    const { says } = await inserted(declared("STORYPOLE"), cells, never);
    expect(says).toContain("Fractions there are not shown in lowest terms: Excel refused to format cells of Mine: ");
    expect(now.cell("Mine", "B3").value).not.toBe("");
  });
});

describe("mend", () => {
  const unbound = { formula: "=STAIR.RISERS(108.5)", value: "#NAME?" } as const;

  test("our cells that show #NAME? are written to themselves in batches, others are left, protected sheets are named", async () => {
    const many = Object.fromEntries(Array.from({ length: 150 }, (_, row) => [`A${row + 1}`, unbound]));
    const {
      excel: book,
      cells,
      mending,
    } = opened({
      sheets: [
        {
          name: "Mine",
          cells: {
            ...many,
            B1: { formula: "=NOSUCH(1)", value: "#NAME?" },
            B2: { formula: "=STAIR.PITCH(1,1)", value: 45 },
            B3: { value: "#NAME?", isText: true },
          },
        },
        { name: "Empty" },
        { name: "Locked", isProtected: true, cells: { C3: unbound } },
      ],
      answers: { "=STAIR.RISERS(108.5)": 14 },
    });
    expect(await mended(cells, mending)).toEqual([
      "150 cells that had lost their function were mended by writing the formula to its own cell.",
      "Protected and left as they are: Locked (1 cell). Unprotect them (Review, Unprotect Sheet) and mend again.",
    ]);
    expect(book.batches.map((batch) => batch.length)).toEqual([100, 50]);
    expect([book.cell("Mine", "A150").value, book.cell("Mine", "B1").value, book.cell("Locked", "C3").value]).toEqual([
      14,
      "#NAME?",
      "#NAME?",
    ]);
    // Application.calculate: CalculationType Full recalculates everything.
    expect(book.calculations).toEqual(["Full"]);
  });

  test("what stays unbound is named, and where there is nothing to mend that is said", async () => {
    const { cells, mending } = opened({
      sheets: [{ name: "Mine", cells: { A1: unbound } }],
      answers: { "=STAIR.RISERS(108.5)": "#NAME?" },
    });
    expect(await mended(cells, mending)).toEqual([
      "0 cells that had lost their function were mended by writing the formula to its own cell.",
      "Still #NAME?: Mine A1. A name in the formula is unknown here: look for a misspelt function, or one that this spreadsheet " +
        "is too old for.",
    ]);
    excel?.restore();
    const clean = opened({ sheets: [{ name: "Mine", cells: { A1: { value: 1 } } }] });
    expect(await mended(clean.cells, clean.mending)).toEqual(["No cell with a function of STAIR shows #NAME?."]);
  });

  test("names as Excel saved them are written as they are typed, whatever error they show", async () => {
    const { excel: book, cells, mending } = opened({
      sheets: [{
        name: "Mine",
        cells: {
          A1: { formula: "=_xldudf_STAIR_RISERS(B1)", value: "#NAME?" },
          A2: { formula: '=1+[2]!_xldudf_STAIR_PITCH(B1,"[2]!_xldudf_STAIR_X(1)")', value: "#REF!" },
          A3: { formula: "=[2]!STAIR.PITCH(B1)", value: "#NAME?" },
          // An error that the function itself answers, and a function of another add-in.
          A4: { formula: "=STAIR.RISERS(0)", value: "#VALUE!" },
          A5: { formula: "=_xldudf_CONTOSO_ADD(1)", value: "#NAME?" },
        },
      }],
      answers: { "=STAIR.RISERS(B1)": 14 },
    });
    const [says] = await mended(cells, mending);
    expect(says).toBe("3 cells that had lost their function were mended by writing the formula to its own cell.");
    expect(["A1", "A2", "A3", "A4", "A5"].map((address) => book.cell("Mine", address).formula)).toEqual([
      "=STAIR.RISERS(B1)", '=1+STAIR.PITCH(B1,"[2]!_xldudf_STAIR_X(1)")', "=STAIR.PITCH(B1)", "=STAIR.RISERS(0)", "=_xldudf_CONTOSO_ADD(1)",
    ]);
    expect(book.batches).toEqual([["Mine!0,0", "Mine!1,0", "Mine!2,0"]]);
  });

  test("Excel is asked for errors piece by piece, and only those are read", async () => {
    // 30,000 cells in use, of which three are errors: two looks of up to 20,000 cells.
    const { excel: book, cells, mending } = opened({
      sheets: [{ name: "Mine", cells: { A1: unbound, A29999: unbound, A30000: unbound, A2: { value: 3 } } }],
      answers: { "=STAIR.RISERS(108.5)": 14 },
    });
    const read: number[] = [];
    const watched = { ...cells, read: (blocks: Parameters<typeof cells.read>[0]) => {
      read.push(blocks.reduce((sum, { rows, columns }) => sum + rows * columns, 0));
      return cells.read(blocks);
    } };
    expect((await mended(watched, mending))[0]).toBe(
      "3 cells that had lost their function were mended by writing the formula to its own cell.",
    );
    expect(book.looks).toEqual(["Mine!0,0 20000x1", "Mine!20000,0 10000x1"]);
    // Once to find, once to see whether they are bound now.
    expect(read).toEqual([3, 3]);
  });

  test("an Excel that cannot be asked for errors is read through, no more than 500 cells at a time", async () => {
    const { cells } = opened({
      sheets: [{ name: "Mine", cells: { A1: unbound, B700: unbound } }], answers: { "=STAIR.RISERS(108.5)": 14 },
    });
    const { mending } = excelHost((_, version) => version !== "1.9");
    if (mending === undefined) throw new Error("no mending");
    expect(mending.errors).toBeUndefined();
    const read: number[] = [];
    const watched = { ...cells, read: (blocks: Parameters<typeof cells.read>[0]) => {
      read.push(blocks.reduce((sum, { rows, columns }) => sum + rows * columns, 0));
      return cells.read(blocks);
    } };
    expect((await mended(watched, mending))[0]).toMatch(/^2 cells /);
    // 700 rows of 2 columns: 500, 500, 400; then the two again.
    expect(read).toEqual([500, 500, 400, 2]);
  });

  test("a cell that is refused is named, and the others are mended; so it is with one that cannot be read", async () => {
    const many = Object.fromEntries(Array.from({ length: 120 }, (_, row) => [`A${row + 1}`, unbound]));
    const { excel: book, cells, mending } = opened({
      sheets: [
        { name: "Mine", cells: { ...many, A7: { formula: "=STAIR.RISERS(1)", value: "#NAME?" } } },
        { name: "Other", cells: { C4: unbound } },
      ],
      answers: { "=STAIR.RISERS(108.5)": 14 },
      refusesFormula: { "=STAIR.RISERS(1)": "MergedRangeConflict" },
    });
    const stubborn = { ...cells, read: (blocks: Parameters<typeof cells.read>[0]) => {
      if (blocks.some(({ sheet }) => sheet === "Other")) throw new Error("There is too much to read at once.");
      return cells.read(blocks);
    } };
    expect(await mended(stubborn, mending)).toEqual([
      "119 cells that had lost their function were mended by writing the formula to its own cell.",
      "Other C4 was refused: There is too much to read at once.",
      "Mine A7 was refused: Excel refused to write to Mine: a table, merged cells or a pivot table are in the way. Select cells away " +
        "from them.",
    ]);
    expect(book.cell("Mine", "A120").value).toBe(14);
  });

  test("stopped on the way it leaves the rest, says so, and goes on when it is asked again", async () => {
    const many = Object.fromEntries(Array.from({ length: 250 }, (_, row) => [`A${row + 1}`, unbound]));
    const { excel: book, cells, mending } = opened({ sheets: [{ name: "Mine", cells: many }], answers: { "=STAIR.RISERS(108.5)": 14 } });
    const said: string[] = [];
    const lines = await mended(cells, mending, {
      isStopped: () => book.batches.length === 1, say: (text) => void said.push(text),
    });
    expect(lines).toEqual([
      "100 cells that had lost their function were mended by writing the formula to its own cell.",
      "Stopped before the end: the other cells are as they were. Press Mend to go on with them.",
    ]);
    expect(said).toEqual(["Looking through Mine …", "Mending 1 of 250 …"]);
    expect([book.cell("Mine", "A100").value, book.cell("Mine", "A101").value]).toEqual([14, "#NAME?"]);
    expect((await mended(cells, mending))[0]).toMatch(/^150 cells /);
  });
});

describe("why", () => {
  const functions = associated();
  const solve = (id: string, args: readonly unknown[]): unknown => functions.get(id)?.(...args);

  const SENTENCE = 'measure: read "9\' 14"", with 14 inches after the feet; inches after feet stay under 12';

  test("a cell whose message Excel hides says its sentence, and one that reads it says where it begins", async () => {
    const { cells } = opened({
      sheets: [
        { name: "Mine", cells: { A1: { value: "9' 14\"" }, B1: { formula: "=STAIR.TOINCHES(A1)", value: "#VALUE!" } } },
        { name: "Two", cells: { A1: { formula: "=STAIR.TAPE(Mine!B1)", value: "#VALUE!" } } },
      ],
    });
    expect(await why({ sheet: "Mine", ...cellPlace("B1") }, cells, solve)).toBe(`Mine B1 shows #VALUE!: ${SENTENCE}`);
    expect(await why({ sheet: "Two", ...cellPlace("A1") }, cells, solve)).toContain(`It begins at Mine B1: ${SENTENCE}`);
  });

  test("a row of a spill speaks for itself, and a spill is read by its mark", async () => {
    // By hand: two risers of a column of three; the second is text that is no length.
    const { cells } = opened({
      sheets: [{
        name: "Mine",
        cells: {
          A1: { value: "7 5/8" }, A2: { value: "seven" },
          C1: { formula: "=STAIR.TOINCHES(A1:A2)", value: 7.625 }, C2: { value: "#VALUE!" },
          E1: { formula: "=STAIR.TAPE(C1#)", value: '7 5/8"' }, E2: { value: "#VALUE!" },
        },
        spills: { C1: [2, 1], E1: [2, 1] },
      }],
    });
    expect(await why({ sheet: "Mine", ...cellPlace("C2") }, cells, solve)).toMatch(
      /^Mine C2 shows #VALUE!: measure: read "seven", which is not a length/,
    );
    expect(await why({ sheet: "Mine", ...cellPlace("E2") }, cells, solve)).toContain("It begins at Mine C2: ");
  });

  const followed = (isVisible = true) => {
    excel = mockedExcel({ sheets: [{ name: "Mine" }], selected: ["Mine", "A1"] });
    const due: (() => void)[] = [];
    const shown = { isVisible, changed: (): void => undefined };
    const { cells } = excelHost(
      () => true,
      { isVisible: () => shown.isVisible, onChange: (tell) => void (shown.changed = tell) },
      (go) => void due.push(go),
    );
    if (cells === undefined) throw new Error("no cells");
    return { book: excel, cells, due, shown };
  };

  /** What was begun, in turns of the promises it is made of. */
  const done = async (): Promise<void> => new Promise((resolve) => void setImmediate(resolve));

  test("the pane is told when another cell is selected, once for all that comes together", async () => {
    const { book, cells, due } = followed();
    let told = 0;
    await cells.onSelection(() => {
      told += 1;
    });
    // Two sources tell: the selection, and a calculation, which the mock tells of together.
    book.select("Mine", "C8");
    book.select("Mine", "C9");
    expect([told, due.length]).toEqual([0, 1]);
    due.pop()?.();
    expect(told).toBe(1);
    expect(await cells.selected()).toEqual({ sheet: "Mine", row: 8, column: 2 });
    book.select("Mine", "C9");
    expect(due.length).toBe(1);
  });

  test("two parts of the pane are told by the same two handlers", async () => {
    const { book, cells, due } = followed();
    const told: string[] = [];
    await Promise.all([cells.onSelection(() => void told.push("one")), cells.onSelection(() => void told.push("other"))]);
    expect(book.handlers()).toBe(2);
    book.select("Mine", "C9");
    due.pop()?.();
    expect(told).toEqual(["one", "other"]);
  });

  test("behind a closed pane Excel tells nothing: the handlers are removed, and there again with the pane, which is told", async () => {
    const { book, cells, due, shown } = followed();
    let told = 0;
    await cells.onSelection(() => {
      told += 1;
    });
    book.select("Mine", "B2");
    shown.isVisible = false;
    shown.changed();
    await done();
    expect(book.handlers()).toBe(0);
    // What was due when it was closed is of no use any more.
    due.splice(0).forEach((go) => go());
    expect(told).toBe(0);
    shown.isVisible = true;
    shown.changed();
    await done();
    expect(book.handlers()).toBe(2);
    due.splice(0).forEach((go) => go());
    expect(told).toBe(1);
  });

  test("a runtime that a function started without a pane asks for no word at all until there is one", async () => {
    const { book, cells, shown } = followed(false);
    await cells.onSelection(() => undefined);
    expect(book.handlers()).toBe(0);
    shown.isVisible = true;
    shown.changed();
    await done();
    expect(book.handlers()).toBe(2);
  });
});

describe("what Excel refuses is said in plain words:", () => {
  test.each([
    [
      "a protected sheet",
      { sheets: [{ name: "Mine", isProtected: true }] },
      "Excel refused to write to Mine: Mine is protected. Unprotect (Review, Unprotect Sheet), or go to a sheet that is not.",
    ],
    [
      "a cell being edited",
      { sheets: [{ name: "Mine" }], refuses: "InvalidOperationInCellEditMode" },
      "a cell is being edited. Press Enter or Esc in the sheet, then try again.",
    ],
    [
      "another workbook in front",
      { sheets: [{ name: "Mine" }], refuses: "InactiveWorkbook" },
      "another workbook is in front. Click into this workbook and try again.",
    ],
    [
      "a code we do not know",
      { sheets: [{ name: "Mine" }], refuses: "Surprise" },
      "it gave no reason that we know (Surprise). Select an empty cell of a plain sheet and try again.",
    ],
  ] satisfies readonly (readonly [string, MockedWorkbook, string])[])("%s", async (_, workbook, words) => {
    const { cells } = opened({ ...workbook, selected: ["Mine", "A1"] });
    await expect(inserted(declared("PITCH"), cells, yes)).rejects.toThrow(words);
  });

  test("a sheet that went away meanwhile", async () => {
    const { cells } = opened({ sheets: [{ name: "Mine" }] });
    await expect(cells.read([{ sheet: "Gone", row: 0, column: 0, rows: 1, columns: 1 }])).rejects.toThrow(
      "Excel refused to read Gone: the sheet or the cell is not there any more. Select a cell and try again.",
    );
  });
});
