import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { excelHost } from "../../src/excel/excel-host";
import { EXCEL_API, officeCalls, versionNeeded } from "../../src/excel/office-calls";
import { NAMESPACE } from "../../src/functions/formula";
import { calledMembers, type CalledMember } from "./called-members";

const compilerTime = 60_000;
const manifest = readFileSync(path.resolve(__dirname, "../../manifest.xml"), "utf8");

let called: ReadonlyMap<string, readonly CalledMember[]>;

beforeAll(() => {
  called = calledMembers();
}, compilerTime);

test("every call of the platform stands in the table, under its file, and nothing else does", () => {
  const listed = Object.entries(officeCalls).map(([file, calls]) => [file, calls.map(({ member }) => member).sort()]);
  const found = [...called].map(([file, members]) => [file, members.map(({ member }) => member).sort()]);
  expect(new Map(listed as [string, string[]][])).toEqual(new Map(found as [string, string[]][]));
});

test("the requirement set of each is the one its own documentation names", () => {
  for (const [file, calls] of Object.entries(officeCalls)) {
    for (const { member, since } of calls) {
      const documented = called.get(file)?.find((one) => one.member === member);
      expect([member, documented?.set, documented?.since]).toEqual([member, since === undefined ? undefined : EXCEL_API, since]);
    }
  }
});

test("no other folder is given the platform's types, so the compiler lets none call it", () => {
  const folders = readdirSync(path.resolve(__dirname, "../../src"));
  const given = folders.filter((folder) => {
    const file = path.resolve(__dirname, "../../src", folder, "tsconfig.json");
    return existsSync(file) && readFileSync(file, "utf8").includes('"office-js"');
  });
  expect(given).toEqual(["excel"]);
});

test("what the manifest does not require is asked for before it is used", () => {
  const required = [...manifest.matchAll(/<Set Name="([^"]+)" MinVersion="([^"]+)"/g)].map(([, set, version]) => [set, version]);
  // SharedRuntime and CustomFunctionsRuntime: the functions work wherever the add-in is offered, so ExcelApi is left to the check at run
  // time.
  expect(required).toEqual([["SharedRuntime", "1.1"], ["CustomFunctionsRuntime", "1.3"]]);
  const asked: string[] = [];
  excelHost((set, version) => {
    asked.push(`${set} ${version}`);
    return true;
  });
  const versions = [
    versionNeeded("run", "cells", "selection"),
    versionNeeded("spills"),
    versionNeeded("run", "cells", "selection", "sheets", "sheet-looks", "sheet-settings", "sheet-rules"),
    versionNeeded("run", "cells", "selection", "mending"),
    versionNeeded("error-cells"),
    versionNeeded("run", "cells", "selection", "pictures"),
  ];
  // How ready sheets are set up takes no newer Excel than their cells; only blocks set together do.
  expect(versionNeeded("sheets", "sheet-looks", "sheet-settings", "sheet-rules")).toBe("1.8");
  versions.splice(2, 0, versionNeeded("areas"), versionNeeded("undo-group"));
  expect(asked).toEqual(versions.map((version) => `ExcelApi ${version ?? ""}`));
});

test("formulas carry the namespace of the manifest", () => {
  expect(/<bt:String id="Functions.Namespace" DefaultValue="([^"]+)"/.exec(manifest)?.[1]).toBe(NAMESPACE);
});

/** An Excel with ExcelApi up to a version. */
const excelUpTo = (newest: number) => (_set: string, version: string): boolean => Number(version.split(".")[1]) <= newest;

test("an Excel with everything lacks nothing", () => {
  const { lacks, cells, sheets, mending } = excelHost(excelUpTo(12));
  expect([lacks, cells, sheets, mending].map(Boolean)).toEqual([true, true, true, true]);
  expect(lacks).toEqual([]);
});

test("an Excel without spills goes without them, and says so", async () => {
  const { lacks, cells } = excelHost(excelUpTo(11));
  expect(lacks).toEqual([
    "Whether cells belong to a spilled table cannot be seen before an insert, and Why? cannot tell for spilled cells. This Excel " +
      "is too old for it: update Excel to one with ExcelApi 1.12.",
  ]);
  const place = { sheet: "Mine", row: 0, column: 0 };
  expect(await cells?.touchesSpill({ ...place, rows: 2, columns: 2 })).toBe(false);
  expect(await cells?.spills([place])).toEqual([undefined]);
});

test("an Excel too old for the cells is left its functions, and told", () => {
  const { lacks, cells, sheets, mending } = excelHost(excelUpTo(7));
  expect([cells, sheets, mending]).toEqual([undefined, undefined, undefined]);
  expect(lacks).toEqual([
    "Inserting functions, ready sheets, Why? and Mend are switched off; the functions themselves work in cells. This Excel is " +
      "too old for it: update Excel to one with ExcelApi 1.8.",
  ]);
});
