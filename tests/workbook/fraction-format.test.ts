import fc from "fast-check";
import { format } from "../../src/workbook/fraction-format";

// Hand, to the nearest part: 7.97 x 16 = 127.52 and 7.99 x 16 = 127.84, both 128/16 = 8; 0.99 x 16 = 15.84, 1; 7.96 x 16 = 127.36, 7 15/16;
// 7 31/32 = 7.96875 and 61/64 = 0.953125 as they stand; 7.94 x 8 = 63.52, 64/8 = 8.
test.each([
  ["# ?/16", 7.99, "8"],
  ["# ?/16", 7.97, "8"],
  ["# ?/16", 7.96, "7 15/16"],
  ["# ?/16", 0.96, "15/16"],
  ["# ?/16", 0.99, "1"],
  ["# ?/16", -7.99, "-8"],
  ["# ?/16", -7.96, "-7 15/16"],
  ["# ??/16", 7.99, "8"],
  ["# ??/32", 7.96875, "7 31/32"],
  ["# ??/64", 0.953125, "61/64"],
  ["0 ??/64", 0.953125, "0 61/64"],
  ["#,##0 ??/32", 1234.96875, "1,234 31/32"],
  ["#,##0 ??/32", 999.96875, "999 31/32"],
  ["# ?/8", 7.94, "8"],
  ["# ?/16", 7.625, "7 10/16"],
  ["# ?/16", 8, "8"],
  ["# ?/?", 7.99, "8"],
  ["# ?/?", 7.625, "7 5/8"],
  ["# ??/??", 7.96875, "7 31/32"],
  ["0.00", 7.999, "8.00"],
  ["m/d/yyyy", 46_023, "1/1/2026"],
  ["d/d", 36_526, "1/1"],
])("under the format %s, %d shows as %s", (pattern, value, shows) => {
  expect(format(pattern, value).trim()).toBe(shows);
});

test("text passes the format by", () => {
  expect(format("# ?/16", "1/1")).toBe("1/1");
});

const sizeRead = (text: string): number => {
  const [, whole = "0", over = "0", under = "1"] = /^\s*(\d+)?(?:\s+(\d+)\/\s*(\d+))?\s*$/.exec(text) ?? ["", "NaN"];
  return Number(whole) + Number(over) / Number(under);
};

test.each([2, 4, 8, 16, 32, 64])(
  "what is shown in 1/%i lies within half of that of the size, and no fraction is a whole",
  (denominator) => {
    const pattern = denominator < 10 ? `# ?/${denominator}` : `# ??/${denominator}`;
    fc.assert(
      fc.property(fc.double({ min: 0, max: 400, noNaN: true }), (size) => {
        const shown = format(pattern, size);
        expect(shown).not.toContain(`${denominator}/${denominator}`);
        expect(Math.abs(sizeRead(shown) - size)).toBeLessThanOrEqual(0.5 / denominator + 1e-9);
      }),
      { numRuns: 2000, examples: [[7.96875], [0.95], [2.95], [399.999], [0.953125]] },
    );
  },
);
