import { call } from "../../src/functions/call";
import { OFFCUTS } from "../../src/functions/yield/offcuts";

// By hand: a rip of 10 in 20 x 10 is the whole width; after 10 and a kerf of 1/8 an end of 9 7/8 x 10 is left.
const kept = (keep: string): unknown => {
  const answer = call(OFFCUTS, [
    [["label", "length", "width"], ["shelf", 10, 10]], [["label", "length", "width", "price"], ["panel", 20, 10, 8]],
    0.125, 0, keep, "in", true, "rip",
  ]);
  // length, available, label, width
  return Array.isArray(answer) ? answer.slice(1).map((row) => [0, 2, 4, 6].map((column) => row[column])) : answer;
};

test("an end as long and as wide as what is kept is kept, a sixteenth more is not", () => {
  expect(kept("9 7/8 x 10")).toEqual([[9.875, 1, "offcut of panel", 10]]);
  expect(kept("9 15/16 x 10")).toEqual([[9.9375, 0, "no end is long enough", ""]]);
  expect(kept("9 7/8 x 10 1/16")).toEqual([[9.875, 0, "no end is long enough", ""]]);
});
