/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { closeWorkbooks, dataOf, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

test("formulas of the built functions and native ones work on inputs of another sheet, and follow them", async () => {
  const book = await openedWorkbook({
    Survey: { A1: "total rise", B1: 108, A2: "risers", B2: 14 },
    Layout: {
      A1: "=Survey!B1/Survey!B2",
      A2: "=STAIR.RISERS(Survey!B1)",
      A3: '=IF(A2=Survey!B2,"as asked","other")',
      A4: "=STAIR.PITCH(Survey!B1,140)",
    },
  });
  // Hand: 108 / 14 = 7.714285714; 108 / 7.75 = 13.9, so 14 risers is the fewest; atan(108 / 140) = 37.6476 degrees.
  expect(book.value("Layout", "A1")).toBeCloseTo(108 / 14, 9);
  expect(book.value("Layout", "A2")).toBe(14);
  expect(book.value("Layout", "A3")).toBe("as asked");
  expect(book.value("Layout", "A4")).toBeCloseTo((Math.atan(108 / 140) * 180) / Math.PI, 9);

  book.setCell("Survey", "B1", "116");
  await book.settled();
  // Hand: 116 / 7.75 = 14.97, so 15.
  expect(book.value("Layout", "A2")).toBe(15);
  expect(book.value("Layout", "A3")).toBe("other");
});

test("an error cell has its code and the sentence of the function, and loses both when the input is put right", async () => {
  const book = await openedWorkbook({ Bench: { A1: "9' 14\"", B1: "=STAIR.TOINCHES(A1)", C1: "=B1+1", D1: "=1/0" } });
  expect(book.value("Bench", "B1")).toEqual({ error: "#VALUE!" });
  expect(book.errorMessage("Bench", "B1")).toContain("14 inches after the feet");
  expect(book.value("Bench", "C1")).toEqual({ error: "#VALUE!" });
  expect(book.value("Bench", "D1")).toEqual({ error: "#DIV/0!" });
  expect(book.errorMessage("Bench", "D1")).toBeUndefined();
  expect(book.errorMessage("Bench", "A1")).toBeUndefined();

  book.setCell("Bench", "A1", "9' 1 1/2\"");
  await book.settled();
  // Hand: 9 x 12 + 1.5 = 109.5.
  expect(book.value("Bench", "B1")).toBe(109.5);
  expect(book.errorMessage("Bench", "B1")).toBeUndefined();
});

test("an error of another kind in the same cell does not inherit the sentence of the one before", async () => {
  const book = await openedWorkbook({ Bench: { B1: "=STAIR.TOINCHES(\"9' 14\")" } });
  expect(book.errorMessage("Bench", "B1")).toContain("14");
  book.setCell("Bench", "B1", "=VALUE(\"plumb\")");
  await book.settled();
  expect(book.value("Bench", "B1")).toEqual({ error: "#VALUE!" });
  expect(book.errorMessage("Bench", "B1")).toBeUndefined();
});

test("an argument that is missing is named, and IFERROR catches an error", async () => {
  const book = await openedWorkbook({ Bench: { A1: "=STAIR.PITCH(7)", A2: '=IFERROR(STAIR.PITCH(7),"no run")', A3: "=stair.pitch(7,7)" } });
  expect(book.errorMessage("Bench", "A1")).toMatch(/^run: is missing/);
  expect(book.value("Bench", "A2")).toBe("no run");
  // Hand: as far up as along is 45 degrees.
  expect(book.value("Bench", "A3")).toBeCloseTo(45, 9);
});

test("1/2 typed into a yellow cell formatted beforehand stays a half, and so it does in one of decimals or of nothing", async () => {
  const book = await openedWorkbook({
    Bench: {
      A1: { value: 7.625, format: "# ??/16", style: "input" },
      A2: { format: "# ??/16", style: "input" },
      A3: { format: "0.000", style: "input" },
      A4: { style: "input" },
      B1: "=STAIR.TOINCHES(A1)+STAIR.TOINCHES(A2)+STAIR.TOINCHES(A3)+STAIR.TOINCHES(A4)",
    },
  });
  const cells = ["A1", "A2", "A3", "A4"];
  for (const cell of cells) book.setCell("Bench", cell, "1/2");
  await book.settled();
  expect(cells.map((cell) => [book.value("Bench", cell), book.shown("Bench", cell)])).toEqual([
    [0.5, "1/2"], [0.5, "1/2"], [0.5, "0.500"], [0.5, "1/2"],
  ]);
  expect(cells.map((cell) => book.stored("Bench", cell)?.style)).toEqual(cells.map(() => "input"));
  // By hand: four halves.
  expect(book.value("Bench", "B1")).toBe(2);
});

test("text stays text: loaded, typed and worked out", async () => {
  const book = await openedWorkbook({
    Bench: {
      A1: "1/2",
      A2: "12",
      A3: { format: "@" },
      A4: { format: "# ?/16" },
      A5: "7-5/8",
      B1: "=ISTEXT(A1)",
      B2: "=ISTEXT(A2)",
      B3: "=ISTEXT(A3)",
      B4: "=A4*2",
      B5: "=STAIR.TOINCHES(A5)",
    },
  });
  book.setCell("Bench", "A3", "1/2");
  book.setCell("Bench", "A4", "7-5/8");
  book.setCell("Bench", "A6", "5/4");
  await book.settled();
  expect(["A1", "A2", "A3", "A5", "A6"].map((cell) => book.value("Bench", cell))).toEqual(["1/2", "12", "1/2", "7-5/8", "5/4"]);
  expect(["B1", "B2", "B3"].map((cell) => book.value("Bench", cell))).toEqual([true, true, true]);
  // Hand: 7 5/8 = 7.625, doubled 15.25.
  expect(book.value("Bench", "A4")).toBe(7.625);
  expect(book.value("Bench", "B4")).toBe(15.25);
  expect(book.value("Bench", "B5")).toBe(7.625);
});

test("text within a formula stays text, given to our functions and handed on by native ones", async () => {
  const book = await openedWorkbook({
    Bench: {
      A1: '=STAIR.TOINCHES("1/2")',
      A2: '=IF(TRUE,"1/2","3/4")',
      A3: '=STAIR.TOINCHES(IF(FALSE,"1/2","3/4"))',
      A4: '=IFERROR(1/0,"7-5/8")',
      A5: '=LET(cut,"1/2",cut)',
      A6: '=CHOOSE(2,"1/2","3-4")',
      A7: '=STAIR.TOINCHES({"1/2","3/4"})',
      A8: '="1/2"',
      A9: '=ISTEXT("1/2")',
      D1: "1/4",
      E1: 3,
      D2: "1/2",
      E2: 5,
      A10: '=VLOOKUP("1/2",D1:E2,2,FALSE)',
      A11: '=XLOOKUP("1/2",D1:D2,E1:E2)',
      A12: '=MATCH("1/4",D1:D2,0)',
      A13: '=SWITCH("1/2","1/4","thin","1/2","thick")',
      A14: "=FILTER(D1:D2,E1:E2>4)",
      A15: '=LEN("1/2")',
    },
  });
  // Hand: 1/2 = 0.5, 3/4 = 0.75.
  expect(Array.from({ length: 15 }, (_, row) => book.value("Bench", `A${row + 1}`))).toEqual([
    0.5,
    "1/2",
    0.75,
    "7-5/8",
    "1/2",
    "3-4",
    0.5,
    "1/2",
    true,
    5,
    5,
    1,
    "thick",
    "1/2",
    3,
  ]);
  expect(book.value("Bench", "B7")).toBe(0.75);
});

test("a size that rounds up to the next whole is shown as the whole, in a cell and by TEXT, spilled or not", async () => {
  const sixteenths = { format: "# ?/16" };
  const book = await openedWorkbook({
    Bench: {
      A1: { value: 7.99, ...sixteenths },
      A2: { value: 7.96, ...sixteenths },
      A3: { value: 7.96875, format: "# ??/32" },
      A4: '=TEXT(7.99,"# ?/16")',
      A5: { formula: "=A1+1", ...sixteenths },
      B1: { formula: "=A1:A2", ...sixteenths },
      B2: sixteenths,
    },
  });
  // Hand: 7.99 x 16 = 127.84, so 128/16 = 8; 7.96 x 16 = 127.36, so 127/16 = 7 15/16; 7.96875 = 7 31/32.
  expect(["A1", "A2", "A3", "A4", "A5", "B1", "B2"].map((cell) => book.shown("Bench", cell).trim())).toEqual([
    "8",
    "7 15/16",
    "7 31/32",
    "8",
    "9",
    "8",
    "7 15/16",
  ]);
  expect(book.value("Bench", "A1")).toBe(7.99);
  expect(book.value("Bench", "B2")).toBe(7.96);
});

test("a copy takes spilled cells along as they are shown", async () => {
  const book = await openedWorkbook({
    Bench: { A1: { formula: "=SEQUENCE(2,2,7.5,0.25)", format: "# ?/16" }, B1: { format: "# ?/16" }, A2: { format: "0.00" }, C1: "end" },
  });
  // Hand: 7.5, 7.75, 8, 8.25.
  expect(
    book
      .copied("Bench", "A1", "C2")
      .split("\n")
      .map((line) => line.split("\t").map((text) => text.trim())),
  ).toEqual([
    ["7 1/2", "7 3/4", "end"],
    ["8.00", "8.25", ""],
  ]);
});

test("the workbook gives back what was put into it, and nothing it worked out", async () => {
  const data = {
    version: 1 as const,
    sheets: [
      {
        name: "Survey",
        cells: {
          A1: { value: "Total rise", style: "heading" as const },
          B1: { value: 105.875, format: "# ?/16", style: "input" as const },
          B2: { value: "12" },
          B3: { value: "1/2", format: "@" },
          B4: { value: true },
          B5: { format: "0.00", style: "total" as const },
          C1: { formula: "=STAIR.STORYPOLE(B1,14)" },
          J1: { formula: "=SUM(C1#)", format: "0.00" },
        },
        columnWidths: { A: 140, J: 90 },
        frozenRows: 2,
      },
      { name: "Second sheet", cells: {} },
    ],
  };
  const book = await openedWorkbook({ Empty: {} });
  book.load(data);
  await book.settled();
  expect(book.spill("Survey", "C1")).toHaveLength(15);
  expect(book.data()).toEqual(data);

  book.load(dataOf({ Other: { A1: 1 } }));
  await book.settled();
  expect(book.data()).toEqual(dataOf({ Other: { A1: 1 } }));
});

test("clearing a cell leaves its looks", async () => {
  const book = await openedWorkbook({ Bench: { A1: { value: 10, format: "# ?/16", style: "input" }, B1: "=ISBLANK(A1)" } });
  book.setCell("Bench", "A1", "");
  await book.settled();
  expect(book.value("Bench", "A1")).toBeNull();
  expect(book.value("Bench", "B1")).toBe(true);
  expect(book.data().sheets[0]?.cells["A1"]).toEqual({ format: "# ?/16", style: "input" });
});

test("a sheet or a cell that is not there is named", async () => {
  const book = await openedWorkbook({ Bench: { A1: 1 } });
  expect(() => book.value("Shelf", "A1")).toThrow('sheet: there is no "Shelf"; there are Bench');
  expect(() => book.setCell("Bench", "A", 1)).toThrow('address: must be one cell such as B7, got "A"');
});

test("a formula with names of its own comes out right in the next workbook that has the same one", async () => {
  const formula = "=LET(n,COUNTA(B1:B5),SUM(TAKE(B1:B5,n)))";
  const workbook = await openedWorkbook({ A: { B1: 1, B2: 2, D1: formula } });
  expect(workbook.value("A", "D1")).toBe(3);
  const cells = { B1: { value: 10 }, B2: { value: 20 }, B3: { value: 30 }, D1: { formula } };
  workbook.load({ version: 1, sheets: [{ name: "A", cells }] });
  await workbook.settled();
  expect(workbook.value("A", "D1")).toBe(60);
});
