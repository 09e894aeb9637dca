import { type Length, lengthOf, measure, type Unit } from "../length/length";
import { parseLength } from "../length/parse-length";
import { isProblem, type Problem, problem } from "../problem";
import { repeatedSpacing, USUAL_GAP } from "./baluster-spacing";
import type { Stair } from "./resolved-stair";
import { flight, type FlightProblem } from "./stair-skirt";

/** One baluster of a tread; the same on every tread of the flight. All in one unit. */
export interface TreadBaluster {
  readonly baluster: number;
  /** From the riser face below, level. */
  readonly centre: number;
  /** Tread to underside of the rail: on its centre, at its upper face and at its lower one. */
  readonly length: number | undefined;
  readonly longPoint: number | undefined;
  readonly shortPoint: number | undefined;
}

/** The clear gap that is kept to, and whether the stair itself says it. */
export interface GapLimit {
  readonly most: Length;
  readonly isGiven: boolean;
}

export interface TreadBalusters {
  readonly balusters: readonly TreadBaluster[];
  /** Clear, level, to the next one: balusters are plumb, so the rake does not narrow it. */
  readonly gap: number;
  /** Along the rail, centre to centre. */
  readonly rake: number;
  readonly limit: GapLimit;
  /** The fewest to a tread that keep the gap within the limit; undefined where none do. */
  readonly fewest: number | undefined;
  readonly touches: boolean;
}

export type BalusterProblem = FlightProblem | "no-room-for-balusters" | "too-many-balusters" | "rail-too-deep";

export interface Balusters {
  readonly width: Length;
  /** As many as the gap asks for where nobody says. */
  readonly perTread: number | undefined;
  /** Square to the rail's own length. */
  readonly railDepth: Length | undefined;
}

/** More to a tread than any stair has: a slip of the pen in a width or a gap. */
const MOST_TO_A_TREAD = 100;
/** What a cell cuts off a gap that another formula worked out is no reason for one more baluster. */
const HAIR = lengthOf(0.000001, "in");

const usualGap = (): Length => {
  const gap = parseLength(USUAL_GAP, "in");
  if (isProblem(gap)) throw new Error(`no length: ${USUAL_GAP}`);
  return gap;
};

const limitOf = ({ guardGap }: Stair): GapLimit => ({ most: guardGap ?? usualGap(), isGiven: guardGap !== undefined });

interface Spaced {
  readonly count: number;
  readonly gap: Length;
}

/** So many to a run, or the fewest that keep the limit, with the gap they leave. */
const spaced = (run: Length, { width, perTread }: Balusters, { most }: GapLimit): Spaced | Problem<BalusterProblem> => {
  const found = perTread ?? repeatedSpacing(run, width, most.plus(HAIR));
  if (typeof found !== "number") {
    return isProblem(found) || found.count <= MOST_TO_A_TREAD ? found : problem("too-many-balusters", { most: MOST_TO_A_TREAD });
  }
  if (found > MOST_TO_A_TREAD) return problem("too-many-balusters", { most: MOST_TO_A_TREAD });
  const left = run.minus(width.times(found));
  return left.gt(0) ? { count: found, gap: left.div(found) } : problem("no-room-for-balusters", { count: found, width, opening: run });
};

/** Plumb from the line of the nosings to the rail's underside. */
const undersideOf = (stair: Stair, railDepth: Length | undefined, slope: number, unit: Unit): number | undefined =>
  stair.handrailHeight === undefined || railDepth === undefined
    ? undefined
    : measure(stair.handrailHeight, unit) - measure(railDepth, unit) * Math.hypot(1, slope);

/** Places and lengths of the balusters on a tread, the first flush with the riser face below, the others a like distance on. */
export const treadBalusters = (stair: Stair, asked: Balusters, unit: Unit): TreadBalusters | Problem<BalusterProblem> => {
  const found = flight(stair, unit);
  if (isProblem(found)) return found;
  const run = stair.run ?? lengthOf(found.run, unit);
  const limit = limitOf(stair);
  const spacing = spaced(run, asked, limit);
  if (isProblem(spacing)) return spacing;
  const { count, gap } = spacing;
  const [slope, apart, width] = [found.rise / found.run, found.run / count, measure(asked.width, unit)];
  const underside = undersideOf(stair, asked.railDepth, slope, unit);
  const nosing = measure(stair.nosing, unit);
  const lengthAt = (behindRiser: number): number | undefined =>
    underside === undefined ? undefined : underside + (nosing + behindRiser) * slope;
  const shortest = lengthAt(0);
  if (shortest !== undefined && shortest <= 0) {
    return problem("rail-too-deep", { depth: asked.railDepth ?? 0, height: stair.handrailHeight ?? 0 });
  }
  const fewest = repeatedSpacing(run, asked.width, limit.most.plus(HAIR));
  return {
    balusters: Array.from({ length: count }, (_, index): TreadBaluster => {
      const centre = width / 2 + index * apart;
      return {
        baluster: index + 1,
        centre,
        length: lengthAt(centre),
        longPoint: lengthAt(centre + width / 2),
        shortPoint: lengthAt(centre - width / 2),
      };
    }),
    gap: measure(gap, unit),
    rake: apart * Math.hypot(1, slope),
    limit,
    fewest: isProblem(fewest) ? undefined : fewest.count,
    touches: gap.eq(limit.most),
  };
};
