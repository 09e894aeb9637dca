import { sheet, SIXTEENTHS, TYPED_LENGTH } from "../sheet-builder";

/** Rough rises of the invented stair, sub-tread to sub-tread, from the bottom; they add up to 106 1/8. */
const ROUGH = ["7 9/16", "7 9/16", "7 5/8", "7 9/16", "7 9/16", "7 5/8", "7 9/16", "7 9/16", "7 5/8", "7 9/16", "7 5/8", "7 9/16", "7 9/16", "7 9/16"];

export const survey = sheet(
  "Survey",
  "Survey: an open-sided oak stair (invented job, invented prices)",
  "Type the rough rises and the floors still to be laid; out come the finished rises, how alike they are, and the packing that makes them equal.",
  [
    { at: "A4", headings: true, inputs: [1], formats: { 1: TYPED_LENGTH }, rows: [["step", "rough rise"], ...ROUGH.map((rise, step) => [step + 1, rise])] },
    {
      at: "D4", headings: true, labels: true, inputs: [1], formats: { 1: TYPED_LENGTH },
      rows: [["floors", "thickness"], ["tread thickness", "1"], ["lower build up", "3/4"], ["upper build up", "3/4"]],
    },
    { at: "D10", rows: [["=STAIR.UNIFORMITY(H5#)"]] },
    { at: "G4", headings: true, rows: [["step", "rise", "on the tape"], ["=A5:A18", "=STAIR.FINISHED(B5:B18,E5,E6,E7)", "=STAIR.TAPE(H5#)"]] },
    { at: "K4", rows: [["=STAIR.EQUALIZE(B5:B18,E5,E6,E7)"]] },
    { at: "A20", labels: true, formats: { 1: SIXTEENTHS }, rows: [["total rise", "=SUM(H5#)"]] },
    {
      at: "A22", style: "caution",
      rows: [["The first rise gains the tread and loses the floor, the last the other way round. Nobody dropped the stringers, so the stair as framed is out: column M says what goes under each tread."]],
    },
  ],
  [
    { at: "H5", rows: 14, formats: { 0: SIXTEENTHS } },
    { at: "L5", rows: 15, formats: { 0: SIXTEENTHS, 1: SIXTEENTHS } },
    { at: "E11", rows: 4, formats: { 0: SIXTEENTHS } },
    { at: "D10", headings: 3 },
    { at: "K4", headings: 5 },
  ],
  { A: 90, B: 90, D: 140, E: 90, F: 90, G: 60, H: 90, I: 100, K: 110, L: 90, M: 90, N: 50, O: 220 },
);
