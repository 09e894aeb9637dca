import type { Division, ProofPlace } from "../../../../src/solver/yield/ripped/board-proof";
import type { CertificateJob } from "./certificate-job";
import { turned } from "./held-worth";

/** Sets of strips looked at for each width before a stretch is given up. */
const MOST_SIDES = 4_000;

/** Whether every set of strips that a stretch can be cut into one way lies within one that is listed, strip by strip. */
export const areAllListed = (
  job: CertificateJob, { board, stretch }: ProofPlace, first: "rip" | "crosscut", listed: readonly Division[],
): boolean => {
  const of = turned(job, board, stretch, first);
  const own = listed.filter((division) => division.first === first);
  const fits = job.kinds.map((_, kind) => of.takes[kind]! && of.along[kind]! <= of.long && of.across[kind]! <= of.wide);
  const hasWhole = of.isWhole.some((isWhole, kind) => isWhole && fits[kind]!);
  if (first === "rip" && hasWhole && !own.some(({ into }) => into === "whole")) return false;
  if (own.some(({ into }) => into === "led")) return true;
  if (first === "crosscut" && hasWhole) return false;
  const sides = own.flatMap(({ into }) => (typeof into === "string" ? [] : [into.map((width) => width + job.kerf)]));
  const widths = [...new Set(of.across.filter((_, kind) => fits[kind]! && !of.isWhole[kind]!))].sort((one, other) => other - one);
  const most = widths.map((width) =>
    of.wanted.reduce((sum, each, kind) => (fits[kind]! && of.across[kind] === width ? sum + each : sum), 0));
  let looked = 0;
  const isListed = (at: number, strips: readonly number[], left: number): boolean => {
    looked += 1;
    if (looked > MOST_SIDES * (widths.length + 1)) return false;
    if (at === widths.length)
      return strips.length === 0 || sides.some((side) => strips.every((strip, place) => strip <= (side[place] ?? 0)));
    for (let count = 0; count <= most[at]! && count * widths[at]! <= left; count += 1) {
      const more = [...strips, ...Array.from({ length: count }, () => widths[at]!)];
      if (!isListed(at + 1, more, left - count * widths[at]!)) return false;
    }
    return true;
  };
  return isListed(0, [], of.wide);
};
