import { lengthIn, type Length } from "../../../../src/solver/length/length";
import type { RippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import type { PlainBoard, PlainJob, PlainPiece } from "./plain-job";

/** Everything is reckoned in whole 64ths of an inch, from the numbers of the test and the printed places alone. */
const MARKS = 64;
const marks = (inches: number): number => Math.round(inches * MARKS);
const printed = (length: Length): number => lengthIn(length, "in").times(MARKS).toNumber();

interface Rectangle {
  readonly piece: PlainPiece;
  readonly along: number;
  readonly across: number;
  readonly length: number;
  readonly width: number;
  readonly first: string;
}

type Size = (one: Rectangle) => number;

const ALONG: Size = ({ along }) => along;
const ACROSS: Size = ({ across }) => across;
const LENGTH: Size = ({ length }) => length;
const WIDTH: Size = ({ width }) => width;

/** Each mark of a board by the number of its clear stretch; 0 where it is spoilt or trimmed. */
const stretchAt = ({ length, defects = [] }: PlainBoard, kerf: number, trim: number): Int32Array => {
  const spoilt = new Uint8Array(marks(length));
  for (const [from, to] of defects) {
    const more = Math.max(0, (marks(kerf) - marks(to - from)) / 2);
    for (let at = 0; at < spoilt.length; at += 1) if (at + 1 > marks(from) - more && at < marks(to) + more) spoilt[at] = 1;
  }
  spoilt.fill(1, 0, marks(trim));
  spoilt.fill(1, spoilt.length - marks(trim));
  const numbers = new Int32Array(spoilt.length);
  let number = 1;
  spoilt.forEach((isSpoilt, at) => {
    if (isSpoilt === 1) number += 1;
    else numbers[at] = number;
  });
  return numbers;
};

/** Pieces that no straight cut along the first direction can part stand together. */
const strips = (held: readonly Rectangle[], from: Size, size: Size, kerf: number): Rectangle[][] => {
  const found: Rectangle[][] = [];
  let end = -Infinity;
  for (const one of [...held].sort((a, b) => from(a) - from(b))) {
    if (from(one) >= end + kerf) found.push([one]);
    else found[found.length - 1]!.push(one);
    end = Math.max(end, from(one) + size(one));
  }
  return found;
};

const isApart = (held: readonly Rectangle[], from: Size, size: Size, kerf: number): boolean => {
  const sorted = [...held].sort((a, b) => from(a) - from(b));
  return sorted.every((one, at) => at === 0 || from(one) >= from(sorted[at - 1]!) + size(sorted[at - 1]!) + kerf);
};

/** Dressed on both faces: 4/4 13/16, 5/4 1 1/16, 8/4 1 3/4 (hardwood thickness table of a state extension service); others as they are. */
const DRESSED = new Map([[1, 0.8125], [1.25, 1.0625], [2, 1.75]]);

export const dressed = ({ thickness = 1, surfaced = false }: PlainBoard): number =>
  surfaced === true ? thickness : (DRESSED.get(thickness) ?? thickness);

export const grades = ({ grade = "", alsoFrom = "" }: PlainPiece): string[] =>
  [grade, ...alsoFrom.split(",").map((one) => one.trim()).filter((one) => one !== "")];

const boardFaults = (job: PlainJob, board: PlainBoard, held: readonly Rectangle[]): string[] => {
  const faults: string[] = [];
  const kerf = marks(job.kerf);
  const edge = marks(board.edge ?? 0) / 2;
  const numbers = stretchAt(board, job.kerf, job.trim);
  const byStretch = new Map<number, Rectangle[]>();
  for (const one of held) {
    const { piece, along, across, length, width } = one;
    const number = numbers[Math.floor(along)] ?? 0;
    const under = numbers.slice(Math.floor(along), along + length);
    const inside = number > 0 && along >= 0 && along + length <= numbers.length && under.every((each) => each === number);
    if (!inside) faults.push(`${piece.label} lies outside a clear stretch`);
    if (across < edge || across + width > marks(board.width) - edge) faults.push(`${piece.label} lies over the edge`);
    if (!grades(piece).includes(board.grade ?? "") && !grades(piece).includes("any")) faults.push(`${piece.label} is of another grade`);
    if ((piece.species ?? "") !== "" && piece.species !== board.species) faults.push(`${piece.label} is of another species`);
    if ((piece.thickness ?? 0) > dressed(board)) faults.push(`${piece.label} is too thick`);
    byStretch.set(number, [...(byStretch.get(number) ?? []), one]);
  }
  for (const own of byStretch.values()) {
    const isRip = own[0]!.first === "rip";
    if (own.some(({ first }) => first !== own[0]!.first)) faults.push("one stretch is begun two ways");
    if (job.first !== "either" && own[0]!.first !== job.first) faults.push("a stretch is begun the other way");
    const [from, size, along, long] = isRip
      ? [ACROSS, WIDTH, ALONG, LENGTH] as const
      : [ALONG, LENGTH, ACROSS, WIDTH] as const;
    for (const strip of strips(own, from, size, kerf)) {
      if (!isApart(strip, along, long, kerf)) faults.push("two stages do not part the pieces by a kerf");
    }
  }
  return faults;
};

/** Square feet to the nearest whole, a half up and down in turn, times thickness, as a supplier counts surface measure. */
const surfaceFeet = (boards: readonly PlainBoard[]): number[] => {
  let isUp = false;
  return boards.map(({ length, width, thickness = 1 }) => {
    const sixths = width * Math.floor(length / 12) / 12;
    const rest = sixths - Math.floor(sixths);
    if (rest === 0.5) isUp = !isUp;
    const surface = rest === 0.5 ? Math.floor(sixths) + (isUp ? 1 : 0) : Math.round(sixths);
    return surface * Math.max(1, thickness);
  });
};

export interface Cents {
  /** Of each board by itself; 0 where it is owned or paid with its lot. */
  readonly own: readonly number[];
  /** The lot that each board is paid with. */
  readonly lot: readonly (string | number | undefined)[];
  readonly lots: ReadonlyMap<string | number, number>;
}

export const centsOf = (boards: readonly PlainBoard[]): Cents => {
  const feet = surfaceFeet(boards);
  const lots = new Map(boards.flatMap(({ lot, lotPrice }) =>
    lot === undefined || lotPrice === undefined ? [] : [[lot, Math.round(lotPrice * 100)] as const]));
  const lotOf = boards.map(({ lot, owned }) => (owned !== true && lot !== undefined && lots.has(lot) ? lot : undefined));
  const own = boards.map(({ price, boardFootPrice, owned }, at) =>
    owned === true || lotOf[at] !== undefined ? 0 : Math.round((price ?? feet[at]! * (boardFootPrice ?? 0)) * 100));
  return { own, lot: lotOf, lots };
};

const costAgain = ({ boards }: PlainJob, used: ReadonlySet<number>): number => {
  const { own, lot, lots } = centsOf(boards);
  const paid = new Set([...used].map((at) => lot[at]));
  const inLots = [...lots].reduce((sum, [each, cents]) => (paid.has(each) ? sum + cents : sum), 0);
  return [...used].reduce((sum, at) => sum + own[at]!, inLots) / 100;
};

/** What is wrong with a plan; each row of boards is one board here. */
export const planFaults = (job: PlainJob, plan: RippingPlan): string[] => {
  const wanted = job.pieces.map(({ quantity = 1 }) => quantity);
  const faults = plan.boards.flatMap(({ board, pieces }) => {
    const held = pieces.map(({ piece, along, across, length, width, first }): Rectangle => {
      wanted[piece]! -= 1;
      const size = { along: printed(along), across: printed(across), length: printed(length), width: printed(width) };
      return { piece: job.pieces[piece]!, first, ...size };
    });
    const { width: full, edge = 0 } = job.boards[board]!;
    const otherSize = held.filter(({ piece, length, width }) =>
      length !== marks(piece.length) || width !== (piece.width === undefined ? marks(full) - marks(edge) : marks(piece.width)));
    return [...otherSize.map(({ piece }) => `${piece.label} is not of its size`), ...boardFaults(job, job.boards[board]!, held)];
  });
  if (wanted.some((left) => left !== 0)) faults.push(`pieces are missing or too many: ${wanted.join()}`);
  const again = costAgain(job, new Set(plan.boards.map(({ board }) => board)));
  if (Math.abs(again - plan.cost.toNumber()) > 1e-9) faults.push(`the boards cost ${again}, not ${plan.cost.toString()}`);
  if (plan.bound.gt(plan.cost)) faults.push("the bound is over the cost");
  return faults;
};
