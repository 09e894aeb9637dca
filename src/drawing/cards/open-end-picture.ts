import type { PieceAct } from "../../functions/cut-pieces";
import { RADIANS_PER_DEGREE } from "../../solver/degrees";
import type { Act, Side } from "../../solver/fit/acts";
import { across } from "./end-picture";
import { hatch } from "./hatch";
import { textWidth } from "./letter-widths";
import { baseline, closed, DASH, type Drawn, line, NUMBER_RADIUS, numbered, type Spot, text, WEIGHT } from "./pen";

type Of<Kind extends Act["kind"]> = Extract<Act, { readonly kind: Kind }>;
interface Row<Kind extends Act["kind"]> {
  readonly row: PieceAct;
  readonly act: Of<Kind>;
}

/** What makes an open end and its return. */
export interface OpenEnd {
  readonly side: Side;
  readonly sawn: Row<"saw to the heel">;
  readonly mitre: Row<"mitre">;
  readonly returned: Row<"mitre the return">;
  readonly freeEnd: Row<"end the return">;
  /** Width of the return, in the unit of the readings. */
  readonly width: number;
}

/** Places on the picture of a left end, in millimetres; a right end is its mirror image. */
const TOP = 26;
const NOSE = 43;
const DEEP = 9.5;
const TOE = 12.5;
const WASTE = 8;
const INNER = 48;
const MOST_ACROSS = 16;
const RETURN = { top: 50, bottom: 54.5, free: 8, mitre: 49 } as const;
const OPENED = 13;
const RADIUS = 5;

const settingOf = (said: string): string => /^[\d.]+°/.exec(said)?.[0] ?? said;
const fromEdge = (said: string): string => /\(([\d.]+°) from/.exec(said)?.[1] ?? "";

/** The corner with its mitre, true to angle and not to scale. */
const corner = ({ side, sawn, mitre, width }: OpenEnd): readonly Drawn[] => {
  const x = across(side);
  const spot = (at: number, y: number): Spot => [x(at), y];
  const heelAt = TOE + Math.min(MOST_ACROSS, (mitre.act.toePastHeel / width) * DEEP);
  const heelY = NOSE - DEEP;
  const backAt = heelAt + (heelY - TOP) * Math.tan(sawn.act.swing.angle * RADIANS_PER_DEGREE);
  const anchor = side === "left" ? "start" : "end";
  const words = (at: number, y: number, said: string, size: number, isBold = false, part?: string): Drawn =>
    text(spot(at, y), said, { size, isBold, anchor, ...(part === undefined ? {} : { part }) });
  const angle = mitre.act.fromNose * RADIANS_PER_DEGREE;
  const arc = [0, 0.25, 0.5, 0.75, 1].map((part) =>
    spot(TOE + RADIUS * Math.cos(angle * part), NOSE - RADIUS * Math.sin(angle * part)));
  const numberAt = heelAt + 1.4 + NUMBER_RADIUS;
  const figureAt = numberAt + NUMBER_RADIUS + 0.8;
  return [
    ...hatch([spot(WASTE, NOSE), spot(TOE, NOSE), spot(heelAt, heelY), spot(backAt, TOP), spot(WASTE, TOP)]),
    line([spot(TOE, NOSE), spot(WASTE, NOSE), spot(WASTE, TOP)], WEIGHT.blank, { dash: DASH.blank }),
    line([spot(INNER, NOSE), spot(TOE, NOSE), spot(heelAt, heelY), spot(backAt, TOP)], WEIGHT.piece, { part: `${side} open` }),
    line([spot(heelAt, heelY), spot(INNER, heelY)], WEIGHT.blank, { dash: DASH.square }),
    line(arc, WEIGHT.tape),
    ...numbered(spot(numberAt, TOP + 2.7), sawn.row.cells.number),
    words(figureAt, baseline(TOP + 2.7, 3.6), settingOf(sawn.row.cells.swing), 3.6, true, `${side} swing figure`),
    ...numbered(spot(numberAt, NOSE - 6.3), mitre.row.cells.number),
    words(figureAt, baseline(NOSE - 6.3, 3.6), settingOf(mitre.row.cells.swing), 3.6, true, `${side} mitre figure`),
    words(figureAt + textWidth(settingOf(mitre.row.cells.swing), 3.6, true) + 1, baseline(NOSE - 6.3, 2.5), "on scale", 2.5),
    words(numberAt - NUMBER_RADIUS, NOSE - 1.4, `${fromEdge(mitre.row.cells.swing)} from nose`, 2.5),
    words(TOE, NOSE + 3, "toe", 2.5, true),
    words(heelAt + 1.2, heelY - 0.8, "heel", 2.5, true),
    words(TOE + 10, NOSE + 3, "NOSE", 2.5),
  ];
};

/** Its return, outer edge toward the reader: which end the mitre is on, and the length of the outer edge. */
const returned = ({ side, returned: mitred, freeEnd }: OpenEnd): readonly Drawn[] => {
  const x = across(side);
  const spot = (at: number, y: number): Spot => [x(at), y];
  const { top, bottom, free, mitre } = RETURN;
  const height = bottom - top;
  const mitredIn = height / Math.tan(mitred.act.fromNose * RADIANS_PER_DEGREE);
  const shift = height * Math.tan(OPENED * RADIANS_PER_DEGREE);
  const { innerLonger } = freeEnd.act;
  const [outer, inner] = [free + (innerLonger > 0 ? shift : 0), free + (innerLonger < 0 ? shift : 0)];
  const anchor = side === "left" ? "start" : "end";
  const middle = bottom + 3.2;
  const [figure = ""] = freeEnd.row.cells.tape.split(", ");
  return [
    closed([spot(outer, bottom), spot(mitre, bottom), spot(mitre - mitredIn, top), spot(inner, top)], WEIGHT.piece, {
      part: `${side} return`,
    }),
    ...numbered(spot(mitre - NUMBER_RADIUS + 1, middle), mitred.row.cells.number),
    ...numbered(spot(free + NUMBER_RADIUS, middle), freeEnd.row.cells.number),
    text(spot(free + 2 * NUMBER_RADIUS + 0.8, baseline(middle, 3)), figure.replace(" strong", "+").replace(" shy", "−"), {
      size: 3, isBold: true, anchor, part: `${side} return figure`,
    }),
    text(spot(free + 2.4, top + 3.1), "outer edge toward you", { size: 2.5, anchor }),
  ];
};

export const openEndPicture = (end: OpenEnd): readonly Drawn[] => [...corner(end), ...returned(end)];
