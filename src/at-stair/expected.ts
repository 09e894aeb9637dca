import { RADIANS_PER_DEGREE } from "../solver/degrees";
import type { Unit } from "../solver/length/length";
import { RUN } from "./asked";
import { lengthText } from "./tape-keys";
import { type At, flightOf, readAt, type State, stepName, stepsOf, type Taking } from "./taking";
import { nextTold, type Row } from "./told-by-functions";

/** About what a reading will be. */
export interface Expected {
  readonly value: number;
  /** Who says so, as `step 3` or `the steps below`; nobody of what was guessed before anything was read. */
  readonly from?: string;
  /** What most readings are within, where the functions say so. */
  readonly giveOrTake?: number;
}

/** Further than this from the steps below, a reading is asked for again. */
const FAR: Readonly<Record<Unit, number>> = { in: 0.25, mm: 6 };

const GUESSED_ACROSS: readonly string[] = [RUN, "height"];
const GUESSED_ALONG: readonly string[] = ["back", "front", "top", "bottom"];

const guessed = (state: State, { piece, reading }: At): number => {
  const { across = 0, width = 0 } = flightOf(state, piece) ?? {};
  if (GUESSED_ACROSS.includes(reading)) return across;
  return GUESSED_ALONG.includes(reading) ? width : Math.hypot(across, width);
};

/** The row of the step above the last whole one, where NEXTSTEP has an answer. */
export const nextRow = (state: State, taking: Taking): Row | undefined => {
  const told = nextTold(state, taking);
  return typeof told === "string" ? undefined : told[0];
};

const numberOf = (row: Row, heading: string): number => Number(row[heading]);

const ofRow = (row: Row, reading: string, run: number | undefined): number | undefined => {
  const [back, front] = [numberOf(row, "back"), numberOf(row, "front")];
  if (reading === "back") return back;
  if (reading === "front") return front;
  if (run === undefined) return undefined;
  const out = (angle: string): number => run * Math.tan(numberOf(row, angle) * RADIANS_PER_DEGREE);
  if (reading === "diagonal") return Math.hypot(run, back + out("right angle"));
  return reading === "secondDiagonal" ? Math.hypot(run, back + out("left angle")) : undefined;
};

/** The same reading of the nearest step: below, else above. */
const ofNeighbour = (state: State, { piece, step, reading }: At): Expected | undefined => {
  const known = stepsOf(state, piece).filter((one) => one.step !== step && one.read[reading] !== undefined);
  const [near = known[0]] = known.filter((one) => one.step < step).slice(-1);
  return near === undefined ? undefined : { value: near.read[reading]!, from: stepName(near) };
};

/** What a reading will be by the flight so far, else by its neighbour, else by what was said before the first touch. */
export const expected = (state: State, taking: Taking, at: At): Expected => {
  const row = at.piece === "tread" ? nextRow(state, taking) : undefined;
  if (row !== undefined && Number(row["step"]) === at.step) {
    const value = ofRow(row, at.reading, readAt(state, at)[RUN]);
    if (value !== undefined) return { value, from: "the steps below", giveOrTake: numberOf(row, "give or take") };
  }
  return ofNeighbour(state, at) ?? { value: guessed(state, at) };
};

const isFar = (more: number, { giveOrTake = 0 }: Expected, unit: Unit): boolean => Math.abs(more) > Math.max(FAR[unit], giveOrTake);

/** How near a reading comes to what is expected where the whole inch is set by itself. */
export const nearEnough = (unit: Unit): number => FAR[unit];

/** That a reading lies far from what the steps about it say, in words; nothing where it does not. */
export const outlier = (value: number | undefined, about: Expected, unit: Unit): string | undefined => {
  if (value === undefined || about.from === undefined) return undefined;
  const more = value - about.value;
  if (!isFar(more, about, unit)) return undefined;
  const within = about.giveOrTake === undefined ? "" : `, give or take ${lengthText(about.giveOrTake, unit)}`;
  const say = about.from === "the steps below" ? "say" : "says";
  const [off, there] = [Math.abs(more), about.value].map((length) => lengthText(length, unit));
  return `${off} ${more > 0 ? "more" : "less"} than ${about.from} ${say} (${there}${within}).`;
};
