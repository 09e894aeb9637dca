import { messageOf } from "../../src/pane/message-of";
import { fileWorkbooks } from "../../src/web/file-workbooks";
import { isFileFault } from "../../src/workbook-file/file-fault";
import { workbookData } from "../../src/workbook/workbook-data";
import { type Chance, oneOf } from "../workbook-file/damaged-files";
import { spoiltText, spoiltValue } from "./spoilt-text";

/** An error that is no sentence of ours but the machine's own. */
export const isMachines = (error: unknown): boolean =>
  !(error instanceof Error) || [TypeError, RangeError, SyntaxError, ReferenceError, URIError].some((kind) => error instanceof kind);

const LONGEST_SENTENCE = 600;

const TABLES = [
  "Item\tLength\tQty\nTread\t36 1/2\t13\nRiser\t35 7/8\t14\n\t\t\nSum\t\t27\n",
  "Date;Job;Money\n31/12/2026;A;1.250,00\n01/02/2026;B;(12,50)\n02/02/2026;\"C; and \"\"D\"\"\";-3\n",
  "Wood,Grade,Thickness\n\"red oak, plain\",FAS,4/4\npoplar,1C,5/4\n007,=1+1,@SUM(A1)\n",
  "one | two\n1.5 | 12%\n",
];
const ENDINGS = [".csv", ".txt", ".tsv", ""];

/** What a table as text came to. No cell of it may be a formula, and what is no number, date or word of logic stays as it was written. */
export const tableOutcome = (chance: Chance): string => {
  const text = spoiltText(oneOf(chance, TABLES), chance);
  const bytes = oneOf<(text: string) => Uint8Array>(chance, [
    (given) => new TextEncoder().encode(given),
    (given) => Buffer.from(given, "latin1"), (given) => Buffer.from(`\ufeff${given}`, "utf16le"),
  ])(text);
  return opened(bytes, `table${oneOf(chance, ENDINGS)}`, (cells) => {
    for (const { formula, value } of cells) {
      if (formula !== undefined) throw new Error(`a cell became a formula: ${formula}`);
      if (typeof value === "number" && !Number.isFinite(value)) throw new Error("a cell became a number without an end");
    }
  });
};

type Cells = readonly { readonly formula?: string; readonly value?: unknown }[];

/** A file opened as the page opens it. */
const opened = (bytes: Uint8Array, name: string, look: (cells: Cells) => void): string => {
  try {
    const { workbooks } = fileWorkbooks(bytes, name, false);
    for (const { data } of workbooks) {
      const again = workbookData(JSON.parse(JSON.stringify(data)));
      if (JSON.stringify(again) !== JSON.stringify(data)) throw new Error("what was read is another thing when it is read again");
      look(data.sheets.flatMap(({ cells }) => Object.values(cells)));
    }
    return "read";
  } catch (error) {
    if (isMachines(error) || /became|read again/.test(messageOf(error))) throw error;
    const says = messageOf(error);
    if (says.length > LONGEST_SENTENCE) throw new Error(`a sentence of ${says.length} characters: ${says}`);
    return isFileFault(error) ? "refused as a workbook" : "refused";
  }
};

const SAVED = {
  version: 1,
  sheets: [
    {
      name: "Bid", frozenRows: 2, columnWidths: { A: 88 }, rowHeights: { 3: 40 }, merged: ["D1:E2"], tabColour: "#7a4a1e",
      lists: [{ cells: "A2:A9", options: ["in", "mm"] }], rules: [{ cells: "B1:B9", when: "=B1>4", look: { bold: true } }],
      filter: { cells: "A7:B20", keeps: { A: ["Tread"] }, hides: [9] }, hiddenRows: [30], hiddenColumns: ["K"],
      cells: {
        A1: { value: "Bid", style: "title" }, A2: { value: 7.5625, format: "# ??/16", look: { ink: "#aa0000" } }, A3: { value: true },
        B1: { formula: "=STAIR.RISERS(A2)" },
      },
    },
    { name: "Rates", cells: {}, isHidden: true },
  ],
};
const BACKUP = { version: 1, workbooks: [{ name: "One", data: SAVED }, { name: "Two", data: SAVED }] };

/** What a file that was saved on the page came to, spoilt as a text or in what it says. */
export const savedOutcome = (chance: Chance): string => {
  const whole = oneOf<unknown>(chance, [SAVED, BACKUP]);
  const text = chance() < 0.5 ? spoiltText(JSON.stringify(whole, null, 1), chance) : JSON.stringify(spoiltValue(whole, chance));
  return opened(new TextEncoder().encode(text), "Job 2026-11-03 (2).json", () => undefined);
};
