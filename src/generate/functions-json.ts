import type { Declaration, Parameter } from "../functions/declare";
import { defaultSaid, isMatrix, isOmissible, spills } from "../functions/describe";
import { plainText } from "../functions/plain-text";

const described = (parameter: Parameter): string => {
  const value = defaultSaid(parameter);
  return plainText(value === "" ? parameter.says : `${parameter.says} Left out: ${value}.`);
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
    })),
    result: { type: "any", dimensionality: spills(declaration) ? "matrix" : "scalar" },
  })),
});
