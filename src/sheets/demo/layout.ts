import { LAYOUT } from "../../functions/layout/layout";
import { RAIL } from "../../functions/layout/rail";
import { SKIRT } from "../../functions/layout/skirt";
import { STORYPOLE } from "../../functions/layout/storypole";
import { spillOf } from "../result-looks";
import { sheet, SIXTEENTHS, TYPED_LENGTH } from "../sheet-builder";

const STAIR: readonly (readonly (string | number)[])[] = [
  ["label", "value"],
  ["total rise", "=Survey!B20"],
  ["risers", 14],
  ["run", "10"],
  ["nosing", "1 1/4"],
  ["tread thickness", "=Survey!E5"],
  ["riser thickness", "3/4"],
  ["lower build up", "=Survey!E6"],
  ["upper build up", "=Survey!E7"],
  ["width", "36 3/4"],
  ["open end", "right"],
  ["overhang", "1 1/4"],
  ["return width", "1 1/4"],
  ["run past", "1/4"],
  ["lap", "1/4"],
  ["skirt thickness", "3/4"],
  ["skirt shows", "2"],
  ["skirt foot", "3"],
  ["skirt head", "4"],
  ["stringer board", "11 1/4"],
  ["headroom", "80"],
  ["opening", "10' 3\""],
  ["floor thickness", "11 1/4"],
  ["handrails", "one"],
  ["handrail height", "36"],
  ["fall height", "=B5-B5/B6"],
  ["guard", "yes"],
  ["guard height", "36"],
  ["guard gap", "=INDEX(P20#,1,2)"],
  ["open risers", "no"],
];

/** Rows LAYOUT spills under its headings, with room for labels the user adds. */
const LAYOUT_ROWS = 45;

export const layout = sheet(
  "Layout",
  "Layout",
  "Type what is known of the stair in the yellow cells; out comes every size that follows from it. Try 9 for the run in B7 and " +
    "walk through the sheets.",
  [
    { at: "A4", headings: true, labels: true, inputs: [1], formats: { 1: TYPED_LENGTH }, rows: STAIR },
    { at: "D4", rows: [["=STAIR.LAYOUT(A4:B33)"]] },
    {
      at: "H4",
      headings: true,
      rows: [["on the tape"], ...Array.from({ length: LAYOUT_ROWS }, (_, row) => [`=IF(F${row + 5}="in",STAIR.TAPE(E${row + 5}),"")`])],
    },
    { at: "J4", rows: [["=STAIR.STORYPOLE(B5,B6)"]] },
    { at: "P4", rows: [["=STAIR.SKIRT(D4#)"]] },
    { at: "P12", rows: [["=STAIR.RAIL(D4#)"]] },
    { at: "P19", headings: true, rows: [["balusters of 1 1/4 in to a run", "clear gap"], ['=STAIR.BALUSTERS(B7,"1 1/4",,TRUE)']] },
  ],
  [
    ...spillOf(LAYOUT, "D4", LAYOUT_ROWS),
    ...spillOf(STORYPOLE, "J4", 14),
    ...spillOf(SKIRT, "P4", 6),
    ...spillOf(RAIL, "P12", 6),
    { at: "Q20", rows: 1, formats: { 0: SIXTEENTHS } },
  ],
  { A: 150, B: 90, D: 310, E: 90, F: 50, G: 290, H: 100, J: 60, K: 80, L: 80, M: 140, N: 60, P: 350, Q: 80, R: 50, S: 140 },
);
