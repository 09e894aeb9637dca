import type { Finding, Outcome } from "./compared";

/** Of findings alike in outcome, the one with the least margin. */
const tightest = (found: readonly Finding[]): Finding | undefined =>
  found.reduce<Finding | undefined>((least, next) => {
    if (least === undefined) return next;
    return next.margin !== undefined && (least.margin === undefined || next.margin.lt(least.margin)) ? next : least;
  }, undefined);

/** The order in which the parts of a rule decide for all of them. */
const GRAVITY: readonly Outcome[] = ["breaks", "not given", "touches", "left to a person", "holds", "does not apply", "no verdict"];

export const everyPart = (parts: readonly Finding[], needs: "all" | "first" | "any"): Finding | undefined => {
  const known = parts.filter(({ outcome }, index) => outcome !== "not given" || (needs === "first" && index === 0));
  const considered = needs === "all" || known.length === 0 ? parts : known;
  const gravest = GRAVITY.find((outcome) => considered.some((part) => part.outcome === outcome));
  const alike = considered.filter(({ outcome }) => outcome === gravest);
  const found = tightest(alike);
  if (found === undefined) return undefined;
  const decided = considered.filter((part) => part !== found && part.outcome !== "not given");
  const others = gravest === "not given" ? alike.filter((part) => part !== found) : decided;
  return { ...found, notes: [...new Set([...found.notes, ...others.flatMap(({ notes }) => notes)])] };
};

/** The order in which one of several rules is enough. */
const EASE: readonly Outcome[] = ["does not apply", "holds", "no verdict", "touches", "left to a person", "not given", "breaks"];

export const eitherPart = (parts: readonly Finding[]): Finding | undefined => {
  const easiest = EASE.find((outcome) => parts.some((part) => part.outcome === outcome));
  return parts.find(({ outcome }) => outcome === easiest);
};
