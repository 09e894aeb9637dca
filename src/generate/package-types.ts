import type { Table } from "../functions/columns";
import type { Declaration, Parameter } from "../functions/declare";
import { defaultSaid, isOmissible, kindText } from "../functions/describe";
import { plainText } from "../functions/plain-text";
import { words } from "../solver/words";
import { exportedName } from "../package/exported-name";
import { commentText, docComment } from "./doc-comment";
import { markdown } from "./page";
import { READING_RULES } from "./reading-rules";
import { type Example, scriptCall } from "./script-call";
import { rangeSignature, SHARED_TYPES, typedArguments, valueSignature } from "./script-types";
import { tableBlocks } from "./table-blocks";

const typeName = (key: string): string => `${key.charAt(0).toUpperCase()}${key.slice(1)}Table`;

const leftOut = (parameter: Parameter): string => {
  const said = parameter.kind === "flag" ? String(parameter.default) : defaultSaid(parameter);
  const without = parameter.without === undefined ? "" : ` ${parameter.without}`;
  return isOmissible(parameter) ? `May be left out${said === "" ? "" : `: ${said}`}.${without}` : without.trim();
};

const parameterLine = ([name, parameter]: readonly [string, Parameter]): string => {
  const kind = parameter.kind === "flag" ? "true or false" : kindText(parameter);
  return `@param ${name} - ${commentText(`${parameter.says} Kind: ${kind}. ${leftOut(parameter)}`.trim())}`;
};

const resultLines = ({ result }: Declaration): readonly string[] => [
  `@returns ${commentText(result.says)}${result.kind === "table" ? " Its headings:" : result.kind === "row" ? " Its cells:" : ""}`,
  ...("columns" in result
    ? Object.entries(result.columns).map(([key, { kind, says }]) =>
        `- \`${words(key)}\` (${kind === "reading" ? "length" : kind}): ${commentText(says)}`,
      )
    : []),
];

const errorLines = (declaration: Declaration): readonly string[] => {
  const problems = Object.values<Declaration["problems"][string]>(declaration.problems);
  return [
    `@throws A \`TreadsheetError\` where an argument is not as it should be${problems.length === 0 ? "." : ", and:"}`,
    ...problems.map(({ cell, says }) => `- \`${cell}\` ${commentText(plainText(says))}`),
  ];
};

const shown = (example: Example): readonly string[] => {
  if ("fails" in example) return [`${example.fails} ${example.says}`];
  if ("shows" in example) {
    const cell = ([key, value]: readonly [string, number | string]): string => `${words(key)} ${JSON.stringify(value)}`;
    return example.shows.map((row) => `a row with ${Object.entries(row).map(cell).join(", ")}`);
  }
  return typeof example.gives === "object" ? example.gives.map((row) => JSON.stringify(row)) : [JSON.stringify(example.gives)];
};

/** The first example that has an answer. Within a block of code nothing is a tag; only the end of a comment would end it. */
const exampleLines = (declaration: Declaration): readonly string[] => {
  const [first] = declaration.examples;
  const example = declaration.examples.find((one) => !("fails" in one)) ?? first;
  const lines = [`${scriptCall(declaration, example)};`, ...shown(example).map((line) => `// ${line}`), `// from ${example.from}`];
  return ["@example", "```ts", ...lines.map((line) => line.replaceAll("*/", "*\\/")), "```"];
};

const functionComment = (declaration: Declaration): string =>
  docComment([
    commentText(declaration.says),
    "",
    "@remarks",
    `In a worksheet \`STAIR.${declaration.id}\`. Method: ${commentText(declaration.source)}`,
    ...(declaration.caution === undefined ? [] : ["", commentText(declaration.caution)]),
    "",
    ...Object.entries(declaration.parameters).map(parameterLine),
    ...resultLines(declaration),
    ...errorLines(declaration),
    ...exampleLines(declaration),
  ]);

const functionTypes = (declaration: Declaration, tableType: (parameter: Parameter) => string): string => {
  const given = typedArguments(declaration, tableType);
  const name = exportedName(declaration);
  const ranges = given.flatMap((one, place) => {
    const comment = `/** Cell by cell, in the shape of the range \`${one.name}\`: {@link ${name}} has the rest. */`;
    return one.isEach ? [comment, rangeSignature(declaration, given, place)] : [];
  });
  return [functionComment(declaration), valueSignature(declaration, given), ...ranges].join("\n");
};

const tableComment = (table: Table): string => docComment([commentText(markdown(tableBlocks(table)).trim())]);

/** What scripts may count on: the types of everything the package exports, and what each is for. */
export const packageTypes = (
  catalogue: readonly Declaration[],
  tables: Readonly<Record<string, Table>>,
  version: string,
  caution: string,
): string => {
  const names = new Map(Object.entries(tables).map(([key, table]) => [table, typeName(key)] as const));
  const tableType = (parameter: Parameter): string => {
    const table = parameter.kind === "stair" ? tables["stair"] : parameter.kind === "table" ? parameter.table : undefined;
    const name = table === undefined ? undefined : names.get(table);
    if (name === undefined) throw new Error(`a table of no name: ${parameter.says}`);
    return name;
  };
  const head = [`Treadsheet ${version}: the worksheet functions for scripts.`, caution, ...READING_RULES.map(commentText)];
  return [
    docComment(["@packageDocumentation", head.join("\n\n")]),
    SHARED_TYPES.trim(),
    ...[...names].map(([table, name]) => `${tableComment(table)}\nexport type ${name} = CellRange;`),
    ...catalogue.map((declaration) => functionTypes(declaration, tableType)),
  ].join("\n\n").concat("\n");
};
