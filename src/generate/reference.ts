import { FIGURES } from "../drawing/figures";
import { exampleDrawings } from "../drawing/plans/example-drawings";
import type { Table } from "../functions/columns";
import { type Declaration, GROUPS } from "../functions/declare";
import { defaultSaid, isOmissible, kindText, signature, tablesOf } from "../functions/describe";
import { formula } from "../functions/formula";
import { words } from "../solver/words";
import { type Block, page, type Page } from "./page";
import { READING_RULES } from "./reading-rules";
import { tableBlocks } from "./table-blocks";

const shownResult = (example: Declaration["examples"][number]): string => {
  if ("fails" in example) return `${example.fails} ${example.says}`;
  if ("gives" in example)
    return typeof example.gives === "object" ? example.gives.map((row) => row.join(" | ")).join("; ") : String(example.gives);
  return example.shows.map((row) => Object.entries(row).map(([heading, value]) => `${heading}: ${value}`).join(", ")).join("; ");
};

const argumentsTable = (declaration: Declaration): Block[] => {
  const rows = Object.entries(declaration.parameters).map(([name, parameter]) => [
    name,
    kindText(parameter),
    isOmissible(parameter) ? defaultSaid(parameter) || "left out" : "required",
    parameter.says + (parameter.without ? ` ${parameter.without}` : ""),
  ]);
  return rows.length === 0 ? [] : [{ kind: "table", headings: ["argument", "kind", "default", "meaning"], rows }];
};

const resultBlocks = ({ result }: Declaration): Block[] => {
  const headed: Block = { kind: "text", text: `Result: ${result.says}` };
  if (result.kind !== "table" && result.kind !== "row") return [headed];
  const rows = Object.entries(result.columns).map(([key, column]) => [
    words(key),
    column.kind === "reading" ? "length" : column.kind,
    column.says,
  ]);
  return [headed, { kind: "table", headings: ["heading", "kind", "meaning"], rows }];
};

const errorBlocks = (declaration: Declaration): Block[] => {
  const problems = Object.values<Declaration["problems"][string]>(declaration.problems);
  if (problems.length === 0) return [];
  return [{ kind: "table", headings: ["error", "sentence"], rows: problems.map(({ cell, says }) => [cell, says]) }];
};

const figureBlocks = ({ id }: Declaration): Block[] => (FIGURES[id] ?? []).map((figure) => ({ kind: "figure", figure }));

const ORDINALS = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"] as const;

/** What Drawings in the pane and `treadsheet draw` make of an example. */
const drawingBlocks = (declaration: Declaration): Block[] => {
  const found = exampleDrawings(declaration);
  if (found === undefined) return [];
  const example = ORDINALS[found.example - 1] ?? `${found.example}th`;
  return found.drawings.map(({ svg, title }) => ({ kind: "drawing", svg, says: `Drawing of the ${example} example: ${title}.` }));
};

type NamedTables = Readonly<Record<string, Table>>;

/** A table's name, which two tables may have, with the words it goes by here where they do. */
const nameOf = (table: Table, tables: NamedTables): string => {
  const alike = Object.entries(tables).filter(([, { name }]) => name === table.name);
  const [own = ""] = alike.find(([, one]) => one === table) ?? [];
  return alike.length < 2 || words(own) === table.name ? table.name : `${table.name} (${words(own)})`;
};

const tableNames = (declaration: Declaration, tables: NamedTables): readonly string[] =>
  [...new Set(tablesOf(declaration).map((table) => nameOf(table, tables)))];

/** A table under its name, with who reads it. */
const namedTableBlocks = (table: Table, catalogue: readonly Declaration[], tables: NamedTables): Block[] => {
  const name = nameOf(table, tables);
  const readers = catalogue.filter((declaration) => tablesOf(declaration).includes(table)).map(({ id }) => id);
  return [
    { kind: "heading", level: 3, text: `Table ${name}`, name: `table ${name.replace(/[()]/g, "")}` },
    ...(readers.length === 0 ? [] : [{ kind: "text", text: `Read by ${readers.join(", ")}.` } as const]),
    ...tableBlocks(table),
  ];
};

const functionBlocks = (declaration: Declaration, tables: NamedTables): Block[] => [
  { kind: "heading", level: 3, text: declaration.id, name: declaration.id },
  { kind: "text", text: declaration.says },
  { kind: "code", text: signature(declaration) },
  ...figureBlocks(declaration),
  ...argumentsTable(declaration),
  ...(tablesOf(declaration).length === 0
    ? []
    : [{ kind: "text", text: `Reads: ${tableNames(declaration, tables).map((name) => `table ${name}`).join(", ")}.` } as const]),
  ...resultBlocks(declaration),
  {
    kind: "table",
    headings: ["example", "gives", "from"],
    rows: declaration.examples.map((example) => [formula(declaration, example.given), shownResult(example), example.from]),
  },
  ...drawingBlocks(declaration),
  ...errorBlocks(declaration),
  { kind: "text", text: `Method: ${declaration.source}` },
  ...(declaration.caution === undefined ? [] : [{ kind: "text", text: declaration.caution } as const]),
];

const blocks = (catalogue: readonly Declaration[], tables: NamedTables, version: string, caution: string): Block[] => [
  { kind: "heading", level: 1, text: `Treadsheet ${version}: worksheet functions` },
  { kind: "text", text: caution },
  { kind: "heading", level: 2, text: "How functions read your cells" },
  { kind: "link", text: "Every limit of every code, with clause and source", page: "codes" },
  ...READING_RULES.map((text) => ({ kind: "text", text }) as const),
  ...GROUPS.flatMap((group): Block[] => {
    const members = catalogue.filter((declaration) => declaration.group === group);
    if (members.length === 0) return [];
    return [{ kind: "heading", level: 2, text: group }, ...members.flatMap((one) => functionBlocks(one, tables))];
  }),
  { kind: "heading", level: 2, text: "Tables" },
  ...Object.values(tables).flatMap((table) => namedTableBlocks(table, catalogue, tables)),
];

/** The function reference, as a page and as Markdown. */
export const reference = (catalogue: readonly Declaration[], tables: NamedTables, version: string, caution: string): Page =>
  page("Treadsheet function reference", blocks(catalogue, tables, version, caution));
