import { readFileSync } from "node:fs";
import path from "node:path";
import { createContext, runInContext } from "node:vm";
import { Linter } from "eslint";
import { withEdition2020 } from "./edition-2020";
import { builtFunctions } from "./stand-in";

/** What Excel loads on the oldest Mac, and the page for a telephone. The live sheet's own engine is of a later edition. */
const files = ["functions.js", "taskpane.js", "at-stair.js", "stand-in.js"].map((name) =>
  [name, readFileSync(path.join(path.dirname(builtFunctions), name), "utf8")] as const);

const read = (text: string): readonly string[] =>
  new Linter().verify(text, { languageOptions: { ecmaVersion: 2020, sourceType: "script" } }).map(({ message }) => message);

test.each(files)("%s is written in the signs of ES2020", (_, text) => {
  expect(read(text)).toEqual([]);
});

test("the reader that says so knows later signs for an error", () => {
  // Logical assignment and separators in numbers came with ES2021, class fields and blocks with ES2022, the v flag with ES2024.
  for (const later of ["a ??= 1;", "a = 1_000;", "class A { b = 1; }", "class A { static { } }", "a = /[a]/v;"])
    expect([later, read(later).length]).toEqual([later, 1]);
});

/**
 * Looking behind is of ES2018, but the last engine to read it was WebKit, in which Excel runs a Mac's add-ins
 * (github.com/web-platform-tests/interop/issues/171; from Safari 16.4 on, from memory). An older one refuses the whole file.
 */
test.each(files)("no expression of %s looks behind", (_, text) => {
  expect(/\(\?<[=!]/.exec(text)).toBeNull();
});

test("the engine that the examples run in has lost what came later, and nothing of its own edition", () => {
  const context = createContext(Object.create(null));
  withEdition2020(context);
  const has = (text: string): unknown => runInContext(`typeof ${text}`, context);
  // Later: ES2021 replaceAll, Promise.any, WeakRef; ES2022 at, hasOwn; ES2023 findLast, toSorted; the page's structuredClone.
  for (const later of [
    '"".replaceAll', "Promise.any", "WeakRef", "[].at", '"".at', "Object.hasOwn", "[].findLast", "[].toSorted", "new Uint8Array().at",
    "new Uint8Array().toSorted", "structuredClone", "console", "Map.groupBy", "Object.groupBy", "new Set().union", "[].values().map",
  ]) expect([later, has(later)]).toEqual([later, "undefined"]);
  for (const own of [
    "[].flatMap", "Object.fromEntries", '"".matchAll', "BigInt.asIntN", "Promise.allSettled", "globalThis.Math.hypot", "[].values().next",
  ]) expect([own, has(own)]).toEqual([own, "function"]);
});
