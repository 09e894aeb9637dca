import { provenByWidth } from "./by-width";
import { type Proof, wholeUnits, worthSteps } from "./certificate";
import { provenBy } from "./column-generation";
import { type Effort, isSpent, withShare } from "./effort";
import { downsized, quickHandPlan } from "./hand-plan";
import { knapsackOf } from "./knapsack";
import { wholeShelf } from "./master";
import { inCuttingOrder } from "./merit";
import { type ShelfPlan } from "./planned-shelf";
import { betterOf, type Cut, outlay, piecesWanted, type Shelf } from "./shelf";

/** Kinds of stick up to which all of them are planned with. */
export const MOST_STICKS = 120;
/** Rounds of planning, each with the sticks that the worths of the last one ask for, and how many are taken in. */
const ROUNDS = 2;
const TAKEN_IN = 30;
/** Kinds of stick that are planned with where there are more. */
const FEW_STICKS = 60;
/** The share of the effort for it: holding all sticks against the worths takes the rest of the time. */
const SHARE = 0.8;

/** Kinds of stick that no other makes needless: one of which any number can be had, that holds as much and costs no more. */
const undominated = (shelf: Shelf): number[] => {
  const pieces = piecesWanted(shelf);
  const ordered = shelf.sticks
    .map((_, stick) => stick)
    .sort(
      (a, b) =>
        shelf.sticks[a]!.price - shelf.sticks[b]!.price ||
        shelf.sticks[b]!.holds - shelf.sticks[a]!.holds ||
        shelf.sticks[b]!.available - shelf.sticks[a]!.available ||
        a - b,
    );
  const most = shelf.takes.map(() => -1);
  return ordered.filter((stick) => {
    const { section, holds, available } = shelf.sticks[stick]!;
    if (holds <= most[section]!) return false;
    if (available >= pieces) most[section] = holds;
    return true;
  });
};

/** So many of the list, evenly from its first to its last. */
const spread = (list: readonly number[], count: number): number[] =>
  list.length <= count
    ? [...list]
    : Array.from({ length: count }, (_, place) => list[Math.floor((place * (list.length - 1)) / Math.max(1, count - 1))]!);

const withSticks = (shelf: Shelf, chosen: readonly number[]): Shelf => ({ ...shelf, sticks: chosen.map((stick) => shelf.sticks[stick]!) });

const worthsOf = (proof: Proof): (readonly number[])[] => {
  if (proof.by === "worth") return [proof.worth];
  return proof.by === "counts" ? proof.worths.slice(0, 1) : [...worthsOf(proof.upTo), ...worthsOf(proof.over)];
};

/**
 * A plan from so many kinds of stick that a linear program of all would take too long. Planned with the sticks of a plan by hand, the
 * cheapest for what they hold and some of every length; then with those that the worths found ask for. What is proven holds for all the
 * sticks: every one of them is compared with the worths.
 */
export const planOfMany = (shelf: Shelf, all: Effort, planned: (few: Shelf, share: Effort) => ShelfPlan): ShelfPlan =>
  withShare(all, all.left * SHARE, (effort) => plannedWithin(shelf, effort, planned));

const plannedWithin = (shelf: Shelf, effort: Effort, planned: (few: Shelf, share: Effort) => ShelfPlan): ShelfPlan => {
  const limits = wholeShelf(shelf);
  const steps = worthSteps(shelf);
  const byHand = quickHandPlan(shelf);
  const needed = undominated(shelf);
  let best = byHand;
  let { worth, least } = provenByWidth(shelf);
  let searched = 0;
  const answer = (): ShelfPlan => {
    const bound = (units: number): number => Math.min(units, best === undefined ? Infinity : outlay(shelf, best).cash);
    const certified = bound(wholeUnits(least, steps));
    const proven = Math.max(certified, bound(searched));
    return { cuts: best && inCuttingOrder(shelf, best), certified, proven, proof: { by: "worth", worth, isSearched: proven > certified } };
  };
  const knapsack = knapsackOf(shelf);
  const used = [...new Set((byHand ?? []).map(({ stick }) => stick))];
  if (knapsack === undefined || used.length > FEW_STICKS) return answer();
  const isAll = needed.length <= MOST_STICKS;
  const rate = (stick: number): number => shelf.sticks[stick]!.price / shelf.sticks[stick]!.holds;
  const cheapest = [...needed].sort((a, b) => rate(a) - rate(b) || a - b).slice(0, FEW_STICKS / 2);
  const chosen = new Set(isAll ? needed : [...used, ...cheapest, ...spread([...needed].sort((a, b) => a - b), FEW_STICKS / 2)]);
  for (let round = 0; round < (isAll ? 1 : ROUNDS) && !isSpent(effort); round += 1) {
    const few = [...chosen].sort((a, b) => a - b);
    const plan = withShare(effort, effort.left / (ROUNDS - round), (share) => planned(withSticks(shelf, few), share));
    if (isAll) searched = plan.proven;
    const cuts = plan.cuts?.map((cut): Cut => ({ ...cut, stick: few[cut.stick]! }));
    best = betterOf(shelf, best, cuts && downsized(shelf, cuts));
    let asked: readonly number[] = [];
    for (const each of worthsOf(plan.proof)) {
      const { fillings, ...proven } = provenBy(shelf, limits, knapsack, each, effort);
      if (proven.least > least || asked.length === 0) {
        const gain = (stick: number): number => fillings[stick]!.worth - shelf.sticks[stick]!.price * steps;
        asked = needed
          .filter((stick) => !chosen.has(stick) && gain(stick) > 0)
          .sort((a, b) => gain(b) - gain(a) || a - b)
          .slice(0, TAKEN_IN);
      }
      if (proven.least > least) ({ worth, least } = proven);
    }
    if (asked.length === 0 || (best !== undefined && outlay(shelf, best).cash <= wholeUnits(least, steps))) break;
    for (const stick of asked) chosen.add(stick);
  }
  return answer();
};
