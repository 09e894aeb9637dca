import type { SheetJob } from "../../../../src/solver/yield/sheets/sheet-job";
import type { SheetPlan } from "../../../../src/solver/yield/sheets/sheet-plan";
import { down, MARK, up, whole } from "../checker-numbers";

const PRECISION = 1e-9;

interface Box {
  readonly name: string;
  readonly fromX: bigint;
  readonly toX: bigint;
  readonly fromY: bigint;
  readonly toY: bigint;
}

type Asked = SheetJob["pieces"][number];
type Sheet = SheetPlan["sheets"][number];

const plainGrade = (grade: string): string => grade.toLowerCase().replace(/\s+/g, "");

/** Parts boxes by saw cuts right across in one direction: groups that a kerf keeps apart; x for crosscuts, y for rips. */
const parted = (boxes: readonly Box[], way: "x" | "y", kerf: bigint): Box[][] => {
  const [from, to] = way === "x" ? (["fromX", "toX"] as const) : (["fromY", "toY"] as const);
  const groups: Box[][] = [];
  let end: bigint | undefined;
  for (const box of [...boxes].sort((one, other) => (one[from] < other[from] ? -1 : 1))) {
    if (end === undefined || box[from] >= end + kerf) groups.push([box]);
    else groups[groups.length - 1]!.push(box);
    if (end === undefined || box[to] > end) end = box[to];
  }
  return groups;
};

/** Pieces of one strip start at one edge, and a narrower one is ripped again by itself: nothing else lies in the strip there. */
const strayInStrip = (strip: readonly Box[], way: "x" | "y", kerf: bigint): boolean => {
  const from = way === "x" ? "fromX" : "fromY";
  const crossing = parted(strip, way === "x" ? "y" : "x", kerf);
  return crossing.some((group) => group.length > 1) || strip.some((box) => box[from] !== strip[0]![from]);
};

const boxOf = (asked: Asked, piece: Sheet["strips"][number]["pieces"][number], mark: bigint): Box => {
  const [x, y] = piece.turned ? [asked.width!, asked.length] : [asked.length, asked.width!];
  const [fromX, fromY] = [whole(piece.along), whole(piece.across)];
  return { name: String(asked.label), fromX, fromY, toX: fromX + up(whole(x), mark), toY: fromY + up(whole(y), mark) };
};

const sheetFaults = (job: SheetJob, sheet: Sheet, cut: number[]): string[] => {
  const stock = job.stock[sheet.stock]!;
  const mark = MARK[job.unit];
  const kerf = up(whole(job.kerf), mark);
  const trim = up(whole(job.trim), mark);
  const edges = job.edgeTrim === undefined ? trim : up(whole(job.edgeTrim), mark);
  const found: string[] = [];
  const boxes: Box[] = [];
  for (const piece of sheet.strips.flatMap(({ pieces }) => pieces)) {
    const asked = job.pieces[piece.piece]!;
    cut[piece.piece]! += 1;
    if (piece.turned && !asked.turns) found.push(`${asked.label} lies across the grain`);
    if (plainGrade(asked.grade) !== plainGrade(stock.grade)) found.push("wrong grade");
    if (asked.thickness !== undefined && (stock.thickness === undefined || whole(stock.thickness) < whole(asked.thickness)))
      found.push(`${asked.label} is too thick`);
    const box = boxOf(asked, piece, mark);
    if (box.fromX < trim || box.fromY < edges) found.push(`${asked.label} lies in the trim`);
    if (box.toX > down(whole(stock.length), mark) - trim || box.toY > down(whole(stock.width!), mark) - edges)
      found.push(`${asked.label} runs past the sheet`);
    boxes.push(box);
  }
  for (const [place, one] of boxes.entries())
    for (const other of boxes.slice(place + 1)) {
      const isApart =
        one.toX + kerf <= other.fromX || other.toX + kerf <= one.fromX || one.toY + kerf <= other.fromY || other.toY + kerf <= one.fromY;
      if (!isApart) found.push(`${one.name} and ${other.name} are not a kerf apart`);
    }
  if (job.first !== "either" && sheet.first !== job.first) found.push("cut the other way round");
  const way = sheet.first === "rip" ? "y" : "x";
  if (parted(boxes, way, kerf).length !== sheet.strips.length) found.push("its strips are not parted by cuts right across");
  let at = 0;
  for (const strip of sheet.strips) {
    const inside = boxes.slice(at, at + strip.pieces.length);
    at += strip.pieces.length;
    if (strayInStrip(inside, way, kerf)) found.push("a strip takes more than two stages");
    const ends = inside.map((box) => (way === "y" ? box.toX : box.toY)).reduce((most, each) => (each > most ? each : most), 0n);
    const end = way === "y" ? down(whole(stock.length), mark) - trim : down(whole(stock.width!), mark) - edges;
    const left = end - ends - kerf > 0n ? end - ends - kerf : 0n;
    if (whole(strip.leftOver) !== left) found.push(`left over ${strip.leftOver.toFixed()} is not what is left`);
  }
  if (boxes.length === 0) found.push("nothing is cut from it");
  return found;
};

/** Everything wrong with a plan of sheets, in words. Shares no code with the solver. */
export const faults = (job: SheetJob, plan: SheetPlan): string[] => {
  const cut = job.pieces.map(() => 0);
  const used = job.stock.map(() => 0);
  const found = plan.sheets.flatMap((sheet, number) => {
    used[sheet.stock]! += 1;
    return sheetFaults(job, sheet, cut).map((fault) => `sheet ${number + 1}: ${fault}`);
  });
  for (const [row, { quantity }] of job.pieces.entries())
    if (cut[row] !== quantity) found.push(`piece row ${row}: ${cut[row]} cut, ${quantity} wanted`);
  for (const [row, { available }] of job.stock.entries())
    if (used[row]! > available) found.push(`stock row ${row}: ${used[row]} used, ${available} available`);
  const cost = used.reduce((all, count, row) => all + BigInt(count) * whole(job.stock[row]!.price), 0n);
  if (whole(plan.cost) !== cost) found.push("the cost is not the sum of the prices");
  if (plan.bound.gt(plan.cost) || plan.bound.lt(0)) found.push("the bound is no bound");
  if (plan.verdict.startsWith("best possible") !== plan.bound.eq(plan.cost)) found.push(`the verdict "${plan.verdict}" does not follow`);
  const areaOf = ({ length, width }: { length: { toNumber: () => number }; width?: { toNumber: () => number } }): number =>
    length.toNumber() * width!.toNumber();
  const net = job.pieces.reduce((all, piece) => all + areaOf(piece) * piece.quantity, 0);
  const gross = used.reduce((all, count, row) => all + (count === 0 ? 0 : count * areaOf(job.stock[row]! as never)), 0);
  if (Math.abs(plan.yield.toNumber() - net / gross) > PRECISION) found.push("the yield is not net over gross");
  return found;
};
