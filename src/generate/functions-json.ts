import type { Declaration, Parameter } from "../functions/declare";
import { defaultSaid, isMatrix, isOmissible, spills } from "../functions/describe";
import { plainText } from "../functions/plain-text";
import { type ValueList, valueList } from "./value-lists";

const described = (parameter: Parameter): string => {
  const value = defaultSaid(parameter);
  return plainText(value === "" ? parameter.says : `${parameter.says} Left out: ${value}.`);
};

const listId = (name: string, parameter: Parameter): { readonly customEnumId?: string } => {
  const list = valueList(name, parameter);
  return list === undefined ? {} : { customEnumId: list.id };
};

/** Every list once. */
const lists = (catalogue: readonly Declaration[]): readonly ValueList[] => {
  const all = catalogue.flatMap(({ parameters }) => Object.entries(parameters).flatMap(([name, one]) => valueList(name, one) ?? []));
  return [...new Map(all.map((list) => [list.id, list])).values()];
};

/**
 * The metadata a host reads: https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json. Every argument is of type any, so
 * that our own sentence says what is wrong with it, and error cells come through.
 */
export const functionsJson = (catalogue: readonly Declaration[]): unknown => ({
  $schema: "https://developer.microsoft.com/json-schemas/office-js/custom-functions.schema.json",
  allowErrorForDataTypeAny: true,
  functions: catalogue.map((declaration) => ({
    id: declaration.id,
    name: declaration.id,
    description: plainText(declaration.says),
    parameters: Object.entries(declaration.parameters).map(([name, parameter]) => ({
      name,
      description: described(parameter),
      type: "any",
      dimensionality: isMatrix(parameter) ? "matrix" : "scalar",
      ...(isOmissible(parameter) ? { optional: true } : {}),
      ...listId(name, parameter),
    })),
    result: { type: "any", dimensionality: spills(declaration) ? "matrix" : "scalar" },
  })),
  enums: lists(catalogue),
});
