import type { ProofPlace } from "../../../../src/solver/yield/ripped/board-proof";
import type { CertificateJob } from "./certificate-job";
import { type Count, turned } from "./held-worth";

/** The least width that so many of each kind take, one way round: the widest piece left leads the next strip. Infinity where none do. */
export const leastWidth = (
  job: CertificateJob, { board, stretch }: ProofPlace, first: "rip" | "crosscut", counts: readonly number[], count: Count,
): number => {
  const of = turned(job, board, stretch, first);
  const order = [...of.across.keys()].sort((one, other) => of.across[other]! - of.across[one]!);
  const known = new Map<string, number>();
  const least = (left: readonly number[]): number => {
    const leader = order.find((kind) => left[kind]! > 0);
    if (leader === undefined) return 0;
    const key = left.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = Infinity;
    const fill = (at: number, rest: readonly number[], room: number): void => {
      count.left -= left.length;
      if (count.left <= 0) return;
      const kind = order[at];
      if (kind === undefined) {
        best = Math.min(best, of.across[leader]! + least(rest));
        return;
      }
      const copies = of.isWhole[kind]! ? 0 : Math.min(rest[kind]!, Math.floor(room / of.along[kind]!));
      for (let copy = copies; copy >= 0; copy -= 1)
        fill(at + 1, rest.map((each, of) => (of === kind ? each - copy : each)), room - copy * of.along[kind]!);
    };
    const others = left.map((each, kind) => (kind === leader ? each - 1 : each));
    if (of.isWhole[leader]!) best = of.across[leader]! + least(others);
    else if (of.along[leader]! <= of.long) fill(0, others, of.long - of.along[leader]!);
    known.set(key, best);
    return best;
  };
  return least(counts);
};
