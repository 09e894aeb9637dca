import { MONEY, PERCENT, sheet, SIXTEENTHS, TYPED_LENGTH } from "../sheet-builder";

const picked = (label: string): string => `STAIR.PICK(Layout!D4#,"${label}")`;

export const bid = sheet(
  "Bid",
  "Bid",
  "Type the shop's hours, prices and rates; out comes the bid, with the blanks, boards, skirts and rail from the sheets before it.",
  [
    {
      at: "A4", headings: true, labels: true, inputs: [0, 1, 2],
      rows: [
        ["item", "quantity", "unit"],
        ["adhesive", "=STAIR.ADHESIVE(J11,J12,J13)", "each"],
        ["screws", `=4*${picked("treads")}`, "each"],
        ["mitred return", "=STAIR.PICK(Order!H4#,\"return\",\"quantity\")", "each"],
        ["fit treads", `=0.55*${picked("treads")}`, "hour"],
        ["fit risers", `=0.3*${picked("risers")}`, "hour"],
        ["mitre returns", `=0.25*${picked("treads")}`, "hour"],
        ["hang skirts and rail", 6, "hour"],
      ],
    },
    {
      at: "E4", headings: true, labels: true, inputs: [0, 1, 2], formats: { 1: MONEY },
      rows: [["item", "price", "unit"], ["adhesive", 8.4, "each"], ["screws", 0.11, "each"], ["mitred return", 6.75, "each"], ["labour", 58, "hour"]],
    },
    {
      at: "I4", labels: true, inputs: [1], formats: { 1: PERCENT },
      rows: [["overhead", 0.12], ["profit", 0.15], ["basis", "margin"], ["tax", 0.065]],
    },
    { at: "I10", style: "label", rows: [["Adhesive: along each of three stringers and behind each riser"]] },
    {
      at: "I11", labels: true, inputs: [1], formats: { 1: TYPED_LENGTH },
      rows: [["bead length", `=${picked("treads")}*(3*${picked("run")}+${picked("width")})`], ["bead diameter", "5/16"], ["cartridge", "10.1 fl oz"]],
    },
    { at: "A15", style: "label", rows: [["Blanks, from Order; rows without a price are cut from sticks"]] },
    { at: "A16", rows: [["=STAIR.EXTEND(Order!A15#,Order!A15#)"]] },
    { at: "A24", style: "label", rows: [["Boards, from Cut plan"]] },
    { at: "A25", rows: [["=STAIR.EXTEND('Cut plan'!J22#,'Cut plan'!J22#)"]] },
    { at: "A31", style: "label", rows: [["Skirts and rail, from Cut plan"]] },
    { at: "A32", rows: [["=STAIR.EXTEND('Cut plan'!R22#,'Cut plan'!R22#)"]] },
    { at: "A38", style: "label", rows: [["Everything else"]] },
    { at: "A39", rows: [["=STAIR.EXTEND(A4:C11,E4:G8)"]] },
    { at: "L3", style: "label", rows: [["The bid"]] },
    { at: "L4", rows: [["=STAIR.BID(VSTACK(A16#,A25#,A32#,A39#),J4,J5,J6,J7)"]] },
    { at: "L12", labels: true, formats: { 1: MONEY }, rows: [["a spare blank, at the same profit", "=STAIR.SELLINGPRICE(STAIR.PICK(A16#,\"oak blank 42\",\"price\"),J5,J6)"]] },
  ],
  [
    ...["A16", "A25", "A32", "A39"].map((at) => ({ at: at.replace("A", "D"), rows: 8, formats: { 0: MONEY, 1: MONEY } })),
    { at: "M5", rows: 6, formats: { 0: MONEY } },
    { at: "J11", rows: 1, formats: { 0: SIXTEENTHS } },
    { at: "A16", headings: 5 },
    { at: "A25", headings: 5 },
    { at: "A32", headings: 5 },
    { at: "A39", headings: 5 },
    { at: "L4", headings: 2 },
  ],
  { A: 170, B: 80, C: 60, D: 80, E: 130, F: 80, G: 60, I: 130, J: 100, L: 260, M: 100 },
);
