import type { Parameter } from "../functions/declare";
import { isMatrix } from "../functions/describe";
import { PROFILES } from "../solver/code/profiles";
import { SPECIES } from "../solver/wood/species";

interface ListedValue {
  readonly name: string;
  readonly stringValue: string;
  readonly tooltip?: string;
}

/** Values that Excel offers while a formula is typed: `enums`, custom-functions-json. */
export interface ValueList {
  readonly id: string;
  readonly type: "string";
  readonly values: readonly ListedValue[];
}

const plain = (options: readonly string[]): readonly ListedValue[] => options.map((name) => ({ name, stringValue: name }));

/** Arguments that take a text, of which there is a list; another name, or part of one, is taken all the same. */
const TEXTS: Readonly<Record<string, readonly ListedValue[]>> = {
  code: PROFILES.map(({ id, title, edition, region }) => ({ name: id, stringValue: id, tooltip: `${title}, ${edition}, ${region}` })),
  // Those that every function with a species has values for.
  species: plain(SPECIES.filter(({ movement }) => movement !== undefined).map(({ name }) => name)),
};

const valuesOf = (name: string, parameter: Parameter): readonly ListedValue[] => {
  // Numbers are typed as numbers, and the list would make texts of them.
  if (parameter.kind === "choice") return parameter.options.some((option) => /^\d/.test(option)) ? [] : plain(parameter.options);
  if (parameter.kind === "unit") return plain(["in", "mm"]);
  return parameter.kind === "text" ? (TEXTS[name] ?? []) : [];
};

/**
 * The list that goes with an argument. Ranges have none: the documentation tells of values alone. What it says of customEnumId asks for no
 * type of the argument (of cellValueType, beside it, it does: any), so it stands beside ours, which are all of type any.
 */
export const valueList = (name: string, parameter: Parameter): ValueList | undefined => {
  const values = isMatrix(parameter) ? [] : valuesOf(name, parameter);
  // Two arguments of one name with other values would be two lists.
  const id = parameter.kind === "choice" ? `${name}.${parameter.options.join(".")}` : name;
  return values.length === 0 ? undefined : { id: id.toUpperCase().replace(/[^A-Z0-9.]/g, ""), type: "string", values };
};
