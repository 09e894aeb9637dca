import { readFileSync } from "node:fs";
import { createServer } from "node:https";
import path from "node:path";
import { AppType, startDebugging, stopDebugging } from "office-addin-debugging";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import { loopbackAddress } from "../serve/listening-port";
import { folderAnswers } from "../serve/loopback-server";
import { manifestPort } from "./manifest-port";

const dist = path.resolve(__dirname, "..");
const manifest = path.resolve(dist, "..", "manifest.xml");

const main = async (): Promise<void> => {
  const port = manifestPort(readFileSync(manifest, "utf8"));
  if (port === undefined) throw new Error("manifest.xml names no page on this machine, so that there is nothing to serve.");
  console.log(
    "Excel opens add-ins over https only. If you are asked to trust a certificate for localhost, it was made on this machine for that.",
  );
  const server = createServer(await getHttpsServerOptions(), folderAnswers(dist, { "Access-Control-Allow-Origin": "*" }));
  await new Promise<void>((resolve, reject) => {
    server
      .once("error", (error: NodeJS.ErrnoException) =>
        reject(
          error.code === "EADDRINUSE"
            ? new Error(`Port ${port} is taken, and manifest.xml names it. Close the program that uses it, then run npm run excel again.`)
            : error,
        ),
      )
      .listen(port, loopbackAddress, resolve);
  });
  try {
    await startDebugging(manifest, { appType: AppType.Desktop, enableDebugging: false });
  } catch (error) {
    server.close();
    throw error;
  }
  // Ready for Ctrl+C before it is offered.
  process.once("SIGINT", () => {
    server.close();
    server.closeAllConnections();
    stopDebugging(manifest).catch((error: unknown) => {
      console.error("The add-in could not be taken out of Excel:", error instanceof Error ? error.message : error);
      process.exitCode = 1;
    });
  });
  console.log("Excel is opening with Treadsheet in it: type =STAIR. in a cell, or choose Treadsheet on the Home tab.");
  console.log("Leave this running while you work. Stop with Ctrl+C, which also takes the add-in out of Excel again.");
};

main().catch((error: unknown) => {
  console.error("Treadsheet could not be opened in Excel:", error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
