import { isProblem } from "../../../src/solver/problem";
import { faultsOf } from "../../solver/yield/glue-up/glue-checker";
import { answered, gapOf, isProven, planned, type PlainGlueUp } from "../../solver/yield/glue-up/glue-job";
import { printTable } from "../print-table";
import { draws } from "./draws";
import { mean, percentOf, rank } from "./figures";
import { milliseconds, percent, whole } from "./wording";

/** Glue-ups of a stair's treads, invented and seeded; they do not change. */
const SEED = 8_000;
const BOARDS = 25;
const PANELS = 14;
/** Cents a square foot of 5/4, which counts a quarter more. */
const CENTS = 720;

/** 14 treads 11 1/4 x 42 out of 25 boards 8 to 16 ft long and 5 to 10 in wide. */
export const generatedGlueUp = (number: number): PlainGlueUp => {
  const draw = draws(SEED + number);
  const tally = Array.from({ length: BOARDS }, () => {
    const length = 96 + Math.floor(97 * draw());
    const width = 5 + Math.floor(41 * draw()) / 8;
    return { length, width, thickness: 1.25, edge: 0.25, price: Math.round((1.25 * length * width * CENTS) / 144) / 100 };
  });
  return { panels: [{ label: "tread", length: 42, width: 11.25, quantity: PANELS }], tally, terms: { trim: 1, strips: 5 } };
};

const JOBS = 50;
const QUICK_JOBS = 10;

interface Target {
  readonly wanted: string;
  readonly figure: string;
  readonly isMet: boolean;
}

/** Plans, checks and prints glue-ups, gaps as the words say, a tenth of a percent up; what is wrong with any of them, in words. */
export const glueUpBench = (isQuick: boolean): readonly string[] => {
  console.log("glue-ups, in a cell ...");
  const faults: string[] = [];
  const measured = Array.from({ length: isQuick ? QUICK_JOBS : JOBS }, (_, place) => {
    const job = generatedGlueUp(place + 1);
    const name = `glue-up ${place + 1}`;
    const began = performance.now();
    const rows = answered(job);
    const took = performance.now() - began;
    if (isProblem(rows)) {
      faults.push(`${name}: ${rows.problem}`);
      return { name, gap: 1, isProven: false, took };
    }
    const plan = planned(job);
    faults.push(...faultsOf(job, plan).map((fault) => `${name}: ${fault}`));
    return { name, gap: gapOf(plan), isProven: isProven(plan), took };
  });
  const gaps = measured.map(({ gap }) => 100 * gap);
  const times = measured.map(({ took }) => took);
  const proven = percentOf(measured.filter((one) => one.isProven).length, measured.length);
  const targets: readonly Target[] = [
    { wanted: "gap at most 1.5 % on each", figure: percent(Math.max(...gaps), 2), isMet: Math.max(...gaps) <= 1.5 },
    { wanted: "gap at most 0.4 % in the mean", figure: percent(mean(gaps), 2), isMet: mean(gaps) <= 0.4 },
    { wanted: "at least 40 % proven", figure: percent(proven), isMet: proven >= 40 },
    { wanted: "longest at most 1,000 ms", figure: milliseconds(Math.max(...times)), isMet: Math.max(...times) <= 1_000 },
  ];
  printTable(`Glue-ups, ${whole(PANELS)} panels on ${whole(BOARDS)} boards, each with the plan of one board a panel beside it`, [
    ["jobs", "proven", "gap mean", "gap max", "median", "longest", "failed checks"],
    [
      whole(measured.length), percent(proven), percent(mean(gaps), 2), percent(Math.max(...gaps), 2), milliseconds(rank(times, 0.5)),
      milliseconds(Math.max(...times)), whole(faults.length),
    ],
  ]);
  printTable("Targets of glue-ups", [
    ["", "figure", ""],
    ...targets.map(({ wanted, figure, isMet }) => [wanted, figure, isMet ? "met" : "missed"]),
  ]);
  const open = measured.filter((one) => !one.isProven).map(({ name, gap }) => `${name} (${percent(100 * gap, 1)})`);
  if (open.length > 0) console.log(`  not proven: ${open.join(", ")}`);
  return faults;
};
