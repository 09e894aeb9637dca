import type { Given } from "../../src/functions/cells";
import {
  grouped, inBothUnits, inSight, lengthText, listed, numberText, quoted, say, sentence, shown, slipOf,
} from "../../src/functions/say";
import { lengthOf } from "../../src/solver/length/length";
import { problem } from "../../src/solver/problem";

/** Figures and words as every sentence has them. 1 in is 25.4 mm by definition. */

test("a number has four decimals and no dust, a whole one its thousands apart", () => {
  expect([7.6875, 36.869898, 1200, 0.1 + 0.2, -0.00004, 1e-9].map(numberText)).toEqual(["7.6875", "36.8699", "1200", "0.3", "0", "0"]);
  expect([0, 999, 1000, 125_000, 1_234_567].map(grouped)).toEqual(["0", "999", "1,000", "125,000", "1,234,567"]);
});

test("a length is a fraction where a tape of 64ths has it, else decimals; in mm it says so", () => {
  expect([7.5, 7 + 1 / 64, 7 + 1 / 128, 7.3, 0, 108.5].map((inches) => lengthText(lengthOf(inches, "in"), "in"))).toEqual([
    '7 1/2"', '7 1/64"', "7.0078 in", "7.3 in", '0"', '108 1/2"',
  ]);
  // 7.3 x 25.4 = 185.42, 1/64 x 25.4 = 0.396875.
  expect([7.3, 1 / 64].map((inches) => lengthText(lengthOf(inches, "in"), "mm"))).toEqual(["185.42 mm", "0.3969 mm"]);
  expect([1.25, 0, 7.3].map((inches) => inBothUnits(lengthOf(inches, "in")))).toEqual(["1 1/4 in (31.75 mm)", "0", "7.3 in (185.42 mm)"]);
});

test("a cell is read back as it stands", () => {
  const cells: readonly Given[] = [null, "", "  ", "oak", 7.50001, true, false, { failed: "#N/A", says: "x" }];
  expect(cells.map(shown)).toEqual(["nothing", "nothing", "nothing", '"oak"', "7.5", "TRUE", "FALSE", "#N/A"]);
});

test("a text is repeated up to 80 characters, and its end is seen to be cut off", () => {
  const [most, more] = ["y".repeat(80), "y".repeat(81)];
  expect([inSight(most), inSight(more), quoted(most), quoted(more)]).toEqual([most, `${most}…`, `"${most}"`, `"${most}…"`]);
});

describe("facts of a sentence", () => {
  test("are lengths in the unit of the call, numbers and texts", () => {
    const facts = { rise: lengthOf(7.5, "in"), risers: 14, far: 7.5, name: "oak" };
    expect(sentence("{rise} by {risers}, {far length}, {far}, {name}, {no}, {name length}", facts, "in")).toBe(
      '7 1/2" by 14, 7 1/2", 7.5, oak, {no}, oak',
    );
    expect(sentence("{rise}, {far length}", facts, "mm")).toBe("190.5 mm, 7.5 mm");
  });

  test("are as long as they may be: 80 characters, a list 200, one of our own 1,000", () => {
    const of = (name: string, fact: string): number => sentence(`{${name}}`, { [name]: fact }, "in").length;
    const list = `oak, ${"y".repeat(2000)}`;
    // The dots count as one more.
    expect([of("item", "y".repeat(80)), of("item", "y".repeat(2000))]).toEqual([80, 81]);
    expect([of("item", list.slice(0, 200)), of("item", list)]).toEqual([200, 201]);
    for (const own of ["known", "choices", "hint", "nearest", "rates"])
      expect([of(own, list), of(own, list.slice(0, 1000))]).toEqual([1001, 1000]);
  });
});

test("a slip is up to two letters off, one in a word of up to four, and never the word itself", () => {
  const known = ["back", "front", "left offset"];
  expect(["bak", "bac", "frnot", "left ofset", "left off set"].map((word) => slipOf(word, known))).toEqual([
    "back", "back", "front", "left offset", undefined,
  ]);
  expect(["bk", "back", "Back", "fr", "baack", "bcak", "xfxont", "frxnxt", "window"].map((word) => slipOf(word, known))).toEqual([
    undefined, undefined, undefined, undefined, "back", undefined, "front", "front", undefined,
  ]);
  expect(slipOf("x", [])).toBeUndefined();
});

test("names in a row are parted by commas and the last by or", () =>
  expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(listed)).toEqual(["", "a", "a or b", "a, b or c"]));

describe("a sentence about one value", () => {
  test("says how to write it in the unit it may be in", () => {
    expect(say.implausible("run", "over 24 in", 254, "in")).toBe('run: 254 in is over 24 in; if this is millimetres, write "254 mm"');
    expect(say.implausible("run", "under 101.6 mm", 10, "mm")).toBe(
      'run: 10 mm is under 101.6 mm; if this is inches, write "10 in" or leave the unit out',
    );
    expect(say.unitBeside("run", 10, '"', "mm")).toContain("has an inch mark beside it, but the table's unit is mm");
    expect(say.unitBeside("run", 10, "ft", "in")).toContain('has "ft" beside it, but the table\'s unit is in');
  });

  test("says what is missing in small letters, without its full stop", () => {
    expect(say.missing("it", "Length of `one` board.")).toBe('it: is missing; give length of "one" board');
    expect(say.missing("it", "A. B")).toBe("it: is missing; give a. B");
  });

  test("of a length that is none quotes it, cut short, and says what to write", () => {
    expect(say.malformedLength("it", problem("decimal-comma", { text: "7,5", instead: "7.5 with a point" }))).toBe(
      'it: read "7,5", which has a comma; write 7.5 with a point',
    );
    expect(say.malformedLength("it", problem("no-length", {}))).toContain('it: is empty; write a length such as 7 5/8"');
    expect(say.malformedLength("it", problem("not-a-length", { text: "y".repeat(90) }))).toContain(`read "${"y".repeat(80)}…", which`);
  });

  test("of a table of nothing, and of more than is promised", () => {
    expect(say.emptyTable("it", [])).toBe("it: has no rows; give its rows under their headings");
    expect(say.emptyTable("it", ["item", "cost"])).toBe("it: has no rows; give a table with item, cost");
    expect(say.tooMany("it", 20_001, "rows", 20_000)).toBe("it: is 20,001 rows; this function takes up to 20,000");
    expect(say.foreignHeading("it", "price", "prices of EXTEND", true, "cost")).toBe(
      'it: heading "price" is not read here; it belongs in prices of EXTEND and others; nearest here is "cost"; rename the column or ' +
        "leave it out",
    );
  });
});
