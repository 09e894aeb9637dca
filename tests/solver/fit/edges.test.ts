import { closureNotes, adjusted, saysDisagreeing, saysEveryStep } from "../../../src/solver/fit/closure-notes";
import { type CornerReading, corners } from "../../../src/solver/fit/corner-reading";
import { riserHeight, riserHeights } from "../../../src/solver/fit/riser-height";
import { sawSet } from "../../../src/solver/fit/saw-set";
import { unlessDisagreeing } from "../../../src/solver/fit/unless-disagreeing";
import { type Length, lengthOf } from "../../../src/solver/length/length";
import { isProblem } from "../../../src/solver/problem";

/** Each limit of a fit at its figure and a hair outside; corners with the whole-number triangles 3-4-5, 5-12-13 and 8-15-17. */

const inch = (inches: number): Length => lengthOf(inches, "in");
const LIMITS = { most: 0.125, alike: 0.0625, division: 0.0625 };
type Checked = Parameters<typeof closureNotes>[0][number];
const closed = (closure: number | undefined, more: object = {}): Checked =>
  ({ leftDistance: 10, rightDistance: 10, closure, closedBy: "diagonals", isFarByAngles: false, unused: [], ...more }) as Checked;
const notes = (...closures: readonly number[]): readonly string[] => closureNotes(closures.map((one) => closed(one)), LIMITS);
const AGAIN = "the diagonals disagree: read this step again";

describe("readings that disagree", () => {
  test("by as much as they may are let be, by a hair more they are read again, either way", () =>
    expect(notes(0.125, 0.1251, -0.125, -0.1251)).toEqual(["", AGAIN, "", AGAIN]));

  test("alike in three steps are of one cause, in two or in both ways they are not", () => {
    expect(notes(0.2, 0.21, 0.2).every(saysEveryStep)).toBe(true);
    expect(notes(-0.2, -0.21, -0.2).every(saysEveryStep)).toBe(true);
    expect([notes(0.2, 0.2), notes(0.2, 0.2, -0.2)].flat()).toEqual(Array(5).fill(AGAIN));
    // A sixteenth apart they are still alike; what is within its limit takes no part.
    expect(notes(0.25, 0.3125, 0.28).every(saysEveryStep)).toBe(true);
    expect(notes(0.25, 0.313, 0.28)).toEqual([AGAIN, AGAIN, AGAIN]);
    expect(notes(0.2, 0.2, 0.2, 0.01, -0.125).map(saysEveryStep)).toEqual([true, true, true, false, false]);
  });

  test("of angles may disagree by a quarter of a degree at each, and a division of the tape", () => {
    // hypot(10, 10) x tan 0.25 = 14.1421 x 0.0043634 = 0.061708, and 1/16 more is 0.124208.
    const of = (closure: number): readonly string[] => closureNotes([closed(closure, { closedBy: "angles" })], LIMITS);
    expect([of(0.1242), of(0.1243), of(-0.1243)]).toEqual([
      [""], ["the lengths and the angles disagree: read this step again"], ["the lengths and the angles disagree: read this step again"],
    ]);
    // They are no witness of a run that is wrong everywhere.
    expect(closureNotes([closed(0.2), closed(0.2), closed(0.2, { closedBy: "angles" })], LIMITS).some(saysEveryStep)).toBe(false);
  });

  test("that nothing checks say what would, and what is not used says why", () => {
    expect(closureNotes([closed(undefined), closed(undefined, { isFarByAngles: true }), undefined], LIMITS)).toEqual([
      "unchecked: one more diagonal would check this step", "unchecked: a length along the other line would check this step", "",
    ]);
    const unused = (names: readonly string[], isFarByAngles = false) =>
      closureNotes([closed(0, { unused: names, isFarByAngles })], LIMITS)[0];
    expect(unused(["diagonal", "secondDiagonal"])).toBe(
      "diagonal not used, the length it runs to is missing; second diagonal not used, the length it runs to is missing",
    );
    expect([unused(["leftOffset"]), unused(["leftOffset"], true)]).toEqual([
      "left offset not used, the diagonals fix the end", "left offset not used, both angles fix the end",
    ]);
    expect(unused(["leftAngle", "rightAngle"])).toBe(
      "left angle not used, the end is fixed without it; right angle not used, the end is fixed without it",
    );
  });

  test("share out a quarter of what two diagonals disagree by, while it is the tape's", () => {
    const read = { ...closed(0.1)!, near: 36, farLeft: 0, farRight: 36 };
    expect(adjusted(read, LIMITS)).toMatchObject({ near: 36.025, farRight: 36.025, farLeft: 0 });
    expect(adjusted({ ...read, closure: -0.125 }, LIMITS)).toMatchObject({ near: 35.96875, farRight: 35.96875 });
    for (const other of [{ closure: 0.13 }, { closure: undefined }, { closedBy: "angles" as const }])
      expect(adjusted({ ...read, ...other }, LIMITS)).toEqual({ ...read, ...other });
  });

  test("leave one act, to read again, with what they would have made", () => {
    const acts = [{ kind: "gauge", distance: 1 }] as const;
    expect(unlessDisagreeing({ note: AGAIN, closure: 0.2 }, acts)).toEqual({
      acts: [{ kind: "read again", note: AGAIN }], asRead: { acts, closure: 0.2 },
    });
    expect(unlessDisagreeing({ note: AGAIN }, acts).asRead).toEqual({ acts });
    expect(unlessDisagreeing({ note: "unchecked" }, acts)).toEqual({ acts });
    expect([saysDisagreeing(AGAIN), saysDisagreeing(""), saysEveryStep(AGAIN)]).toEqual([true, false, false]);
  });
});

describe("the four corners", () => {
  const found = (reading: Partial<CornerReading>): unknown => {
    const at = corners({ near: 12, leftDistance: 5, rightDistance: 5, ...reading });
    if (isProblem(at)) return at.problem;
    const round = (value: number | undefined) => (value === undefined ? undefined : Number(value.toFixed(9)));
    const { closedBy, unused } = at;
    return { farLeft: round(at.farLeft), farRight: round(at.farRight), closure: round(at.closure), closedBy, unused };
  };

  test("square by both diagonals: 5 deep and 12 along are 13", () => {
    const square = { farLeft: 0, farRight: 12, closure: 0, closedBy: "diagonals", unused: [] };
    expect(found({ far: 12, diagonal: 13, secondDiagonal: 13 })).toEqual(square);
    expect(found({ far: 12, diagonal: 13 })).toEqual({ ...square, closure: undefined, closedBy: undefined });
    expect(found({ far: 12, secondDiagonal: 13 })).toEqual({ ...square, closure: undefined, closedBy: undefined });
  });

  test("diagonals that disagree are met half way, and close by how much", () => {
    // The diagonal reaches 12 along a far line of 11: its left end lies at 1; the other says 12 - 12 = 0.
    expect(found({ far: 11, diagonal: 13, secondDiagonal: 13 })).toMatchObject({ farLeft: 0.5, farRight: 11.5, closure: 1 });
  });

  test("where the far line is not parallel each diagonal has its own leg, and the line is seen from square to the near one", () => {
    // Left 8 and right 5 deep: a far line of 5 lies 4 along (3-4-5); from near left 13 reaches 12 at 5 deep, from near right 17 reaches
    // 15 at 8 deep: 12 - 4 = 8, and 23 - 15 = 8.
    expect(found({ near: 23, leftDistance: 8, far: 5, diagonal: 13, secondDiagonal: 17 })).toEqual({
      farLeft: 8, farRight: 12, closure: 0, closedBy: "diagonals", unused: [],
    });
  });

  test("an offset fixes the end where no diagonal does, an angle where neither does", () => {
    expect(found({ far: 12, leftOffset: 1 })).toMatchObject({ farLeft: 1, farRight: 13, closure: undefined, unused: [] });
    expect(found({ far: 12, leftOffset: 1, diagonal: 13 })).toMatchObject({ farLeft: 0, unused: ["leftOffset"] });
    // At 45 degrees 5 deep go 5 outward.
    expect(found({ far: 12, leftAngle: 45 })).toMatchObject({ farLeft: -5, farRight: 7 });
    expect(found({ far: 12, rightAngle: 45 })).toMatchObject({ farLeft: 5, farRight: 17 });
    expect(found({ far: 12, leftAngle: 45, leftOffset: 1 })).toMatchObject({ farLeft: 1, unused: ["leftAngle"] });
    expect(found({ far: 12, leftAngle: 45, rightAngle: 45, diagonal: 13 })).toMatchObject({
      farLeft: 0, unused: ["leftAngle", "rightAngle"], closedBy: undefined,
    });
    // A far line by both angles closes them: 12 + 5 + 5 = 22, a line of 21 is 1 short.
    expect(found({ far: 21, leftAngle: 45, rightAngle: 45 })).toMatchObject({ closedBy: "angles", closure: -1, farLeft: -4.5 });
    expect(found({ leftAngle: 45, rightAngle: 45, leftOffset: 1, diagonal: 13, secondDiagonal: 13 })).toEqual({
      farLeft: -5, farRight: 17, closure: undefined, closedBy: undefined, unused: ["diagonal", "secondDiagonal", "leftOffset"],
    });
  });

  test("a length read further on is brought to the near line by both angles", () => {
    // At 1 behind it 14 wide, with both sides opening 1 in 1: 12 at the near line, 22 at the far one.
    expect(found({ near: 14, at: 1, leftAngle: 45, rightAngle: 45 })).toMatchObject({ farLeft: -5, farRight: 17 });
    expect([found({ at: 1, far: 12 }), found({ at: 1, far: 12, leftAngle: 45 })]).toEqual(Array(2).fill("bar-without-angles"));
    // 1.9 less twice 1, and 9.9 less twice 5.
    expect(found({ near: 1.9, at: 1, leftAngle: 45, rightAngle: 45 })).toBe("angles-leave-no-length");
    expect(found({ near: 9.9, leftAngle: -45, rightAngle: -45 })).toBe("angles-leave-no-length");
    expect(found({ near: 10.001, leftAngle: -45, rightAngle: -45 })).toMatchObject({ farLeft: 5 });
  });

  test("a diagonal is longer than what it crosses, and ends on its own side", () => {
    expect(found({ far: 12, diagonal: 5 })).toBe("diagonal-too-short");
    expect(found({ far: 12, secondDiagonal: 5 })).toBe("second-diagonal-too-short");
    expect(found({ near: 12, far: 12, diagonal: 5.001 })).toMatchObject({ farLeft: expect.closeTo(-11.9, 1) });
    // Each against the depth where it ends.
    expect([found({ far: 12, leftDistance: 6, diagonal: 5.5 }), found({ far: 12, rightDistance: 6, diagonal: 5.5 })]).toEqual([
      expect.objectContaining({ unused: [] }), "diagonal-too-short",
    ]);
    expect(found({ far: 12 })).toBe("nothing-fixes-the-end");
    expect(found({ leftAngle: 45 })).toBe("nothing-gives-the-far-line");
    // The far right corner at the near left one, or the far left one at the near right.
    expect([found({ far: 12, leftOffset: -12 }), found({ far: 12, leftOffset: 12 })]).toEqual(Array(2).fill("diagonal-on-the-wrong-side"));
    expect(found({ far: 12, leftOffset: -11.9 })).toMatchObject({ farLeft: -11.9 });
    expect(found({ far: 12, leftOffset: 11.9 })).toMatchObject({ farLeft: 11.9 });
  });
});

describe("a riser's height", () => {
  const said = <Found>(found: Found): unknown => (isProblem(found) ? [found.problem, found.details["most"]?.toString()] : String(found));
  const height = (rise: number, tread: number, lap: number): unknown => {
    const found = riserHeight(inch(rise), inch(tread), inch(lap));
    return isProblem(found) ? found.problem : found.div(25.4).toNumber();
  };

  test("is the rise less the tread and what laps; a lap is no more than the tread, a tread less than the rise", () => {
    expect([height(7.5, 1, 0), height(7.5, 1, 0.5), height(7.5, 1, 1), height(7.5, 1, 1.01)]).toEqual([6.5, 7, 7.5, "lap-over-tread"]);
    expect([height(7.5, 7.49, 0), height(7.5, 7.5, 0), height(7.5, 8, 0)]).toEqual([
      expect.closeTo(0.01, 9), "tread-thicker-than-rise", "tread-thicker-than-rise",
    ]);
  });

  test("of a flight: riser 1 laps nothing, an unknown one stays so, a rise alone may be any riser's", () => {
    const heights = (rises: readonly (number | undefined)[], lap: number, first?: number, stock?: number): unknown => {
      const given = (value: number | undefined): Length | undefined => (value === undefined ? undefined : inch(value));
      const found = riserHeights(rises.map(given), inch(1), inch(lap), given(stock), first);
      if (!Array.isArray(found)) return said(found);
      return found.map((one) => (one === undefined || isProblem(one) ? (one && said(one)) : (one as Length).div(25.4).toNumber()));
    };
    expect(heights([7.5, undefined, 7.5], 0.5)).toEqual([6.5, undefined, 7]);
    expect(heights([7.5, 7.5], 0.5, 2)).toEqual([7, 7]);
    expect([heights([7.5], 0.5), heights([7.5], 0.5, 1), heights([7.5], 0.5, 3), heights([7.5], 0), heights([undefined], 0.5)]).toEqual([
      ["which-riser", undefined], [6.5], [7], [6.5], [undefined],
    ]);
    expect(heights([7.5, 7.5], 1.01)).toEqual(["lap-over-tread", undefined]);
    // Out of stock 6 3/4 wide riser 2 may lap a quarter; out of 6 1/2 nothing, and out of 6.4 no riser comes.
    expect([heights([7.5, 7.5], 0.5, undefined, 7), heights([7.5, 7.5], 0.25, undefined, 6.75)]).toEqual([[6.5, 7], [6.5, 6.75]]);
    expect(heights([7.5, 7.5], 0.5, undefined, 6.75)).toEqual([6.5, ["riser-over-stock", inch(0.25).toString()]]);
    expect(heights([7.5, 7.5], 0.5, undefined, 6.5)).toEqual([6.5, ["riser-over-stock", "0"]]);
    expect(heights([7.5, 7.5], 0.5, undefined, 6.4)).toEqual([["riser-over-stock", "none"], ["riser-over-stock", "none"]]);
  });
});

test("a saw is set in words, to a hundredth of a degree, and nothing is square and upright", () => {
  expect([
    sawSet("left", 1.274, 1.716, "underside"), sawSet("left", -1.274, -1.716, "underside"), sawSet("right", 1.274, -1.716, "back"),
    sawSet("right", -1.274, 0, "back"), sawSet("right", 0, 2, "back"), sawSet("right", 0, 0, "back"),
  ]).toEqual([
    "left 1.27°, face longer 1.72°", "right 1.27°, underside longer 1.72°", "right 1.27°, back longer 1.72°", "left 1.27°, upright",
    "square, face longer 2.00°", "square",
  ]);
  expect([sawSet("left", 0.004, -0.004, "back"), sawSet("left", 0.006, 0, "back"), sawSet("left", 0, -0.006, "back")]).toEqual([
    "square", "left 0.01°, upright", "square, back longer 0.01°",
  ]);
});
