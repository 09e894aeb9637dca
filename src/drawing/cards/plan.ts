import { LAID } from "../../functions/act-words";
import type { CutPiece, PieceAct } from "../../functions/cut-pieces";
import type { Act, Side } from "../../solver/fit/acts";
import { cornersOf, type FacePoint, type Outline, type OutlineEnd } from "../../solver/fit/outline";
import { type FreeSpots, freeSpots } from "./free-spots";
import { hatch } from "./hatch";
import { textWidth } from "./letter-widths";
import {
  baseline, type Box, closed, DASH, type Drawn, line, NUMBER_RADIUS, numbered, type Spot, text, textBox, WEIGHT,
} from "./pen";
import { type PlanFrame, planFrame } from "./plan-frame";
import { labelBeside, labelOf, placedLabels } from "./tape-label";
import { gaugedLine, tapes } from "./tapes";

const SIDES = ["left", "right"] as const;
const MIDDLE = 105;
/** Under the far edge, as a line of small letters needs it. */
const UNDER_EDGE = 3.3;
/** A bevel takes off so little that it would lie on the edge: in parts of the height. */
const LEAST_BEVEL = 0.05;
/** From the near edge down to the line that says how the piece lies. */
const LAID_UNDER = 9.4;
const UNDER_SIZES = [3.2, 2.9, 2.5] as const;
const UNDER_ROOM = 106;

type Acts = readonly PieceAct[];
type Of<Kind extends Act["kind"]> = Extract<Act, { readonly kind: Kind }>;

const all = <Kind extends Act["kind"]>(acts: Acts, kind: Kind): readonly { readonly row: PieceAct; readonly act: Of<Kind> }[] =>
  acts.flatMap((row) => (row.act?.kind === kind ? [{ row, act: row.act as Of<Kind> }] : []));

/** The notch of an end, from the bottom up: along the bottom and up the end. */
const notched = (end: Side, { near, far }: OutlineEnd, acts: Acts): readonly FacePoint[] | undefined => {
  const marks = all(acts, "mark the notch").filter(({ act }) => act.end === end);
  const [along, up] = (["along", "up"] as const).map((way) => marks.find(({ act }) => act.way === way)?.act.distance);
  if (along === undefined || up === undefined) return undefined;
  const inward = end === "left" ? 1 : -1;
  const long = Math.hypot(far.along - near.along, far.behind - near.behind);
  const [rise, lean] = [((far.behind - near.behind) / long) * up, ((far.along - near.along) / long) * up];
  return [
    { along: near.along + inward * along, behind: near.behind },
    { along: near.along + inward * along + lean, behind: near.behind + rise },
    { along: near.along + lean, behind: near.behind + rise },
  ];
};

/** The finished face, notches and all, from the left near corner on. */
export const face = (outline: Outline, acts: Acts): readonly FacePoint[] => {
  const { left, right } = outline.ends;
  return cornersOf(outline).flatMap((corner) => {
    const end = corner === left.near ? "left" : corner === right.near ? "right" : undefined;
    if (end === undefined) return [corner];
    const cut = notched(end, outline.ends[end], acts);
    if (cut === undefined) return [corner];
    return end === "right" ? cut : [...cut].reverse();
  });
};

/** What is sawn off at each end, off the notches and behind a scribed back. */
const waste = ({ outline, blank, spot }: PlanFrame, acts: Acts): readonly Drawn[] => {
  const ends = SIDES.flatMap((side) => {
    const { near, heel, ripped } = outline.ends[side];
    const x = blank[side];
    const corners = [near, ...(heel === undefined ? [] : [heel]), ripped];
    const ofEnd: readonly Spot[] = [[x, blank.bottom], ...corners.map(spot), [x, blank.top]];
    const notch = notched(side, outline.ends[side], acts);
    return [...hatch(ofEnd), ...(notch === undefined ? [] : hatch([spot(near), ...notch.map(spot)]))];
  });
  const { left, right } = outline.ends;
  return [...ends, ...hatch([left.far, left.ripped, right.ripped, right.far].map(spot))];
};

/** The blank's ripped edges run on past the waste; where its left end was squared that is drawn too. */
const blankLines = ({ blank }: PlanFrame): readonly Drawn[] => {
  const { left, right, top, bottom, isSquared } = blank;
  const dashed = (...points: readonly Spot[]): Drawn => line(points, WEIGHT.blank, { dash: DASH.blank, part: "blank" });
  const squared = isSquared ? [dashed([left, top], [left, bottom])] : [];
  return [dashed([left, top], [right, top]), dashed([left, bottom], [right, bottom]), ...squared];
};

/** How the piece lies, in the words of the acts: face, near edge, and which edge is at the saw's fence. */
const laid = ({ kind }: CutPiece): { readonly face: string; readonly near: string; readonly fence: string } => {
  const [up = "", near = "", fence = ""] = LAID[kind].split(", ").map((said) => said.toUpperCase());
  return { face: up, near, fence };
};

interface Placed {
  readonly drawn: readonly Drawn[];
  readonly box: Box;
}

const words = (at: Spot, said: string, size: number, isBold: boolean): Placed => {
  const made = text(at, said, { size, isBold, anchor: "middle" });
  return { drawn: [made], box: textBox(made) };
};

const circle = ([x, y]: Spot, number: string): Placed => ({
  drawn: numbered([x, y], number),
  box: { left: x - NUMBER_RADIUS, right: x + NUMBER_RADIUS, top: y - NUMBER_RADIUS, bottom: y + NUMBER_RADIUS },
});

const onEnd = ({ spot, outline: { ends } }: PlanFrame, side: Side, part: number): Spot => {
  const { heel, near, far } = ends[side];
  const [[x1, y1], [x2, y2]] = [spot(heel ?? near), spot(far)];
  return [x1 + (x2 - x1) * part, y1 + (y2 - y1) * part];
};

/** Numbers of the saw cuts, inside the ends they make. */
const sawNumbers = (frame: PlanFrame, acts: Acts, free: FreeSpots): readonly Drawn[] =>
  [...all(acts, "saw end"), ...all(acts, "saw to the heel")].flatMap(({ row, act: { end } }) => {
    const inward = end === "left" ? 1 : -1;
    const tried = [0.5, 0.62, 0.4, 0.7, 0.3].flatMap((part) =>
      [3.2, 4.4, 6].map((inset) => {
        const [x, y] = onEnd(frame, end, part);
        return circle([x + inward * inset, y], row.cells.number);
      }),
    );
    return free.first(tried)?.drawn ?? [];
  });

/** From the blank to the tape of its depth, where that stands beside it. */
const RIP_ASIDE = [1.6, 7.4] as const;
const DEPTH_SIZES = [3.2, 2.8, 2.5] as const;

/** The same beside the blank, where the piece has no room for it. */
const ripBeside = (frame: PlanFrame, acts: Acts, free: FreeSpots): readonly Drawn[] => {
  const [rip] = all(acts, "rip");
  if (rip === undefined) return [];
  const { row } = rip;
  const part = `tape ${row.cells.number}`;
  const { blank } = frame;
  const middle = (blank.top + blank.bottom) / 2;
  const found = SIDES.flatMap((side) => RIP_ASIDE.map((aside) => ({ side, aside })))
    .flatMap(({ side, aside }) => {
      const label = labelBeside(frame, labelOf(row), middle, DEPTH_SIZES, side, aside);
      const x = side === "left" ? blank.left - aside : blank.right + aside;
      const lined = { left: x - 0.8, right: x + 0.8, top: blank.top - 0.8, bottom: blank.bottom + 0.8 };
      return label === undefined ? [] : [{ x, label, lined }];
    })
    .find(({ label, lined }) => free.beside([label.box, lined]));
  if (found === undefined) return [];
  const { x, label } = found;
  const tick = (y: number): Drawn => line([[x - 0.8, y + 0.8], [x + 0.8, y - 0.8]], WEIGHT.blade);
  return [line([[x, blank.top], [x, blank.bottom]], WEIGHT.tape, { part }), tick(blank.top), tick(blank.bottom), ...label.drawn];
};

/** What the blank is ripped to, from edge to edge across the piece, where it has room for that. */
const ripWithin = (frame: PlanFrame, acts: Acts, free: FreeSpots): readonly Drawn[] => {
  const { blank, spot, outline: { ends } } = frame;
  const [rip] = all(acts, "rip");
  if (rip === undefined) return [];
  const [[left], [right]] = [spot(ends.left.near), spot(ends.right.near)];
  const tried = DEPTH_SIZES.flatMap((size) =>
    [0.8, 0.84, 0.76, 0.88, 0.72, 0.66, 0.16, 0.25, 0.3].flatMap((part) => [0.58, 0.5].map((down) => {
      const x = left + (right - left) * part;
      const placed = placedLabels([labelOf(rip.row)], x, blank.top + (blank.bottom - blank.top) * down, size);
      const [from, to] = [x - 0.8, x + 0.8];
      return {
        x, ...placed,
        lines: [
          { left: from, right: to, top: blank.top, bottom: placed.box.top },
          { left: from, right: to, top: placed.box.bottom, bottom: blank.bottom },
        ],
      };
    })),
  );
  const found = free.first(tried);
  const part = `tape ${rip.row.cells.number}`;
  if (found === undefined) return [];
  const { x, box: { top, bottom } } = found;
  const tick = (y: number): Drawn => line([[x - 0.8, y + 0.8], [x + 0.8, y - 0.8]], WEIGHT.blade);
  return [
    line([[x, blank.top], [x, top - 0.6]], WEIGHT.tape, { part }),
    line([[x, bottom + 0.6], [x, blank.bottom]], WEIGHT.tape, { part }),
    tick(blank.top), tick(blank.bottom), ...found.drawn,
  ];
};

/** Takes the room of a slanted line, bit by bit. */
const takeLine = (free: FreeSpots, [x1, y1]: Spot, [x2, y2]: Spot): void => {
  const bits = Math.max(1, Math.ceil(Math.abs(y2 - y1)));
  for (let bit = 0; bit < bits; bit += 1) {
    const [from, to] = [bit / bits, (bit + 1) / bits];
    const [xs, ys] = [[x1 + (x2 - x1) * from, x1 + (x2 - x1) * to], [y1 + (y2 - y1) * from, y1 + (y2 - y1) * to]];
    free.take({ left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) });
  }
};

/** Where a scribed back comes at each end: a tape beside that end, and the number of the line between. */
const depths = (frame: PlanFrame, acts: Acts, free: FreeSpots): readonly Drawn[] => {
  const { spot, outline: { ends } } = frame;
  const marked = all(acts, "mark the depth").flatMap(({ row, act: { end } }) => {
    const inset = end === "left" ? 2 : -2;
    const { near, heel, far } = ends[end];
    const [[x1, y1], [x2, y2]] = [spot(heel ?? near), spot(far)];
    const [from, to]: readonly [Spot, Spot] = [[x1 + inset, y1], [x2 + inset, y2]];
    const inward = Math.sign(inset);
    takeLine(free, from, to);
    const tried = DEPTH_SIZES.flatMap((size) =>
      [0.35, 0.5, 0.65].flatMap((part) => [9, 11, 13, 15].map((aside) =>
        placedLabels([labelOf(row)], x1 + (x2 - x1) * part + inward * (2 + aside), y1 + (y2 - y1) * part, size))),
    );
    const part = `tape ${row.cells.number}`;
    return [
      line([from, to], WEIGHT.tape, { part }),
      line([[to[0] - 0.8, to[1] + 0.8], [to[0] + 0.8, to[1] - 0.8]], WEIGHT.blade),
      line([[from[0] - 1.3, from[1]], [from[0] + 1.3, from[1]]], WEIGHT.hook),
      ...(free.first(tried)?.drawn ?? []),
    ];
  });
  const scribed = all(acts, "scribe").flatMap(({ row }) => {
    const [[x1, y1], [x2, y2]] = [spot(ends.left.far), spot(ends.right.far)];
    const tried = [0.1, 0.14, 0.9, 0.86, 0.2, 0.8, 0.7, 0.6, 0.3, 0.5].flatMap((part) =>
      [3, 4, 5].map((under) => circle([x1 + (x2 - x1) * part, y1 + (y2 - y1) * part + under], row.cells.number)));
    return free.first(tried)?.drawn ?? [];
  });
  return [...marked, ...scribed];
};

/** The bevel behind the top edge: dashed as it is not seen, as far as the stretch that stays square. */
const bevel = (frame: PlanFrame, acts: Acts, free: FreeSpots): readonly Drawn[] => {
  const [found] = all(acts, "bevel");
  if (found === undefined) return [];
  const { spot, outline: { ends, depth } } = frame;
  const stop = (side: Side): number =>
    all(acts, "end the bevel").find(({ act: { end } }) => end === side)?.act.distance ?? 0;
  // The least that parts it from the edge on paper.
  const y = depth - Math.max(found.act.relief, depth * LEAST_BEVEL);
  const from = spot({ along: ends.left.far.along + stop("left"), behind: y });
  const to = spot({ along: ends.right.far.along - stop("right"), behind: y });
  free.take({ left: from[0], right: to[0], top: from[1] - 0.3, bottom: from[1] + 0.3 });
  const tried = [0.9, 0.12, 0.86, 0.16, 0.8, 0.2].flatMap((part) =>
    [3, 3.6, 4.4].map((under) => circle([from[0] + (to[0] - from[0]) * part, from[1] + under], found.row.cells.number)));
  return [line([from, to], WEIGHT.blade, { dash: DASH.blank, part: "bevel" }), ...(free.first(tried)?.drawn ?? [])];
};

/** From one line of small letters to the next. */
const LINE = 3.1;

/** Which edge is at the saw's fence, along that edge, on two lines where one is too long. */
const atTheFence = (piece: CutPiece, { blank, spot, outline: { ends } }: PlanFrame, free: FreeSpots): Placed | undefined => {
  const { fence } = laid(piece);
  const [[left, leftY], [right, rightY]] = [spot(ends.left.far), spot(ends.right.far)];
  const slope = (rightY - leftY) / (right - left);
  const twoLines = fence.split(/ (?=AT )/);
  const tried = [[fence], twoLines].flatMap((lines) => [2.6, 2.5].flatMap((size) => [0, 1.6, 3].flatMap((more) =>
    [0.5, 0.45, 0.4, 0.35, 0.3, 0.55, 0.6, 0.65, 0.25].map((part): Placed => {
      const half = Math.max(...lines.map((one) => textWidth(one, size, false))) / 2;
      const x = left + (right - left) * part;
      // Under the lower of the two places between which it stands, where the back is not parallel to the blank.
      const over = Math.max(blank.top, ...[x - half, x + half].map((at) => leftY + (at - left) * slope));
      const placed = lines.map((one, line) => words([x, over + UNDER_EDGE + more + line * LINE], one, size, false));
      const boxes = placed.map(({ box }) => box);
      return {
        drawn: placed.flatMap(({ drawn }) => drawn),
        box: {
          left: x - half, right: x + half, top: Math.min(...boxes.map(({ top }) => top)),
          bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
        },
      };
    }))));
  return free.first(tried);
};

/** How the piece lies: on the piece where there is room for it, and else under it. */
const written = (piece: CutPiece, frame: PlanFrame, free: FreeSpots, edge: Placed | undefined): readonly Drawn[] => {
  const { blank, spot, outline: { ends } } = frame;
  const { face: up, near, fence } = laid(piece);
  const [[left], [right]] = [spot(ends.left.far), spot(ends.right.far)];
  const faces = [4.6, 3.8, 3].flatMap((size) => [0.42, 0.35, 0.3, 0.5, 0.6].flatMap((part) => [0.5, 0.6, 0.4].map((down) =>
    words([left + (right - left) * part, baseline(blank.top + (blank.bottom - blank.top) * down, size)], up, size, true))));
  const faced = free.first(faces);
  const missing = [...(faced === undefined ? [up] : []), ...(edge === undefined ? [fence] : [])];
  const under = [near, ...missing].join(" · ");
  const size = UNDER_SIZES.find((one) => textWidth(under, one, true) <= UNDER_ROOM) ?? Math.min(...UNDER_SIZES);
  return [
    ...(edge?.drawn ?? []), ...(faced?.drawn ?? []),
    text([MIDDLE, blank.bottom + LAID_UNDER], under, { size, isBold: true, anchor: "middle" }),
  ];
};

/** The piece to scale as it lies at the saw, and where each act happens; `bottom` is where the drawing ends. */
export const plan = (
  piece: CutPiece, outline: Outline, acts: Acts, high: number,
): { readonly drawn: readonly Drawn[]; readonly scale: number; readonly bottom: number } => {
  const frame = planFrame(outline, acts, piece.unit, high);
  const shape = face(outline, acts).map(frame.spot);
  const free = freeSpots(shape);
  const bottom = frame.blank.bottom + LAID_UNDER;
  const bevelled = bevel(frame, acts, free);
  // What runs across the piece first: all else finds room beside it.
  const deep = depths(frame, acts, free);
  const taped = [...gaugedLine(frame, acts, free), ...tapes(frame, acts, free)];
  const ripped = ripWithin(frame, acts, free);
  const edge = atTheFence(piece, frame, free);
  const drawn = [
    ...waste(frame, acts),
    ...blankLines(frame),
    closed(shape, WEIGHT.piece, { part: "piece" }),
    ...bevelled,
    ...deep,
    ...taped,
    ...sawNumbers(frame, acts, free),
    ...(ripped.length > 0 ? ripped : ripBeside(frame, acts, free)),
    ...written(piece, frame, free, edge),
  ];
  return { drawn, scale: frame.scale, bottom: bottom + 1 };
};
