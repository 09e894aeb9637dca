import type { WorksheetFunction } from "../host/stand-in";
import { carpenterJob, estimatorJob, type GeneratedJob } from "./yield/generated-jobs";

/** How long an add-in may be busy before the host restarts it: Microsoft, Resource limits and performance optimization, blocking. */
const SECONDS = 5;
const PLANS = 8;
const INCH = 64;

/** A job as the cells of a call. */
const called = ({ kerf, trim, pieces, stock }: GeneratedJob): readonly unknown[] => [
  [["length", "quantity"], ...pieces.map(({ length, quantity }) => [length / INCH, quantity])],
  [
    ["length", "price", "available", "owned"],
    ...stock.map(({ length, cents, available, owned }) => [
      length / INCH, owned ? "" : cents / 100, Number.isFinite(available) ? available : "any", owned ? "yes" : "no",
    ]),
  ],
  kerf / INCH,
  trim / INCH,
];

/** Eight plans of which none is another one, as one recalculation asks for them, one after the other. */
export const plansAtOnceRows = (functions: ReadonlyMap<string, WorksheetFunction>): readonly (readonly string[])[] =>
  ([["one stair each", carpenterJob], ["2,000 pieces each", estimatorJob]] as const).map(([says, job]) => {
    const solve = functions.get("CUTS");
    if (solve === undefined) throw new Error("functions.js does not associate CUTS");
    const jobs = Array.from({ length: PLANS }, (_, index) => called(job(index + 1)));
    let longest = 0;
    const began = performance.now();
    for (const cells of jobs) {
      const one = performance.now();
      solve(...cells);
      longest = Math.max(longest, performance.now() - one);
    }
    const seconds = (performance.now() - began) / 1000;
    return [
      `${PLANS} cutting plans, ${says}`, `${seconds.toFixed(2)} s`, `${(longest / 1000).toFixed(2)} s`,
      seconds <= SECONDS ? "met" : `missed: over ${SECONDS} s`,
    ];
  });
