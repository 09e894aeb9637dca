import type { CutPiece, PieceAct } from "../../functions/cut-pieces";
import { LEAVE_THE_LINE, READ_AGAIN } from "../../functions/act-words";
import type { Act, Side } from "../../solver/fit/acts";
import type { Outline } from "../../solver/fit/outline";
import { actRows } from "./act-rows";
import { actText, doubtsNamed, remarks } from "./act-text";
import { CARD_HEIGHT, CARD_WIDTH, type CardFacts } from "./card-facts";
import { doubtful } from "./doubtful";
import { DRAWN_AT, endPicture } from "./end-picture";
import { foot, FOOT_TOP } from "./foot";
import { head } from "./head";
import { textWidth } from "./letter-widths";
import { type OpenEnd, openEndPicture } from "./open-end-picture";
import { box, type Drawn, line, svg, text, WEIGHT } from "./pen";
import { plan } from "./plan";


const EDGE = 7;
const SIDES = ["left", "right"] as const;
/** With a return there are so many acts that what the pictures say is not said again: rows are higher for it. */
const TERSE_FROM = 13;
/** Both ends open make two dozen acts: the plan leaves them some of its room. */
const MANY_ACTS = 16;
const DEEP = { usual: 24, crowded: 20 } as const;
/** Down to where the pictures of the ends reach. */
const ENDS_BOTTOM = 60.5;

const find = <Kind extends Act["kind"]>(
  acts: readonly PieceAct[], kind: Kind, side: Side,
): { readonly row: PieceAct; readonly act: Extract<Act, { readonly kind: Kind }> } | undefined => {
  const row = acts.find(({ act }) => act?.kind === kind && "end" in act && act.end === side);
  return row?.act === undefined ? undefined : { row, act: row.act as Extract<Act, { readonly kind: Kind }> };
};

const openEndOf = (acts: readonly PieceAct[], side: Side, outline: Outline): OpenEnd | undefined => {
  const sawn = find(acts, "saw to the heel", side);
  const mitre = find(acts, "mitre", side);
  const returned = find(acts, "mitre the return", side);
  const freeEnd = find(acts, "end the return", side);
  const width = outline.ends[side].heel?.behind;
  if (sawn === undefined || mitre === undefined || returned === undefined || freeEnd === undefined || width === undefined) return undefined;
  return { side, sawn, mitre, returned, freeEnd, width };
};

/** Above the reader's left and right: each end, larger and exaggerated. */
const ends = ({ acts }: CutPiece, outline: Outline): readonly Drawn[] => {
  const bevelled = acts.find(({ act }) => act?.kind === "bevel");
  // It stands in the room of a tilt that is none: beside an open end, if there is one.
  const isUpright = (side: Side): boolean => find(acts, "saw end", side)?.row.cells.tilt === "upright";
  const [shown] = [...SIDES.filter(isUpright), ...SIDES.filter((side) => outline.ends[side].isOpen && isUpright(side))].slice(-1);
  return SIDES.flatMap((side) => {
    const name = `${side.toUpperCase()} END · ${outline.ends[side].isOpen ? "OPEN" : "SKIRT"}`;
    const at = side === "left" ? EDGE : CARD_WIDTH - EDGE;
    const title = text([at, 23.4], name, { size: 3, isBold: true, anchor: side === "left" ? "start" : "end" });
    const open = openEndOf(acts, side, outline);
    if (open !== undefined) return [title, ...openEndPicture(open)];
    const closed = find(acts, "saw end", side);
    if (closed === undefined) return [title];
    const isBevelShown = bevelled !== undefined && side === shown;
    const notch = acts
      .filter(({ act }) => (act?.kind === "mark the notch" || act?.kind === "saw the notch") && act.end === side)
      .map(({ cells }) => cells.number)
      .join(", ");
    return [title, ...endPicture(closed.row, closed.act, notch === "" ? undefined : notch, isBevelShown ? bevelled : undefined)];
  });
};

/** A frame over the acts, as heavy as that of a step that does not close. */
const NAMED = { high: 5.4, air: 0.6, sizes: [3.3, 2.9, 2.5] } as const;

/** A reading the flight speaks against though its step closes: said before anything is done, and read again first. */
const doubtNamed = (named: string, top: number): readonly Drawn[] => {
  const words = `BEFORE YOU CUT: ${named}`;
  const room = CARD_WIDTH - 2 * EDGE - 4;
  const size = NAMED.sizes.find((one) => textWidth(words, one, true) <= room) ?? Math.min(...NAMED.sizes);
  const frame = { left: EDGE + 0.4, right: CARD_WIDTH - EDGE - 0.4, top, bottom: top + NAMED.high };
  return [box(frame, WEIGHT.frame), text([EDGE + 2, top + 3.8], words, { size, isBold: true, part: "doubt" })];
};

/** What is seen of a piece that lies face up. */
const SEEN = { tread: "plan", riser: "face" } as const;

const isSkewed = ({ act, cells }: PieceAct): boolean => act?.kind === "saw end" && (cells.swing !== "square" || cells.tilt !== "upright");

/** What holds of an end at a skirt that is not square or not upright, and of no other. */
const drawnAt = ({ acts }: CutPiece): string => (acts.some(isSkewed) ? `; skirt end: any angle drawn at ${DRAWN_AT}°` : "");

const sound = (piece: CutPiece, outline: Outline): readonly Drawn[] => {
  const isCrowded = piece.acts.length > MANY_ACTS;
  const said = isCrowded ? "short" : piece.acts.length >= TERSE_FROM ? "terse" : "full";
  const drawn = plan(piece, outline, piece.acts, isCrowded ? DEEP.crowded : DEEP.usual);
  const legend = `${SEEN[piece.kind]} 1:${drawn.scale} · hatched: waste, ${LEAVE_THE_LINE} · ends not to scale${drawnAt(piece)}`;
  const under = Math.max(ENDS_BOTTOM, drawn.bottom);
  const named = doubtsNamed(piece.acts);
  const top = named === "" ? under : under + NAMED.high + NAMED.air;
  return [
    text([CARD_WIDTH / 2, 23.2], legend, { size: 2.5, anchor: "middle" }),
    ...drawn.drawn,
    ...ends(piece, outline),
    ...(named === "" ? [line([[EDGE, top], [CARD_WIDTH - EDGE, top]], WEIGHT.tape)] : doubtNamed(named, under)),
    ...actRows(piece.acts.map((act) => actText(act, piece.unit, said)), remarks(piece.acts, outline.thickness, piece.unit, isCrowded), {
      left: EDGE, right: CARD_WIDTH - EDGE, top, bottom: FOOT_TOP,
    }),
    ...foot(piece, outline, isCrowded),
  ];
};

/** Whether an end may be sawn: not where the readings disagree, or where there is no answer. */
export const isDoubtful = ({ acts: [first], outline }: CutPiece): boolean =>
  first === undefined || first.cells.act === READ_AGAIN || outline === undefined;

/** One tread or riser on a card of its own, as SVG. */
export const cutCard = (piece: CutPiece, facts: CardFacts): string => {
  const says = `Cut card: step ${piece.step}, ${piece.kind}`;
  const { outline } = piece;
  const body = isDoubtful(piece) || outline === undefined ? doubtful(piece) : sound(piece, outline);
  return svg([...head(piece, facts), ...body], CARD_WIDTH, CARD_HEIGHT, says);
};
