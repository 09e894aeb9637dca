import fc from "fast-check";

const COLUMNS = ["A", "B", "C", "D"];
const ROWS = 12;

const address = fc.tuple(fc.constantFrom(...COLUMNS), fc.integer({ min: 1, max: ROWS })).map(([column, row]) => `${column}${row}`);

/** What is typed: read the same by everyone, so that a plain model can say what is stored. */
const typed = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: -999, max: 9999 }) },
  { weight: 3, arbitrary: fc.constantFrom("red oak", "step one", "note: dry", "x", "Ärger", "it's") },
  { weight: 2, arbitrary: fc.tuple(address, fc.integer({ min: 1, max: 9 })).map(([cell, more]) => `=${cell}+${more}`) },
  { weight: 1, arbitrary: fc.constantFrom("=SUM(A1:C9)", "=SEQUENCE(2,2)", '=IF(A1>5,"over","under")', "=STAIR.RISERS(108)") },
);

/** Typed into a table: no formulas, so that a plain model can sort it. */
const words = ["ash", "maple", "oak"] as const;
const held = fc.oneof({ weight: 2, arbitrary: fc.integer({ min: 0, max: 12 }) }, { weight: 3, arbitrary: fc.constantFrom(...words) });
const column = fc.constantFrom(...COLUMNS);
const row = fc.integer({ min: 1, max: ROWS });
const count = fc.integer({ min: 1, max: 4 });

/** Which of what there is: counted round. */
const which = fc.nat(1000);

/** A step of a random day at the page. */
export const step = fc.oneof(
  { weight: 40, arbitrary: fc.record({ kind: fc.constant("type" as const), which, address, typed }) },
  { weight: 8, arbitrary: fc.record({ kind: fc.constant("clear" as const), which, address }) },
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constant("put" as const), which,
      cells: fc.uniqueArray(fc.tuple(address, fc.integer()), { minLength: 1, maxLength: 6, selector: ([at]) => at }),
    }),
  },
  { weight: 12, arbitrary: fc.record({ kind: fc.constant("undo" as const) }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("add" as const), typed }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("rename" as const), which }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant("remove" as const), which }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("table" as const) }) },
  {
    weight: 12,
    arbitrary: fc.record({
      kind: fc.constant("fill" as const), which,
      cells: fc.uniqueArray(fc.tuple(address, held), { minLength: 1, maxLength: 8, selector: ([at]) => at }),
    }),
  },
  { weight: 7, arbitrary: fc.record({ kind: fc.constant("insert" as const), which, row, count }) },
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("take" as const), which, row, count }) },
  { weight: 10, arbitrary: fc.record({ kind: fc.constant("sort" as const), which, column, isUp: fc.boolean() }) },
  {
    weight: 8,
    arbitrary: fc.record({
      kind: fc.constant("filter" as const), which, column,
      keeps: fc.uniqueArray(fc.constantFrom(...words, "7", "3", ""), { minLength: 1, maxLength: 4 }),
    }),
  },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant("show all" as const), which }) },
  { weight: 8, arbitrary: fc.record({ kind: fc.constant("pause" as const) }) },
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("reload" as const) }) },
  { weight: 6, arbitrary: fc.record({ kind: fc.constant("kill" as const), inTheMiddle: fc.boolean() }) },
);

export type Step = typeof step extends fc.Arbitrary<infer Kind> ? Kind : never;
