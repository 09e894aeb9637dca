import * as tables from "../../src/functions/tables";
import { catalogue } from "../../src/functions/catalogue";
import { resultHeadings } from "../../src/functions/describe";
import { PROFILES } from "../../src/solver/code/profiles";
import { TAKEOFF_ITEMS } from "../../src/solver/takeoff/items";
import { wordKey } from "../../src/solver/word-key";
import { words } from "../../src/solver/words";

// Spellings of both sides of the sea: common practice and any dictionary, no source.
test.each([
  ["labor", "Labour"],
  ["mitered return", "Mitred Returns"],
  ["center line", "centre-line"],
  ["molding", "mouldings"],
  ["hour", "hours"],
  ["total going", "total run"],
  ["string board", "stringer board"],
  ["strings", "stringers"],
  ["treads", "tread"],
  ["nosing", "Nosings"],
  ["storeys", "stories"],
  ["meter", "metres"],
  ["beveled", "bevelled"],
  ["qty", "quantity"],
  ["notches", "notch"],
  ["quantities", "quantity"],
  ["2R + T", "2r+t"],
  ["IRC 2021", " irc-2021 "],
])("%s and %s are one word", (one, other) => expect(wordKey(one)).toBe(wordKey(other)));

test.each([
  ["tread", "treadle"],
  ["rise", "riser"],
  ["run", "running"],
  ["cross", "cros"],
  ["gross", "gros"],
  ["string", "spring"],
  ["oak 4/4", "oak 54"],
])("%s and %s are two", (one, other) => expect(wordKey(one)).not.toBe(wordKey(other)));

const everyHeading = [
  ...Object.values(tables).flatMap(({ columns }) => Object.keys(columns).map(words)),
  ...catalogue.flatMap(resultHeadings),
  ...Object.keys(TAKEOFF_ITEMS).map(words),
];

test("headings of one table or result, takeoff items and limits of one code stay apart", () => {
  const lists = [
    ...Object.values(tables).map(({ columns }) => Object.keys(columns).map(words)),
    Object.keys(tables.stair.columns).map(words),
    ...catalogue.map(resultHeadings),
    Object.keys(TAKEOFF_ITEMS).map(words),
  ];
  for (const list of lists) expect(new Set(list.map(wordKey)).size).toBe(list.length);
  for (const { limits } of PROFILES) {
    const items = [...new Set(limits.map(({ item }) => item))];
    expect(new Set(items.map(wordKey)).size).toBe(items.length);
  }
});

/** Words that end in s and are no plural. */
const NO_PLURAL: readonly string[] = [
  "gross",
  "cross",
  "across",
  "this",
  "is",
  "species",
  "passes",
  "less",
  "shows",
  "radius",
  "status",
  "as",
  "was",
  "drains",
  "swings",
];

test("every plural of our headings and items is found in the singular", () => {
  const plurals = everyHeading
    .flatMap((heading) => heading.split(" "))
    .filter((word) => word.endsWith("s") && !NO_PLURAL.includes(word) && !/ss$/.test(word));
  expect(plurals.length).toBeGreaterThan(20);
  expect([...new Set(plurals)].filter((word) => wordKey(word) !== wordKey(word.replace(/s$/, "")))).toEqual([]);
});
