import type { CuttingJob } from "../../../src/solver/yield/cutting-job";
import type { CuttingPlan } from "../../../src/solver/yield/cutting-plan";
import { down, MARK, up, whole } from "./checker-numbers";

/** Looks a plan over as a foreman would: everything wrong with it, in words; nothing for a sound plan. Shares no code with the solver. */
export const faults = (job: CuttingJob, plan: CuttingPlan): string[] => {
  const found: string[] = [];
  const mark = MARK[job.unit];
  const kerf = up(whole(job.kerf), mark);
  const trim = up(whole(job.trim), mark);
  const cutOf = job.pieces.map(() => 0);
  const usedOf = job.stock.map(() => 0);
  let cost = 0n;
  let gross = 0n;
  let net = 0n;
  for (const [number, stick] of plan.sticks.entries()) {
    const stock = job.stock[stick.stock];
    if (stock === undefined) {
      found.push(`stick ${number}: no such stock`);
      continue;
    }
    usedOf[stick.stock]! += 1;
    cost += whole(stock.price);
    gross += whole(stock.length);
    const end = down(whole(stock.length), mark) - trim;
    let free = trim;
    let last = 0n;
    let needed = 0n;
    if (stick.pieces.length === 0) found.push(`stick ${number}: nothing is cut from it`);
    let before: bigint | undefined;
    for (const piece of stick.pieces) {
      const asked = job.pieces[piece.piece];
      if (asked === undefined) {
        found.push(`stick ${number}: a piece nobody asked for`);
        continue;
      }
      cutOf[piece.piece]! += 1;
      const length = whole(asked.length);
      net += length;
      if (whole(piece.length) !== length) found.push(`stick ${number}: ${asked.label} has another length`);
      if (piece.label !== asked.label) found.push(`stick ${number}: ${asked.label} is called ${piece.label}`);
      if (asked.grade.trim().toLowerCase() !== stock.grade.trim().toLowerCase()) found.push(`stick ${number}: wrong grade`);
      for (const size of ["width", "thickness"] as const) {
        if (asked[size] !== undefined && (stock[size] === undefined || whole(stock[size]) < whole(asked[size])))
          found.push(`stick ${number}: ${asked.label} is of more ${size} than the stick`);
      }
      if (before !== undefined && up(length, mark) > before) found.push(`stick ${number}: a longer piece after a shorter one`);
      before = up(length, mark);
      const start = whole(piece.position);
      if (start < free) found.push(`stick ${number}: ${asked.label} starts in the kerf of the piece before`);
      last = start + up(length, mark);
      free = last + kerf;
      needed += up(length, mark) + kerf;
    }
    if (last > end) found.push(`stick ${number}: runs past the end by ${last - end}`);
    if (needed > end - trim + kerf) found.push(`stick ${number}: pieces and kerfs do not fit`);
    const left = end - free > 0n ? end - free : 0n;
    if (whole(stick.leftOver) !== left) found.push(`stick ${number}: left over ${stick.leftOver.toFixed()} is not what is left`);
  }
  for (const [row, piece] of job.pieces.entries()) {
    if (cutOf[row] !== piece.quantity) found.push(`piece row ${row}: ${cutOf[row]} cut, ${piece.quantity} wanted`);
  }
  for (const [row, stock] of job.stock.entries()) {
    if (usedOf[row]! > stock.available) found.push(`stock row ${row}: ${usedOf[row]} used, ${stock.available} available`);
  }
  if (whole(plan.cost) !== cost) found.push("the cost is not the sum of the prices");
  if (plan.sticksUsed !== plan.sticks.length) found.push("the number of sticks is wrong");
  if (plan.bound.gt(plan.cost)) found.push("the bound is above the cost");
  if (plan.bound.lt(0)) found.push("the bound is negative");
  const share = Number(net) / Number(gross);
  if (Math.abs(plan.yield.toNumber() - share) > 1e-9) found.push("the yield is not net over gross");
  const gap = cost === 0n ? 0 : Number(cost - whole(plan.bound)) / Number(cost);
  if (Math.abs(plan.gap.toNumber() - gap) > 1e-9) found.push("the gap is not (cost - bound) / cost");
  if (plan.verdict.startsWith("best possible") !== plan.bound.eq(plan.cost)) found.push(`the verdict "${plan.verdict}" does not follow`);
  return found;
};
