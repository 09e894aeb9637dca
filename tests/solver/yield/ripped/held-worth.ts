import type { Division, ProofPlace } from "../../../../src/solver/yield/ripped/board-proof";
import type { CertificateJob } from "./certificate-job";

/** Work left to the checker; at 0 it has given up. */
export interface Count {
  left: number;
}

/**
 * A clear stretch as one way of cutting sees it: sizes with the kerf that follows each counted in, and of its room what multiples of all
 * their divisor can fill.
 */
export interface Turned {
  readonly along: readonly number[];
  readonly across: readonly number[];
  readonly isWhole: readonly boolean[];
  readonly takes: readonly boolean[];
  readonly wanted: readonly number[];
  readonly long: number;
  readonly wide: number;
}

const divisor = (one: number, other: number): number => (other === 0 ? one : divisor(other, one % other));

const filled = (room: number, sizes: readonly number[]): number => {
  const step = sizes.reduce(divisor, 0);
  return step === 0 ? room : room - (room % step);
};

export const turned = (job: CertificateJob, board: number, stretch: number, first: "rip" | "crosscut"): Turned => {
  const { kinds, kerf, boards } = job;
  const { long, wide } = boards[board]!.stretches[stretch]!;
  const lengths = kinds.map(({ length }) => length + kerf);
  const widths = kinds.map(({ width }) => (width === undefined ? 0 : width + kerf));
  return {
    along: first === "rip" ? lengths : widths,
    across: first === "rip" ? widths : lengths,
    long: first === "rip" ? filled(long + kerf, lengths) : filled(wide + kerf, widths),
    wide: first === "rip" ? filled(wide + kerf, widths) : filled(long + kerf, lengths),
    isWhole: kinds.map(({ width }) => width === undefined),
    takes: boards[board]!.takes,
    wanted: kinds.map(({ wanted }) => wanted),
  };
};

/** What is worth most in every room: rooms rising, worths rising with them. */
type Table = readonly (readonly [room: number, worth: number])[];

const NOTHING: Table = [[0, 0]];

/** The table with one piece more to choose from. */
const withPiece = (table: Table, size: number, worth: number, most: number, count: Count): Table => {
  const taken = table.map(([room, held]) => [room + size, held + worth] as const);
  const all: (readonly [number, number])[] = [];
  let other = 0;
  for (const entry of table) {
    for (; other < taken.length && taken[other]![0] < entry[0]; other += 1) all.push(taken[other]!);
    all.push(entry);
  }
  all.push(...taken.slice(other));
  count.left -= all.length;
  const kept: (readonly [number, number])[] = [];
  for (const entry of all) {
    if (entry[0] > most) break;
    const last = kept[kept.length - 1];
    if (last !== undefined && entry[1] <= last[1]) continue;
    if (last !== undefined && last[0] === entry[0]) kept.pop();
    kept.push(entry);
  }
  return kept;
};

const mostIn = (table: Table, room: number): number => {
  let from = 0;
  let to = table.length;
  while (to - from > 1) {
    const middle = (from + to) >> 1;
    if (table[middle]![0] <= room) from = middle;
    else to = middle;
  }
  return table[from]![1];
};

const worst = (table: Table): number => table[table.length - 1]![1];

/** Kinds that fit and are worth something. */
const useful = ({ along, across, takes, wanted, long, wide }: Turned, worth: readonly number[]): number[] =>
  [...along.keys()].filter((kind) =>
    takes[kind]! && wanted[kind]! > 0 && worth[kind]! > 0 && along[kind]! <= long && across[kind]! <= wide);

/** So many strips of each width: pieces of some width, together, lie in the strips at least as wide, as if those were one. */
const inListed = (of: Turned, worth: readonly number[], strips: readonly number[], known: Map<string, Table>, count: Count): number => {
  const sized = useful(of, worth).filter((kind) => !of.isWhole[kind]!).sort((one, other) => of.across[other]! - of.across[one]!);
  let table = NOTHING;
  let key = "";
  for (const kind of sized) {
    const wide = strips.filter((strip) => strip >= of.across[kind]!).length;
    key += `${wide},`;
    if (wide === 0) continue;
    const before = known.get(key);
    if (before === undefined) {
      const room = wide * of.long;
      const copies = Math.min(of.wanted[kind]!, Math.floor(room / of.along[kind]!));
      for (let copy = 0; copy < copies; copy += 1) table = withPiece(table, of.along[kind]!, worth[kind]!, room, count);
      known.set(key, table);
    } else table = before;
  }
  return worst(table);
};

/** Each strip is led by its widest piece, the later of equals; what follows a leader is one of those before it. */
const inLed = (of: Turned, worth: readonly number[], isRip: boolean, count: Count): number => {
  const order = useful(of, worth).filter((kind) => !isRip || !of.isWhole[kind]!);
  order.sort((one, other) => of.across[one]! - of.across[other]! || one - other);
  let behind = NOTHING;
  let beside = NOTHING;
  for (const kind of order) {
    for (let copy = 0; copy < of.wanted[kind]!; copy += 1) {
      const rest = of.isWhole[kind]! ? 0 : mostIn(behind, of.long - of.along[kind]!);
      beside = withPiece(beside, of.across[kind]!, worth[kind]! + rest, of.wide, count);
      if (!of.isWhole[kind]!) behind = withPiece(behind, of.along[kind]!, worth[kind]!, of.long, count);
    }
  }
  return worst(beside);
};

/** One strip: pieces no wider than it, or with the whole width asked for anything. */
const inOne = (of: Turned, worth: readonly number[], width: number | undefined, count: Count): number => {
  const fitting = useful(of, worth).filter((kind) => (width === undefined ? true : !of.isWhole[kind]! && of.across[kind]! <= width));
  return worst(fitting.reduce((last, kind) => {
    let table = last;
    for (let copy = 0; copy < of.wanted[kind]!; copy += 1) table = withPiece(table, of.along[kind]!, worth[kind]!, of.long, count);
    return table;
  }, NOTHING));
};

/** The most worth that a stretch holds divided by one of these, or in one of its strips alone; never too little. */
export const heldWorth = (
  job: CertificateJob, { board, stretch, strip }: ProofPlace, divisions: readonly Division[], worth: readonly number[], count: Count,
): number => {
  const known = { rip: new Map<string, Table>(), crosscut: new Map<string, Table>() };
  return divisions.reduce((most, { first, into }) => {
    const of = turned(job, board, stretch, first);
    if (into === "led") return Math.max(most, inLed(of, worth, first === "rip", count));
    if (into === "whole") return Math.max(most, inOne(of, worth, undefined, count));
    const strips = into.map((width) => width + job.kerf);
    if (strip >= 0) return Math.max(most, inOne(of, worth, strips[strip]!, count));
    return Math.max(most, inListed(of, worth, strips, known[first], count));
  }, 0);
};
