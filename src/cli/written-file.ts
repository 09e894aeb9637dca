import {
  closeSync, constants, copyFileSync, existsSync, fchmodSync, fsyncSync, openSync, readFileSync, realpathSync, renameSync, rmSync, statSync,
  writeFileSync,
} from "node:fs";
import path from "node:path";
import type { WritingAsked } from "./command-line";
import { refusal } from "./refusal";

/** What the system calls what went wrong. */
const codeOf = (error: unknown): unknown => (typeof error === "object" && error !== null && "code" in error ? error.code : undefined);

/** The bytes of a file somebody named. */
export const bytesOf = (file: string): Uint8Array => {
  try {
    return new Uint8Array(readFileSync(file));
  } catch (error) {
    const why = codeOf(error) === "ENOENT" ? "there is no such file" : String(error);
    throw refusal(`${file}: ${why}. Name a workbook that ends in .xlsx.`);
  }
};

/** The file that a name leads to, by links too, and what may be done with it; the name itself where there is none yet. */
const placeOf = (file: string): { readonly place: string; readonly mode: number | undefined } => {
  if (!existsSync(file)) return { place: file, mode: undefined };
  const place = realpathSync(file);
  return { place, mode: statSync(place).mode };
};

/** Writes a file whole or not at all: under another name beside it first. */
export const writeWhole = (file: string, bytes: Uint8Array): void => {
  let beside: string | undefined;
  try {
    const { place, mode } = placeOf(file);
    const part = path.join(path.dirname(place), `.${path.basename(place)}.${process.pid}.part`);
    const handle = openSync(part, "wx");
    beside = part;
    try {
      writeFileSync(handle, bytes);
      if (mode !== undefined) fchmodSync(handle, mode);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(part, place);
  } catch (error) {
    if (beside !== undefined) rmSync(beside, { force: true });
    throw refusal(`${file} was not written: ${error instanceof Error ? error.message : String(error)}`);
  }
};

const isSame = (one: Uint8Array, other: Uint8Array): boolean => Buffer.compare(one, other) === 0;

/** Copies a file to a name beside it that nothing has, not even since it was looked for: bid before.xlsx, bid before 2.xlsx. */
const backedUp = (file: string): string => {
  const { dir, name, ext } = path.parse(file);
  for (let number = 1; ; number += 1) {
    const backup = path.join(dir, `${name} before${number === 1 ? "" : ` ${number}`}${ext}`);
    try {
      copyFileSync(file, backup, constants.COPYFILE_EXCL);
      return backup;
    } catch (error) {
      if (codeOf(error) === "EEXIST") continue;
      throw refusal(`${backup} was not written, and so ${file} was not either: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
};

/** Writes over a file that is still as it was read, and leaves what it was beside it; answers the name of that. */
export const writeOver = (file: string, before: Uint8Array, after: Uint8Array): string => {
  if (!isSame(bytesOf(file), before)) throw refusal(`${file} has changed since it was read; nothing was written. Run it again.`);
  const backup = backedUp(file);
  writeWhole(file, after);
  return backup;
};

/** Writes a workbook where that was asked, over the file only where it is another one now; answers the names of all that was written. */
export const writeAsked = (
  { file, out, isInPlace }: WritingAsked, before: Uint8Array, after: Uint8Array, isOther: boolean, progress: (step: string) => void,
): readonly string[] => {
  if (out !== undefined) {
    progress(`writing ${out}`);
    writeWhole(out, after);
    return [out];
  }
  if (!isInPlace || !isOther) return [];
  progress(`writing ${file}`);
  return [file, writeOver(file, before, after)];
};
