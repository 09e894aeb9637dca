import type { SheetData } from "../sheet-data";
import type { Filling } from "./filling";
import { flightFilling, type OfAllFlights, type OfOneFlight } from "./flight-of-several";
import { FLIGHT_AT, flights, type FlightsFilling, HEADROOM_AT } from "./flights";
import { jobSheets } from "./job-sheets";
import { furtherStair, withGathered } from "./started-job";

/** A stair of two flights with a landing between them. */
export interface TurnedFilling extends OfAllFlights {
  readonly whole: FlightsFilling;
  readonly lower: OfOneFlight;
  readonly upper: OfOneFlight;
}

const TITLE = "A1";

/** The sheet with the flight behind its title. */
const titled = (says: string) => (sheet: SheetData): SheetData => {
  const title = sheet.cells[TITLE];
  const { value, formula } = title ?? {};
  const said = formula === undefined ? { value: `${String(value)}, ${says}` } : { formula: `${formula}&", ${says}"` };
  return { ...sheet, cells: { ...sheet.cells, [TITLE]: { ...title, ...said } } };
};

/** Sheets that are of all flights. */
const OF_ALL: readonly string[] = ["Bid", "Books"];

/** What the sheets of both flights are filled with. */
export const fillingsOf = ({ whole, lower, upper, ...shared }: TurnedFilling): { readonly lower: Filling; readonly upper: Filling } => ({
  lower: flightFilling(whole, shared, lower, { says: "lower flight", from: FLIGHT_AT.lower, headroom: HEADROOM_AT.lower }, false),
  upper: flightFilling(whole, shared, upper, { says: "upper flight", from: FLIGHT_AT.upper, headroom: HEADROOM_AT.upper }, true),
});

/** The sheet of the whole stair, the linked sheets of the lower flight and of the upper one, and one Bid and one Books for both. */
export const turnedJob = (filling: TurnedFilling): readonly SheetData[] => {
  const { lower, upper } = fillingsOf(filling);
  const whole = flights(filling.whole);
  const first = jobSheets(lower).map((sheet) => (OF_ALL.includes(sheet.name) ? sheet : titled("lower flight")(sheet)));
  const { sheets, gatherings } = furtherStair(jobSheets(upper).map(titled("upper flight")), [whole.name, ...first.map(({ name }) => name)]);
  const ofLower = first.filter(({ name }) => !OF_ALL.includes(name));
  const ofAll = first.filter(({ name }) => OF_ALL.includes(name));
  return [whole, ...ofLower, ...sheets, ...withGathered(ofAll, gatherings)];
};
