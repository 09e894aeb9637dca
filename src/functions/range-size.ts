import { type Failed, failed, type GivenCells, isEmptyOrZero } from "./cells";
import { isRange, MOST_CELLS, mostRows, type Parameter, takesEach } from "./declare";
import { headingPlaces } from "./headings";
import { ownHeadings } from "./own-headings";
import { say } from "./say";

/** Rows and columns of a range. */
export const size = (cells: GivenCells): readonly [number, number] => [cells.length, cells[0]?.length ?? 0];

/** Rows up to the last that has something in it; whole columns of a sheet end in empty ones. */
const rowsInUse = (cells: GivenCells): number => {
  let count = cells.length;
  while (count > 0 && cells[count - 1]?.every(isEmptyOrZero) === true) count -= 1;
  return count;
};

/** Whether the first row that has something in it says the columns of a table: it is none of its rows. */
const isHeaded = (id: string, name: string, cells: GivenCells, parameter: Parameter): boolean => {
  const first = parameter.kind === "table" ? cells.find((row) => !row.every(isEmptyOrZero)) : undefined;
  return parameter.kind === "table" && first !== undefined && headingPlaces(name, first, parameter.table, ownHeadings(id)) !== undefined;
};

/** What is wrong with the size of a range; where the answer has the shape of the range, every cell of it counts. */
export const tooLarge = (id: string, name: string, cells: GivenCells, parameter: Parameter): Failed | undefined => {
  const [rows, columns] = size(cells);
  if (takesEach(parameter)) return rows * columns > MOST_CELLS ? failed(say.tooMany(name, rows * columns, "cells", MOST_CELLS)) : undefined;
  if (!isRange(parameter)) return undefined;
  const most = mostRows(parameter);
  const isOfCells = parameter.kind === "lengths" || parameter.kind === "numbers";
  if (isOfCells && columns > 1)
    return rows * columns > most ? failed(say.tooMany(name, rows * columns, "cells", most)) : undefined;
  const count = isOfCells || rows <= most ? rows : rowsInUse(cells) - (isHeaded(id, name, cells, parameter) ? 1 : 0);
  return count > most ? failed(say.tooMany(name, count, "rows", most)) : undefined;
};
