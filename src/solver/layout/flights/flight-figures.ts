import type { Length } from "../../length/length";
import { flightOpenings, lastFlightHeadroom } from "./flight-opening";
import type { Flight, FlightStair } from "./flight-stair";
import { isQuarter } from "./flight-given";
import { type FlightUnderFlight, flightsUnderFlights } from "./flight-over-flight";
import { flightsPlan, lastRiserPastTheFirst, legLength, lineLength, planExtent } from "./flights-plan";
import { landingTread } from "./landing-tread";
import { turnRails } from "./turn-rails";

/** One figure of a stair of several flights: of the stair, or of one flight and the landing above it. */
export interface FlightFigure {
  readonly flight: string | number;
  /** What it is; its words are the label. */
  readonly key: string;
  readonly kind: "length" | "count" | "text";
  readonly value?: Length | number | string;
  readonly note?: string;
}

const THE_STAIR = "stair";

type Row = Omit<FlightFigure, "flight">;

const length = (key: string, value: Length | undefined, note = ""): Row =>
  ({ key, kind: "length", ...(value === undefined ? {} : { value }), note });
const count = (key: string, value: number): Row => ({ key, kind: "count", value });

const side = (value: Length, positive: string, negative: string): string => (value.isNegative() ? negative : positive);

/** What of the plan lies to one side of flight 1. */
const beside = (key: string, value: Length, where: "left" | "right"): readonly Row[] =>
  value.isZero() ? [] : [length(key, value, `past its ${where} skirt, seen going up`)];

const ofTheStair = (found: FlightStair): readonly Row[] => {
  const { stair, totalRise, unitRise, risers, flights } = found;
  const plan = flightsPlan(flights);
  const extent = planExtent(plan);
  const past = lastRiserPastTheFirst(flights, plan);
  const { landingGuardHeight: guard, handrailHeight: rail } = stair;
  const block = guard === undefined || rail === undefined ? undefined : guard.minus(rail);
  return [
    length("totalRise", totalRise),
    count("risers", risers),
    length("unitRise", unitRise),
    length("lengthInPlan", extent.length, "along flight 1, riser faces and landing edges"),
    length("widthInPlan", extent.width, "across flight 1, skirt to skirt"),
    ...beside("planLeftOfTheFirstFlight", extent.left, "left"),
    ...beside("planRightOfTheFirstFlight", extent.right, "right"),
    ...(past === undefined ? [] : [
      length("topRiserFaceFromTheFirst", past.abs(), `${side(past, "past", "short of")} the first riser face, seen going up flight 1`),
    ]),
    length(
      "guardOverTheRail", block?.abs(),
      block === undefined ? "give landing guard height and handrail height" : side(
        block, "at a landing nosing: what the newel block has to cover", "at a landing nosing: the guard ends this much under the rail",
      ),
    ),
  ];
};

const opening = (found: FlightStair, flight: Flight, place: number): readonly Row[] => {
  const { stair, flights } = found;
  const { headroom, floorThickness, opening: there } = stair;
  const isLast = place === flights.length - 1;
  const key = "openingOverThisFlight";
  if (headroom === undefined || floorThickness === undefined) {
    return isLast ? [length(key, undefined, "give headroom and floor thickness")] : [];
  }
  const reach = flightOpenings(found, headroom, floorThickness)[place];
  if (reach === undefined) return [];
  const row: Row =
    typeof reach === "string"
      ? {
          key, kind: "text", value: reach,
          note: reach === "none"
            ? "the floor above clears it"
            : place === 0
              ? "headroom and floor thickness together are more than the total rise"
              : "with the landing below it; how far the opening goes on is said of the flight below",
        }
      : length(key, reach, `level, from ${isLast ? "the landing nosing at the upper floor" : "this flight's own top nosing"} down`);
  if (!isLast || there === undefined) return [row];
  const under = lastFlightHeadroom(found, there, floorThickness);
  return [
    row,
    length(
      "headroomUnderTheOpening", under,
      under === undefined ? `the opening reaches past flight ${flight.name}` : `under its far edge, over flight ${flight.name}`,
    ),
  ];
};

const landingRows = (found: FlightStair, flight: Flight, next: Flight): readonly Row[] => {
  const { landing } = flight;
  if (landing === undefined) return [];
  const { stair, unitRise } = found;
  const height = stair.handrailHeight;
  const rails = height && turnRails(flight, landing, next, unitRise, stair.nosing, height);
  const higher = rails?.fromAbove.minus(rails.fromBelow);
  const piece = landingTread(stair, flight);
  const turnText = landing.turn === "none" ? "straight on" : `${landing.turn}, seen going up`;
  const wants = "give handrail height";
  return [
    length("landingHeight", flight.top, `finished landing over the lower floor; ${turnText}`),
    length("roughLandingHeight", flight.top.minus(landing.buildUp ?? 0), "the same before the floor still to be laid on it"),
    length(
      "landingDepth", landing.depth,
      `along this flight${isQuarter(landing.turn) && landing.depth.lt(next.width) ? `; less than flight ${next.name} is wide` : ""}`,
    ),
    length("landingWidth", landing.width, "across this flight"),
    ...(piece === undefined ? [] : [length("landingTread", piece.depth, piece.note)]),
    length("railFromBelowAtTheNewel", rails?.fromBelow, rails === undefined ? wants : "top of the rail over the finished landing"),
    length("railFromAboveAtTheNewel", rails?.fromAbove, rails === undefined ? wants : "top of the rail over the finished landing"),
    length(
      "railsApartAtTheNewel", higher?.abs(),
      higher === undefined ? wants : higher.isZero() ? "the rails meet level" : `the rail from ${side(higher, "above", "below")} is higher`,
    ),
  ];
};

const ofTheFlight = (found: FlightStair, place: number, under: readonly FlightUnderFlight[]): readonly Row[] => {
  const { flights } = found;
  const flight = flights[place];
  const next = flights[place + 1];
  if (flight === undefined) return [];
  return [
    count("risers", flight.risers),
    count("treads", flight.risers - 1),
    length("riseOfTheFlight", flight.top.minus(flight.foot)),
    length("totalRun", lineLength(flight), "first riser face to last"),
    length("lengthOfThisLeg", legLength(flight, flights[place - 1]), "with the landings at its ends, outer edge to outer edge"),
    ...opening(found, flight, place),
    ...under.filter((one) => one.under === place).map((one) => length(
      "headroomUnderAnotherFlight", one.headroom,
      `under flight ${flights[one.over]?.name ?? ""}, plumb, from the nosing line to the bare underside of its stringers`,
    )),
    ...(next === undefined ? [] : landingRows(found, flight, next)),
  ];
};

/** All that a stair of several flights comes to: the stair first, then each flight with the landing above it, from the bottom. */
export const flightFigures = (found: FlightStair): readonly FlightFigure[] => {
  const under = flightsUnderFlights(found);
  return [
    ...ofTheStair(found).map((row) => ({ flight: THE_STAIR, ...row })),
    ...found.flights.flatMap((flight, place) => ofTheFlight(found, place, under).map((row) => ({ flight: flight.name, ...row }))),
  ];
};
