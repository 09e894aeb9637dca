import type { Entry } from "../sheet-builder";
import type { Filling, FlightFilling } from "./filling";
import { FLIGHTS_SHEET, type FlightsFilling, FURTHER_AT, KNOWN } from "./flights";
import { JOB } from "./job";

/** What stands on the sheets of one flight alone: readings, and what it is made of. */
export type OfOneFlight = Pick<
  Filling,
  | "roughRises" | "alikeWithin" | "blanks" | "boards" | "kerf" | "trim" | "keep" | "treads" | "risersRead" | "balusterWidth" | "railHours"
  | "beadDiameter" | "cartridge"
>;

/** What Bid and Books have, once for all flights. */
export type OfAllFlights = Pick<
  Filling, "items" | "terms" | "roundUpTo" | "besides" | "changes" | "ownPieces" | "moves" | "booked" | "hoursSpent" | "hoursCost" | "month"
>;

/** Sizes of a layout that every flight takes from the whole stair. */
const SIZES = [
  "nosing", "riser thickness", "overhang", "return width", "run past", "lap", "skirt thickness", "skirt shows", "skirt foot", "skirt head",
  "stringer board", "headroom", "floor thickness", "handrail height", "guard", "guard height", "open risers",
] as const;

/** Labels that only a flight of several has. */
const ITS_OWN = [
  "landing", "landing depth", "landing width", "landing tread", "landing tread length", "open sides", "landing guard height",
  "stair height", "stair risers", "risers before turn",
] as const;

/** Which flight it is, where it stands as a stair table, where its headroom is found, and the sheets it is filled with. */
export interface WhichFlight extends Pick<FlightFilling, "says" | "from"> {
  readonly headroom: string;
}

/** A label of the flight, or nothing where the stair has none. */
const ofTable = (from: string) => (label: string): Entry => `=IFERROR(STAIR.PICK(${FLIGHTS_SHEET}!${from}#,"${label}"),"")`;

/** An empty cell of the whole stair stays one. */
const ofWhole = (cell: string): string => `=IF(${FLIGHTS_SHEET}!${cell}="","",${FLIGHTS_SHEET}!${cell})`;

/** The fall beside an open side is from the nosing of its last tread down to the floor the stair begins on. */
const fallHeight = (from: string, isLast: boolean): Entry => {
  const pick = (label: string): string => `STAIR.PICK(${FLIGHTS_SHEET}!${from}#,"${label}")`;
  const top = pick(isLast ? "stair height" : "total rise");
  return `=IF(${JOB.openEnd}="none","",IFERROR(${top}-${pick("stair height")}/${pick("stair risers")},""))`;
};

/**
 * What the sheets of one flight are filled with: what the whole stair has comes from its sheet by formulas, so that a change there moves
 * every flight. A stair here has two.
 */
export const flightFilling = (
  whole: FlightsFilling, shared: OfAllFlights, own: OfOneFlight, which: WhichFlight, isLast: boolean,
): Filling => {
  const of = ofTable(which.from);
  return {
    ...shared, ...own,
    unit: whole.unit,
    job: ofWhole(KNOWN.job),
    customer: ofWhole(KNOWN.customer),
    code: whole.code,
    totalRise: of("total rise"),
    risers: of("risers"),
    run: of("run"),
    width: of("width"),
    openEnd: String(of("open end")),
    handrails: of("handrails"),
    floors: { treadThickness: of("tread thickness"), lowerBuildUp: of("lower build up"), upperBuildUp: of("upper build up") },
    sizes: { ...Object.fromEntries(SIZES.map((label) => [label, of(label)])), opening: of("opening") },
    trial:
      `The ${which.says} as a stair of its own. What is white here comes from ${FLIGHTS_SHEET}, where the whole stair is typed; ` +
      "Bid and Books are of all flights. The job, people and prices are invented.",
    flight: {
      says: which.says,
      sheet: FLIGHTS_SHEET,
      from: which.from,
      code: ofWhole(KNOWN.code),
      sizes: [
        ...ITS_OWN.map((label) => [label, of(label)]),
        ["headroom found", ofWhole(which.headroom)],
        ...FURTHER_AT.map(([label, value]) => [ofWhole(label), ofWhole(value)]),
      ],
      fallHeight: fallHeight(which.from, isLast),
    },
  };
};
