import type { Length, Unit } from "../solver/length/length";
import { words } from "../solver/words";
import { GLUE_DEFAULTS, GLUE_LABELS, type GlueLabel, type GlueTerms, TOGETHER } from "../solver/yield/glue-up/glue-terms";
import { type Failed, failed, folded, isFailed } from "./cells";
import type { Sign } from "./columns";
import { readChoice, readCount, readLength } from "./read-value";
import { lengthText, say } from "./say";

/** A row of a table of terms: what was typed, before its label says how to read it. */
export interface GivenGlue {
  readonly label: string | number;
  readonly value?: string | number;
  readonly row: number;
}

const NAMES: ReadonlyMap<string, GlueLabel> = new Map(GLUE_LABELS.map((label) => [folded(words(label)), label]));
const LABELS = GLUE_LABELS.map(words);
const POSITIVE: readonly GlueLabel[] = ["leastStrip", "greatestStrip"];

const isAny = (value: string | number): boolean => typeof value === "string" && folded(value) === folded("any");

const readTerm = (label: GlueLabel, where: string, value: string | number, unit: Unit): Length | number | string | Failed => {
  if (label === "together") return readChoice(where, value, TOGETHER);
  if (label === "strips") return isAny(value) ? Infinity : readCount(where, value, { sign: "positive" });
  const sign: Sign = POSITIVE.includes(label) ? "positive" : "not negative";
  return readLength(where, value, unit, { sign });
};

export interface GivenTerms {
  readonly terms: GlueTerms;
  /** Those that were left out, in words. */
  readonly assumed: readonly string[];
}

const shown = (label: GlueLabel, unit: Unit): string => {
  const value = GLUE_DEFAULTS[label];
  if (typeof value === "object") return `${words(label)} ${value.isZero() ? "none" : lengthText(value, unit)}`;
  return `${words(label)} ${value === Infinity ? "any" : String(value)}`;
};

/** The terms of a glue-up with what stands in for those left out. */
export const glueTerms = (argument: string, rows: readonly GivenGlue[], unit: Unit): GivenTerms | Failed => {
  const given: Partial<Record<GlueLabel, Length | number | string>> = {};
  for (const { label, value, row } of rows) {
    const text = String(label);
    const name = NAMES.get(folded(text));
    if (name === undefined) return failed(say.unknown(`${argument}, label in row ${row}`, text, LABELS));
    const where = `${words(name)} in row ${row} of ${argument}`;
    if (value === undefined || value === "") return failed(`${where}: is empty or 0; write none for 0, or leave the row out for the usual`);
    if (given[name] !== undefined) return failed(`${argument}: "${words(name)}" stands there twice; keep one`);
    const read = readTerm(name, where, value, unit);
    if (isFailed(read)) return read;
    given[name] = read;
  }
  return {
    terms: { ...GLUE_DEFAULTS, ...given } as GlueTerms,
    assumed: GLUE_LABELS.filter((label) => given[label] === undefined).map((label) => shown(label, unit)),
  };
};
