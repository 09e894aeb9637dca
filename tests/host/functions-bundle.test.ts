import { readFileSync } from "node:fs";
import ts from "typescript";
import { catalogue } from "../../src/functions/catalogue";
import { associated, builtFunctions } from "./stand-in";

test("the built functions run where there is nothing but the language, and associate every function of the catalogue once", () => {
  expect([...associated().keys()].sort()).toEqual(catalogue.map(({ id }) => id).sort());
});

test.each([
  ["evaluates text", /\beval\s*\(|\bnew Function\b|[^.\w]Function\s*\(/],
  ["asks the network", /\bfetch\s*\(|XMLHttpRequest|WebSocket|importScripts/],
  ["loads another file", /\bimport\s*\(|\brequire\s*\(/],
  ["points to a source map", /sourceMappingURL/],
])("nothing in the built functions %s", (_, pattern) => {
  expect(pattern.exec(readFileSync(builtFunctions, "utf8"))?.[0]).toBeUndefined();
});

/** Names used as code, not words inside sentences: a code's title may well be a document. */
const namesIn = (node: ts.Node): string[] => {
  const names: string[] = ts.isIdentifier(node) ? [node.text] : [];
  node.forEachChild((child) => {
    for (const name of namesIn(child)) names.push(name);
  });
  return names;
};

test("nothing in the built functions touches a page", () => {
  const names = new Set(namesIn(ts.createSourceFile("functions.js", readFileSync(builtFunctions, "utf8"), ts.ScriptTarget.ES2020)));
  expect(names.has("CustomFunctions")).toBe(true);
  expect(["document", "window", "navigator", "localStorage"].filter((name) => names.has(name))).toEqual([]);
});
