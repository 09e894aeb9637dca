import { Exact } from "../length/exact";
import { type Length, lengthOf, type Unit } from "../length/length";
import { finishedRises } from "./finished-rises";
import { leastPacking, packedRises, type PackedFlight } from "./least-packing";
import { risePlaces, type RisePlaces } from "./rise-places";

export interface ShimmedStair {
  /** Sub-tread to sub-tread, bottom first. */
  readonly roughRises: readonly Length[];
  readonly treadThickness: Length;
  readonly lowerBuildUp: Length;
  readonly upperBuildUp: Length;
}

export interface ShimLimits {
  /** How far apart the finished rises may be; undefined: as near to one another as they come. */
  readonly spread: Length | undefined;
  /** Most packing under a sub-tread; undefined: any. */
  readonly most: Length | undefined;
  /** What the floors may still be raised by. */
  readonly lowerMore: Length;
  readonly upperMore: Length;
  readonly maxRise: Length | undefined;
  /** Packing comes in divisions of the unit. */
  readonly tape: number;
  readonly unit: Unit;
}

/** What of the limits would have to be, the others as given, for the spread to be reached. */
export interface WaysOut {
  readonly most?: Length;
  readonly lowerMore?: Length;
  readonly upperMore?: Length;
  /** Where neither floor does alone. */
  readonly both?: { readonly lowerMore: Length; readonly upperMore: Length };
}

export interface ShimPlan {
  readonly asFound: readonly Length[];
  /** Under each surface, from the lower floor to the upper one: one more than there are rises. */
  readonly packing: readonly Length[];
  readonly rises: readonly Length[];
  readonly total: Length;
  readonly spreadFound: Length;
  readonly spread: Length;
  /** Whether no rise is over the greatest and the spread asked for is reached; undefined where the least was asked for. */
  readonly isReached: boolean | undefined;
  readonly hasRiseOver: boolean;
  readonly waysOut: WaysOut | undefined;
}

/** A flight in places. Its lengths are times the divisions of the tape, so that a division is the unit itself. */
interface Flight extends PackedFlight {
  readonly places: RisePlaces;
  readonly unit: Exact;
  /** Place over which no rise may be. */
  readonly highest: number;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

const spreadOf = (flight: Flight, packing: readonly number[]): Exact => {
  const rises = packedRises(flight, packing);
  return flight.places.heightAt(Math.max(...rises)).minus(flight.places.heightAt(Math.min(...rises)));
};

/** A hair of a division, by which numbers may have been rounded. */
const HAIR = 1e-6;

/**
 * Between two surfaces the mean of the rises is no less than with the lower one packed all it may be and the upper one not at all, and no
 * more than the other way round. So the tallest rise is at least `tallest`, and the lowest at most `lowest`, whatever is packed.
 */
const bounds = ({ places, unit, rises, most }: Flight): { readonly tallest: Exact; readonly lowest: Exact } => {
  const heights = [0];
  for (const rise of rises) heights.push((heights[heights.length - 1] ?? 0) + places.heightAt(rise).div(unit).toNumber());
  let [tallest, lowest] = [-Infinity, Infinity];
  for (const [from, below] of heights.entries()) {
    for (let to = from + 1; to < heights.length; to++) {
      const height = (heights[to] ?? 0) - below;
      tallest = Math.max(tallest, (height - (most[from] ?? 0)) / (to - from));
      lowest = Math.min(lowest, (height + (most[to] ?? 0)) / (to - from));
    }
  }
  return { tallest: unit.times(tallest - HAIR), lowest: unit.times(lowest + HAIR) };
};

/** More than any worth: what a division too many under a surface counts. */
const FORBIDDEN = 1e9;

type Worth = (packing: readonly number[]) => number;

/** Where a function without dips falls no further: the first whole number up to `last` of its least value. */
const firstLeast = (last: number, cost: (place: number) => number): number => {
  let [first, end] = [0, last];
  while (first < end) {
    const middle = Math.floor((first + end) / 2);
    if (cost(middle) > cost(middle + 1)) first = middle + 1;
    else end = middle;
  }
  return first;
};

/**
 * Of all packings with the rises within a spread, the one least in what `worth` counts, then in spread; undefined where there is none.
 * The lowest rise of any stands at a place between the bounds, and of its band the least packing is least at every surface. From one place
 * to that a division higher each surface is the greatest of sums that change evenly, so that a worth which adds or compares them has no
 * dips and need not be tried everywhere.
 */
const leastWithin = (flight: Flight, spread: Exact, worth: Worth): readonly number[] | undefined => {
  const { places, highest, most, division } = flight;
  const { tallest, lowest } = bounds(flight);
  const top = places.within(spread);
  const [from, to] = [places.notAbove(tallest.minus(spread)), places.notAbove(lowest)];
  const unlimited = { ...flight, most: most.map(() => Infinity) };
  const packed = (low: number): readonly number[] | undefined => leastPacking(unlimited, { low, high: Math.min(top(low), highest) });
  const cost = (packing: readonly number[] | undefined): number =>
    (packing === undefined
      ? Infinity
      : worth(packing) + FORBIDDEN * Math.max(0, ...packing.map((under, surface) => under - (most[surface] ?? 0))));
  let best: readonly number[] | undefined;
  for (let start = from; start < from + division && start <= to; start++) {
    const last = Math.floor((to - start) / division);
    const at = (place: number): readonly number[] | undefined => packed(start + place * division);
    const first = firstLeast(last, (place) => cost(at(place)));
    const least = cost(at(first));
    if (least >= FORBIDDEN || (best !== undefined && least > worth(best))) continue;
    for (let place = first; place <= last; place++) {
      const packing = at(place);
      if (packing === undefined || cost(packing) > least) break;
      const isLess = best === undefined || worth(packing) < worth(best) || spreadOf(flight, packing).lt(spreadOf(flight, best));
      if (isLess) best = packing;
    }
  }
  return best;
};

/** The lowest place that must be allowed for the rises to be no lower than `low`, where `high` is enough and `under` is not. */
const highestNeeded = (flight: Flight, low: number, under: number, high: number): number => {
  let [short, enough] = [under, high];
  while (enough - short > 1) {
    const middle = Math.floor((short + enough) / 2);
    if (leastPacking(flight, { low, high: middle }) === undefined) short = middle;
    else enough = middle;
  }
  return enough;
};

/**
 * The least spread that packing reaches; undefined where a rise is over the highest whatever is packed. From the tallest possible lowest
 * rise down, the highest that must be allowed comes down too.
 */
const leastSpread = (flight: Flight): Exact | undefined => {
  const { places } = flight;
  if (leastPacking(flight, { low: -Infinity, high: flight.highest }) === undefined) return undefined;
  const { tallest, lowest } = bounds(flight);
  const under = places.notAbove(tallest) - 1;
  let high = flight.highest;
  let best: Exact | undefined;
  for (let low = places.notAbove(lowest); best === undefined || tallest.minus(places.heightAt(low)).lt(best); low--) {
    const packing = leastPacking(flight, { low, high });
    if (packing === undefined) continue;
    const needed = highestNeeded(flight, low, under, Math.max(...packedRises(flight, packing)));
    const spread = spreadOf(flight, leastPacking(flight, { low, high: needed }) ?? packing);
    if (best === undefined || spread.lt(best)) best = spread;
    high = needed - 1;
  }
  return best;
};

/** What would reach a spread: more under the sub-treads, or a floor raised, by no more than a rise. */
const waysOut = (flight: Flight, spread: Exact, inTape: (divisions: number) => Length): WaysOut => {
  const { rises, most, division } = flight;
  const last = rises.length;
  const rise = Math.floor(Math.max(...rises) / division);
  const raised = (lower: number, upper: number): Flight => ({
    ...flight, most: most.map((one, surface) => (surface === 0 ? Math.max(one, lower) : surface === last ? Math.max(one, upper) : one)),
  });
  const needed = (changed: Flight, worth: Worth): number | undefined => {
    const packing = leastWithin(changed, spread, worth);
    return packing && worth(packing);
  };
  const lowest = (packing: readonly number[]): number => packing[0] ?? 0;
  const highest = (packing: readonly number[]): number => packing[last] ?? 0;
  const under = needed(
    { ...flight, most: most.map((one, surface) => (surface === 0 || surface === last ? one : Infinity)) },
    (packing) => Math.max(0, ...packing.slice(1, -1)),
  );
  const lower = needed(raised(rise, 0), lowest);
  const upper = needed(raised(0, rise), highest);
  const both =
    lower === undefined && upper === undefined
      ? leastWithin(raised(rise, rise), spread, (packing) => lowest(packing) + highest(packing))
      : undefined;
  return {
    ...(under === undefined ? {} : { most: inTape(under) }),
    ...(lower === undefined ? {} : { lowerMore: inTape(lower) }),
    ...(upper === undefined ? {} : { upperMore: inTape(upper) }),
    ...(both === undefined ? {} : { both: { lowerMore: inTape(lowest(both)), upperMore: inTape(highest(both)) } }),
  };
};

const flightOf = (found: readonly Length[], { most, lowerMore, upperMore, maxRise, tape, unit }: ShimLimits): Flight => {
  const one = lengthOf(1, unit);
  const scaled = found.map((rise) => rise.times(tape));
  const places = risePlaces(scaled, one);
  const divisions = (length: Length): number => length.times(tape).divToInt(one).toNumber();
  const under = most === undefined ? Infinity : divisions(most);
  return {
    places, unit: one, rises: places.found, division: places.division,
    most: [divisions(lowerMore), ...found.slice(1).map(() => under), divisions(upperMore)],
    highest: maxRise === undefined ? Infinity : places.notAbove(maxRise.times(tape)),
  };
};

interface Planned {
  readonly packing: readonly number[];
  readonly isWithin: boolean;
}

/** With the least total of packing: within the spread, else at the least spread there is. */
const planned = (flight: Flight, spread: Exact | undefined): Planned | undefined => {
  const within = spread && leastWithin(flight, spread, sum);
  if (within !== undefined) return { packing: within, isWithin: true };
  const least = leastSpread(flight);
  const packing = least && leastWithin(flight, least, sum);
  return packing && { packing, isWithin: false };
};

/**
 * What goes under each sub-tread, and what the floors are raised by, for finished rises within a spread: the least in all, or, where no
 * packing reaches the spread, the least spread there is. Exact: every packing in divisions of the tape was weighed.
 */
export const shimPlan = (
  { roughRises, treadThickness, lowerBuildUp, upperBuildUp }: ShimmedStair, limits: ShimLimits,
): ShimPlan => {
  const { tape, unit, spread, maxRise } = limits;
  const asFound = finishedRises(roughRises, treadThickness, lowerBuildUp, upperBuildUp).map((rise) => rise ?? new Exact(0));
  const flight = flightOf(asFound, limits);
  const asked = spread?.times(tape);
  const allowed = planned(flight, asked);
  // A stair as it stands is a plan, so without a greatest rise there is always one.
  const { packing, isWithin } = allowed ?? planned({ ...flight, highest: Infinity }, asked) ?? { packing: [], isWithin: false };
  const inTape = (divisions: number): Length => lengthOf(1, unit).times(divisions).div(tape);
  const under = Array.from({ length: asFound.length + 1 }, (_, surface) => inTape(packing[surface] ?? 0));
  const rises = asFound.map((rise, step) => rise.plus(under[step + 1] ?? 0).minus(under[step] ?? 0));
  const apart = (lengths: readonly Length[]): Length => Exact.max(...lengths).minus(Exact.min(...lengths));
  const hasRiseOver = allowed === undefined;
  const isMissed = hasRiseOver || (spread !== undefined && !isWithin);
  return {
    asFound, packing: under, rises,
    total: inTape(sum(packing)),
    spreadFound: apart(asFound),
    spread: apart(rises),
    isReached: hasRiseOver ? false : spread && isWithin,
    hasRiseOver,
    waysOut: isMissed ? waysOut(flight, asked ?? (maxRise ?? Exact.max(...asFound)).times(tape), inTape) : undefined,
  };
};
