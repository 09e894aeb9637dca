import { plantedTree } from "./planted-tree";

const compiler = "typescript/lib/tsc.js";
const toolTime = 60_000;

const compiled = (solver: string) => {
  const tree = plantedTree({
    "src/solver/rise.ts": "export const rise = 7;\n",
    "src/functions/told.ts": "export const told = 7;\n",
    "src/solver/planted.ts": solver,
  });
  try {
    return tree.run(compiler, ["-b", "src/solver"]);
  } finally {
    tree.remove();
  }
};

test.each([
  ["the page", "export const page = document.title;\n", "Cannot find name 'document'"],
  ["the spreadsheet", "export const book = Excel;\n", "Cannot find name 'Excel'"],
  ["the network", 'export const answer = fetch("/");\n', "Cannot find name 'fetch'"],
  ["the disk", 'import { readFileSync } from "node:fs";\nexport const read = readFileSync;\n', "Cannot find module 'node:fs'"],
  ["the worksheet functions", 'import { told } from "../functions/told";\nexport const outward = told;\n', "is not listed within the file list of project"],
  ["a type of the worksheet functions", 'import type { told } from "../functions/told";\nexport type Outward = typeof told;\n', "is not listed within the file list of project"],
])(
  "the compiler refuses a solver that uses %s",
  (_, solver, says) => {
    const { status, output } = compiled(solver);
    expect(output).toContain(says);
    expect(status).not.toBe(0);
  },
  toolTime,
);

test(
  "the compiler takes a solver that uses only what it is given",
  () => {
    expect(compiled('import { rise } from "./rise";\nexport const two = rise * 2;\n')).toEqual({ status: 0, output: "" });
  },
  toolTime,
);
