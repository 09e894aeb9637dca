import fc from "fast-check";
import { shownGeneral } from "../../src/workbook/shown-general";

// By hand, with digits 0.556 x 14.67 = 8.15 pixels wide: (88 - 8) / 8.15 is 9 of them, (64 - 8) / 8.15 is 6, (400 - 8) / 8.15 more than 11.
test.each([
  [64.40820312, 88, 64.408203],
  [64.40820312, 64, 64.408],
  [64.40820312, 400, 64.40820312],
  [1 / 3, 400, 0.333333333],
  [-64.40820312, 64, -64.41],
  [123_456.789, 64, 123_457],
  [1_234_567.89, 64, 1_234_568],
  [14, 64, 14],
  [7.5, 64, 7.5],
  [0.1 + 0.2, 88, 0.3],
  [0.00001234, 64, 0.00001234],
])("%d in a column of %d pixels is shown as %d", (value, width, shows) => {
  expect(shownGeneral(value, width, 11)).toBe(shows);
});

test("whatever the number and the width, the whole part is right and nothing is longer than fits", () => {
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 20, max: 400 }), (value, width) => {
      const shown = shownGeneral(value, width, 11);
      expect(Math.abs(shown - value)).toBeLessThanOrEqual(0.5 + 1e-9);
      const fits = Math.max(Math.floor((width - 8) / 8.15), String(Math.round(value)).length);
      if (Math.abs(value) >= 1e-4 && Math.abs(shown) >= 1e-6) expect(String(shown).length).toBeLessThanOrEqual(Math.min(11, fits) + 1);
    }),
  );
});
