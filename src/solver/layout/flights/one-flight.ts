import type { Length } from "../../length/length";
import { isProblem, type Problem, problem } from "../../problem";
import { STAIR_LABELS, type StairLabel } from "../../stair-labels";
import { type LayoutLine, layoutLine } from "../layout-line";
import type { StairFacts, StairLabelName } from "../stair-facts";
import { type Flight, type FlightsProblem, type FlightStair, flightStair } from "./flight-stair";
import type { FlightGiven } from "./flight-given";
import { landingTread } from "./landing-tread";

type Facts = { -readonly [Name in keyof StairFacts]: StairFacts[Name] };

/** Labels of the stair that a flight has anew, or that are found again from what it has. */
const FOUND_ANEW: readonly StairLabelName[] = ["unitRise", "treadDepth", "treads", "totalRun", "availableRun"];

/** Labels that are the flight's own, whatever the stair says. */
const OWN: readonly StairLabelName[] = [
  "totalRise", "risers", "run", "width", "topTread", "lowerBuildUp", "upperBuildUp", "landingTread", "landingTreadLength",
];

/** Labels that are about the upper floor of the stair, which only the last flight meets. */
const AT_THE_UPPER_FLOOR: readonly StairLabelName[] = ["opening", "floorThickness", "landing", "landingDepth", "landingWidth"];

const OF_THE_OPENING: readonly StairLabelName[] = ["opening", "headroom", "floorThickness"];

/** Labels whose column overrides the stair's row. */
const OVERRIDDEN = ["openEnd", "overhang", "returnWidth", "runPast", "openSides", "handrails"] as const satisfies readonly (
  keyof FlightGiven & StairLabelName
)[];

const isFoundAnew = (key: StairLabelName): boolean => FOUND_ANEW.includes(key) || (STAIR_LABELS[key] as StairLabel).follows === true;

/** Risers one after another without a turn, in the flights in line with this one. */
const risersInLine = ({ flights }: FlightStair, place: number): number => {
  const goesOn = (index: number): boolean => flights[index]?.landing?.turn === "none";
  let [first, last] = [place, place];
  while (goesOn(first - 1)) first--;
  while (goesOn(last)) last++;
  return flights.slice(first, last + 1).reduce((sum, { risers }) => sum + risers, 0);
};

const known = (key: StairLabelName, value: StairFacts[keyof StairFacts]): Facts => (value === undefined ? {} : { [key]: value });

/** What the flight says of its two ends. */
const ends = (found: FlightStair, given: StairFacts, flight: Flight, place: number): Facts => {
  const lower = place === 0 ? given.lowerBuildUp : found.flights[place - 1]?.landing?.buildUp;
  const { landing } = flight;
  if (landing === undefined) return { ...known("lowerBuildUp", lower), ...known("upperBuildUp", given.upperBuildUp) };
  const piece = landingTread(found.stair, flight);
  return {
    ...known("lowerBuildUp", lower),
    ...known("upperBuildUp", landing.buildUp),
    landing: landing.turn === "none" ? "straight" : "turn",
    landingDepth: landing.depth,
    landingWidth: landing.width,
    ...(piece === undefined ? { landingNosing: false } : { landingTread: piece.depth, ...known("landingTreadLength", piece.length) }),
  };
};

/** The opening as far as it lies over the last flight: beyond, its far edge is over the landing, which is level. */
const openingOver = (given: StairFacts, { run, risers }: Flight): Length | undefined => {
  const whole = run.times(risers);
  return given.opening?.gt(whole) === true ? whole : given.opening;
};

/**
 * What the last flight says of the opening. One that has to go on past the landing below is no figure of this flight alone: FLIGHTS has
 * it, so only the headroom wanted or the opening there is goes on.
 */
const underTheFloor = (given: StairFacts, flight: Flight): Facts => {
  const { headroom, floorThickness } = given;
  const opening = openingOver(given, flight);
  const isWithin = headroom === undefined || floorThickness === undefined ||
    headroom.plus(floorThickness).lte(flight.top.minus(flight.foot));
  if (isWithin) return { ...known("headroom", headroom), ...known("floorThickness", floorThickness), ...known("opening", opening) };
  return opening === undefined ? { headroom } : { floorThickness, opening };
};

const factsOf = (found: FlightStair, given: StairFacts, flight: Flight, place: number): StairFacts => {
  const isLast = flight.landing === undefined;
  const kept = (Object.keys(given) as (keyof StairFacts)[]).filter(
    (key) => !isFoundAnew(key) && !OWN.includes(key) && !(isLast ? OF_THE_OPENING : AT_THE_UPPER_FLOOR).includes(key),
  );
  return {
    totalRise: flight.top.minus(flight.foot),
    risers: flight.risers,
    run: flight.run,
    width: flight.width,
    topTread: "floor",
    ...Object.fromEntries(kept.map((key) => [key, given[key]])),
    ...(isLast ? underTheFloor(given, flight) : {}),
    ...ends(found, given, flight, place),
    ...Object.assign({}, ...OVERRIDDEN.map((key) => known(key, flight.given[key]))) as Facts,
    stairHeight: found.totalRise,
    stairRisers: found.risers,
    risersBeforeTurn: risersInLine(found, place),
  };
};

/** Why the stair has a label that the flight takes from it, where nobody gave it. */
const assumedOfTheStair = (key: StairLabelName, { given }: Flight, assumed: Readonly<Record<string, string>>): string | undefined => {
  if (given[key as keyof FlightGiven] !== undefined) return undefined;
  return key === "run" || key === "width" || !OWN.includes(key) ? assumed[key] : undefined;
};

/** One flight as a stair table of its own: its rise is the whole stair's, its ends are the floors and landings it stands between. */
export const oneFlight = (
  given: StairFacts, assumed: Readonly<Record<string, string>>, rows: readonly FlightGiven[], number: number,
): readonly LayoutLine[] | Problem<FlightsProblem | "no-such-flight"> => {
  const found = flightStair(given, assumed, rows);
  if (isProblem(found)) return found;
  const place = number - 1;
  const flight = found.flights[place];
  if (flight === undefined) return problem("no-such-flight", { number, flights: found.flights.length });
  const facts = factsOf(found, given, flight, place);
  const piece = landingTread(found.stair, flight);
  const because = (key: StairLabelName): string => {
    const ofThePiece = piece?.isAssumed === true ? piece.note : undefined;
    const why = key === "landingTread" ? ofThePiece : assumedOfTheStair(key, flight, assumed);
    return why === undefined ? "" : `assumed: ${why}`;
  };
  return (Object.keys(facts) as (keyof StairFacts)[]).map((key) => layoutLine(key, facts[key], because(key)));
};
