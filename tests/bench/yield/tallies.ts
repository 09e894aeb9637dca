import { isProblem } from "../../../src/solver/problem";
import type { FirstCut } from "../../../src/solver/yield/ripped/ripping-job";
import { rippingPlan } from "../../../src/solver/yield/ripped/ripping-plan";
import { unproven } from "../../solver/yield/ripped/certificate-checker";
import { jobOf, type PlainBoard, type PlainJob, type PlainPiece } from "../../solver/yield/ripped/plain-job";
import { planFaults } from "../../solver/yield/ripped/plan-checker";
import { printTable } from "../print-table";
import { type Draw, draws } from "./draws";
import { percentOf, rank } from "./figures";
import { milliseconds, percent, whole } from "./wording";

/** Stairs of oak from measured boards, invented and seeded; they do not change. */
const SEED = 7_000;
const BOARDS = 25;
/** Cents a board foot. */
const CENTS = { "FAS": 840, "1C": 560 } as const;
/** Boards that hold the skirts, whatever is drawn. */
const SKIRT_BOARDS = 2;

/** Every draw is made, so that a board that is not left as drawn changes no other. */
const drawnBoard = (draw: Draw, place: number): PlainBoard => {
  const holdsSkirts = place < SKIRT_BOARDS;
  const [drawnLength, drawnWidth, share] = [96 + Math.floor(97 * draw()), 5 + Math.floor(57 * draw()) / 8, draw()];
  const [length, width] = holdsSkirts ? [Math.max(144, drawnLength), Math.max(10, drawnWidth)] : [drawnLength, drawnWidth];
  const grade = holdsSkirts || share < 0.35 ? "FAS" : "1C";
  const knots = grade === "FAS" ? Number(draw() < 0.3) : 1 + Math.floor(2 * draw());
  const defects = Array.from({ length: holdsSkirts ? 0 : knots }, () => {
    const from = Math.floor(draw() * (length - 8));
    return [from, Math.min(length, from + 2 + Math.floor(7 * draw()))] as const;
  });
  const price = Math.round((length * width * CENTS[grade]) / 144) / 100;
  return { label: place + 1, length, width, grade, price, edge: 0.25, defects };
};

/** 14 risers, 2 skirts, 4 nosings and 10 returns out of 25 boards 8 to 16 ft long and 5 to 12 in wide. */
export const generatedTally = (number: number, first: FirstCut): PlainJob => {
  const draw = draws(SEED + number);
  const boards = Array.from({ length: BOARDS }, (_, place) => drawnBoard(draw, place));
  const row = (label: string, count: number, width: number, isOnlyFas: boolean, length: () => number): PlainPiece[] =>
    Array.from({ length: count }, (_, place) => ({
      label: `${label} ${place + 1}`, length: length(), width, ...(isOnlyFas ? { grade: "FAS" } : { grade: "1C", alsoFrom: "FAS" }),
    }));
  const pieces = [
    ...row("riser", 14, 7.25, false, () => 36 + Math.floor(97 * draw()) / 16),
    ...row("skirt", 2, 9.25, true, () => 96 + Math.floor(37 * draw())),
    ...row("nosing", 4, 3.5, true, () => 36 + Math.floor(97 * draw()) / 16),
    ...row("return", 10, 2, false, () => 12 + Math.floor(33 * draw()) / 16),
  ];
  return { pieces, boards, kerf: 0.125, trim: 1, first };
};

/** The same, of so few pieces and boards that every one must be proven. */
const smallTally = (number: number): PlainJob => {
  const { pieces, boards, ...job } = generatedTally(number, "rip");
  // a skirt, two nosings, six risers and three returns, and the boards that hold skirts with six more
  const few = [14, 16, 17, 0, 1, 2, 3, 4, 5, 20, 21, 22].map((place) => pieces[place]!);
  return { ...job, pieces: few, boards: boards.slice(0, 8) };
};

interface Measured {
  readonly name: string;
  readonly cost: number;
  /** A share of the cost. */
  readonly gap: number;
  readonly isProven: boolean;
  readonly isCertified: boolean;
  readonly took: number;
  readonly faults: readonly string[];
}

const measured = (name: string, job: PlainJob): Measured => {
  const given = jobOf(job);
  const began = performance.now();
  const plan = rippingPlan(given);
  const took = performance.now() - began;
  if (isProblem(plan))
    return { name, cost: Infinity, gap: 1, isProven: false, isCertified: false, took, faults: [`${name}: ${plan.problem}`] };
  const faults = [...planFaults(job, plan), ...unproven(job, plan)].map((fault) => `${name}: ${fault}`);
  const isCertified = faults.length === 0 && plan.verdict === "best possible (proven)";
  return { name, cost: plan.cost.toNumber(), gap: plan.gap.toNumber(), isProven: plan.bound.eq(plan.cost), isCertified, took, faults };
};

/**
 * Least costs of the first six, rip first: two methods that share nothing, a strip model in HiGHS and a search over sets of boards, came
 * to each of them (the study).
 */
const STUDIED = [439.72, 479.02, 470.87, 447.68, 430.08, 434.85];

const contradicted = (all: readonly Measured[]): string[] =>
  all.slice(0, STUDIED.length).flatMap(({ name, cost, gap, isProven }, place) => {
    const least = STUDIED[place]!;
    const isWrong = cost < least || (isProven && cost > least) || cost * (1 - gap) > least + 0.005;
    return isWrong ? [`${name}: costs ${cost}${isProven ? ", proven" : ""}; the least is ${least}`] : [];
  });

const JOBS = 50;
const QUICK_JOBS = 4;
const LONGEST_CALL = 2_000;

const mostGap = (all: readonly Measured[]): number => 100 * Math.max(...all.map(({ gap }) => gap));
const proven = (all: readonly Measured[]): number => percentOf(all.filter(({ isProven }) => isProven).length, all.length);
const certified = (all: readonly Measured[]): number => {
  const ofThese = all.filter(({ isProven }) => isProven);
  return percentOf(ofThese.filter(({ isCertified }) => isCertified).length, ofThese.length);
};
const longest = (all: readonly Measured[]): number => Math.max(...all.map(({ took }) => took));

const row = (name: string, all: readonly Measured[]): string[] => [
  name, whole(all.length), percent(proven(all)), percent(certified(all)), percent(mostGap(all), 2),
  milliseconds(rank(all.map(({ took }) => took), 0.5)), milliseconds(longest(all)), whole(all.flatMap(({ faults }) => faults).length),
];

/** Plans, checks and prints tallies beside their targets; what is wrong with any of them, in words. */
export const tallyBench = (isQuick: boolean): readonly string[] => {
  console.log("tallies, in a cell ...");
  const each = (name: string, job: (number: number) => PlainJob): Measured[] =>
    Array.from({ length: isQuick ? QUICK_JOBS : JOBS }, (_, place) => measured(`tally ${place + 1}, ${name}`, job(place + 1)));
  const rip = each("rip", (number) => generatedTally(number, "rip"));
  const crosscut = each("crosscut", (number) => generatedTally(number, "crosscut"));
  const either = each("either", (number) => generatedTally(number, "either"));
  const small = each("small", smallTally);
  const all = [...rip, ...crosscut, ...either, ...small];
  printTable("Tallies: 30 pieces on 25 boards; small: 12 on 8", [
    ["", "jobs", "proven", "certified of these", "gap max", "median", "longest", "failed checks"],
    row("rip first", rip), row("crosscut first", crosscut), row("either", either), row("small, rip first", small),
  ]);
  const dearer = either.filter(({ cost }, place) => cost > Math.min(rip[place]!.cost, crosscut[place]!.cost)).map(({ name }) => name);
  const targets: readonly (readonly [string, string, boolean])[] = [
    ...([["rip first", rip], ["crosscut first", crosscut]] as const).flatMap(([name, jobs]) => [
      [`${name}: at least 80 % proven`, percent(proven(jobs)), proven(jobs) >= 80] as const,
      [`${name}: gap at most 3 % on each`, percent(mostGap(jobs), 2), mostGap(jobs) <= 3] as const,
    ]),
    ["either: gap at most 5 % on each", percent(mostGap(either), 2), mostGap(either) <= 5],
    ["either: never dearer than the better single way", whole(dearer.length), dearer.length === 0],
    ["any: what is proven is certified", percent(certified(all)), certified(all) === 100],
    ["small: all proven", percent(proven(small)), proven(small) === 100],
    [`any: longest at most ${whole(LONGEST_CALL)} ms`, milliseconds(longest(all)), longest(all) <= LONGEST_CALL],
  ];
  printTable("Targets of tallies", [
    ["", "figure", ""], ...targets.map(([wanted, figure, isMet]) => [wanted, figure, isMet ? "met" : "missed"]),
  ]);
  const open = all.filter((one) => !one.isProven).map(({ name, gap }) => `${name} (${percent(100 * gap, 2)})`);
  if (open.length > 0) console.log(`  not proven: ${open.join("; ")}`);
  if (dearer.length > 0) console.log(`  dearer than the better single way: ${dearer.join("; ")}`);
  return [...all.flatMap(({ faults }) => faults), ...contradicted(rip)];
};
