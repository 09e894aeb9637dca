import type { Declaration, ResultKind } from "../../src/functions/declare";
import { words } from "../../src/solver/words";
import type { Rows, WorkedCase } from "./case-kind";
import { answerOf, casesOf } from "./worked-case";

/** One thing a function answers: its value, a column of its result, or a label of a result that has a row a label. */
export interface Output {
  readonly name: string;
  /** Only outputs of one kind can be taken for one another. */
  readonly kind: ResultKind;
  /** Places of its cells in an answer, row by row. */
  places(worked: WorkedCase, rows: Rows): readonly (readonly [number, number])[];
}

const hasHeadings = ({ result }: Declaration, worked: WorkedCase): boolean => result.kind === "table" && worked.given["headings"] !== false;

const columnsOf = ({ result }: Declaration) => ("columns" in result ? Object.entries(result.columns) : []);

/** Places of a column below its heading; a declared column stands where it is declared, and one that may be left off is the last. */
const columnPlaces = (declaration: Declaration, column: number) => (worked: WorkedCase, rows: Rows) =>
  rows.flatMap((row, down): [number, number][] =>
    column < row.length && !(down === 0 && hasHeadings(declaration, worked)) ? [[down, column]] : [],
  );

/** The column that says what a row tells, where every row tells another thing. */
const labelColumn = (declaration: Declaration): number => columnsOf(declaration).findIndex(([name]) => name === "label");

/** Whose first column is the user's own name of a board. */
const LABELLED_BY_USERS: readonly string[] = ["TALLY"];

/** Only of these is a `label` what the function itself says; elsewhere it is the user's own name of a piece. */
const isLabelled = (declaration: Declaration): boolean =>
  labelColumn(declaration) === 0 && !LABELLED_BY_USERS.includes(declaration.id);

/** The figure of a label stands in the first column behind it that holds a value, whatever the row. */
const valueColumn = (declaration: Declaration): number =>
  columnsOf(declaration).findIndex(([, { kind }]) => ["value", "reading", "money"].includes(kind));

/** A nosing of a turn is one of a series: the figure after the name is left off. */
const SERIES = / \d+$/;

/** What a row tells: its label, and which of two strings where there is a column for it. */
const labelOf = (declaration: Declaration, row: Rows[number] = []): string =>
  row.slice(0, valueColumn(declaration)).filter((cell) => cell !== "").map(String).join(" ").replace(SERIES, "").replace(/ \d+ /, " ");

const labelsOf = (declaration: Declaration): readonly string[] => {
  if (!isLabelled(declaration)) return [];
  const labels = casesOf(declaration).flatMap((worked) =>
    "fails" in worked
      ? []
      : answerOf(declaration, worked.given)
          .slice(hasHeadings(declaration, worked) ? 1 : 0)
          .map((row) => labelOf(declaration, row)),
  );
  return [...new Set(labels)];
};

const labelPlaces = (declaration: Declaration, label: string) => (worked: WorkedCase, rows: Rows) =>
  columnPlaces(declaration, valueColumn(declaration))(worked, rows).filter(([down]) => labelOf(declaration, rows[down]) === label);

const found = (declaration: Declaration): readonly Output[] => {
  const { result } = declaration;
  if (!("columns" in result)) {
    const ofAll: Readonly<Record<string, ResultKind>> = { lengths: "length", amounts: "money", cell: "value" };
    const kind = ofAll[result.kind] ?? (result.kind as ResultKind);
    return [
      {
        name: declaration.id,
        kind,
        places: (_, rows) => rows.flatMap((row, down) => row.map((__, right): [number, number] => [down, right])),
      },
    ];
  }
  const columns = columnsOf(declaration).map(([name, { kind }], place): Output => ({
    name: words(name),
    kind,
    places: columnPlaces(declaration, place),
  }));
  const labels = labelsOf(declaration).map((label): Output => ({
    name: `"${label}"`,
    kind: "value",
    places: labelPlaces(declaration, label),
  }));
  return [...columns, ...labels];
};

const KEPT = new Map<Declaration, readonly Output[]>();

/** Everything a function answers, from its declaration. Labels are those its answers show. */
export const outputsOf = (declaration: Declaration): readonly Output[] => {
  const kept = KEPT.get(declaration) ?? found(declaration);
  KEPT.set(declaration, kept);
  return kept;
};

/** An answer with the cells of some places changed. */
export const changedAt = (rows: Rows, places: readonly (readonly [number, number])[], change: (cell: unknown) => unknown): Rows => {
  const changed = rows.map((row) => [...row]);
  for (const [down, right] of places) {
    const row = changed[down];
    if (row !== undefined) row[right] = change(row[right]);
  }
  return changed;
};
