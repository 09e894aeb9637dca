import type { Files } from "./hashed-names";

interface Described {
  readonly functions: readonly { readonly id: string }[];
}

/** The files with functions.json leading from each function to its place in the reference: `helpUrl`, custom-functions-json. */
export const withHelpAddresses = (files: Files, address: string): Files => {
  const described = JSON.parse(files.get("functions.json")?.toString("utf8") ?? "{}") as Described;
  const functions = described.functions.map((one) => ({ ...one, helpUrl: `${address}/reference.html#${one.id}` }));
  return new Map([...files, ["functions.json", Buffer.from(`${JSON.stringify({ ...described, functions }, null, 1)}\n`)]]);
};
