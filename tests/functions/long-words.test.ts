import { catalogue } from "../../src/functions/catalogue";
import { isMatrix, tablesOf } from "../../src/functions/describe";
import type { Declaration } from "../../src/functions/declare";
import { argumentsOf } from "../../src/functions/formula";
import { words } from "../../src/solver/words";
import { associated, type WorksheetFunction } from "../host/stand-in";

const functions = associated();

/** More than any text in a sentence is repeated of: 4,000 characters, no word of any trade. */
const LONG = "qwzj ".repeat(800);
/** No word of ours is spelt like it, by hand: no two of its letters stand together in any. */
const NONSENSE = "qwzjkvxq";
/** What a sentence may repeat of one cell, 80 characters and the mark of the rest, three lists of 200, and the words around them. */
const LONGEST_SENTENCE = 1_200;
const MOST_REPEATED = LONG.slice(0, 240);
/** A suggestion, as any sentence words it; what is a slip of nothing has none. */
const SUGGESTED = /nearest (is|here is)|did you mean/;

const solverOf = (id: string): WorksheetFunction => {
  const solve = functions.get(id);
  if (solve === undefined) throw new Error(`functions.js does not associate ${id}`);
  return solve;
};

/** Sentences of the errors that a call throws or answers. */
const sentencesOf = (id: string, cells: readonly unknown[]): readonly string[] => {
  const answer = ((): unknown => {
    try {
      return solverOf(id)(...cells);
    } catch (error) {
      return error;
    }
  })();
  const all: readonly unknown[] = Array.isArray(answer) ? answer.flat() : [answer];
  return all.flatMap((cell) => (typeof cell === "object" && cell !== null ? [String((cell as { message?: unknown }).message)] : []));
};

/** Calls of the first example that answers, a text put for each argument, and for each cell of two rows of each table. */
const callsWith = (declaration: Declaration, text: string): readonly (readonly unknown[])[] => {
  const example = declaration.examples.find((one) => !("fails" in one));
  const cells = argumentsOf(declaration, example?.given ?? {}).map((cell) => cell ?? undefined);
  return Object.values(declaration.parameters).flatMap((parameter, place) => {
    const put = (value: unknown): readonly unknown[] =>
      Array.from({ length: Math.max(cells.length, place + 1) }, (_, at) => (at === place ? value : cells[at]));
    const given: unknown = cells[place];
    if (!Array.isArray(given)) return [put(isMatrix(parameter) ? [[text]] : text)];
    const rows = given as readonly (readonly unknown[])[];
    return rows.slice(0, 2).flatMap((row, down) => row.map((_, right) =>
      put(rows.map((old, r) => (r === down ? old.map((cell, c) => (c === right ? text : cell)) : old)))));
  });
};

const textsIn = (given: unknown): readonly string[] =>
  Array.isArray(given) ? given.flatMap(textsIn) : typeof given === "string" ? [given] : [];

/** What a sentence may begin with: an argument, a heading, a label of the stair, which are the names of what is wrong. */
const namesOf = (declaration: Declaration): readonly string[] => [
  ...Object.keys(declaration.parameters), ...Object.keys(declaration.parameters).map(words),
  ...tablesOf(declaration).flatMap(({ columns }) => Object.keys(columns).map(words)),
];

describe.each(catalogue.map((declaration) => [declaration.id, declaration] as const))("%s", (id, declaration) => {
  const ofLong = callsWith(declaration, LONG).flatMap((cells) => sentencesOf(id, cells));

  test("no sentence repeats a long cell whole or is longer than a person reads", () => {
    expect(ofLong.filter((says) => says.length > LONGEST_SENTENCE || says.includes(MOST_REPEATED))).toEqual([]);
  });

  test("each begins with the name of what is wrong", () => {
    // Goods of a ledger and headings of a table of one's own are what the person calls them.
    const own = declaration.examples.flatMap(({ given }) => textsIn(Object.values(given)));
    const names = [...namesOf(declaration), ...own.filter((name) => name.length > 2)];
    const isNamed = (says: string): boolean => {
      const named = says.slice(0, says.indexOf(": "));
      return named !== "" && (names.some((name) => named.includes(name)) || named.startsWith(LONG.slice(0, 20)));
    };
    expect(ofLong.filter((says) => !isNamed(says))).toEqual([]);
  });

  test("a word like none of ours is met with no suggestion", () => {
    const sentences = callsWith(declaration, NONSENSE).flatMap((cells) => sentencesOf(id, cells));
    expect(sentences.filter((says) => SUGGESTED.test(says))).toEqual([]);
  });
});
