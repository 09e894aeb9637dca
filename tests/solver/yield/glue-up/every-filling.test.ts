import { everyFilling } from "../../../../src/solver/yield/glue-up/every-filling";
import type { GlueWork } from "../../../../src/solver/yield/glue-up/glue-work";

// By hand, in whole inches: a saw and a jointer take 1 each, strips net 2 to 4.
const kind = (need: number, length = 10, count = 1) => ({ length, need, least: 2, greatest: 4, count });
type Boards = readonly (readonly [length: number, width: number])[];
const work = (kinds: GlueWork["kinds"], boards: Boards, given: Partial<GlueWork> = {}): GlueWork => ({
  kinds, woods: boards.map(([length, width]) => ({ width, stretches: [length], suits: kinds.map(() => true) })), offers: [],
  kerf: 1, joints: 1, strips: Infinity, isOfOneBoard: false, ...given,
});
const filling = (of: GlueWork, steps = 10_000) => everyFilling(of, of.woods.map((_, wood) => wood), { left: steps });

test("a board 10 wide holds panels of 3 and 4 (3 + 1, a kerf, 4 + 1), one of 9 does not", () => {
  expect(filling(work([kind(3), kind(4)], [[10, 10]]))).toEqual([
    { wood: 0, stretch: 0, along: 0, across: 0, net: 3, kind: 0, panel: 0 },
    { wood: 0, stretch: 0, along: 0, across: 5, net: 4, kind: 1, panel: 0 },
  ]);
  expect(filling(work([kind(3), kind(4)], [[10, 9]]))).toBe("none");
});

test("a section of the longer panel's length gives a strip of the shorter one too", () => {
  // 12 long leaves no room for 10 and 7: one section of 10, ripped into 4 and 4 (4 + 1, a kerf, 4 + 1 is 11)
  const found = filling(work([kind(4), kind(4, 7)], [[12, 11]]));
  expect(found).toHaveLength(2);
  expect(filling(work([kind(4), kind(4, 7)], [[12, 10]]))).toBe("none");
});

test("a panel of 6 out of two boards 5 wide, but not where it is of one board, or of one strip", () => {
  const two = [kind(6)];
  const boards = [[10, 5], [10, 5]] as const;
  expect(filling(work(two, boards))).toHaveLength(2);
  expect(filling(work(two, boards, { isOfOneBoard: true }))).toBe("none");
  expect(filling(work(two, boards, { strips: 1 }))).toBe("none");
});

test("panels alike: three of 4 want three sections 5 wide, two do not do", () => {
  expect(filling(work([kind(4, 10, 3)], [[10, 5], [21, 5]]))).toHaveLength(3);
  expect(filling(work([kind(4, 10, 3)], [[10, 5], [20, 5]]))).toBe("none");
});

test("says so where its steps do not do", () => {
  expect(filling(work([kind(4, 10, 3)], [[10, 5], [21, 5]]), 3)).toBe("not known");
});
