import { element } from "../pane/element";
import type { CellPlace } from "../sheets/bad-cells";
import type { Cell, Input } from "../sheets/job";
import { isErrorCell, type Rows } from "../sheets/job-run";
import { jobFormula } from "../sheets/job-formula";
import { cellText } from "./cell-text";

export interface InputGrid {
  readonly part: HTMLElement;
  /** Shows what formulas among the cells come to, and marks the fields that a sentence speaks of. */
  readonly show: (cells: Rows, bad: readonly (CellPlace & { readonly sentence: string })[]) => void;
}

const LABEL_COLUMN = 0;
/** Characters a field is wide at least and at most; longer texts scroll in their field. */
const NARROWEST = 5;
const WIDEST = 14;

const fieldSize = ({ rows }: Input, column: number): number =>
  Math.min(WIDEST, Math.max(NARROWEST, ...rows.map((row) => (typeof row[column] === "object" ? 0 : String(row[column]).length + 1))));

/** One table of the job as fields to type in. `typed` hears of every change. */
export const inputGrid = (page: Document, input: Input, typed: (row: number, column: number, text: string) => void): InputGrid => {
  const { name, says, headings, labelled, rows } = input;
  const fields = new Map<string, HTMLInputElement>();
  const formulas = new Map<string, HTMLOutputElement>();

  const rowName = (row: readonly unknown[], index: number): string => {
    const [first] = row;
    if (labelled || headings[0] === "label" || headings[0] === "item") return String(first);
    return headings[0] === "step" ? `step ${String(first)}` : `row ${index + 1}`;
  };

  const cell = (row: number, column: number): HTMLTableCellElement => {
    const value = rows[row]?.[column] ?? "";
    if (labelled && column === LABEL_COLUMN) {
      const label = element(page, "th", String(value));
      label.scope = "row";
      return label;
    }
    const labelText = `${says}: ${rowName(rows[row] ?? [], row)}, ${headings[column] ?? ""}`;
    if (typeof value === "object") {
      const output = element(page, "output");
      output.title = jobFormula(value);
      output.setAttribute("aria-label", labelText);
      formulas.set(`${row} ${column}`, output);
      return element(page, "td", [output], "formula");
    }
    const field = element(page, "input");
    field.type = "text";
    field.autocomplete = "off";
    field.spellcheck = false;
    field.size = fieldSize(input, column);
    field.name = `${name}, ${row + 1}, ${headings[column] ?? ""}`;
    field.value = String(value);
    field.setAttribute("aria-label", labelText);
    field.addEventListener("input", () => typed(row, column, field.value));
    fields.set(`${row} ${column}`, field);
    return element(page, "td", [field]);
  };

  const head = element(page, "tr", headings.map((heading) => {
    const made = element(page, "th", heading);
    made.scope = "col";
    return made;
  }));
  const body = rows.map((row, index) => element(page, "tr", row.map((_, column) => cell(index, column))));
  const table = element(page, "table", [element(page, "caption", says), element(page, "thead", [head]), element(page, "tbody", body)], "input");

  return {
    part: element(page, "div", [table], "scroll"),
    show: (cells, bad) => {
      // The first of the rows worked out holds the headings.
      for (const [key, output] of formulas) {
        const [row = 0, column = 0] = key.split(" ").map(Number);
        const value = cells[row + 1]?.[column] ?? "";
        output.textContent = isErrorCell(value) ? value.code : cellText(value);
      }
      for (const [key, field] of fields) {
        const found = bad.find(({ row, column }) => key === `${row} ${column}`);
        if (found === undefined) {
          field.removeAttribute("aria-invalid");
          field.removeAttribute("aria-describedby");
        } else {
          field.setAttribute("aria-invalid", "true");
          field.setAttribute("aria-describedby", found.sentence);
        }
      }
    },
  };
};

/** The table with one cell typed over. */
export const typedOver = (input: Input, row: number, column: number, cell: Cell): Input => ({
  ...input,
  rows: input.rows.map((cells, at) => (at === row ? cells.map((old, place) => (place === column ? cell : old)) : cells)),
});
