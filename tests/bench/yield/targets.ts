import { figures, percentOf, rank } from "./figures";
import type { MeasuredSample } from "./measured-sample";
import { megabytes, milliseconds, percent, whole } from "./wording";

export type Search = "in a cell" | "long search";

/** All that was measured, by set and search. */
export type MeasuredSets = readonly { readonly set: string; readonly search: Search; readonly sample: MeasuredSample }[];

interface Target {
  readonly set: string;
  readonly search: Search;
  readonly wanted: string;
  readonly value: (sample: MeasuredSample) => number;
  readonly worded: (value: number) => string;
  readonly isMet: (value: number) => boolean;
}

export interface Judged {
  readonly target: string;
  readonly figure: string;
  readonly verdict: "met" | "missed" | "not measured";
}

const provenWithin = (most: number) => ({ jobs }: MeasuredSample): number =>
  percentOf(jobs.filter(({ isProven, milliseconds: took }) => isProven && took <= most).length, jobs.length);

const atLeastProven = (set: string, search: Search, least: number, within = Infinity): Target => ({
  set,
  search,
  wanted: `${least === 100 ? "all" : `at least ${least} %`} proven${within === Infinity ? "" : ` in ${within / 1000} s`}`,
  value: provenWithin(within),
  worded: percent,
  isMet: (value) => value >= least,
});

const gapAtMost = (set: string, search: Search, most: number): Target => ({
  set,
  search,
  wanted: `gap at most ${most} % on each`,
  value: (sample) => figures(sample).mostGap,
  worded: (value) => percent(value, 4),
  isMet: (value) => value <= most,
});

/** `share` of the jobs take no longer. */
const timeAtMost = (set: string, search: Search, named: string, share: number, most: number): Target => ({
  set,
  search,
  wanted: `${named} at most ${most} ms`,
  value: ({ jobs }) => rank(jobs.map((job) => job.milliseconds), share),
  worded: milliseconds,
  isMet: (value) => value <= most,
});

const MOST_MEGABYTES = 400;

/** Proven with a certificate that anyone can check. */
const allCertified = (set: string, search: Search): Target => ({
  set,
  search,
  wanted: "all certified",
  value: ({ jobs }) => percentOf(jobs.filter(({ isCertified }) => isCertified).length, jobs.length),
  worded: percent,
  isMet: (value) => value >= 100,
});

const TARGETS: readonly Target[] = [
  atLeastProven("carpenter", "in a cell", 100),
  allCertified("carpenter", "in a cell"),
  timeAtMost("carpenter", "in a cell", "median", 0.5, 12),
  timeAtMost("carpenter", "in a cell", "95th of 100", 0.95, 50),
  atLeastProven("carpenter", "long search", 100),
  gapAtMost("estimator", "in a cell", 0.01),
  timeAtMost("estimator", "in a cell", "longest", 1, 1_000),
  gapAtMost("estimator", "long search", 0.005),
  atLeastProven("estimator", "long search", 70, 10_000),
  ...["30 lengths, in", "30 lengths, mm"].flatMap((set) => [
    atLeastProven(set, "in a cell", 100),
    timeAtMost(set, "in a cell", "median", 0.5, 40),
  ]),
  ...["120 lengths, in", "120 lengths, mm"].flatMap((set) => [
    gapAtMost(set, "in a cell", 0.3),
    timeAtMost(set, "in a cell", "longest", 1, 1_000),
  ]),
  ...["260 lengths, in", "260 lengths, mm"].map((set) => gapAtMost(set, "in a cell", 0.3)),
  atLeastProven("falkenauer_u", "in a cell", 100),
  timeAtMost("falkenauer_u", "in a cell", "median", 0.5, 20),
  timeAtMost("falkenauer_u", "in a cell", "95th of 100", 0.95, 60),
  atLeastProven("falkenauer_t", "in a cell", 95, 2_000),
  atLeastProven("falkenauer_t", "long search", 100),
  timeAtMost("falkenauer_t", "long search", "median", 0.5, 1_000),
  timeAtMost("falkenauer_t", "long search", "longest", 1, 20_000),
];

const LONGEST_CALL = 2_000;

const verdictOf = (isMet: boolean): Judged["verdict"] => (isMet ? "met" : "missed");

/** Every target with the figure measured and whether it is met. */
export const judged = (measured: MeasuredSets): Judged[] => {
  const all = measured.map(({ sample }) => figures(sample));
  const contradictions = all.reduce((sum, each) => sum + each.contradictions, 0);
  const failed = all.reduce((sum, each) => sum + each.failed, 0);
  const peak = Math.max(...all.map((each) => each.peak));
  const longest = Math.max(0, ...measured.flatMap(({ search }, at) => (search === "in a cell" ? [all[at]!.longest] : [])));
  return [
    ...TARGETS.map(({ set, search, wanted, value, worded, isMet }): Judged => {
      const target = `${set}, ${search}: ${wanted}`;
      const found = measured.find((each) => each.set === set && each.search === search);
      if (found === undefined) return { target, figure: "", verdict: "not measured" };
      const figure = value(found.sample);
      return { target, figure: worded(figure), verdict: verdictOf(isMet(figure)) };
    }),
    {
      target: `any, in a cell: longest at most ${LONGEST_CALL} ms`,
      figure: milliseconds(longest),
      verdict: verdictOf(longest <= LONGEST_CALL),
    },
    { target: "any: no contradiction with published figures", figure: whole(contradictions), verdict: verdictOf(contradictions === 0) },
    { target: "any: no failed check", figure: whole(failed), verdict: verdictOf(failed === 0) },
    { target: `any: memory at most ${MOST_MEGABYTES} MB`, figure: megabytes(peak), verdict: verdictOf(peak <= MOST_MEGABYTES) },
  ];
};
