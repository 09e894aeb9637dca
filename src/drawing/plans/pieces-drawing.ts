import type { PieceKind } from "../../solver/fit/acts";
import { cornersOf, type FacePoint, type Outline } from "../../solver/fit/outline";
import type { Unit } from "../../solver/length/length";
import type { Point } from "../figure";
import { box, closed, type Draft, type DraftMark, hatch, inside, line, note } from "./draft";
import { paperPer } from "./laid-draft";
import { movedMark } from "./moved-mark";
import { HIGHEST, SCALES, WIDEST } from "./scales";

/** One tread or riser as it is drawn; lengths in the unit of the readings, along its near edge and behind it. */
export interface DrawnPiece {
  readonly step: string;
  /** What it is cut from, from end to end. */
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  /** Its lines and dimensions; given how much of the piece a millimetre of the paper is. */
  readonly marks: (paper: number) => readonly DraftMark[];
  /** What its dimensions take at its ends, in millimetres of the paper. */
  readonly beside: readonly [left: number, right: number];
  /** Over it, a line each. */
  readonly words: readonly string[];
  /** What the solver notes of it. */
  readonly note: string;
}

/** A step whose readings do not hold, and why. */
export interface DoubtfulStep {
  readonly step: string;
  readonly says: string;
}

export const pointOf = ({ along, behind }: FacePoint): Point => [along, behind];

/** The ends of the blank: so long as the solver has it, from where the face or the other side reaches furthest to the left. */
export const blankOf = ({ ends: { left, right } }: Outline, length: number): { readonly from: number; readonly to: number } => {
  const first = Math.min(left.near.along, left.far.along) - Math.max(0, left.otherSide);
  const last = Math.max(right.near.along, right.far.along) + Math.max(0, right.otherSide);
  return left.isOpen && !right.isOpen ? { from: last - length, to: last } : { from: first, to: first + length };
};

const WASTE = { apart: 1.2 };

/** Once round an outline, back to where it begins. */
const round = (points: readonly Point[]): readonly Point[] => [...points, ...points.slice(0, 1)];

/** The piece in its blank, what falls off hatched. */
export const faceMarks = (outline: Outline, { from, to }: { readonly from: number; readonly to: number }): readonly DraftMark[] => {
  const [blank, face] = [box([from, 0], [to, outline.depth]), cornersOf(outline).map(pointOf)];
  // Round the blank, then round the piece: what lies between is within both.
  return [closed("dashed", ...blank), hatch([...round(blank), ...round(face)], WASTE), closed("thick", ...face)];
};

/** From the blank to its dimensions, on the paper. */
export const NEAR_ROW = 7;
export const FAR_ROW = 14;

/** Plumb beside the blank, from the near edge up; a thin line leads to the corner it is measured to. */
export const plumb = (at: number, corner: FacePoint, value: number, name: string, aside: number): readonly DraftMark[] => [
  ...(Math.abs(corner.along - at) < 1e-9 ? [] : [line("thin", [at, corner.behind], pointOf(corner))]),
  inside([at, 0], [at, corner.behind], value, name, aside),
];

/** How an end is set at the saw, where it is not square. */
export const setWords = (leftSet: string, rightSet: string): readonly string[] =>
  ([["left", leftSet], ["right", rightSet]] as const).flatMap(([end, set]) => (set === "square" ? [] : [`${end} set: ${set}`]));

/** The angle of a sawn end, from square, within the piece. */
export const angleNote = (end: "left" | "right", { near, heel = near, far }: Outline["ends"]["left"], angle: number): DraftMark => {
  const at: Point = [(heel.along + 2 * far.along) / 3, (heel.behind + 2 * far.behind) / 3];
  return note(at, Math.abs(angle) < 0.005 ? "square" : `${Math.abs(angle).toFixed(2)}°`, end === "left" ? "right" : "left");
};

const COLUMNS = 2;
const ROWS = 2;
/** On the paper: from piece to piece, what stands over a blank and under it, and a line of words. */
const BETWEEN = 8;
const OVER = 13;
const UNDER = 18;
const LINE = 4.4;
/** Title and notes under the drawings, for so many letters a line. */
const FOOT = 9;
const LETTERS = 110;
const MARGINS = 8;
/** More than anyone leafs through: the table has them all. */
const MOST_DRAWN = 60;

const most = (numbers: readonly number[]): number => Math.max(0, ...numbers);

/** What the largest of some pieces takes: its blank, and the paper round it. */
const cellOf = (pieces: readonly DrawnPiece[]) => ({
  wide: most(pieces.map(({ from, to }) => to - from)),
  high: most(pieces.map(({ depth }) => depth)),
  beside: most(pieces.map(({ beside: [left] }) => left)) + most(pieces.map(({ beside: [, right] }) => right)),
  over: OVER + most(pieces.map(({ words }) => words.length + 1)) * LINE,
});

type Cell = ReturnType<typeof cellOf>;

/** The largest scale at which so many fit beside and under one another, over the lines of the foot. */
const scaleOf = ({ wide, high, beside, over }: Cell, unit: Unit, [columns, rows]: readonly [number, number], foot: number): number => {
  const [across, down] = [WIDEST - MARGINS, HIGHEST - MARGINS - FOOT - foot * LINE];
  const doFit = (scale: number): boolean => {
    const per = paperPer(unit, scale);
    return columns * (wide * per + beside + BETWEEN) - BETWEEN <= across && rows * (high * per + over + UNDER) <= down;
  };
  return SCALES[unit].find(doFit) ?? SCALES[unit][SCALES[unit].length - 1] ?? 1;
};

const NAMES: Readonly<Record<PieceKind, string>> = { tread: "Tread", riser: "Riser" };

const LAID: Readonly<Record<PieceKind, string>> = {
  tread: "Face up, nose toward you, not yet rounded.", riser: "Face up, bottom toward you.",
};

const notesOf = (kind: PieceKind, pieces: readonly DrawnPiece[], doubtful: readonly DoubtfulStep[]): readonly string[] => {
  const said = new Map<string, string[]>();
  for (const { step, note: text } of pieces) if (text !== "") said.set(text, [...(said.get(text) ?? []), step]);
  return [
    `${LAID[kind]} Lengths on the face, at the piece's own edges; dashed the blank, hatched what falls off. Angles from square. Net ` +
      "sizes: leave the line.",
    ...[...said].map(([text, steps]) => `Step${steps.length === 1 ? "" : "s"} ${steps.join(", ")}: ${text}.`),
    ...doubtful.map(({ step, says }) => `Step ${step} is not drawn: ${says}.`),
  ];
};

/** Steps of a drawing in words; each by itself where some between them are not drawn. */
const listedSteps = (pieces: readonly DrawnPiece[]): string => {
  const steps = pieces.map(({ step }) => step);
  const [first = "", last = first] = [steps[0], steps[steps.length - 1]];
  if (steps.length === 1) return `step ${first}`;
  const isInTurn = steps.every((step, place) => step === String(Number(first) + place));
  return `steps ${isInTurn ? `${first} to ${last}` : steps.join(", ")}`;
};

const sheetOf = (kind: PieceKind, pieces: readonly DrawnPiece[], doubtful: readonly DoubtfulStep[], unit: Unit): Draft => {
  const columns = Math.min(COLUMNS, pieces.length);
  const rows = Math.ceil(pieces.length / columns);
  const cell = cellOf(pieces);
  const notes = notesOf(kind, pieces, doubtful);
  const foot = notes.reduce((lines, one) => lines + Math.ceil(one.length / LETTERS), 1);
  const per = paperPer(unit, scaleOf(cell, unit, [columns, rows], foot));
  const [wide, high] = [cell.wide + (cell.beside + BETWEEN) / per, cell.high + (cell.over + UNDER) / per];
  return {
    title: `${NAMES[kind]}${pieces.length === 1 ? "" : "s"}, ${listedSteps(pieces)}`,
    says: pieces.length === 1
      ? `${NAMES[kind]} in plan, ${listedSteps(pieces)}, in its blank with its lengths and angles.`
      : `${NAMES[kind]}s in plan, ${listedSteps(pieces)}, each in its blank with its lengths and angles.`,
    unit,
    marks: pieces.flatMap((piece, place) => {
      const [column, row] = [place % columns, Math.floor(place / columns)];
      const words = [`step ${piece.step}`, ...piece.words].map((text, one, all): DraftMark =>
        note([piece.from, piece.depth + (OVER + (all.length - 1 - one) * LINE) / per], text, "right"));
      return [...piece.marks(1 / per), ...words].map((mark) => movedMark(mark, [column * wide - piece.from, -row * high]));
    }),
    notes,
  };
};

const isDrawn = (piece: DrawnPiece | DoubtfulStep): piece is DrawnPiece => "marks" in piece;

/** Pieces in plan to scale, four to a drawing; those whose readings do not hold are named. The sentence of the first where none holds. */
export const piecesDrawings = (
  kind: PieceKind, all: readonly (DrawnPiece | DoubtfulStep)[], unit: Unit,
): readonly { readonly name: string; readonly draft: Draft }[] | string => {
  const doubtful = all.filter((one): one is DoubtfulStep => !isDrawn(one));
  const sound = all.filter(isDrawn);
  const pieces = sound.slice(0, MOST_DRAWN);
  if (pieces.length === 0) {
    const [first] = doubtful;
    return first === undefined ? "readings: there is no step to draw" : `step ${first.step} is not drawn: ${first.says}`;
  }
  const sheets = Array.from({ length: Math.ceil(pieces.length / (COLUMNS * ROWS)) }, (_, sheet) =>
    pieces.slice(sheet * COLUMNS * ROWS, (sheet + 1) * COLUMNS * ROWS));
  return sheets.map((some, sheet) => {
    const draft = sheetOf(kind, some, sheet === 0 ? doubtful : [], unit);
    const more = sound.length > pieces.length && sheet === sheets.length - 1
      ? [`Of ${sound.length} steps the first ${pieces.length} are drawn; the table has them all.`]
      : [];
    return { name: `${kind}, ${listedSteps(some)}`, draft: { ...draft, notes: [...draft.notes, ...more] } };
  });
};
