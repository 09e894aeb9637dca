import { sheet, TYPED_LENGTH } from "../sheet-builder";

export const check = sheet(
  "Check",
  "Code check: as designed, and as framed",
  "Type a code in B4; out comes every limit with its clause and margin, on the left for the design, on the right for the steps as framed.",
  [
    { at: "A4", labels: true, inputs: [1], formats: { 1: TYPED_LENGTH }, rows: [["code", "irc-2021"]] },
    { at: "D4", labels: true, rows: [["fails, as designed", "=COUNTIF(E9:E70,\"fail\")"], ["not decided", "=COUNTIF(E9:E70,\"judge\")+COUNTIF(E9:E70,\"assumed*\")+COUNTIF(E9:E70,\"not given\")+COUNTIF(E9:E70,\"not on file\")"]] },
    { at: "J4", labels: true, rows: [["fails, as framed", "=COUNTIF(N9:N70,\"fail\")"], ["fails, once packed", "=SUM(--(INDEX(STAIR.CHECK(Layout!D4#,B4,HSTACK(Survey!R5#,Survey!S5#)),0,5)=\"fail\"))"], ["not decided, as framed", "=COUNTIF(N9:N70,\"judge\")+COUNTIF(N9:N70,\"assumed*\")+COUNTIF(N9:N70,\"not given\")+COUNTIF(N9:N70,\"not on file\")"]] },
    {
      at: "L4", style: "caution",
      rows: [["The way out: pack the sub-treads by column M of Survey. Not decided: judge, assumed, not given or not on file; each such row says what to give or look up."]],
    },
    { at: "A7", style: "label", rows: [["As designed"]] },
    { at: "J7", style: "label", rows: [["As framed, with the finished rises of Survey"]] },
    { at: "A8", rows: [["=STAIR.CHECK(Layout!D4#,B4)"]] },
    { at: "J8", rows: [["=STAIR.CHECK(Layout!D4#,B4,HSTACK(Survey!G5#,Survey!H5#))"]] },
  ],
  [
    { at: "A8", headings: 8 },
    { at: "J8", headings: 8 },
    { at: "B9", rows: 40, formats: { 0: "0.0###", 1: "0.0###", 2: "0.0###" } },
    { at: "K9", rows: 40, formats: { 0: "0.0###", 1: "0.0###", 2: "0.0###" } },
  ],
  { A: 210, B: 80, C: 90, D: 140, E: 120, F: 100, G: 130, H: 320, J: 210, K: 80, L: 90, M: 80, N: 120, O: 100, P: 130, Q: 320 },
);
