import { stripWidths } from "../../../../src/solver/yield/glue-up/strip-widths";

// By hand, in whole inches: a saw and a jointer take 1 each, strips net 2 to 4.
const work = { kerf: 1, joints: 1 };
const panel = (need: number, ...counts: number[]) => ({ kind: { length: 10, need, least: 2, greatest: 4, count: 1 }, counts });

test("two strips side by side in one section: 3 + 1, a kerf, 4 + 1 is 10", () => {
  expect(stripWidths(work, [panel(3, 1), panel(4, 1)], [10])).toEqual([[3], [4]]);
  expect(stripWidths(work, [panel(3, 1), panel(4, 1)], [9])).toBeUndefined();
});

test("a strip is no wider than the greatest, however wide the section", () => {
  expect(stripWidths(work, [panel(5, 1)], [20])).toBeUndefined();
  expect(stripWidths(work, [panel(5, 2)], [20])).toEqual([[5]]);
});

test("a panel gives way in a section to one that has no other, and takes more of its own", () => {
  // 9 wide holds 2 and 4 (2 + 1, a kerf, 4 + 1); the panel of 6 has its other 4 from the section 7 wide
  const nets = stripWidths(work, [panel(6, 1, 1), panel(4, 1, 0)], [9, 7])!;
  expect(nets[1]).toEqual([4, 0]);
  expect(nets[0]).toEqual([2, 4]);
});

test("strips of the least width may be more than the panel needs", () => {
  expect(stripWidths(work, [panel(3, 1, 1)], [3, 3])).toEqual([[2, 2]]);
});
