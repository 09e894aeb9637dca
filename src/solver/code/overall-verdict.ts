import type { CheckRow, Verdict } from "./check";

/** A limit by its name and clause. */
export interface LimitOfCode {
  readonly item: string;
  readonly clause: string;
}

/** What a whole check comes to. */
export interface OverallVerdict {
  readonly failing: readonly LimitOfCode[];
  /** Would fail by what nobody gave. */
  readonly mayFail: readonly LimitOfCode[];
  /** Rows that neither pass nor fail as things stand, those that may fail among them. */
  readonly toSettle: number;
}

const TO_SETTLE: readonly (Verdict | "")[] = [
  "judge", "assumed: would fail", "not on file", "not given", "caution", "assumed: would pass",
];

const named = (rows: readonly CheckRow[], verdict: Verdict): readonly LimitOfCode[] =>
  rows.filter((row) => row.verdict === verdict).map(({ item, clause }) => ({ item, clause }));

/** The rows of a check as one verdict. */
export const overallVerdict = (rows: readonly CheckRow[]): OverallVerdict => ({
  failing: named(rows, "fail"),
  mayFail: named(rows, "assumed: would fail"),
  toSettle: rows.filter(({ verdict }) => TO_SETTLE.includes(verdict)).length,
});
