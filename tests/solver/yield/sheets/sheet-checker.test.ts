import type { SheetPlan } from "../../../../src/solver/yield/sheets/sheet-plan";
import { lengthOf } from "../../../../src/solver/length/length";
import { checkedSheets, type PlainSheetJob, sheetJob } from "./job";
import { faults } from "./sheet-checker";

/** By hand: two of 40 and a kerf along 96, and beside them, a kerf away, two of 20 that may not be turned. */
const JOB: PlainSheetJob = {
  pieces: [{ label: "side", length: 40, width: 20, quantity: 2 }, { label: "shelf", length: 20, width: 10, quantity: 2 }],
  stock: [{ label: "4 x 8", length: 96, width: 48, cents: 6200, available: 1 }],
  kerf: 0.125,
};

type Changed = (plan: SheetPlan) => SheetPlan;
type Piece = SheetPlan["sheets"][number]["strips"][number]["pieces"][number];

const everyPiece = (change: (piece: Piece, place: number) => readonly Piece[]): Changed => (plan) => ({
  ...plan,
  sheets: plan.sheets.map((sheet) => ({
    ...sheet, strips: sheet.strips.map((strip) => ({ ...strip, pieces: strip.pieces.flatMap(change) })),
  })),
});

test.each<[string, Changed]>([
  ["a piece that lies a little further along", everyPiece((piece, at) => [at === 0 ? { ...piece, along: piece.along.plus(1) } : piece])],
  ["a piece that is not cut", everyPiece((piece, at) => (at === 0 ? [] : [piece]))],
  ["a piece across the grain", everyPiece((piece, at) => [at === 0 ? { ...piece, turned: true } : piece])],
  ["a piece off the edge", everyPiece((piece) => [{ ...piece, across: piece.across.plus(lengthOf(40, "in")) }])],
  ["pieces on one another", everyPiece((piece) => [{ ...piece, along: lengthOf(0, "in") }])],
  ["a cost that is another", (plan) => ({ ...plan, cost: plan.cost.plus(1) })],
  ["a bound above the cost", (plan) => ({ ...plan, bound: plan.cost.plus(1) })],
  ["a sheet more than there are", (plan) => ({ ...plan, sheets: [...plan.sheets, ...plan.sheets] })],
  ["the other way round", (plan) => ({ ...plan, sheets: plan.sheets.map((sheet) => ({ ...sheet, first: "crosscut" as const })) })],
])("the checker of sheets sees %s", (_, change) => {
  const plan = checkedSheets({ ...JOB, first: "rip" });
  expect(faults(sheetJob({ ...JOB, first: "rip" }), change(plan))).not.toEqual([]);
});
