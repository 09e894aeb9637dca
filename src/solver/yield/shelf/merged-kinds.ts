import { wholeUnits, worthSteps } from "./certificate";
import { columnsGenerated, meetsLinearCost, provenBy } from "./column-generation";
import { type Effort, withShare } from "./effort";
import { type Engine } from "./engine";
import { downsized, handPlan } from "./hand-plan";
import { knapsackOf } from "./knapsack";
import { wholeShelf } from "./master";
import { inCuttingOrder } from "./merit";
import { type ShelfPlan } from "./planned-shelf";
import { provenByWidth } from "./by-width";
import { betterOf, type Cut, outlay, type Shelf } from "./shelf";

/** Kinds of piece that are planned with where there are more. */
export const FEW_KINDS = 40;
/** Shares of what is left of the effort: for a plan, and for what is proven. */
const PLAN_SHARE = 0.6;
const PROOF_SHARE = 0.9;

/** A shelf whose kinds stand for several of the shelf it is made from, which go on the same sticks. */
interface Merged {
  readonly shelf: Shelf;
  readonly members: readonly (readonly number[])[];
}

/** Kinds that go on the same sticks together where none is narrower than the first by more than so many widths. */
const groupsWithin = ({ kinds, takes }: Shelf, span: number): number[][] => {
  const groups: number[][] = [];
  const open = new Map<string, number[]>();
  for (const [kind, { width }] of kinds.entries()) {
    const key = takes.map((each) => Number(each[kind]!)).join("");
    const group = open.get(key);
    if (group !== undefined && kinds[group[0]!]!.width - width <= span) group.push(kind);
    else {
      const begun = [kind];
      open.set(key, begun);
      groups.push(begun);
    }
  }
  return groups;
};

/** The narrowest span that leaves few kinds. */
const fewGroups = (shelf: Shelf): number[][] => {
  let low = 0;
  let high = shelf.kinds[0]!.width;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (groupsWithin(shelf, middle).length <= FEW_KINDS) high = middle;
    else low = middle + 1;
  }
  return groupsWithin(shelf, low);
};

/** Merged kinds as wide as the widest of each, so that a plan of them can be cut, or as the narrowest, so that none of them costs more. */
const mergedBy = (shelf: Shelf, groups: readonly (readonly number[])[], which: "widest" | "narrowest"): Merged => {
  const widthOf = (group: readonly number[]): number => shelf.kinds[which === "widest" ? group[0]! : group[group.length - 1]!]!.width;
  const members = [...groups].sort((a, b) => widthOf(b) - widthOf(a) || a[0]! - b[0]!);
  const kinds = members.map((group) => ({
    width: widthOf(group), wanted: group.reduce((sum, kind) => sum + shelf.kinds[kind]!.wanted, 0),
  }));
  return { members, shelf: { ...shelf, kinds, takes: shelf.takes.map((each) => members.map(([first]) => each[first!]!)) } };
};

/** The cuts of merged kinds as cuts of those that they stand for, one after another. */
const cutsOfMembers = (shelf: Shelf, { members }: Merged, cuts: readonly Cut[]): Cut[] => {
  const left = members.map((group) => group.flatMap((kind) => Array.from({ length: shelf.kinds[kind]!.wanted }, () => kind)));
  return cuts.map(({ stick, kinds }) => ({ stick, kinds: kinds.map((kind) => left[kind]!.shift()!).sort((a, b) => a - b) }));
};

/** Worths by the linear plan of merged kinds, held against the shelf itself: what they prove there holds for every plan. */
const provenByMerged = (
  shelf: Shelf, merged: Merged, { masterOf }: Engine, effort: Effort,
): { readonly worth: readonly number[]; readonly least: number } => {
  const simple = provenByWidth(shelf);
  const [few, all] = [knapsackOf(merged.shelf), knapsackOf(shelf)];
  if (few === undefined || all === undefined) return simple;
  const limits = wholeShelf(shelf);
  const { worth } = columnsGenerated(merged.shelf, limits, few, [], masterOf, effort, meetsLinearCost(merged.shelf));
  const given = shelf.kinds.map(() => 0);
  for (const [place, group] of merged.members.entries()) for (const kind of group) given[kind] = worth[place]!;
  const proven = provenBy(shelf, limits, all, given, effort);
  return proven.least > simple.least ? proven : simple;
};

/**
 * A plan of so many kinds of piece that a linear program of all would take too long: kinds nearly as wide as each other are merged. Rounded
 * up they give a plan, rounded down what every plan costs at least.
 */
export const planOfMerged = (
  shelf: Shelf, engine: Engine, effort: Effort, planned: (few: Shelf, share: Effort) => ShelfPlan,
): ShelfPlan => {
  const groups = fewGroups(shelf);
  const byHand = handPlan(shelf, effort);
  const wide = mergedBy(shelf, groups, "widest");
  const few = withShare(effort, effort.left * PLAN_SHARE, (share) => planned(wide.shelf, share));
  const best = betterOf(shelf, byHand, few.cuts && downsized(shelf, cutsOfMembers(shelf, wide, few.cuts)));
  const { worth, least } = withShare(effort, effort.left * PROOF_SHARE, (share) =>
    provenByMerged(shelf, mergedBy(shelf, groups, "narrowest"), engine, share),
  );
  const bound = Math.min(wholeUnits(least, worthSteps(shelf)), best === undefined ? Infinity : outlay(shelf, best).cash);
  return { cuts: best && inCuttingOrder(shelf, best), certified: bound, proven: bound, proof: { by: "worth", worth, isSearched: false } };
};
