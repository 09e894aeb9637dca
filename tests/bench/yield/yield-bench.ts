import { spawnSync } from "node:child_process";
import { availableParallelism } from "node:os";
import { printTable } from "../print-table";
import { benchJobs } from "./bench-jobs";
import { conditions } from "./conditions";
import { figures, mean } from "./figures";
import { glueUpBench } from "./glue-ups";
import { longSearch, noLongSearch } from "./long-search";
import type { Measurement } from "./measured-here";
import { measuredSample } from "./measured-sample";
import { optionsOf, type Options } from "./options";
import { cellSamples, comparedSamples, longSamples, studiedSample } from "./samples";
import { sheetBench } from "./sheet-bench";
import { type Compared, sideBySide } from "./side-by-side";
import { tallyBench } from "./tallies";
import { judged, type MeasuredSets, type Search } from "./targets";
import { megabytes, milliseconds, percent, seconds, whole } from "./wording";

/** The study: by how much, in percent, its jobs are worth a search at least. */
const HAND_DEARER = 4;
const BOUND_LOW = 0.5;

/** Jobs named one by one where they are not proven. */
const MOST_NAMED = 8;

const measuredAll = async (search: Search, measurements: readonly Measurement[]): Promise<MeasuredSets> => {
  const sets = [];
  for (const measurement of measurements) {
    const { set } = measurement.sample;
    console.log(`${set}, ${search}${measurement.seconds === undefined ? "" : `, ${measurement.seconds} s at most`} ...`);
    sets.push({ set, search, sample: await measuredSample(measurement) });
  }
  return sets;
};

const printSets = (title: string, sets: MeasuredSets): void => {
  const head = [
    "",
    "jobs",
    "proven",
    "certified of these",
    "gap mean",
    "gap max",
    "median",
    "95th of 100",
    "longest",
    "memory",
    "contradictions",
    "failed checks",
  ];
  const rows = sets.map(({ set, sample }) => {
    const of = figures(sample);
    return [
      set,
      whole(of.jobs),
      percent(of.proven),
      percent(of.certified),
      percent(of.meanGap, 4),
      percent(of.mostGap, 4),
      milliseconds(of.median),
      milliseconds(of.p95),
      milliseconds(of.longest),
      megabytes(of.peak),
      whole(of.contradictions),
      whole(of.failed),
    ];
  });
  printTable(title, [head, ...rows]);
  for (const { set, sample } of sets) {
    const open = sample.jobs.filter(({ isProven }) => !isProven);
    if (open.length === 0) continue;
    const named = open.slice(0, MOST_NAMED).map(({ name, gap }) => `${name} (${percent(gap, 4)})`);
    console.log(`  ${set}, not proven: ${named.join(", ")}${open.length > MOST_NAMED ? ` and ${open.length - MOST_NAMED} more` : ""}`);
  }
};

const printCompared = (compared: readonly Compared[], limit: number): void => {
  const rows = compared.flatMap(({ name, answers }) => {
    const best = Math.min(...answers.map(({ cost }) => cost));
    return answers.map(({ method, cost, isProven, seconds: took }, place) => [
      place === 0 ? name : "",
      method,
      whole(cost),
      Number.isFinite(cost) ? (cost / best).toFixed(4) : "",
      isProven ? "proven" : "not proven",
      seconds(took),
    ]);
  });
  printTable(`Side by side, ${limit} s at most for each (cost in cents; its ratio to the best)`, [
    ["", "", "cost", "to the best", "", "time"],
    ...rows,
  ]);
  const methods = compared[0]!.answers.map(({ method }) => method);
  const summary = methods.map((method) => {
    const each = compared.map(({ answers }) => ({
      best: Math.min(...answers.map(({ cost }) => cost)),
      answer: answers.find((answer) => answer.method === method)!,
    }));
    const found = each.filter(({ answer }) => Number.isFinite(answer.cost));
    return [
      method,
      `${found.length} of ${each.length}`,
      found.length === 0 ? "" : mean(found.map(({ answer, best }) => answer.cost / best)).toFixed(4),
      `${each.filter(({ answer }) => answer.isProven).length} of ${each.length}`,
      seconds(mean(each.map(({ answer }) => answer.seconds))),
    ];
  });
  printTable("Side by side, in short", [["", "found a plan", "to the best, mean", "proven", "time, mean"], ...summary]);
};

const printConditions = (options: Options, sets: MeasuredSets): void => {
  const least = new Map(sets.flatMap(({ sample }) => sample.jobs).filter(({ isProven }) => isProven).map(({ name, cost }) => [name, cost]));
  const { jobs, handDearer, boundLow } = conditions(benchJobs(studiedSample(options)), least);
  const verdict = (isMet: boolean): string => (isMet ? "met" : "missed");
  printTable(`The study's conditions, on ${jobs} carpenter jobs with a proven least cost`, [
    ["", "mean", "at least", ""],
    ["the hand plan is dearer by", percent(handDearer, 2), percent(HAND_DEARER), verdict(handDearer >= HAND_DEARER)],
    ["the plain linear bound is low by", percent(boundLow, 2), percent(BOUND_LOW), verdict(boundLow >= BOUND_LOW)],
  ]);
};

/** Everything wrong with what was measured, in words. */
const wrong = (sets: MeasuredSets, compared: readonly Compared[]): string[] => [
  ...sets.flatMap(({ search, sample }) =>
    sample.jobs.flatMap(({ name, failed, contradictions }) => [...failed, ...contradictions].map((each) => `${name}, ${search}: ${each}`)),
  ),
  ...compared.flatMap(({ name, answers, contradictions }) => [
    ...answers.flatMap(({ method, failed }) => failed.map((each) => `${name}, ${method}: ${each}`)),
    ...contradictions.map((each) => `${name}: ${each}`),
  ]),
];

/** Tiny jobs compared with every plan there is, by the tests that hold some hundreds in `npm test`; quick, as many as there. */
const TINY_JOBS = 2_000;

const areTinyJobsSound = (isQuick: boolean): boolean => {
  const env = isQuick ? process.env : { ...process.env, TREADSHEET_TINY_JOBS: String(TINY_JOBS) };
  const args = [require.resolve("jest/bin/jest"), "tests/solver/yield", "--testNamePattern", "seeded jobs"];
  return spawnSync(process.execPath, args, { stdio: "inherit", env }).status === 0;
};

/** Measures and prints; true where no check failed and nothing published or proven is contradicted. */
export const yieldBench = async (words: readonly string[]): Promise<boolean> => {
  const options = optionsOf(words, process.env["INIT_CWD"] ?? process.cwd());
  const missing = noLongSearch();
  const tinySound = areTinyJobsSound(options.isQuick);
  console.log(`Node ${process.version}, ${availableParallelism()} processors.`);
  if (options.folder === undefined) console.log("No folder of published jobs is given: only generated jobs are measured.");
  if (missing !== undefined) console.log(`${missing}.`);
  const tallyFaults = tallyBench(options.isQuick);
  const glueFaults = glueUpBench(options.isQuick);
  const inCell = await measuredAll("in a cell", cellSamples(options));
  const long = missing === undefined ? await measuredAll("long search", longSamples(options)) : [];
  printSets("In a cell", inCell);
  if (long.length > 0) printSets("Long search", long);
  const sets = [...inCell, ...long];

  const { samples, seconds: limit } = comparedSamples(options);
  const searched = missing === undefined ? await longSearch() : undefined;
  const compared = await sideBySide(samples.flatMap(benchJobs), limit, searched);
  await searched?.closeLongSearch();
  printCompared(compared, limit);
  printConditions(options, sets);
  printTable(`Targets${options.isQuick ? ", on small samples: a glance, not a verdict" : ""}`, [
    ["", "figure", ""],
    ...judged(sets).map(({ target, figure, verdict }) => [target, figure, verdict]),
  ]);
  const faults = [...tallyFaults, ...glueFaults, ...wrong(sets, compared), ...sheetBench(options.isQuick)];
  for (const fault of faults) console.error(fault);
  return tinySound && faults.length === 0;
};
