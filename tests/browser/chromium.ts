import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import path from "node:path";
import { chromium, type Browser } from "playwright-core";

const project = path.resolve(__dirname, "../..");
const cache = path.join(project, "node_modules", ".cache", "treadsheet");
const unpacked = path.join(cache, "chromium");

interface Found {
  readonly executablePath: string;
  readonly env: NodeJS.ProcessEnv;
}

const programs = ["google-chrome", "google-chrome-stable", "chromium", "chromium-browser", "microsoft-edge", "microsoft-edge-stable"];

const installedPaths = (): readonly string[] => {
  const { env, platform } = process;
  if (platform === "darwin") {
    return ["Google Chrome", "Microsoft Edge", "Chromium"].map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
  }
  if (platform === "win32") {
    const folders = [env["PROGRAMFILES"], env["PROGRAMFILES(X86)"], env["LOCALAPPDATA"]].flatMap((folder) => folder ?? []);
    return folders.flatMap((folder) => [
      path.join(folder, "Google", "Chrome", "Application", "chrome.exe"),
      path.join(folder, "Microsoft", "Edge", "Application", "msedge.exe"),
    ]);
  }
  return (env["PATH"] ?? "").split(path.delimiter).flatMap((folder) => programs.map((program) => path.join(folder, program)));
};

// The package unpacks into the temporary folder and takes what it finds there for whole, so each process unpacks
// into a folder of its own, which then takes its place in one move.
const unpack = (): void => {
  if (existsSync(unpacked)) return;
  mkdirSync(cache, { recursive: true });
  const own = mkdtempSync(`${unpacked}-`);
  const { status, stderr } = spawnSync(process.execPath, ["-e", "require('@sparticuz/chromium').executablePath()"], {
    cwd: __dirname,
    encoding: "utf8",
    // The second setting makes the package unpack its shared libraries too.
    env: { ...process.env, TMPDIR: own, AWS_LAMBDA_JS_RUNTIME: "nodejs20.x" },
  });
  if (status !== 0) {
    rmSync(own, { recursive: true });
    throw new Error(`The package @sparticuz/chromium could not be unpacked: ${stderr.trim()}`);
  }
  try {
    renameSync(own, unpacked);
  } catch (error) {
    rmSync(own, { recursive: true });
    if (!existsSync(unpacked)) throw error;
  }
};

const startFault = ({ executablePath, env }: Found): string | undefined => {
  const { status, stderr, error } = spawnSync(executablePath, ["--version"], { encoding: "utf8", env });
  return status === 0 ? undefined : (error?.message ?? stderr.trim());
};

const packaged = (): Found => {
  unpack();
  const executablePath = path.join(unpacked, "chromium");
  const libraries = path.join(unpacked, "al2023", "lib");
  const plain: Found = { executablePath, env: process.env };
  const withLibraries: Found = {
    executablePath,
    env: { ...process.env, LD_LIBRARY_PATH: [libraries, process.env["LD_LIBRARY_PATH"]].filter(Boolean).join(":") },
  };
  if (startFault(plain) === undefined) return plain;
  const fault = startFault(withLibraries);
  if (fault === undefined) return withLibraries;
  throw new Error(`The browser of the package @sparticuz/chromium does not start: ${fault}`);
};

const found = (): Found => {
  const asked = process.env["CHROME_PATH"];
  if (asked) {
    if (!existsSync(asked)) throw new Error(`CHROME_PATH: there is no file ${asked}.`);
    return { executablePath: asked, env: process.env };
  }
  const installed = installedPaths().find((file) => existsSync(file));
  if (installed !== undefined) return { executablePath: installed, env: process.env };
  if (process.platform === "linux" && process.arch === "x64" && existsSync(path.join(__dirname, "node_modules/@sparticuz/chromium"))) {
    return packaged();
  }
  throw new Error("No browser to test with: install Chrome, Edge or Chromium, or set CHROME_PATH to one.");
};

/** A running browser: the one CHROME_PATH names, else an installed one, else (Linux, x64) the packaged one. */
export const startedBrowser = (more: readonly string[] = []): Promise<Browser> => {
  const { executablePath, env } = found();
  return chromium.launch({
    executablePath,
    args: ["--no-sandbox", "--font-render-hinting=none", ...more],
    env: Object.fromEntries(Object.entries(env).filter((entry): entry is [string, string] => entry[1] !== undefined)),
  });
};
