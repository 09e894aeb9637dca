import { BLANK } from "../../functions/order/blank";
import { ORDER } from "../../functions/order/order";
import { spillOf } from "../result-looks";
import { DECIMALS, MONEY, sheet, TYPED_LENGTH } from "../sheet-builder";

export const order = sheet(
  "Order",
  "Order of blanks",
  "Type the blanks the yard has; out come the sizes needed, which blanks to buy, what is ripped and cut off each, and what the rip costs.",
  [
    {
      at: "A4",
      headings: true,
      labels: true,
      inputs: [0, 1, 2, 3, 4],
      formats: { 1: TYPED_LENGTH, 2: TYPED_LENGTH, 3: TYPED_LENGTH, 4: MONEY },
      rows: [
        ["label", "length", "width", "thickness", "price"],
        ["oak blank 36", "36", "11 1/2", "1", 46],
        ["oak blank 42", "42", "11 1/2", "1", 54],
        ["oak blank 48", "48", "11 1/2", "1", 61.5],
        ["oak nosing 48", "48", "3 1/2", "1", 19.5],
      ],
    },
    { at: "H4", rows: [["=STAIR.BLANK(Layout!D4#)"]] },
    {
      at: "A11",
      labels: true,
      formats: { 1: MONEY },
      rows: [
        ["cost of the blanks", '=STAIR.PICK(A15#,"total","cost")'],
        ["rip cost, part of it", '=STAIR.PICK(A15#,"total","rip cost")'],
      ],
    },
    {
      at: "D11",
      style: "caution",
      rows: [
        [
          "The cost of the blanks does not move with the run: the yard sells the same 11 1/2 in blank for a 9 in run as for a " +
            "10. What moves is what is ripped off, and that you have paid for too.",
        ],
      ],
    },
    { at: "A15", rows: [["=STAIR.ORDER(Layout!D4#,A4:E8)"]] },
  ],
  [...spillOf(BLANK, "H4", 4), ...spillOf(ORDER, "A15", 8, { net: DECIMALS, gross: DECIMALS })],
  { A: 170, B: 80, C: 80, D: 80, E: 80, F: 80, G: 80, H: 130, I: 80, J: 80, K: 80, L: 80, M: 420 },
);
