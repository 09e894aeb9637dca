import { measure, type Length, type Unit } from "../../solver/length/length";
import type { Flight, FlightStair } from "../../solver/layout/flights/flight-stair";
import { flightsPlan, lineLength, type PlacedFlight, planExtent, type PlanArea, type PlanPoint } from "../../solver/layout/flights/flights-plan";
import type { Point } from "../figure";
import { inRows, type Unplaced } from "./dimension-rows";
import { box, closed, dimensionText, type Draft, type DraftMark, line, note, type Side } from "./draft";

/** A flight with its place in the plan, in plain numbers of the unit. */
interface Seen {
  readonly flight: Flight;
  readonly place: PlacedFlight;
  /** So far up the flight from its first riser face, and so far to the right of its left side. */
  readonly at: (up: number, over: number) => Point;
  readonly run: number;
  readonly width: number;
  readonly long: number;
}

const areaOf = (area: PlanArea, unit: Unit): readonly [Point, Point] => {
  const at = ([right, on]: PlanPoint): Point => [measure(right, unit), measure(on, unit)];
  return [at(area[0]), at(area[1])];
};

const seenOf = (flight: Flight, place: PlacedFlight, unit: Unit): Seen => {
  const [x, y] = place.start.map((one: Length) => measure(one, unit)) as [number, number];
  const [right, on] = place.heading;
  return {
    flight, place, run: measure(flight.run, unit), width: measure(flight.width, unit), long: measure(lineLength(flight), unit),
    at: (up, over) => [x + up * right + over * on, y + up * on - over * right],
  };
};

/** An open arrow up the flight, with its name at the foot. */
const walk = ({ flight, at, width, long, run }: Seen): DraftMark[] => {
  const middle = width / 2;
  const head = Math.min(run, width) / 4;
  return long === 0 ? [] : [
    line("centre", at(0, middle), at(long, middle)),
    line("thin", at(long - head, middle - head / 2), at(long, middle), at(long - head, middle + head / 2)),
    note(at(0, middle), `flight ${flight.name} up, ${flight.risers} risers`, "below"),
  ];
};

const flightMarks = (seen: Seen): DraftMark[] => {
  const { flight, at, run, width, long } = seen;
  return [
    closed("thick", at(0, 0), at(long, 0), at(long, width), at(0, width)),
    ...Array.from({ length: Math.max(0, flight.risers - 2) }, (_, riser) =>
      line("thin", at((riser + 1) * run, 0), at((riser + 1) * run, width))),
    ...walk(seen),
  ];
};

const landingMarks = ({ flight, place }: Seen, unit: Unit): DraftMark[] => {
  if (place.landing === undefined) return [];
  const [one, other] = areaOf(place.landing, unit);
  const middle: Point = [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2];
  return [closed("thick", ...box(one, other)), note(middle, `landing ${dimensionText(measure(flight.top, unit), unit)} up`, "above")];
};

/** Sizes of a flight and the landing above it, on the side of the plan that is nearer. */
const sizes = ({ flight, place, at, width, long }: Seen, centre: Point, unit: Unit): Unplaced[] => {
  const middle = at(long / 2, width / 2);
  const isUpright = place.heading[0] === 0;
  const beside: Side = isUpright ? (middle[0] > centre[0] ? "right" : "left") : middle[1] > centre[1] ? "above" : "below";
  const across: Side = isUpright ? (middle[1] > centre[1] ? "above" : "below") : middle[0] > centre[0] ? "right" : "left";
  const { name } = flight;
  // Its side that is nearer the edge of the plan.
  const over = beside === "right" || beside === "above" ? [at(0, 0), at(0, width)] : [at(0, width), at(0, 0)];
  const nearer = over[0] !== undefined && over[1] !== undefined && isFarther(over[0], over[1], beside) ? 0 : width;
  const runs: Unplaced = {
    side: beside, from: at(0, nearer === 0 ? 0 : width), to: at(long, nearer === 0 ? 0 : width), value: long,
    name: `flight ${name}, ${flight.risers - 1} runs`,
  };
  const wide: Unplaced = { side: across, from: at(0, 0), to: at(0, width), value: width, name: `flight ${name} width` };
  const { landing } = flight;
  if (landing === undefined || place.landing === undefined) return [runs, wide];
  const [[x, y], [u, v]] = areaOf(place.landing, unit);
  const depth = measure(landing.depth, unit);
  const wideOf = measure(landing.width, unit);
  const side: Side = isUpright ? beside : middle[1] > centre[1] ? "above" : "below";
  const edge = side === "right" ? Math.max(x, u) : side === "left" ? Math.min(x, u) : side === "above" ? Math.max(y, v) : Math.min(y, v);
  const deep: Unplaced = isUpright
    ? { side, from: [edge, y], to: [edge, v], value: depth, name: `landing ${name} depth` }
    : { side, from: [x, edge], to: [u, edge], value: depth, name: `landing ${name} depth` };
  const far: Side = isUpright ? (v > y ? "above" : "below") : u > x ? "right" : "left";
  const end = isUpright ? v : u;
  const broad: Unplaced = isUpright
    ? { side: far, from: [x, end], to: [u, end], value: wideOf, name: `landing ${name} width` }
    : { side: far, from: [end, y], to: [end, v], value: wideOf, name: `landing ${name} width` };
  return [runs, wide, deep, ...(wideOf === width ? [] : [broad])];
};

const isFarther = (one: Point, other: Point, side: Side): boolean => {
  if (side === "right") return one[0] > other[0];
  if (side === "left") return one[0] < other[0];
  return side === "above" ? one[1] > other[1] : one[1] < other[1];
};

/** A stair of several flights in plan, flight 1 going up the paper. */
export const flightsDrawing = (found: FlightStair, unit: Unit): Draft => {
  const placed = flightsPlan(found.flights);
  const extent = planExtent(placed);
  const seen = found.flights.flatMap((flight, index) => {
    const place = placed[index];
    return place === undefined ? [] : [seenOf(flight, place, unit)];
  });
  const areas = placed.flatMap(({ covers, landing }) => (landing === undefined ? [covers] : [covers, landing]));
  const corners = areas.flatMap((area) => areaOf(area, unit));
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const centre: Point = [(left + right) / 2, (bottom + top) / 2];
  const turns = found.flights.flatMap(({ landing }) => (landing === undefined || landing.turn === "none" ? [] : [landing.turn]));
  return {
    title: "Plan of the stair",
    says:
      `A stair of ${found.flights.length} flights in plan, flight 1 going up the paper` +
      `${turns.length === 0 ? "" : `, turning ${turns.join(", ")}`}.`,
    unit,
    marks: [
      ...seen.flatMap((one) => [...flightMarks(one), ...landingMarks(one, unit)]),
      ...inRows([
        ...seen.flatMap((one) => sizes(one, centre, unit)),
        { side: "left", from: [left, bottom], to: [left, top], value: measure(extent.length, unit), name: "length in plan" },
        { side: "below", from: [left, bottom], to: [right, bottom], value: measure(extent.width, unit), name: "width in plan" },
      ]),
    ],
    notes: [
      "Between riser faces, landing edges and skirts; nosings are not drawn. Left and right as seen going up. Heights of landings are of " +
        "the finished landing over the lower finished floor.",
    ],
  };
};
