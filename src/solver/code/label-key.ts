import { wordKey } from "../word-key";

/** What the ways to write one label share: case, spaces, punctuation, spelling and the plural do not count ("IRC 2021" is "irc-2021"). */
export const labelKey = (label: string): string => wordKey(label.normalize("NFKD").replace(/\p{M}+/gu, "")).replace(/[^a-z0-9]+/g, "");
