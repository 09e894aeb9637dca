import { catalogue } from "../../src/functions/catalogue";
import type { Declaration } from "../../src/functions/declare";
import { argumentsOf, formula } from "../../src/functions/formula";
import { words } from "../../src/solver/words";
import { withEdition2020 } from "../host/edition-2020";
import { associated, builtFunctions, type WorksheetFunction } from "../host/stand-in";

/** Numbers agree to ten significant digits: an example prints what a cell shows, not every bit of a square root. */
const SIGNIFICANT = 10;

const rounded = (cell: unknown): unknown => (typeof cell === "number" ? Number(cell.toPrecision(SIGNIFICANT)) : cell);

/** A result as rows of plain cells; an error cell as its code and sentence. */
const plain = (answer: unknown): unknown[][] => {
  const rows = Array.isArray(answer) ? (answer as unknown[][]) : [[answer]];
  return rows.map((row) =>
    row.map((cell) => {
      if (typeof cell !== "object" || cell === null) return rounded(cell);
      const { code, message } = cell as { code: string; message: string };
      return `${code} ${message}`;
    }),
  );
};

const answered = (
  functions: ReadonlyMap<string, WorksheetFunction>, declaration: Declaration, given: Declaration["examples"][number]["given"],
): unknown => {
  const solve = functions.get(declaration.id);
  if (solve === undefined) throw new Error(`functions.js does not associate ${declaration.id}`);
  const cells = argumentsOf(declaration, given).map((cell) => (cell === null ? undefined : cell));
  try {
    return solve(...cells);
  } catch (error) {
    return error;
  }
};

const rowsWithHeadings = (rows: unknown[][]): Record<string, unknown>[] => {
  const [headings = [], ...data] = rows;
  return data.map((row) => Object.fromEntries(row.map((cell, index) => [String(headings[index]), cell])));
};

describe.each([
  ["through the built functions.js", associated()],
  // The browser of a Mac's system, in which Excel runs it there, is as old as the system.
  ["in an engine that has the names of ES2020 and no later ones", associated(builtFunctions, withEdition2020)],
])("every example of every function, %s", (_, functions) => {
  for (const declaration of catalogue) {
    for (const example of declaration.examples) {
      test(`${formula(declaration, example.given)} [${example.from}]`, () => {
        const rows = plain(answered(functions, declaration, example.given));
        if ("fails" in example) {
          expect(rows[0]?.[0]).toBe(`${example.fails} ${example.says}`);
        } else if ("gives" in example) {
          const gives = typeof example.gives === "object" ? example.gives : [[example.gives]];
          expect(rows).toEqual(gives.map((row) => row.map(rounded)));
        } else {
          const found = rowsWithHeadings(rows);
          for (const row of example.shows) {
            const wanted = Object.fromEntries(Object.entries(row).map(([heading, cell]) => [words(heading), rounded(cell)]));
            expect(found).toContainEqual(expect.objectContaining(wanted));
          }
        }
      });
    }
  }
});
