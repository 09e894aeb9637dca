import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const project = path.resolve(__dirname, "../..");

export interface PackedFile {
  readonly path: string;
  readonly size: number;
}

interface Packed {
  readonly filename: string;
  readonly unpackedSize: number;
  readonly files: readonly PackedFile[];
}

export interface InstalledPackage {
  /** The folder of a script, where nothing but the package was installed. */
  readonly folder: string;
  readonly packed: Packed;
  /** What a script of this name and text prints. */
  readonly printed: (name: string, text: string) => string;
  readonly command: (...args: readonly string[]) => { readonly status: number | null; readonly out: string; readonly err: string };
  readonly remove: () => void;
}

const npm = (args: readonly string[], cwd: string): string => {
  const given = process.env["npm_execpath"];
  const { status, stdout, stderr } =
    given === undefined
      ? spawnSync("npm", args, { cwd, encoding: "utf8", shell: process.platform === "win32" })
      : spawnSync(process.execPath, [given, ...args], { cwd, encoding: "utf8" });
  if (status !== 0) throw new Error(`npm ${args.join(" ")}: ${stderr}`);
  return stdout;
};

/** Packs what the build made and installs it in an empty folder, with the network left out. */
export const installedPackage = (): InstalledPackage => {
  const top = mkdtempSync(path.join(tmpdir(), "treadsheet-package-"));
  const folder = path.join(top, "script");
  mkdirSync(folder);
  const quiet = ["--offline", "--ignore-scripts", "--cache", path.join(top, "cache")];
  const [packed] = JSON.parse(npm(["pack", "--json", "--pack-destination", top, ...quiet], project)) as Packed[];
  if (packed === undefined) throw new Error("npm pack packed nothing");
  npm(["install", path.join(top, packed.filename), "--no-audit", "--no-fund", ...quiet], folder);

  const run = (args: readonly string[]) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: folder, encoding: "utf8", maxBuffer: 1e8 });
    return { status, out: stdout.trimEnd(), err: stderr.trimEnd() };
  };
  return {
    folder,
    packed,
    printed: (name, text) => {
      writeFileSync(path.join(folder, name), text);
      const { status, out, err } = run([name]);
      if (status !== 0) throw new Error(`${name}: ${err}`);
      return out;
    },
    command: (...args) => run([path.join("node_modules", "treadsheet", "dist", "tools", "treadsheet.cjs"), ...args]),
    remove: () => rmSync(top, { recursive: true }),
  };
};
