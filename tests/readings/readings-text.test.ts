import fc from "fast-check";
import { readReadings } from "../../src/readings/read-readings";
import type { ReadingSet, ReadStep } from "../../src/readings/reading-set";
import { readingsText } from "../../src/readings/readings-text";
import { PARTS } from "../../src/readings/text-form";

// The form of the text as it was agreed, written by hand.
const SET: ReadingSet = {
  job: "Invented house, back stair",
  unit: "in",
  tape: 16,
  taken: "2026-03-04",
  treads: [
    { step: 1, read: { run: 10, back: 36.625, front: 36.75, diagonal: 38.0625, secondDiagonal: 38.09375 }, kept: false },
    { step: 2, read: { run: 10, back: 36.5 }, kept: true },
  ],
  risers: [{ step: 1, read: { height: 7.5, top: 36.625, bottom: 36.625 }, kept: false }],
};

const TEXT = [
  "Treadsheet readings 1",
  "job\tInvented house, back stair",
  "unit\tin",
  "tape\t16",
  "taken\t2026-03-04",
  "",
  "treads",
  "step\trun\tback\tfront\tdiagonal\tsecond diagonal\tkept",
  // Half way between two sixteenths is a 32nd: 38 3/32.
  "1\t10\t36 5/8\t36 3/4\t38 1/16\t38 3/32\tno",
  "2\t10\t36 1/2\t-\t-\t-\tyes",
  "",
  "risers",
  "step\theight\ttop\tbottom\tdiagonal\tsecond diagonal\tkept",
  "1\t7 1/2\t36 5/8\t36 5/8\t-\t-\tno",
  "",
  "end",
  "",
].join("\n");

test("a set is written as a person reads it off the tape", () => expect(readingsText(SET)).toBe(TEXT));

test("and read back", () => expect(readReadings(TEXT)).toEqual(SET));

test("a reading off the marks is written in decimals rather than rounded", () => {
  const set = { ...SET, treads: [{ step: 1, read: { back: 36.63 }, kept: false }], risers: [] };
  expect(readingsText(set)).toContain("\t36.63\t");
  expect(readReadings(readingsText(set))).toEqual(set);
});

const reading = (unit: "in" | "mm", tape: number): fc.Arbitrary<number> =>
  // Halves of a division, from 1 in or 1 mm to some 2.5 m. Under an inch a fraction stands alone, and spaces do not say what it belongs to.
  fc.integer({ min: 2 * tape, max: unit === "in" ? 200 * tape : 5000 * tape }).map((halves) => halves / (2 * tape));

const steps = (part: "treads" | "risers", unit: "in" | "mm", tape: number): fc.Arbitrary<readonly ReadStep[]> =>
  fc.uniqueArray(
    fc.record(
      {
        step: fc.integer({ min: 1, max: 9999 }),
        read: fc.dictionary(fc.constantFrom(...PARTS[part]), reading(unit, tape), { noNullPrototype: true }),
        kept: fc.boolean(),
      },
      { noNullPrototype: true },
    ),
    { selector: ({ step }) => step, maxLength: 20 },
  );

const set: fc.Arbitrary<ReadingSet> = fc
  .constantFrom<readonly ["in" | "mm", number]>(["in", 8], ["in", 16], ["in", 32], ["mm", 1], ["mm", 2])
  .chain(([unit, tape]) =>
    fc.record(
      {
        job: fc.string({ unit: "binary" }).map((name) => name.replace(/[\u200b\u2060\ufeff]/g, "").replace(/\s+/g, " ").trim()),
        unit: fc.constant(unit),
        tape: fc.constant(tape),
        taken: fc
          .date({ min: new Date("2020-01-01"), max: new Date("2060-12-31"), noInvalidDate: true })
          .map((day) => day.toISOString().slice(0, 10)),
        treads: steps("treads", unit, tape),
        risers: steps("risers", unit, tape),
      },
      { noNullPrototype: true },
    ));

test("whatever is written is read back as it was, exactly", () => {
  fc.assert(fc.property(set, (one) => expect(readReadings(readingsText(one))).toEqual(one)));
});

/** What a message may do to a text without changing a word of it. */
const MESSAGES: Readonly<Record<string, (text: string) => string>> = {
  "line ends of another system": (text) => text.replaceAll("\n", "\r\n"),
  "a reply's marks": (text) => text.replace(/^/gm, "> "),
  "a reply to a reply": (text) => text.replace(/^/gm, ">> "),
  "no empty lines": (text) => text.replace(/\n\n+/g, "\n"),
  "an empty line between all lines": (text) => text.replaceAll("\n", "\n\n"),
  "a space for a tab": (text) => text.replaceAll("\t", " "),
  "four spaces for a tab": (text) => text.replaceAll("\t", "    "),
  "spaces that do not break": (text) => text.replaceAll(" ", "\u00a0"),
  "a greeting and a name": (text) => `Here they are:\n\n${text}\nRegards\nthe carpenter`,
  "a mark of its encoding": (text) => `\ufeff${text}`,
  "capitals at the beginning of a line": (text) => text.replace(/^[a-z]/gm, (letter) => letter.toUpperCase()),
};

test.each(Object.entries(MESSAGES))("%s changes nothing", (_, sent) => {
  fc.assert(fc.property(set, (one) => expect(readReadings(sent(readingsText(one)))).toEqual(one)), { numRuns: 30 });
});

test("fractions and quotation marks as a telephone makes them", () => {
  const sent = TEXT.replace("36 5/8", "36 ⅝”").replace("36 3/4", "36¾″").replace("38 1/16", "38 1⁄16\"").replace("36 1/2", "3' 0 1/2\"");
  expect(readReadings(sent)).toEqual(SET);
});
