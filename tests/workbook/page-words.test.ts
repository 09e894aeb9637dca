import { readFileSync } from "node:fs";
import path from "node:path";
import { noRawKeys } from "../../src/workbook/page/no-raw-keys";
import { pageWords } from "../../src/workbook/page/page-words";

// The package itself does not load inside a test; this is all that its function does.
jest.mock("@univerjs/core", () => ({ mergeLocales: (...words: readonly object[]) => Object.assign({}, ...words) as object }));

const shipped = readFileSync(path.resolve(__dirname, "../../dist/web.js"), "utf8");

const within = (part: unknown, key: string): unknown => (typeof part === "object" && part !== null ? Reflect.get(part, key) : undefined);

const wordOf = (name: string): unknown => name.split(".").reduce<unknown>(within, pageWords);

const isOfEngine = (name: string): boolean => Object.hasOwn(pageWords, name.split(".")[0] ?? "");

/** Names by which the page's script asks for words: those it hands to t, and those it keeps for what it shows. */
const asked = [...shipped.matchAll(/[^\w]t\(\s*["'`]([a-z][\w-]*(?:[.][\w-]+)+)["'`]/g)].flatMap(([, name]) => name ?? []);
const kept = [...shipped.matchAll(/\b(\w+):\s*["'`]([a-z][\w-]*(?:[.][\w-]+)+)["'`]/g)].flatMap(([, as, name = ""]) =>
  as === "id" || as === "aliasFunctionName" || !isOfEngine(name) ? [] : [name]);

/** Not a word: the place of a menu. */
const PLACES = ["ui.ribbon.menu"];

test("each word that the page's script asks for by a name is there, so that no name can be shown in its place", () => {
  const names = [...new Set([...asked, ...kept])].filter((name) => !PLACES.includes(name));
  expect(names.length).toBeGreaterThan(1000);
  expect(names.filter((name) => typeof wordOf(name) !== "string")).toEqual([]);
});

test("no word of a menu is a name of the program", () => {
  const menus = Object.entries(pageWords).flatMap(([of, part]) =>
    of === "sheets-formula" ? [] : JSON.stringify(part).match(/(?<=:")[^"]*(?=")/g) ?? []);
  expect(menus.length).toBeGreaterThan(300);
  expect(menus.filter((word) => /^[a-z]+[A-Z]\w*$/.test(word))).toEqual([]);
});

test("a name made up while the page runs is shown as words, a text as it is, and a function without another name by its own", () => {
  const service = { t: (name: string): string => (name === "ui.toolbar.heading" ? "Heading" : name) };
  noRawKeys(service);
  expect([
    "ui.toolbar.heading", "sheets-formula.progress.half-done", "sheets-ui.borderLine.borderTlbr", "What it is, e.g. 3.5", "sheet.x.y",
    "sheets-formula.functionList.SUM.aliasFunctionName",
  ].map((name) => service.t(name))).toEqual([
    "Heading", "half done", "border tlbr", "What it is, e.g. 3.5", "sheet.x.y", "sheets-formula.functionList.SUM.aliasFunctionName",
  ]);
});
