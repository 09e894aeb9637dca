import type { Length } from "../../length/length";
import type { FlightStair } from "./flight-stair";

/** What of a flight an opening in the upper floor has to leave free: all of it, none, or so far, level, from its own top nosing. */
export type InOpening = "all" | "none" | Length;

/**
 * For each flight, how far the opening reaches over it, so that nowhere on the nosing line is less than `headroom` under a floor
 * `floorThickness` thick. The line of a flight's nosings goes on one run past its first, where it meets the landing below.
 */
export const flightOpenings = ({ flights, totalRise, unitRise }: FlightStair, headroom: Length, floorThickness: Length): InOpening[] => {
  const lowest = totalRise.minus(headroom).minus(floorThickness);
  return flights.map(({ foot, top, run }) => {
    if (lowest.gte(top)) return "none";
    return lowest.lt(foot) ? "all" : top.minus(lowest).times(run).div(unitRise);
  });
};

/** Headroom under the far edge of an opening, level from the landing nosing; undefined where that edge lies beyond the last flight. */
export const lastFlightHeadroom = (
  { flights, unitRise }: FlightStair, opening: Length, floorThickness: Length,
): Length | undefined => {
  const last = flights[flights.length - 1];
  if (last === undefined || opening.gt(last.run.times(last.risers))) return undefined;
  return opening.times(unitRise).div(last.run).minus(floorThickness);
};
