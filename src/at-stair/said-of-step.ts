import { closureLimits } from "../solver/fit/closure-limits";
import type { PieceKind } from "../solver/fit/acts";
import type { Unit } from "../solver/length/length";
import { words } from "../solver/words";
import { ASKED } from "./asked";
import { expected, nextRow } from "./expected";
import { lengthText } from "./tape-keys";
import { type At, isSameStep, isWhole, readAt, readingsAt, type State, type StepAt, stepName, stepOf, type Taking } from "./taking";
import { fitTold, misreadTold, type Row } from "./told-by-functions";

/** A reading that is likely wrong. */
export interface Doubt {
  readonly at: At;
  readonly read: string;
  readonly likely: string;
  readonly why: string;
}

/** What is said of a step before one leaves it. */
export interface Said {
  readonly heading: string;
  /** Sentences, the functions' own where they judge. */
  readonly lines: readonly string[];
  readonly doubts: readonly Doubt[];
  /** Every doubtful reading, those that were kept too. */
  readonly struck: readonly At[];
  /** The reading to take again, or the one not taken yet. */
  readonly again?: At;
  /** Steps that would be kept as they were read. */
  readonly toKeep: readonly StepAt[];
}

const keysByWords = (piece: PieceKind): ReadonlyMap<string, string> =>
  new Map(ASKED[piece].map(({ reading }) => [words(reading), reading]));

const RISER = /^riser /;

/** A row of MISREAD as a place of the tape; undefined where it names none. */
const doubtOf = (row: Row, { unit }: Taking): Doubt | undefined => {
  const called = String(row["reading"] ?? "");
  const piece: PieceKind = RISER.test(called) ? "riser" : "tread";
  const reading = keysByWords(piece).get(called.replace(RISER, ""));
  const [read, likely] = [row["read"], row["likely"]];
  if (reading === undefined || typeof read !== "number" || typeof likely !== "number") return undefined;
  return {
    at: { piece, step: Number(row["step"]), reading },
    read: lengthText(read, unit),
    likely: lengthText(likely, unit),
    why: String(row["why"]),
  };
};

const sentence = (text: string): string =>
  text === "" ? "" : `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? "" : "."}`;

const rowOf = (rows: readonly Row[], step: number): Row | undefined => rows.find((row) => Number(row["step"]) === step);

/** What the fit notes beside a step. */
const noteOf = (state: State, taking: Taking, at: StepAt): { readonly note: string; readonly closure: number | undefined } => {
  const told = fitTold(state, taking, at.piece);
  const row = typeof told === "string" ? undefined : rowOf(told, at.step);
  const closure = row?.["closure"];
  return {
    note: typeof told === "string" ? told : String(row?.["note"] ?? ""),
    closure: typeof closure === "number" ? closure : undefined,
  };
};

/** A note of risers alone tells the reading only in its words, between others. */
const namedIn = (note: string, at: StepAt): { readonly at: At; readonly says: string } | undefined =>
  note.split("; ").flatMap((says) =>
    [...keysByWords(at.piece)].flatMap(([name, reading]) =>
      says.startsWith(`${name} likely `) ? [{ at: { ...at, reading }, says }] : []),
  )[0];

/** Of the readings of a step the one furthest from what its neighbour says. */
const furthest = (state: State, taking: Taking, at: StepAt): { readonly at: At; readonly says: string } | undefined => {
  const read = readAt(state, at);
  const far = readingsAt(state, at).flatMap((reading) => {
    const { value, from } = expected(state, taking, { ...at, reading });
    const here = read[reading];
    return from === undefined || here === undefined ? [] : [{ reading, from, value, here, off: Math.abs(here - value) }];
  });
  const [first] = far.sort((one, other) => other.off - one.off);
  if (first === undefined || first.off <= 1 / taking.tape) return undefined;
  const [here, there] = [first.here, first.value].map((value) => lengthText(value, taking.unit));
  const says = `Differs most from ${first.from}: ${words(first.reading)} ${here}, there ${there}.`;
  return { at: { ...at, reading: first.reading }, says };
};

const nextSaid = (state: State, taking: Taking, at: StepAt): string => {
  const row = at.piece === "tread" ? nextRow(state, taking) : undefined;
  if (row === undefined) return "";
  const [back, front, within] = ["back", "front", "give or take"].map((heading) => lengthText(Number(row[heading]), taking.unit));
  return `Step ${row["step"]} will read back ${back}, front ${front}, give or take ${within}.`;
};

const unread = (state: State, at: StepAt): Said | undefined => {
  if (isWhole(state, at)) return undefined;
  const reading = readingsAt(state, at).find((one) => readAt(state, at)[one] === undefined);
  return {
    heading: `${stepName(at)} is not all read`,
    lines: [],
    doubts: [],
    struck: [],
    toKeep: [],
    ...(reading === undefined ? {} : { again: { ...at, reading } }),
  };
};

/** Floating-point dust of the fit's square roots. */
const DUST = 1e-6;
/** To what a closure is said. */
const FINEST: Readonly<Record<Unit, number>> = { in: 1 / 32, mm: 0.1 };

/** What readings disagree by, never less than it is. */
const offText = (off: number, unit: Unit): string => {
  const up = Math.max(1, Math.ceil(off / FINEST[unit] - DUST));
  return unit === "in" ? lengthText(up * FINEST.in, unit) : String(up / 10);
};

/** A limit is said no larger than it is. */
const mostText = (most: number, unit: Unit): string => (unit === "in" ? lengthText(most, unit) : String(Math.floor(most * 10 + DUST) / 10));

const closing = (closure: number, { unit, tape }: Taking): { readonly isClosed: boolean; readonly says: string } => {
  const { most } = closureLimits(tape, unit);
  const off = Math.abs(closure);
  return off <= most
    ? { isClosed: true, says: `The diagonals agree within ${offText(off, unit)}.` }
    : { isClosed: false, says: `The diagonals disagree by ${offText(off, unit)}; ${mostText(most, unit)} is the most.` };
};

/** The sheet's function that tells more: there is no sheet at the stair. */
const FUNCTION_NAMED = " (MISREAD)";

/** How a step closes, by its fit. */
interface Closed {
  readonly isClosed: boolean;
  readonly lines: readonly string[];
  /** Risers alone are not looked at by MISREAD: their fit notes what stands out. */
  readonly noted?: At;
}

const closedOf = (state: State, taking: Taking, at: StepAt): Closed => {
  const { note, closure } = noteOf(state, taking, at);
  if (closure === undefined) return { isClosed: false, lines: [sentence(note)] };
  const { isClosed, says } = closing(closure, taking);
  const noted = at.piece === "riser" ? namedIn(note, at) : undefined;
  return noted === undefined
    ? { isClosed, lines: [says] }
    : { isClosed, lines: [says, sentence(noted.says.replace(FUNCTION_NAMED, ""))], noted: noted.at };
};

/** What MISREAD says without naming a reading. */
const verdicts = (rows: readonly Row[], taking: Taking, at: StepAt): readonly string[] => {
  const said = rows.filter((row) => doubtOf(row, taking) === undefined).map((row) => {
    const isElsewhere = typeof row["step"] === "number" && row["step"] !== at.step;
    return sentence(isElsewhere ? `step ${row["step"]}: ${String(row["why"])}` : String(row["why"]));
  });
  return [...new Set(said)];
};

const KEPT = "Kept as read: doubtful.";

const stepsIn = (places: readonly StepAt[]): readonly StepAt[] =>
  places.filter((one, place) => places.findIndex((other) => isSameStep(one, other)) === place).map(({ piece, step }) => ({ piece, step }));

const headingOf = (at: StepAt, isClosed: boolean, isDoubtful: boolean): string =>
  `${stepName(at)} ${isClosed ? `closes${isDoubtful ? ", but a reading is doubtful" : ""}` : "does not close"}`;

/** What the functions say of a step, all that was read so far beside it. */
export const saidOfStep = (state: State, taking: Taking, at: StepAt): Said => {
  const missing = unread(state, at);
  if (missing !== undefined) return missing;
  const { isClosed, lines, noted } = closedOf(state, taking, at);
  const told = misreadTold(state, taking, at.piece);
  const rows = typeof told === "string" ? [] : told;
  const isKept = (step: StepAt): boolean => stepOf(state, step)?.isKept === true;
  const all = rows.flatMap((row) => doubtOf(row, taking) ?? []);
  const doubts = all.filter((doubt) => !isKept(doubt.at));
  const isOpen = !isKept(at) && (!isClosed || noted !== undefined);
  const guess = isOpen && doubts.length === 0 && noted === undefined ? furthest(state, taking, at) : undefined;
  const [reading = ""] = readingsAt(state, at).slice(-1);
  const last = { ...at, reading };
  const again = doubts[0]?.at ?? (isOpen ? (noted ?? guess?.at ?? last) : undefined);
  return {
    heading: headingOf(at, isClosed, again !== undefined || isKept(at)),
    lines: [
      ...(isKept(at) ? [KEPT] : []),
      ...lines,
      ...(guess === undefined ? [] : [guess.says]),
      ...(typeof told === "string" ? [sentence(told)] : doubts.length > 0 ? [] : verdicts(rows, taking, at)),
      ...(again === undefined ? [nextSaid(state, taking, at)] : []),
    ].filter((line) => line !== ""),
    doubts,
    struck: [...all.map((doubt) => doubt.at), ...(noted === undefined ? [] : [noted])],
    ...(again === undefined ? {} : { again }),
    toKeep: again === undefined ? [] : stepsIn([...doubts.map((doubt) => doubt.at), ...(isOpen ? [at] : [])]),
  };
};
