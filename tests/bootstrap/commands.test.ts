import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const bootstrap = path.resolve(__dirname, "../../src/bootstrap");

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-commands-"));
  cpSync(bootstrap, path.join(folder, "src/bootstrap"), { recursive: true });
  writeFileSync(path.join(folder, "package-lock.json"), "{}");
});

afterEach(() => rmSync(folder, { recursive: true }));

const run = (script: string, env: NodeJS.ProcessEnv = {}, args: readonly string[] = []) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [path.join("src/bootstrap", script), ...args], {
    cwd: folder,
    encoding: "utf8",
    env: { ...process.env, ...env },
  });
  return { status, output: stdout + stderr };
};

const withNpm = (text: string, ...folders: readonly string[]) => {
  const npm = path.join(folder, "npm.cjs");
  writeFileSync(npm, text);
  return run("install.cjs", { npm_execpath: npm }, folders);
};

const recorded = (): unknown => JSON.parse(readFileSync(path.join(folder, "node_modules/.cache/treadsheet/install.json"), "utf8"));

const installs = `
const fs = require("node:fs");
console.log("npm was asked for:", ...process.argv.slice(2));
fs.mkdirSync("node_modules");
fs.writeFileSync("node_modules/.package-lock.json", "{}");
`;

test("a fresh copy is installed with npm ci, and what it took is written down", () => {
  const { status, output } = withNpm(installs);
  expect(output).toContain("npm was asked for: ci");
  expect(output).toContain("Installing: nothing is installed yet.");
  expect(status).toBe(0);
  expect(recorded()).toEqual({ milliseconds: expect.any(Number) as number });
});

test("the second time there is nothing to install, nothing to say, and 0 is written down", () => {
  withNpm(installs);
  expect(withNpm("process.exit(9);")).toEqual({ status: 0, output: "" });
  expect(recorded()).toEqual({ milliseconds: 0 });
});

test("a folder with a lock of its own is installed there when it is named, and only then", () => {
  mkdirSync(path.join(folder, "tests/browser"), { recursive: true });
  writeFileSync(path.join(folder, "tests/browser/package-lock.json"), "{}");
  expect(withNpm(installs).output).not.toContain("tests");
  expect(existsSync(path.join(folder, "tests/browser/node_modules"))).toBe(false);
  const { status, output } = withNpm(installs, "tests/browser");
  expect([status, output]).toEqual([0, expect.stringContaining(`Installing ${path.join("tests", "browser")}: nothing is installed yet.`)]);
  expect(existsSync(path.join(folder, "tests/browser/node_modules/.package-lock.json"))).toBe(true);
  expect(withNpm("process.exit(9);", "tests/browser")).toEqual({ status: 0, output: "" });
});

test("an install that fails says why and what to do", () => {
  const { status, output } = withNpm("process.exit(7);");
  expect(status).toBe(1);
  expect(output).toContain("npm ci did not finish: it ended with code 7.");
  expect(output).toContain("Check the network connection and the free disk space");
});

test("a step that fails stops the checks and is named", () => {
  writeFileSync(path.join(folder, "src/bootstrap/build.cjs"), "process.exit(3);");
  const { status, output } = run("check.cjs");
  expect(status).toBe(1);
  expect(output).toContain("== build");
  expect(output).toContain('Stopped at the step "build" (code 3).');
  expect(output).not.toContain("== types");
});

test("a build without its tools says where it stopped", () => {
  const { status, output } = run("build.cjs");
  expect(status).toBe(1);
  expect(output).toContain("Building stopped at: webpack");
});
