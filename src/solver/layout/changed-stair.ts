import { STAIR_LABELS, type StairLabel } from "../stair-labels";
import type { StairFacts } from "./stair-facts";

/** What is known of a stair, and by label why a value stands there that nobody gave. */
export interface KnownStair {
  readonly given: StairFacts;
  readonly assumed: Readonly<Record<string, string>>;
}

type Label = keyof StairFacts;

/** What a label decides: with it changed, these are no longer what they were. */
const DECIDES: Readonly<Partial<Record<Label, readonly Label[]>>> = {
  totalRise: ["unitRise"],
  risers: ["unitRise", "treads"],
  unitRise: ["risers", "treads"],
  treads: ["risers", "unitRise"],
  maxRise: ["risers", "unitRise", "treads"],
  topTread: ["treads"],
  run: ["treadDepth"],
  treadDepth: ["run"],
  boardDepth: ["run", "treadDepth"],
  totalRun: ["run", "treadDepth"],
};

/** Labels that follow from others, whatever was changed. */
const FOLLOWING = (Object.entries<StairLabel>(STAIR_LABELS) as [Label, StairLabel][]).flatMap(([name, { follows }]) =>
  follows === true ? [name] : [],
);

const OF_THE_TREADS: readonly Label[] = ["totalRise", "risers", "unitRise", "treads", "maxRise", "topTread"];
const OF_THE_RUN: readonly Label[] = ["run", "treadDepth", "boardDepth"];

const without = (facts: Readonly<Record<string, unknown>>, labels: ReadonlySet<string>): Record<string, unknown> =>
  Object.fromEntries(Object.entries(facts).filter(([label]) => !labels.has(label)));

/** The total run goes with the treads where the run is known; it is the run that goes where only the total is. */
const leavesTotalRun = (changed: readonly Label[], left: StairFacts, change: StairFacts): boolean => {
  const isRunChanged = OF_THE_RUN.some((label) => changed.includes(label));
  const isRunKnown = OF_THE_RUN.some((label) => left[label] !== undefined || change[label] !== undefined);
  return isRunChanged || (isRunKnown && OF_THE_TREADS.some((label) => changed.includes(label)));
};

/**
 * A stair with some of its labels changed. What was worked out of a label that changes falls away and follows anew, so that a result of
 * LAYOUT may be changed as it stands; the run stays when the risers change, and risers that were counted from a rise are counted again.
 */
export const changedStair = ({ given, assumed }: KnownStair, change: StairFacts): KnownStair => {
  const changed = Object.keys(change) as Label[];
  if (changed.length === 0) return { given, assumed };
  const counted: readonly Label[] = changed.includes("totalRise") && assumed["risers"] !== undefined ? ["risers", "treads"] : [];
  const stale = new Set<string>([...FOLLOWING, ...counted, ...changed.flatMap((label) => DECIDES[label] ?? [])]);
  const left = without(given, stale) as StairFacts;
  if (leavesTotalRun(changed, left, change)) stale.add("totalRun");
  return {
    given: { ...without(given, stale), ...change } as StairFacts,
    assumed: without(assumed, new Set([...stale, ...changed])) as Record<string, string>,
  };
};
