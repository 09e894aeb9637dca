import { cutPieces } from "../../../src/functions/cut-pieces";
import { cornersOf, type Outline } from "../../../src/solver/fit/outline";

const outlineOf = (kind: "tread" | "riser", ...given: readonly unknown[]): Outline => {
  const found = cutPieces(kind, given);
  if (typeof found === "string" || found[0]?.outline === undefined) throw new Error(String(found));
  return found[0].outline;
};

const places = (outline: Outline): readonly (readonly number[])[] =>
  cornersOf(outline).map(({ along, behind }) => [along, behind].map((value) => Math.round(value * 1e4) / 1e4));

const HEADINGS = ["step", "run", "back", "front", "left offset"];

test("a tread between two skirts: its corners along the nose and behind it", () => {
  // By hand: no nosing, 12 deep; the left skirt square, the right one 3 out over the depth.
  expect(places(outlineOf("tread", [HEADINGS, [1, 12, 36, 39, "square"]], 0))).toEqual([[0, 0], [39, 0], [36, 12], [0, 12]]);
});

test("a mitred return: the toe past the skirt, the heel as far behind the nose as the return is wide", () => {
  // By hand: 10 + 1 1/4 deep, square; 1 1/4 past the skirt, a return as wide, mitred at 45 degrees.
  expect(places(outlineOf("tread", [HEADINGS, [1, 10, 36, 36, "square"]], null, "right"))).toEqual(
    [[0, 0], [37.25, 0], [36, 1.25], [36, 11.25], [0, 11.25]],
  );
  expect(places(outlineOf("tread", [HEADINGS, [1, 10, 36, 36, "square"]], null, "left"))).toEqual(
    [[-37.25, 0], [0, 0], [0, 11.25], [-36, 11.25], [-36, 1.25]],
  );
  expect(places(outlineOf("tread", [HEADINGS, [1, 10, 36, 36, "square"]], null, "both"))).toEqual(
    [[0, 0], [38.5, 0], [37.25, 1.25], [37.25, 11.25], [1.25, 11.25], [1.25, 1.25]],
  );
});

test("a tapered tread is less deep at one end than it is ripped", () => {
  // By hand: 9 and 18 apart over 12, nose 15 long: 3-4-5. Seen along the nose both skirts run 3/4 to the left per unit back; the left one
  // is 9 long, so its back lies 7.2 behind and 5.4 left; the right one 18: 14.4 and 10.8.
  const headings = ["step", "left run", "right run", "back", "front", "left offset"];
  const outline = outlineOf("tread", [headings, [7, 9, 18, 12, 15, "square"]], 0);
  expect(places(outline)).toEqual([[0, 0], [15, 0], [4.2, 14.4], [-5.4, 7.2]]);
  expect(outline.depth).toBeCloseTo(14.4, 9);
  expect(outline.ends.left.ripped.along).toBeCloseTo(-10.8, 9);
});

test("a riser lies with its bottom toward the reader, and what runs past is in it", () => {
  const headings = ["step", "height", "top", "bottom", "left offset"];
  // By hand: 1/4 past the open skirt; the left end square, the right 4 1/2 out over 6.
  expect(places(outlineOf("riser", [headings, [1, 6, 36, 40.5, "square"]]))).toEqual([[0, 0], [40.5, 0], [36, 6], [0, 6]]);
  expect(places(outlineOf("riser", [headings, [2, 7, 23.75, 23.75, "square"]], "right", 0.25))).toEqual([[0, 0], [24, 0], [24, 7], [0, 7]]);
});

test("the other side stands out where the tilt leaves it longer, and back where the face is", () => {
  // By hand: 1 thick, leaning 45 degrees: as far as it is thick.
  const headings = ["step", "run", "back", "front", "left offset", "left lean", "right lean"];
  const { left, right } = outlineOf("tread", [headings, [1, 10, 36, 36, "square", -45, 45]], 0).ends;
  expect([left.otherSide, right.otherSide].map((value) => Math.round(value * 1e6) / 1e6)).toEqual([1, -1]);
});
