import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { isFailed } from "../../src/functions/cells";
import type { Declaration } from "../../src/functions/declare";
import { argumentsOf } from "../../src/functions/formula";
import { words } from "../../src/solver/words";
import { handCases } from "./hand-cases";
import type { Rows, WorkedCase } from "./case-kind";

/** Numbers agree to ten significant digits: a case prints what a cell shows, not every bit of a square root. */
const SIGNIFICANT = 10;

const rounded = (cell: unknown): unknown => (typeof cell === "number" ? Number(cell.toPrecision(SIGNIFICANT)) : cell);

const answered = (declaration: Declaration, given: WorkedCase["given"]): Rows => {
  const answer = call(declaration, argumentsOf(declaration, given).map((cell) => (cell === null ? undefined : cell)));
  const rows = Array.isArray(answer) ? answer : [[answer]];
  return rows.map((row) => row.map((cell) => (isFailed(cell) ? `${cell.failed} ${cell.says}` : cell)));
};

const KEPT = new Map<string, Rows>();

/** What the source answers, worked out once; through the built file, the examples' own test calls the same. */
export const answerOf = (declaration: Declaration, given: WorkedCase["given"]): Rows => {
  const key = `${declaration.id} ${JSON.stringify(given)}`;
  const kept = KEPT.get(key) ?? answered(declaration, given);
  KEPT.set(key, kept);
  return kept;
};

const isSame = (found: unknown, wanted: unknown): boolean => Object.is(rounded(found), rounded(wanted));

/** Whether an answer is what the case says. */
export const isMet = (worked: WorkedCase, rows: Rows): boolean => {
  if ("keeps" in worked) return worked.keeps(rows);
  if ("fails" in worked) return rows[0]?.[0] === `${worked.fails} ${worked.says}`;
  if ("gives" in worked) {
    const gives: Rows = typeof worked.gives === "object" ? worked.gives : [[worked.gives]];
    return (
      rows.length === gives.length &&
      gives.every((row, down) => rows[down]?.length === row.length && row.every((cell, right) => isSame(rows[down]?.[right], cell)))
    );
  }
  const [headings = [], ...data] = rows;
  return worked.shows.every((row) =>
    data.some((cells) => Object.entries(row).every(([heading, cell]) => isSame(cells[headings.indexOf(words(heading))], cell))),
  );
};

/** Every case of a function: the examples that its declaration shows to users, and those of the tests alone. */
export const casesOf = (declaration: Declaration): readonly WorkedCase[] => [...declaration.examples, ...(handCases[declaration.id] ?? [])];

export const everyDeclaration: readonly Declaration[] = catalogue;
