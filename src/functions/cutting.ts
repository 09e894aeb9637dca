import type { CuttingJob } from "../solver/yield/cutting-job";
import type { Length, Unit } from "../solver/length/length";
import type { RowOf } from "./columns";
import { headings, type Measured, unit } from "./declare";
import { pieces, stock } from "./tables";

/** The arguments of the functions that tell of one cutting plan. */
export const CUTTING = {
  pieces: {
    kind: "table",
    table: pieces,
    badRows: "refuse",
    says:
      "What is to be cut; a grade is cut only from stock of the same grade, a width and thickness " +
      "only from stock at least as wide and thick.",
  },
  stock: {
    kind: "table",
    table: stock,
    badRows: "refuse",
    says: "What it can be cut from. Where there is a column `available`, an empty cell means none, and `any` no limit.",
  },
  kerf: { kind: "length", sign: "not negative", default: "1/8", says: "Width the blade removes at every cut." },
  trim: {
    kind: "length",
    sign: "not negative",
    default: 0,
    says: "Cut off each end of every stick before it is used, the kerf of that cut inside it.",
  },
  keep: {
    kind: "length",
    sign: "not negative",
    optional: true,
    says: "Least length of an end that is kept as an offcut.",
    without: "Left out: no offcuts are counted.",
  },
  unit,
  headings,
} as const;

/** Wording of jobs that have no plan. */
export const CUTTING_PROBLEMS = {
  "stock-without-price": {
    cell: "#VALUE!",
    says: "price: stock {stock} ({length}) is empty or 0; give its price, or write yes under owned if it is on hand",
  },
  "owned-without-limit": {
    cell: "#VALUE!",
    says: "available: stock {stock} ({length}) is owned without a number; say how many are on hand, or give its price",
  },
  "too-many-pieces": {
    cell: "#VALUE!",
    says: "pieces: {count} pieces are more than one plan takes; split the job into plans of {most} or fewer",
  },
  "too-much-stock": {
    cell: "#VALUE!",
    says: "stock: {count} rows are more than one plan takes; leave out what will not be cut, {most} rows or fewer",
  },
  "too-many-parts": {
    cell: "#VALUE!",
    says: "pieces: {count} grades and sizes that share no stock are more than one plan takes; split the job into plans of {most} or fewer",
  },
  "no-stock-available": {
    cell: "#N/A",
    says: 'available: piece {piece} ({length}) has no stock: of every row of its grade 0 are available; write how many there are, or "any"',
  },
  "no-stock-of-grade": {
    cell: "#N/A",
    says:
      'grade: piece {piece} ({length}) is of grade "{grade}", and no stock of that grade is available; add one, or leave both ' +
      "grades empty",
  },
  "stock-without-width": {
    cell: "#VALUE!",
    says: "width: stock {stock} ({length}) has none, and piece {piece} is {size} wide; give the width of the stock",
  },
  "stock-without-thickness": {
    cell: "#VALUE!",
    says: "thickness: stock {stock} ({length}) has none, and piece {piece} is {size} thick; give the thickness of the stock",
  },
  "piece-too-wide": {
    cell: "#N/A",
    says: "width: piece {piece} is {width} wide, and the widest available stock of its grade is {widest}; add wider stock",
  },
  "piece-too-thick": {
    cell: "#N/A",
    says: "thickness: piece {piece} is {thickness} thick, and the thickest available stock of its grade is {thickest}; add thicker stock",
  },
  "piece-fits-no-section": {
    cell: "#N/A",
    says:
      "width: piece {piece} is {width} wide and {thickness} thick, and no available stock of its grade is both; what is wide " +
      "enough is too thin",
  },
  "too-many-sections": {
    cell: "#VALUE!",
    says:
      "width: {count} different widths and thicknesses of one grade are more than one plan takes; split the job so that each has " +
      "{most} or fewer",
  },
  "piece-fits-no-stock-of-section": {
    cell: "#N/A",
    says:
      "length: piece {piece} is {length}, more than the {longest} that can be cut from the longest stock of its grade that is wide " +
      "and thick enough",
  },
  "piece-fits-no-stock": {
    cell: "#N/A",
    says: "length: piece {piece} is {length}, more than the {longest} that can be cut from the longest stock of its grade",
  },
  "piece-fits-no-available-stock": {
    cell: "#N/A",
    says:
      "length: piece {piece} is {length}, the longest stock of its grade is {there}, and none of it is available; the longest " +
      "available gives {longest}",
  },
  "like-pieces-side-by-side": {
    cell: "#VALUE!",
    says:
      "width: 2 x {piece} of {width} and the kerf fit across the {across} of {stock}; SHEETCUTS rips it, or leave the pieces' width out",
  },
  "pieces-side-by-side": {
    cell: "#VALUE!",
    says:
      "width: {piece} of {width}, {other} of {otherWidth} and the kerf fit across the {across} of {stock}; SHEETCUTS rips it, or leave " +
      "the pieces' width out",
  },
  "stock-runs-out": {
    cell: "#N/A",
    says:
      "available: the stock cannot hold all pieces; piece {piece} ({length}) is without a stick, and the longest stick gives " +
      '{longest}; add stock, or write "any"',
  },
  "no-plan-found": {
    cell: "#N/A",
    says:
      "available: no plan was found that gives every piece a stick; piece {piece} ({length}) is without one, and the longest stick " +
      'gives {longest}; add stock, or write "any"',
  },
} as const;

export interface GivenCutting {
  readonly pieces: readonly RowOf<typeof pieces.columns>[];
  readonly stock: readonly RowOf<typeof stock.columns>[];
  readonly kerf: Length;
  readonly trim: Length;
  readonly keep: Length | undefined;
  readonly unit: Unit;
}

/**
 * The job as the solver takes it: a piece without a label is called by its item or step, and one without a width is as wide as TREADFIT's
 * depth or RISERFIT's height says. An empty price counts as 0, as the host sends it.
 */
export const cuttingJobOf = ({ pieces: wanted, stock: sticks, keep, kerf, trim, unit: used }: GivenCutting): CuttingJob => ({
  pieces: wanted.map(({ label, item, step, width, depth, height, ...piece }) => {
    const across = width ?? depth ?? height;
    return { ...piece, label: label ?? item ?? step ?? "", ...(across === undefined ? {} : { width: across }) };
  }),
  stock: sticks.map(({ label, ...stick }) => ({ ...stick, label: label ?? "" })),
  kerf,
  trim,
  unit: used,
  ...(keep === undefined ? {} : { keep }),
});

/** A stick is named by its label, or by its length where it has none. */
export const namedStock = (name: string | number | Length): string | number | Measured =>
  typeof name === "object" ? { kind: "length", value: name } : name;
