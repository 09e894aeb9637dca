import { plantedTree } from "./planted-tree";

const compiler = "typescript/lib/tsc.js";
const toolTime = 60_000;

/** What the compiler says of a solver with these files beside one that is sound. */
const compiled = (planted: Readonly<Record<string, string>>) => {
  const tree = plantedTree({
    "src/solver/rise.ts": "export const rise = 7;\n",
    "src/functions/told.ts": "export const told = 7;\n",
    ...Object.fromEntries(Object.entries(planted).map(([name, text]) => [`src/solver/${name}.ts`, text])),
  });
  try {
    return tree.run(compiler, ["-b", "src/solver"]);
  } finally {
    tree.remove();
  }
};

/** Planted together; files of other projects each apart, as the compiler then says nothing else and names the first that asks for one. */
const PLANTED = [
  {
    page: ["export const page = document.title;\n", "Cannot find name 'document'"],
    spreadsheet: ["export const book = Excel;\n", "Cannot find name 'Excel'"],
    network: ['export const answer = fetch("/");\n', "Cannot find name 'fetch'"],
    disk: ['import { readFileSync } from "node:fs";\nexport const read = readFileSync;\n', "Cannot find module 'node:fs'"],
  },
  {
    functions: [
      'import { told } from "../functions/told";\nexport const outward = told;\n',
      "is not listed within the file list of project",
    ],
  },
  {
    "type-of-functions": [
      'import type { told } from "../functions/told";\nexport type Outward = typeof told;\n',
      "is not listed within the file list of project",
    ],
  },
] as const satisfies readonly Readonly<Record<string, readonly [string, string]>>[];

test.each(PLANTED)(
  "the compiler refuses a solver that uses the page, the spreadsheet, the network, the disk or the worksheet functions: %#",
  (planted) => {
    const faults: readonly (readonly [string, readonly string[]])[] = Object.entries(planted);
    const { status, output } = compiled(Object.fromEntries(faults.map(([name, [text = ""]]) => [name, text])));
    for (const [name, [, says = ""]] of faults) {
      const about = output.split("\n").filter((line) => line.includes(`src/solver/${name}.ts`)).join("\n");
      expect([name, about]).toEqual([name, expect.stringContaining(says)]);
    }
    expect(status).not.toBe(0);
  },
  toolTime,
);

test(
  "the compiler takes a solver that uses only what it is given",
  () => {
    expect(compiled({ sound: 'import { rise } from "./rise";\nexport const two = rise * 2;\n' })).toEqual({ status: 0, output: "" });
  },
  toolTime,
);
