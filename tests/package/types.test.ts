import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import ts from "typescript";
import { catalogue } from "../../src/functions/catalogue";
import type { Declaration } from "../../src/functions/declare";
import { exportedName } from "../../src/package/exported-name";
import { scriptCall } from "../../src/generate/script-call";
import { examples } from "./example-calls";

const project = path.resolve(__dirname, "../..");
/** For the compiler on a busy machine, in milliseconds. */
const COMPILING = 120_000;

const SOUND = `
import { type Cell, layout, pick, risers, type Rows, tape, TreadsheetError, variance } from "treadsheet";
export const count: number = risers("9' 0 1/2\\"", 8, "in");
export const counts: Rows = risers([[108.5], ["2781 mm"]]);
export const mark: string = tape(7.75, 16, false);
export const rise: string | number | boolean = pick(layout(Object.entries({ "total rise": 108.5, risers: count, run: 10 })), "unit rise");
export const [[price, word]] = variance(4, 10, 5, 10);
export const sum: number = price + word.length;
export const sentences = counts.flat().map((cell: Cell) => (cell instanceof TreadsheetError ? \`\${cell.code} \${cell.message}\` : ""));
`;

/** One a line. */
const WRONG = [
  'import { layout, risers, tape, toMm } from "treadsheet";',
  "risers();",
  "risers(true);",
  'risers(108.5, 8, "cm");',
  "risers(108.5, { maxRise: 8 });",
  'risers(108.5, 8, "in", 1);',
  "export const text: string = risers(108.5);",
  "export const one: number = risers([108.5]);",
  "tape(7.75, 10);",
  "layout({ run: 10 });",
  'toMm("7/16").toFixed(2).risers();',
];

/** A call of each example that has an answer; what the example says the answer is, is of the type the call has. */
const EXAMPLES = [
  'import * as stairs from "treadsheet";',
  ...examples.flatMap(({ declaration, example }, index) => {
    if ("fails" in example) return [];
    const call = `let answer${index} = stairs.${scriptCall(declaration, example)};`;
    return "gives" in example ? [call, `answer${index} = ${JSON.stringify(example.gives)};`] : [call];
  }),
].join("\n");

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-types-"));
  for (const name of ["package.json", "dist/tools/package"])
    cpSync(path.join(project, name), path.join(folder, "node_modules/treadsheet", name), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

/** The lines that the compiler finds fault with, by file. */
const faults = (files: Readonly<Record<string, string>>, ...options: readonly string[]): readonly string[] => {
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
  const tsc = path.join(project, "node_modules/typescript/lib/tsc.js");
  const given = ["--noEmit", "--strict", "--target", "es2022", "--pretty", "false", ...options, ...Object.keys(files)];
  const { stdout } = spawnSync(process.execPath, [tsc, ...given], { cwd: folder, encoding: "utf8" });
  return stdout.trim() === "" ? [] : stdout.trim().split("\n").filter((line) => !line.startsWith(" "));
};

test("a script compiles against the types, imported and required; each wrong call does not", () => {
  const found = faults(
    { "sound.mts": SOUND, "sound.cts": SOUND, "examples.mts": EXAMPLES, "wrong.mts": WRONG.join("\n") },
    "--module", "node16", "--moduleResolution", "node16",
  );
  expect(found.filter((line) => !line.startsWith("wrong.mts"))).toEqual([]);
  const lines = new Set(found.map((line) => Number(/^wrong\.mts\((\d+),/.exec(line)?.[1])));
  expect([...lines]).toEqual(WRONG.slice(1).map((_, index) => index + 2));
}, COMPILING);

test.each([
  ["as a bundler resolves", ["--module", "esnext", "--moduleResolution", "bundler"]],
  ["as it was resolved before packages had exports", ["--module", "commonjs", "--moduleResolution", "node10"]],
])("the types are found %s", (_, options) => {
  expect(faults({ "sound.ts": SOUND }, ...options)).toEqual([]);
}, COMPILING);

/** What is written over a function, as the compiler reads it; of several ways to call it, over the first. */
const documented = (): ReadonlyMap<string, ts.FunctionDeclaration> => {
  const text = readFileSync(path.join(project, "dist/tools/package/functions.d.cts"), "utf8");
  const { statements } = ts.createSourceFile("functions.d.cts", text, ts.ScriptTarget.ES2022, true);
  return new Map(statements.filter(ts.isFunctionDeclaration).reverse().map((one) => [one.name?.text ?? "", one]));
};

const plainComment = (comment: Parameters<typeof ts.getTextOfJSDocComment>[0]): string =>
  (ts.getTextOfJSDocComment(comment) ?? "").replace(/\\([{}@<>])/g, "$1");

describe("over each function, as an editor shows it, stand", () => {
  const all = documented();

  const functions = catalogue.map((one) => [exportedName(one), one] as const);
  test.each(functions)("%s: its meaning, arguments, answer, errors, an example", (name, one) => {
    const written = all.get(name);
    if (written === undefined) throw new Error(`${name} has no type`);
    const [comment] = ts.getJSDocCommentsAndTags(written).filter(ts.isJSDoc);
    const tags = ts.getJSDocTags(written);
    const said = (tag: string): string =>
      tags.filter(({ tagName }) => tagName.text === tag).map((found) => plainComment(found.comment)).join();
    expect(plainComment(comment?.comment)).toBe(one.says);
    const given = tags.filter(ts.isJSDocParameterTag).map((tag) => [tag.name.getText(), plainComment(tag.comment)]);
    expect(given).toEqual(Object.entries(one.parameters).map(([key, { says }]) => [key, expect.stringContaining(says)]));
    expect(said("returns")).toContain(one.result.says);
    expect(said("example")).toContain(`${name}(`);
    expect(said("remarks")).toContain(one.source);
    for (const { says } of Object.values<Declaration["problems"][string]>(one.problems))
      expect(said("throws")).toContain(says.replace(/`([^`]+)`/g, '"$1"'));
  });
});
