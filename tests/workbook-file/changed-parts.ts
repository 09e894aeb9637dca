import { spawnSync } from "node:child_process";
import path from "node:path";
import { strFromU8, unzipSync } from "fflate";

/** The parts of a file as texts, unpacked by a library of its own. */
export const partTexts = (bytes: Uint8Array): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));

export interface ChangedParts {
  /** Of each part that is not byte for byte what it was, what differs in it. */
  readonly differ: Readonly<Record<string, readonly string[]>>;
  readonly gone: readonly string[];
  readonly added: readonly string[];
}

/** What differs of a file, part by part, told by another library than the project's. */
export const changedParts = (bytes: Uint8Array, before: Readonly<Record<string, string>>): ChangedParts => {
  const now = partTexts(bytes);
  const touched = Object.entries(before).filter(([name, text]) => name in now && now[name] !== text);
  const { stdout, stderr } = spawnSync(process.execPath, [path.join(__dirname, "compare-parts.mjs")], {
    encoding: "utf8", input: JSON.stringify(touched.map(([name, text]) => [text, now[name] ?? ""])),
  });
  if (stderr !== "") throw new Error(stderr);
  const found = JSON.parse(stdout) as readonly (readonly string[])[];
  return {
    differ: Object.fromEntries(touched.map(([name], index) => [name, found[index] ?? []] as const)),
    gone: Object.keys(before).filter((name) => !(name in now)), added: Object.keys(now).filter((name) => !(name in before)),
  };
};
