import type { CutPiece } from "../../functions/cut-pieces";
import { textWidth } from "./letter-widths";
import { box, type Drawn, text, WEIGHT } from "./pen";

const FRAME = { left: 8, right: 202, top: 26, bottom: 96 } as const;
const INNER = 13;
const SIZE = 4;
const PITCH = 6;
const NEW = { top: 78, bottom: 91 } as const;

/** Words in lines no wider than their room. */
const wrapped = (words: string, size: number, room: number): readonly string[] => {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1) ?? ""} ${word}`;
    if (lines.length > 0 && textWidth(longer, size, false) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
};

const MOST_LINES = 6;
const SIZES = [SIZE, 3.6, 3.2, 2.9, 2.5] as const;

/** A step whose readings do not hold: why, room for the new reading, and no figure at all, since it would be cut. */
export const doubtful = ({ acts: [first] }: CutPiece): readonly Drawn[] => {
  const says = first?.cells.note ?? "";
  const room = FRAME.right - INNER - 5;
  const size = SIZES.find((one) => wrapped(says, one, room).length <= MOST_LINES) ?? Math.min(...SIZES);
  const lines = wrapped(says, size, room);
  return [
    box(FRAME, WEIGHT.frame),
    text([INNER, 36], "READ AGAIN BEFORE YOU CUT", { size: 7, isBold: true }),
    ...lines.map((words, place) => text([INNER, 44 + place * PITCH * (size / SIZE)], words, { size, part: "doubt" })),
    text([INNER, NEW.bottom - 4.5], "new readings", { size: 3.4, isBold: true }),
    box({ left: INNER + 30, right: FRAME.right - 5, top: NEW.top, bottom: NEW.bottom }, WEIGHT.blade),
    text([8, 110], "NO END IS SAWN FROM THIS CARD", { size: 6, isBold: true }),
    text([8, 117], "Read it again, type it in, print the card anew.", { size: 3.4 }),
  ];
};
