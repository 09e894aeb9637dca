import { CHECK } from "../../functions/code/check";
import { spillOf } from "../result-looks";
import { sheet, TYPED_LENGTH } from "../sheet-builder";

/** Verdicts a person has to see beside each other: no fails says little while others were not given. */
const COUNTED = ["fail", "caution", "assumed", "judge", "not given", "not on file"] as const;
const COLUMNS = ["E", "F", "G", "H", "I", "J"] as const;

const counts = (label: string, check: string): readonly string[] => [
  label,
  ...COLUMNS.map((column) => `=STAIR.TOTAL(${check},"verdict",${column}3)`),
];

export const check = sheet(
  "Check",
  "Code check: as designed, and as framed",
  "Type a code in B4; out comes every limit with its clause and margin, on the left for the design, on the right for the steps as framed.",
  [
    { at: "A4", labels: true, inputs: [1], formats: { 1: TYPED_LENGTH }, rows: [["code", "irc-2021"]] },
    {
      at: "D3",
      headings: true,
      labels: true,
      rows: [
        ["rows that read", ...COUNTED],
        counts("as designed", "A8#"),
        counts("as framed", "J8#"),
        counts("once packed", "STAIR.CHECK(Layout!D4#,B4,Survey!R4:S18)"),
      ],
    },
    {
      at: "L4",
      style: "caution",
      rows: [
        [
          "The way out: pack the sub-treads by column M of Survey. Each row that reads assumed, judge, not given or not on file " +
            "says what to give or look up.",
        ],
      ],
    },
    { at: "A7", style: "label", rows: [["As designed"]] },
    { at: "J7", style: "label", rows: [["As framed, with the finished rises of Survey"]] },
    { at: "A8", rows: [["=STAIR.CHECK(Layout!D4#,B4)"]] },
    { at: "J8", rows: [["=STAIR.CHECK(Layout!D4#,B4,HSTACK(Survey!G5#,Survey!H5#))"]] },
  ],
  [...spillOf(CHECK, "A8", 40), ...spillOf(CHECK, "J8", 40)],
  { A: 210, B: 80, C: 90, D: 140, E: 120, F: 100, G: 250, H: 320, J: 210, K: 80, L: 90, M: 80, N: 120, O: 100, P: 250, Q: 320 },
);
