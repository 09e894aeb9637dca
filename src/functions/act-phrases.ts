import { RADIANS_PER_DEGREE } from "../solver/degrees";
import {
  type Act,
  type CheckedFrom,
  degreesOf,
  type Edge,
  type Hook,
  type Mark,
  OTHER_SIDE,
  otherEnd,
  type PieceKind,
  type Side,
  type Swing,
} from "../solver/fit/acts";
import type { Unit } from "../solver/length/length";
import { isUnderTheRule, markedLength, ruledLength } from "../solver/length/marked-length";

/** What the words of an act are said about: the other acts of its step, whose numbers are its marks' names, and the unit of its figures. */
export interface Ticket {
  readonly acts: readonly Act[];
  readonly unit: Unit;
}

/** What a tape is burnt by: as much as is easily taken off again in the head. */
const BURNT: Readonly<Record<Unit, { readonly says: string; readonly mark: number }>> = {
  in: { says: "an inch", mark: 1 },
  mm: { says: "100", mark: 100 },
};

const QUARTER_TURN = 90;

export const joined = (...parts: readonly (string | undefined)[]): string =>
  parts.filter((part) => part !== undefined && part !== "").join("; ");

/** A mark by the number of the act that makes it. */
export const markText = ({ acts }: Ticket, { end, place }: Mark): string =>
  `mark ${acts.findIndex((act) => act.kind === "mark" && act.mark.end === end && act.mark.place === place) + 1}`;

export const fromTo = (ticket: Ticket, one: Mark, other: Mark): string => `from ${markText(ticket, one)} to ${markText(ticket, other)}`;

/** Where the scribed back begins at an end: the mark of its depth, or the corner where it is as deep as it was ripped. */
export const depthText = ({ acts }: Ticket, marked: readonly Side[], end: Side): string =>
  marked.includes(end)
    ? `mark ${acts.findIndex((act) => act.kind === "mark the depth" && act.end === end) + 1}`
    : `the ${end} back corner`;

/** A way the near end of the blade's path goes, and which corner lies inside a square line through the other. */
export interface SwingWords {
  readonly swing: string;
  readonly offset?: string;
}

const inBy = (corner: string, by: number, unit: Unit): string => `${corner} in by ${ruledLength(by, unit)}`;
const nearEnd = (angle: number, way: Side): string => `${degreesOf(angle)}°, near end of the cut to the ${way}`;

export const swingText = (end: Side, { angle, over, far, near }: Swing, unit: Unit): SwingWords => {
  const inside = Math.abs(over * Math.tan(angle * RADIANS_PER_DEGREE));
  if (isUnderTheRule(inside, unit)) return { swing: "square" };
  return { swing: nearEnd(angle, angle > 0 ? end : otherEnd(end)), offset: inBy(angle > 0 ? far : near, inside, unit) };
};

/** A mitre as the saw's scale has it, counted from square, and as it is counted from the edge; a figure alone would be set as it stands. */
export const mitreText = (
  fromEdge: number, edge: string, way: Side, inside: { readonly corner: string; readonly by: number }, unit: Unit,
): SwingWords => ({
  swing:
    `${degreesOf(QUARTER_TURN - fromEdge)}° on the saw's scale, near end of the cut to the ${way} ` +
    `(${degreesOf(fromEdge)}° from the ${edge})`,
  offset: inBy(inside.corner, inside.by, unit),
});

/** The free end of a return, which lies with its outer edge toward the operator and its mitre away from `end`. */
export const freeEndText = (end: Side, angle: number, innerLonger: number, unit: Unit): SwingWords => {
  if (innerLonger === 0) return { swing: "square" };
  const isInner = innerLonger > 0;
  return {
    swing: nearEnd(angle, isInner ? otherEnd(end) : end),
    offset: inBy(isInner ? "outer edge" : "inner edge", Math.abs(innerLonger), unit),
  };
};

/** How the blade leans, what that leaves, and what a square shows of it: said three times over, as a lean is easily taken the other way. */
export const tiltText = (end: Side, tilt: number, piece: PieceKind): string => {
  const degrees = degreesOf(tilt);
  if (Number(degrees) === 0) return "upright";
  const lean = tilt > 0 ? `${end}, away from the piece: face longer` : `${otherEnd(end)}, over the piece: ${OTHER_SIDE[piece]} longer`;
  return `${degrees}°, top of the blade to the ${lean}; square on the end: light shows at the ${tilt > 0 ? OTHER_SIDE[piece] : "face"}`;
};

export const bevelText = (degrees: number): string => `${degreesOf(degrees)}°, off the back of the top edge, not off the face`;

const cornerText = (end: Side, edge: Edge): string => (edge === "gauged line" ? `${end} end` : `${end} ${edge} corner`);

export const hookText = ({ end, along, isSquared }: Hook, isBurnt: boolean, unit: Unit): string => {
  const from = isSquared ? `squared ${end} end` : cornerText(end, along);
  const lies = along === "gauged line" ? "on the gauged line" : `along the ${along}`;
  return `${isBurnt ? `burn ${BURNT[unit].says} at` : "hook"} the ${from}, ${lies}`;
};

/** What is read on the tape, whatever was burnt with it. */
export const tapeText = (distance: number, isBurnt: boolean, at: string, unit: Unit): string =>
  isBurnt ? `${markedLength(distance + BURNT[unit].mark, unit)}, the ${BURNT[unit].mark} at the ${at}` : markedLength(distance, unit);

export const checkText = (ticket: Ticket, from: CheckedFrom, to: Mark, isBurnt: boolean): string => {
  if ("place" in from) return fromTo(ticket, from, to);
  const corner = cornerText(from.end, from.corner);
  const mark = markText(ticket, to);
  // Nothing is burnt here, so that who forgot it at the marks, or took it twice, is off by all of it.
  return isBurnt ? `from ${mark} to the ${corner}, nothing burnt` : `hook the ${corner}, to ${mark}`;
};
