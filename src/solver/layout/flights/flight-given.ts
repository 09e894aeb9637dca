import type { Length } from "../../length/length";
import type { OpenEnd, StairFacts } from "../stair-facts";

/** What a stair does on the landing at the top of a flight, seen going up. */
export const TURNS = ["none", "quarter left", "quarter right", "half left", "half right"] as const;

export type Turn = (typeof TURNS)[number];

export const isQuarter = (turn: Turn): boolean => turn.startsWith("quarter");
export const isHalf = (turn: Turn): boolean => turn.startsWith("half");

/** One flight as it is given, from the bottom; what is left out is the stair's. */
export interface FlightGiven {
  readonly flight?: string | number;
  readonly risers: number;
  readonly run?: Length;
  readonly width?: Length;
  readonly turn: Turn;
  readonly landingDepth?: Length;
  readonly well: Length;
  /** How far the next flight's first riser face stands back into the landing. */
  readonly setBack: Length;
  readonly landingBuildUp?: Length;
  /** Newel centre past the last riser face of this flight, and short of the first riser face of the next. */
  readonly newelPast: Length;
  readonly newelShort?: Length;
  readonly openEnd?: OpenEnd;
  readonly overhang?: Length;
  readonly returnWidth?: Length;
  readonly runPast?: Length;
  readonly openSides?: NonNullable<StairFacts["openSides"]>;
  readonly handrails?: NonNullable<StairFacts["handrails"]>;
  /** Depth of the landing's nosing piece; 0 for a landing without one. */
  readonly landingTread?: Length;
  readonly landingTreadLength?: Length;
}
