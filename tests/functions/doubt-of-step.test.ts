import { acrossBy, doubts } from "../../src/functions/doubt-of-step";
import { closureNotes } from "../../src/solver/fit/closure-notes";
import type { RiserReading } from "../../src/solver/fit/riser-reading";
import type { TreadReading } from "../../src/solver/fit/tread-reading";

/** Which readings of a step are struck, and what two ways to one corner come to; the sentences are those the step's own note says. */

const DISAGREE = "the diagonals disagree: read this step again";
const ANGLES = "the lengths and the angles disagree: read this step again";
const [EVERY = ""] = closureNotes(
  [0, 1, 2].map(() => ({
    leftDistance: 10, rightDistance: 10, closure: 1, closedBy: "diagonals" as const, isFarByAngles: false, unused: [],
  })),
  { most: 0.125, alike: 0.1, division: 0.0625 },
);

const TREAD = { step: 3, run: 10, back: 36, front: 36.5, diagonal: 37.5, secondDiagonal: 37.625 } as unknown as TreadReading;
const ANGLED = {
  step: 3, run: 10, leftRun: 10, rightRun: 10.5, back: 36, front: 37, leftAngle: 10, rightAngle: 0.25,
} as unknown as TreadReading;
const RISER = { step: 3, height: 7.5, top: 36, bottom: 36.25, diagonal: 36.75, secondDiagonal: 37.125 } as unknown as RiserReading;

const said = (kind: "tread" | "riser", row: TreadReading | RiserReading, note: string) =>
  doubts({ kind, rows: [row], unit: "in", division: 1 / 16 })(0, note);
const struck = (kind: "tread" | "riser", row: TreadReading | RiserReading, note: string): readonly string[] =>
  said(kind, row, note).filter(({ isDoubtful }) => isDoubtful).map(({ name }) => name);

test("every reading of a tread stands where it was taken, as a tape has it", () => {
  expect(said("tread", TREAD, DISAGREE).map(({ name, place, read }) => [name, place, read])).toEqual([
    ["run", "between", "10"], ["back", "near", "36"], ["front", "far", "36 1/2"], ["diagonal", "diagonal", "37 1/2"],
    ["second diagonal", "second diagonal", "37 5/8"],
  ]);
  expect(said("tread", ANGLED, ANGLES).map(({ name, place, read }) => [name, place, read])).toEqual([
    ["run", "between", "10"], ["left run", "left end", "10"], ["right run", "right end", "10 1/2"], ["back", "near", "36"],
    ["front", "far", "37"], ["left angle", "left end", "10.0°"], ["right angle", "right end", "0.3°"],
  ]);
  expect(said("riser", RISER, DISAGREE).map(({ name, place }) => [name, place])).toEqual([
    ["height", "between"], ["top", "near"], ["bottom", "far"], ["diagonal", "diagonal"], ["second diagonal", "second diagonal"],
  ]);
  // From where to where, as its own table begins to say it, in small letters.
  for (const { lies } of [...said("tread", TREAD, ""), ...said("riser", RISER, "")]) expect(lies).toMatch(/^[a-z][^.;:]*$/);
  expect(said("tread", TREAD, "").map(({ likely }) => likely)).toEqual(Array(5).fill(undefined));
});

test("all that the two ways to a corner go through is struck", () => {
  expect(struck("tread", TREAD, DISAGREE)).toEqual(["back", "front", "diagonal", "second diagonal"]);
  expect(struck("riser", RISER, DISAGREE)).toEqual(["top", "bottom", "diagonal", "second diagonal"]);
  expect(struck("tread", ANGLED, ANGLES)).toEqual(["back", "front", "left angle", "right angle"]);
  // With one diagonal the other way to the corner is that of the angles.
  const { secondDiagonal: _, ...one } = TREAD as { secondDiagonal?: number };
  const withAngle = { ...one, leftAngle: 1 } as unknown as TreadReading;
  expect(struck("tread", withAngle, DISAGREE)).toEqual(["back", "front", "left angle"]);
});

test("where every step is off alike the run or the height is struck, and where nothing disagrees nothing is", () => {
  expect([struck("tread", TREAD, EVERY), struck("riser", RISER, EVERY)]).toEqual([["run"], ["height"]]);
  expect([struck("tread", TREAD, ""), struck("tread", TREAD, "unchecked: one more diagonal would check this step")]).toEqual([[], []]);
  expect(doubts({ kind: "tread", rows: [TREAD], unit: "in", division: 1 / 16 })(1, DISAGREE)).toEqual([]);
});

describe("what readings leave for the far length", () => {
  const across = (
    kind: "tread" | "riser", row: TreadReading | RiserReading | undefined, closure: number | undefined, note: string,
    unit: "in" | "mm" = "in",
  ) => acrossBy(kind, row, closure, note, unit);

  test("diagonals that reach too little want it shorter, angles that open too much do too", () => {
    // By hand: 36 1/2 - 1/2; 36 1/4 + 1/4; in mm 36.5 + 0.5.
    expect(across("tread", TREAD, -0.5, DISAGREE)).toEqual({ from: "back", name: "front", given: "36", read: "36 1/2" });
    expect(across("riser", RISER, 0.25, DISAGREE)).toEqual({ from: "top", name: "bottom", given: "36 1/2", read: "36 1/4" });
    expect(across("tread", TREAD, 0.5, DISAGREE, "mm")).toEqual({ from: "back", name: "front", given: "37", read: "36.5" });
    expect(across("tread", { ...ANGLED, leftRun: 10, rightRun: 10 }, 1, ANGLES)?.given).toBe("36");
  });

  test("a tapered step's far length is seen square to the near line", () => {
    // 9 deep at the left and 14 at the right, 5 more: a far edge of 13 lies 12 along (5, 12, 13); 4 along more is 16, and hypot(16, 5) is
    // 16.763.
    const given = (runs: object): string | undefined =>
      across("tread", { ...runs, back: 10, front: 13 } as unknown as TreadReading, 4, DISAGREE)?.given;
    expect(given({ run: 9, leftRun: 9, rightRun: 14 })).toBe("16 3/4 strong");
    // A run alone is that of both ends, one end's own goes before it.
    expect(given({ run: 9, rightRun: 14 })).toBe("16 3/4 strong");
    expect(given({ run: 14, leftRun: 9 })).toBe("16 3/4 strong");
    expect(given({ run: 9 })).toBe("17");
    // Of a step without any depth nothing is tapered.
    expect(given({ rightRun: 14 })).toBe("17");
    expect(given({ leftRun: 14 })).toBe("17");
  });

  test("nothing is said where nothing disagrees, or where it is the run that does", () => {
    expect([
      across("tread", TREAD, 0.5, ""), across("tread", TREAD, 0.5, EVERY), across("tread", TREAD, undefined, DISAGREE),
      across("tread", undefined, 0.5, DISAGREE), across("riser", TREAD, 0.5, DISAGREE),
    ]).toEqual(Array(5).fill(undefined));
  });
});
