import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const project = path.resolve(__dirname, "../..");
/** For the engine to start once on a busy machine, in milliseconds. */
const STARTING = 120_000;

const pages = readdirSync(path.join(project, "docs")).filter((name) => name.endsWith(".md"));
const documents = ["README.md", ...pages.map((name) => `docs/${name}`)];

/** The commands that a document tells to type, each parted as a shell parts it. */
const commandsOf = (document: string): readonly (readonly string[])[] =>
  [...readFileSync(path.join(project, document), "utf8").matchAll(/^ {4}node (dist\/tools\/treadsheet[.]cjs .*)$/gm)].map(([, line = ""]) =>
    [...line.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map(([, double, single, plain]) => double ?? single ?? plain ?? ""));

const told = documents.map((document) => ({ document, commands: commandsOf(document) })).filter(({ commands }) => commands.length > 0);

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-documents-"));
  symlinkSync(path.join(project, "dist"), path.join(folder, "dist"), "junction");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("the README and the page on LibreOffice tell commands, and none has a remark behind it, which not every shell takes for one", () => {
  expect(told.map(({ document }) => document)).toEqual(["README.md", "docs/libreoffice.md"]);
  expect(told.flatMap(({ commands }) => commands.flat()).filter((part) => part.includes("#"))).toEqual([]);
});

test.each(told)("every command of $document does what it says, typed as it stands, one after the other", ({ commands }) => {
  const ended = commands.map((parts) => {
    const { status, stderr } = spawnSync(process.execPath, parts, { cwd: folder, encoding: "utf8" });
    return [parts.join(" "), status, stderr];
  });
  expect(ended).toEqual(commands.map((parts) => [parts.join(" "), 0, ""]));
  const written = commands.map((parts) => parts[parts.indexOf("--out") + 1] ?? "").filter((name) => /[.](xlsx|svg)$/.test(name));
  const there = readdirSync(folder);
  // Several drawings stand beside the name, each with its own.
  const isThere = (name: string): boolean => there.includes(name) || there.includes(name.replace(".svg", " elevation.svg"));
  expect([written.length > 0, written.filter((name) => !isThere(name))]).toEqual([true, []]);
}, 5 * STARTING);
