import { call } from "../../src/functions/call";
import { catalogue } from "../../src/functions/catalogue";
import { type CuttingCells, PLAN_FUNCTIONS } from "./jobs";

const declarations = PLAN_FUNCTIONS.map((id) => {
  const found = catalogue.find((declaration) => declaration.id === id);
  if (found === undefined) throw new Error(id);
  return found;
});

/** What the functions answer on plain Node, from the source. */
export const inNode = (job: CuttingCells): unknown[] => declarations.map((declaration) => call(declaration, job));
