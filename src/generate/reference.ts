import { FIGURES } from "../drawing/figures";
import type { Column, Table } from "../functions/columns";
import { type Declaration, GROUPS } from "../functions/declare";
import { columnKindText, defaultSaid, isOmissible, kindText, signature, tablesOf } from "../functions/describe";
import { formula } from "../functions/formula";
import { inBothUnits, listed } from "../functions/say";
import { stair } from "../functions/tables";
import { STAIR_DEFAULTS } from "../solver/layout/stair-defaults";
import type { StairLabelName } from "../solver/layout/stair-facts";
import { LABEL_TOPICS, STAIR_LABELS, type StairLabel } from "../solver/stair-labels";
import { words } from "../solver/words";
import { type Block, page, type Page } from "./page";

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

const functionBlocks = (declaration: Declaration): Block[] => [
  { kind: "heading", level: 3, text: declaration.id, name: declaration.id },
  { kind: "text", text: declaration.says },
  { kind: "code", text: signature(declaration) },
  ...figureBlocks(declaration),
  ...argumentsTable(declaration),
  ...(tablesOf(declaration).length === 0
    ? []
    : [{ kind: "text", text: `Reads: ${tablesOf(declaration).map(({ name }) => `table ${name}`).join(", ")}.` } as const]),
  ...resultBlocks(declaration),
  {
    kind: "table",
    headings: ["example", "gives", "from"],
    rows: declaration.examples.map((example) => [formula(declaration, example.given), shownResult(example), example.from]),
  },
  ...errorBlocks(declaration),
  { kind: "text", text: `Method: ${declaration.source}` },
  ...(declaration.caution === undefined ? [] : [{ kind: "text", text: declaration.caution } as const]),
];

const columnDefault = (column: Column): string => {
  if (column.required) return "required";
  return "default" in column && column.default !== undefined && column.default !== ""
    ? String(column.default === Infinity ? "any" : column.default)
    : "";
};

const tableBlocks = (table: Table): Block[] => [
  { kind: "heading", level: 3, text: `Table ${table.name}`, name: `table ${table.name}` },
  { kind: "text", text: table.says },
  ...(table.takes.length === 0
    ? []
    : [
        {
          kind: "text",
          text:
            `The result of ${listed(table.takes)} may stand as this table or in it; those of its headings that are not below are ` +
            `passed over.`,
        } as const,
      ]),
  ...(table === stair
    ? stairBlocks()
    : [
        {
          kind: "table",
          headings: ["heading", "kind", "default", "meaning"],
          rows: Object.entries(table.columns).map(([key, column]) => [
            words(key),
            columnKindText(column),
            columnDefault(column),
            column.says,
          ]),
        } as const,
      ]),
];

/** What stands in for a label of the stair table that is left out, and why. */
const stairDefault = (key: StairLabelName): string => {
  const { default: standIn, usual = "", follows }: StairLabel = STAIR_LABELS[key];
  if (follows) return "from the other labels; where given, it must agree with them";
  if (standIn === undefined) return usual;
  if ("as" in standIn) return standIn.because;
  const value = STAIR_DEFAULTS[key as keyof typeof STAIR_DEFAULTS];
  return `${typeof value === "object" ? inBothUnits(value) : value === true ? "yes" : String(value)}: ${standIn.because}`;
};

const stairRow = (key: StairLabelName): readonly string[] => {
  const { says, alsoCalled }: StairLabel = STAIR_LABELS[key];
  return [
    words(key),
    columnKindText(stair.columns[key]),
    stairDefault(key),
    alsoCalled === undefined ? says : `${says} Also called ${alsoCalled.join(" or ")}.`,
  ];
};

/** The labels of the stair table, those that only the check reads under what it asks them for. */
const stairBlocks = (): Block[] => {
  const labels = (Object.keys(STAIR_LABELS) as StairLabelName[]).map((key) => ({ key, label: STAIR_LABELS[key] as StairLabel }));
  const isForTheCheckAlone = ({ label: { readBy, fact } }: (typeof labels)[number]): boolean =>
    fact === undefined && readBy.join() === "CHECK";
  const readers = ({ readBy, follows }: StairLabel): string => {
    if (readBy.length === STAIR_LABELS.unit.readBy.length) return "all";
    return readBy.join(", ") || (follows ? "" : "LAYOUT prints it again, for PICK");
  };
  return [
    {
      kind: "table",
      headings: ["label", "kind", "default", "meaning", "read by"],
      rows: labels.filter((one) => !isForTheCheckAlone(one)).map(({ key }) => [...stairRow(key), readers(STAIR_LABELS[key])]),
    },
    {
      kind: "text",
      text:
        "Labels below are only for CHECK, by what it asks them for. The last rows of a check " +
        "name those that would matter for its code.",
    },
    ...LABEL_TOPICS.flatMap((topic): Block[] => [
      { kind: "heading", level: 4, text: `For the check: ${topic}` },
      {
        kind: "table",
        headings: ["label", "kind", "default", "meaning"],
        rows: labels.filter((one) => isForTheCheckAlone(one) && one.label.topic === topic).map(({ key }) => stairRow(key)),
      },
    ]),
  ];
};

const RULES: readonly string[] = [
  "A length is a number in the function's unit, or text in any notation: 9' 1 1/2\", 9-1-1/2, 7-5/8, 2781 mm. Text with a unit " +
    'of its own is converted. What TAPE writes is read too, 7 5/8"+ as the mark it names. 9-1 is refused: it may be feet and ' +
    "inches, or a range.",
  "A function without a `unit` argument takes its unit from the lengths given: a bare number is inches, feet and inches as text " +
    "mix with it, and metric text in every length is answered in millimetres. Metric text beside a bare number or inches is " +
    "refused. 0, an empty cell and an argument left out go with either. TAPE reads each cell by itself.",
  "A rate with a percent sign is what it says, up to 1000%. A number is a share, 0.25 for 25 %; 2.5 is 250 %, which a markup or " +
    "an overhead on cost may be, up to 5; for two and a half percent write 2.5%.",
  "Sizes promised stand beside the arguments; a range beyond its size is refused with both numbers. Whole columns may be given: " +
    "empty rows at the end of a table do not count.",
  "A default length is a length, not a number: a nosing of 1 1/4 in is 31.75 mm in a call in millimetres.",
  "Tables are read by their headings or labels, whatever their case, spaces, punctuation, spelling and plural: labor or labour, " +
    "mitered or mitred, center or centre, hour or hours, going or run, string or stringer are one word. A heading of ours that a " +
    "table does not read is refused by name, with the nearest and where it belongs; columns of your own that none of our tables " +
    "knows may stay, and so may a note. A table whose first row holds no known heading is read by position. An empty cell and 0 are " +
    "the same thing in a table. A default is taken by leaving the row or column out.",
  "A bad argument, a missing heading or an empty table fails the whole call with a sentence that names it. A bad row shows the " +
    "error in its number cells and the sentence in its note; the other rows answer.",
];

const blocks = (catalogue: readonly Declaration[], tables: readonly Table[], version: string, caution: string): Block[] => [
  { kind: "heading", level: 1, text: `Treadsheet ${version}: worksheet functions` },
  { kind: "text", text: caution },
  { kind: "heading", level: 2, text: "How functions read your cells" },
  { kind: "link", text: "Every limit of every code, with clause and source", page: "codes" },
  ...RULES.map((text) => ({ kind: "text", text }) as const),
  ...GROUPS.flatMap((group): Block[] => {
    const members = catalogue.filter((declaration) => declaration.group === group);
    return members.length === 0 ? [] : [{ kind: "heading", level: 2, text: group }, ...members.flatMap(functionBlocks)];
  }),
  { kind: "heading", level: 2, text: "Tables" },
  ...tables.flatMap(tableBlocks),
];

/** The function reference, as a page and as Markdown. */
export const reference = (catalogue: readonly Declaration[], tables: readonly Table[], version: string, caution: string): Page =>
  page("Treadsheet function reference", blocks(catalogue, tables, version, caution));
