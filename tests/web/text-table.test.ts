import { textTable } from "../../src/web/text-table";

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const tableOf = (text: string | Uint8Array, isDayFirstHere = false) =>
  textTable(typeof text === "string" ? bytes(text) : text, "Sheet1", isDayFirstHere);
const cellsOf = (text: string | Uint8Array) => tableOf(text).sheet.cells;

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

test("points between thousands are no decimals where commas are decimal, in money and percentages too", () => {
  const text = "Menge;Preis\n1.234;12,50\n2.500;3,75 €\n(38,00);12,5 %\n";
  expect(cellsOf(text)).toEqual({
    A1: { value: "Menge" }, B1: { value: "Preis" }, A2: { value: 1234 }, B2: { value: 12.5 }, A3: { value: 2500 }, B3: { value: 3.75 },
    A4: { value: -38 }, B4: { value: 0.125, format: "0.00%" },
  });
});

test("a number that can be read in two ways stays text, and that is said", () => {
  const { sheet, says } = tableOf("Artikel;Preis\nEiche;1.250\n");
  expect(sheet.cells["B2"]).toEqual({ value: "1.250" });
  expect(says).toEqual(["Numbers such as 1.250 stay text: nothing in the file says whether the point parts thousands."]);
  expect(tableOf("Artikel\tPreis\nEiche\t1.250\n").sheet.cells["B2"]).toEqual({ value: 1.25 });
});

test("a title over a table, and an empty line, have no say in what stands between its cells", () => {
  const { A1, A4, B4 } = cellsOf("Preisliste 2026\n\nArtikel;Preis\nEiche;1,5\nBuche;2,5\n");
  expect([A1, A4, B4]).toEqual([{ value: "Preisliste 2026" }, { value: "Eiche" }, { value: 1.5 }]);
  expect(cellsOf("a,b;c\nd,e\n")).toMatchObject({ A1: { value: "a" }, B1: { value: "b;c" }, B2: { value: "e" } });
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

// By hand: 3 April 2026 is day 46115, 4 March 46085.
test("where no date shows which number is the month, the language of the browser does, and that is said", () => {
  const [here, there] = [tableOf("03/04/2026,x\n", true), tableOf("03/04/2026,x\n", false)];
  expect(here.sheet.cells["A1"]).toEqual({ value: 46115, format: "dd/mm/yyyy" });
  expect(here.says).toEqual(["Dates such as 03/04/2026 are read as day/month/year."]);
  expect(there.sheet.cells["A1"]).toEqual({ value: 46085, format: "m/d/yyyy" });
  expect(there.says).toEqual(["Dates such as 03/04/2026 are read as month/day/year."]);
});

test("numbers that would lose their sign or their last digits stay text", () => {
  const { A1, B1, C1 } = cellsOf("1234567890123456789,+447700900123,123456789012345\n");
  expect([A1, B1, C1]).toEqual([{ value: "1234567890123456789" }, { value: "+447700900123" }, { value: 123456789012345 }]);
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
  expect(() => cellsOf('item,count\n"6" pipe,2\nelbow,3\n')).toThrow("a quotation mark in row 2 opens a cell and is not closed");
  expect(() => cellsOf("a\0b")).toThrow("it is neither a workbook nor a table as text");
  expect(() => cellsOf("1\n".repeat(100_001))).toThrow("it has 100002 rows, more than a sheet takes here; split it");
});
