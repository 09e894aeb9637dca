import { readReadings } from "../../src/readings/read-readings";

const LINES = [
  "Treadsheet readings 1",
  "job\tInvented house",
  "unit\tin",
  "tape\t16",
  "taken\t2026-03-04",
  "",
  "treads",
  "step\trun\tback\tfront\tdiagonal\tsecond diagonal\tkept",
  "4\t10\t36 5/8\t36 3/4\t-\t-\tno",
  "end",
];

/** The text with one line, counted from 1, in other words; without it where there are none. */
const withLine = (number: number, text?: string): string =>
  LINES.flatMap((line, place) => (place + 1 !== number ? [line] : text === undefined ? [] : [text])).join("\n");

const metric = (row: string): string => withLine(9, row).replace("unit\tin", "unit\tmm").replace("tape\t16", "tape\t1");

test("cells left off at the end of a row were not taken", () => {
  expect(readReadings(withLine(9, "4\t10\t36 5/8"))).toMatchObject({ treads: [{ step: 4, read: { run: 10, back: 36.625 }, kept: false }] });
});

test("columns may stand in another order, and some may be left out", () => {
  const text = withLine(8, "back\tstep\tkept").replace(LINES[8] ?? "", "36 5/8\t4\tyes");
  expect(readReadings(text)).toMatchObject({ treads: [{ step: 4, read: { back: 36.625 }, kept: true }] });
});

test("millimetres are plain numbers", () => {
  const found = readReadings(metric("4\t254\t930.5\t931 mm\t-\t-\tno"));
  expect(found).toMatchObject({ treads: [{ read: { run: 254, back: 930.5, front: 931 } }] });
});

test("a job's name is one line, whatever stands between its words", () => {
  expect(readReadings(withLine(2, "job\tInvented\thouse  two"))).toMatchObject({ job: "Invented house two" });
});

// Each refusal: the text, the line it names, what was read, what to write.
const REFUSED: readonly (readonly [what: string, text: string, line: number, read: string, write: string])[] = [
  ["a later edition", withLine(1, "Treadsheet readings 2"), 1, "Treadsheet readings 2", "load the page again"],
  ["a unit of another kind", withLine(3, "unit\tcm"), 3, '"cm"', "write in or mm"],
  ["no unit", withLine(3), 6, '"treads"', "write unit and behind it in or mm"],
  ["a tape without divisions", withLine(4, "tape\tsixteenths"), 4, '"sixteenths"', "16 or 32 of an inch"],
  ["a day there is not", withLine(5, "taken\t2026-02-30"), 5, '"2026-02-30"', "as 2026-03-04"],
  ["a day in another order", withLine(5, "taken\t04/03/2026"), 5, '"04/03/2026"', "as 2026-03-04"],
  ["words in the head", withLine(6, "two of us"), 6, '"two of us"', "leave it out"],
  ["two jobs", withLine(6, "job\tAnother"), 6, "job", "leave one of them out"],
  ["a misspelt heading", withLine(8, "step\tfrnt"), 8, '"frnt"', "write front"],
  ["another heading", withLine(8, "step\tcolour"), 8, '"colour"', "write step, run, back"],
  ["a heading twice", withLine(8, "step\tback\tback"), 8, "back", "leave one of them out"],
  ["no steps", withLine(8, "run\tback"), 8, "step", "write step, run, back"],
  ["no length", withLine(9, "4\t10\tabout 36"), 9, 'step 4, back reads "about 36"', "write inches such as 36 5/8"],
  ["no length in millimetres", metric("4\t254\tabout 930"), 9, '"about 930"', "write millimetres such as 930.5"],
  ["a decimal comma", withLine(9, "4\t10\t36,5"), 9, '"36,5"', "36.5 with a point"],
  ["millimetres among inches", withLine(9, "4\t10\t930 mm"), 9, "step 4, back", "write it in inches"],
  ["inches among millimetres", metric("4\t254\t36 5/8"), 9, "step 4, back", "write it in millimetres"],
  ["nothing read as a length", withLine(9, "4\t10\t0"), 9, '"0"', "write a length over 0, or -"],
  ["more digits than any length has", withLine(9, `4\t10\t${"9".repeat(400)}`), 9, '"999', "write 20,000 in (508 m) or less"],
  ["a step that is no number", withLine(9, "four\t10"), 9, '"four"', "1 or more"],
  ["a word under kept", withLine(9, "4\t10\t36\t36\t-\t-\tperhaps"), 9, '"perhaps"', "write yes or no"],
  ["a cell too many", withLine(9, "4\t10\t36\t36\t-\t-\tno\t36"), 9, '"36"', "leave it out"],
  ["spaces that leave it open which reading is missing", withLine(9, "4 10 36 5/8 no"), 9, "4 cells under 7 headings", "put a tab"],
  ["a step twice", withLine(9, "4\t10\n4\t10"), 10, "step 4", "leave one of them out"],
  ["a table twice", withLine(10, "treads\nend"), 10, "treads", "leave one of them out"],
  ["a second set", `${LINES.join("\n")}\n${LINES.join("\n")}`, 11, "a second set", "one at a time"],
  ["a text cut short", LINES.slice(0, 9).join("\n"), 9, "4\t10", "paste the whole text"],
  ["a table without headings", LINES.filter((_, place) => place < 7 || place > 8).join("\n"), 8, "treads", "headings"],
];

test.each(REFUSED)("%s is refused with its line, what it reads and what to write", (_, text, line, read, write) => {
  const { says, line: at } = readReadings(text) as { readonly says: string; readonly line: number };
  expect(at).toBe(line);
  expect(says).toMatch(new RegExp(`^Line ${line}: `));
  expect(says).toContain(read);
  expect(says).toContain(write);
  // One sentence.
  expect(says).toMatch(/^[^]*[^.]\.$/);
});

const WITHOUT_A_SET = ["", "  \n ", "step\tback\n1\t36", "Readings of the back stair"];

test.each(WITHOUT_A_SET)("a text with no set in it says with what one begins", (text) => {
  expect(readReadings(text)).toEqual({
    says: 'No line reads "Treadsheet readings 1", with which readings begin; paste the whole text as the telephone gave it.',
  });
});
