import { goodsKey } from "../../goods/goods-key";
import { Exact, exact, wholeUp } from "../../length/exact";
import type { Length } from "../../length/length";
import { isProblem, type Problem, problem } from "../../problem";
import { type FootageRule, footage, settled } from "./footage";
import { gradeAllowance } from "./grade-allowance";
import { ROUGH_THICKNESSES, roughFor, type RoughThickness } from "./rough-thickness";

/** A piece, or a number of like pieces, to be had out of lumber. */
export interface OrderPiece {
  readonly name: string;
  readonly length: Length;
  readonly width?: Length;
  readonly thickness?: Length;
  readonly grade: string;
  readonly species: string;
  readonly quantity: number;
}

/** What is added to the net of one grade, or of one thickness and grade. */
export interface OrderAllowance {
  readonly item: string | number;
  /** A share of the net. */
  readonly allowance: number;
  /** The least the supplier sells of it, in board feet. */
  readonly least?: number;
  readonly row: number;
}

interface OrderRow {
  readonly item: string;
  /** Whole board feet to order. */
  readonly quantity: Exact;
  readonly unit: string;
  readonly thickness: string;
  readonly grade: string;
  readonly species: string;
  readonly pieces: number;
  readonly net: Exact;
  readonly allowance: Exact;
  /** The net with its allowance. */
  readonly boardFeet: Exact;
  readonly assumed: string;
}

export type OrderFault =
  | "piece-without-width" | "piece-without-thickness" | "piece-without-grade" | "too-thick" | "no-allowance" | "two-allowances";

interface Placed {
  readonly piece: OrderPiece;
  readonly rough: RoughThickness;
  /** Length, width and the rough thickness. */
  readonly boards: { readonly length: Length; readonly width: Length; readonly thickness: Length; readonly quantity: number };
}

const placed = (piece: OrderPiece): Placed | Problem<OrderFault> => {
  const { name, length, width, thickness, grade, quantity } = piece;
  if (width === undefined) return problem("piece-without-width", { piece: name });
  if (thickness === undefined) return problem("piece-without-thickness", { piece: name });
  if (grade === "") return problem("piece-without-grade", { piece: name });
  const rough = roughFor(thickness);
  if (rough !== undefined) return { piece, rough, boards: { length, width, thickness: rough.rough, quantity } };
  const thickest = ROUGH_THICKNESSES[ROUGH_THICKNESSES.length - 1]!;
  return problem("too-thick", { piece: name, thickness, rough: thickest.name, dressed: thickest.dressed });
};

const THICKNESS = /^\s*(\d+)\s*\/\s*4\s+(\S.*)$/;

/** `5/4 FAS` as thickness and the rest; without a thickness it is for all. */
const allowanceKey = (item: string): string => {
  const found = THICKNESS.exec(item);
  return found === null ? goodsKey(item) : `${found[1] ?? ""}/4|${goodsKey(found[2] ?? "")}`;
};

type Allowances = ReadonlyMap<string, OrderAllowance>;

const allowancesOf = (given: readonly OrderAllowance[]): Allowances | Problem<OrderFault> => {
  const found = new Map<string, OrderAllowance>();
  for (const one of given) {
    const key = allowanceKey(String(one.item));
    const other = found.get(key);
    if (other !== undefined && (other.allowance !== one.allowance || other.least !== one.least))
      return problem("two-allowances", { item: String(one.item), first: other.row, second: one.row });
    found.set(key, one);
  }
  return found;
};

/** The allowance for a row of the order: the one that says most of it. */
const allowanceFor = (given: Allowances, { piece: { grade, species }, rough }: Placed): OrderAllowance | undefined => {
  const names = species === "" ? [grade] : [`${grade} ${species}`, grade];
  const keys = [...names.map((name) => `${rough.name}|${goodsKey(name)}`), ...names.map(goodsKey)];
  return keys.map((key) => given.get(key)).find((one) => one !== undefined);
};

const orderRow = (rows: readonly Placed[], given: Allowances, rule: FootageRule): OrderRow | Problem<OrderFault> => {
  const [first] = rows;
  const { piece: { name, grade, species }, rough } = first!;
  const own = allowanceFor(given, first!);
  const ofGrade = gradeAllowance(grade);
  if (own === undefined && ofGrade === undefined) return problem("no-allowance", { piece: name, grade, item: `${rough.name} ${grade}` });
  const allowance = own === undefined ? ofGrade!.allowance : exact(own.allowance);
  const net = settled(footage(rule, rows.map(({ boards }) => boards)).reduce((all, { boardFeet }) => all.plus(boardFeet), new Exact(0)));
  const boardFeet = net.times(allowance.plus(1));
  const least = own?.least === undefined ? undefined : exact(own.least);
  const isRaised = least !== undefined && least.gt(boardFeet);
  return {
    item: [rough.name, grade, species].filter((part) => part !== "").join(" "),
    quantity: wholeUp(isRaised ? least : boardFeet),
    unit: "bf",
    thickness: rough.name,
    grade,
    species,
    pieces: rows.reduce((all, { piece }) => all + piece.quantity, 0),
    net,
    allowance,
    boardFeet,
    assumed: [
      own === undefined ? `allowance: a ${grade} face is at least ${ofGrade!.clear} clear; a rule for a phone call, a tally beats it` : "",
      isRaised ? "raised to the least sold" : "",
    ].filter((part) => part !== "").join("; "),
  };
};

/** Board feet to order for pieces, a row a thickness, grade and species, in the order of the pieces. */
export const lumberOrder = (
  pieces: readonly OrderPiece[],
  allowances: readonly OrderAllowance[],
  rule: FootageRule,
): readonly OrderRow[] | Problem<OrderFault> => {
  const given = allowancesOf(allowances);
  if (isProblem(given)) return given;
  const groups = new Map<string, Placed[]>();
  for (const piece of pieces) {
    const one = placed(piece);
    if (isProblem(one)) return one;
    const key = JSON.stringify([one.rough.name, goodsKey(piece.grade), goodsKey(piece.species)]);
    const others = groups.get(key);
    if (others === undefined) groups.set(key, [one]);
    else others.push(one);
  }
  const rows: OrderRow[] = [];
  for (const group of groups.values()) {
    const row = orderRow(group, given, rule);
    if (isProblem(row)) return row;
    rows.push(row);
  }
  return rows;
};
