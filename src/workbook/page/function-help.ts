import { FunctionType, type IFunctionInfo } from "@univerjs/preset-sheets-core";
import { type FunctionMetadata, worksheetName } from "../function-metadata";

/** What the sheet says of a function while its name or its arguments are typed. */
export const functionHelp = (metadata: FunctionMetadata): IFunctionInfo => ({
  functionName: worksheetName(metadata),
  functionType: FunctionType.User,
  description: metadata.description ?? "",
  abstract: metadata.description ?? "",
  functionParameter: metadata.parameters.map(({ name, description = "", dimensionality, optional }) => ({
    name,
    detail: description,
    example: dimensionality === "matrix" ? "A1:B9" : "A1",
    require: optional ? 0 : 1,
    repeat: 0,
  })),
});
