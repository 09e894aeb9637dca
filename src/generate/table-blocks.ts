import type { Column, Table } from "../functions/columns";
import { columnKindText } from "../functions/describe";
import { inBothUnits, listed } from "../functions/say";
import { stair } from "../functions/tables";
import { STAIR_DEFAULTS } from "../solver/layout/stair-defaults";
import type { StairLabelName } from "../solver/layout/stair-facts";
import { LABEL_TOPICS, STAIR_LABELS, type StairLabel } from "../solver/stair-labels";
import { words } from "../solver/words";
import type { Block } from "./page";

const columnDefault = (column: Column): string => {
  if (column.required) return "required";
  return "default" in column && column.default !== undefined && column.default !== ""
    ? String(column.default === Infinity ? "any" : column.default)
    : "";
};

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
    fact === undefined && readBy.join() === "CHECK,ALTERNATES";
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
        "Labels below are only for CHECK, and for ALTERNATES, which checks alike, by what a check asks them for. The last rows of a " +
        "check name those that would matter for its code.",
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

/** What a table is, and its headings or labels. */
export const tableBlocks = (table: Table): Block[] => [
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
