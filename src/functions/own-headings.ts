import { words } from "../solver/words";
import { catalogue } from "./catalogue";
import { folded } from "./cells";
import type { Table } from "./columns";
import { resultHeadings } from "./describe";
import type { OwnHeadings } from "./headings";
import { stair, stairCheck, takeoffItems } from "./tables";

const headingKeys = ({ columns }: Table): string[] => Object.keys(columns).map((key) => folded(words(key)));

const results: ReadonlyMap<string, ReadonlySet<string>> = new Map(catalogue.map((declaration) => [declaration.id, new Set(resultHeadings(declaration).map(folded))]));

/** Where each heading, label and item belongs; tables come before results, and of several the first. */
const homes = ((): ReadonlyMap<string, string> => {
  const found = new Map<string, string>();
  const belong = (keys: Iterable<string>, home: string): void => {
    for (const key of keys) if (!found.has(key)) found.set(key, home);
  };
  // A table is known by the function that cannot do without it.
  for (const isOptional of [undefined, true]) {
    for (const { id, parameters } of catalogue) {
      for (const parameter of Object.values(parameters)) {
        if (parameter.kind === "table" && parameter.optional === isOptional) belong(headingKeys(parameter.table), `${parameter.table.name} of ${id}`);
      }
    }
  }
  for (const table of [stair, stairCheck]) belong(headingKeys(table), "the stair table");
  for (const [id, keys] of results) belong(keys, `the result of ${id}`);
  belong(headingKeys(takeoffItems), "the items of TAKEOFF");
  return found;
})();

/** The headings of every table and result of ours. */
export const ownHeadings: OwnHeadings = {
  homeOf: (heading) => homes.get(folded(heading)),
  isOfResult: (heading, id) => results.get(id)?.has(folded(heading)) === true,
};
