import { type FunctionMetadata, type FunctionsJson, worksheetName } from "../workbook/function-metadata";
import { refusal } from "./refusal";

const argumentText = ({ name, optional }: FunctionMetadata["parameters"][number]): string => (optional === true ? `[${name}]` : name);

const signature = (one: FunctionMetadata): string => `${worksheetName(one)}(${one.parameters.map(argumentText).join(", ")})`;

const wanted = ({ functions }: FunctionsJson, name: string): FunctionMetadata => {
  const bare = name.toUpperCase().replace(/^STAIR\./, "");
  const found = functions.find((one) => one.name.toUpperCase() === bare);
  if (found === undefined) throw refusal(`functions: there is no function ${name}. treadsheet functions lists them all.`);
  return found;
};

/** The functions with what each gives; of one, its arguments too. */
export const functionsText = (metadata: FunctionsJson, name: string | undefined): string => {
  if (name === undefined) return metadata.functions.map((one) => `${signature(one)}\n    ${one.description ?? ""}`).join("\n");
  const one = wanted(metadata, name);
  return [signature(one), one.description ?? "", ...one.parameters.map((each) => `  ${each.name}: ${each.description ?? ""}`)].join("\n");
};

export const functionsJson = (metadata: FunctionsJson, name: string | undefined): unknown =>
  name === undefined ? metadata.functions : wanted(metadata, name);
