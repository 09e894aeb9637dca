import { isOpen, type OpenEnd } from "../layout/stair-facts";

interface EndReading {
  readonly lean: number;
  readonly gap: number | undefined;
}

export interface EndReadings {
  readonly left: EndReading;
  readonly right: EndReading;
}

/** What was read at an open end, which meets no skirt, and so changes nothing; `leanWord` is what the table calls a lean. */
export const unusedAtOpenEnds = (openEnd: OpenEnd, ends: EndReadings, leanWord: "lean" | "flare"): string =>
  (["left", "right"] as const)
    .filter((side) => isOpen(side, openEnd))
    .flatMap((side) => [
      ...(ends[side].lean === 0 ? [] : [`${side} ${leanWord} not used, the ${side} end is open`]),
      ...((ends[side].gap ?? 0) === 0 ? [] : [`${side} gap not used, the ${side} end is open`]),
    ])
    .join("; ");
