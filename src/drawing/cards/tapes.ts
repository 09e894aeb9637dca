import type { PieceAct } from "../../functions/fit/cut-pieces";
import type { Act, Edge, Hook } from "../../solver/fit/acts";
import type { FacePoint, OutlineEnd } from "../../solver/fit/outline";
import type { FreeSpots } from "./free-spots";
import { type Drawn, line, NUMBER_RADIUS, numbered, WEIGHT } from "./pen";
import type { PlanFrame } from "./plan-frame";
import { labelOf, type PlacedLabels, placedLabels } from "./tape-label";

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
const BESIDE = 3.2;
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

const lineY = ({ blank, spot }: PlanFrame, along: Edge, at: FacePoint): number =>
  along === "gauged line" ? spot(at)[1] : along === "nose" || along === "bottom" ? blank.bottom + ASIDE : blank.top - ASIDE;

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

/** One line of tape with all marks on it: broken for its figures, a tick at each mark. */
const tape = (frame: PlanFrame, marks: readonly Marked[], free: FreeSpots): readonly Drawn[] => {
  const [first] = marks;
  if (first === undefined) return [];
  const { hook, isBurnt } = first.act;
  const places = marks.map((each) => placeOf(frame, each));
  const [at] = places;
  if (at === undefined) return [];
  const y = lineY(frame, hook.along, at);
  const from = hookX(frame, hook, at);
  const ticks = places.map((place) => frame.spot(place)[0]);
  const way = ticks[0] !== undefined && ticks[0] < from ? -1 : 1;
  const to = way < 0 ? Math.min(...ticks) : Math.max(...ticks);
  const part = `tape ${marks.map(({ row }) => row.cells.number).join(" ")}`;
  const labels = marks.map(({ row }) => labelOf(row));
  const reach = Math.abs(to - from) - HEAVY - 2 * AIR;
  const tried = SIZES.flatMap((size) => PLACES.map((place) => placedLabels(labels, from + (to - from) * place, y, size)));
  const isClear = ({ box }: PlacedLabels): boolean =>
    box.right - box.left <= reach && !ticks.some((x) => x > box.left - TICK - AIR && x < box.right + TICK + AIR);
  const fits = tried.filter(isClear);
  const isInside = hook.along === "gauged line";
  // On the line, or beside it where the line lies too near the nose.
  const beside = isInside ? SIZES.flatMap((size) => PLACES.map((place) => placedLabels(labels, from + (to - from) * place, y - BESIDE, size))) : [];
  const on = isInside ? free.first(fits) : fits[0];
  const label = on ?? free.first(beside);
  const [one, other] = [Math.min(from, to), Math.max(from, to)];
  const middle = on === undefined ? [] : [on.box.left - AIR, on.box.right + AIR];
  const stretches: readonly (readonly [number, number])[] =
    middle[0] === undefined || middle[1] === undefined ? [[one, other]] : [[one, middle[0]], [middle[1], other]];
  if (isInside) free.take({ left: one, right: other, top: y - TICK, bottom: y + TICK });
  const witness = (x: number, edge: number): Drawn => line([[x, edge], [x, y + Math.sign(y - edge) * HOOK]], WEIGHT.tape);
  const edges = isInside
    ? []
    : [from, ...ticks].map((x) => witness(x, hook.along === "nose" || hook.along === "bottom" ? frame.blank.bottom + 0.6 : frame.blank.top - 0.6));
  return [
    ...edges,
    ...stretches.map(([begin, end]) => line([[begin, y], [end, y]], WEIGHT.tape, { part })),
    ...begun(from, y, way, isBurnt, part),
    ...ticks.map((x, place): Drawn =>
      line([[x - TICK, y + TICK], [x + TICK, y - TICK]], WEIGHT.blade, { part: `tick ${marks[place]?.row.cells.number ?? ""}` }),
    ),
    ...(label?.drawn ?? []),
  ];
};

/** Every mark where the tape lies for it: below along the nose, above along the back, within on the gauged line. */
export const tapes = (frame: PlanFrame, acts: readonly PieceAct[], free: FreeSpots): readonly Drawn[] => {
  const marks = acts.flatMap((row) => (row.act?.kind === "mark" ? [{ row, act: row.act }] : []));
  const edges = [...new Set(marks.map(({ act }) => act.hook.along))];
  return edges.flatMap((edge) => tape(frame, marks.filter(({ act }) => act.hook.along === edge), free));
};

/** The number of the gauged line, at the blank's right end. */
export const gaugedLine = (frame: PlanFrame, acts: readonly PieceAct[]): readonly Drawn[] => {
  const gauge = acts.find(({ act }) => act?.kind === "gauge");
  const heel = frame.outline.ends.left.heel ?? frame.outline.ends.right.heel;
  if (gauge === undefined || heel === undefined) return [];
  const y = frame.spot(heel)[1];
  const { right } = frame.blank;
  return [line([[right - 1, y], [right + 1, y]], WEIGHT.blade), ...numbered([right + 1 + NUMBER_RADIUS, y], gauge.cells.number)];
};
