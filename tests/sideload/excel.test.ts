import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { type AddressInfo, connect, createServer, type Server } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { manifestPort } from "../../src/sideload/manifest-port";

const project = path.resolve(__dirname, "../..");
const ownManifest = readFileSync(path.join(project, "manifest.xml"), "utf8");

let folder: string;

/** A project with the built tool, a manifest for a port, and stand-ins for Microsoft's two packages that tell what they are asked. */
const planted = (port: number): void => {
  mkdirSync(path.join(folder, "dist/tools"), { recursive: true });
  cpSync(path.join(project, "dist/tools/sideload.js"), path.join(folder, "dist/tools/sideload.js"));
  writeFileSync(path.join(folder, "manifest.xml"), ownManifest.replaceAll("localhost:3000", `localhost:${port}`));
  const packages = {
    "office-addin-dev-certs": 'exports.getHttpsServerOptions = async () => { console.log("certificates: asked"); return {}; };',
    "office-addin-debugging": `
      exports.AppType = { Desktop: "desktop" };
      const { basename } = require("node:path");
      exports.startDebugging = async (manifest, options) => console.log("start:", basename(manifest), JSON.stringify(options));
      exports.stopDebugging = async (manifest) => console.log("stop:", basename(manifest));`,
  };
  for (const [name, text] of Object.entries(packages)) {
    mkdirSync(path.join(folder, "node_modules", name), { recursive: true });
    writeFileSync(path.join(folder, "node_modules", name, "index.js"), text);
  }
};

const listening = (): Promise<Server> => new Promise((resolve) => {
  const server = createServer();
  server.listen(0, "127.0.0.1", () => resolve(server));
});
const portOf = (server: Server): number => (server.address() as AddressInfo).port;
const closed = (server: Server): Promise<void> => new Promise((resolve) => server.close(() => resolve()));
const answers = (port: number): Promise<boolean> => new Promise((resolve) => {
  const socket = connect(port, "127.0.0.1", () => {
    socket.destroy();
    resolve(true);
  });
  socket.once("error", () => resolve(false));
});

interface Served {
  readonly tool: ChildProcess;
  readonly port: number;
  readonly ended: Promise<number | null>;
  readonly output: () => string;
}

/** The tool on a free port, once it says that it serves; another port where someone else took that one meanwhile. */
const served = async (): Promise<Served> => {
  const free = await listening();
  const port = portOf(free);
  await closed(free);
  planted(port);
  const tool = spawn(process.execPath, ["dist/tools/sideload.js"], { cwd: folder });
  let output = "";
  const ended = new Promise<number | null>((resolve) => tool.once("close", resolve));
  const isServing = await new Promise<boolean>((resolve, reject) => {
    const take = (part: Buffer): void => {
      output += part.toString();
      if (output.includes("Stop with Ctrl+C")) resolve(true);
    };
    tool.stdout.on("data", take);
    tool.stderr.on("data", take);
    tool.once("close", () => (output.includes(`Port ${port} is taken`) ? resolve(false) : reject(new Error(output))));
  });
  return isServing ? { tool, port, ended, output: () => output } : served();
};

beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), "treadsheet-excel-"));
});

afterEach(() => rmSync(folder, { recursive: true }));

test("the port served is the one that the manifest names, on this machine alone", () => {
  expect(manifestPort(ownManifest)).toBe(3000);
  expect(manifestPort(ownManifest.replaceAll("localhost:3000", "example.org/stairs"))).toBeUndefined();
});

test("certificates are asked for, the pages served, desktop Excel opened with the manifest, and all of it undone on Ctrl+C", async () => {
  const { tool, port, ended, output } = await served();
  expect(await answers(port)).toBe(true);
  tool.kill("SIGINT");
  expect(await ended).toBe(0);
  expect(output()).toMatch(
    /certificates: asked\nstart: manifest\.xml {"appType":"desktop","enableDebugging":false}\n.*stop: manifest\.xml\n/s,
  );
  expect(await answers(port)).toBe(false);
});

test("a port that is taken is named, and Excel is not opened", async () => {
  const taken = await listening();
  const port = portOf(taken);
  planted(port);
  const { status, stdout, stderr } = spawnSync(process.execPath, ["dist/tools/sideload.js"], { cwd: folder, encoding: "utf8" });
  await closed(taken);
  expect(status).toBe(1);
  expect(stdout).not.toContain("start:");
  expect(stderr).toContain(`Port ${port} is taken, and manifest.xml names it. Close the program that uses it`);
});
