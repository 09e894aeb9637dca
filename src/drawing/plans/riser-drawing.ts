import { isFailed } from "../../functions/cells";
import { RISERFIT } from "../../functions/fit/riserfit";
import { sentence } from "../../functions/say";
import { type BadRow, besideBadRows } from "../../solver/bad-row";
import type { Act, Side } from "../../solver/fit/acts";
import { closureLimits } from "../../solver/fit/closure-limits";
import { saysDisagreeing } from "../../solver/fit/closure-notes";
import { saysDoubtful } from "../../solver/fit/doubtful-notes";
import type { Outline } from "../../solver/fit/outline";
import { riserActs, type RiserMarking } from "../../solver/fit/riser-acts";
import { type FailedRiserFit, type RiserFit, riserFits, type RiserPiece } from "../../solver/fit/riser-fit";
import { riserOutline } from "../../solver/fit/riser-outline";
import type { RiserReading } from "../../solver/fit/riser-reading";
import type { Unit } from "../../solver/length/length";
import type { Point } from "../figure";
import { dimensionText, type DraftMark, hatch, inside, line } from "./draft";
import {
  angleNote, blankOf, type DoubtfulStep, type DrawnPiece, FAR_ROW, faceMarks, NEAR_ROW, piecesDrawings, plumb, pointOf,
  setWords,
} from "./pieces-drawing";

const SIDES: readonly Side[] = ["left", "right"];

/** From a notch to its dimensions, on the paper. */
const NOTCH_OFF = 3.5;
/** What a row of dimensions takes. */
const A_ROW = 12;

type Acts = readonly Act[];

/** What comes off a lower corner, measured along the bottom and up the end. */
const notchAt = (acts: Acts, end: Side): { readonly along: number; readonly up: number } | undefined => {
  const size = (way: "along" | "up"): number | undefined =>
    acts.flatMap((act) => (act.kind === "mark the notch" && act.end === end && act.way === way ? [act.distance] : []))[0];
  const [along, up] = [size("along"), size("up")];
  return along === undefined || up === undefined ? undefined : { along, up };
};

const notchMarks = ({ ends }: Outline, acts: Acts, end: Side): readonly DraftMark[] => {
  const found = notchAt(acts, end);
  if (found === undefined) return [];
  const { near, far } = ends[end];
  const inward = end === "left" ? 1 : -1;
  const long = Math.hypot(far.along - near.along, far.behind - near.behind);
  const up: Point = [((far.along - near.along) * found.up) / long, ((far.behind - near.behind) * found.up) / long];
  const corner = pointOf(near);
  const along: Point = [near.along + inward * found.along, near.behind];
  const above: Point = [corner[0] + up[0], corner[1] + up[1]];
  const within: Point = [along[0] + up[0], along[1] + up[1]];
  return [
    line("thick", along, within, above),
    hatch([corner, along, within, above], { apart: 0.7 }),
    inside(along, corner, found.along, "notch", inward * NOTCH_OFF),
    inside(corner, above, found.up, "notch", inward * NOTCH_OFF),
  ];
};

/** How far down the back a bevel of the top edge comes, from end to end or up to where it stops. */
const bevelMarks = ({ ends: { left, right }, depth }: Outline, acts: Acts): readonly DraftMark[] => {
  const bevel = acts.find((act) => act.kind === "bevel");
  if (bevel?.kind !== "bevel") return [];
  const stop = (end: Side): number =>
    acts.flatMap((act) => (act.kind === "end the bevel" && act.end === end ? [act.distance] : []))[0] ?? 0;
  const [from, to] = [left.far.along + stop("left"), right.far.along - stop("right")];
  return [line("dashed", [from, depth], [from, depth - bevel.relief], [to, depth - bevel.relief], [to, depth])];
};

const bevelWords = (acts: Acts, unit: Unit): readonly string[] =>
  acts.flatMap((act) =>
    act.kind === "bevel" ? [`top bevelled ${act.degrees.toFixed(1)}°, back in by ${dimensionText(act.relief, unit)}, dashed`] : []);

const drawnRiser = (fit: RiserFit, piece: RiserPiece, acts: Acts): DrawnPiece => {
  const outline = riserOutline(fit, piece);
  const { ends: { left, right }, depth } = outline;
  const blank = blankOf(outline, fit.length);
  return {
    step: String(fit.step ?? ""),
    ...blank,
    depth,
    beside: [A_ROW + (notchAt(acts, "left") === undefined ? 0 : NEAR_ROW), notchAt(acts, "right") === undefined ? 2 : A_ROW],
    words: [...setWords(fit.leftSet, fit.rightSet), ...bevelWords(acts, piece.unit)],
    note: fit.note,
    marks: () => [
      ...faceMarks(outline, blank),
      inside(pointOf(left.near), pointOf(right.near), fit.bottom, "bottom", -NEAR_ROW),
      inside(pointOf(left.far), pointOf(right.far), fit.top, "top", NEAR_ROW),
      inside([blank.from, 0], [blank.to, 0], fit.length, "blank", -FAR_ROW),
      ...plumb(blank.from, { along: blank.from, behind: depth }, fit.height, "height", NEAR_ROW),
      ...SIDES.flatMap((end) => [
        angleNote(end, outline.ends[end], end === "left" ? fit.leftAngle : fit.rightAngle),
        ...notchMarks(outline, acts, end),
      ]),
      ...bevelMarks(outline, acts),
    ],
  };
};

const doubtfulOr = (fit: RiserFit | FailedRiserFit, piece: RiserPiece, acts: Acts): DrawnPiece | DoubtfulStep => {
  const step = String(fit.step ?? "");
  if ("bad" in fit) return { step, says: sentence(RISERFIT.problems[fit.bad.problem].says, fit.bad.details, piece.unit) };
  return saysDisagreeing(fit.note) || saysDoubtful(fit.note) ? { step, says: fit.note } : drawnRiser(fit, piece, acts);
};

/** What RISERFIT and RISERMARKS are given. */
interface GivenRisers {
  readonly readings: readonly (RiserReading | BadRow<unknown>)[];
  readonly tape: number;
}

const saidOf = (bad: unknown): string => (isFailed(bad) ? bad.says : "its row could not be read");

/** The risers of readings in plan, to scale; with the notch and the bevel where they are asked for. */
export const riserDrawings = (given: object, unit: Unit, isMarked: boolean): ReturnType<typeof piecesDrawings> => {
  const { readings, tape, ...shared } = given as GivenRisers & Omit<RiserMarking, "closure" | "unit">;
  const piece: RiserMarking = { ...shared, unit, closure: closureLimits(tape, unit) };
  return piecesDrawings("riser", besideBadRows(
    readings,
    (good): readonly (DrawnPiece | DoubtfulStep)[] => {
      const acts = isMarked ? riserActs(good, piece) : [];
      return riserFits(good, piece).map((fit, place) => doubtfulOr(fit, piece, acts[place]?.acts ?? []));
    },
    ({ label, bad }) => ({ step: String(label), says: saidOf(bad) }),
  ), unit);
};
