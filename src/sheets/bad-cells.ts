import { type Argument, type Call, type Cell, type Input, isRange } from "./job";

/** A sentence about something that is wrong, with the step of the result row it stands in, where there is one. */
export interface Finding {
  readonly says: string;
  readonly step?: Cell;
}

export interface CellPlace {
  readonly input: string;
  readonly row: number;
  readonly column: number;
}

const folded = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]/g, "");

/** What a sentence speaks of: its name, and the step or the row of the range, counted from 1, that stands after it. */
interface Subject {
  readonly name: string;
  readonly step?: string;
  readonly row?: number;
  readonly isColumn?: true;
}

const subjectOf = ({ says, step }: Finding): Subject => {
  const head = says.slice(0, Math.max(0, says.indexOf(":")));
  const inStep = /^(.+) in step (.+)$/.exec(head);
  if (inStep) return { name: folded(inStep[1] ?? ""), step: inStep[2] ?? "" };
  const inRow = /^(.+) in row (\d+)/.exec(head);
  if (inRow) return { name: folded(inRow[1] ?? ""), row: Number(inRow[2]) };
  const inColumn = /^(.+), row (\d+)$/.exec(head);
  if (inColumn) return { name: folded(inColumn[1] ?? ""), row: Number(inColumn[2]), isColumn: true };
  return { name: folded(head), ...(step === undefined ? {} : { step: String(step) }) };
};

interface Reached {
  readonly input: string;
  readonly column?: string;
  readonly label?: string;
}

/** The tables a call reads itself, not those behind a result. */
const reached = (argument: Argument): readonly Reached[] => {
  if (!isRange(argument) || "result" in argument) return [];
  if ("input" in argument) return [argument];
  if ("stack" in argument) return argument.stack.flatMap(reached);
  if ("beside" in argument) return argument.beside.flatMap(reached);
  const [table, label] = argument.args;
  return argument.id === "PICK" && typeof label === "string" && table !== undefined
    ? reached(table).map((found) => ({ ...found, label }))
    : argument.args.flatMap(reached);
};

const LABEL_COLUMN = 0;
const VALUE_COLUMN = 1;

const labelPlace = ({ name, rows }: Input, label: string): CellPlace[] => {
  const row = rows.findIndex((cells) => folded(String(cells[LABEL_COLUMN])) === label);
  return row < 0 ? [] : [{ input: name, row, column: VALUE_COLUMN }];
};

const place = (input: Input, { column: columnName, label }: Reached, subject: Subject): CellPlace[] => {
  const { name, headings, rows } = input;
  const inside = (row: number, column: number): CellPlace[] => (rows[row]?.[column] === undefined ? [] : [{ input: name, row, column }]);
  if (label !== undefined) return folded(label) === subject.name ? labelPlace(input, subject.name) : [];
  if (columnName !== undefined) return subject.isColumn ? inside((subject.row ?? 0) - 1, headings.indexOf(columnName)) : [];
  if (input.labelled) return labelPlace(input, subject.name);
  const column = headings.findIndex((heading) => folded(heading) === subject.name);
  // Rows of a table count its headings as the first.
  if (subject.row !== undefined) return inside(subject.row - 2, column);
  const steps = headings.indexOf("step");
  return subject.step === undefined ? [] : inside(rows.findIndex((cells) => String(cells[steps]) === subject.step), column);
};

/** The typed cells that the sentences of a call name. */
export const badCells = (call: Call, inputs: ReadonlyMap<string, Input>, findings: readonly Finding[]): readonly CellPlace[] => {
  const tables = call.args.flatMap(reached);
  return findings.flatMap((finding) => {
    const subject = subjectOf(finding);
    return tables.flatMap((table) => {
      const input = inputs.get(table.input);
      return input === undefined ? [] : place(input, table, subject);
    });
  });
};
