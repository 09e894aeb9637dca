import type { StairFacts } from "../solver/layout/stair-facts";
import type { Unit } from "../solver/length/length";
import { STAIR_LABELS, type StairLabel } from "../solver/stair-labels";
import { words } from "../solver/words";
import { readCall } from "./call";
import { type Failed, givenCells, isFailed } from "./cells";
import { type Declaration, isRange, type Parameter, type RangeParameter } from "./declare";
import { size } from "./range-size";
import { isLeftOut } from "./read-argument";
import type { GivenStair } from "./read-stair";
import { toldRead } from "./told-value";

/** An argument of a call as it was read. */
export interface ToldArgument {
  readonly name: string;
  /** Its value in words with the unit; empty where nothing stands for it. */
  readonly value: string;
  readonly says: string;
  readonly isLeftOut: boolean;
}

export interface ToldCall {
  /** The unit of bare numbers; undefined where the function has none. */
  readonly unit: Unit | undefined;
  readonly arguments: readonly ToldArgument[];
  /** What one value each stands for, by its name in words: arguments and labels of a stair. */
  readonly figures: ReadonlyMap<string, string>;
}

/** So many labels, lengths or numbers are named one by one, more are counted. */
const MOST_NAMED = 8;

/** What may stand for its name in a sum. */
const FIGURES: readonly string[] = ["length", "reading", "count", "number", "rate", "money", "angle", "ratio"];

interface ToldLabel {
  readonly name: string;
  readonly value: string;
  readonly isFigure: boolean;
}

const labelsOf = ({ given, unit }: GivenStair): readonly ToldLabel[] =>
  (Object.keys(given) as (keyof StairFacts)[]).map((name) => {
    const { kind }: StairLabel = STAIR_LABELS[name];
    return { name: words(name), value: toldRead(given[name], kind, unit), isFigure: FIGURES.includes(kind) };
  });

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

const rangeText = (value: unknown, { kind }: RangeParameter, unit: Unit | undefined): string => {
  if (kind === "stair") {
    const labels = labelsOf(value as GivenStair);
    if (labels.length > MOST_NAMED) return counted(labels.length, "label");
    return labels.map(({ name, value: told }) => `${name} ${told}`).join(", ");
  }
  const rows = value as readonly unknown[];
  if (kind === "table") return counted(rows.length, "row");
  if (kind === "cells") return `${size(rows as readonly (readonly never[])[]).join(" x ")} cells`;
  if (rows.length > MOST_NAMED) return counted(rows.length, kind === "lengths" ? "length" : "number");
  return rows.map((one) => (one === undefined ? "?" : kind === "lengths" ? toldRead(one, "length", unit) : String(one))).join(", ");
};

const valueText = (value: unknown, parameter: Parameter, unit: Unit | undefined): string => {
  if (value === undefined) return "";
  return isRange(parameter) ? rangeText(value, parameter, unit) : toldRead(value, parameter.kind, unit);
};

/** What a call was given, as it was read, in words; the error where it cannot be read. One value stands where one is asked for. */
export const toldCall = (declaration: Declaration, passed: readonly unknown[]): ToldCall | Failed => {
  const read = readCall(declaration, passed);
  if (isFailed(read)) return read;
  const { given, unit } = read;
  const figures = new Map<string, string>();
  const told = Object.entries(declaration.parameters).map(([name, parameter], place): ToldArgument => {
    const raw = passed[place];
    const value = valueText(given[name], parameter, unit);
    if (FIGURES.includes(parameter.kind) && value !== "") figures.set(words(name), value);
    if (parameter.kind === "stair" && given[name] !== undefined)
      for (const label of labelsOf(given[name] as GivenStair)) if (label.isFigure) figures.set(label.name, label.value);
    const leftOut = raw === undefined || raw === null || isLeftOut(givenCells(raw));
    return { name, value: value === "" && leftOut ? (parameter.without ?? "") : value, says: parameter.says, isLeftOut: leftOut };
  });
  return { unit, arguments: told, figures };
};
