import { closeSync, copyFileSync, existsSync, fsyncSync, openSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { refusal } from "./refusal";

/** The bytes of a file somebody named. */
export const bytesOf = (file: string): Uint8Array => {
  try {
    return new Uint8Array(readFileSync(file));
  } catch (error) {
    const why = error instanceof Error && "code" in error && error.code === "ENOENT" ? "there is no such file" : String(error);
    throw refusal(`${file}: ${why}. Name a workbook that ends in .xlsx.`);
  }
};

/** Writes a file whole or not at all: under another name beside it first. */
export const writeWhole = (file: string, bytes: Uint8Array): void => {
  const beside = path.join(path.dirname(file), `.${path.basename(file)}.${process.pid}.part`);
  try {
    const handle = openSync(beside, "wx");
    try {
      writeFileSync(handle, bytes);
      fsyncSync(handle);
    } finally {
      closeSync(handle);
    }
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw refusal(`${file} was not written: ${error instanceof Error ? error.message : String(error)}`);
  }
};

const isSame = (one: Uint8Array, other: Uint8Array): boolean => Buffer.compare(one, other) === 0;

/** A name beside the file that nothing has: bid before.xlsx, bid before 2.xlsx. */
const backupOf = (file: string): string => {
  const { dir, name, ext } = path.parse(file);
  for (let number = 1; ; number += 1) {
    const backup = path.join(dir, `${name} before${number === 1 ? "" : ` ${number}`}${ext}`);
    if (!existsSync(backup)) return backup;
  }
};

/** Writes over a file that is still as it was read, and leaves what it was beside it; answers the name of that. */
export const writeOver = (file: string, before: Uint8Array, after: Uint8Array): string => {
  if (!isSame(bytesOf(file), before)) throw refusal(`${file} has changed since it was read; nothing was written. Run it again.`);
  const backup = backupOf(file);
  copyFileSync(file, backup);
  writeWhole(file, after);
  return backup;
};
