import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { listeningPort } from "../../src/serve/listening-port";
import { loopbackServer } from "../../src/serve/loopback-server";
import { below, type Chance, oneOf } from "../workbook-file/damaged-files";
import { spoiltText } from "./spoilt-text";

const SECRET = "what lies outside";
const HOME = "<!doctype html>home";

const PIECES = [
  "/", "//", "\\", "..", ".", "%2e%2e", "%2E.", "..%2f", "%5c", "%255c", "%252e%252e", "%c0%ae", "%00", "%", "%zz", "..;", "...", "?", "#",
  "~", ":", "C:", "file:", "http://localhost", "@", "secret.txt", "outside", "dist", "index.html", "INDEX.HTML", "tools", "TOOLS",
  "tools%2fserve.js", "serve.js",
  "linked", "link.txt", ".hidden", "assets", "x".repeat(5000), "é", "\u0001", " ", "\t", "::$DATA", "con", "*",
];

const OTHER_HOSTS = ["evil.example", "", "localhost.evil.example", "127.0.0.1@evil", "[::1]:1"];
const OTHER_HEADERS = ["Range: bytes=0-9999999999", 'If-None-Match: "x"', "Accept-Encoding: gzip;q=x", "X".repeat(9000)];

const targetOf = (chance: Chance): string => {
  const pieces = Array.from({ length: 1 + below(chance, 8) }, () => oneOf(chance, PIECES)).join(oneOf(chance, ["", "/", "/", "%2f"]));
  return chance() < 0.9 ? `/${pieces}` : pieces;
};

interface Request {
  readonly text: string;
  /** It may never come to its end, so that whoever asks hangs up. */
  readonly isSpoilt: boolean;
}

const requestOf = (chance: Chance, port: number): Request => {
  const host = chance() < 0.8 ? `localhost:${port}` : oneOf(chance, OTHER_HOSTS);
  const method = chance() < 0.8 ? "GET" : oneOf(chance, ["HEAD", "POST", "get", "OPTIONS", "TRACE", "CONNECT", "", "G\u0000T"]);
  const headers = [
    `Host: ${host}`, ...(chance() < 0.3 ? [oneOf(chance, OTHER_HEADERS)] : []),
    "Connection: close",
  ];
  const whole = `${method} ${targetOf(chance)} HTTP/1.1\r\n${headers.join("\r\n")}\r\n\r\n`;
  return chance() < 0.15 ? { text: spoiltText(whole, chance), isSpoilt: true } : { text: whole, isSpoilt: false };
};

export interface Asking {
  readonly outcome: (chance: Chance) => Promise<string>;
  readonly close: () => Promise<void>;
}

/** Not implemented, and not that version of HTTP (RFC 9110, 15.6.2 and 15.6.6). */
const NOT_KNOWN = ["501", "505"];

/** A server of a folder with something beside it that nobody may see, asked for anything. */
export const asking = async (): Promise<Asking> => {
  const around = mkdtempSync(path.join(tmpdir(), "treadsheet-damage-"));
  const folder = path.join(around, "dist");
  mkdirSync(path.join(folder, "tools"), { recursive: true });
  mkdirSync(path.join(folder, "assets"));
  const files = {
    "secret.txt": SECRET, "dist/tools/serve.js": SECRET, "dist/.hidden": SECRET, "dist/index.html": HOME, "dist/web.js": "let risers = 14;",
  };
  for (const [name, text] of Object.entries(files)) writeFileSync(path.join(around, name), text);
  symlinkSync(path.join(around, "secret.txt"), path.join(folder, "link.txt"));
  symlinkSync(around, path.join(folder, "linked"));
  const server = loopbackServer(folder);
  const port = await listeningPort(server, 0);
  const ask = ({ text, isSpoilt }: Request): Promise<string> =>
    new Promise((resolve, reject) => {
      let answer = "";
      const socket = connect(port, "127.0.0.1", () => (isSpoilt ? socket.end(text, "latin1") : socket.write(text, "latin1")));
      socket.on("data", (part) => (answer += part.toString("latin1"))).on("close", () => resolve(answer));
      // A request that is no request may be hung up on.
      socket.on("error", (error: NodeJS.ErrnoException) => {
        if (!["ECONNRESET", "EPIPE"].includes(error.code ?? "")) reject(error);
      });
    });
  return {
    outcome: async (chance) => {
      const request = requestOf(chance, port);
      const answer = await ask(request);
      if (answer.includes(SECRET)) throw new Error(`${JSON.stringify(request.text)} shows ${SECRET}`);
      const [, status = answer === "" ? "hung up" : answer.slice(0, 60)] = /^HTTP\/1\.1 (\d{3}) /.exec(answer) ?? [];
      const asked = JSON.stringify(request.text);
      if (/^5/.test(status) && !NOT_KNOWN.includes(status)) throw new Error(`the server failed at ${asked}: ${answer.slice(0, 300)}`);
      const home = await ask({ text: `GET / HTTP/1.1\r\nHost: localhost:${port}\r\nConnection: close\r\n\r\n`, isSpoilt: false });
      const isHome = home.startsWith("HTTP/1.1 200 ") && home.endsWith(HOME);
      if (!isHome) throw new Error(`the server no longer answers after ${asked}: ${home.slice(0, 300)}`);
      return status;
    },
    close: async () => {
      await new Promise((resolve) => server.close(resolve));
      rmSync(around, { recursive: true });
    },
  };
};
