import { call } from "../../src/functions/call";
import { OFFCUTS } from "../../src/functions/yield/offcuts";

/** Length, available, label and width of what is kept. */
const keptOf = (pieces: unknown, stock: unknown, keep: unknown): unknown => {
  const answer = call(OFFCUTS, [pieces, stock, 0.125, 0, keep, "in", true, "rip"]);
  return Array.isArray(answer) ? answer.slice(1).map((row) => [0, 2, 4, 6].map((column) => row[column])) : answer;
};

// By hand: a rip of 10 in 20 x 10 is the whole width; after 10 and a kerf of 1/8 an end of 9 7/8 x 10 is left.
const kept = (keep: string): unknown =>
  keptOf([["label", "length", "width"], ["shelf", 10, 10]], [["label", "length", "width", "price"], ["panel", 20, 10, 8]], keep);

test("an end as long and as wide as what is kept is kept, a sixteenth more is not", () => {
  expect(kept("9 7/8 x 10")).toEqual([[9.875, 1, "offcut of panel", 10]]);
  expect(kept("9 15/16 x 10")).toEqual([[9.9375, 0, "no end is large enough", ""]]);
  expect(kept("9 7/8 x 10 1/16")).toEqual([[9.875, 0, "no end is large enough", ""]]);
});

// By hand: a riser 40 x 5 ripped from a board 96 x 7 1/2 leaves 96 - 40 - 1/8 = 55 7/8 of its strip, and 7 1/2 - 5 - 1/8 = 2 3/8 beside it.
const keptOfBoard = (keep: unknown): unknown =>
  keptOf(
    [["label", "length", "width"], ["riser", 40, 5]],
    [["label", "length", "width", "thickness", "board foot price"], ["7", 96, 7.5, "4/4", 6]], keep,
  );

test("of a measured board a size says how wide what is kept is at least; a length alone means no narrower than the pieces", () => {
  expect(keptOfBoard(24)).toEqual([[55.875, 1, "offcut of 7", 5]]);
  expect(keptOfBoard("24 x 2 3/8")).toEqual([[55.875, 1, "offcut of 7", 5], [96, 1, "offcut of 7", 2.375]]);
  expect(keptOfBoard("24 x 2 7/16")).toEqual([[55.875, 1, "offcut of 7", 5]]);
  expect(keptOfBoard("60 x 2")).toEqual([[96, 1, "offcut of 7", 2.375]]);
  expect(keptOfBoard("24 x 5 1/16")).toEqual([[24, 0, "no end is large enough", ""]]);
});
