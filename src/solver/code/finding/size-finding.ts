import { type Exact, exact } from "../../length/exact";
import { FACT_LABELS } from "../fact-labels";
import { type Figure, type Limit, type Measure, type PublishedUnit, type RelationRule, sizeOf } from "../profile";
import { labelsOf } from "../reading";
import { sizeText } from "../size-text";
import { type Finding, compared, inUnit, missing, numberOf, type RuleOf, sizeWords, type Stair } from "./compared";

const least = (one: Exact, other: Exact): Exact => (one.lt(other) ? one : other);

/** A range as it stands in a cell: two numbers in the unit of the row. */
const rangeCell = (min: Figure, max: Figure, unit: PublishedUnit): string =>
  `${numberOf(min, unit).toDecimalPlaces(CELL_DECIMALS).toString()} to ${numberOf(max, unit).toDecimalPlaces(CELL_DECIMALS).toString()}`;

/** Holds every 1/64 in in full. */
const CELL_DECIMALS = 6;

const slope = (rise: number, run: number): string => `${rise}:${run}`;

const equals = ({ of, values: printed }: RuleOf<"equals">, stair: Stair, unit: PublishedUnit): Finding => {
  const values = printed.map(sizeOf);
  const off = (size: Exact): Exact => values.map((value) => size.minus(value).abs()).reduce(least).neg();
  const words = printed.map((value) => sizeWords(value, unit)).join(" or ");
  const cell = values.length === 1 && values[0] !== undefined ? inUnit(values[0], unit) : words;
  return compared(stair, of, unit, cell, `exactly ${words}`, off);
};

const TOUCHING = "gap equals the limit; make it smaller";

/**
 * A sphere that fits with room to spare is kept out by nothing. One exactly as wide as the opening touches both sides: whether it
 * goes through turns on how far the parts give, so that case is left to a person instead of passing at the boundary.
 */
const sphere = (of: Measure, printed: Figure, stair: Stair, unit: PublishedUnit): Finding => {
  const size = sizeOf(printed);
  const words = `a ball of ${sizeWords(printed, unit)} must not pass`;
  const found = compared(stair, of, unit, inUnit(size, unit), words, (gap) => size.minus(gap));
  return found.margin?.isZero() === true ? { ...found, outcome: "touches", notes: [...found.notes, TOUCHING] } : found;
};

const relation = (rule: RelationRule, stair: Stair, limit: Limit): Finding => {
  const { unit } = limit;
  const other = rule.than.find((fact) => stair.facts[fact] !== undefined);
  const value = other === undefined ? undefined : stair.facts[other];
  if (other === undefined || value === undefined) {
    return missing([labelsOf(rule.of), FACT_LABELS[rule.than[0]].label].join(" and "), limit.text);
  }
  const whole = exact(value).times(rule.part?.times ?? 1);
  const cap = rule.capped === undefined ? undefined : sizeOf(rule.capped);
  const isCapped = cap !== undefined && whole.gt(cap);
  const size = isCapped ? cap : whole;
  const margin = (reading: Exact): Exact => {
    if (rule.sense === "exactly") return reading.minus(size).abs().neg();
    return rule.sense === "at least" ? reading.minus(size) : size.minus(reading);
  };
  const what = isCapped
    ? "which is asked for at most"
    : `${rule.part === undefined ? "" : `${rule.part.of} `}the ${FACT_LABELS[other].label}`;
  const words = isCapped ? `${rule.sense} ${sizeText(size, unit)}, ${what}` : `${rule.sense} ${what}, ${sizeText(size, unit)}`;
  return compared(stair, rule.of, unit, inUnit(size, unit), words, margin);
};

/** What a rule that holds a size against figures says of a stair. */
export const sizeFinding = (
  rule: RuleOf<"min" | "max" | "range" | "equals" | "slope" | "sphere" | "relation">, stair: Stair, limit: Limit,
): Finding => {
  const { unit } = limit;
  switch (rule.comparator) {
    case "min": {
      const min = sizeOf(rule.min);
      return compared(stair, rule.of, unit, inUnit(min, unit), `at least ${sizeWords(rule.min, unit)}`, (size) => size.minus(min));
    }
    case "max": {
      const max = sizeOf(rule.max);
      return compared(stair, rule.of, unit, inUnit(max, unit), `at most ${sizeWords(rule.max, unit)}`, (size) => max.minus(size));
    }
    case "range": {
      const [min, max] = [sizeOf(rule.min), sizeOf(rule.max)];
      const words = `${sizeWords(rule.min, unit)} to ${sizeWords(rule.max, unit)}`;
      return compared(stair, rule.of, unit, rangeCell(rule.min, rule.max, unit), words, (size) => least(size.minus(min), max.minus(size)));
    }
    case "equals":
      return equals(rule, stair, unit);
    case "slope": {
      // A sheet holds 1/48 at 15 digits, so the limit is read at as many.
      const max = exact(rule.rise / rule.run);
      return compared(stair, rule.of, unit, slope(rule.rise, rule.run), `at most ${slope(rule.rise, rule.run)}`, (size) => max.minus(size));
    }
    case "sphere":
      return sphere(rule.of, rule.sphere, stair, unit);
    case "relation":
      return relation(rule, stair, limit);
  }
};
