import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { createInterface } from "node:readline";
import { mendedFile } from "../../workbook-file/mended-file";
import { answered } from "./answered";
import { worksheetFunctions } from "./worksheet-functions";

/** What the office asks, a line of JSON each: what a function comes to, or a saved workbook as Excel binds it. */
type Asked =
  | { readonly call: string; readonly cells: readonly unknown[] }
  | { readonly mend: string; readonly to: string };

const NAMESPACE = "STAIR";

const functions = worksheetFunctions(readFileSync(path.join(__dirname, "functions.js"), "utf8"));
const isOurs = (name: string): boolean => functions.has(name.slice(NAMESPACE.length + 1));

const mend = (file: string, to: string): unknown => {
  const { bytes, mended, notMended } = mendedFile(new Uint8Array(readFileSync(file)), { isOurs });
  writeFileSync(to, bytes);
  return { mended: mended.length, notMended: notMended.length };
};

const reply = (asked: Asked): unknown => {
  if ("mend" in asked) return mend(asked.mend, asked.to);
  const solve = functions.get(asked.call);
  return solve === undefined ? { error: "#NAME?", says: `${asked.call} is not known` } : answered(solve, asked.cells);
};

const replied = (line: string): unknown => {
  try {
    return reply(JSON.parse(line) as Asked);
  } catch (error) {
    return { error: "#VALUE!", says: error instanceof Error ? error.message : String(error) };
  }
};

// A line goes out for each that comes in; where the office ends, the pipe does, and so does this.
createInterface({ input: process.stdin }).on("line", (line) => process.stdout.write(`${JSON.stringify(replied(line))}\n`));
