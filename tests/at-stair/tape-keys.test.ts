import fc from "fast-check";
import {
  type Entry, entryOf, entryText, entryValue, lengthText, NOTHING_TOUCHED, paddedEntry, partsOf, partText, wholesAbout, wholeText,
  wholeWith,
} from "../../src/at-stair/tape-keys";

const entry = (whole: number | undefined, part: number | undefined, half: Entry["half"] = 0): Entry => ({
  isChosen: true, half, ...(whole === undefined ? {} : { whole }), ...(part === undefined ? {} : { part }),
});

test("sixteen marks stand a row a quarter, reduced as on the tape", () => {
  // A tape's own marks, by hand.
  expect(partsOf("in").map((part) => partText(part, "in"))).toEqual([
    "0", "1/16", "1/8", "3/16",
    "1/4", "5/16", "3/8", "7/16",
    "1/2", "9/16", "5/8", "11/16",
    "3/4", "13/16", "7/8", "15/16",
  ]);
  expect(partsOf("mm").map((part) => partText(part, "mm"))).toEqual(["0", "1", "2", "3", "4", "5", "6", "7", "8", "9"]);
});

test.each<[Entry, "in" | "mm", number | undefined, string]>([
  // By hand: 38 and 3/16; half a sixteenth is 1/32 either way.
  [entry(38, 3), "in", 38.1875, "38 3/16"],
  [entry(38, 3, 1), "in", 38.21875, "38 7/32"],
  [entry(38, 3, -1), "in", 38.15625, "38 5/32"],
  [entry(36, 0, -1), "in", 35.96875, "35 31/32"],
  [entry(36, 0), "in", 36, "36"],
  [entry(0, 12), "in", 0.75, "3/4"],
  // 92 tens, 3 and a half.
  [entry(92, 3, 1), "mm", 923.5, "923.5"],
  [entry(92, 0), "mm", 920, "920"],
  // Nothing is a length until both were touched.
  [entry(38, undefined), "in", undefined, "38 –"],
  [entry(undefined, 3), "in", undefined, "– 3/16"],
  [entry(92, undefined), "mm", undefined, "92_"],
  [NOTHING_TOUCHED, "in", undefined, "–"],
  // No step has a length of nothing.
  [entry(0, 0), "in", undefined, "0 –"],
])("keys %j in %s are %s, shown as %s", (keys, unit, value, text) => {
  expect(entryValue(keys, unit)).toBe(value);
  expect(entryText(keys, unit)).toBe(text);
});

test("the keys of a length give that length again", () => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 32 * 400 }), (halves) => entryValue(entryOf(halves / 32, "in"), "in") === halves / 32));
  fc.assert(fc.property(fc.integer({ min: 1, max: 20_000 }), (halves) => entryValue(entryOf(halves / 2, "mm"), "mm") === halves / 2));
});

test("five wholes stand about the one expected, and none under nothing", () => {
  expect(wholesAbout(38.25, "in")).toEqual([36, 37, 38, 39, 40]);
  expect(wholesAbout(1, "in")).toEqual([0, 1, 2, 3, 4]);
  expect(wholesAbout(934, "mm")).toEqual([91, 92, 93, 94, 95]);
  expect([93, 0].map((whole) => wholeText(whole, "mm"))).toEqual(["93_", "_"]);
});

test("the whole goes with its part: over the inch where that is within a quarter of what is expected, else as expected", () => {
  // By hand, of 36 1/16: 35 15/16 is 1/8 off, 36 1/4 is 3/16 off, 35 3/4 is 5/16 off and stays 36 3/4.
  expect([15, 4, 12].map((part) => wholeWith(part, 36.0625, 0.25, "in"))).toEqual([35, 36, 36]);
  // Of 36 15/16: 37 is 1/16 off.
  expect([0, 15].map((part) => wholeWith(part, 36.9375, 0.25, "in"))).toEqual([37, 36]);
  // Of 931 mm: 929 is 2 off, 935 is 4 off and nearer than 925.
  expect([9, 5].map((part) => wholeWith(part, 931, 6, "mm"))).toEqual([92, 93]);
});

test("numbers typed are whole inches, or whole millimetres with their last digit", () => {
  expect(entryValue(paddedEntry("41", entry(36, 3), "in"), "in")).toBe(41.1875);
  expect(entryValue(paddedEntry("1047", NOTHING_TOUCHED, "mm"), "mm")).toBe(1047);
  expect(paddedEntry("", NOTHING_TOUCHED, "in")).toBe(NOTHING_TOUCHED);
});

test("a length is said to its 32nd, or to half a millimetre", () => {
  expect([36.0938, 35.999].map((length) => lengthText(length, "in"))).toEqual(["36 3/32", "36"]);
  expect([913.4, 913].map((length) => lengthText(length, "mm"))).toEqual(["913.5", "913"]);
});
