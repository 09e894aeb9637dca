import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import type { CuttingPlan, GradeProof } from "../../../src/solver/yield/cutting-plan";
import { down, MARK, up, whole } from "./checker-numbers";

type Proof = GradeProof["proof"];

/** The least cost in units of money that a proof proves, by one table over the longest stick for each of its branches; no linear program. */
const provenUnits = (job: CuttingJob, { pieceRows, stockRows, unit, steps, proof }: GradeProof): bigint => {
  const mark = MARK[job.unit];
  const kerf = up(whole(job.kerf), mark);
  const width = pieceRows.map(([row]) => Number((up(whole(job.pieces[row!]!.length), mark) + kerf) / mark));
  const wanted = pieceRows.map((rows) => rows.reduce((sum, row) => sum + job.pieces[row]!.quantity, 0));
  const pieces = wanted.reduce((sum, count) => sum + count, 0);
  const holds = stockRows.map(([row]) => Number((down(whole(job.stock[row!]!.length), mark) - 2n * up(whole(job.trim), mark) + kerf) / mark));
  const price = stockRows.map(([row]) => (job.stock[row!]!.price === undefined ? 0n : whole(job.stock[row!]!.price!) / whole(unit)));
  const most = stockRows.map((rows) => Math.min(pieces, rows.reduce((sum, row) => sum + job.stock[row]!.available, 0)));
  const branch = (part: Proof, least: readonly number[], limit: readonly number[]): bigint => {
    if (part.by === "branch") {
      const upTo = branch(part.upTo, least, limit.map((each, stick) => (stick === part.stick ? Math.min(each, part.atMost) : each)));
      const over = branch(part.over, least.map((each, stick) => (stick === part.stick ? Math.max(each, part.atMost + 1) : each)), limit);
      return upTo < over ? upTo : over;
    }
    const held = new Float64Array(Math.max(...holds) + 1);
    for (const [kind, wide] of width.entries()) {
      for (let copy = 0; copy < wanted[kind]! && copy * wide < held.length; copy += 1) {
        for (let room = held.length - 1; room >= wide; room -= 1) {
          const now = held[room - wide]! + part.worth[kind]!;
          if (now > held[room]!) held[room] = now;
        }
      }
    }
    let sum = wanted.reduce((total, count, kind) => total + BigInt(count) * BigInt(part.worth[kind]!), 0n);
    for (const [stick, each] of price.entries()) {
      const charge = each * BigInt(steps) - BigInt(held[holds[stick]!]!);
      sum += charge * BigInt(charge < 0n ? limit[stick]! : least[stick]!);
    }
    return sum <= 0n ? 0n : (sum + BigInt(steps) - 1n) / BigInt(steps);
  };
  return branch(proof, holds.map(() => 0), most);
};

const isSearched = (proof: Proof): boolean => (proof.by === "branch" ? isSearched(proof.upTo) || isSearched(proof.over) : proof.isSearched);

const sameGrade = (grade: string): string => grade.trim().toLowerCase();

/** Everything a plan claims and its proofs do not prove, in words; nothing for a sound plan. */
export const unproven = (job: CuttingJob, plan: CuttingPlan): string[] => {
  const found: string[] = [];
  const mark = MARK[job.unit];
  let certified = 0n;
  for (const grade of plan.proofs) {
    const rowsOf = (table: readonly { grade: string }[]): number[] => table.flatMap((row, index) => (sameGrade(row.grade) === grade.grade ? [index] : []));
    const lengths = (rows: readonly number[], table: readonly { length: { toFixed: () => string } }[], round: typeof up): number =>
      new Set(rows.map((row) => round(whole(table[row]!.length), mark))).size;
    if (grade.pieceRows.flat().sort((a, b) => a - b).join() !== rowsOf(job.pieces).join()) found.push(`${grade.grade}: not every piece is in the proof once`);
    if (grade.pieceRows.some((rows) => lengths(rows, job.pieces, up) !== 1)) found.push(`${grade.grade}: pieces of one kind differ`);
    if (grade.stockRows.some((rows) => lengths(rows, job.stock, down) !== 1 || new Set(rows.map((row) => job.stock[row]!.price?.toFixed() ?? "0")).size !== 1)) {
      found.push(`${grade.grade}: sticks of one kind differ`);
    }
    const shortest = grade.pieceRows.flat().map((row) => whole(job.pieces[row]!.length)).reduce((least, each) => (each < least ? each : least));
    for (const row of rowsOf(job.stock)) {
      const left = job.stock[row]!.available === 0 || down(whole(job.stock[row]!.length), mark) - 2n * up(whole(job.trim), mark) < up(shortest, mark);
      if (!left && !grade.stockRows.flat().includes(row)) found.push(`${grade.grade}: stock row ${row} is not in the proof`);
    }
    const claimed = whole(grade.certified);
    if (provenUnits(job, grade) * whole(grade.unit) < claimed) found.push(`${grade.grade}: the worths do not prove ${grade.certified.toFixed()}`);
    certified += claimed;
  }
  const proven = plan.proofs.map(({ grade }) => grade);
  if (job.pieces.some((piece) => !proven.includes(sameGrade(piece.grade)))) found.push("a grade has no proof");
  if (certified < whole(plan.bound) && !plan.proofs.some(({ proof }) => isSearched(proof))) found.push("the bound is above what is certified, and nothing was searched");
  if (plan.verdict === "best possible (proven)" && certified !== whole(plan.cost)) found.push("called certified, but the worths do not prove the cost");
  return found;
};
