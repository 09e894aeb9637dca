import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { askedPort } from "./asked-port";
import { browserCommand } from "./browser-command";
import { greeting } from "./greeting";
import { listeningPort, loopbackAddress } from "./listening-port";
import { loopbackServer } from "./loopback-server";
import { recordedTime } from "./recorded-time";

const openBrowser = (url: string): void => {
  const command = browserCommand(url, { platform: process.platform, env: process.env, exists: existsSync });
  if (command === undefined) return;
  const [program, ...args] = command;
  // A browser that does not open is no reason to stop: the address is printed.
  spawn(program, args, { stdio: "ignore", detached: true })
    .on("error", () => undefined)
    .unref();
};

const main = async (): Promise<void> => {
  const dist = path.resolve(__dirname, "..");
  const recorded = path.resolve(dist, "..", "node_modules", ".cache", "treadsheet");
  const server = loopbackServer(dist);
  const port = await listeningPort(server, askedPort(process.env["PORT"]));
  const address = `http://${loopbackAddress}:${port}/`;
  // Ready for Ctrl+C before it is offered.
  for (const signal of ["SIGINT", "SIGTERM"] as const) {
    process.on(signal, () => {
      server.close();
      server.closeAllConnections();
    });
  }
  console.log(
    greeting(address, (file) => existsSync(path.join(dist, file)), {
      install: recordedTime(path.join(recorded, "install.json")),
      build: recordedTime(path.join(recorded, "build.json")),
      start: performance.now(),
    }),
  );
  openBrowser(address);
};

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
