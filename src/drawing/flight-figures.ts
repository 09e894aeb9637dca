import { measure, lengthOf } from "../solver/length/length";
import { type FlightGiven, type Turn } from "../solver/layout/flights/flight-given";
import { type FlightStair, flightStair } from "../solver/layout/flights/flight-stair";
import { flightsPlan, type PlanArea, type PlanPoint } from "../solver/layout/flights/flights-plan";
import { isProblem } from "../solver/problem";
import { caption, dashed, distance, type Figure, line, type Mark, type Point, shape, thin } from "./figure";

/** Sizes the figures are drawn at, in inches. */
const RISE = 7.5;
const RUN = 10;
const WIDTH = 36;
const NOSING = 1.25;
const TREAD = 1;

const inches = (value: number) => lengthOf(value, "in");

const row = (risers: number, turn: Turn, more: Partial<FlightGiven> = {}): FlightGiven => ({
  risers, turn, well: inches(0), setBack: inches(0), newelPast: inches(0), ...more,
});

const laidOut = (rows: readonly FlightGiven[]): FlightStair => {
  const risers = rows.reduce((sum, one) => sum + one.risers, 0);
  const found = flightStair({ totalRise: inches(RISE * risers), run: inches(RUN), width: inches(WIDTH) }, {}, rows);
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

const at = ([right, on]: PlanPoint): Point => [measure(right, "in"), measure(on, "in")];
const box = (area: PlanArea): Mark => {
  const [[x, y], [u, v]] = [at(area[0]), at(area[1])];
  return shape([x, y], [u, y], [u, v], [x, v]);
};

/** Flights with their riser faces, landings, and a line to walk up with its number at the foot. */
const planMarks = (found: FlightStair): Mark[] =>
  flightsPlan(found.flights).flatMap((place, index): Mark[] => {
    const flight = found.flights[index];
    if (flight === undefined) return [];
    const [x, y] = at(place.start);
    const [ahead, on] = place.heading;
    const across = measure(flight.width, "in");
    const point = (up: number, over: number): Point => [x + up * ahead + over * on, y + up * on - over * ahead];
    const long = (flight.risers - 1) * RUN;
    return [
      box(place.covers),
      ...(place.landing === undefined ? [] : [box(place.landing)]),
      ...Array.from({ length: flight.risers }, (_, riser) => thin(point(riser * RUN, 0), point(riser * RUN, across))),
      dashed(point(2, across / 2), point(long - 2, across / 2)),
      line(point(long - 6, across / 2 - 2), point(long - 2, across / 2), point(long - 6, across / 2 + 2)),
      caption(point(5, across / 2 + 6), String(index + 1), "right"),
    ];
  });

const quarterTurn: Figure = {
  says:
    "A quarter turn to the left in plan: flight 1 goes up the page to the landing, flight 2 on to the left. Along flight 1 its runs and " +
    "the landing depth d; along flight 2 the width w of flight 1 and its own runs.",
  marks: [
    ...planMarks(laidOut([row(5, "quarter left"), row(5, "none")])),
    distance([WIDTH, 0], [WIDTH, 4 * RUN], "(n1 - 1)·g", 10),
    distance([WIDTH, 4 * RUN], [WIDTH, 4 * RUN + WIDTH], "d", 10),
    distance([0, 4 * RUN + WIDTH], [WIDTH, 4 * RUN + WIDTH], "w", -10),
    distance([-4 * RUN, 4 * RUN + WIDTH], [0, 4 * RUN + WIDTH], "(n2 - 1)·g", -10),
  ],
};

const WELL = 10;
const BACK = 6;

const halfTurn: Figure = {
  says:
    "A half turn to the right in plan: two flights with a well between them and a landing across both; the second starts the set back v " +
    "into the landing, and its top riser face stands x past the first riser face.",
  marks: [
    ...planMarks(laidOut([row(7, "half right", { well: inches(WELL), setBack: inches(BACK) }), row(5, "none")])),
    distance([WIDTH, 6 * RUN + WIDTH], [WIDTH + WELL, 6 * RUN + WIDTH], "well", -10),
    distance([2 * WIDTH + WELL, 6 * RUN], [2 * WIDTH + WELL, 6 * RUN + BACK], "v", 10),
    distance([2 * WIDTH + WELL, 0], [2 * WIDTH + WELL, 2 * RUN + BACK], "x", 10),
    thin([WIDTH, 0], [2 * WIDTH + WELL, 0]),
    distance([0, 6 * RUN], [0, 6 * RUN + WIDTH], "d", -10),
  ],
};

const HIGH = 34;
const PAST = 3;

/** Flight 2 is drawn on in line with flight 1, as if the turn were laid flat at the newel. */
const railsAtTheTurn: Figure = {
  says:
    "Rails at a turn, the two flights laid flat in one line at the newel: its centre e past the last riser face below and e' short of " +
    "the first riser face above. Each rail runs on along its nosing line; the upper one meets the newel higher by x.",
  marks: (() => {
    const second = 2 * PAST;
    const top = (riser: number, from: number): Point => [from - NOSING, riser * RISE];
    const below = (level: number): number => (level + NOSING) * (RISE / RUN) + HIGH;
    const above = (level: number): number => RISE + (level - second + NOSING) * (RISE / RUN) + HIGH;
    return [
      line(
        [-2 * RUN, -2 * RISE], [-2 * RUN, -RISE - TREAD], top(-1, -2 * RUN), [-RUN, -RISE], [-RUN, -TREAD], top(0, -RUN), [0, 0],
        [second, 0], [second, RISE - TREAD], top(1, second), [second + RUN, RISE], [second + RUN, 2 * RISE],
      ),
      line([-2 * RUN, below(-2 * RUN)], [PAST, below(PAST)]),
      line([PAST, above(PAST)], [second + RUN, above(second + RUN)]),
      dashed([PAST, 0], [PAST, above(PAST) + 6]),
      distance([0, 2], [PAST, 2], "e", 0),
      distance([PAST, -5], [second, -5], "e'", 12),
      distance([PAST, below(PAST)], [PAST, above(PAST)], "x", 12),
      caption([PAST, above(PAST) + 6], "newel"),
      caption([-RUN, below(-RUN)], "rail of flight 1", "left"),
      caption([second + RUN, above(second + RUN)], "rail of flight 2", "right"),
    ];
  })(),
};

const oneFlight: Figure = {
  says:
    "One flight from a floor to a landing, from the side: its own total rise and run, the landing its last tread, with the landing " +
    "tread, a nosing piece of its own depth, over the last riser, and what is still to be laid on the landing behind it.",
  marks: (() => {
    const count = 4;
    const treads: Point[] = Array.from({ length: count - 1 }, (_, step): Point[] => [
      [step * RUN, step * RISE], [step * RUN, (step + 1) * RISE - TREAD], [step * RUN - NOSING, (step + 1) * RISE - TREAD],
      [step * RUN - NOSING, (step + 1) * RISE], [(step + 1) * RUN, (step + 1) * RISE],
    ]).flat();
    const [end, high, deep] = [(count - 1) * RUN, count * RISE, 5.5];
    return [
      line([-14, 0], [0, 0], ...treads, [end, high - TREAD]),
      shape([end - NOSING, high - TREAD], [end - NOSING + deep, high - TREAD], [end - NOSING + deep, high], [end - NOSING, high]),
      dashed([end - NOSING + deep, high], [end + 24, high]),
      line([end, high - TREAD], [end + 24, high - TREAD]),
      distance([-12, 0], [-12, high], "total rise"),
      distance([0, -2], [end, -2], "(n - 1)·g", 10),
      distance([end - NOSING, high + 2], [end - NOSING + deep, high + 2], "landing tread", 0),
      caption([end + 16, high - TREAD], "build up of the landing", "below"),
    ];
  })(),
};

export const FLIGHTS_FIGURES: readonly Figure[] = [quarterTurn, halfTurn, railsAtTheTurn];
export const ONE_FLIGHT_FIGURES: readonly Figure[] = [oneFlight, quarterTurn];
