import { EQUALIZE } from "../../functions/survey/equalize";
import { UNIFORMITY } from "../../functions/survey/uniformity";
import { spillOf } from "../result-looks";
import { sheet, SIXTEENTHS, TYPED_LENGTH } from "../sheet-builder";

/**
 * Rough rises of the invented stair, sub-tread to sub-tread, from the bottom; they add up to 106 1/8. The stringers were dropped by tread
 * less floor, and the fifth sub-tread lies 3/8 low: packing mends it.
 */
const ROUGH = [
  "7 5/16",
  "7 9/16",
  "7 1/2",
  "7 5/8",
  "7 1/4",
  "7 3/4",
  "7 11/16",
  "7 9/16",
  "7 5/8",
  "7 9/16",
  "7 5/8",
  "7 5/8",
  "7 9/16",
  "7 7/8",
];

export const survey = sheet(
  "Survey",
  "Survey: an open-sided oak stair (invented job, invented prices)",
  "Type the rough rises and the floors still to be laid; out come the finished rises, how alike they are, and the packing that " +
    "makes them equal.",
  [
    {
      at: "A4",
      headings: true,
      inputs: [1],
      formats: { 1: TYPED_LENGTH },
      rows: [["step", "rough rise"], ...ROUGH.map((rise, step) => [step + 1, rise])],
    },
    {
      at: "D4",
      headings: true,
      labels: true,
      inputs: [1],
      formats: { 1: TYPED_LENGTH },
      rows: [
        ["floors", "thickness"],
        ["tread thickness", "1"],
        ["lower build up", "3/4"],
        ["upper build up", "3/4"],
      ],
    },
    { at: "D9", style: "label", rows: [["How alike, as found"]] },
    { at: "D10", rows: [['=STAIR.UNIFORMITY(H5#,"3/8")']] },
    { at: "D17", style: "label", rows: [["How alike, once packed"]] },
    { at: "D18", rows: [['=STAIR.UNIFORMITY(S5#,"3/8")']] },
    { at: "G3", style: "label", rows: [["Finished rises, as found"]] },
    {
      at: "G4",
      headings: true,
      rows: [
        ["step", "rise", "on the tape"],
        ["=A5:A18", "=STAIR.FINISHED(B5:B18,E5,E6,E7)", "=STAIR.TAPE(H5#)"],
      ],
    },
    { at: "K3", style: "label", rows: [["Packing under each sub-tread"]] },
    { at: "K4", rows: [["=STAIR.EQUALIZE(B5:B18,E5,E6,E7)"]] },
    { at: "R3", style: "label", rows: [["Finished rises, once packed"]] },
    // Packing under a sub-tread raises its own rise and lowers the next; the upper floor is not packed.
    {
      at: "R4",
      headings: true,
      rows: [
        ["step", "rise", "on the tape"],
        ["=A5:A18", "=IF(ISERROR(K4),K4,H5:H18+VSTACK(M5:M17,0)-VSTACK(0,M5:M17))", "=STAIR.TAPE(S5#)"],
      ],
    },
    { at: "A20", labels: true, formats: { 1: SIXTEENTHS }, rows: [["total rise", '=STAIR.TOTAL(G4:H18,"rise")']] },
    {
      at: "A26",
      style: "caution",
      rows: [
        [
          "The first rise gains the tread and loses the floor, the last the other way round; the stringers were dropped for " +
            "that. The fifth sub-tread lies low: with the packing of column M under the sub-treads every rise is the same.",
        ],
      ],
    },
  ],
  [
    { at: "H5", rows: 14, formats: { 0: SIXTEENTHS } },
    { at: "S5", rows: 14, formats: { 0: SIXTEENTHS } },
    ...spillOf(EQUALIZE, "K4", 15),
    ...spillOf(UNIFORMITY, "D10", 4, { value: SIXTEENTHS }),
    ...spillOf(UNIFORMITY, "D18", 4, { value: SIXTEENTHS }),
  ],
  { A: 90, B: 90, D: 160, E: 90, F: 90, G: 60, H: 90, I: 100, K: 110, L: 90, M: 90, N: 50, O: 220, R: 60, S: 90, T: 100 },
);
