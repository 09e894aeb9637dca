import { inchesIn, isUnderTheRule, markedLength, ruledLength } from "../../../src/solver/length/marked-length";

test("a length is marked at the nearest 32nd, and a 64th past or short of it is said", () => {
  // By hand: 38 1/4 is 38.25; a 64th is 0.015625, half of it 0.0078.
  const marked: readonly (readonly [number, string])[] = [
    [38.25, "38 1/4"],
    [38.2577, "38 1/4"],
    [38.2593, "38 1/4 strong"],
    [38.242, "38 1/4 shy"],
    [38.2427, "38 1/4"],
    [36.97, "36 31/32"],
    [40, "40"],
    [39.993, "40"],
    [39.99, "40 shy"],
    [0.5, "1/2"],
    [0.28125, "9/32"],
    [0, "0"],
  ];
  for (const [value, text] of marked) expect([value, markedLength(value, "in")]).toEqual([value, text]);
});

test("in millimetres to the nearest half", () => {
  expect([12.7, 972.2, 972.3, 31.75, 32].map((value) => markedLength(value, "mm"))).toEqual(["12.5", "972", "972.5", "32", "32"]);
});

test("a rule shows 64ths and half millimetres, and nothing under half of one", () => {
  // By hand: 11.25 x tan 0.5242 degrees = 0.1029 = 6.6/64.
  expect(ruledLength(0.1029, "in")).toBe("7/64");
  expect(ruledLength(1.2785, "in")).toBe("1 9/32");
  expect(ruledLength(2.61, "mm")).toBe("2.5");
  expect([isUnderTheRule(0.0077, "in"), isUnderTheRule(0.0079, "in"), isUnderTheRule(-0.24, "mm"), isUnderTheRule(-0.26, "mm")]).toEqual([
    true, false, true, false,
  ]);
});

test("a rule of the shop in inches counts in either unit", () => {
  expect([inchesIn(0.5, "in"), inchesIn(0.5, "mm")]).toEqual([0.5, 12.7]);
});
