import type { Server } from "node:net";

export const loopbackAddress = "127.0.0.1";
const portsTried = 100;
const lastPort = 65535;

const listen = (server: Server, port: number): Promise<boolean> =>
  new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException): void => {
      server.off("listening", listening);
      if (error.code === "EADDRINUSE") resolve(false);
      else reject(error);
    };
    const listening = (): void => {
      server.off("error", failed);
      resolve(true);
    };
    server.once("error", failed).once("listening", listening).listen(port, loopbackAddress);
  });

/** The port the server now listens on: the first free one, beginning with the port asked for. */
export const listeningPort = async (server: Server, from: number): Promise<number> => {
  for (let port = from; port < from + portsTried && port <= lastPort; port += 1) {
    if (await listen(server, port)) {
      const address = server.address();
      return typeof address === "object" && address !== null ? address.port : port;
    }
  }
  throw new Error(`No free port from ${from} on. Close a program that uses one, or set PORT to another number.`);
};
