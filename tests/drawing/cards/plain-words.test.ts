import { cutCard } from "../../../src/drawing/cards/cut-card";
import { type CutPiece, cutPieces } from "../../../src/functions/cut-pieces";
import { FACTS, metricOf, only, type Opening, randomPieces, riserOf, taperedOf, treadOf } from "./jobs";
import { type Card, path, readCard } from "./read-card";

const cardOf = (piece: CutPiece): Card => readCard(cutCard(piece, FACTS));
const saidOn = (piece: CutPiece): string => cardOf(piece).texts.map(({ text }) => text).join(" ");
const OPENING: Opening = { depth: 10, back: 36.5, left: 0.25, right: 0.375, leftLean: -1.5, rightLean: 2 };

test("packing a tapered step is said to be done in the place of the card, and between what and what", () => {
  const said = saidOn(taperedOf(10, 10.75, 36, 37, "none"));
  // By hand: 10 3/4 less 10; the run is longer at the right, so that the riser behind comes forward there.
  expect(said).toContain(
    "Instead of this card: pack between the stringers and the riser behind, 3/4\" thick at its right end to nothing at the other; " +
    "read anew",
  );
  expect(said).toContain("the readings at the stair are unchecked: one more diagonal there would check them");
  expect(said).not.toMatch(/out by|tapered: rip/);
  // A choice stands over what it is chosen in the place of.
  const { texts } = cardOf(taperedOf(10, 10.75, 36, 37, "none"));
  const act = texts.find(({ part }) => part === "act 1 verb");
  const above = texts.filter(({ text }) => /^Instead of this card|^the readings at the stair are unchecked/.test(text));
  expect(above).toHaveLength(2);
  for (const { bottom } of above) expect(bottom).toBeLessThan(act?.top ?? -Infinity);
  expect(said).toContain("by band saw or plane: saw outside the line, plane to the riser");
});

describe("a blank is never shorter than what is cut out of it", () => {
  test.each([
    // By hand: between plumb skirts square to their back, 24 long; and a 32nd more, to the next eighth.
    ["24", 24, "24"], ["24 1/32", 24.03125, "24 1/8"], ["24 1/8", 24.125, "24 1/8"], ["24 5/32", 24.15625, "24 1/4"],
  ])("%s long", (_, back, blank) => {
    const piece = treadOf({ depth: 10, back, left: 0, right: 0, leftLean: 0, rightLean: 0 }, "none");
    expect(saidOn(piece)).toContain(`blank at least ${blank} + waste both ends`);
  });

  test("in millimetres to the next whole one", () => {
    // By hand: 24.03 in are 610.362 mm.
    const piece = metricOf({ depth: 10, back: 24.03, left: 0, right: 0, leftLean: 0, rightLean: 0 }, "none");
    expect(saidOn(piece)).toContain("blank at least 611 + waste both ends");
  });
});

test("the stick of a return has its width, its thickness and a length", () => {
  // By hand: a return is as deep as run and nosing and 1 1/4 past the riser, 10 + 1 1/4 + 1 1/4, square to a plumb skirt.
  const piece = treadOf({ depth: 10, back: 36, left: 0, right: 0, leftLean: 0, rightLean: 0 }, "right");
  expect(saidOn(piece)).toContain("returns: clamp long stick, 1 1/4 wide, 1 thick, well over 12 1/2, face up");
  // By hand: through 1 in of a 10 in blade half the chord is the root of 5 x 5 - 4 x 4.
  expect(saidOn(piece)).toContain("kerf of a 10 blade: some 3 longer on the face");
});

test("the bevel of a top edge has a place and a title of its own, and is planed where it stops", () => {
  const { texts } = cardOf(riserOf({ ...OPENING, depth: 7.5 }, "right", 4));
  const [title, figure] = ["bevel title", "bevel figure"].map((part) => texts.find((one) => one.part === part));
  expect(title?.text).toBe("TOP EDGE");
  expect(figure?.text).toBe("4.0°");
  expect(figure?.top).toBeGreaterThan(title?.bottom ?? Infinity);
  expect(texts.map(({ text }) => text).join(" ")).toContain("by plane, up to the bevel mark: a saw would run past it");
  // Nothing at the saw hangs on it.
  expect(texts.some(({ text }) => text.includes("not used"))).toBe(false);
});

test("of two marks on one tape the first figure stands where the tape begins, and not between the two", () => {
  const card = cardOf(treadOf({ ...OPENING, leftLean: 0 }, "both"));
  for (const [first, second] of [[4, 5], [6, 7], [8, 9]] as const) {
    const [one, other] = [first, second].map((number) => card.texts.find(({ part }) => part === `tape ${number}`));
    const hook = path(card, `tape ${first} ${second} hook`).points[0]?.[0] ?? 0;
    expect(one?.right).toBeLessThan(hook);
    expect(other?.left).toBeGreaterThan(hook);
  }
});

test("what lies at the fence is said at that edge wherever there is room, on a tapered piece too", () => {
  for (const piece of [treadOf(OPENING, "none"), taperedOf(10, 10.75, 36, 37, "none"), riserOf({ ...OPENING, depth: 7.5 }, "none", 0)]) {
    const card = cardOf(piece);
    const ys = path(card, "piece").points.map(([, y]) => y);
    const fence = card.texts.find(({ text }) => text.endsWith("AT THE SAW'S FENCE"));
    expect(fence?.bottom).toBeLessThan((Math.min(...ys) + Math.max(...ys)) / 2);
    expect(fence?.text).not.toContain("TOWARD YOU");
  }
});

test("each end of a return says how it lies, and every card what wins and which saw a handle is of", () => {
  const both = cardOf(treadOf({ ...OPENING, leftLean: 0 }, "both"));
  const verbs = both.texts.filter(({ text }) => /^(MITRE|SAW) (LEFT|RIGHT) RETURN$/.test(text));
  expect(verbs).toHaveLength(4);
  for (const { part } of verbs) {
    const act = part.replace(" verb", "");
    const said = both.texts.filter((one) => one.part.startsWith(`${act} `)).map(({ text }) => text).join(" ");
    expect(said).toContain("outer edge toward you");
  }
  for (const piece of [treadOf(OPENING, "none"), riserOf(OPENING, "none", 0)]) {
    expect(saidOn(piece)).toContain("degrees set the saw; the marks win");
    expect(saidOn(piece)).toContain("handle: saw hinged at the fence");
    expect(saidOn(piece)).toContain("strike the line just inside the blank's left end");
  }
});

test("no line of 200 cards ends between a number and what it counts or after a word that leads on", () => {
  const rows = randomPieces(200, 21).flatMap((piece) => cardOf(piece).texts.filter(({ part }) => /^act \d+ word$|^remark$/.test(part)));
  expect(rows.length).toBeGreaterThan(1000);
  expect(rows.filter(({ text }) => / (?:a|an|and|at|from|of|on|or|the|to)$| in$/.test(text))).toEqual([]);
  expect(rows.filter(({ text }) => /^\d/.test(text))).toEqual([]);
});

test("a step that is read by angles alone asks for a length at the stair", () => {
  const piece = only(cutPieces("tread", [[["step", "run", "back", "left angle", "right angle"], [2, 10, 36, 1, 1]]]));
  expect(saidOn(piece)).toContain("the readings at the stair are unchecked: a length along the other line there would check them");
});
