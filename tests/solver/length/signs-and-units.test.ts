import { measure } from "../../../src/solver/length/length";
import { parseLength, statedUnit } from "../../../src/solver/length/parse-length";
import { isProblem } from "../../../src/solver/problem";

/** Every sign a length may be written with, its own unit, and what a text that is none is said to be. 1 in is 25.4 mm, 1 ft 12 in. */

const read = (text: string): unknown => {
  const length = parseLength(text, "in");
  return isProblem(length) ? [length.problem, length.details] : measure(length, "in");
};

// By their names in the Unicode standard: vulgar fraction one quarter and so on.
test.each([
  ["\u00bc", 1, 4], ["\u00bd", 1, 2], ["\u00be", 3, 4], ["\u2150", 1, 7], ["\u2151", 1, 9], ["\u2152", 1, 10], ["\u2153", 1, 3],
  ["\u2154", 2, 3], ["\u2155", 1, 5], ["\u2156", 2, 5], ["\u2157", 3, 5], ["\u2158", 4, 5], ["\u2159", 1, 6], ["\u215a", 5, 6],
  ["\u215b", 1, 8], ["\u215c", 3, 8], ["\u215d", 5, 8], ["\u215e", 7, 8],
])("%s is %d/%d", (sign, over, under) => {
  expect(read(sign)).toBeCloseTo(over / under, 12);
  expect(read(`7${sign}"`)).toBeCloseTo(7 + over / under, 12);
  expect(read(`2' 7 ${sign}`)).toBeCloseTo(31 + over / under, 12);
});

test.each([
  ["slashes", ["1/2", "1\u20442", "1\u22152", "1\uff0f2", "1 / 2"], 0.5],
  ["minus signs", ["-1", "\u20101", "\u20131", "\u20141", "\u20151", "\u22121", "\ufe631", "\uff0d1", "- 1"], -1],
  ["foot marks", ["1'", "1\u2018", "1\u2019", "1\u201b", "1\u2032", "1\u00b4", "1`", "1 ft", "1 ft.", "1 feet", "1 FOOT", "1foot"], 12],
  ["inch marks", ['1"', "1\u201c", "1\u201d", "1\u201f", "1\u2033", "1\u3003", "1''", "1 in", "1in.", "1 inch", "1 INCHES"], 1],
  ["spaces", ["1 1/2", "1\u00a01/2", "1\u20091/2", "1\u202f1/2", "1\u30001/2", "  1   1/2 ", "1\t1/2"], 1.5],
  ["fractions behind", ['11" 3/8', '11"3/8"', '11" - 3/8', "8-11-3/8".slice(2)], 11.375],
] as const)("%s", (_, texts, inches) => {
  for (const text of texts) expect([text, read(text)]).toEqual([text, inches]);
});

test("feet have up to a foot of inches, whole feet beside them, and no fraction of nothing", () => {
  expect(["2' 11.99", "2' 0", "2.5'", "2 1/2 ft", "2.5' 0\"", "1/2'", "2' 1/2", "2'-3"].map(read)).toEqual([
    35.99, 24, 30, 30, 30, 6, 24.5, 27,
  ]);
  expect(read("2' 12")).toEqual(["too-many-inches", { text: "2' 12", inches: "12" }]);
  expect(read("2' 11 4/4")).toEqual(["too-many-inches", { text: "2' 11 4/4", inches: "12" }]);
  expect(read("2.5' 1\"")).toEqual(["fractional-feet-and-inches", { text: "2.5' 1\"" }]);
  for (const text of ["1/0", "1 1/0 in", "1/0 mm", "2 1/0 cm", "1/0'", "2 1/0 ft 3 in", "2' 1/0", "2' 3 1/0\""])
    expect(read(text)).toEqual(["zero-denominator", { text }]);
});

test("metric lengths are of mm, cm or m, with fractions too", () => {
  expect(["25.4 mm", "2.54cm", "0.0254 m", "254/10 MM", "-25.4 mm", "25 4/10 mm", "25-4/10 mm"].map(read)).toEqual([1, 1, 1, 1, -1, 1, 1]);
});

test("the unit a text states is its own, whatever its sign, and none of a bare number or of no length", () => {
  expect(["25 mm", "2cm", "-1 m", "+ 1/2 m"].map(statedUnit)).toEqual(Array(4).fill("mm"));
  expect(['7 5/8"', "7 in", "-7 inches", "2'", "2 ft 3", "2'-3 1/2"].map(statedUnit)).toEqual(Array(6).fill("in"));
  expect(["7", "7 5/8", "-7", "", "tread", "7 x", "8-11"].map(statedUnit)).toEqual(Array(7).fill(undefined));
});

describe("a text that is no length says what to write instead", () => {
  test("a comma: the point, or either of two readings", () => {
    const of = (text: string): unknown => (read(text) as [string, { instead: string }])[1].instead;
    expect([of("7,5"), of("7 , 5"), of("7,25 in"), of("0,0254 m")]).toEqual([
      "7.5 with a point", "7.5 with a point", "7.25 in with a point", "0.0254 m with a point",
    ]);
    expect([of("1,000"), of("1,000 mm"), of("12,345,678")]).toEqual([
      "1000 or 1.000, whichever is meant", "1000 mm or 1.000 mm, whichever is meant", "12345678",
    ]);
    expect([of("1,0000"), of("1000,5")]).toEqual(["1.0000 with a point", "1000.5 with a point"]);
    expect(read("tread, oak")).toEqual(["not-a-length", { text: "tread, oak" }]);
  });

  test("a pair of numbers up to 11 inches, which may be feet and inches", () => {
    expect(read("8-11")).toEqual(["feet-or-inches", { text: "8-11", feet: "8' 11\"" }]);
    expect(read('8 - 9"')).toEqual(["feet-or-inches", { text: '8 - 9"', feet: "8' 9\"" }]);
    for (const text of ["8-12", "8-20", "8-1.5", "8.5-1"]) expect(read(text)).toEqual(["not-a-length", { text }]);
  });

  test("two units, two fractions, or nothing at all", () => {
    for (const text of ["1 ft 30 mm", "2 in 5 cm", "2\" 1m", "1' 2 m"]) expect(read(text)).toEqual(["two-units", { text }]);
    for (const text of ["1/2 1/4", "1/2/4", "2 1/2 3/4"]) expect(read(text)).toEqual(["two-fractions", { text }]);
    for (const text of ["", " ", "\u00a0"]) expect(read(text)).toEqual(["no-length", { text }]);
    for (const text of ["mm", "in", "'", "-", "+", "5 m m", "5 ells", "in 5"]) expect(read(text)).toEqual(["not-a-length", { text }]);
  });
});
