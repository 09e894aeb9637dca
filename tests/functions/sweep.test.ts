import { readdirSync } from "node:fs";
import path from "node:path";
import Ajv from "ajv";
import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { folded, isFailed } from "../../src/functions/cells";
import { type Declaration, GROUPS, type Parameter } from "../../src/functions/declare";
import { isMatrix, isOmissible, spills } from "../../src/functions/describe";
import { argumentsOf } from "../../src/functions/formula";
import * as tables from "../../src/functions/tables";
import { words } from "../../src/solver/words";
import { functionsJson } from "../../src/generate/functions-json";
import { associated } from "../host/stand-in";
import metadataSchema from "./metadata-schema.json";

const functions = associated();
const everyTable = Object.values(tables);

/** Functions and macro words of the spreadsheet spelt in letters alone that come near a trade word (from memory). */
const BUILT_IN = [
  "AREAS",
  "BASE",
  "CELL",
  "CHOOSE",
  "CODE",
  "COLUMN",
  "ECHO",
  "FLOOR",
  "INDEX",
  "LEN",
  "LOOKUP",
  "MATCH",
  "PRICE",
  "RATE",
  "ROUND",
  "ROW",
  "RUN",
  "SLOPE",
  "STEP",
  "SUM",
  "TEXT",
  "TREND",
  "TRIM",
  "UNIQUE",
  "VALUE",
];

/** Columns of a sheet run from A to XFD, so up to three letters and digits name a cell. */
const CELL_LIKE = /^[A-Z]{1,3}\d+$|^R\d*C\d*$/;

const good = (declaration: Declaration) => {
  const example = declaration.examples.find((candidate) => !("fails" in candidate));
  if (example === undefined) throw new Error(`${declaration.id} has no example that succeeds`);
  return example.given;
};

/** An answer without functions of its own, as the host receives it; an error is its code and sentence. */
const answered = (id: string, cells: readonly unknown[]): unknown => {
  try {
    return functions.get(id)?.(...cells);
  } catch (error) {
    return error;
  }
};

/** Neither a number nor a length, no word of any choice, no label, no heading. */
const NO_VALUE = "not at all, a value";

/** Where a text can be what is meant: a text, a table of any kind, or one whose first column is a name. */
const takesAnyText = (parameter: Parameter): boolean =>
  parameter.kind === "text" ||
  parameter.kind === "cells" ||
  (parameter.kind === "table" && Object.values(parameter.table.columns)[0]?.kind === "label");

const errorOf = (cell: unknown): { code: string; message: string } | undefined =>
  typeof cell === "object" && cell !== null && "code" in cell ? (cell as { code: string; message: string }) : undefined;

/** Every answer is a value or a rectangle of values, none of them empty, and every error has a sentence. */
const expectWellFormed = (answer: unknown): void => {
  const rows = Array.isArray(answer) ? (answer as unknown[][]) : [[answer]];
  expect(rows.length).toBeGreaterThan(0);
  const width = rows[0]?.length ?? 0;
  expect(width).toBeGreaterThan(0);
  for (const row of rows) {
    expect(row).toHaveLength(width);
    for (const cell of row) {
      const error = errorOf(cell);
      if (error !== undefined) {
        expect(["#VALUE!", "#N/A", "#DIV/0!", "#NUM!", "#NULL!"]).toContain(error.code);
        expect(error.message.length).toBeGreaterThan(8);
        expect(error.message).not.toMatch(/undefined|NaN|\[object|Infinity|`/);
      } else {
        expect(["string", "number", "boolean"]).toContain(typeof cell);
        if (typeof cell === "number") expect(Number.isFinite(cell)).toBe(true);
        if (typeof cell === "string") expect(cell).not.toMatch(/undefined|NaN|\[object|`/);
      }
    }
  }
  const sent = rows.map((row) => row.map((cell) => errorOf(cell)?.message ?? cell));
  expect(JSON.parse(JSON.stringify(sent))).toEqual(sent);
};

test("functions.json is valid against the documented metadata, and functions.js associates just its ids", () => {
  const json = functionsJson(catalogue) as { functions: { id: string }[] };
  const validate = new Ajv({ strict: false }).compile(metadataSchema);
  expect(validate(json) ? [] : validate.errors).toEqual([]);
  expect([...functions.keys()].sort()).toEqual(json.functions.map(({ id }) => id).sort());
});

test("each list of values that an argument names is there once, each is named, and each value in it is taken", () => {
  interface Listed { readonly id: string; readonly values: readonly { readonly name: string; readonly stringValue: string }[] }
  const json = functionsJson(catalogue) as {
    readonly functions: readonly {
      readonly id: string; readonly parameters: readonly { readonly name: string; readonly customEnumId?: string }[];
    }[];
    readonly enums: readonly Listed[];
  };
  const ids = json.enums.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  const named = json.functions.flatMap(({ id, parameters }) => parameters.flatMap(({ name, customEnumId }) =>
    (customEnumId === undefined ? [] : [{ id, name, list: customEnumId }])));
  expect(new Set(named.map(({ list }) => list))).toEqual(new Set(ids));
  for (const { id, name, list } of named) {
    const declaration = catalogue.find((one) => one.id === id);
    const example = declaration?.examples.find((one) => !("fails" in one));
    for (const { stringValue } of json.enums.find((one) => one.id === list)?.values ?? []) {
      const cells = argumentsOf(declaration!, { ...example!.given, [name]: stringValue } as never);
      const answer = call(declaration!, cells.map((cell) => cell ?? undefined));
      // A value that is not one of its argument's is refused by a sentence that begins with the argument.
      expect([id, name, stringValue, isFailed(answer) && answer.says.startsWith(`${name}: `)]).toEqual([id, name, stringValue, false]);
    }
  }
});

test("names are legal, unique, and nothing a sheet would take for a cell or a function of its own", () => {
  const ids = catalogue.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const id of ids) {
    expect(id).toMatch(/^[A-Z]{3,128}$/);
    expect(id).not.toMatch(CELL_LIKE);
    expect(BUILT_IN).not.toContain(id);
  }
});

test("every declaration file stands in the catalogue", () => {
  const folder = path.resolve(__dirname, "../../src/functions");
  const files = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap((entry) => readdirSync(path.join(folder, entry.name)))
    .filter((file) => file.endsWith(".ts"));
  expect(files.map((file) => path.basename(file, ".ts").toUpperCase()).sort()).toEqual(catalogue.map(({ id }) => id).sort());
});

test("what is worded for cells has no backtick, which a cell and Why? would show as it stands", () => {
  const worded = catalogue.flatMap(({ id, problems }) => Object.entries(problems).map(([code, { says }]) => [id, code, says] as const));
  expect(worded.length).toBeGreaterThan(catalogue.length);
  expect(worded.filter(([, , says]) => says.includes("`"))).toEqual([]);
});

test("headings and labels of one table are told apart by their letters alone", () => {
  for (const table of everyTable) {
    const keys = Object.keys(table.columns).map((key) => folded(words(key)));
    expect(new Set(keys).size).toBe(keys.length);
  }
});

describe.each(catalogue.map((declaration) => [declaration.id, declaration] as const))("%s", (id, declaration) => {
  const names = Object.keys(declaration.parameters);
  const given = good(declaration);
  const cells = (): unknown[] => argumentsOf(declaration, given).map((cell) => (cell === null ? undefined : cell));

  test("says what it is for, in a known step of the job, with its source", () => {
    expect(GROUPS).toContain(declaration.group);
    for (const text of [
      declaration.says,
      declaration.source,
      declaration.result.says,
      ...Object.values(declaration.parameters).map(({ says }) => says),
    ]) {
      expect(text).toMatch(/^.{8,}/);
    }
    for (const example of declaration.examples) expect(example.from.length).toBeGreaterThan(12);
    const omitted = Object.values(declaration.parameters).map(isOmissible);
    expect(omitted.lastIndexOf(false)).toBeLessThan(omitted.includes(true) ? omitted.indexOf(true) : names.length);
  });

  test("an optional argument may be nothing, empty text or 0 without an answer that is not one", () => {
    for (const [index, name] of names.entries()) {
      const parameter = declaration.parameters[name];
      if (parameter === undefined || !isOmissible(parameter)) continue;
      const left = answered(id, cells().map((cell, place) => (place === index ? undefined : cell)));
      expectWellFormed(left);
      for (const nothing of [null, ""]) {
        const padded = names.map((_, place) => (place === index ? nothing : cells()[place]));
        expect(JSON.stringify(answered(id, padded))).toBe(JSON.stringify(left));
      }
      expectWellFormed(answered(id, names.map((_, place) => (place === index ? 0 : cells()[place]))));
    }
  });

  test("every argument answers a wrong kind of value with a sentence that names it", () => {
    for (const [index, name] of names.entries()) {
      const answer = answered(id, names.map((_, place) => (place === index ? NO_VALUE : cells()[place])));
      expectWellFormed(answer);
      const error = errorOf(Array.isArray(answer) ? (answer as unknown[][]).flat()[0] : answer);
      const parameter = declaration.parameters[name];
      if (parameter === undefined || (error === undefined && takesAnyText(parameter))) continue;
      // A table is named itself, or by the heading of the cell that is wrong; of a table of any kind the other argument finds nothing in
      // it.
      const columns = parameter.kind === "table" ? Object.keys(parameter.table.columns).map((key) => `${words(key)} in row 1`) : [];
      const named = parameter.kind === "cells" ? [name, ...names] : [name, ...columns];
      expect(named.filter((one) => error?.message.startsWith(one))).not.toEqual([]);
    }
  });

  test("ranges of one cell, a row, a column, ragged and empty ones give a rectangle or a sentence", () => {
    const shapes = [[[7]], [[7, 8, 9]], [[7], [8], [9]], [[7, 8], [9]], [[]], [["", null, 0]], [["step", "length"], [1, 2]]];
    for (const index of names.keys()) {
      for (const shape of shapes) expectWellFormed(answered(id, names.map((_, place) => (place === index ? shape : cells()[place]))));
    }
  });

  test("an error cell given comes through as an error", () => {
    for (const [index, name] of names.entries()) {
      const parameter = declaration.parameters[name];
      if (parameter === undefined) continue;
      const error = { code: "#N/A", message: "nothing found" };
      const answer = answered(id, names.map((_, place) => (place === index ? (isMatrix(parameter) ? [[error]] : error) : cells()[place])));
      expectWellFormed(answer);
      const first = Array.isArray(answer) ? (answer as unknown[][]).flat()[0] : answer;
      expect(errorOf(first)?.code).toBe("#N/A");
    }
  });

  test("the host's own last argument changes nothing, however many arguments its copy of the metadata knows", () => {
    const all = names.map((_, place) => cells()[place]);
    const invocation = { functionName: id, address: undefined, parameterAddresses: undefined };
    for (let known = 0; known <= all.length; known += 1) {
      const passed = all.slice(0, known);
      expect(JSON.stringify(answered(id, [...passed, invocation]))).toBe(JSON.stringify(answered(id, passed)));
      expect(JSON.stringify(answered(id, [...passed, {}]))).toBe(JSON.stringify(answered(id, passed)));
    }
  });

  test("a result that can be a range is declared as one", () => {
    const answer = answered(id, cells());
    expect(Array.isArray(answer)).toBe(spills(declaration));
  });

  test("the same arguments give the same answer", () => {
    expect(JSON.stringify(call(declaration, cells()))).toBe(JSON.stringify(call(declaration, cells())));
    expect(isFailed(call(declaration, cells()))).toBe(false);
  });
});
