import { readFileSync } from "node:fs";
import path from "node:path";
import type { PlainJob } from "../../solver/yield/job";

/** A cutting job of a published set. */
export interface Instance {
  readonly name: string;
  readonly set: string;
  readonly job: PlainJob;
  /** Cents between which the least cost lies, as published; both are the optimum where that is known. */
  readonly least: number;
  readonly most: number;
}

interface Listed {
  readonly name: string;
  readonly set: string;
  readonly file: string;
  readonly kind: string;
  readonly lb?: number | null;
  readonly ub?: number | null;
  readonly optimum?: number | null;
}

/**
 * A job as written in a file of a set: its name, `S` and the number of stock rows, each with length, price and how many there are (-1
 * for any number), then `I` and the number of piece rows, each with length and quantity. Kerf and trim are in the lengths already.
 */
export const jobOfText = (text: string): PlainJob => {
  const lines = text.split(/\r?\n/).map((line) => line.trim()).filter((line) => line !== "" && !line.startsWith("#"));
  let at = 0;
  const table = (letter: string, columns: number): number[][] => {
    const [head, count] = (lines[at] ?? "").split(/\s+/);
    if (head !== letter || !/^\d+$/.test(count ?? ""))
      throw new Error(`"${lines[at] ?? "the end"}" is not "${letter}" and a number of rows`);
    at += 1;
    return Array.from({ length: Number(count) }, () => {
      const line = lines[at] ?? "the end";
      const row = line.split(/\s+/).map(Number);
      if (row.length !== columns || row.some((value) => !Number.isInteger(value)))
        throw new Error(`"${line}" is not a row of ${columns} whole numbers`);
      at += 1;
      return row;
    });
  };
  const stock = table("S", 3).map(([length, cents, available]) => ({
    length: length!,
    cents: cents!,
    available: available === -1 ? Infinity : available!,
    owned: cents === 0,
  }));
  const pieces = table("I", 2).map(([length, quantity]) => ({ length: length!, quantity: quantity! }));
  if (at < lines.length) throw new Error(`"${lines[at]}" comes after the last piece`);
  return { pieces, stock, unit: "mm" };
};

/** The jobs that the index of a folder lists, but for those of sheets. */
const listedIn = (folder: string): Listed[] =>
  (JSON.parse(readFileSync(path.join(folder, "index.json"), "utf8")) as Listed[]).filter(({ kind }) => kind === "1d");

/** The names of the sets in a folder. */
export const setsOf = (folder: string): string[] => [...new Set(listedIn(folder).map(({ set }) => set))];

/** The jobs of one set in a folder, in the order of its index. */
export const instancesOf = (folder: string, set: string): Instance[] =>
  listedIn(folder)
    .filter((listed) => listed.set === set)
    .map(({ name, file, lb, ub, optimum }) => {
      const read = path.join(folder, file);
      try {
        return { name, set, job: jobOfText(readFileSync(read, "utf8")), least: optimum ?? lb ?? 0, most: optimum ?? ub ?? Infinity };
      } catch (error) {
        throw new Error(`${read}: ${error instanceof Error ? error.message : String(error)}`, { cause: error });
      }
    });
