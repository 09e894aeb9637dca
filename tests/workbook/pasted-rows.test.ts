import { pastedRows } from "../../src/workbook/pasted-rows";

// What a spreadsheet puts on the clipboard as text: cells by tabs, rows by line ends; a cell with either in it in quotes, its own doubled.
test.each<readonly [string, string, readonly (readonly string[])[] | undefined]>([
  ["line ends of Windows", "oak\t14\r\nash\t2\r\n", [["oak", "14"], ["ash", "2"]]],
  ["line ends of a Mac and others", "oak\t14\nash\t2", [["oak", "14"], ["ash", "2"]]],
  ["a line break in a cell", '"oak,\nclear"\t14\r\nash\t2', [["oak,\nclear", "14"], ["ash", "2"]]],
  ["quotes in such a cell", '"7 5/8""\nor so"\t1', [['7 5/8"\nor so', "1"]]],
  ["inches", "9' 1 1/2\"\t7\"\n\"A\"\tx", [["9' 1 1/2\"", '7"'], ['"A"', "x"]]],
  ["empty cells", "\t1\r\n\t\r\n2\t", [["", "1"], ["", ""], ["2", ""]]],
  ["a quote that is never closed", '"oak\t14\nash\t2', [['"oak', "14"], ["ash", "2"]]],
  ["one cell", "oak\r\n", undefined],
])("%s", (_, text, rows) => {
  expect(pastedRows(text)).toEqual(rows);
});
