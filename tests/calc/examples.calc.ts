import { readFileSync } from "node:fs";
import path from "node:path";
import type { ListedFunction } from "../../src/calc/listed-functions";
import { catalogue } from "../../src/functions/catalogue";
import type { Declaration, ExampleCell } from "../../src/functions/declare";
import { argumentsOf, formula, NAMESPACE } from "../../src/functions/formula";
import { words } from "../../src/solver/words";
import { associated } from "../host/stand-in";
import { type At, inCalc, installed, officeFolder, removeFolder, type ShownCell, type Step } from "./office";

/** Numbers agree to ten significant digits: an example prints what a cell shows, not every bit of a square root. */
const SIGNIFICANT = 10;
/** And with what the bundle answers to as many as a double of one and the other way round holds. */
const CLOSE = 1e-11;

const { functions: listed } = JSON.parse(
  readFileSync(path.resolve(__dirname, "../../dist/functions.json"), "utf8"),
) as { functions: readonly ListedFunction[] };

interface Case {
  readonly declaration: Declaration;
  readonly example: Declaration["examples"][number];
  readonly args: readonly ExampleCell[];
  /** What the bundle answers: the size of the block, and every cell of it. */
  readonly answer: readonly (readonly unknown[])[];
}

const bundle = associated();

const bundleAnswer = (declaration: Declaration, args: readonly ExampleCell[]): unknown[][] => {
  try {
    const answer = bundle.get(declaration.id)?.(...args.map((one) => one ?? undefined));
    return Array.isArray(answer) ? (answer as unknown[][]) : [[answer]];
  } catch (error) {
    return [[error]];
  }
};

const cases: readonly Case[] = catalogue.flatMap((declaration) => declaration.examples.map((example) => {
  const args = argumentsOf(declaration, example.given);
  return { declaration, example, args, answer: bundleAnswer(declaration, args) };
}));

const rowsOf = (arg: ExampleCell): readonly (readonly unknown[])[] => (Array.isArray(arg) ? (arg as unknown[][]) : [[arg]]);

const columnName = (column: number): string => {
  const before = Math.floor(column / 26);
  return (before > 0 ? columnName(before - 1) : "") + String.fromCharCode("A".charCodeAt(0) + (column % 26));
};

const literal = (arg: ExampleCell): string => {
  if (typeof arg === "string") return `"${arg.replaceAll('"', '""')}"`;
  return typeof arg === "boolean" ? `${String(arg).toUpperCase()}()` : String(arg);
};

interface Entered {
  readonly steps: readonly Step[];
  readonly at: At;
}

/** Puts what is given into cells and the formula into a block: single values stand in the formula, or in cells of their own too. */
const entered = ({ declaration, args, answer }: Case, row: number, sheet: string, isInCells: boolean): Entered => {
  const steps: Step[] = [];
  let column = 0;
  const written = args.map((arg) => {
    if (arg === null) return "";
    if (typeof arg !== "object" && !isInCells) return literal(arg);
    const rows = rowsOf(arg);
    const width = Math.max(...rows.map(({ length }) => length));
    steps.push(["put", { sheet: `${sheet} given`, row, column }, rows]);
    const reference = `$'${sheet} given'.${columnName(column)}${row + 1}:${columnName(column + width - 1)}${row + rows.length}`;
    column += width;
    return rows.length === 1 && width === 1 ? reference.replace(/:.*$/, "") : reference;
  });
  const at: At = { sheet, row, column: 0, rows: answer.length, columns: Math.max(...answer.map(({ length }) => length)) };
  steps.push(["enter", { ...at, isArray: answer.length > 1 }, `=${NAMESPACE}.${declaration.id}(${written.join(";")})`]);
  return { steps, at };
};

const heightOf = ({ args, answer }: Case): number => Math.max(answer.length, ...args.map((arg) => rowsOf(arg).length)) + 1;

const rounded = (cell: unknown): unknown => {
  if (typeof cell === "boolean") return Number(cell);
  return typeof cell === "number" ? Number(cell.toPrecision(SIGNIFICANT)) : cell;
};

interface ErrorCell {
  readonly code: string;
  readonly message: string;
}

const isError = (cell: unknown): cell is ErrorCell => typeof cell === "object" && cell !== null;

/** The cells of an answer that hold an error, whose sentences the menu is asked for. */
const errorsOf = ({ answer }: Case): readonly (readonly [down: number, right: number])[] =>
  answer.flatMap((row, down) => row.flatMap((cell, right) => (isError(cell) ? [[down, right] as const] : [])));

const WAYS = ["values in the formula", "values in cells"] as const;
/** What each example shows: numbers, texts, and an error as its code with the sentence that Why? says of its cell. */
let shown: ReadonlyMap<string, readonly (readonly (readonly unknown[])[])[]>;
let library: unknown;
let wizard: readonly { readonly name: string; readonly description: string; readonly arguments: readonly (readonly unknown[])[] }[];
let folder: string;

beforeAll(() => {
  folder = officeFolder();
  const profile = installed(folder);
  const steps: Step[] = [["library"], ["wizard"], ["open"]];
  const places = WAYS.map((way, index) => {
    let row = 0;
    return cases.map((one) => {
      const { steps: more, at } = entered(one, row, way, index === 1);
      row += heightOf(one);
      steps.push(...more);
      return at;
    });
  });
  const first = steps.length;
  for (const at of places.flat()) steps.push(["read", at]);
  const asked = places.map((all) => all.map((at, index) => errorsOf(cases[index] as Case).map(([down, right]) => {
    steps.push(["menu", "why", { sheet: at.sheet, row: at.row + down, column: right }]);
    return { down, right, step: steps.length - 1 };
  })));
  const answers = inCalc(folder, profile, steps);
  [library, wizard] = answers as [unknown, typeof wizard];
  shown = new Map(WAYS.map((way, index) => [way, cases.map((_, at) => {
    const cells = answers[first + index * cases.length + at] as readonly (readonly ShownCell[])[];
    const said = new Map(asked[index]?.[at]?.map(({ down, right, step }) => [`${down},${right}`, String(answers[step])]));
    return cells.map((row, down) => row.map((cell, right) =>
      typeof cell === "object" ? `${cell.error} ${said.get(`${down},${right}`)?.replace(/^.*?[.][A-Z]+\d+: /, "")}` : cell));
  })]));
});
afterAll(() => removeFolder(folder));

test("the office reads from the type library every function with its arguments and what it answers", () => {
  expect(library).toEqual(listed.map(({ id, parameters, result }) => ({
    name: id.toLowerCase(),
    returns: result.dimensionality === "matrix" ? "[][]any" : "any",
    parameters: parameters.map((_, index) => ({ name: `a${index}`, type: "any", isIn: true, isOut: false })),
  })));
});

test("the function wizard shows every function with its dot, its text and its arguments", () => {
  const found = new Map(wizard.map((one) => [one.name, one]));
  expect(found.size).toBe(listed.length);
  for (const { name, description, parameters } of listed) {
    const args = parameters.map((one) => [one.name, one.description, true]);
    expect(found.get(`${NAMESPACE}.${name}`)).toMatchObject({ description, arguments: args });
  }
});

const withHeadings = (rows: readonly (readonly unknown[])[]): Record<string, unknown>[] => {
  const [headings = [], ...data] = rows;
  return data.map((row) => Object.fromEntries(row.map((cell, index) => [String(headings[index]), cell])));
};

/** A cell of the bundle as Calc can show it. */
const asShown = (cell: unknown): unknown => {
  if (isError(cell)) return `${cell.code} ${cell.message}`;
  return typeof cell === "boolean" ? Number(cell) : (cell ?? "");
};

const differs = (cell: unknown, own: unknown): boolean => {
  if (typeof cell !== "number" || typeof own !== "number") return JSON.stringify(cell) !== JSON.stringify(own);
  return Math.abs(cell - own) > CLOSE * Math.max(1, Math.abs(own));
};

describe.each(WAYS)("every example of every function, through cells of Calc: %s", (way) => {
  test.each(cases.map((one, index) => [`${formula(one.declaration, one.example.given)} [${one.example.from}]`, one, index] as const))(
    "%s", (_, { example, answer }, index) => {
      const cells = shown.get(way)?.[index] ?? [];
      if ("fails" in example) {
        expect(cells[0]?.[0]).toBe(`${example.fails} ${example.says}`);
      } else if ("gives" in example) {
        const gives = typeof example.gives === "object" ? example.gives : [[example.gives]];
        expect(cells.map((row) => row.map(rounded))).toEqual(gives.map((row) => row.map(rounded)));
      } else {
        const found = withHeadings(cells.map((row) => row.map(rounded)));
        for (const row of example.shows) {
          const wanted = Object.fromEntries(Object.entries(row).map(([heading, cell]) => [words(heading), rounded(cell)]));
          expect(found).toContainEqual(expect.objectContaining(wanted));
        }
      }
      const own = answer.map((row) => row.map(asShown));
      const different = cells.flatMap((row, down) =>
        row.flatMap((cell, right) => (differs(cell, own[down]?.[right]) ? [[down, right, cell]] : [])));
      expect(different).toEqual([]);
    },
  );
});
