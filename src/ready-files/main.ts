import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { readyFileName, readyWorkbooks } from "../sheets/ready-workbooks";
import type { FunctionsJson } from "../workbook/function-metadata";
import type { openWorkbook } from "../workbook/node/open-workbook";
import { readyFile } from "./ready-file";

const dist = path.resolve(__dirname, "..");
const [, , folder = path.join(dist, "workbooks")] = process.argv;

const kilobytes = (bytes: number): string => `${Math.round(bytes / 1000)} kB`;

// The build makes the engine beside this program: a second one in it would be built, and read, for nothing.
const engine = createRequire(path.join(__dirname, "workbooks.js"))("./engine.cjs") as { readonly openWorkbook: typeof openWorkbook };

const main = async (): Promise<void> => {
  const metadata = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as FunctionsJson;
  const book = engine.openWorkbook({ bundle: readFileSync(path.join(dist, "functions.js"), "utf8"), metadata });
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const lines: string[] = [];
  for (const ready of readyWorkbooks) {
    const written = await readyFile(ready, book);
    for (const form of ["formulas", "values"] as const) {
      const bytes = written(form);
      const name = readyFileName(ready, form);
      writeFileSync(path.join(folder, name), bytes);
      lines.push(`  ${name}, ${kilobytes(bytes.length)}`);
    }
  }
  console.log([`Wrote ${lines.length} workbooks to ${path.relative(process.cwd(), folder)}${path.sep}:`, ...lines].join("\n"));
};

// The engine leaves timers behind.
main().then(
  () => process.stdout.write("", () => process.exit(0)),
  (error: unknown) => {
    console.error(error);
    process.exit(1);
  },
);
