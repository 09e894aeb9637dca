import { type MergedStep, mergedReadings, type SheetCell, type SheetReadings, type SheetRow } from "../../src/readings/merged-readings";
import type { ReadingSet } from "../../src/readings/reading-set";

const typed = (value: SheetCell["value"]): SheetCell => ({ value, isFormula: false });
const HEADINGS = ["run", "back", "front", "diagonal", "secondDiagonal"] as const;

const row = (step: SheetRow["step"], ...values: readonly SheetCell["value"][]): SheetRow => ({
  step, cells: Object.fromEntries(HEADINGS.map((heading, place) => [heading, typed(values[place] ?? null)])),
});

const sheet = (treads: readonly SheetRow[], unit: "in" | "mm" = "in"): SheetReadings => ({ name: "Fit", unit, parts: { treads } });

const set = (step: number, read: Readonly<Record<string, number>>, unit: "in" | "mm" = "in"): ReadingSet => ({
  job: "Invented", unit, tape: unit === "in" ? 16 : 1, taken: "2026-03-04", treads: [{ step, read, kept: false }], risers: [],
});

const merged = (rows: readonly SheetRow[], read: ReadingSet): readonly MergedStep[] => {
  const found = mergedReadings(sheet(rows, read.unit), read);
  if ("says" in found) throw new Error(found.says);
  return found;
};

const readingOf = (rows: readonly SheetRow[], read: ReadingSet, heading: string) =>
  merged(rows, read)[0]?.readings.find((one) => one.heading === heading);

test("a reading that the sheet has already is the same, as a number or as text", () => {
  expect(readingOf([row(4, 10, 36.625)], set(4, { back: 36.625 }), "back")).toMatchObject({ becomes: "same" });
  // 3 ft = 36 in.
  expect(readingOf([row(4, 10, "3' 0 5/8\"")], set(4, { back: 36.625 }), "back")).toMatchObject({ becomes: "same" });
});

test("a reading for an empty cell is new", () => {
  expect(readingOf([row(4)], set(4, { back: 36.625 }), "back")).toMatchObject({ becomes: "new", was: "", now: "36 5/8" });
  expect(readingOf([row(4, 10, " ")], set(4, { back: 36.625 }), "back")).toMatchObject({ becomes: "new" });
});

// By hand: 36 3/4 - 36 5/8 = 1/8; 36 21/32 - 36 3/4 = -3/32; 36.75 - 36.7 = 0.05.
test.each([
  [36.625, 36.75, "36 5/8", "36 3/4", "1/8 longer"],
  [36.75, 36.65625, "36 3/4", "36 21/32", "3/32 shorter"],
  [36.7, 36.75, "36.7", "36 3/4", "0.05 longer"],
])("%p in the sheet and %p read: by how much, in words", (had, read, was, now, says) => {
  expect(readingOf([row(4, 10, had)], set(4, { back: read }), "back")).toMatchObject({ becomes: "differs", was, now, says });
});

test("millimetres say so", () => {
  expect(readingOf([row(4, 254, 930)], set(4, { back: 928.5 }, "mm"), "back"))
    .toMatchObject({ becomes: "differs", was: "930", now: "928.5", says: "1.5 mm shorter" });
});

test("a riser is higher or lower", () => {
  const read: ReadingSet = { ...set(1, {}), treads: [], risers: [{ step: 1, read: { height: 7.5 }, kept: false }] };
  const found = mergedReadings({ name: "Fit", unit: "in", parts: { risers: [{ step: 1, cells: { height: typed(7.625) } }] } }, read);
  // By hand: 7 5/8 - 7 1/2 = 1/8.
  expect(found).toMatchObject([{ part: "risers", readings: [{ says: "1/8 lower" }] }]);
});

test("a text that is no length is replaced, and shown", () => {
  expect(readingOf([row(4, 10, "not taken")], set(4, { back: 36.5 }), "back"))
    .toMatchObject({ becomes: "differs", was: "not taken", says: "no length in the sheet" });
});

test("a cell with a formula stays, and a cell without a column too", () => {
  const rows: readonly SheetRow[] = [{ step: 4, cells: { back: { value: 36.5, isFormula: true } } }];
  expect(readingOf(rows, set(4, { back: 36.625 }), "back"))
    .toMatchObject({ becomes: "stays", was: "36 1/2", says: "1/8 longer; the sheet has a formula, which stays" });
  expect(readingOf(rows, set(4, { back: 36.5 }), "back")).toMatchObject({ becomes: "same" });
  expect(readingOf(rows, set(4, { front: 36.5 }), "front")).toMatchObject({ becomes: "stays", says: "no such column in the sheet" });
});

test("a step without a row goes into the free row below all that is used", () => {
  const rows = [row(1, 10, 36), row(null), row(2, 10, 36), row(null), row(null)];
  expect(merged(rows, set(7, { back: 36 }))).toMatchObject([{ step: 7, row: 3, isAppended: true, readings: [{ becomes: "new" }] }]);
});

test("two steps without rows do not meet, and the one for which there is no room says so", () => {
  const two: ReadingSet = {
    ...set(7, {}), treads: [7, 8].map((step) => ({ step, read: { back: 36 }, kept: false })),
  };
  expect(merged([row(1, 10, 36), row(null)], two)).toMatchObject([
    { step: 7, row: 1 },
    {
      step: 8, row: undefined,
      readings: [{ becomes: "stays", says: "has no row in the sheet; insert one in the table and write the step in it" }],
    },
  ]);
});

test("a row with a reading and no step is not free", () => {
  expect(merged([row(null, 10, 36)], set(7, { back: 36 }))).toMatchObject([{ row: undefined }]);
});

test("a step that stands twice in the sheet stays as it is", () => {
  expect(merged([row(4, 10, 36), row("4", 10, 37)], set(4, { back: 38 })))
    .toMatchObject([{ row: undefined, readings: [{ becomes: "stays", says: "stands in two rows of the sheet; leave one of them out" }] }]);
});

test("a landing's piece, which has a name for its step, is no step of the set", () => {
  expect(merged([row("landing", 10, 36), row(4)], set(4, { back: 38 }))).toMatchObject([{ row: 1, isAppended: false }]);
});

test("what was kept although it did not close stays named so", () => {
  const kept: ReadingSet = { ...set(4, {}), treads: [{ step: 4, read: { back: 36 }, kept: true }] };
  expect(merged([row(4)], kept)).toMatchObject([{ kept: true }]);
});

test("risers for a sheet that has treads alone are said", () => {
  const read: ReadingSet = { ...set(4, {}), treads: [], risers: [{ step: 2, read: { top: 36 }, kept: false }] };
  expect(merged([row(4)], read))
    .toMatchObject([{ readings: [{ becomes: "stays", says: "is of risers, and the sheet has no table of them" }] }]);
});

test("a set in the other unit is refused, and so is a sheet that does not say its own", () => {
  expect(mergedReadings(sheet([row(4)], "mm"), set(4, { back: 36 }))).toEqual({
    says:
      "The readings are in inches and Fit is in millimetres: a reading stays as the tape gave it, so choose a stair in inches or read " +
      "again.",
  });
  expect(mergedReadings({ ...sheet([row(4)]), unit: undefined }, set(4, { back: 36 }))).toEqual({
    says: 'Fit does not say its unit; write "Treads as taped, in" or "Treads as taped, mm" above its treads.',
  });
});
