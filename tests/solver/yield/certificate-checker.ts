import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import type { CuttingPlan, GroupProof } from "../../../src/solver/yield/cutting-plan";
import { down, MARK, up, whole } from "./checker-numbers";
import { areAllDear } from "./counts-checker";

type Proof = GroupProof["proof"];

/** Whether a stick is wide and thick enough for a piece. */
const isTaken = (job: CuttingJob, stock: number, piece: number): boolean =>
  (["width", "thickness"] as const).every((size) => {
    const asked = job.pieces[piece]![size];
    const given = job.stock[stock]![size];
    return asked === undefined || (given !== undefined && whole(given) >= whole(asked));
  });

/** The most worth that a stick of some length holds of the pieces it takes, by a table over the longest stick, copy by copy. */
const heldTable = (
  longest: number, width: readonly number[], wanted: readonly number[], taken: readonly boolean[], worth: readonly number[],
): Float64Array => {
  const held = new Float64Array(longest + 1);
  for (const [kind, wide] of width.entries()) {
    if (!taken[kind]!) continue;
    for (let copy = 0; copy < wanted[kind]! && copy * wide < held.length; copy += 1) {
      for (let room = held.length - 1; room >= wide; room -= 1) {
        const now = held[room - wide]! + worth[kind]!;
        if (now > held[room]!) held[room] = now;
      }
    }
  }
  return held;
};

/**
 * The least cost in units of money that a proof proves, up to what is claimed, by tables over the longest stick; no linear program.
 */
const provenUnits = (job: CuttingJob, { pieceRows, stockRows, unit, steps, proof }: GroupProof, claimed: bigint): bigint => {
  const mark = MARK[job.unit];
  const kerf = up(whole(job.kerf), mark);
  const width = pieceRows.map(([row]) => Number((up(whole(job.pieces[row!]!.length), mark) + kerf) / mark));
  const wanted = pieceRows.map((rows) => rows.reduce((sum, row) => sum + job.pieces[row]!.quantity, 0));
  const pieces = wanted.reduce((sum, count) => sum + count, 0);
  const holds = stockRows.map(([row]) =>
    Number((down(whole(job.stock[row!]!.length), mark) - 2n * up(whole(job.trim), mark) + kerf) / mark),
  );
  const price = stockRows.map(([row]) => whole(job.stock[row!]!.price) / whole(unit));
  const most = stockRows.map((rows) => Math.min(pieces, rows.reduce((sum, row) => sum + job.stock[row]!.available, 0)));
  const takes = stockRows.map(([row]) => pieceRows.map(([piece]) => isTaken(job, row!, piece!)));
  const heldBy = (worth: readonly number[]): number[] => {
    const tables = new Map<string, Float64Array>();
    return holds.map((room, stick) => {
      const taken = takes[stick]!;
      const table = tables.get(taken.join()) ?? heldTable(Math.max(...holds), width, wanted, taken, worth);
      tables.set(taken.join(), table);
      return table[room]!;
    });
  };
  const neededBy = (worth: readonly number[]): bigint =>
    wanted.reduce((sum, count, kind) => sum + BigInt(count) * BigInt(worth[kind]!), 0n);
  const branch = (part: Proof, least: readonly number[], limit: readonly number[]): bigint => {
    if (part.by === "branch") {
      const upTo = branch(part.upTo, least, limit.map((each, stick) => (stick === part.stick ? Math.min(each, part.atMost) : each)));
      const over = branch(part.over, least.map((each, stick) => (stick === part.stick ? Math.max(each, part.atMost + 1) : each)), limit);
      return upTo < over ? upTo : over;
    }
    if (part.by === "counts") {
      const laws = part.worths.map((worth) => ({ held: heldBy(worth), needed: neededBy(worth) }));
      return areAllDear(price, limit, laws, claimed) ? claimed : 0n;
    }
    const held = heldBy(part.worth);
    let sum = neededBy(part.worth);
    for (const [stick, each] of price.entries()) {
      const charge = each * BigInt(steps) - BigInt(held[stick]!);
      sum += charge * BigInt(charge < 0n ? limit[stick]! : least[stick]!);
    }
    return sum <= 0n ? 0n : (sum + BigInt(steps) - 1n) / BigInt(steps);
  };
  return branch(proof, holds.map(() => 0), most);
};

const isSearched = (proof: Proof): boolean => (proof.by === "branch" ? isSearched(proof.upTo) || isSearched(proof.over) : proof.isSearched);

const plainGrade = (grade: string): string => grade.toLowerCase().replace(/\s+/g, "");

/** Everything a plan claims and its proofs do not prove, in words; nothing for a sound plan. */
export const unproven = (job: CuttingJob, plan: CuttingPlan): string[] => {
  const found: string[] = [];
  const mark = MARK[job.unit];
  let certified = 0n;
  for (const grade of plan.proofs) {
    const lengths = (rows: readonly number[], table: readonly { length: { toFixed: () => string } }[], round: typeof up): number =>
      new Set(rows.map((row) => round(whole(table[row]!.length), mark))).size;
    const rows = { pieces: grade.pieceRows.flat(), stock: grade.stockRows.flat() };
    if (rows.pieces.some((row) => plainGrade(job.pieces[row]!.grade) !== plainGrade(grade.grade)))
      found.push(`${grade.grade}: a piece is of another grade`);
    if (grade.pieceRows.some((rows) => lengths(rows, job.pieces, up) !== 1)) found.push(`${grade.grade}: pieces of one kind differ`);
    if (
      grade.stockRows.some(
        (rows) => lengths(rows, job.stock, down) !== 1 || new Set(rows.map((row) => job.stock[row]!.price?.toFixed() ?? "0")).size !== 1,
      )
    ) {
      found.push(`${grade.grade}: sticks of one kind differ`);
    }
    // pieces of one kind go on the same sticks, and no stick that could take a piece is left out of its proof
    const takers = (piece: number): string => job.stock.map((_, row) => Number(isTaken(job, row, piece))).join("");
    if (grade.pieceRows.some((of) => new Set(of.map(takers)).size !== 1))
      found.push(`${grade.grade}: pieces of one kind go on different sticks`);
    const kinds = grade.pieceRows.map(([piece]) => ({ piece: piece!, length: up(whole(job.pieces[piece!]!.length), mark) }));
    for (const [row, stock] of job.stock.entries()) {
      if (stock.available === 0 || plainGrade(stock.grade) !== plainGrade(grade.grade) || rows.stock.includes(row)) continue;
      const usable = down(whole(stock.length), mark) - 2n * up(whole(job.trim), mark);
      if (kinds.some(({ piece, length }) => length <= usable && isTaken(job, row, piece)))
        found.push(`${grade.grade}: stock row ${row} is not in the proof`);
    }
    const claimed = whole(grade.certified);
    if (provenUnits(job, grade, claimed / whole(grade.unit)) * whole(grade.unit) < claimed)
      found.push(`${grade.grade}: the worths do not prove ${grade.certified.toFixed()}`);
    certified += claimed;
  }
  const inProofs = plan.proofs.flatMap(({ pieceRows }) => pieceRows.flat()).sort((a, b) => a - b);
  if (inProofs.join() !== [...job.pieces.keys()].join()) found.push("not every piece is in a proof once");
  if (certified < whole(plan.bound) && !plan.proofs.some(({ proof }) => isSearched(proof)))
    found.push("the bound is above what is certified, and nothing was searched");
  if (plan.verdict === "best possible (proven)" && certified !== whole(plan.cost))
    found.push("called certified, but the worths do not prove the cost");
  return found;
};
