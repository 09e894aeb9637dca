import { TREADFIT } from "../../functions/fit/treadfit";
import { treadReadings } from "../../functions/tables";
import { words } from "../../solver/words";
import { cellAddress } from "../cell-address";
import { headingsOf, placesOf, spillOf } from "../result-looks";
import { sheet, SIXTEENTHS, THOUSANDTHS, TYPED_LENGTH } from "../sheet-builder";

/** Readings of the next five treads of the invented stair; the diagonals close within a 1/16 tape. */
const TREADS: readonly (readonly [number, string, string, string, string, string])[] = [
  [1, "10", "36 3/4", "36 5/8", "38 3/16", "37 7/8"],
  [2, "10", "36 13/16", "36 5/8", "38 1/8", "38"],
  [3, "10", "36 11/16", "36 1/2", "38 1/16", "37 13/16"],
  [4, "10", "36 3/4", "36 11/16", "38 3/16", "37 15/16"],
  [5, "10", "36 7/8", "36 11/16", "38 3/16", "38"],
];

const LEAN = -1.5;
/** Row of its first tread, counted from 0. */
const FIRST = 12;
const TICKET = ["length", "back", "front", "toe", "heelAtTheHook"] as const;

/** Columns of what TREADFIT spills under its headings in A12. */
const spilled = (first: string, last = first): string => {
  const [left = 1, right = 1] = placesOf(TREADFIT, first, last);
  return `${cellAddress({ row: FIRST, column: left - 1 })}:${cellAddress({ row: FIRST + TREADS.length - 1, column: right - 1 })}`;
};

export const fit = sheet(
  "Fit",
  "Fit: the next five treads",
  "Type the readings of each step as taped at the sub-tread; out come lengths, saw settings in words and the marks of the " +
    "return, in sixteenths for the ticket, and riser heights and the notch.",
  [
    {
      at: "A4",
      headings: true,
      inputs: [1, 2, 3, 4, 5, 6],
      formats: { 1: TYPED_LENGTH, 2: TYPED_LENGTH, 3: TYPED_LENGTH, 4: TYPED_LENGTH, 5: TYPED_LENGTH },
      rows: [
        headingsOf(treadReadings, "step", "run", "back", "front", "diagonal", "secondDiagonal", "leftLean"),
        ...TREADS.map((row) => [...row, LEAN]),
      ],
    },
    {
      at: "A10",
      style: "caution",
      rows: [
        [
          '=IF(STAIR.TOINCHES(Layout!B7)=STAIR.TOINCHES(B5),"","These treads were read on another run than Layout has now: read ' +
            'them again.")',
        ],
      ],
    },
    { at: "A12", rows: [["=STAIR.TREADFIT(A4:G9,Layout!B8,Layout!B14,Layout!B15,Layout!B16,Layout!B9)"]] },
    { at: "A20", style: "label", rows: [["Ticket"]] },
    {
      at: "A21",
      headings: true,
      rows: [
        ["step", ...TICKET, "mitre", "leftSet", "rightSet"].map(words),
        [
          "=A5:A9",
          ...TICKET.map((name) => `=STAIR.TAPE(INDEX(${spilled("step", "note")},0,${placesOf(TREADFIT, name).join()}))`),
          `=ROUND(${spilled("mitre")},1)`,
          `=${spilled("leftSet")}`,
          `=${spilled("rightSet")}`,
        ],
      ],
    },
    { at: "A27", style: "label", rows: [["Riser heights, from Cut plan"]] },
    {
      at: "A28",
      headings: true,
      rows: [
        ["step", "riser height", "on the tape"],
        ["='Cut plan'!A5:A18", "='Cut plan'!G5#", "=STAIR.TAPE(B29#)"],
      ],
    },
    { at: "E28", headings: true, rows: [["notch width", "notch height"], ['=STAIR.NOTCH(Layout!B19,Layout!B17,Layout!B18,"1/32")']] },
  ],
  [
    ...spillOf(TREADFIT, "A12", TREADS.length, { closure: THOUSANDTHS }),
    { at: "B29", rows: 14, formats: { 0: SIXTEENTHS } },
    { at: "E29", rows: 1, formats: { 0: "# ??/32", 1: "# ??/32" } },
  ],
  { A: 60, B: 110, C: 110, D: 100, E: 110, F: 150, G: 90, H: 250, I: 150, N: 80, O: 110, T: 140, U: 250, V: 150, Y: 130, AC: 150 },
);
