/** A licence that a package.json does not tell, read by a person in that version's own files. */
export interface ReadByHand {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly read: string;
}

/** For one version each: another version is looked at anew. */
export const READ_BY_HAND: readonly ReadByHand[] = [
  {
    name: "@univerjs/telemetry",
    version: "0.25.1",
    licence: "Apache-2.0",
    read:
      "its file LICENSE is the Apache License, Version 2.0, and so says the head of lib/es/index.js, which holds one identifier " +
      "and sends nothing",
  },
];
