import { readFileSync } from "node:fs";
import { createContext, runInContext } from "node:vm";
import { Linter } from "eslint";
import { withEdition2020 } from "./edition-2020";
import { builtFunctions } from "./stand-in";

const bundle = readFileSync(builtFunctions, "utf8");

const read = (text: string): readonly string[] =>
  new Linter().verify(text, { languageOptions: { ecmaVersion: 2020, sourceType: "script" } }).map(({ message }) => message);

test("the file is written in the signs of ES2020", () => {
  expect(read(bundle)).toEqual([]);
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
test("no expression looks behind", () => {
  expect(/\(\?<[=!]/.exec(bundle)).toBeNull();
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
