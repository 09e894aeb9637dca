import { generateCertificates } from "office-addin-dev-certs";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:https";
import { tmpdir } from "node:os";
import path from "node:path";
import { headersOf } from "../../src/hosting/headers";
import { listeningPort } from "../../src/serve/listening-port";

/** A name that is nobody's (RFC 2606), which the test's browser takes for this machine. */
export const SHOP = "shop.example";
export const FOLDER = "/stairs/";

export type Mood = "well" | "sending on" | "out of order" | "silent" | "gone";

export interface ShopHost {
  readonly port: number;
  /** Which folder it hands out from now on. */
  readonly handOut: (folder: string) => void;
  /**
   * How it answers from now on; sending on, a page has its name without .html; silent, it takes each request and says nothing; gone, it
   * hangs up.
   */
  readonly be: (mood: Mood) => void;
  /** The files asked for since this was last read. */
  readonly asked: () => readonly string[];
  readonly close: () => Promise<void>;
}

const certificate = async (): Promise<{ readonly cert: Buffer; readonly key: Buffer }> => {
  const folder = mkdtempSync(path.join(tmpdir(), "treadsheet-certificate-"));
  const [cert, key] = [path.join(folder, "cert.pem"), path.join(folder, "key.pem")];
  await generateCertificates(path.join(folder, "authority.pem"), cert, key, 1, [SHOP, "localhost", "127.0.0.1"]);
  const made = { cert: readFileSync(cert), key: readFileSync(key) };
  rmSync(folder, { recursive: true });
  return made;
};

/** A host of a shop's own: https, the folder under an address, each file with the headers that hosting.txt asks for. */
export const shopHost = async (first: string): Promise<ShopHost> => {
  let [folder, mood]: [string, Mood] = [first, "well"];
  let names: string[] = [];
  const server = createServer(await certificate(), (request, response) => {
    const { pathname } = new URL(request.url ?? "", `https://${SHOP}`);
    const asked = pathname === FOLDER ? "index.html" : pathname.slice(FOLDER.length);
    const name = mood === "sending on" && !asked.includes(".") ? `${asked}.html` : asked;
    names.push(name);
    if (mood === "silent") return;
    if (mood === "sending on" && asked.endsWith(".html") && pathname !== FOLDER)
      return void response.writeHead(308, { Location: FOLDER + asked.replace(/[.]html$/, "") }).end();
    if (mood === "gone") return void request.socket.destroy();
    if (mood === "out of order") return void response.writeHead(503).end("out of order");
    try {
      const content = readFileSync(path.join(folder, name));
      response.writeHead(200, { ...headersOf(name, name.endsWith(".html") ? content.toString("utf8") : "") }).end(content);
    } catch {
      response.writeHead(404).end();
    }
  });
  return {
    port: await listeningPort(server, 0),
    handOut: (next) => void (folder = next),
    be: (next) => void (mood = next),
    asked: () => {
      const read = names;
      names = [];
      return read;
    },
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
};
