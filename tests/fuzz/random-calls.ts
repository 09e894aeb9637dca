import fc from "fast-check";
import { catalogue } from "../../src/functions/catalogue";
import type { Declaration } from "../../src/functions/declare";
import { isMatrix } from "../../src/functions/describe";
import { argumentsOf } from "../../src/functions/formula";
import * as tables from "../../src/functions/tables";
import { words } from "../../src/solver/words";

/** Arguments as a host passes them: a value, a rectangle of values, or nothing. */
export type Arguments = readonly unknown[];

/** The most characters a cell holds: the platform's documented limit (Excel specifications and limits). */
export const MOST_CHARACTERS = 32767;

const HEADINGS = [...new Set(Object.values(tables).flatMap((table) => Object.keys(table.columns).map(words)))];

/** What people, hosts and other programs put into cells, the awkward before the usual. */
const AWKWARD: readonly unknown[] = [
  0,
  -0,
  1,
  -1,
  0.1,
  1e-9,
  5e-324,
  1.5,
  7.75,
  12,
  100,
  19999.99,
  20000,
  45123,
  1e6,
  1e15,
  2 ** 53,
  1e100,
  1e308,
  -1e308,
  Number.MAX_VALUE,
  true,
  false,
  null,
  undefined,
  "",
  " ",
  "\u00a0",
  "0",
  "-0",
  "1e5",
  "NaN",
  "Infinity",
  "undefined",
  "constructor",
  "__proto__",
  "toString",
  "7 5/8",
  '7 5/8"',
  "9' 1 1/2\"",
  "9' 14\"",
  "2781 mm",
  "2.781 m",
  "1/0",
  '-1/2"',
  "½",
  "٣",
  "7,5",
  "5 ft 3",
  "10'",
  "any",
  "none",
  "yes",
  "square",
  "not taken",
  "25%",
  "250%",
  "-5%",
  "$12.50",
  "(12.50)",
  "=1+1",
  "'7",
  "total",
  "step",
  "label",
  "in",
  "mm",
  "irc-2021",
  "oak",
  "\ud800",
  "a\u0301",
  "🪵",
  "x".repeat(300),
  "y".repeat(MOST_CHARACTERS),
  { code: "#N/A", message: "nothing found" },
  { code: "#REF!" },
  { errorCode: "#VALUE!" },
  { type: "Error", basicValue: "#DIV/0!" },
  { basicValue: 7 },
  {},
  Number.NaN,
  Infinity,
];

const cell: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...AWKWARD) },
  { weight: 2, arbitrary: fc.double({ noNaN: true }) },
  { weight: 2, arbitrary: fc.integer({ min: -5, max: 60 }) },
  { weight: 1, arbitrary: fc.constantFrom(...HEADINGS) },
  { weight: 1, arbitrary: fc.string({ maxLength: 12 }) },
);

const rectangle: fc.Arbitrary<unknown> = fc.array(fc.array(cell, { minLength: 1, maxLength: 6 }), { minLength: 1, maxLength: 6 });

/** What is done to one argument of a call that works. `at` and `beside` are taken modulo what there is. */
const change = fc.record({
  argument: fc.nat(20),
  how: fc.constantFrom(
    "cell",
    "cell",
    "cell",
    "heading",
    "row out",
    "row twice",
    "column out",
    "columns swapped",
    "row blank",
    "range",
    "left out",
    "host object",
  ),
  at: fc.nat(60),
  beside: fc.nat(20),
  cell,
  range: rectangle,
  heading: fc.constantFrom(...HEADINGS),
});

type Change = typeof change extends fc.Arbitrary<infer C> ? C : never;

const inRange = (
  rows: readonly (readonly unknown[])[],
  { how, at, beside, cell: given, heading }: Change,
): readonly (readonly unknown[])[] => {
  const row = at % Math.max(1, rows.length);
  const width = rows[0]?.length ?? 1;
  const column = beside % width;
  const other = (beside + 1) % width;
  switch (how) {
    case "heading":
      return rows.map((cells, r) => (r === 0 ? cells.map((old, c) => (c === column ? heading : old)) : cells));
    case "row out":
      return rows.filter((_, r) => r !== row);
    case "row twice":
      return rows.flatMap((cells, r) => (r === row ? [cells, cells] : [cells]));
    case "column out":
      return rows.map((cells) => cells.filter((_, c) => c !== column));
    case "columns swapped":
      return rows.map((cells) => cells.map((old, c) => (c === column ? cells[other] : c === other ? cells[column] : old)));
    case "row blank":
      return rows.map((cells, r) => (r === row ? cells.map(() => "") : cells));
    default:
      return rows.map((cells, r) => (r === row ? cells.map((old, c) => (c === column ? given : old)) : cells));
  }
};

const changed = (declaration: Declaration, cells: Arguments, made: Change): Arguments => {
  const parameters = Object.values(declaration.parameters);
  if (made.how === "host object") return [...cells, { address: "A1" }];
  if (parameters.length === 0) return cells;
  const place = made.argument % parameters.length;
  const padded = parameters.map((_, index) => cells[index]);
  const parameter = parameters[place];
  const old = padded[place];
  const next = (): unknown => {
    if (made.how === "left out") return undefined;
    if (parameter !== undefined && isMatrix(parameter)) {
      if (made.how === "range" || !Array.isArray(old)) return made.range;
      return inRange(old as unknown[][], made);
    }
    return made.cell;
  };
  return [...padded.slice(0, place), next(), ...padded.slice(place + 1), ...cells.slice(parameters.length)];
};

const cellsOf = (declaration: Declaration, example: Declaration["examples"][number]): Arguments =>
  argumentsOf(declaration, example.given).map((given) => (given === null ? undefined : given));

/** Calls of one function: its own examples with a few things changed, and a few that are nothing but noise. */
export const randomCalls = (declaration: Declaration): fc.Arbitrary<Arguments> => {
  const parameters = Object.values(declaration.parameters);
  const noise = fc.tuple(...parameters.map((parameter) => (isMatrix(parameter) ? rectangle : cell)));
  const mended = fc
    .tuple(fc.constantFrom(...declaration.examples), fc.array(change, { minLength: 1, maxLength: 3 }))
    .map(([example, changes]) => changes.reduce((cells, made) => changed(declaration, cells, made), cellsOf(declaration, example)));
  return fc.oneof({ weight: 5, arbitrary: mended }, { weight: 1, arbitrary: noise });
};

export const everyDeclaration: readonly Declaration[] = catalogue;
