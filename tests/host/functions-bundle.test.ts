import { readFileSync } from "node:fs";
import { catalogue } from "../../src/functions/catalogue";
import { associated, builtFunctions } from "./stand-in";

test("the built functions run where there is nothing but the language, and associate every function of the catalogue once", () => {
  expect([...associated().keys()].sort()).toEqual(catalogue.map(({ id }) => id).sort());
});

test.each([
  ["evaluates text", /\beval\s*\(|\bnew Function\b|[^.\w]Function\s*\(/],
  ["touches a page", /\b(document|window|navigator|localStorage)\b/],
  ["asks the network", /\bfetch\s*\(|XMLHttpRequest|WebSocket|importScripts/],
  ["loads another file", /\bimport\s*\(|\brequire\s*\(/],
  ["points to a source map", /sourceMappingURL/],
])("nothing in the built functions %s", (_, pattern) => {
  expect(pattern.exec(readFileSync(builtFunctions, "utf8"))?.[0]).toBeUndefined();
});
