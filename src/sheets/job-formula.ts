import { type Argument, isRange } from "./job";

/** The namespace the add-in puts before its functions. */
const NAMESPACE = "STAIR";

const plain = (name: string): string => name.replace(/ /g, "_");

const written = (argument: Argument): string => {
  if (argument === null) return "";
  if (typeof argument === "string") return `"${argument.replace(/"/g, '""')}"`;
  if (!isRange(argument)) return typeof argument === "boolean" ? String(argument).toUpperCase() : String(argument);
  if ("input" in argument) return plain(argument.input) + (argument.column === undefined ? "" : `[${argument.column}]`);
  if ("result" in argument) return plain(argument.result);
  if ("stack" in argument) return `VSTACK(${argument.stack.map(written).join(", ")})`;
  if ("beside" in argument) return `HSTACK(${argument.beside.map(written).join(", ")})`;
  return `${NAMESPACE}.${argument.id}(${argument.args.map(written).join(", ")})`;
};

/** An argument or a call as it is typed, with the names of tables and results in place of their ranges. */
export const jobFormula = (argument: Argument): string => `=${written(argument)}`;
