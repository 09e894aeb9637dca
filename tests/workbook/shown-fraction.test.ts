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
  ["# ??/16", 7.5625, "7 9/16"],
  ["# ??/16", -0.2321, "-1/4"],
  ["# ??/16", 0, "0"],
  ["# ??/16", -0.02, "0"],
  ["0 ??/16", -0.2321, "-0 1/4"],
  ["# ??/16", 0.5, "1/2"],
  ["# ??/16", -7.5, "-7 1/2"],
  ["# ??/16", 8, "8"],
  ["# ??/16", 7.99, "8"],
  ["0 ??/16", 0.5, "0 1/2"],
  ["# ??/32", 7.0625, "7 1/16"],
  ["# ??/32", 7.03125, "7 1/32"],
  ['# ??/16\\"', 7.5, '7 1/2"'],
  ['# ??/16\\"', 8, '8"'],
  ["?/16", 8, "8"],
  ["# ??/12", 7.5, "7  6/12"],
  ["0.00", 7.5, "7.50"],
  ["# ??/??", 7.5, "7  1/2 "],
])("under the format %s, a cell of %d shows %p", (pattern, value, shows) => {
  expect(shownFraction(pattern, value).trimStart()).toBe(shows);
});

test("a text passes the format by", () => {
  expect(shownFraction("# ??/16", "8/16")).toBe("8/16");
});

/** The tape read with nothing of ours: whole inches, and then the longest mark at which the size, rounded to a part, lies. */
const onTape = (size: number, division: number): string => {
  const counted = Math.floor(Math.abs(size) * division + 0.5);
  const whole = Math.floor(counted / division);
  const left = counted - whole * division;
  const sign = size < 0 && counted > 0 ? "-" : "";
  if (left === 0) return `${sign}${whole}`;
  const mark = [2, 4, 8, 16, 32, 64].find((parts) => Number.isInteger((left * parts) / division)) ?? 0;
  return `${sign}${whole === 0 ? "" : `${whole} `}${(left * mark) / division}/${mark}`;
};

/** Sizes of a stair: any of them, and those that lie on a mark or half-way between two. */
const sizes = (division: number) =>
  fc.oneof(
    fc.double({ min: -400, max: 400, noNaN: true }),
    fc.integer({ min: -400 * 2 * division, max: 400 * 2 * division }).map((halves) => halves / (2 * division)),
  );

test.each([2, 4, 8, 16, 32, 64])("whatever the size, the format in parts of 1/%i shows what a tape says", (division) => {
  const pattern = division < 10 ? `# ?/${division}` : `# ??/${division}`;
  fc.assert(
    fc.property(sizes(division), (size) => {
      expect(shownFraction(pattern, size)).toBe(onTape(size, division));
    }),
    { numRuns: 3000, examples: [[0], [-0], [7.5625], [7.99], [-0.2321], [0.96875], [399.999]] },
  );
});
