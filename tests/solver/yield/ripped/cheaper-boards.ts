import type { CertificateJob } from "./certificate-job";
import type { Count } from "./held-worth";

/** By one set of worths: what each board holds at most, and what all pieces are worth. */
export interface Law {
  readonly holds: readonly number[];
  readonly needed: number;
}

/** A board by itself or a whole lot. */
interface Item {
  readonly cents: number;
  readonly boards: readonly number[];
  /** Place of the like board before it; -1 for none. */
  readonly like: number;
}

/** Laws whose least cost is reckoned at each step; the others only stop what can no longer hold enough. */
const PRICED = 4;

const itemsOf = ({ boards, lots }: CertificateJob): Omit<Item, "like">[] => [
  ...[...lots].flatMap(([lot, cents]) => {
    const held = boards.flatMap((board, at) => (board.lot === lot ? [at] : []));
    return cents > 0 && held.length > 0 ? [{ cents, boards: held }] : [];
  }),
  ...boards.flatMap(({ cents, lot }, at) => (cents > 0 && lot === undefined ? [{ cents, boards: [at] }] : [])),
];

const sorted = (job: CertificateJob, laws: readonly Law[]): Item[] => {
  const rate = ({ cents, boards }: Omit<Item, "like">): number =>
    boards.reduce((sum, board) => sum + (laws[0]?.holds[board] ?? 0), 0) / cents;
  const last = new Map<string, number>();
  const all = itemsOf(job).sort((one, other) => rate(other) - rate(one) || one.boards[0]! - other.boards[0]!);
  return all.map((item, at): Item => {
    const { lot, ...board } = job.boards[item.boards[0]!]!;
    const key = lot === undefined ? JSON.stringify(board) : `lot ${lot}`;
    const like = last.get(key) ?? -1;
    last.set(key, at);
    return { ...item, like };
  });
};

/** The least that items from a place on cost, the last in part, that hold so much. */
const leastCost = (byRate: readonly number[], held: readonly number[], items: readonly Item[], from: number, lack: number): number => {
  let left = lack;
  let cost = 0;
  for (const at of byRate) {
    if (left <= 0) return cost;
    if (at < from) continue;
    cost += items[at]!.cents * Math.min(1, left / held[at]!);
    left -= held[at]!;
  }
  return left > 0 ? Infinity : cost;
};

/**
 * A choice of boards that costs less than claimed, keeps every law and is not otherwise known to be too small; undefined where there is
 * none. What costs nothing is always there, and of like boards the earlier. The count is spent by one for each law at each step.
 */
export const cheaperBoards = (
  job: CertificateJob, laws: readonly Law[], isTooSmall: (has: readonly boolean[]) => boolean, claimed: number, count: Count,
): readonly number[] | undefined => {
  const free = job.boards.map(({ cents, lot }) => (lot === undefined ? cents === 0 : job.lots.get(lot) === 0));
  const strongest = laws.map((law) => {
    const items = sorted(job, [law]);
    const held = items.map(({ boards }) => boards.reduce((sum, board) => sum + law.holds[board]!, 0));
    const lack = law.holds.reduce((left, each, board) => (free[board]! ? left - each : left), law.needed);
    return { law, least: leastCost([...items.keys()], held, items, 0, lack) };
  });
  const ranked = strongest.sort((one, other) => other.least - one.least).map(({ law }) => law);
  const items = sorted(job, ranked);
  const tables = ranked.map(({ holds, needed }) => {
    const held = items.map(({ boards }) => Math.min(needed, boards.reduce((sum, board) => sum + holds[board]!, 0)));
    const after = [...held, 0];
    for (let at = held.length - 1; at >= 0; at -= 1) after[at]! += after[at + 1]!;
    const byRate = [...held.keys()].filter((at) => held[at]! > 0);
    byRate.sort((one, other) => held[other]! / items[other]!.cents - held[one]! / items[one]!.cents);
    return { held, after, byRate };
  });
  const has = [...free];
  const taken = items.map(() => false);
  const lack = ranked.map(({ holds, needed }) => holds.reduce((left, each, board) => (free[board]! ? left - each : left), needed));
  const isDear = (at: number, cost: number): boolean =>
    tables.some(({ held, after, byRate }, law) =>
      lack[law]! > after[at]! || (law < PRICED && cost + leastCost(byRate, held, items, at, lack[law]!) > claimed - 1 + 1e-6));
  const found = (at: number, cost: number): boolean => {
    count.left -= ranked.length + 1;
    if (count.left <= 0 || cost >= claimed || isDear(at, cost)) return false;
    if (at === items.length) return !isTooSmall(has);
    const { cents, boards, like } = items[at]!;
    if (like < 0 || taken[like]!) {
      const turn = (isTaken: boolean): void => {
        taken[at] = isTaken;
        for (const board of boards) has[board] = isTaken;
        for (const [law, { held }] of tables.entries()) lack[law]! -= (isTaken ? 1 : -1) * held[at]!;
      };
      turn(true);
      if (found(at + 1, cost + cents)) return true;
      turn(false);
    }
    return found(at + 1, cost);
  };
  return claimed > 0 && found(0, 0) ? has.flatMap((isThere, board) => (isThere ? [board] : [])) : undefined;
};
