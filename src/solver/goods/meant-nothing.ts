import { wordKey } from "../word-key";

/** The word for a 0 that is meant: work or goods that are included elsewhere. */
export const INCLUDED = "included";

export const isIncluded = (text: unknown): boolean => typeof text === "string" && wordKey(text) === INCLUDED;

/** What of a row is 0 or empty although nobody wrote that it should be, and what comes of it. */
export const blankNote = (blank: readonly string[], isPlural: boolean, comesOfIt: string): string =>
  blank.length === 0 ? "" : `${blank.join(" and ")} ${isPlural || blank.length > 1 ? "are" : "is"} 0 or empty: ${comesOfIt}`;
