import type { Effort } from "../shelf/effort";
import { bestWithin, clearFronts, emptyFront, type Front, itemsAt, mostWorth, offered, worthAt } from "./front";
import { isWhole, type Option, type Side, type View } from "./view";
import type { Pattern, Yard } from "./yard";

type Amounts = ArrayLike<number>;

/** So many of each kind, at so much worth. */
export interface Offered {
  readonly worth: Amounts;
  readonly wanted: Amounts;
}

/**
 * The most worth a stretch holds, or more: strips beside one another count as one long one, and where the widths are too many a piece may
 * lie in two strips. Too high is safe, too low would not be.
 */
export interface StretchWorth {
  readonly value: number;
  /** Undefined where nothing is worth anything. */
  readonly option: Option | undefined;
  readonly counts: () => Int32Array;
  readonly pattern: () => Pattern;
}

const NO_STRIPS: Pattern = { way: "rip", strips: [] };

/** What the stretches are priced with. */
interface Pricing extends Offered {
  readonly yard: Yard;
  readonly view: View;
  readonly effort: Effort;
}

const tally = (kinds: number, held: readonly number[]): Int32Array => {
  const counts = new Int32Array(kinds);
  for (const kind of held) counts[kind]! += 1;
  return counts;
};

const offerKind = ({ view, wanted, worth, effort }: Pricing, front: Front, kind: number, room: number): Front => {
  let last = front;
  const most = Math.min(wanted[kind]!, Math.floor(room / view.along[kind]!));
  for (let copy = 0; copy < most; copy += 1) last = offered(last, kind, view.along[kind]!, worth[kind]!, room, effort);
  return last;
};

/** Lays pieces into strips so wide, the longest first; what finds no room stays out. */
const inStrips = ({ view }: Pricing, held: readonly number[], widths: readonly number[], room: number): number[][] => {
  const strips = widths.map((): number[] => []);
  const left = widths.map(() => room);
  const widestFirst = [...held].sort((one, other) => view.across[other]! - view.across[one]! || view.along[other]! - view.along[one]!);
  for (const kind of widestFirst) {
    // the narrowest strip that is wide enough and has room, of like strips the fullest
    let chosen = -1;
    for (let at = 0; at < widths.length; at += 1) {
      if (widths[at]! < view.across[kind]! || left[at]! < view.along[kind]!) continue;
      if (chosen < 0 || widths[at]! < widths[chosen]! || (widths[at] === widths[chosen] && left[at]! < left[chosen]!)) chosen = at;
    }
    if (chosen < 0) continue;
    strips[chosen]!.push(kind);
    left[chosen]! -= view.along[kind]!;
  }
  return strips.filter((strip) => strip.length > 0);
};

const stripWidths = ({ widths, counts }: Side): number[] => widths.flatMap((width, at) => Array.from({ length: counts[at]! }, () => width));

/** The best of the strips listed; pieces in so many strips of at least their width, no piece twice. */
const bySides = (pricing: Pricing, room: number, fitting: readonly number[], options: readonly Option[]): StretchWorth | undefined => {
  const { yard, view } = pricing;
  const sides = options.flatMap((option) => (typeof option.into === "string" ? [] : [{ option, side: option.into }]));
  if (sides[0] === undefined) return undefined;
  const byWidth = sides[0].side.widths.map((width) => fitting.filter((kind) => view.across[kind] === width));
  let best = { value: 0, front: emptyFront, ...sides[0] };
  // the next side begins as the last did
  const fronts: Front[] = [];
  let last: readonly number[] = [];
  for (const { option, side } of sides) {
    let same = 0;
    while (same < last.length && last[same] === side.counts[same]) same += 1;
    fronts.length = same;
    let strips = 0;
    for (let at = 0; at < side.counts.length; at += 1) {
      strips += side.counts[at]!;
      if (at < same) continue;
      let front = fronts[at - 1] ?? emptyFront;
      if (strips > 0) for (const kind of byWidth[at]!) front = offerKind(pricing, front, kind, strips * room);
      fronts.push(front);
    }
    last = side.counts;
    const front = fronts[fronts.length - 1] ?? emptyFront;
    const value = mostWorth(front);
    if (value > best.value) best = { value, front, option, side };
  }
  const { value, front, option, side } = best;
  const held = itemsAt(front, front.count - 1);
  return {
    value, option,
    counts: () => tally(yard.kinds.length, held),
    pattern: () => ({ way: view.way, strips: inStrips(pricing, held, stripWidths(side), room) }),
  };
};

/** A strip led by its widest piece, filled up with others no wider. */
interface Led {
  readonly across: number;
  readonly worth: number;
  readonly held: () => number[];
}

const ledStrips = (pricing: Pricing, fitting: readonly number[], room: number): Led[] => {
  const { yard, view, worth, wanted, effort } = pricing;
  const found: Led[] = [];
  let front = emptyFront;
  for (const kind of fitting) {
    const along = view.along[kind]!;
    for (let copy = 0; copy < wanted[kind]!; copy += 1) {
      if (isWhole(yard, kind)) {
        found.push({ across: view.across[kind]!, worth: worth[kind]!, held: () => [kind] });
        continue;
      }
      const behind = front;
      const at = bestWithin(behind, room - along);
      found.push({
        across: view.across[kind]!, worth: worth[kind]! + worthAt(behind, at), held: () => [kind, ...itemsAt(behind, at)],
      });
      front = offered(front, kind, along, worth[kind]!, room, effort);
    }
  }
  return found;
};

/** Strips side by side, each led by another piece; what follows a leader may stand behind another too. */
const byLeaders = (pricing: Pricing, roomAlong: number, room: number, fitting: readonly number[], option: Option): StretchWorth => {
  const { yard, view, effort } = pricing;
  const led = ledStrips(pricing, fitting, roomAlong);
  let front = emptyFront;
  led.forEach((strip, at) => (front = offered(front, at, strip.across, strip.worth, room, effort)));
  const strips = itemsAt(front, front.count - 1).map((at) => led[at]!.held());
  return {
    option,
    value: mostWorth(front),
    counts: () => tally(yard.kinds.length, strips.flat()),
    pattern: () => ({ way: view.way, strips }),
  };
};

/** One strip as wide as the board, of what wants its whole width and anything narrower. */
const byWhole = (pricing: Pricing, room: number, fitting: readonly number[], option: Option): StretchWorth => {
  const front = fitting.reduce((last, kind) => offerKind(pricing, last, kind, room), emptyFront);
  const held = itemsAt(front, front.count - 1);
  return {
    option,
    value: mostWorth(front),
    counts: () => tally(pricing.yard.kinds.length, held),
    pattern: () => ({ way: pricing.view.way, strips: [held] }),
  };
};

/** Work of a stretch besides what is offered. */
const STRETCH_STEPS = 200;

/** The most worth in one strip, as wide as given. */
export const stripWorth = (
  yard: Yard, option: Option, { worth, wanted }: Offered, stretch: number, width: number, effort: Effort,
): StretchWorth => {
  const { view } = option;
  const takes = yard.takes[yard.stretches[stretch]!.class]!;
  const room = view.roomAlong[stretch]!;
  const fitting = view.order.filter((kind) => takes[kind]! && !isWhole(yard, kind) && worth[kind]! > 0 && view.across[kind]! <= width);
  clearFronts();
  effort.left -= STRETCH_STEPS;
  return byWhole({ yard, view, worth, wanted, effort }, room, fitting, option);
};

const oneWay = (pricing: Pricing, stretch: number, options: readonly Option[]): readonly StretchWorth[] => {
  const { yard, view, worth, wanted } = pricing;
  const takes = yard.takes[yard.stretches[stretch]!.class]!;
  const along = view.roomAlong[stretch]!;
  const across = view.roomAcross[stretch]!;
  const fitting = view.order.filter(
    (kind) => takes[kind]! && wanted[kind]! > 0 && worth[kind]! > 0 && view.along[kind]! <= along && view.across[kind]! <= across,
  );
  if (fitting.length === 0) return [];
  const sized = view.way === "rip" ? fitting.filter((kind) => !isWhole(yard, kind)) : fitting;
  const led = options.find(({ into }) => into === "led");
  const whole = options.find(({ into }) => into === "whole");
  const sides = bySides(pricing, along, sized, options);
  return [
    ...(sides === undefined ? [] : [sides]),
    ...(led === undefined ? [] : [byLeaders(pricing, along, across, sized, led)]),
    ...(whole === undefined ? [] : [byWhole(pricing, along, fitting, whole)]),
  ];
};

/** What a stretch is worth at most for the worths offered, divided by the best of the options. */
export const stretchWorth = (
  yard: Yard, options: readonly Option[], { worth, wanted }: Offered, stretch: number, effort: Effort,
): StretchWorth => {
  clearFronts();
  effort.left -= STRETCH_STEPS;
  return [...new Set(options.map(({ view }) => view))]
    .flatMap((view) => oneWay({ yard, view, worth, wanted, effort }, stretch, options.filter((option) => option.view === view)))
    .reduce<StretchWorth>((best, each) => (each.value > best.value ? each : best), {
      value: 0,
      option: undefined,
      counts: () => new Int32Array(yard.kinds.length),
      pattern: () => NO_STRIPS,
    });
};
