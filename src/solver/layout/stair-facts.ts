import type { RiserOn } from "../fit/riser-on";
import type { Length } from "../length/length";

/** What is known of a stair, by the labels of the stair table. Everything may be unknown. */
export interface StairFacts {
  readonly totalRise?: Length;
  readonly risers?: number;
  readonly maxRise?: Length;
  readonly unitRise?: Length;
  readonly run?: Length;
  readonly treadDepth?: Length;
  readonly treads?: number;
  readonly totalRun?: Length;
  readonly availableRun?: Length;
  readonly topTread?: "floor" | "flush";
  readonly nosing?: Length;
  readonly treadThickness?: Length;
  readonly riserThickness?: Length;
  readonly width?: Length;
  readonly openEnd?: OpenEnd;
  readonly overhang?: Length;
  readonly returnWidth?: Length;
  readonly runPast?: Length;
  readonly lap?: Length;
  readonly riserOn?: RiserOn;
  readonly lowerBuildUp?: Length;
  readonly upperBuildUp?: Length;
  readonly stringers?: number;
  readonly stringerBoard?: Length;
  readonly skirtThickness?: Length;
  readonly skirtShows?: Length;
  readonly skirtFoot?: Length;
  readonly skirtHead?: Length;
  readonly handrailHeight?: Length;
  readonly headroom?: Length;
  readonly opening?: Length;
  readonly floorThickness?: Length;
  readonly trimLength?: Length;
  readonly trimDepth?: Length;
  readonly landingNosing?: boolean;
  readonly boardDepth?: Length;
  readonly pitch?: number;
  readonly slopeLength?: Length;
  readonly throat?: Length;
  readonly drop?: Length;
  readonly hang?: Length;
  readonly "2R+T"?: Length;
  readonly openingNeededFromTheLandingNosing?: Length;
  readonly openingNeededFromTheFace?: Length;
  readonly headroomFound?: Length;
}

export type OpenEnd = "none" | "left" | "right" | "both";

export const isOpen = (side: "left" | "right", openEnd: OpenEnd): boolean => openEnd === side || openEnd === "both";
