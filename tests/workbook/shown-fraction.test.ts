import fc from "fast-check";
import { shownFraction } from "../../src/workbook/shown-fraction";

// By hand: 8/16 = 1/2, 12/16 = 3/4, 10/16 = 5/8, 128/16 = 8, 2/32 = 1/16; 7.49 x 16 = 119.84, so 120/16 = 7 1/2, and
// 7.52 x 16 = 120.32, the same.
test.each([
  ["# ??/16", 7.5, "7 1/2"],
  ["# ??/16", 7.49, "7 1/2"],
  ["# ??/16", 7.52, "7 1/2"],
  ["# ??/16", 7.75, "7 3/4"],
  ["# ??/16", 7.625, "7 5/8"],
  ["# ??/16", 7.6875, "7 11/16"],
  ["# ??/16", 7.5625, "7  9/16"],
  ["# ??/16", 0.5, "1/2"],
  ["# ??/16", -7.5, "-7 1/2"],
  ["# ??/16", 8, "8"],
  ["# ??/16", 7.99, "8"],
  ["0 ??/16", 0.5, "0 1/2"],
  ["# ??/32", 7.0625, "7 1/16"],
  ["# ??/32", 7.03125, "7  1/32"],
  ['# ??/16\\"', 7.5, '7 1/2"'],
  ["# ??/12", 7.5, "7  6/12"],
  ["0.00", 7.5, "7.50"],
  ["# ??/??", 7.5, "7  1/2 "],
])("under the format %s, a cell of %d shows %p", (pattern, value, shows) => {
  expect(shownFraction(pattern, value).trimStart()).toBe(shows);
});

test("a text passes the format by", () => {
  expect(shownFraction("# ??/16", "8/16")).toBe("8/16");
});

test("whatever the size, what is shown is that size to the nearest 1/16, and its last figure is odd", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 400, noNaN: true }), (size) => {
      const read = /^\s*(?:(\d+)(?:\s+|$))?(?:(\d+)\/(\d+))?$/.exec(shownFraction("# ??/16", size));
      const [, whole = "0", over = "0", under = "1"] = read ?? ["", "NaN"];
      expect(Math.abs(Number(whole) + Number(over) / Number(under) - size)).toBeLessThanOrEqual(1 / 32 + 1e-9);
      expect(over === "0" || Number(over) % 2 === 1).toBe(true);
    }),
  );
});
