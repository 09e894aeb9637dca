import type { Declaration, ExampleCell } from "./declare";

/** The namespace the manifest puts before every id. */
export const NAMESPACE = "STAIR";

const literal = (cell: string | number | boolean | null): string => {
  if (cell === null) return "";
  if (typeof cell === "string") return `"${cell.replace(/"/g, '""')}"`;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell);
};

/** A value as it is typed into a formula; a range becomes an array constant, its empty cells "". */
export const typed = (value: ExampleCell): string =>
  typeof value === "object" && value !== null
    ? `{${value.map((row) => row.map((cell) => (cell === null ? '""' : literal(cell))).join(",")).join(";")}}`
    : literal(value);

/** Arguments in the order of the declaration, up to the last one given; those left out in between are null. */
export const argumentsOf = (declaration: Declaration, given: Readonly<Record<string, ExampleCell | undefined>>): ExampleCell[] => {
  const cells = Object.keys(declaration.parameters).map((name) => given[name] ?? null);
  while (cells.length > 0 && cells[cells.length - 1] === null) cells.pop();
  return cells;
};

/** The call as a user types it: `=STAIR.RISERS(108.5)`. */
export const formula = (declaration: Declaration, given: Readonly<Record<string, ExampleCell | undefined>>): string =>
  `=${NAMESPACE}.${declaration.id}(${argumentsOf(declaration, given).map(typed).join(",")})`;
