import type { CutPiece } from "../../functions/cut-pieces";
import type { Side } from "../../solver/fit/acts";
import type { Outline } from "../../solver/fit/outline";
import type { Unit } from "../../solver/length/length";
import { checkLimit } from "./act-text";
import { textWidth } from "./letter-widths";
import { box, type Drawn, text, WEIGHT } from "./pen";

export const FOOT_TOP = 126.2;
const [LEFT, RIGHT] = [7, 203];
const BOXES = { top: 127.4, high: 5, wide: 11 } as const;
const LAST_LINE = 136.6;
const SMALL = 2.5;
const GAP = 1.2;

/** How lengths are read and how near they are worked to: common practice, no source. */
export const UNITS: Readonly<Record<Unit, string>> = {
  in: "inches; strong +, shy −: 1/64 past, short of the mark",
  mm: "millimetres",
};

/** What wins, where the scale of a saw and a mark differ by a hair, and which saw an arrow or a near end is told of. */
const RULES = ["degrees set the saw; the marks win", "handle: saw hinged at the fence"] as const;

/** What the rows of two mitres, and what stands under them, have no room for. */
const MITRES = ["mitre: a round blade may only begin it, and", "stops with its kerf on the face at the heel"] as const;

/** What the edges a gap is found at are called. */
const EDGES = { tread: { far: "back", near: "nose" }, riser: { far: "top", near: "bottom" } } as const;

const gapsOf = ({ kind }: CutPiece, { ends }: Outline): readonly string[] =>
  (["left", "right"] as const satisfies readonly Side[]).flatMap((side) =>
    ends[side].isOpen ? (kind === "tread" ? [`${side} return`] : []) : [`${side} ${EDGES[kind].far}`, `${side} ${EDGES[kind].near}`]);

const lowered = (words: string): string => (words === "" ? "" : `CHECK ${words}`);

/** What is ticked once it is cut and in place, the gap found and where, and how the figures are read. */
export const foot = (piece: CutPiece, outline: Outline, isCrowded: boolean): readonly Drawn[] => {
  const baseline = BOXES.top + BOXES.high - 1.4;
  let x = LEFT;
  const ticked = (words: string): readonly Drawn[] => {
    const from = x;
    x += BOXES.high + GAP + textWidth(words, 3.2, true) + 3;
    return [
      box({ left: from, right: from + BOXES.high, top: BOXES.top, bottom: BOXES.top + BOXES.high }, WEIGHT.blade),
      text([from + BOXES.high + GAP, baseline], words, { size: 3.2, isBold: true }),
    ];
  };
  const gap = (words: string): readonly Drawn[] => {
    const from = x;
    const boxed = from + textWidth(words, SMALL, false) + GAP;
    x = boxed + BOXES.wide + 2;
    return [
      text([from, baseline], words, { size: SMALL }),
      box({ left: boxed, right: boxed + BOXES.wide, top: BOXES.top, bottom: BOXES.top + BOXES.high }, WEIGHT.blade),
    ];
  };
  const ticks = [...ticked("cut"), ...ticked("fits")];
  const named = gapsOf(piece, outline);
  const found = [text([x, baseline], "gap:", { size: 3.2, isBold: true })];
  x += textWidth("gap:", 3.2, true) + 2;
  const gaps = (named.length === 0 ? ["how wide, and where"] : named).flatMap(gap);
  return [
    ...ticks, ...found, ...gaps,
    ...(isCrowded && piece.acts.filter(({ act }) => act?.kind === "mitre").length === 2 ? MITRES : [])
      .map((words, place) => text([x, BOXES.top + 1.9 + place * 2.9], words, { size: SMALL })),
    ...RULES.map((words, place) => text([RIGHT, BOXES.top + 1.9 + place * 2.9], words, { size: SMALL, anchor: "end" })),
    text([LEFT, LAST_LINE], lowered(checkLimit(piece.acts)), { size: SMALL }),
    text([RIGHT, LAST_LINE], UNITS[piece.unit], { size: SMALL, anchor: "end" }),
  ];
};
