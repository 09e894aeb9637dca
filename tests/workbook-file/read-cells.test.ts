import { columnName } from "../../src/sheets/cell-address";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { noWork } from "../../src/workbook-file/xml-tree";
import { smallFile, smallParts } from "./small-file";
import { packed } from "./as-excel-saves";

const counting = (count: number): readonly number[] => Array.from({ length: count }, (_, at) => at);

test("blocks beside and below each other are each looked at in their own columns and rows alone", () => {
  const [blocks, rows, times] = [300, 20, 3];
  const cell = (block: number, row: number): string => {
    const [left, right] = [columnName(2 * block), columnName(2 * block + 1)];
    const formula = row % rows === 0 ? `<f t="array" ref="${left}${row + 1}:${right}${row + rows}">SEQUENCE(${rows},2)</f>` : "";
    return `<c r="${left}${row + 1}">${formula}<v>1</v></c><c r="${right}${row + 1}"><v>2</v></c>`;
  };
  const cellsOf = (row: number): string => counting(blocks).map((block) => cell(block, row)).join("");
  const xml = counting(rows * times).map((row) => `<row r="${row + 1}">${cellsOf(row)}</row>`);
  const work = noWork();
  const { sheets } = readWorkbookFile(smallFile({ S: xml.join("") }), { work });
  // What spilled is worked out anew: of each block the cell with the formula is left.
  expect(Object.keys(sheets[0]?.cells ?? {})).toHaveLength(blocks * times);
  // A cell and its value are two steps, and each is looked for in the one block there.
  const cells = 2 * blocks * rows * times;
  expect(work.elements).toBeGreaterThan(2 * cells);
  expect(work.elements).toBeLessThan(3.2 * cells);
});

test("a mark of its encoding before a part is none of it", () => {
  const parts = smallParts({ S: '<row r="1"><c r="A1"><v>5</v></c></row>' });
  const marked = Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, `\ufeff${text}`]));
  expect(readWorkbookFile(packed(marked)).sheets).toEqual([{ name: "S", cells: { A1: { value: 5 } } }]);
});
