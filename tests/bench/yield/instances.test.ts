import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { instancesOf, jobOfText, setsOf } from "./instances";

const TEXT = "# stair 1\nS 2\n96 700 -1\n40 0 3\nI 2\n36 5\n7 12\n";

describe("a published cutting job", () => {
  test("is read: -1 is any number, a stick for nothing is owned", () => {
    expect(jobOfText(TEXT)).toEqual({
      unit: "mm",
      stock: [{ length: 96, cents: 700, available: Infinity, owned: false }, { length: 40, cents: 0, available: 3, owned: true }],
      pieces: [{ length: 36, quantity: 5 }, { length: 7, quantity: 12 }],
    });
  });

  test.each([
    ["no stock", "I 1\n36 5\n", /"I 1" is not "S"/],
    ["a row cut short", "S 1\n96 700\nI 1\n36 5\n", /"96 700" is not a row of 3/],
    ["a length that is not whole", "S 1\n96 700 -1\nI 1\n36.5 5\n", /"36.5 5" is not a row/],
    ["fewer pieces than said", "S 1\n96 700 -1\nI 2\n36 5\n", /"the end" is not a row of 2/],
    ["more pieces than said", "S 1\n96 700 -1\nI 1\n36 5\n7 12\n", /"7 12" comes after/],
  ])("with %s is refused", (_, text, says) => {
    expect(() => jobOfText(text)).toThrow(says);
  });
});

describe("a folder of published jobs", () => {
  const folder = mkdtempSync(path.join(tmpdir(), "treadsheet-instances-"));
  mkdirSync(path.join(folder, "stairs"));
  writeFileSync(path.join(folder, "stairs", "1.txt"), TEXT);
  writeFileSync(path.join(folder, "stairs", "2.txt"), "S 1\n96 one -1\n");
  const listed = (name: string, set: string, file: string, more: object) => ({ name, set, file, kind: "1d", ...more });
  writeFileSync(
    path.join(folder, "index.json"),
    JSON.stringify([
      listed("proven", "stairs", "stairs/1.txt", { lb: 1000, ub: 2000, optimum: 1400 }),
      listed("open", "stairs", "stairs/1.txt", { lb: 1000, ub: 2000, optimum: null }),
      listed("unknown", "stairs", "stairs/1.txt", { lb: null, ub: null, optimum: null }),
      { ...listed("sheets", "sheets", "sheets/1.txt", {}), kind: "2d" },
      listed("broken", "broken", "stairs/2.txt", {}),
    ]),
  );
  afterAll(() => rmSync(folder, { recursive: true }));

  test("has sets, those of sheets left out", () => {
    expect(setsOf(folder)).toEqual(["stairs", "broken"]);
  });

  test("tells between which costs the least one lies", () => {
    expect(instancesOf(folder, "stairs").map(({ name, least, most }) => [name, least, most])).toEqual([
      ["proven", 1400, 1400],
      ["open", 1000, 2000],
      ["unknown", 0, Infinity],
    ]);
    expect(instancesOf(folder, "stairs")[0]!.job).toEqual(jobOfText(TEXT));
  });

  test("names the file that cannot be read", () => {
    expect(() => instancesOf(folder, "broken")).toThrow(/2\.txt: "96 one -1" is not a row/);
  });
});
