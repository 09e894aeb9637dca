import { catalogue } from "../../src/functions/catalogue";
import { folded } from "../../src/functions/cells";
import type { Columns } from "../../src/functions/columns";
import type { Declaration, Parameter } from "../../src/functions/declare";
import { argumentsOf, formula } from "../../src/functions/formula";
import { isLengthKind } from "../../src/functions/kinds";
import { typedLength } from "../../src/sheets/typed-length";
import { associated, type WorksheetFunction } from "../host/stand-in";

const functions = associated();

const answeredBy = (solve: WorksheetFunction | undefined, ...cells: readonly unknown[]): unknown => {
  if (solve === undefined) throw new Error("functions.js does not associate it");
  try {
    return solve(...cells.map((cell) => (cell === null ? undefined : cell)));
  } catch (error) {
    const { code, message } = error as { code: string; message: string };
    return `${code} ${message}`;
  }
};

const answered = (declaration: Declaration, cells: readonly unknown[]): unknown => answeredBy(functions.get(declaration.id), ...cells);

const FINEST = 64;

/** A number of inches as a person writes it, 7 9/16; undefined for one that no tape has. */
const written = (inches: number): string | undefined => {
  const counted = Math.abs(inches) * FINEST;
  if (!Number.isInteger(counted)) return undefined;
  const [whole, left] = [Math.floor(counted / FINEST), counted % FINEST];
  const text = left === 0 ? String(whole) : `${whole === 0 ? "" : `${whole} `}${left}/${FINEST}`;
  return inches < 0 ? `-${text}` : text;
};

type Cell = unknown;

/** Which columns of an argument hold lengths: those of a table by their headings, the second of a stair by its labels. */
const isLength = (parameter: Parameter, rows: readonly (readonly Cell[])[], column: number): boolean => {
  if (parameter.kind === "stair") return column === 1;
  if (parameter.kind !== "table") return isLengthKind(parameter.kind);
  const columns: Columns = parameter.table.columns;
  const heading = folded(String(rows[0]?.[column] ?? ""));
  return isLengthKind(Object.entries(columns).find(([key]) => folded(key) === heading)?.[1].kind);
};

const eachLength = (parameter: Parameter, given: Cell, change: (cell: Cell) => Cell): Cell => {
  if (!Array.isArray(given)) return isLength(parameter, [[given]], 0) ? change(given) : given;
  const rows = given as readonly (readonly Cell[])[];
  return rows.map((row) => row.map((cell, column) => (isLength(parameter, rows, column) ? change(cell) : cell)));
};

const asText = (cell: Cell): Cell => (typeof cell === "number" ? (written(cell) ?? cell) : cell);
/** What a plain cell holds once it is typed. */
const asNumber = (cell: Cell): Cell => {
  if (typeof cell !== "string") return cell;
  return typedLength(cell, undefined)?.size ?? (/^-?\d+$/.test(cell) ? Number(cell) : cell);
};

const cases = catalogue.flatMap((declaration) =>
  declaration.examples.flatMap((example) => {
    const parameters = Object.values(declaration.parameters);
    const cells = argumentsOf(declaration, example.given);
    const [texts, numbers] = [asText, asNumber].map((change) =>
      cells.map((cell, place) => (parameters[place] === undefined ? cell : eachLength(parameters[place], cell, change))),
    );
    if (JSON.stringify(texts) === JSON.stringify(numbers)) return [];
    return [{ declaration, texts, numbers, says: formula(declaration, example.given) }];
  }),
);

const withLengths = catalogue.filter(({ parameters }) =>
  Object.values(parameters).some((parameter) =>
    parameter.kind === "table"
      ? Object.values(parameter.table.columns as Columns).some(({ kind }) => isLengthKind(kind))
      : isLengthKind(parameter.kind),
  ),
);

// TOINCHES has only texts of other kinds as examples, RECONCILE and BIDVARIANCE none with the lengths they may take from a plan.
test("every function that takes lengths is among the cases, or tried below", () => {
  const tried = [...cases.map(({ declaration }) => declaration.id), "TOINCHES", "RECONCILE", "BIDVARIANCE"];
  expect(withLengths.map(({ id }) => id).filter((id) => !tried.includes(id))).toEqual([]);
});

test("TOINCHES, RECONCILE and BIDVARIANCE take them too", () => {
  const [toInches, reconcile, variance] = ["TOINCHES", "RECONCILE", "BIDVARIANCE"].map((id) => functions.get(id));
  expect([toInches?.(7.5625), toInches?.([[7.5625], [0.5]])]).toEqual([toInches?.("7 9/16"), toInches?.([["7 9/16"], ["1/2"]])]);
  const planned = (length: unknown) => [["item", "quantity", "price", "net", "gross", "length"], ["rail", 2, 9, 90, 96, length]];
  const bought = [["item", "quantity", "price"], ["rail", 2, 9]];
  for (const solve of [reconcile, variance]) {
    const answer = answeredBy(solve, planned(96.5), bought);
    expect(Array.isArray(answer)).toBe(true);
    expect(answer).toEqual(answeredBy(solve, planned("96 1/2"), bought));
  }
});

/** A sentence quotes what was given, as it was given. */
const plain = (answer: unknown): unknown => {
  const code = /^#[A-Z/0-9]+[!?]? /.exec(typeof answer === "string" ? answer : "")?.[0];
  return code ?? (JSON.parse(JSON.stringify(answer)) as unknown);
};

test.each(cases)("$says is the same with its lengths written as text and typed into cells", ({ declaration, texts = [], numbers = [] }) => {
  expect(plain(answered(declaration, numbers))).toEqual(plain(answered(declaration, texts)));
});
