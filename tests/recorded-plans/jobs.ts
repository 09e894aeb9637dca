import { carpenterJob, type GeneratedJob } from "../bench/yield/generated-jobs";
import { seeded } from "../solver/yield/job";

/** Arguments of CUTS, BUY, PLAN and OFFCUTS as cells: pieces, stock, kerf, trim, keep, unit. */
export type CuttingCells = readonly [
  pieces: readonly (readonly Cell[])[],
  stock: readonly (readonly Cell[])[],
  kerf: number,
  trim: number,
  keep: number,
  unit: "in" | "mm",
];
type Cell = string | number | boolean;

const MARKS = 64;
const CARPENTERS = 25;
const SMALL = 25;
const CENTS = 100;

const STOCK = ["label", "length", "price", "available", "owned", "grade"];
const PIECES = ["label", "length", "quantity", "grade"];

const ofCarpenter = ({ pieces, stock, kerf, trim }: GeneratedJob): CuttingCells => [
  [PIECES, ...pieces.map(({ length, quantity }, row) => [`part ${row + 1}`, length / MARKS, quantity, ""])],
  [STOCK, ...stock.map(({ length, cents }, row) => [`board ${row + 1}`, length / MARKS, cents / CENTS, "any", "no", ""])],
  kerf / MARKS,
  trim / MARKS,
  12,
  "in",
];

/** Small jobs with sticks on hand, two grades and, every second one, millimetres. */
const small = (number: number): CuttingCells => {
  const below = seeded(7_000 + number);
  const isMetric = number % 2 === 0;
  const size = isMetric ? 25 : 1;
  const grade = (): string => (number % 5 === 0 && below(2) === 0 ? "clear" : "");
  const bought = [96, 120, 144].map((length, row) => [
    `board ${row + 1}`,
    length * size,
    (length * (30 + below(8))) / CENTS,
    "any",
    "no",
    "",
  ]);
  const clear = number % 5 === 0 ? [["clear board", 120 * size, 61.5, "any", "no", "clear"]] : [];
  const rack = Array.from({ length: below(4) }, (_, row) => [`rack ${row + 1}`, (20 + below(60)) * size, "", 1 + below(3), "yes", ""]);
  const pieces = Array.from({ length: 3 + below(5) }, (_, row) => [`part ${row + 1}`, (8 + below(50)) * size, 1 + below(5), grade()]);
  return [
    [PIECES, ...pieces],
    [STOCK, ...bought, ...clear, ...rack],
    isMetric ? 3 : 0.125,
    isMetric ? 5 : 0.25,
    10 * size,
    isMetric ? "mm" : "in",
  ];
};

/** The fifty jobs whose plans are recorded; invented, like the jobs of the benchmark. */
export const recordedJobs: readonly CuttingCells[] = [
  ...Array.from({ length: CARPENTERS }, (_, index) => ofCarpenter(carpenterJob(index + 1))),
  ...Array.from({ length: SMALL }, (_, index) => small(index + 1)),
];

/** The functions that tell of a plan, in the order their results are written. */
export const PLAN_FUNCTIONS = ["CUTS", "BUY", "PLAN", "OFFCUTS"] as const;
