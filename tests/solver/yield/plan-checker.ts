import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import type { CuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { down, MARK, up, whole } from "./checker-numbers";

const PRECISION = 1e-9;

interface Tally {
  /** Pieces cut and sticks used, by row. */
  readonly cut: number[];
  readonly used: number[];
  cost: bigint;
  gross: bigint;
  net: bigint;
}

type Stick = CuttingPlan["sticks"][number];
type Asked = CuttingJob["pieces"][number];
type Stock = CuttingJob["stock"][number];

const plainGrade = (grade: string): string => grade.toLowerCase().replace(/\s+/g, "");

/** What is wrong with one piece as it is asked for and as it was put on a stick, wherever it lies on it. */
const pieceFaults = (piece: Stick["pieces"][number], asked: Asked, stock: Stock): readonly string[] => {
  const found: string[] = [];
  if (whole(piece.length) !== whole(asked.length)) found.push(`${asked.label} has another length`);
  if (piece.label !== asked.label) found.push(`${asked.label} is called ${piece.label}`);
  if (plainGrade(asked.grade) !== plainGrade(stock.grade)) found.push("wrong grade");
  for (const size of ["width", "thickness"] as const) {
    if (asked[size] !== undefined && (stock[size] === undefined || whole(stock[size]) < whole(asked[size])))
      found.push(`${asked.label} is of more ${size} than the stick`);
  }
  return found;
};

/** What is wrong with one stick: its pieces in their order, the kerfs between them, and what is left. */
const stickFaults = (job: CuttingJob, stick: Stick, stock: Stock, tally: Tally): readonly string[] => {
  const found: string[] = [];
  const mark = MARK[job.unit];
  const kerf = up(whole(job.kerf), mark);
  const trim = up(whole(job.trim), mark);
  const end = down(whole(stock.length), mark) - trim;
  let free = trim;
  let last = 0n;
  let needed = 0n;
  if (stick.pieces.length === 0) found.push("nothing is cut from it");
  let before: bigint | undefined;
  for (const piece of stick.pieces) {
    const asked = job.pieces[piece.piece];
    if (asked === undefined) {
      found.push("a piece nobody asked for");
      continue;
    }
    tally.cut[piece.piece]! += 1;
    tally.net += whole(asked.length);
    found.push(...pieceFaults(piece, asked, stock));
    const length = up(whole(asked.length), mark);
    if (before !== undefined && length > before) found.push("a longer piece after a shorter one");
    before = length;
    const start = whole(piece.position);
    if (start < free) found.push(`${asked.label} starts in the kerf of the piece before`);
    last = start + length;
    free = last + kerf;
    needed += length + kerf;
  }
  if (last > end) found.push(`runs past the end by ${last - end}`);
  if (needed > end - trim + kerf) found.push("pieces and kerfs do not fit");
  const left = end - free > 0n ? end - free : 0n;
  if (whole(stick.leftOver) !== left) found.push(`left over ${stick.leftOver.toFixed()} is not what is left`);
  return found;
};

/** What is wrong with the sums of a plan. */
const sumFaults = (plan: CuttingPlan, { cost, gross, net }: Tally): readonly string[] => {
  const found: string[] = [];
  if (whole(plan.cost) !== cost) found.push("the cost is not the sum of the prices");
  if (plan.sticksUsed !== plan.sticks.length) found.push("the number of sticks is wrong");
  if (plan.bound.gt(plan.cost)) found.push("the bound is above the cost");
  if (plan.bound.lt(0)) found.push("the bound is negative");
  const share = Number(net) / Number(gross);
  if (Math.abs(plan.yield.toNumber() - share) > PRECISION) found.push("the yield is not net over gross");
  const gap = cost === 0n ? 0 : Number(cost - whole(plan.bound)) / Number(cost);
  if (Math.abs(plan.gap.toNumber() - gap) > PRECISION) found.push("the gap is not (cost - bound) / cost");
  if (plan.verdict.startsWith("best possible") !== plan.bound.eq(plan.cost)) found.push(`the verdict "${plan.verdict}" does not follow`);
  return found;
};

/** Looks a plan over as a foreman would: everything wrong with it, in words; nothing for a sound plan. Shares no code with the solver. */
export const faults = (job: CuttingJob, plan: CuttingPlan): string[] => {
  const found: string[] = [];
  const tally: Tally = { cut: job.pieces.map(() => 0), used: job.stock.map(() => 0), cost: 0n, gross: 0n, net: 0n };
  for (const [number, stick] of plan.sticks.entries()) {
    const stock = job.stock[stick.stock];
    if (stock === undefined) {
      found.push(`stick ${number}: no such stock`);
      continue;
    }
    tally.used[stick.stock]! += 1;
    tally.cost += whole(stock.price);
    tally.gross += whole(stock.length);
    found.push(...stickFaults(job, stick, stock, tally).map((fault) => `stick ${number}: ${fault}`));
  }
  for (const [row, { quantity }] of job.pieces.entries()) {
    if (tally.cut[row] !== quantity) found.push(`piece row ${row}: ${tally.cut[row]} cut, ${quantity} wanted`);
  }
  for (const [row, { available }] of job.stock.entries()) {
    if (tally.used[row]! > available) found.push(`stock row ${row}: ${tally.used[row]} used, ${available} available`);
  }
  return [...found, ...sumFaults(plan, tally)];
};
