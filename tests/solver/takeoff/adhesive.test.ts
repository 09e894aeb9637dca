import * as fc from "fast-check";
import { call } from "../../../src/functions/call";
import { ADHESIVE } from "../../../src/functions/takeoff/adhesive";
import { Exact } from "../../../src/solver/length/exact";
import { lengthOf } from "../../../src/solver/length/length";
import { isProblem } from "../../../src/solver/problem";
import { adhesive } from "../../../src/solver/takeoff/adhesive";
import { cartridge } from "../../../src/solver/takeoff/cartridge";

const volumeOf = (text: string): Exact => {
  const volume = cartridge(text);
  if (!(volume instanceof Exact)) throw new Error(`${text} is no volume`);
  return volume;
};

const cartridges = (inches: number, diameter: number, text: string, waste: number): number => {
  const found = adhesive(lengthOf(inches, "in"), lengthOf(diameter, "in"), volumeOf(text), new Exact(waste));
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

// From memory: feet of round bead out of 10.1 fl oz, from volumes alone, to a tenth of a foot.
test.each([
  [1 / 8, 123.8],
  [3 / 16, 55],
  [1 / 4, 30.9],
  [3 / 8, 13.8],
  [1 / 2, 7.7],
])("a %d in bead runs %d ft out of one 10.1 fl oz cartridge", (diameter, feet) => {
  expect(cartridges((feet - 0.05) * 12, diameter, "10.1", 0)).toBe(1);
  expect(cartridges((feet + 0.05) * 12, diameter, "10.1", 0)).toBe(2);
});

test("a stair of fourteen treads and risers takes four cartridges", () => {
  // by hand: 28 pieces x 3 beads x 36 in = 3,024 in; pi/4 x 1/16 x 3,024 = 148.440 cu in, x 1.1 = 163.284;
  // 28 fl oz = 50.53125 cu in; 163.284 / 50.53125 = 3.231
  expect(cartridges(3024, 0.25, "28 fl oz", 0.1)).toBe(4);
});

test("a bead worked out to empty whole cartridges takes no cartridge more", () => {
  for (let whole = 1; whole <= 12; whole += 1) {
    // the sheet's own arithmetic: length = cartridges x volume / (pi/4 x diameter squared), in floats
    const inches = (whole * 10.1 * 1.8046875) / ((Math.PI / 4) * 0.25 * 0.25);
    expect(cartridges(inches, 0.25, "10.1", 0)).toBe(whole);
    expect(cartridges(inches * 1.000001, 0.25, "10.1", 0)).toBe(whole + 1);
  }
});

test("the rounding up is right where float arithmetic says so plainly", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 20000 }),
      fc.integer({ min: 1, max: 16 }),
      fc.integer({ min: 10, max: 900 }),
      fc.integer({ min: 0, max: 100 }),
      (inches, sixteenths, millilitres, percent) => {
        const diameter = sixteenths / 16;
        const needed = (((Math.PI * diameter * diameter * inches * (1 + percent / 100)) / 4) * 16.387064) / millilitres;
        fc.pre(Math.abs(needed - Math.round(needed)) > 1e-6);
        expect(cartridges(inches, diameter, `${millilitres} ml`, percent / 100)).toBe(Math.ceil(needed));
      },
    ),
  );
});

test("more waste never takes fewer cartridges", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 20000 }),
      fc.integer({ min: 0, max: 100 }),
      fc.integer({ min: 0, max: 100 }),
      (inches, one, other) => {
        const [less, more] = [Math.min(one, other) / 100, Math.max(one, other) / 100];
        expect(cartridges(inches, 0.25, "10.1", more)).toBeGreaterThanOrEqual(cartridges(inches, 0.25, "10.1", less));
      },
    ),
  );
});

test("two stairs never take more cartridges opened together than apart", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9000 }), fc.integer({ min: 1, max: 9000 }), (one, other) => {
      const together = cartridges(one + other, 0.25, "290 ml", 0.1);
      const apart = cartridges(one, 0.25, "290 ml", 0.1) + cartridges(other, 0.25, "290 ml", 0.1);
      expect(together).toBeLessThanOrEqual(apart);
      expect(together).toBeGreaterThanOrEqual(apart - 1);
    }),
  );
});

describe("in a sheet", () => {
  test("a column of lengths gives a column of cartridges, and an empty cell stays empty", () => {
    // by hand, each 1/4 in bead with 10 % waste from 10.1 fl oz, 371.33 in a cartridge: 100 x 1.1 / 371.33 = 0.30; 371 x 1.1 = 1.10; 1,000
    // x 1.1 = 2.96
    expect(call(ADHESIVE, [[[100], [""], [371], [1000]], 0.25, 10.1])).toEqual([[1], [""], [2], [3]]);
  });

  test.each([
    [[371, 0, 10.1], "beadDiameter: must be more than 0, got 0"],
    [[371, 6, 10.1], 'beadDiameter: 6" is wider than any bead, 2" at most; if this is millimetres, write the unit, as in "6 mm"'],
    [[0, 0.25, 10.1], "beadLength: must be more than 0, got 0"],
    [[371, 0.25, 0], 'cartridge: must be more than 0, got "0"'],
    [[371, 0.25, "10,1"], 'cartridge: read "10,1", which has a comma; write 10.1 with a point'],
    [[371, 0.25, 10.1, 10], "waste: 10 is 1000 %, write 10% or 0.1"],
    [[371, 0.25, 10.1, -0.1], "waste: must be 0 or more, got -0.1"],
  ])("%j is refused in words", (cells, says) => {
    expect(call(ADHESIVE, cells)).toEqual({ failed: "#VALUE!", says });
  });
});
