import type { Declaration } from "../../functions/declare";
import type { Unit } from "../../solver/length/length";

/** A call of a function as a formula, its arguments by their names. A unit other than inches is written where the function takes one. */
export const call = (declaration: Declaration, unit: Unit, args: Readonly<Record<string, string>>): string => {
  const names = Object.keys(declaration.parameters);
  const unknown = Object.keys(args).find((name) => !names.includes(name));
  if (unknown !== undefined) throw new Error(`${declaration.id} has no argument ${unknown}`);
  const given: Readonly<Record<string, string>> = unit !== "in" && names.includes("unit") ? { unit: `"${unit}"`, ...args } : args;
  const last = names.reduce((place, name, index) => (given[name] === undefined ? place : index), -1);
  return `STAIR.${declaration.id}(${names.slice(0, last + 1).map((name) => given[name] ?? "").join()})`;
};
