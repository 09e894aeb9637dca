import { words } from "../solver/words";
import { catalogue } from "./catalogue";
import { folded } from "./cells";
import type { Table } from "./columns";
import type { Declaration } from "./declare";
import { resultHeadings } from "./describe";
import type { Home, OwnHeadings } from "./headings";
import { stair, takeoffItems } from "./tables";

const headingKeys = ({ columns }: Table, isRequired?: boolean): string[] =>
  Object.entries(columns).flatMap(([key, { required }]) =>
    isRequired === undefined || (required === true) === isRequired ? [folded(words(key))] : [],
  );

const results: ReadonlyMap<string, ReadonlySet<string>> = new Map(
  catalogue.map((declaration) => [declaration.id, new Set(resultHeadings(declaration).map(folded))]),
);

type Homes = ReadonlyMap<string, Home>;

const tablesIn = ({ parameters }: Declaration, isOptional: true | undefined): readonly Table[] =>
  Object.values(parameters).flatMap((parameter) =>
    parameter.kind === "table" && parameter.optional === isOptional ? [parameter.table] : [],
  );

/** The functions as they are near to one of them: itself, those of its step of the job, the others. */
const byNearness = (id: string): readonly Declaration[] => {
  const group = catalogue.find((declaration) => declaration.id === id)?.group;
  const distance = (other: Declaration): number => (other.id === id ? 0 : other.group === group ? 1 : 2);
  return [...catalogue].sort((one, other) => distance(one) - distance(other));
};

/**
 * Where each heading, label and item belongs, seen from one function: in a table of its own, then of its step of the job, then where it
 * cannot be done without; tables come before results.
 */
const homesFrom = (id: string): Homes => {
  const found = new Map<string, { readonly name: string; readonly tables: Set<unknown> }>();
  const belong = (keys: Iterable<string>, name: string, table: unknown): void => {
    for (const key of keys) {
      const home = found.get(key) ?? { name, tables: new Set<unknown>() };
      home.tables.add(table);
      found.set(key, home);
    }
  };
  const near = byNearness(id);
  const step = near.filter((declaration) => declaration.group === near[0]?.group);
  const inTables = (declarations: readonly Declaration[], isRequired?: boolean): void => {
    // A table is known by the function that cannot do without it.
    for (const isOptional of [undefined, true] as const) {
      for (const declaration of declarations) {
        for (const table of tablesIn(declaration, isOptional))
          belong(headingKeys(table, isRequired), `${table.name} of ${declaration.id}`, table);
      }
    }
  };
  inTables(near.slice(0, 1));
  inTables(step);
  inTables(near, true);
  inTables(near);
  belong(headingKeys(stair), "the stair table", stair);
  for (const { id: other } of near) belong(results.get(other) ?? [], `the result of ${other}`, other);
  belong(headingKeys(takeoffItems), "the items of TAKEOFF", takeoffItems);
  return new Map([...found].map(([key, { name, tables }]) => [key, { name, isOneOfSeveral: tables.size > 1 }]));
};

const known = new Map<string, Homes>();

/** The headings of every table and result of ours, seen from one function. */
export const ownHeadings = (id: string): OwnHeadings => ({
  homeOf: (heading) => {
    const homes = known.get(id) ?? homesFrom(id);
    known.set(id, homes);
    return homes.get(folded(heading));
  },
  isOfResult: (heading, other) => results.get(other)?.has(folded(heading)) === true,
});
