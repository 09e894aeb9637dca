import { execFileSync, spawn, spawnSync } from "node:child_process";
import { chmodSync, chownSync, copyFileSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";

export interface At {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows?: number;
  readonly columns?: number;
  /** Whether one cell holds an array formula too. */
  readonly isArray?: boolean;
}

export type ShownCell = string | number | { readonly error: string };

/** What can be asked of an office, as drive.py does it. */
export type Step =
  | readonly ["open", address?: string]
  | readonly ["save", address: string, filter: string]
  | readonly ["calculate" | "known" | "wizard" | "library" | "version"]
  | readonly ["sheets", leftOut: Readonly<Record<string, readonly (readonly [row: number, column: number])[]>>]
  | readonly ["put", at: At, cells: readonly (readonly unknown[])[]]
  | readonly ["enter", at: At, formula: string]
  | readonly ["read" | "formula" | "clear", at: At]
  | readonly ["until", at: At, wanted: readonly (readonly unknown[])[]]
  | readonly ["undo" | "redo" | "entries"]
  | readonly ["note", at: At, isThere: boolean]
  | readonly ["choose", action: string, at: At]
  | readonly ["menu", action: "table" | "fit" | "why" | "mend" | "copy" | "node", at?: At | null, to?: string];

export const EXTENSION = path.resolve(__dirname, "../../dist/treadsheet.oxt");
const DRIVER = path.resolve(__dirname, "drive.py");
const INSTALL =
  "npm run test:calc needs LibreOffice Calc and its Python: on Debian, apt-get install libreoffice-calc python3-uno. " +
  "Build with npm run calc.";

/** Debian's own python3, which finds uno; another may stand before it in PATH. */
export const python = (): string => {
  const found = ["/usr/bin/python3", "python3"].find((one) => spawnSync(one, ["-c", "import uno"]).status === 0);
  if (found === undefined) throw new Error(INSTALL);
  return found;
};

/** The office installs nothing for root alone, so that tests of root are another user's: 65534 is nobody. */
const NOBODY = 65534;
const user = process.getuid?.() === 0 ? { uid: NOBODY, gid: NOBODY } : {};

export const addressOf = (file: string): string => pathToFileURL(file).href;

/** A folder that the office may write into, for the time of a test file. */
export const officeFolder = (): string => {
  const folder = mkdtempSync(path.join(tmpdir(), "treadsheet-calc-"));
  if ("uid" in user) chownSync(folder, NOBODY, NOBODY);
  return folder;
};

export const removeFolder = (folder: string): void => rmSync(folder, { recursive: true, force: true });

/** A file for the office to read and write. */
export const fileFor = (folder: string, name: string, from: string): string => {
  const file = path.join(folder, name);
  copyFileSync(from, file);
  if ("uid" in user) chownSync(file, NOBODY, NOBODY);
  chmodSync(file, 0o666);
  return file;
};

const TIME_LIMIT = 600_000;

/** A profile of its own with the extension installed, as a person installs it. */
export const installed = (folder: string): string => {
  if (spawnSync("soffice", ["--version"]).error !== undefined || !existsSync(EXTENSION)) throw new Error(INSTALL);
  const profile = `-env:UserInstallation=${addressOf(path.join(folder, "profile"))}`;
  const oxt = fileFor(folder, "treadsheet.oxt", EXTENSION);
  execFileSync("unopkg", ["add", "--suppress-license", profile, oxt], {
    ...user, env: { ...process.env, HOME: folder }, cwd: folder, timeout: TIME_LIMIT, stdio: "pipe",
  });
  return profile;
};

/** Starts an office without a screen on the profile, does the steps and ends it; answers what came of each. */
export const inCalc = (folder: string, profile: string, steps: readonly Step[]): readonly unknown[] => {
  const settings = { ...user, env: { ...process.env, HOME: folder }, cwd: folder };
  const pipe = `treadsheet${process.pid}`;
  const office = spawn("soffice", [profile, "--headless", "--norestore", "--nologo", `--accept=pipe,name=${pipe};urp`], {
    ...settings, stdio: "ignore", detached: true,
  });
  try {
    const out = execFileSync(python(), [fileFor(folder, "drive.py", DRIVER), pipe], {
      ...settings, input: JSON.stringify(steps), encoding: "utf8", maxBuffer: Number.POSITIVE_INFINITY, timeout: TIME_LIMIT,
    });
    return JSON.parse(out) as unknown[];
  } finally {
    try {
      // The whole group, for the office starts another process of its own.
      if (office.pid !== undefined) process.kill(-office.pid, "SIGKILL");
    } catch {
      // It has ended as it was asked to.
    }
  }
};
