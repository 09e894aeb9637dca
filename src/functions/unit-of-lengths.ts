import type { Failed, GivenCells } from "./cells";
import type { Declaration } from "./declare";
import { isLengthKind } from "./kinds";
import { type NamedCell, unitOfCells } from "./unit-of-cells";

function* lengthCells({ parameters }: Declaration, given: ReadonlyMap<string, GivenCells>): Generator<NamedCell> {
  for (const [name, parameter] of Object.entries(parameters)) {
    if (!isLengthKind(parameter.kind)) continue;
    const cells = given.get(name) ?? [];
    for (const [row, line] of cells.entries()) {
      for (const cell of line) yield { name: cells.length > 1 ? `${name}, row ${row + 1}` : name, cell };
    }
  }
}

/**
 * The unit of a call whose function has no argument for it: millimetres where every length given is metric text, else none, and bare
 * numbers are inches. Metric text beside a bare number or inches is refused, because one of the two is not what it says.
 */
export const unitOfLengths = (declaration: Declaration, given: ReadonlyMap<string, GivenCells>): "mm" | undefined | Failed =>
  unitOfCells(lengthCells(declaration, given));
