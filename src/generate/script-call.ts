import type { Declaration, ExampleCell } from "../functions/declare";
import { argumentsOf } from "../functions/formula";
import { exportedName } from "../package/exported-name";

export type Example = Declaration["examples"][number];

/** A range of more characters than this stands a row a line. */
const ONE_LINE = 60;

const rowText = (row: readonly unknown[]): string => `[${row.map((cell) => JSON.stringify(cell)).join(", ")}]`;

const valueText = (value: ExampleCell): string => {
  if (value === null) return "undefined";
  if (typeof value !== "object") return JSON.stringify(value);
  const rows = value.map(rowText);
  return rows.join(", ").length <= ONE_LINE ? `[${rows.join(", ")}]` : `[\n${rows.map((row) => `  ${row},\n`).join("")}]`;
};

/** The call of an example as a script writes it. */
export const scriptCall = (declaration: Declaration, { given }: Example): string =>
  `${exportedName(declaration)}(${argumentsOf(declaration, given).map(valueText).join(", ")})`;
