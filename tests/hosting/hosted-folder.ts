import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const project = path.resolve(__dirname, "../..");

export interface HostedFolder {
  readonly folder: string;
  readonly output: string;
  readonly names: readonly string[];
  readonly text: (name: string) => string;
  readonly remove: () => void;
}

/** The folder for a host, made of dist (or a folder like it) as `npm run build -- --origin` makes it. */
export const hostedFolder = (address: string, dist = path.join(project, "dist")): HostedFolder => {
  const parent = mkdtempSync(path.join(tmpdir(), "treadsheet-hosted-"));
  const folder = path.join(parent, "hosted");
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join(dist, "tools/hosting.js"), address, folder], {
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"));
  return {
    folder,
    output: stdout,
    names: names.sort(),
    text: (name) => readFileSync(path.join(folder, name), "utf8"),
    remove: () => rmSync(parent, { recursive: true }),
  };
};
