import type { CodeProfile } from "./profile";

export interface ProfileCounts {
  readonly limits: number;
  readonly seenInASource: number;
  readonly checked: number;
  readonly shown: number;
  readonly outOfScope: number;
}

/** How many records of a code there are, what becomes of each, and how many were read in a source. */
export const profileCounts = ({ limits, outOfScope }: CodeProfile): ProfileCounts => {
  const shown = limits.filter(({ rule }) => rule.comparator === "shown").length;
  return {
    limits: limits.length + outOfScope.length,
    seenInASource: [...limits, ...outOfScope].filter(({ status }) => status !== "from memory").length,
    checked: limits.length - shown,
    shown,
    outOfScope: outOfScope.length,
  };
};
