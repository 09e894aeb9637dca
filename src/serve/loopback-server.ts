import { createReadStream } from "node:fs";
import { realpath, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { mediaType } from "./media-type";

const policy = (styles: string, images: string): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src ${styles}`,
    "connect-src 'self'",
    `img-src ${images}`,
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join("; ");

const pagePolicy = policy("'self'", "'self'");
// The sheet engine writes its theme and its grid's pattern into the page as it starts.
const sheetPolicy = policy("'self' 'unsafe-inline'", "'self' data:");
const sheetPages: readonly string[] = ["index.html"];

// The pane brings its own policy in its page, because it also loads the platform's script and Excel frames it.
const pagesWithOwnPolicy: readonly string[] = ["taskpane.html"];

const loopbackHost = /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i;

const say = (response: ServerResponse, status: number, text: string): void => {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8", "X-Content-Type-Options": "nosniff" });
  response.end(`${text}\n`);
};

// The path as names of folders and file, or nothing where it could lead out of the folder.
const pathNames = (url: string): readonly string[] | undefined => {
  if (!url.startsWith("/")) return undefined;
  let decoded: string;
  try {
    decoded = decodeURIComponent(url.replace(/[?#].*$/s, ""));
  } catch {
    return undefined;
  }
  const names = decoded.slice(1).split("/");
  const leadsOut = (name: string): boolean => name.startsWith(".") || /[\\:\0]/.test(name);
  return names.some(leadsOut) ? undefined : names;
};

const fileWithin = async (folder: string, names: readonly string[]): Promise<string | undefined> => {
  const asked = path.join(folder, ...names);
  try {
    // Real paths, so that a link inside the folder cannot show what lies outside it.
    const [inside, file] = await Promise.all([realpath(folder), realpath(asked)]);
    return file.startsWith(inside + path.sep) && (await stat(file)).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
};

const answer = async (
  folder: string,
  extraHeaders: Readonly<Record<string, string>>,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> => {
  if (!loopbackHost.test(request.headers.host ?? "")) {
    return say(response, 403, "Treadsheet answers only to localhost, 127.0.0.1 and [::1].");
  }
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.setHeader("Allow", "GET, HEAD");
    return say(response, 405, "Treadsheet only hands out pages: use GET or HEAD.");
  }
  const names = pathNames(request.url ?? "");
  if (names === undefined) return say(response, 400, "That address cannot be read.");
  const wanted = names.at(-1) === "" ? [...names.slice(0, -1), "index.html"] : names;
  const file = await fileWithin(folder, wanted);
  if (file === undefined) return say(response, 404, "There is no such page here.");

  const extension = path.extname(file).toLowerCase();
  const { size } = await stat(file);
  response.writeHead(200, {
    "Content-Type": mediaType(file),
    "Content-Length": size,
    "X-Content-Type-Options": "nosniff",
    // Excel does not show an icon that must not be stored (Office add-in XML manifest overview, image requirements).
    "Cache-Control": extension === ".png" ? "max-age=3600" : "no-cache",
    ...(extension === ".html" && !pagesWithOwnPolicy.includes(wanted.join("/"))
      ? { "Content-Security-Policy": sheetPages.includes(wanted.join("/")) ? sheetPolicy : pagePolicy }
      : {}),
    ...extraHeaders,
  });
  if (request.method === "HEAD") {
    response.end();
    return;
  }
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
};

/** The request handler that hands out the files of one folder to this machine only. */
export const folderAnswers =
  (folder: string, extraHeaders: Readonly<Record<string, string>> = {}) =>
  (request: IncomingMessage, response: ServerResponse): void => {
    answer(folder, extraHeaders, request, response).catch(() => {
      if (response.headersSent) response.destroy();
      else say(response, 500, "The page could not be read.");
    });
  };

/** A server, not yet listening, for the files of one folder. */
export const loopbackServer = (folder: string): Server => createServer(folderAnswers(folder));
