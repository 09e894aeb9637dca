import { chmodSync, lstatSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { writeOver, writeWhole } from "../../src/cli/written-file";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-written-"));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const at = (...names: readonly string[]): string => path.join(folder, ...names);
const text = (file: string): string => readFileSync(file, "utf8");

test("a link stays a link, and what it leads to is written, with the rights it had", () => {
  mkdirSync(at("jobs"));
  writeFileSync(at("jobs", "bid.xlsx"), "old");
  chmodSync(at("jobs", "bid.xlsx"), 0o640);
  symlinkSync(at("jobs", "bid.xlsx"), at("bid.xlsx"));
  writeWhole(at("bid.xlsx"), Buffer.from("new"));
  expect(lstatSync(at("bid.xlsx")).isSymbolicLink()).toBe(true);
  expect([text(at("jobs", "bid.xlsx")), statSync(at("jobs", "bid.xlsx")).mode & 0o777]).toEqual(["new", 0o640]);
  expect([readdirSync(folder), readdirSync(at("jobs"))]).toEqual([["bid.xlsx", "jobs"], ["bid.xlsx"]]);
});

test("each time the file as it was has a name of its own", () => {
  writeFileSync(at("bid.xlsx"), "one");
  expect(writeOver(at("bid.xlsx"), Buffer.from("one"), Buffer.from("two"))).toBe(at("bid before.xlsx"));
  // A link that leads nowhere is a name that is taken too.
  symlinkSync(at("nowhere"), at("bid before 2.xlsx"));
  expect(writeOver(at("bid.xlsx"), Buffer.from("two"), Buffer.from("three"))).toBe(at("bid before 3.xlsx"));
  expect(["bid before.xlsx", "bid before 3.xlsx", "bid.xlsx"].map((name) => text(at(name)))).toEqual(["one", "two", "three"]);
  expect(readdirSync(folder)).not.toContain("nowhere");
});

test("what cannot be written ends in a sentence, and leaves nothing beside it", () => {
  mkdirSync(at("folder.xlsx"));
  expect(() => writeWhole(at("folder.xlsx"), Buffer.from("new"))).toThrow(/folder\.xlsx was not written: /);
  expect(() => writeWhole(at("none", "bid.xlsx"), Buffer.from("new"))).toThrow(/bid\.xlsx was not written: /);
  expect(readdirSync(folder)).toEqual(["folder.xlsx"]);
});
