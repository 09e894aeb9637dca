import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const project = path.resolve(__dirname, "../..");

export interface PlantedTree {
  readonly run: (tool: string, args: readonly string[]) => { readonly status: number | null; readonly output: string };
  readonly remove: () => void;
}

/** A project of a few files under the settings of the real one, to see whether its rules catch what they must. */
export const plantedTree = (files: Readonly<Record<string, string>>): PlantedTree => {
  const folder = mkdtempSync(path.join(tmpdir(), "treadsheet-planted-"));
  for (const name of ["package.json", "tsconfig.json", "src/solver/tsconfig.json", "src/functions/tsconfig.json"]) {
    cpSync(path.join(project, name), path.join(folder, name), { recursive: true });
  }
  // Only packages are shared: what a tool writes to node_modules/.cache stays in the planted tree.
  mkdirSync(path.join(folder, "node_modules"));
  for (const name of ["decimal.js", "fastest-levenshtein", "fflate", "marked"]) {
    symlinkSync(path.join(project, "node_modules", name), path.join(folder, "node_modules", name), "junction");
  }
  for (const [name, text] of Object.entries(files)) {
    const file = path.join(folder, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return {
    run: (tool, args) => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(project, "node_modules", tool), ...args], {
        cwd: folder,
        encoding: "utf8",
      });
      return { status, output: stdout + stderr };
    },
    remove: () => rmSync(folder, { recursive: true }),
  };
};
