import type { PieceAct } from "../../functions/cut-pieces";
import type { Act, Edge, Hook, Side } from "../../solver/fit/acts";
import type { FacePoint, OutlineEnd } from "../../solver/fit/outline";
import type { FreeSpots } from "./free-spots";
import { type Drawn, line, NUMBER_RADIUS, numbered, WEIGHT } from "./pen";
import type { PlanFrame } from "./plan-frame";
import { type Label, labelBeside, labelOf, type PlacedLabels, placedLabels } from "./tape-label";

type MarkAct = Extract<Act, { readonly kind: "mark" }>;
interface Marked {
  readonly row: PieceAct;
  readonly act: MarkAct;
}

/** From an edge to the line of its tape, in millimetres; the gauged line's lies on it. */
const ASIDE = 4.4;
const TICK = 0.8;
const HOOK = 1.3;
const HEAVY = 3;
/** Between two marks of a burnt tape's bar. */
const BURNT_APART = 1.1;
const AIR = 1;
/** From a line up to the middle of figures that stand on it. */
const OVER = 3.2;
/** Between the edge of the blank and the lines that lead to a tape along it. */
const EDGE_AIR = 0.6;
const SIZES = [3.4, 3, 2.7, 2.5] as const;
const PLACES = [0.5, 0.42, 0.58, 0.34, 0.66] as const;

/** On an end's sawn line, so far behind the nose. */
const onEnd = ({ near, ripped }: OutlineEnd, behind: number): FacePoint => ({
  along: near.along + ((ripped.along - near.along) * (behind - near.behind)) / (ripped.behind - near.behind), behind,
});

const placeOf = ({ outline }: PlanFrame, { act: { mark } }: Marked): FacePoint => {
  const { near, heel, ripped } = outline.ends[mark.end];
  if (mark.place === "heel") return heel ?? near;
  return mark.place === "back" || mark.place === "top" ? ripped : near;
};

/** Where the tape begins, and how it lies. */
const hookX = (frame: PlanFrame, { end, isSquared }: Hook, at: FacePoint): number =>
  isSquared ? frame.blank.left : frame.spot(onEnd(frame.outline.ends[end], at.behind))[0];

const isNear = (along: Edge): boolean => along === "nose" || along === "bottom";

const lineY = ({ blank, spot }: PlanFrame, along: Edge, at: FacePoint): number =>
  along === "gauged line" ? spot(at)[1] : isNear(along) ? blank.bottom + ASIDE : blank.top - ASIDE;

/** A bar where the tape begins: with a heavy start where it is hooked, with two marks beside it where an inch is burnt. */
const begun = (x: number, y: number, way: number, isBurnt: boolean, part: string): readonly Drawn[] => [
  line([[x, y - HOOK], [x, y + HOOK]], WEIGHT.hook, { part: `${part} hook` }),
  ...(isBurnt
    ? [1, 2].map((place) => {
        const at = x + way * BURNT_APART * place;
        return line([[at, y - TICK], [at, y + TICK]], WEIGHT.blade);
      })
    : [line([[x, y], [x + way * HEAVY, y]], WEIGHT.hook)]),
];

/** A line of tape on paper. */
interface TapeLine {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly ticks: readonly number[];
  /** Whether it lies on the piece: there it shares the room with what else stands on it. */
  readonly isInside: boolean;
}

/** What is written of a line: `on` it, so that it is broken there, or elsewhere. */
interface Written {
  readonly on: PlacedLabels | undefined;
  readonly elsewhere: readonly PlacedLabels[];
}

const onLine = (labels: readonly Label[], { from, to, y, ticks, isInside }: TapeLine, free: FreeSpots): Written | undefined => {
  const reach = Math.abs(to - from) - HEAVY - 2 * AIR;
  const tried = (at: number): readonly PlacedLabels[] =>
    SIZES.flatMap((size) => PLACES.map((place) => placedLabels(labels, from + (to - from) * place, at, size)));
  const fits = tried(y).filter(({ box }) =>
    box.right - box.left <= reach && !ticks.some((x) => x > box.left - TICK - AIR && x < box.right + TICK + AIR));
  const on = isInside ? free.first(fits) : fits[0];
  if (on !== undefined) return { on, elsewhere: [] };
  // Over the line where it lies too near the nose.
  const over = isInside ? free.first(tried(y - OVER)) : undefined;
  return over === undefined ? undefined : { on: undefined, elsewhere: [over] };
};

/**
 * One figure on its line. Of two the first stands beside the blank, where its tape begins: together they would be taken for a length
 * between the two marks. Where there is no room beside it they stand together, each behind its number.
 */
const written = (frame: PlanFrame, labels: readonly Label[], tape: TapeLine, free: FreeSpots): Written => {
  const [first, ...others] = labels;
  if (first === undefined) return { on: undefined, elsewhere: [] };
  const alone = others.length === 0 ? onLine(labels, tape, free) : undefined;
  if (alone !== undefined) return alone;
  const beside = (label: Label, side: Side): readonly PlacedLabels[] => {
    const found = labelBeside(frame, label, tape.y, SIZES, side, tape.isInside && side === "right" ? 2 * NUMBER_RADIUS + AIR : 0);
    return found === undefined || !free.beside([found.box]) ? [] : [found];
  };
  const left = beside(first, "left");
  if (others.length === 0) return { on: undefined, elsewhere: left.length > 0 ? left : beside(first, "right") };
  const together = left.length === 0 ? onLine(labels, tape, free) : undefined;
  if (together !== undefined) return together;
  const rest = onLine(others, tape, free) ?? { on: undefined, elsewhere: others.flatMap((label) => beside(label, "right")) };
  return { on: rest.on, elsewhere: [...left, ...rest.elsewhere] };
};

const tapeLine = (frame: PlanFrame, marks: readonly Marked[], hook: Hook): TapeLine | undefined => {
  const places = marks.map((each) => placeOf(frame, each));
  const [at] = places;
  if (at === undefined) return undefined;
  const from = hookX(frame, hook, at);
  const ticks = places.map((place) => frame.spot(place)[0]);
  const to = ticks.some((x) => x < from) ? Math.min(...ticks) : Math.max(...ticks);
  return { from, to, ticks, y: lineY(frame, hook.along, at), isInside: hook.along === "gauged line" };
};

/** One line of tape with all marks on it: broken for its figures, a tick at each mark. */
const tape = (frame: PlanFrame, marks: readonly Marked[], free: FreeSpots): readonly Drawn[] => {
  const [first] = marks;
  const drawn = first === undefined ? undefined : tapeLine(frame, marks, first.act.hook);
  if (first === undefined || drawn === undefined) return [];
  const { from, to, y, ticks, isInside } = drawn;
  const { hook: { along }, isBurnt } = first.act;
  const part = `tape ${marks.map(({ row }) => row.cells.number).join(" ")}`;
  const { on, elsewhere } = written(frame, marks.map(({ row }) => labelOf(row)), drawn, free);
  const [one, other] = [Math.min(from, to), Math.max(from, to)];
  const stretches: readonly (readonly [number, number])[] =
    on === undefined ? [[one, other]] : [[one, on.box.left - AIR], [on.box.right + AIR, other]];
  if (isInside) free.take({ left: one, right: other, top: y - TICK, bottom: y + TICK });
  const edge = isNear(along) ? frame.blank.bottom + EDGE_AIR : frame.blank.top - EDGE_AIR;
  const witness = (x: number): Drawn => line([[x, edge], [x, y + Math.sign(y - edge) * HOOK]], WEIGHT.tape);
  return [
    ...(isInside ? [] : [from, ...ticks].map(witness)),
    ...stretches.map(([begin, end]) => line([[begin, y], [end, y]], WEIGHT.tape, { part })),
    ...begun(from, y, to < from ? -1 : 1, isBurnt, part),
    ...ticks.map((x, place): Drawn =>
      line([[x - TICK, y + TICK], [x + TICK, y - TICK]], WEIGHT.blade, { part: `tick ${marks[place]?.row.cells.number ?? ""}` }),
    ),
    ...[...(on === undefined ? [] : [on]), ...elsewhere].flatMap((label) => label.drawn),
  ];
};

/** Every mark where the tape lies for it: below along the nose, above along the back, within on the gauged line. */
export const tapes = (frame: PlanFrame, acts: readonly PieceAct[], free: FreeSpots): readonly Drawn[] => {
  const marks = acts.flatMap((row) => (row.act?.kind === "mark" ? [{ row, act: row.act }] : []));
  const edges = [...new Set(marks.map(({ act }) => act.hook.along))];
  return edges.flatMap((edge) => tape(frame, marks.filter(({ act }) => act.hook.along === edge), free));
};

/** The number of the gauged line, at the blank's right end. */
export const gaugedLine = (frame: PlanFrame, acts: readonly PieceAct[], free: FreeSpots): readonly Drawn[] => {
  const gauge = acts.find(({ act }) => act?.kind === "gauge");
  const heel = frame.outline.ends.left.heel ?? frame.outline.ends.right.heel;
  if (gauge === undefined || heel === undefined) return [];
  const y = frame.spot(heel)[1];
  const { right } = frame.blank;
  free.beside([{ left: right, right: right + 1 + 2 * NUMBER_RADIUS, top: y - NUMBER_RADIUS, bottom: y + NUMBER_RADIUS }]);
  return [line([[right - 1, y], [right + 1, y]], WEIGHT.blade), ...numbered([right + 1 + NUMBER_RADIUS, y], gauge.cells.number)];
};
