import { box, closed, type DraftMark, hatch, led, line, note } from "../draft";
import type { Point } from "../../figure";
import type { Area, CutBoard, DrawnPiece, DrawnRest } from "./cut-board";
import { clippedText, type FittedWords, fittedWords, wordsIn, wordsSize } from "./fitted-words";

/** On the paper, in millimetres: over a board its name, under it the grain. */
export const OVER = 8;
export const UNDER = 9;
const NAME_OVER = 3.4;
const GRAIN_UNDER = 3.6;
const GRAIN_LONG = 22;
const ARROW = 1.6;
const LONGEST_NAME = 215;
const LONGEST_TEXT = 70;
/** Words of pieces that stand beside a board, at most. */
const MOST_BESIDE = 12;
const CLOSE = 0.8;
const WIDE = 2.4;

/** Wordings of pieces too small for them, in the order in which they were met: their numbers stand in the pieces. */
export type Key = string[];

export interface BoardMarks {
  readonly marks: readonly DraftMark[];
  /** Pieces with neither words nor number in them. */
  readonly unnamed: number;
}

const numberIn = (key: Key, text: string): string => {
  const known = key.indexOf(text);
  return `(${(known < 0 ? key.push(text) : known + 1).toString()})`;
};

/** An area of the board on the drawing, the board's lower left corner at a height. */
const boxOf = ({ along, across, length, width }: Area, y: number): readonly Point[] =>
  box([along, y + across], [along + length, y + across + width]);

const middleOf = ({ along, across, length, width }: Area, y: number): Point => [along + length / 2, y + across + width / 2];

/** Hatched but for where the words stand. */
const hatchedAround = (area: Area, words: FittedWords | undefined, y: number, per: number): DraftMark => {
  const outer = boxOf(area, y);
  if (words === undefined) return hatch(outer, { apart: WIDE, falls: true });
  const [x, z] = middleOf(area, y);
  const [wide, high] = wordsSize(words, per);
  const inner = box([x - wide / 2, z - high / 2], [x + wide / 2, z + high / 2]);
  // There along a slit, round the words the other way, and back.
  return hatch([...outer, ...outer.slice(0, 1), ...inner.slice(0, 1), ...[...inner].reverse()], { apart: WIDE, falls: true });
};

const restMarks = ({ area, size, isKept }: DrawnRest, y: number, per: number): DraftMark[] => {
  const name = isKept ? "offcut kept" : "left over";
  const words = fittedWords([[`${name} ${size}`], [name, size]], area, per);
  const outline = isKept ? [closed("dashed", ...boxOf(area, y))] : [];
  const away = isKept ? [led(middleOf(area, y), `${name} ${size}`)] : [];
  return [...outline, hatchedAround(area, words, y, per), ...(words === undefined ? away : wordsIn(words, middleOf(area, y), per))];
};

const pieceWordings = (name: string, { size, place }: DrawnPiece): readonly (readonly string[])[] =>
  name === "" ? [[size, place], [size]] : [[`${name} ${size}`, place], [name, size, place], [`${name} ${size}`], [name, size]];

/** The words of each piece: in it, or its number in it, or its number beside the board where it is too thin for either. */
const pieceMarks = (pieces: readonly DrawnPiece[], y: number, per: number, key: Key): BoardMarks => {
  let unnamed = 0;
  const marks = pieces.flatMap((piece): DraftMark[] => {
    const outline = closed("piece", ...boxOf(piece.area, y));
    const at = middleOf(piece.area, y);
    const name = clippedText(piece.label, LONGEST_TEXT);
    const whole = fittedWords(pieceWordings(name, piece), piece.area, per);
    if (whole !== undefined) return [outline, ...wordsIn(whole, at, per)];
    const full = `${name} ${piece.size}`.trim();
    const number = fittedWords([["(99)"]], piece.area, per);
    if (number !== undefined) return [outline, ...wordsIn({ ...number, lines: [numberIn(key, full)] }, at, per)];
    unnamed += 1;
    return unnamed <= MOST_BESIDE ? [outline, led(at, numberIn(key, full))] : [outline];
  });
  return { marks, unnamed };
};

/** An arrow both ways with the grain, under the right end of a board. */
const grainMarks = (end: number, y: number, per: number): DraftMark[] => {
  const level = y - GRAIN_UNDER / per;
  const from = Math.max(end / 2, end - GRAIN_LONG / per);
  const tip = ARROW / per;
  return [
    line("thin", [from, level], [end, level]),
    line("thin", [from + tip, level + tip / 2], [from, level], [from + tip, level - tip / 2]),
    line("thin", [end - tip, level + tip / 2], [end, level], [end - tip, level - tip / 2]),
    note([from, level], "grain", "left"),
  ];
};

/** A board with its lower edge at a height of the drawing, and its name over it. */
export const boardMarks = (board: CutBoard, named: string, y: number, per: number, key: Key): BoardMarks => {
  const { length, width } = board;
  const pieces = pieceMarks(board.pieces, y, per, key);
  const whole = closed("thick", ...box([0, y], [length, y + width]));
  const spoilt = board.spoilt.flatMap(({ from, to, text }): DraftMark[] => {
    const area = box([from, y], [to, y + width]);
    return [closed("thin", ...area), hatch(area, { apart: CLOSE }), note([(from + to) / 2, y], text, "below")];
  });
  return {
    unnamed: pieces.unnamed,
    marks: [
      whole,
      { kind: "full", points: box([0, y], [length, y + width]) },
      ...spoilt,
      ...board.lost.map((area) => hatch(boxOf(area, y), { apart: CLOSE })),
      ...board.rests.flatMap((rest) => restMarks(rest, y, per)),
      ...pieces.marks,
      ...board.firstCuts.map(({ from, to }) => line("cut", [from[0], y + from[1]], [to[0], y + to[1]])),
      { kind: "dot", at: [0, y] },
      note([0, y], "0", "left"),
      note([0, y + width + NAME_OVER / per], clippedText(`${named}: ${board.facts}`, LONGEST_NAME), "right"),
      ...grainMarks(length, y, per),
    ],
  };
};
