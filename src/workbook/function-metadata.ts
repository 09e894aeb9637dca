/** The part of functions.json the sheet needs: https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json */
export interface FunctionParameter {
  readonly name: string;
  readonly description?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly FunctionParameter[];
}

export interface FunctionsJson {
  readonly functions: readonly FunctionMetadata[];
}

/** The namespace the manifest puts before the ids. */
const NAMESPACE = "STAIR";

export const worksheetName = ({ name }: FunctionMetadata): string => `${NAMESPACE}.${name}`.toUpperCase();
