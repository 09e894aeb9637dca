import type { Solve } from "../sheets/job-run";

/** The functions that functions.js associated with the stand-in, as Excel would call them. */
export const bundle: Solve = (id, args) => {
  const { treadsheetFunctions } = globalThis as { readonly treadsheetFunctions?: ReadonlyMap<string, (...cells: readonly unknown[]) => unknown> };
  const solve = treadsheetFunctions?.get(id);
  if (solve === undefined) throw Object.assign(new Error(`${id}: functions.js has no such function`), { code: "#NAME?" });
  return solve(...args);
};
