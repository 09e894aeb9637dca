import fc from "fast-check";
import { goodsUnit, isBoardFeet, isSameUnit, isTime } from "../../../src/solver/goods/goods-unit";
import { blankNote, isIncluded } from "../../../src/solver/goods/meant-nothing";
import { isMoneyItem } from "../../../src/solver/goods/money-item";
import { joinedNotes, nearNames } from "../../../src/solver/goods/near-names";
import { plainMarks } from "../../../src/solver/goods/plain-marks";
import { isWithinSlips } from "../../../src/solver/goods/within-slips";

describe("one way of writing each mark", () => {
  // Signs by their names in the Unicode standard.
  test.each([
    ["\u00bc", "1/4"], ["\u00bd", "1/2"], ["\u00be", "3/4"], ["\u2150", "1/7"], ["\u215b", "1/8"], ["\u215e", "7/8"], ["\u2189", "0/3"],
    ["4\u00bd", "4 1/2"], ["4\u00bd\u00d710", "4 1/2x10"], ["1\u20442", "1/2"], ["1\u22152", "1/2"], ["8\u2018", "8'"], ["8\u2019", "8'"],
    ["8\u201b", "8'"], ["8\u2032", "8'"], ["8\u201c", '8"'], ["8\u201d", '8"'], ["8\u201f", '8"'], ["8\u2033", '8"'], ["3\u00d74", "3x4"],
    ["a\u2010b", "a-b"], ["a\u2013b", "a-b"], ["a\u2014b", "a-b"], ["a\u2015b", "a-b"], ["a\u2212b", "a-b"],
    ["\u00c9t\u00e9", "\u00e9t\u00e9"],
    ["e\u0301", "\u00e9"], ["OAK", "oak"], ["\u00d6L", "\u00f6l"],
  ])("%s: %s", (text, plain) => expect(plainMarks(text)).toBe(plain));

  test.each([
    ["  oak  blank ", "oakblank"], ["oak 4", "oak4"], ["4 oak", "4oak"], ["4 4", "4 4"], ["4   4", "4 4"], ["4\u00a04", "4 4"],
    ["oak 1 1/4", "oak1 1/4"],
    ["1 /4", "1/4"], ["", ""], ["  ", ""], ["4 ", "4"], [" 4", "4"], ["\u0661 \u0662", "\u0661 \u0662"],
  ])("spaces stay between two figures alone: %j: %j", (text, plain) => expect(plainMarks(text)).toBe(plain));

  test("signs just outside of those are themselves", () => {
    for (const sign of ["\u00bb", "\u00bf", "\u214f", "\u215f", "\u2188", "\u2017", "\u2034", "\u2016", "\u2211", "\u2031"])
      expect(plainMarks(`a${sign}b`)).toBe(`a${sign.toLowerCase()}b`);
  });
});

describe("units", () => {
  test.each([
    ["each", "ea", "pc", "pcs", "piece", "no", "nos"], ["dozen", "doz", "dz"], ["in", "inch", "inches", '"', "''"],
    [
      "ft", "foot", "feet", "'", "LF", "lin ft", "lin foot", "lin feet", "lineal ft", "lineal foot", "lineal feet", "linear ft",
      "linear foot", "linear feet",
    ],
    ["yd", "yard", "yards"], ["m", "metre", "meter", "lm", "lin m", "lineal metre", "linear metre", "linear meter"],
    ["cm", "centimetre", "centimeter"], ["mm", "millimetre", "millimeter"],
    ["bf", "bd ft", "board ft", "board foot", "board feet", "fbm", "bm"], ["mbf"],
    ["sq ft", "sf", "ft2", "square ft", "square foot", "square feet"], ["sq m", "m2", "square metre", "square meter"], ["sheet", "sht"],
    ["hour", "hr", "h"], ["minute", "min"],
  ])("%s, in each of its spellings", (name, ...spellings) => {
    const unit = goodsUnit(name);
    expect(unit.measures).not.toContain("only");
    for (const spelling of spellings) expect([spelling, goodsUnit(spelling)]).toEqual([spelling, unit]);
  });

  test("a word of a shop's own is itself alone, singular and plural", () => {
    const plurals = [["box", "boxes"], ["batch", "Batches"], ["brush", "brushes"], ["glass", "glasses"], ["tube", "tubes"]] as const;
    for (const [one, other] of plurals)
      expect([one, isSameUnit(goodsUnit(one), goodsUnit(other))]).toEqual([one, true]);
    // A word that ends in ss is no plural, an s alone is a word, and only the end of a word tells.
    const others = [
      ["gross", "gros"], ["tube", "tub"], ["box", "boxe"], ["pass", "pas"], ["s", ""], ["sash", "ash"], ["boxes of 10", "box of 10"],
    ] as const;
    for (const [one, other] of others)
      expect([one, isSameUnit(goodsUnit(one), goodsUnit(other))]).toEqual([one, false]);
    expect(goodsUnit(" Tubes ")).toMatchObject({ name: "Tubes" });
  });

  test("of time and of board feet", () => {
    expect(["hr", "min", "ft", "hours of", "each"].map((unit) => isTime(goodsUnit(unit)))).toEqual([true, true, false, false, false]);
    expect(["bf", "MBF", "ft", "board"].map((unit) => isBoardFeet(goodsUnit(unit)))).toEqual([true, true, false, false]);
  });
});

test.each([
  "freight", "Freight and tax", "delivery", "delivery charge", "shipping", "carriage", "tax", "sales tax", "use tax", "GST", "HST", "PST",
  "VAT", "discount", "surcharge", "fuel surcharge", "Restocking  fee",
])("%s on an invoice is money and no goods", (item) => expect([isMoneyItem(item), isMoneyItem(`${item} oak`)]).toEqual([true, false]));

test("included is a 0 that is meant, whatever its case; what is blank is named in one or in several", () => {
  expect(["included", " Included ", "INCLUDED", "includes", "", 0, null, true].map(isIncluded)).toEqual([
    true, true, true, false, false, false, false, false,
  ]);
  expect([blankNote([], true, "x"), blankNote(["price"], false, "costs nothing"), blankNote(["hours"], true, "no labour")]).toEqual([
    "", "price is 0 or empty: costs nothing", "hours are 0 or empty: no labour",
  ]);
  expect(blankNote(["price", "tax"], false, "costs nothing")).toBe("price and tax are 0 or empty: costs nothing");
  expect([joinedNotes("", "a", "", "b"), joinedNotes("", "")]).toEqual(["a; b", ""]);
});

describe("slips of the hand", () => {
  test.each<[string, string, number, boolean]>([
    ["oak", "oak", 0, true], ["oak", "oaks", 0, false], ["oak", "oaks", 1, true], ["oak", "ok", 1, true], ["oak", "oat", 1, true],
    // Neighbours that changed places are one slip, letters further apart two.
    ["oak", "aok", 1, true], ["oak", "oka", 1, true], ["oak", "kao", 1, false], ["oak", "kao", 2, true], ["abcd", "badc", 1, false],
    ["abcd", "badc", 2, true], ["abcd", "bad", 1, false], ["abcd", "bad", 2, true], ["abcd", "bacde", 2, true], ["abcde", "badce", 2, true],
    ["abc", "ca", 2, true], ["ca", "abc", 2, true], ["abcdef", "badcfe", 2, false], ["abcd", "wxyd", 2, false], ["", "ab", 2, true],
    ["", "abc", 2, false], ["", "", 0, true],
  ])("%j and %j within %d: %p", (one, other, slips, is) => expect(isWithinSlips(one, other, slips)).toBe(is));

  test("are undone one at a time: within two slips there is a word one slip from both", () => {
    const LETTERS = "abc";
    const oneSlip = (word: string): readonly string[] => {
      const made = [word];
      for (let at = 0; at <= word.length; at += 1) {
        const [before, after] = [word.slice(0, at), word.slice(at)];
        made.push(before + after.slice(1), before + after.slice(1, 2) + after.slice(0, 1) + after.slice(2));
        for (const letter of LETTERS) made.push(before + letter + after, before + letter + after.slice(1));
      }
      return made;
    };
    const word = fc.string({ unit: fc.constantFrom(...LETTERS), maxLength: 6 });
    fc.assert(fc.property(word, word, (one, other) => {
      const near = new Set(oneSlip(one));
      expect(isWithinSlips(one, other, 1)).toBe(near.has(other));
      expect(isWithinSlips(one, other, 2)).toBe(oneSlip(other).some((between) => near.has(between)));
    }));
  });
});

describe("names that may mean the same goods", () => {
  const near = (item: string | number, ...names: readonly (string | number)[]): unknown =>
    nearNames(names.map((name, place) => ({ item: name, row: place + 2 })))(item)?.item;

  test("have three letters or more, and up to 64; of others only marks are looked at", () => {
    expect([near("oak", "oek"), near("ok", "ek"), near("ok", "ok1"), near("o-k", "ok")]).toEqual(["oek", undefined, undefined, "ok"]);
    const long = (letters: number, last: string): string => `${"abcdefgh".repeat(9).slice(0, letters - 1)}${last}`;
    expect([near(long(64, "x"), long(64, "y")), near(long(65, "x"), long(65, "y")), near(long(64, "x"), long(65, "x"))]).toEqual([
      long(64, "y"), undefined, undefined,
    ]);
    expect(near(long(65, "x"), `${long(65, "x")}.`)).toBe(`${long(65, "x")}.`);
  });

  test("are two slips apart from nine letters on, in both of them", () => {
    // By hand: both have nine letters, then one of eight.
    expect([near("abcdefghi", "abcdefgxy"), near("abcdefghi", "abcdefgx"), near("abcdefgh", "abcdefxy")]).toEqual([
      "abcdefgxy", undefined, undefined,
    ]);
    expect([near("abcdefghi", "abcdefghijk"), near("abcdefghi", "abcdefghijkl"), near("abcdefghi", "abcdefgh")]).toEqual([
      "abcdefghijk", undefined, "abcdefgh",
    ]);
  });

  test("have the same numbers in the same order, in whatever marks", () => {
    expect([near("oak 4/4", "oek 4-4"), near("oak 4/4", "oek 44"), near("2 oak 4", "4 oek 2"), near("oak", "oek 1")]).toEqual([
      "oek 4-4", undefined, undefined, undefined,
    ]);
  });

  test("are looked for whether the name asked about stands there or not, and never itself", () => {
    expect([near("oak blank", "oak blank"), near("Oak Blank", "oakblank", "oak blnak"), near("oak", "ash", "oek", "oax")]).toEqual([
      undefined, "oak blnak", "oek",
    ]);
    expect([near("oak", "oak", "Oak", "oek"), near(42, "42.", "43"), near("", "a", "b")]).toEqual(["oek", "42.", undefined]);
  });

  test("of ours are one another's never, and a shop's own may be meant by one of ours", () => {
    expect([near("newel", "newell"), near("newell", "newel"), near("tread without return", "tread with one return")]).toEqual([
      "newell", "newel", undefined,
    ]);
  });

  test("of thousands are found too, the longest of them with one slip alone", () => {
    // By hand: a name of 30 letters has 1 + 30 + 30 x 29 / 2 = 466 rests at two slips, 3,000 of them 1.4 million, more than 250,000; at one
    // slip 31 each, 93,000.
    const name = (place: number): string =>
      String(place).split("").map((digit) => "abcdefghij"[Number(digit)]!.repeat(5)).join("").padEnd(30, "z");
    const names = [...Array.from({ length: 3_000 }, (_, place) => name(place + 1_000)), "white oak board"];
    const asked = name(2_345);
    const [one, two] = [`y${asked.slice(1)}`, `yy${asked.slice(2)}`];
    expect([near(one, ...names), near(two, ...names), near("wite oak bord", ...names)]).toEqual([asked, undefined, "white oak board"]);
  });
});
