import * as fc from "fast-check";
import { goodsKey } from "../../../src/solver/goods/goods-key";
import { converted, goodsUnit, isConvertible, isSameUnit } from "../../../src/solver/goods/goods-unit";
import { TAKEOFF_ITEMS } from "../../../src/solver/takeoff/items";
import { exact } from "../../../src/solver/length/exact";
import { words } from "../../../src/solver/words";

describe("one item", () => {
  test.each([
    ["Oak  Blank", "oakblank"],
    ["3 x 10", "3X10"],
    ["3 × 10", "3x10"],
    ["oak 1½", "oak 1 1/2"],
    ["oak 1 ½", "OAK 1  1/2"],
    ["oak 1⁄2", "oak ½"],
    ["5′ 6″ rail", `5' 6" rail`],
    ["8’ board", "8' board"],
    ["“clear” oak", '"clear" oak'],
    ["oak – clear", "oak-clear"],
    ["oak\u00a0blank 42", "oak blank 42"],
    // é as one sign and as two.
    ["caf\u00e9", "cafe\u0301"],
    ["ступень", "СТУПЕНЬ"],
  ])("%s is %s", (one, other) => expect(goodsKey(one)).toBe(goodsKey(other)));

  test("a number in a cell is its digits", () => expect(goodsKey(54)).toBe(goodsKey("54")));
});

test.each([
  ["oak 4/4", "oak 44"],
  ["oak 1 1/4", "oak 11/4"],
  ["4½", "41/2"],
  ["tread 5/4", "tread 54"],
  ["oak #1", "oak 1"],
  ["oak (clear)", "oak clear"],
  ["2.5 oak", "25 oak"],
  ["m²", "m2"],
  ["oak", "oaks"],
])("%s is not %s", (one, other) => expect(goodsKey(one)).not.toBe(goodsKey(other)));

describe("items of a takeoff, a closed list", () => {
  test.each([
    ["mitered return", "mitred return"],
    ["Mitred-returns", "mitred return"],
    ["notches", "notch"],
    ["screw", "screws"],
    ["tread with two returns", "TREADS WITH TWO RETURNS"],
    ["labor", "labour"],
  ])("%s is %s", (one, other) => expect(goodsKey(one)).toBe(goodsKey(other)));

  test("stay apart from one another", () => {
    const items = Object.keys(TAKEOFF_ITEMS).map(words);
    expect(new Set(items.map(goodsKey)).size).toBe(items.length);
  });
});

test("a key is its own key, in capitals too", () => {
  const name = fc.string({ unit: fc.constantFrom(..."abk 14/½×-'’\"".split("")), maxLength: 12 });
  fc.assert(
    fc.property(name, (text) => {
      expect(goodsKey(goodsKey(text))).toBe(goodsKey(text));
      expect(goodsKey(text.toUpperCase())).toBe(goodsKey(text));
    }),
  );
});

describe("units", () => {
  test.each([
    ["each", "EA", "ea.", "pc", "pcs", "Pieces", "no.", "nos"],
    ["dozen", "doz.", "dz", "Dozens"],
    ["ft", "LF", "l.f.", "'", "’", "feet", "Foot", "lin. ft", "lineal ft", "linear feet"],
    ["in", '"', "″", "inches", "In."],
    ["m", "metre", "Meters", "lin m", "lm"],
    ["bf", "BdFt", "bd. ft.", "board foot", "board feet", "FBM", "bm"],
    ["sq ft", "SF", "sq. ft.", "ft2", "ft²", "square feet"],
    ["sq m", "m2", "m²"],
    ["sheet", "sht", "shts", "Sheets"],
    ["hour", "hr", "hrs", "h", "Hours"],
    ["minute", "min", "mins"],
    ["box", "Boxes", "BOX"],
  ])("%s is written %s, %s …", (name, ...spellings) => {
    for (const spelling of spellings) expect(isSameUnit(goodsUnit(spelling), goodsUnit(name))).toBe(true);
  });

  test.each([
    // By hand, with 1 in = 25.4 mm: 12 x 25.4 = 304.8; 304.8² = 92,903.04.
    [144, "in", "ft", "12"], [3, "ft", "yd", "1"], [1, "ft", "mm", "304.8"], [2.5, "m", "cm", "250"], [100, "sq ft", "sq m", "9.290304"],
    [2, "dozen", "each", "24"], [0.5, "mbf", "bf", "500"], [90, "min", "hr", "1.5"],
  ])("%d %s in %s is %s", (amount, from, to, wanted) => {
    expect(converted(exact(amount), goodsUnit(from), goodsUnit(to)).toString()).toBe(wanted);
  });

  test("nothing else converts, and no unit is another's", () => {
    const names = ["each", "ft", "bf", "sq ft", "sheet", "hour", "box", "tube", "lb"];
    for (const [at, one] of names.entries())
      for (const other of names.slice(at + 1)) expect(isConvertible(goodsUnit(one), goodsUnit(other))).toBe(false);
  });
});
