import { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import { type Flight, type Landing } from "./flight-stair";
import { isHalf, isQuarter } from "./flight-given";

/** A point of the plan: to the right, and on up, of the left end of the first riser face, seen going up flight 1. */
export type PlanPoint = readonly [right: Length, on: Length];

/** One of the four ways a flight may run in the plan. */
export type Heading = readonly [right: -1 | 0 | 1, on: -1 | 0 | 1];

/** A flight in the plan: the left end of its first riser face, seen going up it, and the way it goes. */
export interface PlacedFlight {
  readonly start: PlanPoint;
  readonly heading: Heading;
  /** Opposite corners of what it covers, first riser face to last, and of the landing above it. */
  readonly covers: PlanArea;
  readonly landing: PlanArea | undefined;
}

export type PlanArea = readonly [PlanPoint, PlanPoint];

const rightOf = ([right, on]: Heading): Heading => [on, (-right || 0) as Heading[1]];
const reversed = ([right, on]: Heading): Heading => [(-right || 0) as Heading[0], (-on || 0) as Heading[1]];
const leftOf = (heading: Heading): Heading => reversed(rightOf(heading));

const moved = ([right, on]: PlanPoint, way: Heading, by: Length): PlanPoint => [right.plus(by.times(way[0])), on.plus(by.times(way[1]))];

/** Where the landing lies and the next flight starts, from the left end of the last riser face. */
const turned = (
  top: PlanPoint, heading: Heading, flight: Flight, landing: Landing, next: Length,
): { readonly area: PlanArea; readonly start: PlanPoint; readonly heading: Heading } => {
  const right = rightOf(heading);
  const isRight = landing.turn.endsWith("right");
  const { depth, width, well, setBack } = landing;
  const beside = well.plus(next);
  const corner = isHalf(landing.turn) && !isRight ? moved(top, right, beside.neg()) : top;
  const area: PlanArea = [corner, moved(moved(corner, right, width), heading, depth)];
  if (isQuarter(landing.turn)) {
    return isRight
      ? { area, start: moved(moved(top, right, flight.width.minus(setBack)), heading, next), heading: right }
      : { area, start: moved(top, right, setBack), heading: leftOf(heading) };
  }
  if (!isHalf(landing.turn)) return { area, start: moved(top, heading, depth), heading };
  const left = moved(top, right, isRight ? flight.width.plus(beside) : well.neg());
  return { area, start: moved(left, heading, setBack), heading: reversed(heading) };
};

/** Length of a flight in the plan, from its first riser face to its last. */
export const lineLength = ({ risers, run }: Flight): Length => run.times(risers - 1);

/** Every flight in the plan. A landing wider than the next flight leaves its room on the outer side of the turn. */
export const flightsPlan = (flights: readonly Flight[]): readonly PlacedFlight[] => {
  const placed: PlacedFlight[] = [];
  let start: PlanPoint = [new Exact(0), new Exact(0)];
  let heading: Heading = [0, 1];
  for (const [index, flight] of flights.entries()) {
    const top = moved(start, heading, lineLength(flight));
    const covers: PlanArea = [start, moved(top, rightOf(heading), flight.width)];
    const next = flights[index + 1];
    const turn = flight.landing && next && turned(top, heading, flight, flight.landing, next.width);
    placed.push({ start, heading, covers, landing: turn?.area });
    if (turn === undefined) continue;
    start = turn.start;
    heading = turn.heading;
  }
  return placed;
};

/** What all the stair covers: along flight 1 and across it, and of that what lies to the left and to the right of flight 1. */
export const planExtent = (placed: readonly PlacedFlight[]) => {
  const corners = placed.flatMap(({ covers, landing }) => [...covers, ...(landing ?? [])]);
  const edges = (axis: 0 | 1) => {
    const along = corners.map((corner) => corner[axis]);
    return { least: Exact.min(...along), most: Exact.max(...along) };
  };
  const [rights, ons] = [edges(0), edges(1)];
  return {
    width: rights.most.minus(rights.least),
    length: ons.most.minus(ons.least),
    left: rights.least.neg(),
    right: rights.most.minus(placed[0]?.covers[1][0] ?? rights.most),
  };
};

/** From the outer edge of the landing below, or the first riser face, to the outer edge of the landing above, or the last riser face. */
export const legLength = (flight: Flight, below: Flight | undefined): Length => {
  const above = flight.landing?.depth ?? new Exact(0);
  const under = below?.landing;
  const before = under === undefined || under.turn === "none" ? new Exact(0)
    : (isQuarter(under.turn) ? below?.width ?? under.width : under.depth).minus(under.setBack);
  return before.plus(lineLength(flight)).plus(above);
};

/** How far the last riser face stands past the first, seen going up flight 1; undefined unless the last flight comes back toward it. */
export const lastRiserPastTheFirst = (flights: readonly Flight[], placed: readonly PlacedFlight[]): Length | undefined => {
  const [flight, place] = [flights[flights.length - 1], placed[placed.length - 1]];
  if (flight === undefined || place?.heading[1] !== -1) return undefined;
  return moved(place.start, place.heading, lineLength(flight))[1];
};
