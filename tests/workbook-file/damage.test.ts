import { FAULTS } from "../../src/workbook-file/file-fault";
import { strToU8 } from "fflate";
import { readWorkbookFile } from "../../src/workbook-file/read-workbook-file";
import { MOST_ELEMENTS } from "../../src/workbook-file/xml-tree";
import { zipEntries } from "../../src/workbook-file/zip-entries";
import { zipFile } from "../../src/workbook-file/zip-file";
import { EXCEL_PARTS, excelFile, packed } from "./as-excel-saves";
import { outcomeOf } from "./damage-fault";
import { DAMAGES, damagedFile } from "./damaged-files";

const FILES = 300;

test(`${FILES} damaged files are read, or refused with a sentence; none breaks anything`, () => {
  const outcomes = new Map<string, number>();
  for (let seed = 1; seed <= FILES; seed += 1) {
    const { how, bytes } = damagedFile(seed);
    try {
      const outcome = outcomeOf(bytes);
      outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1);
    } catch (error) {
      throw new Error(`seed ${seed}, ${how}`, { cause: error });
    }
  }
  // The generator reaches what it is there for.
  expect([...outcomes.keys()]).toEqual(expect.arrayContaining(["read", "broken", "cut-short", "entities", "false-paths"]));
  expect(Object.keys(DAMAGES).length).toBeGreaterThan(15);
});

const bytesOf = (text: string): Uint8Array => strToU8(text, true);
/** A compound file's mark ([MS-CFB] 2.2), and the name of a stream as its directory writes it (2.6.1). */
const compound = (stream: string): Uint8Array =>
  bytesOf(`\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1${"\0".repeat(1016)}${[...stream].map((letter) => `${letter}\0`).join("")}`);

test.each([
  ["nothing", new Uint8Array(), "nothing-in-it"],
  ["a text", bytesOf("a,b\n1,2\n"), "no-workbook"],
  ["50 MB of something else", new Uint8Array(50 * 1024 * 1024).fill(7), "no-workbook"],
  ["an .xls", compound("Workbook"), "old-workbook"],
  ["a workbook under a password", compound("EncryptedPackage"), "password"],
  ["another program's compound file", compound("WordDocument"), "no-workbook"],
  ["a .zip of pictures", packed({ "a.png": "x" }), "no-workbook"],
  ["an .ods", packed({ mimetype: "application/vnd.oasis.opendocument.spreadsheet", "content.xml": "<a/>" }), "open-document"],
  ["an .xlsb", packed({
    ...EXCEL_PARTS, "_rels/.rels": (EXCEL_PARTS["_rels/.rels"] ?? "").replace("xl/workbook.xml", "xl/workbook.bin"), "xl/workbook.bin": "x",
  }), "binary-workbook"],
  ["a text document", packed({
    ...EXCEL_PARTS, "xl/workbook.xml": '<w:document xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"/>',
  }), "no-workbook"],
  ["the beginning of a workbook", excelFile().slice(0, 2000), "cut-short"],
  ["a workbook of entities", packed({
    ...EXCEL_PARTS, "xl/styles.xml": '<!DOCTYPE a [<!ENTITY b "c">]><styleSheet>&b;</styleSheet>',
  }), "entities"],
  ["a part outside of the file", packed({ ...EXCEL_PARTS, "../x.xml": "<x/>" }), "false-paths"],
  ["a sheet nested 100 deep", packed({
    ...EXCEL_PARTS, "xl/worksheets/sheet2.xml": `<worksheet>${"<a>".repeat(100)}${"</a>".repeat(100)}</worksheet>`,
  }), "broken"],
] as const)("%s is refused in a sentence", (_, bytes, outcome) => {
  expect(outcomeOf(bytes)).toBe(outcome);
});

/** The file with other figures in what its directory says of one part. */
const claiming = (part: string, size: number, packedTo = 0): Uint8Array =>
  zipFile(zipEntries(excelFile()).map((entry) =>
    entry.name === part ? { ...entry, size, packed: packedTo === 0 ? entry.packed : new Uint8Array(packedTo) } : entry));

test("a part that unpacks to more than it claims is unpacked no further, and none that claims more than it could", () => {
  expect(outcomeOf(claiming("xl/workbook.xml", 10))).toBe("false-sizes");
  expect(outcomeOf(claiming("xl/workbook.xml", 200 * 1024 * 1024))).toBe("false-sizes");
});

test("parts that would unpack to more than a quarter of a gigabyte are not unpacked at all", () => {
  expect(outcomeOf(claiming("docProps/app.xml", 257 * 1024 * 1024, 300 * 1024))).toBe("too-large");
});

test("two parts that share their bytes, as parts that unpack to ever more do, are not unpacked", () => {
  const file = excelFile();
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const records = Array.from({ length: file.length - 4 }, (_, at) => at).filter((at) => view.getUint32(at, true) === 0x02014b50);
  for (const field of [16, 20, 24, 42]) view.setUint32((records[1] ?? 0) + field, view.getUint32((records[2] ?? 0) + field, true), true);
  expect(outcomeOf(file)).toBe("false-sizes");
});

test("a workbook with many sheets that are one part is refused", () => {
  const sheets = Array.from({ length: 900 }, (_, index) => `<sheet name="s${index}" sheetId="${index + 1}" r:id="rId2"/>`).join("");
  const book = (EXCEL_PARTS["xl/workbook.xml"] ?? "").replace(/<sheets>.*<\/sheets>/, `<sheets>${sheets}</sheets>`);
  expect(outcomeOf(packed({ ...EXCEL_PARTS, "xl/workbook.xml": book }))).toBe("broken");
});

const SHEET = "xl/worksheets/sheet1.xml";
const inSheet = (before: string, after: string): Uint8Array =>
  packed({ ...EXCEL_PARTS, [SHEET]: (EXCEL_PARTS[SHEET] ?? "").replace(before, () => after) });

test.each([
  ["a formula of a million characters", inSheet("B5*Markup", "1+".repeat(500_000) + "1")],
  ["a call 5,000 deep", inSheet("B5*Markup", "_xlfn.SINGLE(".repeat(2400) + "A1" + ")".repeat(2400))],
  ["a block over the whole sheet", inSheet('ref="A5:B7"', 'ref="A5:XFD1048576"')],
  ["a rule over the whole sheet", inSheet('sqref="B11:B12"', 'sqref="A1:XFD1048576"')],
  ["a list over the whole sheet", inSheet('sqref="G2:G3"', 'sqref="A1:XFD1048576"')],
  ["a list of a whole column", inSheet("<formula1>Species</formula1>", "<formula1>Rates!$A$1:$A$1048576</formula1>")],
  ["ten thousand columns ten thousand times", inSheet("<cols>", `<cols>${'<col min="1" max="16384" width="9"/>'.repeat(10_000)}`)],
  ["a cell with a million spaces in it", inSheet('<c r="B5">', `<c${" ".repeat(1_000_000)}r="B5"${" ".repeat(1_000_000)}>`)],
] as const)("%s is read and saved in as many steps as its size asks for", (_, bytes) => {
  expect(outcomeOf(bytes)).toBe("read");
});

test("reading stops after so many elements", () => {
  const work = { elements: MOST_ELEMENTS - 100, characters: 0 };
  expect(() => readWorkbookFile(excelFile(), { work })).toThrow(FAULTS["too-large"]);
  expect(() => readWorkbookFile(excelFile(), { work: { elements: 0, characters: 255 * 1024 * 1024 } })).not.toThrow();
  expect(() => readWorkbookFile(excelFile(), { work: { elements: 0, characters: 256 * 1024 * 1024 } })).toThrow(FAULTS["too-large"]);
});

test("the whole files themselves are read", () => {
  expect(outcomeOf(excelFile())).toBe("read");
});
