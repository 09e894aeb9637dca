/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { tapeRules } from "../../src/sheets/tape-rules";
import { format } from "../../src/workbook/fraction-format";
import type { CellValue } from "../../src/workbook/workbook";
import type { PlainValue } from "../../src/workbook/workbook-data";
import { closeWorkbooks, openedWorkbook } from "../workbook/opened-workbook";

afterEach(closeWorkbooks);

const columnOf = (rule: number): string => String.fromCharCode("B".charCodeAt(0) + rule);

/** Which rules of a format hold for each value, worked out in a sheet: RC is the cell itself (R1C1 notation). */
const held = async (pattern: string, values: readonly (PlainValue | null)[]): Promise<CellValue[][]> => {
  const rules = tapeRules(pattern);
  const book = await openedWorkbook({
    Rules: Object.fromEntries(
      values.flatMap((value, row) => [
        ...(value === null ? [] : [[`A${row + 1}`, value] as const]),
        ...rules.map(({ formula }, at) => [`${columnOf(at)}${row + 1}`, formula.replaceAll("RC", `A${row + 1}`)] as const),
      ]),
    ),
  });
  return values.map((_, row) => rules.map((__, at) => book.value("Rules", `${columnOf(at)}${row + 1}`)));
};

/** Read by hand on a tape of so many divisions: whole inches, and the coarsest mark that the nearest division lies on. */
const onTape = (size: number, division: number): string => {
  const counted = Math.floor(Math.abs(size) * division + 0.5);
  const [whole, left] = [Math.floor(counted / division), counted % division];
  const mark = [1, 2, 4, 8, 16, 32, 64].find((parts) => Number.isInteger((left * parts) / division)) ?? 0;
  const parts = [...(whole > 0 || left === 0 ? [String(whole)] : []), ...(left === 0 ? [] : [`${(left * mark) / division}/${mark}`])];
  return `${size < 0 && counted > 0 ? "-" : ""}${parts.join(" ")}`;
};

const SIZES = [
  0, 0.02, -0.02, 0.031, 0.5, -0.2321, 7.5625, 7.5804, 7.49, 7.52, 7.99, 7.96, -7.99, 106.125, 36.8125, 1 / 3, 7.03125, 0.953125,
];
const ON_MARKS = Array.from({ length: 65 }, (_, count) => 9 + count / 64);

test.each([16, 32, 64])("in Excel a length in 1/%i is shown as on a tape: one rule holds, or its own format does", async (division) => {
  const pattern = `# ??/${division}`;
  const sizes = [...SIZES, ...ON_MARKS, ...ON_MARKS.map((size) => -size)];
  const rules = tapeRules(pattern);
  const found = await held(pattern, sizes);
  for (const [at, size] of sizes.entries()) {
    const holding = rules.filter((_, rule) => found[at]?.[rule] === true);
    expect([size, holding.length <= 1]).toEqual([size, true]);
    const shown = format(holding[0]?.numberFormat ?? pattern, size);
    expect([size, shown.trim().replace(/\s+/g, " ").replace(/^- /, "-")]).toEqual([size, onTape(size, division)]);
  }
});

test("a text, a blank cell and TRUE are left as they are, and none makes an error of a rule", async () => {
  expect(await held("# ??/16", ["any", "10'", null, true, ""])).toEqual(Array(5).fill([false, false, false, false, false]));
  const [, { formula } = { formula: "" }] = tapeRules("# ??/16");
  const book = await openedWorkbook({ Rules: { A1: "=NA()", B1: formula.replaceAll("RC", "A1") } });
  expect(book.value("Rules", "B1")).toBe(false);
});

test("what is printed behind a length, or how its whole is written, stays; other formats have no rules", () => {
  const formats = (pattern: string) => tapeRules(pattern).map(({ numberFormat }) => numberFormat);
  expect(formats('# ??/16\\"')).toEqual(['0\\";0\\"', '0\\"', '# ?/2\\"', '# ?/4\\"', '# ?/8\\"']);
  expect(formats("0 ??/16")).toEqual(["0;0", "0", "0 ?/2", "0 ?/4", "0 ?/8"]);
  expect(tapeRules("#,##0 ??/16")[1]?.numberFormat).toBe("#,##0");
  for (const pattern of ["0.00", "General", "# ??/??", "# ?/8", "@", "# ??/16;[Red]-# ??/16"]) expect(tapeRules(pattern)).toEqual([]);
});
