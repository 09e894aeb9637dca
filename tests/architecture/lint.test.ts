import path from "node:path";
import { plantedTree } from "./planted-tree";

const toolTime = 60_000;

describe("lint catches", () => {
  let found: Readonly<Record<string, readonly (string | null)[]>>;

  beforeAll(() => {
    const tree = plantedTree({
      "src/solver/today.ts": "export const today = (): number => Date.now();\n",
      "src/solver/new-date.ts": "export const today = (): unknown => new Date();\n",
      "src/solver/luck.ts": "export const luck = (): number => Math.random();\n",
      "src/solver/board.ts": "export class Board {}\n",
      "src/solver/nameless.ts": "export default 1;\n",
      "src/solver/loose.ts": "export const same = (a: number, b: number): boolean => a == b;\n",
      "src/solver/loud.ts": 'console.log("loud");\n',
      "src/solver/unused.ts": "const unused = 1;\nexport const used = 2;\n",
      "src/solver/clean.ts": "export const double = (rise: number): number => rise * 2;\n",
      "src/solver/long.ts": `export const long = (all: number[]): void => {\n${"  all.push(1);\n".repeat(60)}};\n`,
      "src/solver/screen.ts": `export const screen = (all: number[]): void => {\n${"  all.push(1);\n\n".repeat(58)}};\n`,
      "src/web/today.ts": "export const today = (): number => Date.now();\n",
      "src/serve/loud.ts": 'console.log("open");\n',
    });
    try {
      const { output } = tree.run("eslint/bin/eslint.js", [
        "--config",
        path.join(__dirname, "eslint.config.cjs"),
        "--format",
        "json",
        "src",
      ]);
      const results = JSON.parse(output) as { filePath: string; messages: { ruleId: string | null }[] }[];
      found = Object.fromEntries(
        results.map(({ filePath, messages }) => [filePath.split(path.sep).slice(-2).join("/"), messages.map(({ ruleId }) => ruleId)]),
      );
    } finally {
      tree.remove();
    }
  }, toolTime);

  test.each([
    ["the clock in a solver", "solver/today.ts", "no-restricted-globals"],
    ["a date in a solver", "solver/new-date.ts", "no-restricted-globals"],
    ["chance in a solver", "solver/luck.ts", "no-restricted-properties"],
    ["a class in a solver", "solver/board.ts", "no-restricted-syntax"],
    ["a default export in a solver", "solver/nameless.ts", "no-restricted-syntax"],
    ["a loose comparison", "solver/loose.ts", "eqeqeq"],
    ["a message to the console", "solver/loud.ts", "no-console"],
    ["a function longer than a screen", "solver/long.ts", "max-lines-per-function"],
    ["a name nobody uses", "solver/unused.ts", "@typescript-eslint/no-unused-vars"],
  ])("%s", (_, file, rule) => {
    expect(found[file]).toEqual([rule]);
  });

  test.each([
    ["a plain solver", "solver/clean.ts"],
    ["a function of sixty lines that hold something", "solver/screen.ts"],
    ["the clock outside the solver", "web/today.ts"],
    ["the server talking to its user", "serve/loud.ts"],
  ])("nothing in %s", (_, file) => {
    expect(found[file]).toEqual([]);
  });
});
