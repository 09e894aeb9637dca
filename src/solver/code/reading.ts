import { Exact, exact } from "../length/exact";
import type { FactName, MeasuredFact, CodeFacts, Step, StepColumn } from "./fact-labels";
import { FACT_LABELS } from "./fact-labels";
import type { Formula, Measure } from "./profile";

/** One value a limit is compared with, in millimetres, square millimetres or as it is, and where it was read. */
export interface Reading {
  readonly where: string;
  readonly size: Exact;
}

/** The column of the measured steps that tells a fact step by step. */
const STEP_COLUMN: Partial<Record<FactName, StepColumn>> = {
  riserHeight: "rise",
  treadDepth: "run",
  clearWidth: "width",
  nosing: "nosing",
};

/** Where a value was read that no step was measured for. */
export const DESIGN = "the design value";
const STRAIGHT_ANGLE = 180;

/** Digits kept of an angle: far below any reading, far above the dust of 60-digit arithmetic. */
const ANGLE_DECIMALS = 40;

export const stepName = (step: Step["step"]): string => (typeof step === "number" ? `step ${step}` : step);

const ofFact = (fact: MeasuredFact, facts: CodeFacts, steps: readonly Step[]): Reading[] => {
  const value = facts[fact];
  const column = STEP_COLUMN[fact];
  const measured = column === undefined ? [] : ofColumn(column, steps);
  return value === undefined ? measured : [{ where: DESIGN, size: exact(value) }, ...measured];
};

/** The measured values of one column, step by step. */
export const ofColumn = (column: StepColumn, steps: readonly Step[]): Reading[] =>
  steps.flatMap((step) => {
    const size = step[column];
    return size === undefined ? [] : [{ where: stepName(step.step), size }];
  });

const FORMULAS: Readonly<Record<Formula, (rise: Exact, run: Exact) => Exact>> = {
  "two risers plus run": (rise, run) => rise.times(2).plus(run),
  "riser plus run": (rise, run) => rise.plus(run),
  "run less riser": (rise, run) => run.minus(rise),
  "riser times run": (rise, run) => rise.times(run),
  pitch: (rise, run) => Exact.atan(rise.div(run)).times(STRAIGHT_ANGLE).div(Exact.acos(-1)).toDecimalPlaces(ANGLE_DECIMALS),
};

const ofFormula = (formula: Formula, facts: CodeFacts, steps: readonly Step[]): Reading[] => {
  const { riserHeight, treadDepth } = facts;
  const pairs = [{ step: DESIGN, rise: riserHeight, run: treadDepth }, ...steps];
  return pairs.flatMap(({ step, rise, run }) =>
    rise === undefined || run === undefined ? [] : [{ where: stepName(step), size: FORMULAS[formula](rise, run) }],
  );
};

/** Every reading a measure has: the design value first, then step by step. */
export const readings = (measure: Measure, facts: CodeFacts, steps: readonly Step[]): readonly Reading[] => {
  if (typeof measure === "string") return ofFact(measure, facts, steps);
  if ("formula" in measure) return ofFormula(measure.formula, facts, steps);
  if ("inner" in measure) return ofFact(measure.inner, facts, steps.slice(1, -1));
  return measure.flatMap((fact) =>
    ofFact(fact, facts, steps).map(({ where, size }) => ({ where: where === DESIGN ? FACT_LABELS[fact].label : where, size })),
  );
};

/** The labels that would give a measure a reading. */
export const labelsOf = (measure: Measure): string => {
  if (typeof measure === "string") return FACT_LABELS[measure].label;
  if ("formula" in measure) return "unit rise and run";
  return "inner" in measure ? FACT_LABELS[measure.inner].label : measure.map((fact) => FACT_LABELS[fact].label).join(" or ");
};

/** The least comfortable reading by a margin that is positive inside; of equals, the first. */
export const worst = (all: readonly Reading[], margin: (size: Exact) => Exact): Reading | undefined =>
  all.reduce<Reading | undefined>(
    (found, reading) => (found === undefined || margin(reading.size).lt(margin(found.size)) ? reading : found),
    undefined,
  );
