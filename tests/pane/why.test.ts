/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { cellPlace } from "../../src/sheets/cell-address";
import { demo } from "../../src/sheets/demo/demo";
import { standIn } from "../../src/workbook/stand-in";
import type { Workbook } from "../../src/workbook/workbook";
import { why } from "../../src/pane/why";
import { associated } from "../host/stand-in";
import { closeWorkbooks, openedData, openedWorkbook } from "../workbook/opened-workbook";
import { standingHost } from "./standing-host";

afterEach(closeWorkbooks);

const functions = associated();
const solve = (id: string, args: readonly unknown[]): unknown => {
  const found = functions.get(id);
  if (found === undefined) throw standIn().error("#NAME?", `no function ${id}`);
  return found(...args);
};

const whyOf = (workbook: Workbook, sheet: string, address: string): Promise<string | undefined> =>
  why({ sheet, ...cellPlace(address) }, standingHost(workbook, sheet, address).cells, solve);

/** The sentence worked out again is the one the sheet keeps, which came with the error when the sheet called the function. */
const sameAsKept = async (workbook: Workbook, sheet: string, address: string): Promise<string> => {
  const kept = workbook.errorMessage(sheet, address);
  const value = workbook.value(sheet, address);
  if (kept === undefined || typeof value !== "object" || value === null) throw new Error(`${sheet} ${address} is not in error`);
  expect(await whyOf(workbook, sheet, address)).toBe(`${sheet} ${address} shows ${value.error}: ${kept}`);
  return kept;
};

test.each([
  ["a value typed wrong", "=STAIR.TOINCHES(\"9' 14\"\"\")"],
  ["a cell", "=STAIR.TOINCHES(A1)"],
  ["a cell of another sheet", "=STAIR.TOINCHES('Other one'!A1)"],
  ["arithmetic", "=STAIR.RISERS(-(2+A2*3)^1)"],
  ["an argument left out", "=STAIR.RISERS(,A2)"],
  ["a call within a call", "=STAIR.TAPE(STAIR.TOINCHES(A1))"],
  ["a call within a function of the sheet", '=IF(A2=5,STAIR.TOINCHES(A1),"")'],
  ["a constant array", "=STAIR.UNIFORMITY({7.5;-7.5})"],
])("the sentence of %s is worked out again", async (_, formula) => {
  const workbook = await openedWorkbook({
    Mine: { A1: "9' 14\"", A2: 5, C1: "=STAIR.TOINCHES(A1)", B5: formula },
    "Other one": { A1: "7 5/7/8" },
  });
  expect((await sameAsKept(workbook, "Mine", "B5")).length).toBeGreaterThan(0);
});

test("a cell that is in error because of another names the one it begins at", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "9' 14\"", C1: "=STAIR.TOINCHES(A1)", B5: "=STAIR.TAPE(C1)", B6: "=C1*2" } });
  const begins = `begins at Mine C1: ${workbook.errorMessage("Mine", "C1") ?? ""}`;
  expect(await whyOf(workbook, "Mine", "B5")).toBe(`Mine B5 shows #VALUE!: ${workbook.errorMessage("Mine", "B5") ?? ""}. It ${begins}`);
  expect(await whyOf(workbook, "Mine", "B6")).toContain(workbook.errorMessage("Mine", "C1"));
});

test("every error that a bad reading brings to the demo says what the sheet says, spilled rows and far sheets too", async () => {
  const workbook = await openedData({ version: 1, sheets: demo });
  workbook.setCell("Survey", "I8", "9' 14\"");
  workbook.setCell("Fit", "C19", "3' 6' 9");
  await workbook.settled();
  const sentences = new Map<string, string>();
  for (const { name, cells } of demo) {
    for (const [address, { formula }] of Object.entries(cells)) {
      const value = workbook.value(name, address);
      if (formula === undefined || typeof value !== "object" || value === null) continue;
      sentences.set(`${name} ${address}`, (await whyOf(workbook, name, address)) ?? "");
    }
  }
  // The tread thickness reaches FINISHED, LAYOUT and all that reads them.
  expect(sentences.get("Survey C8")).toBe(
    'Survey C8 shows #VALUE!: treadThickness: read "9\' 14"", with 14 inches after the feet; inches after feet stay under 12',
  );
  expect(sentences.get("Layout AA7")).toContain("tread thickness: read \"9' 14\"\"");
  expect(sentences.size).toBeGreaterThan(10);
  // Wherever it shows, what was typed wrong is named.
  expect([...sentences].filter(([, says]) => !says.includes("9' 14") && !says.includes("3' 6' 9"))).toEqual([]);
  // One row of a table is bad, the others answer: the sentence stands in that row's own cell.
  workbook.setCell("Survey", "I8", "1");
  await workbook.settled();
  const row = workbook.spill("Fit", "AA40").findIndex((cells) => typeof cells[1] === "object");
  expect(row).toBe(3);
  const own = await sameAsKept(workbook, "Fit", "AB43");
  expect(own).toContain("3' 6' 9");
});

test("a cell without an error has no sentence", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: 7, B1: "=STAIR.TAPE(A1)" } });
  expect(await whyOf(workbook, "Mine", "A1")).toBeUndefined();
  expect(await whyOf(workbook, "Mine", "B1")).toBeUndefined();
  expect(await whyOf(workbook, "Mine", "Z9")).toBeUndefined();
});

test("an argument that only the sheet works out is named, with what would do", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: 5, B1: "=STAIR.RISERS(-SUM(A1:A3))" } });
  // A host that keeps the sentence with the cell says it; one that does not says what would do.
  expect(await whyOf(workbook, "Mine", "B1")).toBe(`Mine B1 shows #VALUE!: ${workbook.errorMessage("Mine", "B1") ?? ""}`);
  const { cells } = standingHost({ ...workbook, errorMessage: () => undefined }, "Mine", "B1");
  expect(await why({ sheet: "Mine", ...cellPlace("B1") }, cells, solve)).toBe(
    "Mine B1 shows #VALUE!: what the function of STAIR says depends on SUM(A1:A3), which only the sheet works out. Put that into " +
      "a cell of its own and name the cell in the formula; then its sentence stands here.",
  );
});

test.each([
  ["=1/0", "#DIV/0!", "something is divided by 0 or by an empty cell."],
  ["=STAIR.RISRES(108)", "#NAME?", "a name in the formula is unknown here."],
])("an error of the sheet's own, %s, gets plain words", async (formula, code, words) => {
  const workbook = await openedWorkbook({ Mine: { A1: formula } });
  expect(await whyOf(workbook, "Mine", "A1")).toContain(`Mine A1 shows ${code}: ${words}`);
});

test("a spill that is blocked says what to clear", async () => {
  const workbook = await openedWorkbook({ Mine: { A1: "=STAIR.STORYPOLE(31,4)", A3: "mine" } });
  expect(await whyOf(workbook, "Mine", "A1")).toBe(
    "Mine A1 shows #SPILL!: the result does not fit: clear the cells below and to the right that it needs.",
  );
});
