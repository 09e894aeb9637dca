import { isProblem } from "../../../src/solver/problem";
import { SHEET_EFFORT, sheetPlan } from "../../../src/solver/yield/sheets/sheet-plan";
import { unproven } from "../../solver/yield/sheets/certificate-checker";
import { searchedAgain } from "../../solver/yield/sheets/searched-again";
import { faults } from "../../solver/yield/sheets/sheet-checker";
import { printTable } from "../print-table";
import { sheetJob } from "./sheet-jobs";
import { milliseconds, percent } from "./wording";

/** Of the jobs of the study as many, and steps of the long search to those in a cell. */
const JOBS = 8;
const QUICK_JOBS = 2;
const LONG = 10;

interface Measured {
  readonly gap: number;
  readonly isProven: boolean;
  readonly isCertified: boolean;
  /** Proven but for numbers of sheets that were only searched through, each of which the checker's own search shows too small. */
  readonly isRepeated: boolean;
  readonly milliseconds: number;
  readonly failed: readonly string[];
}

const measured = (number: number, areSeveral: boolean, turns: boolean, isEither: boolean, effort: number): Measured => {
  const job = { ...sheetJob(number, areSeveral, turns), ...(isEither ? { first: "either" as const } : {}) };
  const begun = performance.now();
  const plan = sheetPlan(job, effort);
  const took = performance.now() - begun;
  const none = { isProven: false, isCertified: false, isRepeated: false };
  if (isProblem(plan)) return { ...none, gap: 1, milliseconds: took, failed: [`sheets ${number}: ${plan.problem}`] };
  const again = searchedAgain(job, plan);
  const wrong = again.holdAll > 0 ? ["sheets said to be too small hold all pieces"] : [];
  const failed = [...faults(job, plan), ...unproven(job, plan), ...wrong].map((fault) => `sheets ${number}: ${fault}`);
  const isCertified = failed.length === 0 && plan.verdict === "best possible (proven)";
  const isProven = plan.verdict.startsWith("best possible");
  const isRepeated = isProven && failed.length === 0 && !isCertified && again.tooSmall === again.named;
  return { gap: plan.gap.toNumber(), isProven, isCertified, isRepeated, milliseconds: took, failed };
};

interface Target {
  readonly wanted: string;
  readonly areSeveral: boolean;
  readonly turns: boolean;
  readonly isEither: boolean;
  readonly effort: number;
  readonly isMet: (all: readonly Measured[]) => boolean;
}

const provenIn = (share: number, most: number) => (all: readonly Measured[]): boolean =>
  all.filter(({ isProven, milliseconds: took }) => isProven && took <= most).length >= share * all.length;

const LONG_SEARCH = { areSeveral: false, turns: false, isEither: false, effort: SHEET_EFFORT * LONG };
const TARGETS: readonly Target[] = [
  { ...LONG_SEARCH, wanted: "one size, grain fixed, long: all proven in 5 s", isMet: provenIn(1, 5_000) },
  { ...LONG_SEARCH, wanted: "one size, grain free, long: 5 of 6 proven in 15 s", turns: true, isMet: provenIn(5 / 6, 15_000) },
  { ...LONG_SEARCH, wanted: "several sizes, long: at least 50 % proven in 5 s", areSeveral: true, isMet: provenIn(0.5, 5_000) },
  {
    wanted: "several sizes, in a cell: gap at most 6 %, in 2 s", areSeveral: true, turns: false, isEither: false, effort: SHEET_EFFORT,
    isMet: (all) => all.every(({ gap, milliseconds: took }) => gap <= 0.06 && took <= 2_000),
  },
  {
    wanted: "several sizes, either way, grain free, in a cell: gap at most 6 %, in 2 s", areSeveral: true, turns: true, isEither: true,
    effort: SHEET_EFFORT,
    isMet: (all) => all.every(({ gap, milliseconds: took }) => gap <= 0.06 && took <= 2_000),
  },
];

/** Measures plans of sheets, prints each target with its figure, and answers what the checker found wrong. */
export const sheetBench = (isQuick: boolean): readonly string[] => {
  const found = TARGETS.map(({ wanted, areSeveral, turns, isEither, effort, isMet }) => {
    const all = Array.from({ length: isQuick ? QUICK_JOBS : JOBS }, (_, job) => measured(job + 1, areSeveral, turns, isEither, effort));
    const times = all.map((each) => each.milliseconds).sort((one, other) => one - other);
    const proven = `${all.filter(({ isProven }) => isProven).length} of ${all.length}`;
    const certified = `${all.filter(({ isCertified }) => isCertified).length}`;
    const repeated = `${all.filter(({ isRepeated }) => isRepeated).length}`;
    const gap = percent(100 * Math.max(...all.map((each) => each.gap)), 2);
    const [median, longest] = [times[times.length >> 1]!, times[times.length - 1]!].map(milliseconds);
    const row = [wanted, proven, certified, repeated, gap, median!, longest!, isMet(all) ? "met" : "missed"];
    return { row, failed: all.flatMap((each) => each.failed) };
  });
  const heads = ["", "proven", "certified of these", "searched again", "most gap", "median", "longest", ""];
  printTable("Sheets: 30 parts of 10 sizes", [heads, ...found.map(({ row }) => row)]);
  return found.flatMap(({ failed }) => failed);
};
