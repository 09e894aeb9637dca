/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { builtFunctions, closeWorkbooks, openedWorkbook, ownFunctions } from "./opened-workbook";

afterEach(closeWorkbooks);

test("the cells come from the built file alone: another file, other values", async () => {
  const built = builtFunctions();
  const before = await openedWorkbook({ Bench: { A1: "=STAIR.PITCH(7,7)" } }, built);
  const altered = { ...built, bundle: `${built.bundle}\nCustomFunctions.associate("PITCH", () => "altered");` };
  const after = await openedWorkbook({ Bench: { A1: "=STAIR.PITCH(7,7)" } }, altered);
  expect(before.value("Bench", "A1")).toBeCloseTo(45, 9);
  expect(after.value("Bench", "A1")).toBe("altered");
});

test("a function that is described but not built is named", async () => {
  const { bundle, metadata } = ownFunctions({ SHAPE: "() => 1" });
  const more = { functions: [...metadata.functions, { id: "LOST", name: "LOST", parameters: [] }] };
  await expect(openedWorkbook({ Bench: {} }, { bundle, metadata: more })).rejects.toThrow(
    "functions.json describes LOST, but the built functions do not associate it",
  );
});

test("text a function answers stays text, whatever it looks like", async () => {
  const texts = ["1/2", "12", "3-4", "007", "TRUE", "=1+1", "1e3", ""];
  const book = await openedWorkbook(
    { Bench: { A1: "=STAIR.TEXTS()", B1: "=STAIR.HALF()", C1: "=ISTEXT(B1)", D1: "=STAIR.HALF()&\" in.\"", E1: "=ISTEXT(A2)" } },
    ownFunctions({ TEXTS: `() => ${JSON.stringify(texts)}.map((text) => [text])`, HALF: '() => "1/2"' }),
  );
  expect(book.spill("Bench", "A1")).toEqual(texts.map((text) => [text]));
  expect(book.value("Bench", "B1")).toBe("1/2");
  expect(book.value("Bench", "C1")).toBe(true);
  expect(book.value("Bench", "D1")).toBe("1/2 in.");
  expect(book.value("Bench", "E1")).toBe(true);
});

test("whatever a function throws ends in its cell and nowhere else", async () => {
  const book = await openedWorkbook(
    {
      Bench: {
        A1: "=STAIR.COARSE()",
        A2: "=STAIR.WORDS()",
        A3: "=STAIR.MISSING()",
        A4: "=STAIR.NOTHING()",
        A5: "=STAIR.STRANGE()",
        A6: "=1+1",
      },
    },
    ownFunctions({
      COARSE: '() => { throw new Error("it broke"); }',
      WORDS: '() => { throw "plain words"; }',
      MISSING: '() => { throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "not on the list"); }',
      NOTHING: "() => { throw undefined; }",
      STRANGE: '() => { throw new CustomFunctions.Error("#PLUMB!", "no such code"); }',
    }),
  );
  expect(["A1", "A2", "A3", "A4", "A5", "A6"].map((cell) => book.value("Bench", cell))).toEqual([
    { error: "#VALUE!" },
    { error: "#VALUE!" },
    { error: "#N/A" },
    { error: "#VALUE!" },
    { error: "#VALUE!" },
    2,
  ]);
  expect(["A1", "A2", "A3", "A5"].map((cell) => book.errorMessage("Bench", cell))).toEqual([
    "it broke",
    "plain words",
    "not on the list",
    "no such code",
  ]);
});

const TELL =
  `(given) => JSON.stringify(given, (_, cell) => cell instanceof CustomFunctions.Error ? { code: ` +
  `cell.code, message: cell.message } : cell)`;

test("a range arrives as rows of values, null where a cell is empty, an error with its code and sentence", async () => {
  const book = await openedWorkbook(
    {
      Bench: {
        A1: 7.5,
        B1: "1/2",
        A2: true,
        A3: "=1/0",
        B3: "=STAIR.FAIL()",
        D1: "=STAIR.TELL(A1:B3)",
        D2: "=STAIR.TELL(C9)",
        D3: '=STAIR.TELL({1,"a";2,"b"})',
        D4: "=STAIR.TELL(4)",
        D5: "=STAIR.TELL()",
      },
    },
    ownFunctions({ TELL, FAIL: '() => { throw new CustomFunctions.Error("#N/A", "no stock"); }' }, "TELL"),
  );
  const told = ["D1", "D2", "D3", "D4", "D5"].map((cell) => JSON.parse(String(book.value("Bench", cell))) as unknown);
  expect(told).toEqual([
    [[7.5, "1/2"], [true, null], [{ code: "#DIV/0!", message: "#DIV/0!" }, { code: "#N/A", message: "no stock" }]],
    [[null]],
    [[1, "a"], [2, "b"]],
    [[4]],
    null,
  ]);
});

test("one value arrives as itself, null where it was left out or its cell is empty", async () => {
  const book = await openedWorkbook(
    {
      Bench: {
        A1: 7.5,
        B1: "=STAIR.TELL(A1)",
        B2: "=STAIR.TELL(Z9)",
        B3: "=STAIR.TELL(,2)",
        B4: '=STAIR.TELL("1/2")',
        B5: "=STAIR.TELL(NA())",
      },
    },
    ownFunctions({ TELL: `(...given) => (${TELL})(given)` }),
  );
  expect(["B1", "B2", "B3", "B4", "B5"].map((cell) => JSON.parse(String(book.value("Bench", cell))) as unknown)).toEqual([
    [7.5, null],
    [null, null],
    [null, 2],
    ["1/2", null],
    [{ code: "#N/A", message: "#N/A" }, null],
  ]);
});

test("a range where one value is asked for is answered value by value, as in Excel", async () => {
  const book = await openedWorkbook(
    { Bench: { A1: 1, A2: 2, A3: -3, B1: "=STAIR.ROOT(A1:A3,10)" } },
    ownFunctions({ ROOT: '(a, b) => { if (a < 0) throw new CustomFunctions.Error("#VALUE!", "below 0"); return a * b; }' }),
  );
  // Hand: 1 x 10, 2 x 10, refused.
  expect(book.spill("Bench", "B1")).toEqual([[10], [20], [{ error: "#VALUE!" }]]);
  expect(book.errorMessage("Bench", "B3")).toBe("below 0");
});

test("errors inside a table spill each into its own cell with its sentence, and ragged rows are filled", async () => {
  const book = await openedWorkbook(
    { Bench: { A1: "=STAIR.TABLE()", E1: "=TRANSPOSE(STAIR.TABLE())" } },
    ownFunctions({ TABLE: '() => [["piece", "length"], [1, new CustomFunctions.Error("#N/A", "too long")], [2]]' }),
  );
  expect(book.spill("Bench", "A1")).toEqual([["piece", "length"], [1, { error: "#N/A" }], [2, ""]]);
  expect(book.errorMessage("Bench", "B2")).toBe("too long");
  expect(book.errorMessage("Bench", "F2")).toBe("too long");
});

test("a number that is none is an error, not a value", async () => {
  const book = await openedWorkbook(
    { Bench: { A1: "=STAIR.NONE()", A2: "=STAIR.EMPTY()" } },
    ownFunctions({ NONE: "() => NaN", EMPTY: "() => []" }),
  );
  expect(book.value("Bench", "A1")).toEqual({ error: "#NUM!" });
  expect(book.value("Bench", "A2")).toEqual({ error: "#VALUE!" });
  expect(book.errorMessage("Bench", "A2")).toBe("the function gave an empty table");
});

test("the built functions run without a page, a disk and a network", async () => {
  const book = await openedWorkbook(
    { Bench: { A1: "=STAIR.WORLD()" } },
    ownFunctions({ WORLD: '() => [typeof process, typeof require, typeof document, typeof fetch, typeof setTimeout].join(" ")' }),
  );
  expect(book.value("Bench", "A1")).toBe("undefined undefined undefined undefined undefined");
});
