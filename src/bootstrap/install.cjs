// Runs before anything is installed, so it may use what Node itself brings and nothing else.
const { spawnSync } = require("node:child_process");
const fs = require("node:fs");
const path = require("node:path");
const { root, record } = require("./record.cjs");

const leastNode = 20;

const modified = (file) => fs.statSync(file, { throwIfNoEntry: false })?.mtimeMs;

const whyInstall = (folder) => {
  const installed = modified(path.join(folder, "node_modules", ".package-lock.json"));
  if (installed === undefined) return "nothing is installed yet";
  if (installed < modified(path.join(folder, "package-lock.json"))) return "package-lock.json is newer than what is installed";
  return undefined;
};

const npm = (args, cwd) =>
  process.env.npm_execpath
    ? spawnSync(process.execPath, [process.env.npm_execpath, ...args], { cwd, stdio: "inherit" })
    : spawnSync("npm", args, { cwd, stdio: "inherit", shell: process.platform === "win32" });

/**
 * Folders with a lock of their own: the project, and those named behind the command, such as tests/browser for the browser of the tests.
 */
const folders = (named) => [root, ...named.map((folder) => path.join(root, folder))];

const install = (folder, why) => {
  const name = path.relative(root, folder);
  console.log(`Installing${name === "" ? "" : ` ${name}`}: ${why}. Running npm ci, which takes a minute or two.`);
  const { status, signal, error } = npm(["ci"], folder);
  if (status === 0) return true;
  const reason = error?.message ?? (signal ? `it was stopped by ${signal}` : `it ended with code ${status}`);
  console.error(`npm ci did not finish: ${reason}. Its own message is above.`);
  console.error(
    `Check the network connection and the free disk space, delete the folder ${path.join(name, "node_modules")}, then run the ` +
      `command again.`,
  );
  return false;
};

const main = () => {
  const major = Number(process.versions.node.split(".")[0]);
  if (major < leastNode) {
    console.error(
      `Treadsheet needs Node ${leastNode} or newer; this is Node ${process.versions.node}. Install a newer Node, then run the ` +
        `command again.`,
    );
    return 1;
  }
  const began = performance.now();
  const wanting = folders(process.argv.slice(2))
    .map((folder) => ({ folder, why: whyInstall(folder) }))
    .filter(({ why }) => why !== undefined);
  if (!wanting.every(({ folder, why }) => install(folder, why))) return 1;
  const took = wanting.length === 0 ? 0 : performance.now() - began;
  record("install", took);
  if (wanting.length > 0) console.log(`Installed in ${(took / 1000).toFixed(1)} s.`);
  return 0;
};

if (require.main === module) process.exitCode = main();
module.exports = { whyInstall };
