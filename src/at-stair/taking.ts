import type { PieceKind } from "../solver/fit/acts";
import type { Unit } from "../solver/length/length";
import { askedAt, RUN } from "./asked";
import { type Entry, NOTHING_TOUCHED } from "./tape-keys";

/** Whose stair is read, and with what tape: said once, before the first touch. */
export interface Taking {
  readonly job: string;
  readonly unit: Unit;
  /** Divisions of the unit on the tape. */
  readonly tape: number;
}

/** The treads or the risers that are to be read, and about what they will read. */
export interface Flight {
  readonly piece: PieceKind;
  readonly first: number;
  readonly last: number;
  /** A run, or a rise. */
  readonly across: number;
  readonly width: number;
}

export interface StepAt {
  readonly piece: PieceKind;
  readonly step: number;
}

/** A place of the tape. */
export interface At extends StepAt {
  readonly reading: string;
}

export interface TakenStep extends StepAt {
  /** What was read here, by heading; a run that holds from below is not. */
  readonly read: Readonly<Record<string, number>>;
  /** It did not close, and whoever read it kept it so. */
  readonly isKept: boolean;
}

/** One screen: what is asked before a flight, a reading, what is said of a step, or all that was read. */
export type Screen =
  | { readonly shows: "flight"; readonly piece: PieceKind }
  | { readonly shows: "reading"; readonly at: At; readonly entry: Entry; readonly pad?: string; readonly backTo?: StepAt }
  | { readonly shows: "step"; readonly at: StepAt }
  | { readonly shows: "list" };

export interface State {
  readonly flights: readonly Flight[];
  readonly steps: readonly TakenStep[];
  readonly screen: Screen;
  /** The day of the last reading, as `2026-03-04`. */
  readonly day: string;
}

export const BEFORE_ALL: State = { flights: [], steps: [], screen: { shows: "flight", piece: "tread" }, day: "" };

export const flightOf = ({ flights }: State, piece: PieceKind): Flight | undefined => flights.find((one) => one.piece === piece);

/** A step as its readings are called: `step 4`, `riser 4`. */
export const stepName = ({ piece, step }: StepAt): string => `${piece === "riser" ? "riser" : "step"} ${step}`;

export const isSameStep = (one: StepAt, other: StepAt): boolean => one.piece === other.piece && one.step === other.step;

export const stepOf = ({ steps }: State, at: StepAt): TakenStep | undefined => steps.find((one) => isSameStep(one, at));

/** The steps of treads or risers that anything was read of, from the bottom up. */
export const stepsOf = ({ steps }: State, piece: PieceKind): readonly TakenStep[] =>
  steps.filter((one) => one.piece === piece).sort((one, other) => one.step - other.step);

/** What holds of a run that was not read at this step: the nearest one below, else the nearest above. */
const runAt = (state: State, { step }: StepAt): number | undefined => {
  const runs = stepsOf(state, "tread").flatMap(({ step: from, read }) => (read[RUN] === undefined ? [] : [{ from, run: read[RUN] }]));
  const [last = runs[0]] = runs.filter(({ from }) => from <= step).slice(-1);
  return last?.run;
};

/** All that is known of a step by readings: its own, and the run that holds there. */
export const readAt = (state: State, at: StepAt): Readonly<Record<string, number>> => {
  const own = stepOf(state, at)?.read ?? {};
  const run = at.piece === "tread" ? runAt(state, at) : undefined;
  return run === undefined ? own : { [RUN]: run, ...own };
};

/** The readings of a step in the order of the hands, as it is asked for them. */
export const readingsAt = (state: State, { piece, step }: StepAt): readonly string[] =>
  askedAt(piece, step === flightOf(state, piece)?.first).map(({ reading }) => reading);

export const isWhole = (state: State, at: StepAt): boolean => {
  const read = readAt(state, at);
  return readingsAt(state, at).every((reading) => read[reading] !== undefined);
};

/** The first place of a flight where something was not yet read. */
export const unreadAt = (state: State, piece: PieceKind): At | undefined => {
  const flight = flightOf(state, piece);
  if (flight === undefined) return undefined;
  for (let step = flight.first; step <= flight.last; step += 1) {
    const read = readAt(state, { piece, step });
    const reading = readingsAt(state, { piece, step }).find((one) => read[one] === undefined);
    if (reading !== undefined) return { piece, step, reading };
  }
  return undefined;
};

/** The screen of a reading with its keys as nothing had touched them. */
export const untouched = (at: At, backTo?: StepAt): Screen => ({
  shows: "reading", at, entry: NOTHING_TOUCHED, ...(backTo === undefined ? {} : { backTo }),
});
