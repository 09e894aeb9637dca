import type { Unit } from "../solver/length/length";
import { type Failed, failed, folded, type Given, type GivenCells, isEmpty, isFailed } from "./cells";
import type { Column } from "./columns";
import { readChoice } from "./read-value";
import { readColumn } from "./read-table";
import { say } from "./say";
import { unitOfCells } from "./unit-of-cells";
import { words } from "../solver/words";
import type { StairFacts, StairLabelName } from "../solver/layout/stair-facts";
import { STAIR_LABELS, type StairLabel } from "../solver/stair-labels";
import { stair } from "./tables";

/** A stair table as read: the unit of its bare numbers and what the user gave, by label. */
export interface GivenStair {
  readonly unit: Unit;
  readonly given: StairFacts;
  /** By label, why a value stands there that nobody gave: LAYOUT says so beside it. */
  readonly assumed: Readonly<Record<string, string>>;
}

const { columns } = stair;
const keys = Object.keys(columns) as StairLabelName[];
const labels = keys.map(words);
const keysByLabel: ReadonlyMap<string, StairLabelName> = new Map(
  keys.flatMap((key) => {
    const { alsoCalled = [] }: StairLabel = STAIR_LABELS[key];
    return [words(key), ...alsoCalled].map((name) => [folded(name), key] as const);
  }),
);

/** Headings LAYOUT spills above its labels; such a row is no label. */
const HEADING = "label";

/** How LAYOUT marks a default in the column beside it. */
const ASSUMED = /^\s*assumed: (.*)$/i;

/** Units as people write them into a column of their own beside a value. */
const UNIT_BESIDE = /^(in|inch|inches|"|mm|cm|m|ft|foot|feet|')[.]?$/i;
const SAME_UNIT: Readonly<Record<Unit, RegExp>> = { in: /^(in|inch|inches|")[.]?$/i, mm: /^mm[.]?$/i };

/** The unit beside a bare number, where it is not the table's: the number would be read in another unit than it was written in. */
const otherUnit = (value: Given, column: Column, beside: Given, unit: Unit): string | undefined => {
  if (typeof value !== "number" || typeof beside !== "string" || column.kind !== "length") return undefined;
  const written = beside.trim();
  return UNIT_BESIDE.test(written) && !SAME_UNIT[unit].test(written) ? written : undefined;
};

const rowsOf = (cells: GivenCells) =>
  cells.flatMap((row) => {
    const label = row[0] ?? null;
    const because = row
      .slice(2)
      .map((cell) => (typeof cell === "string" ? ASSUMED.exec(cell)?.[1] : undefined))
      .find((found) => found !== undefined);
    return isEmpty(label) || (typeof label === "string" && folded(label) === HEADING)
      ? []
      : [{ label, value: row[1] ?? null, beside: row[2] ?? null, because }];
  });

const keyOf = (label: Given): StairLabelName | undefined => keysByLabel.get(folded(String(label)));

/** Without a row `unit` metric text throughout makes the table one in mm; beside bare numbers or inches it is refused. */
const unitWithoutRow = (rows: ReturnType<typeof rowsOf>): Unit | Failed => {
  const lengths = rows.flatMap(({ label, value }) => {
    const key = isFailed(label) ? undefined : keyOf(label);
    return key !== undefined && columns[key].kind === "length" ? [{ name: words(key), cell: value }] : [];
  });
  const unit = unitOfCells(lengths) ?? "in";
  return isFailed(unit) ? failed(`${unit.says}, or add a row unit`) : unit;
};

/** Reads a stair table: labels in the first column, values in the second. */
export const readStair = (argument: string, cells: GivenCells): GivenStair | Failed => {
  const rows = rowsOf(cells);
  if (rows.length === 0) return failed(say.emptyTable(argument, ["a label and a value in each row, such as total rise and 107 1/2"]));
  const unitRow = rows.find(({ label }) => typeof label === "string" && folded(label) === "unit");
  const unit =
    unitRow === undefined || isEmpty(unitRow.value) ? unitWithoutRow(rows) : readChoice("unit", unitRow.value, STAIR_LABELS.unit.options);
  if (isFailed(unit)) return unit;
  const given: Record<string, unknown> = {};
  const assumed: Record<string, string> = {};
  for (const { label, value, beside, because } of rows) {
    if (isFailed(label)) return failed(say.passedOn(`${argument}, label`, label.failed), label.failed);
    const key = keyOf(label);
    if (key === undefined) return failed(say.notThere(`${argument}, label`, String(label), labels));
    if (key === "unit") continue;
    const column = columns[key];
    const other = otherUnit(value, column, beside, unit as Unit);
    if (other !== undefined) return failed(say.unitBeside(words(key), value, other, unit as Unit));
    const read = readColumn(words(key), value, column, unit as Unit);
    if (isFailed(read)) return read;
    if (read === undefined) continue;
    if (key in given && String(given[key]) !== String(read)) return failed(say.twiceLabel(words(key)));
    if (because === undefined) delete assumed[key];
    else if (!(key in given)) assumed[key] = because;
    given[key] = read;
  }
  return { unit: unit as Unit, given: given as StairFacts, assumed };
};
