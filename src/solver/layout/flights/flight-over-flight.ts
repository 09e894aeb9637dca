import { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import type { Flight, FlightStair } from "./flight-stair";
import { flightsPlan, type PlacedFlight, type PlanArea, type PlanPoint } from "./flights-plan";

/** Least headroom of one flight where another lies over it. Flights by their place from the bottom. */
export interface FlightUnderFlight {
  readonly under: number;
  readonly over: number;
  readonly headroom: Length;
}

const spanOf = (area: PlanArea, axis: 0 | 1) => {
  const [one, other] = [area[0][axis], area[1][axis]];
  return { least: Exact.min(one, other), most: Exact.max(one, other) };
};

/** Corners of what two areas share; none where they share no more than an edge. */
const sharedCorners = (one: PlanArea, other: PlanArea): readonly PlanPoint[] => {
  const [rights, ons] = ([0, 1] as const).map((axis) => {
    const [a, b] = [spanOf(one, axis), spanOf(other, axis)];
    return { least: Exact.max(a.least, b.least), most: Exact.min(a.most, b.most) };
  });
  if (rights === undefined || ons === undefined || rights.least.gte(rights.most) || ons.least.gte(ons.most)) return [];
  return [rights.least, rights.most].flatMap((right) => [ons.least, ons.most].map((on): PlanPoint => [right, on]));
};

/** How far a point lies up a flight, level, from its first riser face. */
const upTheFlight = ([right, on]: PlanPoint, { start, heading }: PlacedFlight): Length =>
  right.minus(start[0]).times(heading[0]).plus(on.minus(start[1]).times(heading[1]));

/** A flight in the plan, with what the heights of its two planes need. */
interface Sloping {
  readonly flight: Flight;
  readonly place: PlacedFlight;
  readonly index: number;
  /** Rise over run. */
  readonly slope: Exact;
  /** The underside of its stringers lies this far under the line of its nosings, plumb. */
  readonly plumbDepth: Length;
}

const slopingFlights = ({ flights, unitRise, stair }: FlightStair): readonly Sloping[] => {
  const plan = flightsPlan(flights);
  return flights.flatMap((flight, index) => {
    const place = plan[index];
    if (place === undefined) return [];
    const slope = unitRise.div(flight.run);
    // From the nosings to the corners of the cuts, and the board's width on the plumb.
    const board = stair.stringerBoard.times(slope.pow(2).plus(1).sqrt());
    return [{ flight, place, index, slope, plumbDepth: stair.nosing.times(slope).plus(stair.treadThickness).plus(board) }];
  });
};

/** The line of the nosings over a point, over the lower floor. */
const nosingLine = (at: PlanPoint, { flight, place, slope }: Sloping, unitRise: Length, nosing: Length): Length =>
  flight.foot.plus(unitRise).plus(upTheFlight(at, place).plus(nosing).times(slope));

/**
 * For each flight that lies under others in the plan, the least plumb distance from its nosing line to the underside of their stringers,
 * and which of them it is. All are planes, so it is found at a corner of what two of them share.
 */
export const flightsUnderFlights = (found: FlightStair): readonly FlightUnderFlight[] => {
  const { unitRise, stair: { nosing } } = found;
  const sloping = slopingFlights(found);
  return sloping.flatMap((lower) => {
    const over = sloping.slice(lower.index + 1).flatMap((upper): FlightUnderFlight[] => {
      const heights = sharedCorners(lower.place.covers, upper.place.covers).map((corner) =>
        nosingLine(corner, upper, unitRise, nosing).minus(upper.plumbDepth).minus(nosingLine(corner, lower, unitRise, nosing)));
      return heights.length === 0 ? [] : [{ under: lower.index, over: upper.index, headroom: Exact.min(...heights) }];
    });
    const [first, ...others] = over;
    return first === undefined ? [] : [others.reduce((least, one) => (one.headroom.lt(least.headroom) ? one : least), first)];
  });
};
