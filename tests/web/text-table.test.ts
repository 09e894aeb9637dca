import { textTable } from "../../src/web/text-table";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const cellsOf = (text: string | Uint8Array) => textTable(typeof text === "string" ? bytes(text) : text, "Sheet1").cells;

test("numbers, lengths and money of a file with commas are numbers, what stands in quotes stays together", () => {
  expect(cellsOf('item,length,cost\r\n"oak, clear",7 9/16,"1,250.50"\r\nreturn,3\' 4",(38.00)\r\n')).toEqual({
    A1: { value: "item" }, B1: { value: "length" }, C1: { value: "cost" },
    A2: { value: "oak, clear" }, B2: { value: 7.5625, format: "# ??/16" }, C2: { value: 1250.5 },
    A3: { value: "return" }, B3: { value: "3' 4\"" }, C3: { value: -38 },
  });
});

test("a quoted line break and doubled quotes stay in their cell", () => {
  expect(cellsOf('a;"two\nlines";"7 5/8"""\n')).toEqual({
    A1: { value: "a" }, B1: { value: "two\nlines" }, C1: { value: 7.625, format: "# ??/16" },
  });
});

// By hand: 1.234,56 and 12,5 are 1234.56 and 12.5 where commas are decimal.
test.each([[";"], ["\t"], ["|"]])("decimal commas are seen in a file with %j between its cells", (between) => {
  const text = [["eiche", "1.234,56"], ["buche", "12,5"], ["-", "-3,25"]].map((row) => row.join(between)).join("\n");
  const { B1, B2, B3 } = cellsOf(text);
  expect([B1, B2, B3]).toEqual([{ value: 1234.56 }, { value: 12.5 }, { value: -3.25 }]);
});

test("with commas between the cells 12.5 is a number and 1,234 in quotes a thousand", () => {
  const { A1, B1 } = cellsOf('12.5,"1,234"\n');
  expect([A1, B1]).toEqual([{ value: 12.5 }, { value: 1234 }]);
});

// Serial days by hand: 2026-01-13 is day 46035 (1 January 2026 is 46023), 2026-02-01 day 46054.
test("days before months are seen where one of them is over 12", () => {
  const { A1, A2 } = cellsOf("13/01/2026,x\n01/02/2026,y\n");
  expect([A1, A2]).toEqual([{ value: 46035, format: "dd/mm/yyyy" }, { value: 46054, format: "dd/mm/yyyy" }]);
  expect(cellsOf("1/13/2026,x\n").A1).toEqual({ value: 46035, format: "m/d/yyyy" });
  expect(cellsOf("2026-01-13,x\n").A1).toEqual({ value: 46035, format: "yyyy-mm-dd" });
});

test("nothing becomes a formula, and a number with a zero before it keeps it", () => {
  const { A1, B1, C1 } = cellsOf("=1+1,00123,'x\n");
  expect([A1, B1, C1]).toEqual([{ value: "=1+1" }, { value: "00123" }, { value: "'x" }]);
});

test("the encoding is seen: marked UTF-16, UTF-8 with and without its mark, and the one of older programs", () => {
  const utf16 = Uint8Array.from([0xff, 0xfe, ...[..."é;1"].flatMap((letter) => [letter.charCodeAt(0) & 255, letter.charCodeAt(0) >> 8])]);
  for (const file of [utf16, bytes("\ufeffé;1"), bytes("é;1"), Uint8Array.from([0xe9, 0x3b, 0x31])])
    expect(cellsOf(file)).toEqual({ A1: { value: "é" }, B1: { value: 1 } });
});

test("what is no table is refused in words", () => {
  expect(() => cellsOf("\n\n")).toThrow("there is nothing in it");
  expect(() => cellsOf("a\0b")).toThrow("it is neither a workbook nor a table as text");
  expect(() => cellsOf("1\n".repeat(100_001))).toThrow("it has 100002 rows, more than a sheet takes here; split it");
});
