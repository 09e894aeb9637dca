import { isErrorCell, isRows, type Result, type Solve } from "./answer";
import { messageOf } from "./message-of";
import type { ShownExample, Stated } from "./shown-functions";

export interface ExampleOutcome {
  readonly stated: string;
  readonly answered: string;
  readonly agrees: boolean;
}

/** An example prints what a cell shows, not every bit of a square root. */
const SIGNIFICANT = 10;

type Plain = string | number | boolean;

const plain = (cell: unknown): Plain => {
  if (typeof cell === "number") return Number(cell.toPrecision(SIGNIFICANT));
  return isErrorCell(cell) ? `${cell.code} ${cell.message}` : (cell as Plain);
};

const rowText = (row: readonly Plain[]): string => row.map(String).join(" | ");
const partText = (part: readonly (readonly [string, Plain])[]): string =>
  part.map(([heading, cell]) => `${heading}: ${String(cell)}`).join(", ");

const answerOf = (solve: Solve, id: string, args: readonly unknown[]): Result => {
  try {
    return solve(id, args) as Result;
  } catch (error) {
    if (isErrorCell(error)) return error;
    return { code: "no answer", message: messageOf(error) };
  }
};

const plainRows = (result: Result): readonly (readonly Plain[])[] =>
  isRows(result) ? result.map((row) => row.map(plain)) : [[plain(result)]];

const sameRow = (one: readonly Plain[], other: readonly Plain[]): boolean =>
  one.length === other.length && one.every((cell, index) => cell === other[index]);

/** The cells under the headings of a stated part, in the row that holds them, or in the one that comes nearest. */
const nearestPart = (part: readonly (readonly [string, Plain])[], rows: readonly (readonly Plain[])[]) => {
  const [headings = [], ...data] = rows;
  const parts = data.map((row) =>
    part.map(([heading]): readonly [string, Plain] => [heading, row[headings.indexOf(heading)] ?? "nothing"]),
  );
  const alike = (found: readonly (readonly [string, Plain])[]): number =>
    found.filter(([, cell], index) => cell === part[index]?.[1]).length;
  return parts.reduce<readonly (readonly [string, Plain])[]>((best, found) => (alike(found) > alike(best) ? found : best), parts[0] ?? []);
};

const compared = (stated: Stated, rows: readonly (readonly Plain[])[]): ExampleOutcome => {
  const first = rowText(rows[0] ?? []);
  if ("error" in stated) return { stated: stated.error, answered: String(rows[0]?.[0] ?? ""), agrees: rows[0]?.[0] === stated.error };
  if ("rows" in stated) {
    const wanted = stated.rows.map((row) => row.map(plain));
    return {
      stated: wanted.map(rowText).join("\n"),
      answered: rows.map(rowText).join("\n"),
      agrees: wanted.length === rows.length && wanted.every((row, index) => sameRow(row, rows[index] ?? [])),
    };
  }
  const wanted = stated.parts.map((part) => part.map(([heading, cell]) => [heading, plain(cell)] as const));
  const found = wanted.map((part) => nearestPart(part, rows));
  return {
    stated: wanted.map(partText).join("\n"),
    answered: found.every((part) => part.length === 0) ? first : found.map(partText).join("\n"),
    agrees: wanted.every(
      (part, index) => partText(part) === partText(found[index] ?? []) && part.every(([, cell], at) => cell === found[index]?.[at]?.[1]),
    ),
  };
};

/** An example worked again: what it states, what comes out now, and whether the two agree to ten significant digits. */
export const exampleOutcome = (id: string, example: ShownExample, solve: Solve): ExampleOutcome =>
  compared(example.stated, plainRows(answerOf(solve, id, example.args)));

/** What an example states, as text. */
export const statedText = (stated: Stated): string => {
  if ("error" in stated) return stated.error;
  return ("rows" in stated ? stated.rows.map(rowText) : stated.parts.map(partText)).join("\n");
};
