import type { PieceKind } from "../solver/fit/acts";
import type { Unit } from "../solver/length/length";
import { type Entry, entryOf, entryValue, MOST_DIGITS, paddedEntry } from "./tape-keys";
import {
  type At, BEFORE_ALL, type Flight, flightOf, isSameStep, readAt, readingsAt, type Screen, type State, type StepAt, stepOf, type TakenStep,
  unreadAt, untouched,
} from "./taking";

/**
 * One touch of a key. What the screen knew when it was touched goes with it, so that the same touches lead to the same screen whatever is
 * expected or said by then.
 */
export type Touch =
  | { readonly key: "flight"; readonly flight: Flight }
  | { readonly key: "whole"; readonly whole: number }
  | { readonly key: "part"; readonly part: number; readonly whole?: number }
  | { readonly key: "half"; readonly half: Entry["half"] }
  | { readonly key: "pad" }
  | { readonly key: "digit"; readonly digit: number }
  | { readonly key: "typed" }
  | { readonly key: "next"; readonly day: string }
  | { readonly key: "back" }
  | { readonly key: "read"; readonly at: At }
  | { readonly key: "keep"; readonly steps: readonly StepAt[] }
  | { readonly key: "onward"; readonly at: StepAt }
  | { readonly key: "step"; readonly at: StepAt }
  | { readonly key: "list" }
  | { readonly key: "more"; readonly piece: PieceKind }
  | { readonly key: "ask"; readonly piece: PieceKind };

type Reading = Extract<Screen, { readonly shows: "reading" }>;

const withStep = (state: State, at: StepAt, change: (step: TakenStep) => TakenStep): State => {
  const before = stepOf(state, at) ?? { piece: at.piece, step: at.step, read: {}, isKept: false };
  return { ...state, steps: [...state.steps.filter((one) => !isSameStep(one, at)), change(before)] };
};

const entered = (state: State, screen: Reading, entry: Entry): State => ({ ...state, screen: { ...screen, entry } });

/** A reading shown again, with the keys as they were touched for it. */
const shownAgain = (state: State, at: At, unit: Unit): Screen => {
  const value = readAt(state, at)[at.reading];
  return value === undefined ? untouched(at) : { shows: "reading", at, entry: entryOf(value, unit) };
};

const afterNext = (state: State, screen: Reading, unit: Unit, day: string): State => {
  const { at, entry, backTo } = screen;
  const value = entryValue(entry, unit);
  if (value === undefined) return state;
  const taken = withStep({ ...state, day }, at, (step) => ({ ...step, read: { ...step.read, [at.reading]: value }, isKept: false }));
  if (backTo !== undefined) return { ...taken, screen: { shows: "step", at: backTo } };
  const order = readingsAt(taken, at);
  const reading = order[order.indexOf(at.reading) + 1];
  return {
    ...taken,
    screen: reading === undefined ? { shows: "step", at: { piece: at.piece, step: at.step } } : shownAgain(taken, { ...at, reading }, unit),
  };
};

const afterBack = (state: State, { at, backTo }: Reading, unit: Unit): State => {
  if (backTo !== undefined) return { ...state, screen: { shows: "step", at: backTo } };
  const order = readingsAt(state, at);
  const reading = order[order.indexOf(at.reading) - 1];
  if (reading !== undefined) return { ...state, screen: shownAgain(state, { ...at, reading }, unit) };
  const below = { piece: at.piece, step: at.step - 1 };
  return stepOf(state, below) === undefined ? state : { ...state, screen: { shows: "step", at: below } };
};

/** On to what was not read yet: of the step above first, then anywhere in the flight. */
const afterStep = (state: State, { piece, step }: StepAt): Screen => {
  const flight = flightOf(state, piece);
  if (flight !== undefined && step < flight.last) {
    const above = { piece, step: step + 1 };
    const read = readAt(state, above);
    const reading = readingsAt(state, above).find((one) => read[one] === undefined);
    if (reading !== undefined) return untouched({ ...above, reading });
  }
  const left = unreadAt(state, piece);
  return left === undefined ? { shows: "list" } : untouched(left);
};

const onKeys = (state: State, screen: Reading, touch: Touch, unit: Unit): State => {
  const { entry, pad } = screen;
  switch (touch.key) {
    case "whole":
      return entered(state, screen, { ...entry, whole: touch.whole, isChosen: true });
    case "part":
      return entered(state, screen, { ...entry, part: touch.part, ...(touch.whole === undefined ? {} : { whole: touch.whole }) });
    case "half":
      return entered(state, screen, { ...entry, half: touch.half });
    case "pad":
      return { ...state, screen: { ...screen, pad: "" } };
    case "digit":
      return { ...state, screen: { ...screen, pad: `${pad ?? ""}${touch.digit}`.slice(0, MOST_DIGITS[unit]) } };
    case "typed": {
      const { pad: digits = "", ...rest } = screen;
      return entered(state, rest, paddedEntry(digits, entry, unit));
    }
    case "next":
      return afterNext(state, screen, unit, touch.day);
    case "back": {
      const { pad: _, ...rest } = screen;
      return pad === undefined ? afterBack(state, screen, unit) : { ...state, screen: rest };
    }
    default:
      return state;
  }
};

const begun = (state: State, flight: Flight): State => {
  const with_ = { ...state, flights: [...state.flights.filter(({ piece }) => piece !== flight.piece), flight] };
  const at = unreadAt(with_, flight.piece);
  return { ...with_, screen: at === undefined ? { shows: "list" } : untouched(at) };
};

/** A step opened to read something of it again; where nothing was read of it yet, its first reading. */
const opened = (state: State, at: StepAt): Screen => {
  const [reading] = readingsAt(state, at);
  return stepOf(state, at) === undefined && reading !== undefined ? untouched({ ...at, reading }) : { shows: "step", at };
};

const backTo = ({ screen }: State, { piece, step }: StepAt): StepAt =>
  screen.shows === "step" ? screen.at : screen.shows === "reading" && screen.backTo !== undefined ? screen.backTo : { piece, step };

/** What a touch makes of what was there. */
export const touched = (state: State, touch: Touch, unit: Unit): State => {
  switch (touch.key) {
    case "flight":
      return begun(state, touch.flight);
    case "read":
      return { ...state, screen: untouched(touch.at, backTo(state, touch.at)) };
    case "keep":
      return touch.steps.reduce((kept, at) => withStep(kept, at, (step) => ({ ...step, isKept: true })), state);
    case "onward":
      return { ...state, screen: afterStep(state, touch.at) };
    case "step":
      return { ...state, screen: opened(state, touch.at) };
    case "list":
      return { ...state, screen: { shows: "list" } };
    case "more": {
      const flight = flightOf(state, touch.piece);
      return flight === undefined ? state : begun(state, { ...flight, last: flight.last + 1 });
    }
    case "ask":
      return { ...state, screen: { shows: "flight", piece: touch.piece } };
    default:
      return state.screen.shows === "reading" ? onKeys(state, state.screen, touch, unit) : state;
  }
};

/** Where so many touches lead to. */
export const afterTouches = (touches: readonly Touch[], unit: Unit): State =>
  touches.reduce((state, touch) => touched(state, touch, unit), BEFORE_ALL);
