import { type Length, type Unit } from "../solver/length/length";
import type { ShimPlan, WaysOut } from "../solver/survey/shim-plan";
import { lengthText, listed } from "./say";

/** What would have to be given, and of which floor. */
const waysSaid = ({ most, lowerMore, upperMore, both }: WaysOut, said: (length: Length) => string): string => {
  const lower = (more: Length): string => `raise the lower floor by ${said(more)} (lowerMore)`;
  const upper = (more: Length): string => `raise the upper floor by ${said(more)} (upperMore)`;
  const ways = [
    ...(most === undefined ? [] : [`pack up to ${said(most)} (most)`]),
    ...(lowerMore === undefined ? [] : [lower(lowerMore)]),
    ...(upperMore === undefined ? [] : [upper(upperMore)]),
    ...(both === undefined ? [] : [`${lower(both.lowerMore)} and ${upper(both.upperMore)}`]),
  ];
  return ways.length === 0
    ? "No single change reaches it; try most, lowerMore and upperMore together, or change the framing"
    : `To reach it, ${listed(ways)}`;
};

/** What a plan comes to, in one sentence, and the way out where it is not what was asked for. */
export const shimNote = (plan: ShimPlan, spread: Length | undefined, maxRise: Length | undefined, unit: Unit): string => {
  const said = (length: Length): string => lengthText(length, unit);
  const ways = plan.waysOut === undefined ? "" : `. ${waysSaid(plan.waysOut, said)}`;
  if (plan.hasRiseOver && maxRise !== undefined) {
    const within = spread === undefined ? "" : ` and the spread within ${said(spread)}`;
    const least = spread === undefined || plan.spread.lte(spread) ? "" : `; the least spread is ${said(plan.spread)}`;
    return `no packing keeps every rise to ${said(maxRise)}${within}${least}${ways}`;
  }
  if (plan.isReached === false && spread !== undefined)
    return `packing does not reach ${said(spread)}; the least is ${said(plan.spread)}${ways}`;
  const found = plan.total.isZero() ? "; nothing to pack" : "";
  return spread === undefined ? `the least spread there is${found}` : `within ${said(spread)}${found}`;
};
