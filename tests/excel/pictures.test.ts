import { excelHost } from "../../src/excel/excel-host";
import type { Picture } from "../../src/pane/host";
import { placedDrawing } from "../../src/pane/placed-drawing";
import { type MockedExcel, mockedExcel, type MockedWorkbook } from "./mocked-excel";

let excel: MockedExcel | undefined;

afterEach(() => excel?.restore());

const opened = (workbook: MockedWorkbook) => {
  excel = mockedExcel(workbook);
  const { drawings, cells } = excelHost(() => true);
  if (drawings?.place === undefined || cells === undefined) throw new Error("a part of the host is missing");
  return { excel, place: drawings.place, cells };
};

/** The first eight bytes of every PNG, in Base64: PNG specification, 5.2. */
const PNG = "iVBORw0KGgo=";

const svg = (height: number): string =>
  `<svg class="draft" role="img" aria-label="A stair of 14 rises, 7 5/8&quot; each." width="127mm" height="${height}mm"></svg>`;
const drawings = [{ name: "elevation", title: "Stair elevation", svg: svg(25.4) }, { name: "stringer", title: "Stringer", svg: svg(50.8) }];
const toPng = async (): Promise<string> => PNG;

const layout: MockedWorkbook = { sheets: [{
  name: "Mine", spills: { D2: [5, 3] }, cells: { D2: { formula: "=STAIR.LAYOUT(A1:B3)", value: "label" }, E4: { value: 7 } },
}] };
const E4 = { sheet: "Mine", row: 3, column: 4 };

const placedAt = async (book: ReturnType<typeof opened>, which: number, at = E4): Promise<string> =>
  book.place(await placedDrawing(at, drawings, which, book.cells, toPng));

test("a drawing stands at the right of the table whichever of its cells is selected, named and said in words", async () => {
  const book = opened(layout);
  expect(await placedAt(book, 0)).toBe("Placed on Mine: Treadsheet D2 elevation.");
  // By hand: column G is the seventh, 6 x 48 points from the left, and 12 of room; row 2 is 15 down; 127 mm are 5 in, 25.4 mm are 1 in.
  expect(book.excel.shapes("Mine")).toEqual([{
    name: "Treadsheet D2 elevation", png: PNG, altTextDescription: 'A stair of 14 rises, 7 5/8" each.', left: 300, top: 15, width: 360,
    height: 72, lockAspectRatio: true, placement: "OneCell",
  }]);
});

test("the drawings of one table stand one under another", async () => {
  const book = opened(layout);
  await placedAt(book, 1);
  await placedAt(book, 0);
  // By hand: an inch of elevation and 12 points below the row's 15.
  expect(book.excel.shapes("Mine").map(({ name, top }) => [name, top])).toEqual([
    ["Treadsheet D2 stringer", 99], ["Treadsheet D2 elevation", 15],
  ]);
});

test("placed again it takes the place of the one before, where somebody has moved that, and leaves other pictures", async () => {
  const book = opened(layout);
  await placedAt(book, 0);
  await Excel.run(async (context) => {
    const { shapes } = context.workbook.worksheets.getItem("Mine");
    shapes.addImage(PNG).name = "of the client";
    shapes.load("items/name");
    await context.sync();
    const [first] = shapes.items;
    if (first !== undefined) first.left = 20;
    await context.sync();
  });
  expect(await placedAt(book, 0, { sheet: "Mine", row: 1, column: 3 })).toBe("Placed anew on Mine: Treadsheet D2 elevation.");
  expect(book.excel.shapes("Mine").map(({ name, left, top }) => [name, left, top])).toEqual([
    ["of the client", 0, 0], ["Treadsheet D2 elevation", 20, 15],
  ]);
});

test("a typed table is what is filled about the cell", async () => {
  const cells = { B2: { value: "total rise" }, C2: { value: 98 }, B3: { value: "run" }, C3: { value: 10 }, E2: { value: "other" } };
  const book = opened({ sheets: [{ name: "Mine", cells }] });
  const picture = await placedDrawing({ sheet: "Mine", row: 2, column: 2 }, drawings, 0, book.cells, toPng);
  expect(picture).toMatchObject({
    name: "Treadsheet B2 elevation", beside: { sheet: "Mine", row: 1, column: 1, rows: 2, columns: 2 }, down: 0,
  } satisfies Partial<Picture>);
});

test("a protected sheet refuses it in a sentence", async () => {
  const book = opened({ sheets: [{ ...layout.sheets[0], name: "Mine", isProtected: true }] });
  await expect(placedAt(book, 0)).rejects.toThrow(
    "Excel refused to place a picture on Mine: Mine is protected. Unprotect (Review, Unprotect Sheet), or go to a sheet that is not.",
  );
  expect(book.excel.shapes("Mine")).toEqual([]);
});

test("an Excel without it says so and offers no picture", () => {
  const upTo = (newest: number) => (_set: string, version: string): boolean => Number(version.split(".")[1]) <= newest;
  expect(excelHost(upTo(10)).drawings?.place).toBeDefined();
  const { drawings: none, lacks } = excelHost(upTo(9));
  expect(none).toBeUndefined();
  expect(lacks).toContain(
    "Drawings are not placed as pictures. This Excel is too old for it: update Excel to one with ExcelApi 1.10.",
  );
});
