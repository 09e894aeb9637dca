import { DEGREES_PER_RADIAN } from "../degrees";
import { isProblem, type Problem, problem } from "../problem";
import type { ReadFlight } from "./misread";
import { flightReadings, inchIn } from "./skirt-surface/flight-readings";
import { riserPiece, treadPiece } from "./skirt-surface/piece-readings";
import type { Sighting } from "./skirt-surface/skirt-model";
import { LEAST_STEPS, stepsWithDiagonals, type SurfaceVerdict, surfaceVerdict } from "./skirt-surface/surface-verdict";
import { tapeVariance } from "./skirt-surface/tape-variance";

/** What the next tread will read, before it is read: lengths in the unit of the call, angles in degrees. */
export interface NextStep {
  readonly step: string | number;
  readonly back: number;
  readonly front: number;
  readonly leftAngle: number;
  readonly rightAngle: number;
  /** What 95 in 100 readings of back and front are within. */
  readonly giveOrTake: number;
}

/** 95 in 100 of a normal lie within so many standard deviations. */
const MOST_OF_ALL = 1.96;

/** Floating-point dust of a least-squares answer: finer than any tape or saw. */
const withoutDust = (value: number): number => Math.round(value * 1e9) / 1e9;

/** What a length will be, and its variance, over every kind of skirt that it may be: where they differ, it is less sure. */
const guess = ({ skirts, lengths }: SurfaceVerdict, sighting: Sighting): { readonly value: number; readonly variance: number } => {
  const guesses = skirts.map(({ model, share }) => ({ ...model.guess(lengths, sighting), share }));
  const value = guesses.reduce((sum, one) => sum + one.share * one.value, 0);
  return { value, variance: guesses.reduce((sum, one) => sum + one.share * (one.variance + (one.value - value) ** 2), 0) };
};

const nextName = (steps: readonly (string | number | undefined)[]): string | number => {
  const numbers = steps.map((step) => (step === undefined ? Number.NaN : Number(step)));
  return numbers.every(Number.isInteger) ? Math.max(...numbers) + 1 : steps.every((step) => step === undefined) ? steps.length + 1 : "next";
};

/** The tread over the last one read, as both skirts run on: doubtful readings are put right on paper first. */
export const nextStep = (given: ReadFlight): NextStep | Problem<"step-twice" | "too-few-steps" | "no-skirts"> => {
  const { treads, risers, unit, closure } = given;
  const flight = flightReadings(treads.map(treadPiece), risers.map(riserPiece), unit);
  if (isProblem(flight)) return flight;
  const steps = stepsWithDiagonals(flight, "tread");
  if (steps < LEAST_STEPS) return problem("too-few-steps", { steps, least: LEAST_STEPS });
  const inch = inchIn(unit);
  const verdict = surfaceVerdict(flight, inch / closure.division);
  if (verdict.skirts.length === 0) return problem("no-skirts");
  const { front: far, back: near } = flight.next;
  const run = near.along - far.along;
  const back = guess(verdict, { left: near, right: near, turn: 0 });
  const front = guess(verdict, { left: far, right: far, turn: 0 });
  const diagonal = guess(verdict, { left: near, right: far, turn: run });
  const leftOut = front.value - diagonal.value;
  const rightOut = diagonal.value - back.value;
  const deviation = Math.sqrt(Math.max(back.variance, front.variance) + tapeVariance(flight, inch / closure.division));
  return {
    step: nextName(treads.map(({ step }) => step)),
    back: withoutDust(back.value * inch),
    front: withoutDust(front.value * inch),
    leftAngle: withoutDust(Math.atan2(leftOut, run) * DEGREES_PER_RADIAN),
    rightAngle: withoutDust(Math.atan2(rightOut, run) * DEGREES_PER_RADIAN),
    giveOrTake: MOST_OF_ALL * deviation * inch,
  };
};
