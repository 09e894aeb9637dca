import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import type { Answer } from "../../src/functions/cells";
import type { Declaration } from "../../src/functions/declare";

/** A function of the catalogue by its name. */
export const declared = (id: string): Declaration => {
  const found = catalogue.find((declaration) => declaration.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

/** A call as the host makes it; error cells as their code and sentence. */
export const answered = (id: string, ...cells: unknown[]): unknown => {
  const text = (cell: Answer): unknown => (typeof cell === "object" ? `${cell.failed} ${cell.says}` : cell);
  const answer = call(declared(id), cells);
  return Array.isArray(answer) ? answer.map((row) => row.map(text)) : text(answer);
};
