import { parseLength, statedUnit } from "../solver/length/parse-length";
import { isProblem } from "../solver/problem";
import { type Failed, failed, type Given, isEmptyOrZero } from "./cells";
import { say } from "./say";

type Stated = "metric" | "inches" | "bare";

/** How a cell states its unit; undefined where it holds nothing, an error, no length, or 0, which is 0 in any unit. */
const stated = (cell: Given): Stated | undefined => {
  if (isEmptyOrZero(cell) || (typeof cell !== "number" && typeof cell !== "string")) return undefined;
  if (typeof cell === "number") return "bare";
  const length = parseLength(cell, "in");
  if (isProblem(length) || length.isZero()) return undefined;
  const unit = statedUnit(cell);
  return unit === undefined ? "bare" : unit === "mm" ? "metric" : "inches";
};

/** A cell that holds a length, by the name it is known by. */
export interface NamedCell {
  readonly name: string;
  readonly cell: Given;
}

/** Millimetres where all the lengths are metric text, undefined where none is; metric text beside a bare number or inches is refused. */
export const unitOfCells = (cells: Iterable<NamedCell>): "mm" | undefined | Failed => {
  const seen = new Map<Stated, NamedCell>();
  for (const { name, cell } of cells) {
    const how = stated(cell);
    if (how !== undefined && !seen.has(how)) seen.set(how, { name, cell });
  }
  const metric = seen.get("metric");
  if (metric === undefined) return undefined;
  const bare = seen.get("bare");
  const other = bare ?? seen.get("inches");
  return other === undefined ? "mm" : failed(say.metricBeside(other.name, other.cell, bare !== undefined, metric.name, metric.cell));
};
