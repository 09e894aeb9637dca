import type { CutPiece } from "../../functions/cut-pieces";
import { markedLength } from "../../solver/length/marked-length";
import { blankText } from "./act-text";
import type { CardFacts } from "./card-facts";
import { textWidth } from "./letter-widths";
import { type Drawn, line, text, WEIGHT } from "./pen";

const [LEFT, RIGHT] = [7, 203];
/** Between the left half of the head and the right one. */
const APART = 4;
const TITLE = { size: 8, y: 12.6 } as const;
const CAUTION = { size: 2.9, y: 17.4 } as const;
const RULE = 19.2;
const LINES = [8.6, 13, 17.4] as const;
/** By hand, where the workbook does not say it. */
const BY_HAND = "wood ____________  board ______";

const SIZES = [3.3, 3, 2.7, 2.5] as const;
const TITLE_SIZES = [TITLE.size, 7, 6, 5, 4] as const;
const TITLE_ROOM = 104;

interface Fitting {
  readonly text: string;
  readonly size: number;
}

/** The largest of the sizes in which a text is no wider than its room; cut short where none is, but for what comes after it. */
const fitting = (words: string, after: string, isBold: boolean, room: number, sizes: readonly number[] = SIZES): Fitting => {
  const size = sizes.find((one) => textWidth(`${words}${after}`, one, isBold) <= room);
  if (size !== undefined) return { text: `${words}${after}`, size };
  const smallest = Math.min(...sizes);
  let short = words;
  while (short !== "" && textWidth(`${short}...${after}`, smallest, isBold) > room) short = short.slice(0, -1);
  return { text: `${short}...${after}`, size: smallest };
};

const isTapered = ({ acts }: CutPiece): boolean => acts.some(({ act }) => act?.kind === "scribe");

/** Whose piece it is, and what it is made of. */
export const head = (piece: CutPiece, { job, date, card, cards, caution }: CardFacts): readonly Drawn[] => {
  const named = `STEP ${piece.step} ${piece.kind.toUpperCase()}`;
  const title = fitting(named, isTapered(piece) ? ", TAPERED" : "", true, TITLE_ROOM, TITLE_SIZES);
  const left = Math.max(textWidth(title.text, title.size, true), textWidth(caution, CAUTION.size, false));
  const room = RIGHT - LEFT - left - APART;
  const blank = blankText(piece.acts, piece.unit);
  const thick = piece.outline === undefined ? "" : `${markedLength(piece.outline.thickness, piece.unit)} thick`;
  const said = [
    { words: job, after: ` · ${date} · card ${card} of ${cards}`, isBold: true },
    { words: [blank, thick].filter((each) => each !== "").join(" · "), after: "", isBold: false },
    { words: piece.wood ?? BY_HAND, after: "", isBold: false },
  ];
  return [
    text([LEFT, TITLE.y], title.text, { size: title.size, isBold: true }),
    text([LEFT, CAUTION.y], caution, { size: CAUTION.size, part: "caution" }),
    ...said.map(({ words, after, isBold }, place) => {
      const fit = fitting(words, after, isBold, room);
      return text([RIGHT, LINES[place] ?? 0], fit.text, { size: fit.size, isBold, anchor: "end" });
    }),
    line([[LEFT, RULE], [RIGHT, RULE]], WEIGHT.blade),
  ];
};
