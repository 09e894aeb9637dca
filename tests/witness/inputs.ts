import type { Declaration, ExampleCell, Parameter } from "../../src/functions/declare";
import { stair as stairTable } from "../../src/functions/tables";
import { words } from "../../src/solver/words";
import type { WorkedCase } from "./case-kind";
import { casesOf } from "./worked-case";

type Given = WorkedCase["given"];

/** One thing a call is given: an argument, a column of a table, a label of the stair, or one of two words that may stand there. */
export interface Input {
  readonly name: string;
  /** Whose it is: a table's, whichever function reads it, or that of the functions with the very same arguments. */
  readonly of: object;
  /** The call with this one thing otherwise, in a few ways; none where the case does not give it. */
  others(given: Given): readonly Given[];
}

type Table = readonly (readonly unknown[])[];

const isTable = (value: unknown): value is Table => Array.isArray(value) && Array.isArray(value[0]);

/** Enough for any rounding to show, and little enough that the call still makes sense. */
const SOMEWHAT = 1.02;

const scaled = (cell: unknown): unknown =>
  typeof cell !== "number" ? cell : Number.isInteger(cell) && cell !== 0 && Math.abs(cell) < 100 ? cell + Math.sign(cell) : cell * SOMEWHAT;

const pairs = <T,>(all: readonly T[]): readonly (readonly [T, T])[] =>
  all.flatMap((one, place) => all.slice(place + 1).map((other) => [one, other] as const));

const without = (given: Given, name: string): Given => Object.fromEntries(Object.entries(given).filter(([key]) => key !== name));
const withValue = (given: Given, name: string, value: unknown): Given => ({ ...given, [name]: value as ExampleCell });

const isOneOf = (of: object, name: string, standing: unknown, options: readonly unknown[]): readonly Input[] =>
  pairs(options).map(([one, other]) => ({
    of,
    name: `${name} ${String(one)} or ${String(other)}`,
    others: (given) => {
      const value = given[name] ?? standing;
      return value === one ? [withValue(given, name, other)] : value === other ? [withValue(given, name, one)] : [];
    },
  }));

/** Values that other cases of the function give. */
const valuesElsewhere = (declaration: Declaration, name: string): readonly unknown[] =>
  casesOf(declaration)
    .map(({ given }) => given[name])
    .filter((value) => value !== undefined);

const scalar = (declaration: Declaration, name: string, parameter: Parameter): readonly Input[] => {
  const of = declaration.parameters;
  if (parameter.kind === "choice") return isOneOf(of, name, parameter.default, parameter.options);
  if (parameter.kind === "flag") return isOneOf(of, name, parameter.default, [true, false]);
  if (parameter.kind === "unit") return isOneOf(of, name, parameter.default, ["in", "mm"]);
  return [{
    of,
    name,
    others: (given) => {
      const value = given[name];
      if (value === undefined) return [];
      const cells = isTable(value) ? value.map((row) => row.map(scaled)) : scaled(value);
      return [
        without(given, name),
        withValue(given, name, cells),
        ...valuesElsewhere(declaration, name).map((other) => withValue(given, name, other)),
      ];
    },
  }];
};

const columnChanged = (given: Given, name: string, column: number, change: (cell: unknown) => unknown): Given => {
  const value = given[name];
  if (!isTable(value)) return given;
  return withValue(given, name, value.map((row, down) => row.map((cell, right) => (right === column && down > 0 ? change(cell) : cell))));
};

const columnReversed = (given: Given, name: string, column: number): Given => {
  const value = given[name];
  if (!isTable(value)) return given;
  const [headings = [], ...rows] = value;
  const cells = rows.map((row) => row[column]).reverse();
  return withValue(given, name, [headings, ...rows.map((row, down) => row.map((cell, right) => (right === column ? cells[down] : cell)))]);
};

/** Units and grades that may stand where another one does. */
const TEXTS = ["ft", "in", "each", "clear"] as const;

const columns = (name: string, parameter: Extract<Parameter, { kind: "table" }>): readonly Input[] =>
  Object.entries(parameter.table.columns).flatMap(([key, column]) => {
    const place = (given: Given): number => {
      const value = given[name];
      return isTable(value) ? (value[0] ?? []).indexOf(words(key)) : -1;
    };
    const own: Input = {
      of: parameter.table,
      name: `${parameter.table.name}, ${words(key)}`,
      others: (given) => {
        const at = place(given);
        const texts = column.kind === "text" ? TEXTS : [];
        return at < 0
          ? []
          : [
              ...[() => "", scaled, ...texts.map((text) => () => text)].map((change) => columnChanged(given, name, at, change)),
              columnReversed(given, name, at),
            ];
      },
    };
    // A word for what an empty cell is anyway changes nothing, and should not.
    const spoken = Object.entries(column.words ?? {})
      .filter(([, value]) => !("default" in column) || column.default !== value)
      .map(([word]): Input => ({
        of: parameter.table,
        name: `${parameter.table.name}, ${words(key)}, ${words(word)}`,
        others: (given) => {
          const at = place(given);
          const value = given[name];
          if (!isTable(value) || !value.some((row) => row[at] === words(word))) return [];
          return ["", 1].map((other) => columnChanged(given, name, at, (cell) => (cell === words(word) ? other : cell)));
        },
      }));
    return [own, ...spoken];
  });

/** Labels from which rise and run are found, once for every function that takes a stair. */
const FOUND_ONCE: readonly string[] = ["max rise", "unit rise", "tread depth", "treads", "total run", "available run"];

const labels = (reader: object, name: string): readonly Input[] =>
  Object.entries(stairTable.columns).flatMap(([key, column]): Input[] => {
    const label = words(key);
    const of = FOUND_ONCE.includes(label) ? stairTable : reader;
    const changed = (given: Given, change: (value: unknown) => readonly unknown[]): readonly Given[] => {
      const value = given[name];
      if (!isTable(value)) return [];
      const row = value.find(([found]) => found === label);
      return row === undefined
        ? []
        : change(row[1]).map((other) =>
            withValue(
              given,
              name,
              value.map((one) => (one === row ? [one[0], other, ...one.slice(2)] : one)),
            ),
          );
    };
    if (column.kind === "choice") {
      return pairs(column.options).map(([one, other]) => ({
        of,
        name: `${label} ${one} or ${other}`,
        others: (given) => changed(given, (value) => (value === one ? [other] : value === other ? [one] : [])),
      }));
    }
    if (column.kind === "flag") return [{ of, name: label, others: (given) => changed(given, (value) => [value === "no" ? "yes" : "no"]) }];
    return [{ of, name: label, others: (given) => changed(given, (value) => ["", scaled(value)]) }];
  });

/** Everything that may be given to a function, from its declaration; the labels of the stair apart, as no function reads them all. */
export const inputsOf = (declaration: Declaration): readonly Input[] =>
  Object.entries(declaration.parameters).flatMap(([name, parameter]) =>
    parameter.kind === "stair"
      ? []
      : [...scalar(declaration, name, parameter), ...(parameter.kind === "table" ? columns(name, parameter) : [])],
  );

export const labelsOf = (declaration: Declaration): readonly Input[] =>
  Object.entries(declaration.parameters).flatMap(([name, parameter]) =>
    parameter.kind === "stair" ? labels(declaration.parameters, name) : [],
  );
