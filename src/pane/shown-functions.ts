import { license, version } from "../../package.json";
import { call } from "../functions/call";
import { catalogue } from "../functions/catalogue";
import type { Answer } from "../functions/cells";
import { CAUTION, SAW_CAUTION } from "../functions/caution";
import { CODES } from "../functions/code/codes";
import type { Declaration, ExampleCell } from "../functions/declare";
import { defaultSaid, isOmissible, kindText, labelsRead, resultHeadings, signature } from "../functions/describe";
import { argumentsOf, formula, NAMESPACE } from "../functions/formula";
import type { ListedFunction } from "./job-steps";

type StatedCell = number | string | boolean;

/** What an example says will come out: all rows, some cells of some rows, or an error. */
export type Stated =
  | { readonly rows: readonly (readonly StatedCell[])[] }
  | { readonly parts: readonly (readonly (readonly [heading: string, cell: StatedCell])[])[] }
  | { readonly error: string };

export interface ShownExample {
  readonly formula: string;
  readonly args: readonly (ExampleCell | undefined)[];
  readonly stated: Stated;
  readonly from: string;
}

export interface ShownArgument {
  readonly name: string;
  readonly kind: string;
  readonly default: string;
  readonly says: string;
}

export interface ShownFunction extends ListedFunction {
  readonly formula: string;
  readonly arguments: readonly ShownArgument[];
  /** Labels of the stair table it reads. */
  readonly labels: readonly string[];
  readonly result: string;
  readonly columns: readonly { readonly heading: string; readonly says: string }[];
  /** The states in which there is no answer, with the sentence; words in braces are the facts of the case. */
  readonly errors: readonly { readonly cell: string; readonly says: string }[];
  readonly examples: readonly ShownExample[];
  readonly source: string;
  readonly caution: string;
}

/** A building code, with how many limits of it are on file and how many of them are confirmed. */
export interface ShownCode {
  readonly code: string;
  readonly title: string;
  readonly edition: string;
  readonly limits: number;
  readonly confirmed: number;
}

export interface ShownCatalogue {
  readonly version: string;
  readonly licence: string;
  /** What goes with every verdict. */
  readonly caution: string;
  /** What goes with every saw setting. */
  readonly sawCaution: string;
  /** What goes with some functions only. */
  readonly cautions: readonly string[];
  readonly codes: readonly ShownCode[];
  readonly functions: readonly ShownFunction[];
}

const argumentsShown = (declaration: Declaration): readonly ShownArgument[] =>
  Object.entries(declaration.parameters).map(([name, parameter]) => ({
    name,
    kind: kindText(parameter),
    default: isOmissible(parameter) ? defaultSaid(parameter) || "may be left out" : "required",
    says: [parameter.says, parameter.without].filter(Boolean).join(" "),
  }));

const columnsShown = (declaration: Declaration): ShownFunction["columns"] => {
  const { result } = declaration;
  if (result.kind !== "table" && result.kind !== "row") return [];
  const says = Object.values(result.columns).map((column) => column.says);
  return resultHeadings(declaration).map((heading, index) => ({ heading, says: says[index] ?? "" }));
};

const headingOf = (declaration: Declaration, key: string): string => {
  const { result } = declaration;
  const place = result.kind === "table" || result.kind === "row" ? Object.keys(result.columns).indexOf(key) : -1;
  return resultHeadings(declaration)[place] ?? key;
};

const stated = (declaration: Declaration, example: Declaration["examples"][number]): Stated => {
  if ("fails" in example) return { error: `${example.fails} ${example.says}` };
  if ("gives" in example) return { rows: typeof example.gives === "object" ? example.gives : [[example.gives]] };
  return { parts: example.shows.map((row) => Object.entries(row).map(([key, cell]) => [headingOf(declaration, key), cell] as const)) };
};

const codesShown = (): readonly ShownCode[] => {
  const answer = call(CODES, []);
  const [, ...rows] = Array.isArray(answer) ? answer : [];
  const keys = Object.keys(CODES.result.kind === "table" ? CODES.result.columns : {});
  const cell = (row: readonly Answer[], key: string): Answer | undefined => row[keys.indexOf(key)];
  return rows.map((row) => ({
    code: String(cell(row, "code")), title: String(cell(row, "title")), edition: String(cell(row, "edition")),
    limits: Number(cell(row, "limits")), confirmed: Number(cell(row, "confirmed")),
  }));
};

/** The version, the caution and every worksheet function with all a page tells of it. */
export const shownFunctions = (): ShownCatalogue => ({
  version,
  licence: license,
  caution: CAUTION,
  sawCaution: SAW_CAUTION,
  cautions: [...new Set(catalogue.flatMap(({ caution = CAUTION }) => (caution === CAUTION ? [] : [caution])))],
  codes: codesShown(),
  functions: catalogue.map((declaration) => ({
    id: declaration.id,
    group: declaration.group,
    says: declaration.says,
    formula: `=${NAMESPACE}.${signature(declaration)}`,
    arguments: argumentsShown(declaration),
    labels: labelsRead(declaration),
    result: declaration.result.says,
    columns: columnsShown(declaration),
    errors: Object.values(declaration.problems),
    examples: declaration.examples.map((example) => ({
      formula: formula(declaration, example.given),
      args: argumentsOf(declaration, example.given).map((cell) => (cell === null ? undefined : cell)),
      stated: stated(declaration, example),
      from: example.from,
    })),
    source: declaration.source,
    // The general one stands at the foot, once.
    caution: declaration.caution === CAUTION ? "" : (declaration.caution ?? ""),
  })),
});
