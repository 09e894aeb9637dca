import type { Table } from "../functions/columns";
import type { Declaration } from "../functions/declare";
import { columnKindText, resultHeadings, signature } from "../functions/describe";
import { words } from "../solver/words";

const resultText = (declaration: Declaration): string => {
  const headings = resultHeadings(declaration);
  return headings.length === 0 ? declaration.result.kind : headings.join(", ");
};

const columnText = ([key, column]: [string, Table["columns"][string]]): string => {
  const value = "default" in column && column.default !== "" ? ` = ${String(column.default === Infinity ? "any" : column.default)}` : "";
  return column.required ? words(key) : `[${words(key)}${value}]`;
};

/** What users' workbooks rest on: names, arguments in order, result headings, table headings and labels. */
export const signatures = (catalogue: readonly Declaration[], tables: readonly Table[], stair: Table): string =>
  [
    "# Signatures",
    "",
    "Generated from the declarations. Users' workbooks rest on every line: nothing here is renamed, reordered or removed after a " +
      "release, only appended.",
    "",
    "## Functions",
    "",
    ...catalogue.map((declaration) => `- \`${signature(declaration)}\` → ${resultText(declaration)}`),
    "",
    "## Tables, columns in the order read without headings",
    "",
    ...tables.map((table) => `- ${table.name}: ${Object.entries(table.columns).map(columnText).join(", ")}`),
    "",
    "## The stair table, labels",
    "",
    ...Object.entries(stair.columns).map(([key, column]) => `- ${words(key)}: ${columnKindText(column)}`),
    "",
  ].join("\n");
