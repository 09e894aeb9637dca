import { passing } from "../sheet-builder";
import type { CellData, SheetData } from "../sheet-data";
import { flightFilling, type OfAllFlights, type OfOneFlight, type WhichFlight } from "./flight-of-several";
import { FLIGHT_AT, flights, FLIGHTS_SHEET, type FlightsFilling, HEADROOM_AT } from "./flights";
import { jobSheets } from "./job-sheets";
import { furtherStair, SHARED, withGathered } from "./started-job";

/** A stair of two flights with a landing between them. */
export interface TurnedFilling extends OfAllFlights {
  readonly whole: FlightsFilling;
  readonly lower: OfOneFlight;
  readonly upper: OfOneFlight;
}

const TITLE = "A1";
/** The cells of a flight's sheets by which all others rest on the whole stair: what that asks for, they ask for. */
const RESTING: Readonly<Record<string, string>> = { Survey: "C8", Layout: "AA7" };

const withCell = (sheet: SheetData, address: string, change: (cell: CellData) => CellData): SheetData => ({
  ...sheet, cells: { ...sheet.cells, [address]: change(sheet.cells[address] ?? {}) },
});

/** Where Survey says what to do at each step: the last ends on the floor above, which for a flight under another is the landing. */
const WHAT_TO_DO = "F8";

const toTheLanding = (sheet: SheetData): SheetData =>
  sheet.name === "Survey"
    ? withCell(sheet, WHAT_TO_DO, ({ formula = "", ...looks }) =>
        ({ ...looks, formula: `=SUBSTITUTE(${formula.slice(1)},"upper floor","landing")` }))
    : sheet;

/** A sheet of a flight with the flight behind its title, resting on the whole stair. */
const ofFlight = ({ says, from }: WhichFlight) => (sheet: SheetData): SheetData => {
  const titled = withCell(sheet, TITLE, ({ value, formula, ...looks }) =>
    ({ ...looks, ...(formula === undefined ? { value: `${String(value)}, ${says}` } : { formula: `${formula}&", ${says}"` }) }));
  const resting = RESTING[sheet.name];
  if (resting === undefined) return titled;
  return withCell(titled, resting, ({ formula = "", ...looks }) =>
    ({ ...looks, formula: `=${passing(`${FLIGHTS_SHEET}!${from}`, formula.slice(1))}` }));
};

const LOWER: WhichFlight = { says: "lower flight", from: FLIGHT_AT.lower, headroom: HEADROOM_AT.lower };
const UPPER: WhichFlight = { says: "upper flight", from: FLIGHT_AT.upper, headroom: HEADROOM_AT.upper };

/** The sheet of the whole stair, the linked sheets of the lower flight and of the upper one, and one Bid and one Books for both. */
export const turnedJob = ({ whole, lower, upper, ...shared }: TurnedFilling): readonly SheetData[] => {
  const isOfAll = ({ name }: SheetData): boolean => SHARED.includes(name);
  const job = jobSheets(flightFilling(whole, shared, lower, LOWER, false));
  const ofLower = job.filter((sheet) => !isOfAll(sheet)).map(ofFlight(LOWER)).map(toTheLanding);
  const ofUpper = jobSheets(flightFilling(whole, shared, upper, UPPER, true)).map(ofFlight(UPPER));
  const { sheets, gatherings } = furtherStair(ofUpper, [FLIGHTS_SHEET, ...job.map(({ name }) => name)]);
  return [flights(whole), ...ofLower, ...sheets, ...withGathered(job.filter(isOfAll), gatherings)];
};
