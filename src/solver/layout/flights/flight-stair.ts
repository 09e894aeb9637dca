import type { Length } from "../../length/length";
import { isProblem, type Problem, problem } from "../../problem";
import { STAIR_LABELS, type StairLabel } from "../../stair-labels";
import { words } from "../../words";
import { resolvedStair, type Stair, type StairProblem } from "../resolved-stair";
import type { StairFacts, StairLabelName } from "../stair-facts";
import { type FlightGiven, isHalf, isQuarter, type Turn } from "./flight-given";

/** The landing on top of a flight. */
export interface Landing {
  readonly turn: Turn;
  /** Along the flight below, and across it. */
  readonly depth: Length;
  readonly width: Length;
  readonly well: Length;
  readonly setBack: Length;
  /** Floor still to be laid on it. */
  readonly buildUp: Length | undefined;
  readonly newelPast: Length;
  readonly newelShort: Length;
}

export interface Flight {
  readonly name: string | number;
  readonly risers: number;
  readonly run: Length;
  readonly width: Length;
  /** Risers of the flights below it, and the heights of its two ends over the lower floor. */
  readonly risersBelow: number;
  readonly foot: Length;
  readonly top: Length;
  readonly landing: Landing | undefined;
  readonly given: FlightGiven;
}

/** A stair of several flights, all with one rise. */
export interface FlightStair {
  readonly stair: Stair;
  readonly totalRise: Length;
  readonly unitRise: Length;
  readonly risers: number;
  readonly flights: readonly Flight[];
}

export type FlightsProblem =
  | StairProblem
  | "no-total-rise"
  | "risers-not-in-all"
  | "flush-top"
  | "flight-without-run"
  | "flight-without-width"
  | "last-flight-has-no-landing"
  | "well-without-half-turn"
  | "set-back-without-turn"
  | "set-back-over-landing"
  | "flights-out-of-order";

/** Labels that say how one straight flight is laid out, not how the stair is. */
const OF_ONE_FLIGHT: readonly StairLabelName[] = ["risers", "treads", "totalRun", "availableRun"];

const follows = (key: StairLabelName): boolean => (STAIR_LABELS[key] as StairLabel).follows === true;

/** What the stair's labels say of all flights; a layout's own conclusions are left out, but not the board depth the run may follow from. */
const ofTheWhole = (given: StairFacts, assumed: Readonly<Record<string, string>>, risers: number): StairFacts => ({
  ...Object.fromEntries(
    (Object.keys(given) as StairLabelName[])
      .filter((key) => !OF_ONE_FLIGHT.includes(key) && (!follows(key) || key === "boardDepth"))
      .filter((key) => key !== "unitRise" || assumed[key] === undefined)
      .map((key) => [key, given[key as keyof StairFacts]]),
  ),
  risers,
});

/** Columns that are about the landing above a flight. */
const LANDING_COLUMNS = [
  "landingDepth", "landingBuildUp", "newelShort", "landingTread", "landingTreadLength",
] as const satisfies readonly (keyof FlightGiven)[];

/** What is said of a landing that is not there, or of a turn that is not made. */
const misplaced = (row: FlightGiven, name: string | number, isLast: boolean): Problem<FlightsProblem> | undefined => {
  if (isLast) {
    const said =
      LANDING_COLUMNS.find((column) => row[column] !== undefined) ??
      (["well", "setBack", "newelPast"] as const).find((column) => !row[column].isZero()) ??
      (row.turn === "none" ? undefined : "turn");
    if (said !== undefined) return problem("last-flight-has-no-landing", { flight: name, column: words(said) });
  }
  if (!row.well.isZero() && !isHalf(row.turn)) return problem("well-without-half-turn", { flight: name });
  if (!row.setBack.isZero() && row.turn === "none") return problem("set-back-without-turn", { flight: name });
  return undefined;
};

const longer = (one: Length, other: Length): Length => (one.gt(other) ? one : other);

const across = (row: FlightGiven, width: Length, next: Length): Length => {
  if (isQuarter(row.turn)) return width;
  return isHalf(row.turn) ? width.plus(row.well).plus(next) : longer(width, next);
};

/** One newel for both rails: at a half turn the set back moves the upper riser toward it, straight on the landing lies between. */
const newelShortOf = ({ turn, newelPast, setBack }: FlightGiven, depth: Length): Length => {
  if (isHalf(turn)) return newelPast.minus(setBack);
  return isQuarter(turn) ? newelPast : depth.minus(newelPast);
};

const landingOf = (row: FlightGiven, width: Length, next: Length, buildUp: Length | undefined): Landing => {
  const depth = row.landingDepth ?? (isHalf(row.turn) ? longer(width, next) : next);
  return {
    turn: row.turn,
    depth,
    width: across(row, width, next),
    well: row.well,
    setBack: row.setBack,
    buildUp: row.landingBuildUp ?? buildUp,
    newelPast: row.newelPast,
    newelShort: row.newelShort ?? newelShortOf(row, depth),
  };
};

/** Flights are numbered from the bottom up, where they are numbered at all. */
const outOfOrder = (rows: readonly FlightGiven[]): Problem<FlightsProblem> | undefined => {
  const numbers = rows.map(({ flight }) => Number(flight ?? Number.NaN));
  const place = numbers.findIndex((number, index) => index > 0 && number < (numbers[index - 1] ?? number));
  return place < 0 ? undefined : problem("flights-out-of-order", { flight: numbers[place] ?? 0, before: numbers[place - 1] ?? 0 });
};

/** The flights of a stair, from the bottom: one equal rise over all of them, and what each takes from the stair. */
export const flightStair = (
  given: StairFacts, assumed: Readonly<Record<string, string>>, rows: readonly FlightGiven[],
): FlightStair | Problem<FlightsProblem> => {
  const risers = rows.reduce((sum, row) => sum + row.risers, 0);
  if (given.topTread === "flush") return problem("flush-top");
  if (given.risers !== undefined && given.risers !== risers && assumed["risers"] === undefined) {
    return problem("risers-not-in-all", { given: given.risers, found: risers });
  }
  const disordered = outOfOrder(rows);
  if (disordered !== undefined) return disordered;
  const stair = resolvedStair(ofTheWhole(given, assumed, risers));
  if (isProblem(stair)) return stair;
  const { totalRise } = stair;
  if (totalRise === undefined) return problem("no-total-rise");
  const heightAt = (count: number): Length => totalRise.times(count).div(risers);
  const flights: Flight[] = [];
  let risersBelow = 0;
  for (const [index, row] of rows.entries()) {
    const name = row.flight ?? index + 1;
    const next = rows[index + 1];
    const run = row.run ?? stair.run;
    const width = row.width ?? stair.width;
    if (run === undefined) return problem("flight-without-run", { flight: name });
    if (width === undefined) return problem("flight-without-width", { flight: name });
    const wrong = misplaced(row, name, next === undefined);
    if (wrong !== undefined) return wrong;
    const landing = next && landingOf(row, width, next.width ?? stair.width ?? width, given.upperBuildUp);
    const room = landing && (isQuarter(row.turn) ? width : landing.depth);
    if (room !== undefined && row.setBack.gte(room)) return problem("set-back-over-landing", { flight: name, setBack: row.setBack, room });
    const above = risersBelow + row.risers;
    flights.push({
      name, risers: row.risers, run, width, risersBelow, foot: heightAt(risersBelow), top: heightAt(above), landing, given: row,
    });
    risersBelow = above;
  }
  return { stair, totalRise, unitRise: heightAt(1), risers, flights };
};
