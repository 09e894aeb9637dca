import { exact } from "../../../../src/solver/length/exact";
import { lengthOf, type Unit } from "../../../../src/solver/length/length";
import { isProblem } from "../../../../src/solver/problem";
import { roughFor } from "../../../../src/solver/yield/tally/rough-thickness";
import type { TallyBoard } from "../../../../src/solver/yield/tally/tally-board";
import { tallyList } from "../../../../src/solver/yield/tally/tally-list";

/** What a test gives as plain numbers. */
type Sized = "length" | "width" | "thickness" | "price" | "boardFootPrice" | "lotPrice" | "edge";

/** A board of a test. */
export interface Plain extends Partial<Omit<TallyBoard, Sized>> {
  readonly length: number;
  readonly width: number;
  readonly thickness?: number;
  readonly price?: number;
  readonly boardFootPrice?: number;
  readonly lotPrice?: number;
  readonly edge?: number;
}

export const board = (plain: Plain, row: number, unit: Unit = "in", per = 1): TallyBoard => {
  const { length, width, thickness = 1, price, boardFootPrice, lotPrice, edge = 0, ...rest } = plain;
  const size = (inches: number) => lengthOf(exact(inches).times(per), unit);
  return {
    row, written: thickness, surfaced: false, grade: "", species: "", owned: false, defects: [], clear: [], quantity: 1,
    length: size(length), width: size(width), thickness: size(thickness), edge: size(edge),
    ...(price === undefined ? {} : { price: exact(price) }),
    ...(boardFootPrice === undefined ? {} : { boardFootPrice: exact(boardFootPrice) }),
    ...(lotPrice === undefined ? {} : { lotPrice: exact(lotPrice) }),
    ...rest,
  };
};

export const boards = (plain: readonly Plain[], unit: Unit = "in", per = 1): readonly TallyBoard[] =>
  plain.map((one, place) => board(one, place + 2, unit, per));

/** The list of a tally that has one. */
export const listed = (of: readonly TallyBoard[], rule: Parameters<typeof tallyList>[1] = "surface measure", shrinkage = 0) => {
  const list = tallyList(of, rule, exact(shrinkage));
  if (isProblem(list)) throw new Error(list.problem);
  return list;
};

export const roughName = (inches: number): string | undefined => roughFor(lengthOf(inches, "in"))?.name;
