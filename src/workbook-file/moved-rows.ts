import { cellPlace } from "../sheets/cell-address";
import type { CellData, SheetData } from "../sheets/sheet-data";

type Line = "row" | "column";

/** What stands in each row or column without a formula, as one text; rows that say the same as another are left out. */
const lines = (cells: Readonly<Record<string, CellData>>, line: Line): ReadonlyMap<string, number> => {
  const said = new Map<number, (readonly [number, string])[]>();
  for (const [address, { value }] of Object.entries(cells)) {
    if (value === undefined) continue;
    const place = cellPlace(address);
    const other = line === "row" ? place.column : place.row;
    const at = said.get(place[line]) ?? [];
    at.push([other, JSON.stringify(value)]);
    said.set(place[line], at);
  }
  const found = new Map<string, number>();
  const twice = new Set<string>();
  for (const [at, all] of said) {
    const text = all.sort(([one], [other]) => one - other).map((one) => one.join(" ")).join("\n");
    if (found.has(text)) twice.add(text);
    found.set(text, at);
  }
  for (const text of twice) found.delete(text);
  return found;
};

const haveMoved = (before: SheetData, now: SheetData, line: Line): boolean => {
  const [were, are] = [lines(before.cells, line), lines(now.cells, line)];
  const found = [...were].flatMap(([text, was]) => {
    const is = are.get(text);
    return is === undefined ? [] : [{ was, is }];
  }).sort((one, other) => one.was - other.was);
  // Lines that were sorted stand in another order; those that were pushed keep theirs.
  const isInOrder = found.every(({ is }, at) => at === 0 || is > (found[at - 1]?.is ?? -1));
  return isInOrder && found.some(({ was, is }) => was !== is);
};

/** Whether rows or columns of a sheet were put in, taken out or moved: lines say what others said before, in the same order. */
export const hasMovedLines = (before: SheetData, now: SheetData): boolean =>
  haveMoved(before, now, "row") || haveMoved(before, now, "column");
