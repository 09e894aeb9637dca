import "./idle-callback";
import "./message-channel";
import { createContext, runInContext } from "node:vm";
import type { FunctionsJson } from "../function-metadata";
import { type HeadlessWorkbook, headlessWorkbook } from "../headless-workbook";
import { type StandIn, standIn } from "../stand-in";

/** The text of the built functions.js and of functions.json: all a workbook knows of our functions. */
export interface BuiltFunctions {
  readonly bundle: string;
  readonly metadata: FunctionsJson;
}

/** Whoever has a plan of a cutting job, both as plain data; what a cell would plan is worked out when it is asked for. */
export type OutsidePlanner = (job: unknown, inACell: () => unknown) => unknown;

export interface NodeWorkbook extends HeadlessWorkbook {
  /** Takes cutting plans from elsewhere from now on. */
  readonly planOutside: (planner: OutsidePlanner) => void;
}

/** Hears of a call of one of our functions under its second name, by its id and the cells it was given. */
export type CallHeard = (id: string, cells: readonly unknown[]) => void;

/** A second name of each function, that of its id with this before it; who hears of its calls hears of those alone. */
const HEARD = "HEARD";
export const heardName = (name: string): string => name.replace(/([^.]+)$/, `${HEARD}$1`);

/** Every function once more under its second name. */
const heardToo = (
  metadata: FunctionsJson, built: StandIn, hears: CallHeard,
): { readonly metadata: FunctionsJson; readonly built: StandIn } => ({
  metadata: {
    ...metadata,
    functions: metadata.functions.flatMap((one) => [one, { ...one, id: heardName(one.id), name: heardName(one.name) }]),
  },
  built: {
    ...built,
    functions: new Map([...built.functions].flatMap(([id, solve]) => [[id, solve], [heardName(id), (...cells: readonly unknown[]) => {
      hears(id, cells);
      return solve(...cells);
    }]] as const)),
  },
});

/** Opens an empty workbook on Node; the built functions run where there is nothing but the language and the stand-in. */
export const openWorkbook = ({ bundle, metadata }: BuiltFunctions, hears?: CallHeard): NodeWorkbook => {
  const built = standIn();
  const context = createContext({ CustomFunctions: built.CustomFunctions }, { codeGeneration: { strings: false, wasm: false } });
  runInContext(bundle, context, { filename: "functions.js" });
  const { treadsheetPlanOutside } = context as { readonly treadsheetPlanOutside?: NodeWorkbook["planOutside"] };
  const known = hears === undefined ? { metadata, built } : heardToo(metadata, built, hears);
  return { ...headlessWorkbook(known.metadata, known.built), planOutside: (planner) => treadsheetPlanOutside?.(planner) };
};
