/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { linkTarget } from "../../src/workbook/link-target";
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

afterEach(closeWorkbooks);

test.each([
  ["#Survey!A1", { sheet: "Survey", row: 0, column: 0 }],
  ["#'Cut plan'!$B$2:C9", { sheet: "Cut plan", row: 1, column: 1 }],
  ["#'Sam''s'!b7", { sheet: "Sam's", row: 6, column: 1 }],
  ["#gid=sheet-1&range=D9", { sheet: undefined, sheetId: "sheet-1", row: 8, column: 3 }],
  ["#AA10", { sheet: undefined, row: 9, column: 26 }],
  ["https://example.com/#A1", undefined],
  ["#Survey", undefined],
])("%s leads to its place", (link, place) => {
  expect(linkTarget(link)).toEqual(place);
});

test("a link's value is its text, for the page, for native functions and for ours", async () => {
  const book = await openedWorkbook({
    Job: {
      A1: '=HYPERLINK("#Survey!A1","7 5/8")', A2: '=A1&"!"', A3: "=LEN(A1)", A4: "=STAIR.TOINCHES(A1)", A5: '=COUNTIF(A1:A1,"7 5/8")',
      B1: '=VSTACK(HYPERLINK("#A1","up"),"x")', B4: '=B1&B2',
    },
  });
  const values = ["A1", "A2", "A3", "A4", "A5", "B1", "B2", "B4"].map((at) => book.value("Job", at));
  // By hand: five characters; seven inches and five eighths.
  expect(values).toEqual(["7 5/8", "7 5/8!", 5, 7.625, 1, "up", "x", "upx"]);
  expect(book.shown("Job", "A1")).toBe("7 5/8");
});

test("IMAGE refuses every address by a sentence, and takes a picture that is in the formula", async () => {
  const inFormula = "data:image/gif;base64,R0lGODlhAQABAAAAACw=";
  const book = await openedWorkbook({
    Job: { A1: '=IMAGE("https://example.com/a.png")', B1: "=IMAGE(C1:C2)", C1: inFormula, C2: "http://example.com/b.png" },
  });
  expect(["A1", "B2"].map((at) => book.value("Job", at))).toEqual([{ error: "#VALUE!" }, { error: "#VALUE!" }]);
  expect(book.errorMessage("Job", "A1")).toBe("IMAGE: pictures are not fetched from the net here; link to it with HYPERLINK");
  expect(book.value("Job", "B1")).not.toEqual({ error: "#VALUE!" });
});
