/** What two spellings of one label share: case, spaces and punctuation do not count ("IRC 2021" is "irc-2021"). */
export const labelKey = (label: string): string => label.normalize("NFKD").toLowerCase().replace(/[^a-z0-9]+/g, "");
