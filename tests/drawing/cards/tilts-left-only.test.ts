import { cutCard } from "../../../src/drawing/cards/cut-card";
import type { CutPiece } from "../../../src/functions/cut-pieces";
import { type Printed, sawn, xAt } from "../../functions/simulated-saw";
import type { Plane } from "../../solver/fit/space";
import { FACTS, type Opening, riserOf, treadOf } from "./jobs";
import { readCard } from "./read-card";

const SIDES = ["left", "right"] as const;
const SKEWED: readonly Opening[] = [1, -1].flatMap((left) => [1, -1].flatMap((right) => [1, -1].map((lean) => ({
  depth: 10, back: 36, left: 0.25 * left, right: 0.375 * right, leftLean: 1.5 * lean, rightLean: -2 * lean,
}))));
const PIECES: readonly (readonly [string, CutPiece, number])[] = SKEWED.flatMap((opening) => [
  ["tread", treadOf(opening, "none"), 1] as const, ["riser", riserOf(opening, "none", 0), 0.75] as const,
]);

const rowsOf = ({ acts }: CutPiece): readonly Printed[] =>
  acts.map(({ cells: { number, act, hookOn, tape, swing, offset, tilt, note } }) => ({
    number: Number(number), act, hookOn, tape, swing, offset, tilt, note,
  }));

const remarksOf = (piece: CutPiece): string =>
  readCard(cutCard(piece, FACTS)).texts.filter(({ part }) => part === "remark").map(({ text }) => text).join(" ");

/** The sentence for a saw that tilts to the left only, as it stands on the card. */
const sentenceOf = (piece: CutPiece): string => /If your saw tilts left only.*?handle the same way/.exec(remarksOf(piece))?.[0] ?? "";

/** How far apart two sawn pieces are at the eight corners of their ends. */
const apart = (one: ReturnType<typeof sawn>, other: ReturnType<typeof sawn>, thickness: number): number => {
  const at = ({ ends }: ReturnType<typeof sawn>, side: "left" | "right"): Plane => {
    const plane = ends.get(side);
    if (plane === undefined) throw new Error(`no ${side} end`);
    return plane;
  };
  return Math.max(...SIDES.flatMap((side) => [0, one.depth].flatMap((y) =>
    [0, thickness].map((z) => Math.abs(xAt(at(one, side), y, z) - xAt(at(other, side), y, z))))));
};

test.each(PIECES)("a %s sawn turned end for end with the blade to the left is the one sawn with it to the right", (_, piece, thickness) => {
  const otherWay = sentenceOf(piece);
  const rows = rowsOf(piece);
  expect(rows.some(({ tilt }) => tilt.includes("to the right")) ? otherWay : "none").not.toBe("");
  const usual = sawn(rows, { thickness, unit: "in" });
  const turned = sawn(rows, { thickness, unit: "in", otherWay });
  expect(turned.contradictions).toEqual([]);
  expect(apart(usual, turned, thickness)).toBeLessThan(1e-9);
});

/** Where what is sawn off an end lies once its board is turned half about: a point outside the end, turned. */
const wasteTurned = (end: (typeof SIDES)[number]): string => {
  const outside = end === "left" ? -1 : 1;
  return -1 * outside > 0 ? "right" : "left";
};

test.each(PIECES)("a %s says where the waste of each such end then lies, and that the board is turned back", (_, piece) => {
  const leant = piece.acts.filter(({ act, cells }) => act?.kind === "saw end" && cells.tilt.includes("to the right"));
  const ends = leant.flatMap(({ act }) => (act?.kind === "saw end" ? [act.end] : []));
  const [one, other] = ends;
  const said = remarksOf(piece);
  if (one === undefined) {
    expect(said).not.toContain("waste");
    return;
  }
  const waste = other === undefined
    ? `the waste is then on your ${wasteTurned(one)}`
    : `the waste of the ${one} end is then on your ${wasteTurned(one)}, of the ${other} end on your ${wasteTurned(other)}`;
  expect(said).toContain(`${waste}; turn the board back after`);
});

test("a board turned and tilted to the right is not, and neither is one whose handle goes the other way", () => {
  const piece = PIECES.find(([, { acts }]) => acts.some(({ cells }) => cells.tilt.includes("to the right")))?.[1];
  if (piece === undefined) throw new Error("none tilts to the right");
  const otherWay = sentenceOf(piece);
  expect(otherWay).toContain("tilt LEFT, handle the same way");
  const rows = rowsOf(piece);
  const usual = sawn(rows, { thickness: 1, unit: "in" });
  const wrong = sawn(rows, { thickness: 1, unit: "in", otherWay: otherWay.replace("tilt LEFT,", "tilt RIGHT,") });
  // By hand: twice an inch of wood times the tangent of 1.5 degrees, 0.0262, is 0.052.
  expect(apart(usual, wrong, 1)).toBeGreaterThan(0.05);
  const { contradictions } = sawn(rows, { thickness: 1, unit: "in", otherWay: otherWay.replace("the same way", "the other way") });
  expect(new Set(contradictions)).toEqual(new Set(["handle the other way"]));
});

test("a piece none of whose blades leans to the right has no such sentence", () => {
  expect(sentenceOf(treadOf({ depth: 10, back: 36, left: 0.25, right: 0.25, leftLean: 0, rightLean: 0 }, "none"))).toBe("");
});
