import type { CutPiece, Doubt } from "../../functions/cut-pieces";
import type { TakenReading } from "../../functions/doubt-of-step";
import { textWidth } from "./letter-widths";
import { baseline, type Drawn, line, type Spot, struck, text, WEIGHT } from "./pen";

/** The opening on paper, in millimetres: as wide and as deep whatever its size, and square, so that no doubtful angle shows its way. */
const SIDES = { left: 57, right: 153, top: 29.5, bottom: 55 } as const;
const MIDDLE = (SIDES.left + SIDES.right) / 2;
const SIZE = 3.4;
const AIR = 1.4;
/** From a reading at an end to the next one below it. */
const APART = 5.2;
/** Along a diagonal to where its figure stands, clear of where the two cross. */
const ALONG = 0.26;
const DASHED = "1.6 1";

/** What stands at a reading: its name, where its line does not tell which it is, and its figure, struck where it is doubtful. */
const labelled = (x: number, middle: number, { name, read, isDoubtful, place }: TakenReading, anchor: "start" | "middle" | "end") => {
  const isAcross = place === "diagonal" || place === "second diagonal";
  const indent = isAcross ? 0 : textWidth(`${name}  `, SIZE, false);
  const wide = indent + textWidth(read, SIZE, true);
  const from = anchor === "start" ? x : anchor === "end" ? x - wide : x - wide / 2;
  const y = baseline(middle, SIZE);
  const figure = text([from + indent, y], read, { size: SIZE, isBold: true, part: isDoubtful ? "struck reading" : "reading" });
  return {
    drawn: [...(isAcross ? [] : [text([from, y], name, { size: SIZE })]), ...(isDoubtful ? struck(figure) : [figure])],
    left: from, right: from + wide,
  };
};

const lined = (from: Spot, to: Spot, { isDoubtful, name }: TakenReading): Drawn =>
  line([from, to], isDoubtful ? WEIGHT.blade : WEIGHT.tape, { part: `taped ${name}`, ...(isDoubtful ? { dash: DASHED } : {}) });

/** A line of the opening that was read, its figure over or under it. */
const edge = (reading: TakenReading, y: number, aside: number): readonly Drawn[] => [
  lined([SIDES.left, y], [SIDES.right, y], reading),
  ...labelled(MIDDLE, y + aside, reading, "middle").drawn,
];

/** From corner to corner, broken for its figure. */
const diagonal = (reading: TakenReading, from: Spot, to: Spot): readonly Drawn[] => {
  const at = (part: number): Spot => [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
  const [x, y] = at(ALONG);
  const { drawn, left, right } = labelled(x, y, reading, "middle");
  const reach = Math.abs(to[0] - from[0]);
  const half = ((right - left) / 2 + AIR) / reach;
  return [lined(from, at(ALONG - half), reading), lined(at(ALONG + half), to, reading), ...drawn];
};

const WORDS = {
  tread: { far: "back, at the riser", you: "YOU STAND HERE" },
  riser: { far: "top", you: "BOTTOM; YOU STAND HERE" },
} as const;

/** A sketch of the opening as it was taped, with every reading where it lies and the doubtful ones struck. */
export const tapedOpening = ({ kind }: CutPiece, { readings }: Doubt): readonly Drawn[] => {
  const { left, right, top, bottom } = SIDES;
  const of = (place: TakenReading["place"]): TakenReading | undefined => readings.find((one) => one.place === place);
  const [near, far, first, second, between] = [of("near"), of("far"), of("diagonal"), of("second diagonal"), of("between")];
  const middle = (top + bottom) / 2;
  // A run and an angle at one end stand over one another.
  const inside = (place: TakenReading["place"], x: number, anchor: "start" | "end"): readonly Drawn[] => {
    const found = readings.filter((one) => one.place === place);
    return found.flatMap((one, at) => labelled(x, middle + (at - (found.length - 1) / 2) * APART, one, anchor).drawn);
  };
  return [
    text([MIDDLE, 23.2], "the opening as it was taped; not to scale, drawn square", { size: 2.5, anchor: "middle" }),
    line([[left, top], [left, bottom]], WEIGHT.piece, { part: "opening left" }),
    line([[right, top], [right, bottom]], WEIGHT.piece, { part: "opening right" }),
    ...(near === undefined ? [] : edge(near, top, -2.6)),
    ...(far === undefined ? [] : edge(far, bottom, 3)),
    ...(first === undefined ? [] : diagonal(first, [left, top], [right, bottom])),
    ...(second === undefined ? [] : diagonal(second, [right, top], [left, bottom])),
    ...inside("left end", left + AIR, "start"),
    ...inside("right end", right - AIR, "end"),
    ...(between === undefined || of("left end") !== undefined ? [] : labelled(left + AIR, middle, between, "start").drawn),
    text([MIDDLE, bottom + 8.4], WORDS[kind].you, { size: 3.2, isBold: true, anchor: "middle" }),
  ];
};
