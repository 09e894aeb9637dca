import { isFailed } from "../../functions/cells";
import { TREADFIT } from "../../functions/fit/treadfit";
import { sentence } from "../../functions/say";
import { type BadRow, besideBadRows } from "../../solver/bad-row";
import { RADIANS_PER_DEGREE } from "../../solver/degrees";
import type { Side } from "../../solver/fit/acts";
import { closureLimits } from "../../solver/fit/closure-limits";
import { saysDisagreeing } from "../../solver/fit/closure-notes";
import { saysDoubtful } from "../../solver/fit/doubtful-notes";
import type { Outline } from "../../solver/fit/outline";
import { type FailedFit, type TreadFit, treadFits, type TreadPiece } from "../../solver/fit/tread-fit";
import { openEndOf } from "../../solver/fit/tread-lines";
import { treadOutline } from "../../solver/fit/tread-outline";
import type { TreadReading } from "../../solver/fit/tread-reading";
import { isOpen } from "../../solver/layout/stair-facts";
import type { Unit } from "../../solver/length/length";
import type { Point } from "../figure";
import { closed, type DraftMark, inside, note } from "./draft";
import {
  angleNote, blankOf, type DoubtfulStep, type DrawnPiece, FAR_ROW, faceMarks, NEAR_ROW, piecesDrawings, plumb, pointOf,
  setWords,
} from "./pieces-drawing";

/** How far off its end a return is drawn, on the paper. */
const RETURN_OFF = 9;

const SIDES: readonly Side[] = ["left", "right"];

/** The return beside the end it goes on, in the direction it lies there. */
const returnMarks = (fit: TreadFit, outline: Outline, end: Side, piece: TreadPiece, paper: number): readonly DraftMark[] => {
  const { near, heel } = outline.ends[end];
  if (heel === undefined) return [];
  const [outward, angle] = end === "left" ? [-1, fit.leftAngle] : [1, fit.rightAngle];
  const { outerEdge: outer, mitre, freeEnd } = openEndOf(fit, end, piece);
  const off = outward * RETURN_OFF * paper;
  const [sin, cos] = [Math.sin(angle * RADIANS_PER_DEGREE), Math.cos(angle * RADIANS_PER_DEGREE)];
  const toe: Point = [near.along + off, near.behind];
  const back = (from: Point, by: number): Point => [from[0] - outward * sin * by, from[1] + cos * by];
  const far = back(toe, outer);
  const square: Point = [far[0] - outward * cos * piece.returnWidth, far[1] - sin * piece.returnWidth];
  const inner = back(square, piece.returnWidth * Math.tan(freeEnd * RADIANS_PER_DEGREE));
  const edge = inside(toe, far, outer, "return", -outward * NEAR_ROW);
  return [
    closed("thin", toe, far, inner, [heel.along + off, heel.behind]),
    edge,
    note(pointOf(heel), `mitre ${mitre.toFixed(2)}°`, end === "left" ? "right" : "left"),
  ];
};

/** Where an end's sawn line lies on the line gauged behind the nose: at a skirt its own cut, at a return the heel. */
const onGauge = (outline: Outline, end: Side, behind: number): Point => {
  const { near, ripped, heel } = outline.ends[end];
  if (heel !== undefined) return pointOf(heel);
  return [near.along + ((ripped.along - near.along) * behind) / ripped.behind, behind];
};

const lengthsOf = (fit: TreadFit, { ends: { left, right } }: Outline, openEnd: TreadPiece["openEnd"]): readonly DraftMark[] => {
  const [front, back] = openEnd === "none" ? [fit.front, fit.back] : [fit.toe ?? 0, fit.returnLine ?? 0];
  const [onNose, onBack] = openEnd === "none" ? ["front", "back"] : ["toe", "return line"];
  return [
    inside(pointOf(left.near), pointOf(right.near), front, onNose, -NEAR_ROW),
    inside(pointOf(left.far), pointOf(right.far), back, onBack, NEAR_ROW),
  ];
};

/** One depth where nothing tapers; else that of each skirt, and what the blank is ripped to. */
const depthsOf = (fit: TreadFit, outline: Outline, blank: { readonly from: number; readonly to: number }): readonly DraftMark[] => {
  const { ends: { left, right }, depth } = outline;
  // Between two returns there is no room beside the piece.
  if (left.isOpen && right.isOpen) {
    const at = (blank.from + 3 * blank.to) / 4;
    return [inside([at, 0], [at, depth], depth, fit.leftDepth === fit.rightDepth ? "depth" : "rip")];
  }
  const [at, aside] = left.isOpen ? [blank.to, -1] : [blank.from, 1];
  if (fit.leftDepth === fit.rightDepth) return plumb(at, { along: at, behind: depth }, fit.depth, "depth", aside * NEAR_ROW);
  return [
    ...(left.isOpen ? [] : plumb(blank.from, left.far, fit.leftDepth, "left depth", NEAR_ROW)),
    ...(right.isOpen ? [] : plumb(blank.to, right.far, fit.rightDepth, "right depth", -NEAR_ROW)),
    ...plumb(at, { along: at, behind: depth }, depth, "rip", aside * FAR_ROW),
  ];
};

/** A row of dimensions, and what a return takes. */
const A_ROW = 12;
const A_RETURN = 24;

const besideOf = ({ leftDepth, rightDepth }: TreadFit, { ends: { left, right } }: Outline): DrawnPiece["beside"] => {
  const more = leftDepth === rightDepth ? 0 : FAR_ROW - NEAR_ROW;
  if (left.isOpen) return [A_RETURN, right.isOpen ? A_RETURN : A_ROW + more];
  return [A_ROW + more, right.isOpen ? A_RETURN : more === 0 ? 2 : A_ROW];
};

const drawnTread = (fit: TreadFit, piece: TreadPiece): DrawnPiece => {
  const outline = treadOutline(fit, piece);
  const { ends, depth } = outline;
  const blank = blankOf(outline, fit.length);
  return {
    step: String(fit.step ?? ""),
    ...blank,
    depth,
    words: setWords(fit.leftSet, fit.rightSet),
    beside: besideOf(fit, outline),
    note: fit.note,
    marks: (paper) => [
      ...faceMarks(outline, blank),
      ...lengthsOf(fit, outline, piece.openEnd),
      inside([blank.from, 0], [blank.to, 0], fit.length, "blank", -FAR_ROW),
      ...depthsOf(fit, outline, blank),
      ...(piece.openEnd === "none" || fit.heelAtTheHook === undefined ? [] : [
        inside(onGauge(outline, "left", piece.returnWidth), onGauge(outline, "right", piece.returnWidth), fit.heelAtTheHook, "heel"),
      ]),
      ...SIDES.flatMap((end) => [
        angleNote(end, ends[end], end === "left" ? fit.leftAngle : fit.rightAngle),
        ...(isOpen(end, piece.openEnd) ? returnMarks(fit, outline, end, piece, paper) : []),
      ]),
    ],
  };
};

const doubtfulOr = (fit: TreadFit | FailedFit, piece: TreadPiece): DrawnPiece | DoubtfulStep => {
  const step = String(fit.step ?? "");
  if ("bad" in fit) return { step, says: sentence(TREADFIT.problems[fit.bad.problem].says, fit.bad.details, piece.unit) };
  return saysDisagreeing(fit.note) || saysDoubtful(fit.note) ? { step, says: fit.note } : drawnTread(fit, piece);
};

/** What TREADFIT and MARKS are given. */
interface GivenTreads extends Omit<TreadPiece, "closure" | "unit"> {
  readonly readings: readonly (TreadReading | BadRow<unknown>)[];
  readonly tape: number;
}

const saidOf = (bad: unknown): string => (isFailed(bad) ? bad.says : "its row could not be read");

/** The treads of readings in plan, to scale. */
export const treadDrawings = (given: object, unit: Unit): ReturnType<typeof piecesDrawings> => {
  const { readings, tape, ...shared } = given as GivenTreads;
  const piece: TreadPiece = { ...shared, unit, closure: closureLimits(tape, unit) };
  return piecesDrawings("tread", besideBadRows(
    readings,
    (good): readonly (DrawnPiece | DoubtfulStep)[] => treadFits(good, piece).map((fit) => doubtfulOr(fit, piece)),
    ({ label, bad }) => ({ step: String(label), says: saidOf(bad) }),
  ), unit);
};
