import type { PieceAct } from "../../functions/cut-pieces";
import { type Act, OTHER_SIDE, type Side } from "../../solver/fit/acts";
import { RADIANS_PER_DEGREE } from "../../solver/degrees";
import { CARD_WIDTH } from "./card-facts";
import { hatch } from "./hatch";
import { baseline, closed, DASH, type Drawn, line, NUMBER_RADIUS, numbered, type Spot, text, WEIGHT } from "./pen";

/** A degree or two is not seen: every angle but none is drawn at this one, in its own direction. */
export const DRAWN_AT = 13;
const MOST_DRAWN = 50;

type SawnEnd = Extract<Act, { readonly kind: "saw end" }>;

/** Places across a picture of a left end, in millimetres from the card's edge; a right end is its mirror image. */
const PLACES = { edge: 7, waste: 10.5, square: 16, inner: 30, words: 32 } as const;
const PAST = 2.2;
/** From a picture down to the middle of what stands under it. */
const CAPTION_UNDER = 5;
const ARROW = 4;

export const across = (side: Side) => (x: number): number => (side === "left" ? x : CARD_WIDTH - x);

/** How far the shorter edge stands in, over a height on paper. */
const inset = (angle: number, height: number): number =>
  angle === 0 ? 0 : height * Math.tan(Math.min(MOST_DRAWN, Math.max(DRAWN_AT, Math.abs(angle))) * RADIANS_PER_DEGREE);

interface Picture {
  readonly side: Side;
  readonly part: "swing" | "tilt";
  readonly top: number;
  readonly height: number;
  /** Greater than 0 where the lower edge of the picture is the longer. */
  readonly angle: number;
  readonly figure: string;
  readonly upper: string;
  readonly lower: string;
  readonly says: string;
  readonly number: string;
  /** Cut out of the lower corner, beside the picture's own scale. */
  readonly notch?: string;
}

/** An arrow the way the blade goes at its near end or at its top: to the left or to the right. */
const arrow = ([x, y]: Spot, way: number, part: string): readonly Drawn[] => [
  line([[x, y], [x + way * ARROW, y]], WEIGHT.blade, { part }),
  line([[x + way * (ARROW - 1.1), y - 0.7], [x + way * ARROW, y], [x + way * (ARROW - 1.1), y + 0.7]], WEIGHT.blade),
];

const NOTCH = { along: 4.6, up: 3 } as const;

/** One end: the wood, what is sawn off it, a square line through its longest point, and the blade's path past the wood. */
const picture = (drawn: Picture): readonly Drawn[] => {
  const { side, part, top, height, angle, figure, upper, lower, says, number, notch } = drawn;
  const x = across(side);
  const bottom = top + height;
  const shift = inset(angle, height);
  const [high, low]: readonly [number, number] = [PLACES.square + (angle > 0 ? shift : 0), PLACES.square + (angle < 0 ? shift : 0)];
  const slope = (low - high) / height;
  const spot = (at: number, y: number): Spot => [x(at), y];
  const at = (y: number): number => high + slope * (y - top);
  const blade: readonly Spot[] = [spot(at(top - PAST), top - PAST), spot(at(bottom + PAST), bottom + PAST)];
  const over = bottom - NOTCH.up;
  const corner: readonly Spot[] = notch === undefined
    ? [spot(low, bottom)]
    : [spot(at(over), over), spot(at(over) + NOTCH.along, over), spot(low + NOTCH.along, bottom)];
  const wood: readonly Spot[] = [spot(PLACES.inner, top), spot(high, top), ...corner, spot(PLACES.inner, bottom)];
  const anchor = side === "left" ? "start" : "end";
  const label = (y: number, words: string, size: number, isBold: boolean, named?: string): Drawn =>
    text(spot(PLACES.words, y), words, { size, isBold, anchor, ...(named === undefined ? {} : { part: named }) });
  const name = `${side} ${part}`;
  // At the near end of the path for a swing, at the top of the blade for a tilt.
  const [tip, away] = part === "swing" ? [bottom + PAST, at(bottom + PAST) - at(top)] : [top - PAST, at(top - PAST) - at(bottom)];
  const way = Math.sign(x(away) - x(0));
  const middle = bottom + CAPTION_UNDER;
  return [
    ...hatch([spot(PLACES.waste, top), spot(high, top), spot(low, bottom), spot(PLACES.waste, bottom)]),
    line([spot(high, top), spot(PLACES.waste, top), spot(PLACES.waste, bottom), spot(low, bottom)], WEIGHT.blank, { dash: DASH.blank }),
    line([spot(PLACES.square, top - PAST), spot(PLACES.square, bottom + PAST)], WEIGHT.blank, { dash: DASH.square }),
    line(blade, WEIGHT.blade, { part: `${name} blade` }),
    line(wood, WEIGHT.piece, { part: name }),
    ...(angle === 0 ? [] : arrow(spot(at(tip), tip), way, `${name} arrow`)),
    label(top + 1.1, upper, 2.5, false),
    label(baseline((top + bottom) / 2, 4), figure, 4, true, `${name} figure`),
    label(bottom + 1.3, lower, 2.5, false),
    ...numbered(spot(PLACES.edge + NUMBER_RADIUS, middle), number),
    text(spot(PLACES.edge + 2 * NUMBER_RADIUS + 0.8, baseline(middle, 2.5)), says, { size: 2.5, anchor }),
  ];
};

const degrees = (said: string): string => /^[\d.]+°/.exec(said)?.[0] ?? said;

/** Where the two pictures of an end stand, in millimetres from the top of the card. */
export const SWING_TOP = 27;
const SWING_HEIGHT = 8.6;
const TILT_TOP = 46;
const TILT_HEIGHT = 7.4;

/** Over the picture of a bevel stands what it is of: it is no tilt of the end. */
const TOP_EDGE = { title: 45.1, top: 47.2, height: 6.2 } as const;

/** The bevel of the top edge as it is seen from the right end: the bottom lies toward the reader, the face up. */
const bevelPicture = (row: PieceAct, side: Side): readonly Drawn[] => {
  const x = across(side);
  const [top, bottom] = [TOP_EDGE.top, TOP_EDGE.top + TOP_EDGE.height];
  // Whichever side it stands on, the top edge is on the right of one who looks from the right end.
  const [inner, edge, far] = side === "left" ? [10, 27, 27] : [175, 192, 192];
  const shift = inset(1, TOP_EDGE.height);
  const words = side === "left" ? 31 : 171;
  const anchor = side === "left" ? "start" : "end";
  const middle = bottom + CAPTION_UNDER;
  const spot = (at: number): Spot => [x(at), middle];
  return [
    text([x(PLACES.edge), TOP_EDGE.title], "TOP EDGE", { size: 3, isBold: true, anchor, part: "bevel title" }),
    ...hatch([[far, top], [edge, bottom], [far - shift, bottom]]),
    closed([[far, top], [edge, bottom], [far - shift, bottom]], WEIGHT.blank, { dash: DASH.blank }),
    line([[inner, top], [edge, top], [edge - shift, bottom], [inner, bottom]], WEIGHT.piece, { part: "bevel" }),
    text([words, top + 1.1], "face", { size: 2.5, anchor }),
    text([words, baseline((top + bottom) / 2, 4)], degrees(row.cells.tilt), { size: 4, isBold: true, anchor, part: "bevel figure" }),
    text([words, bottom + 1.3], "back", { size: 2.5, anchor }),
    ...numbered(spot(PLACES.edge + NUMBER_RADIUS), row.cells.number),
    text([x(PLACES.edge + 2 * NUMBER_RADIUS + 0.8), baseline(middle, 2.5)], "from the right end", { size: 2.5, anchor }),
  ];
};

/**
 * An end as it is seen from above, and from where one stands; the figures are those of its act. Where it is upright a bevel of the top edge
 * may be shown in the place of the second picture.
 */
export const endPicture = (
  row: PieceAct, { end, piece, swing, tilt }: SawnEnd, notch: string | undefined, bevel: PieceAct | undefined,
): readonly Drawn[] => {
  const { cells } = row;
  const number = cells.number;
  return [
    ...picture({
      side: end, part: "swing", top: SWING_TOP, height: SWING_HEIGHT, number,
      angle: cells.swing === "square" ? 0 : swing.angle,
      figure: degrees(cells.swing), upper: swing.far, lower: swing.near,
      says: [
        ...(notch === undefined ? [cells.swing === "square" ? "swing, from above" : "from above"] : [`notch ${notch}`]),
        ...(cells.swing === "square" ? [] : ["arrow: handle"]),
      ].join("; "),
      ...(notch === undefined ? {} : { notch }),
    }),
    ...(bevel === undefined ? picture({
      side: end, part: "tilt", top: TILT_TOP, height: TILT_HEIGHT, number,
      // The face lies above: it is the longer where a swing would have the upper edge longer.
      angle: cells.tilt === "upright" ? 0 : -tilt,
      figure: degrees(cells.tilt), upper: "face", lower: OTHER_SIDE[piece],
      says: cells.tilt === "upright" ? `tilt, from the ${swing.near}` : `from the ${swing.near}; arrow: top`,
    }) : bevelPicture(bevel, end)),
  ];
};
