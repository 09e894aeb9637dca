/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

const project = path.resolve(__dirname, "../..");
const readme = readFileSync(path.join(project, "README.md"), "utf8");

afterEach(closeWorkbooks);

test("each formula of the README gives what stands beside it, and its picture is there", async () => {
  const formulas = [...readme.matchAll(/^ {4}(=\S.*?) {2,}(\S+(?: \S+)*)(?: {2,}.*)?$/gm)].map(([, formula = "", result = ""]) => ({
    formula,
    result,
  }));
  expect(formulas.length).toBeGreaterThan(1);
  const book = await openedWorkbook({ Readme: Object.fromEntries(formulas.map(({ formula }, row) => [`A${row + 1}`, formula])) });
  expect(formulas.map((_, row) => String(book.value("Readme", `A${row + 1}`)))).toEqual(formulas.map(({ result }) => result));
  for (const [, picture = ""] of readme.matchAll(/!\[[^\]]+\]\(([^)]+)\)/g))
    expect([picture, existsSync(path.join(project, picture))]).toEqual([picture, true]);
});
