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

/** The line of the nosings over a point, over the lower floor. */
const nosingLine = (at: PlanPoint, flight: Flight, place: PlacedFlight, unitRise: Length, nosing: Length): Length =>
  flight.foot.plus(unitRise).plus(upTheFlight(at, place).plus(nosing).times(unitRise).div(flight.run));

/** The underside of a flight's stringers lies this far under the line of its nosings, plumb: nosing line to board edge, and the board. */
const plumbDepth = ({ stair, unitRise }: FlightStair, { run }: Flight): Length => {
  const slope = unitRise.pow(2).plus(run.pow(2)).sqrt();
  return stair.nosing.times(unitRise).div(run).plus(stair.treadThickness).plus(stair.stringerBoard.times(slope).div(run));
};

/**
 * Where one flight lies over another in the plan, the least plumb distance from the nosing line of the lower to the underside of the
 * stringers of the upper. Both are planes, so it is found at a corner of what they share.
 */
export const flightsUnderFlights = (found: FlightStair): readonly FlightUnderFlight[] => {
  const { flights, unitRise, stair: { nosing } } = found;
  const plan = flightsPlan(flights);
  const placed = flights.flatMap((flight, index) => {
    const place = plan[index];
    return place === undefined ? [] : [{ flight, place, index }];
  });
  return placed.flatMap((lower) =>
    placed.slice(lower.index + 1).flatMap((upper): FlightUnderFlight[] => {
      const heights = sharedCorners(lower.place.covers, upper.place.covers).map((corner) =>
        nosingLine(corner, upper.flight, upper.place, unitRise, nosing)
          .minus(plumbDepth(found, upper.flight))
          .minus(nosingLine(corner, lower.flight, lower.place, unitRise, nosing)));
      return heights.length === 0 ? [] : [{ under: lower.index, over: upper.index, headroom: Exact.min(...heights) }];
    }),
  );
};
