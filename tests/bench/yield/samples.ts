import type { Sample } from "./bench-jobs";
import { setsOf } from "./instances";
import type { Measurement } from "./measured-here";
import type { Options } from "./options";

const ESTIMATOR_JOBS = 20;
/** Jobs in which no two pieces are alike, by how many pieces there are. */
const MEASURED_JOBS = [[30, 30], [120, 8], [260, 5]] as const;
/** Jobs of the study. */
const STUDIED_JOBS = 60;
/** Seconds that a sample is given in the side-by-side, by each method. */
const COMPARED_SECONDS = 6;
const QUICK_COMPARED_SECONDS = 2;

const isMeasured = (set: string): boolean => set === "falkenauer_u" || set === "falkenauer_t" || set.startsWith("gen_");

const measuredSets = ({ folder }: Options): { set: string; folder: string }[] =>
  folder === undefined ? [] : setsOf(folder).filter(isMeasured).map((set) => ({ set, folder }));

/** Samples planned as in a cell. */
export const cellSamples = (options: Options): Measurement[] => {
  const { isQuick, jobs } = options;
  return [
    { sample: { set: "carpenter", every: 1, most: jobs } },
    { sample: { set: "estimator", every: 1, most: isQuick ? 2 : ESTIMATOR_JOBS } },
    ...MEASURED_JOBS.flatMap(([count, most]) =>
      ["in", "mm"].map((unit) => ({ sample: { set: `${count} lengths, ${unit}`, every: 1, most: isQuick ? 2 : most } })),
    ),
    ...measuredSets(options).map((set) => ({ sample: { ...set, every: isQuick ? 10 : 1, most: Infinity } })),
  ];
};

/** Samples given to the long search. */
export const longSamples = (options: Options): Measurement[] => {
  const { isQuick, jobs } = options;
  return [
    { sample: { set: "carpenter", every: 1, most: Math.min(jobs, isQuick ? 3 : STUDIED_JOBS) }, seconds: isQuick ? 2 : 10 },
    { sample: { set: "estimator", every: 1, most: isQuick ? 1 : 10 }, seconds: isQuick ? 2 : 10 },
    ...measuredSets(options)
      .filter(({ set }) => set === "falkenauer_t")
      .map((set) => ({ sample: { ...set, every: isQuick ? 20 : 2, most: Infinity }, seconds: isQuick ? 5 : 20 })),
  ];
};

/** Samples given to every method, and for how long. */
export const comparedSamples = (options: Options): { samples: Sample[]; seconds: number } => {
  const { isQuick } = options;
  return {
    samples: [
      { set: "carpenter", every: 1, most: isQuick ? 2 : 10 },
      { set: "estimator", every: 1, most: isQuick ? 1 : 2 },
      ...measuredSets(options).map((set) => ({ ...set, every: 9, most: isQuick ? 1 : 3 })),
    ],
    seconds: isQuick ? QUICK_COMPARED_SECONDS : COMPARED_SECONDS,
  };
};

/** The jobs that the study's conditions are looked at on. */
export const studiedSample = ({ isQuick, jobs }: Options): Sample => ({
  set: "carpenter",
  every: 1,
  most: Math.min(jobs, isQuick ? 5 : STUDIED_JOBS),
});
