import { mayBeGuarded, refusal, type Where } from "../../src/excel/refusal";

const open: Where = { asked: "to write to Mine", protectedSheets: [], isReadOnly: false };

test("a workbook open for reading is told from a protected sheet", () => {
  const error = { code: "AccessDenied" };
  expect(mayBeGuarded(error)).toBe(true);
  expect(refusal(error, { ...open, isReadOnly: true })).toBe(
    "Excel refused to write to Mine: the workbook is open for reading only. Save a copy or choose Edit, and try again.",
  );
  expect(refusal(error, { ...open, protectedSheets: ["Mine", "Two"] })).toContain("Mine, Two are protected.");
  expect(refusal(error, open)).toContain("protected or open for reading only");
});

// Codes of the two tables in application-specific-api-error-handling.md that a pane may meet when it reads and writes cells.
test.each([
  "InvalidOperationInCellEditMode",
  "InactiveWorkbook",
  "ItemNotFound",
  "ItemAlreadyExists",
  "InvalidReference",
  "InvalidSelection",
  "MergedRangeConflict",
  "FilteredRangeConflict",
  "PivotTableRangeConflict",
  "UnsupportedSheet",
  "RangeExceedsLimit",
  "OperationCellsExceedLimit",
  "RequestPayloadSizeLimitExceeded",
  "ResponsePayloadSizeLimitExceeded",
  "FormulaLengthExceedsLimit",
  "ActivityLimitReached",
  "MemoryLimitReached",
  "RequestAborted",
  "Conflict",
  "ServiceNotAvailable",
  "ApiNotFound",
  "NotImplemented",
  "UnsupportedOperation",
])("%s has words of its own, without its code, and says what would do", (code) => {
  const says = refusal({ code, message: "not for users" }, open);
  expect(says).not.toContain(code);
  expect(says).not.toContain("not for users");
  // A reason, then what to do: two sentences.
  expect(says).toMatch(/^Excel refused to write to Mine: [^.]+\. [A-Z][^.]+\.$/);
});

test("what is no refusal of Excel's keeps its own words", () => {
  expect(refusal(new Error("out of order"), open)).toContain("(out of order)");
});
