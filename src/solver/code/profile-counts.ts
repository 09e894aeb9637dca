import type { CodeProfile } from "./profile";

export interface ProfileCounts {
  readonly limits: number;
  /** Checked against the text of that edition. */
  readonly confirmed: number;
  readonly checked: number;
  readonly shown: number;
  readonly outOfScope: number;
}

/** How many records of a code there are, how each is used, and how many are confirmed. */
export const profileCounts = ({ limits, outOfScope }: CodeProfile): ProfileCounts => {
  const shown = limits.filter(({ rule }) => rule.comparator === "shown").length;
  return {
    limits: limits.length + outOfScope.length,
    confirmed: [...limits, ...outOfScope].filter(({ status }) => status === "checked against the code's text").length,
    checked: limits.length - shown,
    shown,
    outOfScope: outOfScope.length,
  };
};
