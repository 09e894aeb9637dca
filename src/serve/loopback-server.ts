import { createReadStream } from "node:fs";
import { realpath, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type OutgoingHttpHeaders, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import { mediaType } from "./media-type";
import { isWorthPacking, packedFiles, takesGzip } from "./packed-file";
import { pagePolicy, sheetPolicy, unframed } from "./page-policy";

const sheetPages: readonly string[] = ["index.html"];

// The pane brings its own policy in its page, because it also loads the platform's script and Excel frames it.
const pagesWithOwnPolicy: readonly string[] = ["taskpane.html"];

// Programs of the command line stand beside the pages and are no pages.
const isTool = ([folder]: readonly string[]): boolean => folder?.toLowerCase() === "tools";

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
  // A file system passes over a name without letters, and some over a point or a space at its end: a folder would go by two names.
  const leadsOut = (name: string, place: number): boolean =>
    name.startsWith(".") || /[\\:\0]|[. ]$/.test(name) || (name === "" && place < names.length - 1);
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

/** What is asked for, as one request asks for it: names below the folder, or a refusal. */
const asked = (request: IncomingMessage, response: ServerResponse): readonly string[] | undefined => {
  if (!loopbackHost.test(request.headers.host ?? "")) {
    say(response, 403, "Treadsheet answers only to localhost, 127.0.0.1 and [::1].");
    return undefined;
  }
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.setHeader("Allow", "GET, HEAD");
    say(response, 405, "Treadsheet only hands out pages: use GET or HEAD.");
    return undefined;
  }
  const names = pathNames(request.url ?? "");
  if (names === undefined) {
    say(response, 400, "That address cannot be read.");
    return undefined;
  }
  return names.at(-1) === "" ? [...names.slice(0, -1), "index.html"] : names;
};

const headersOf = (page: string): OutgoingHttpHeaders => {
  const extension = path.extname(page).toLowerCase();
  return {
    "Content-Type": mediaType(page),
    "X-Content-Type-Options": "nosniff",
    // Excel does not show an icon that must not be stored (Office add-in XML manifest overview, image requirements).
    "Cache-Control": extension === ".png" ? "max-age=3600" : "no-cache",
    ...(extension === ".html" && !pagesWithOwnPolicy.includes(page)
      ? { "Content-Security-Policy": (sheetPages.includes(page) ? sheetPolicy : pagePolicy) + unframed }
      : {}),
  };
};

const folderAnswer = (folder: string, extraHeaders: Readonly<Record<string, string>>) => {
  const packed = packedFiles();
  return async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const names = asked(request, response);
    if (names === undefined) return;
    const file = isTool(names) ? undefined : await fileWithin(folder, names);
    if (file === undefined) return say(response, 404, "There is no such page here.");

    const { size, mtimeMs } = await stat(file);
    const page = names.join("/");
    const isPackable = isWorthPacking(mediaType(page), size);
    const isPacked = isPackable && takesGzip(request.headers["accept-encoding"]);
    const version = `"${size.toString(16)}-${Math.round(mtimeMs).toString(16)}${isPacked ? "-gzip" : ""}"`;
    const headers: OutgoingHttpHeaders = {
      ...headersOf(page),
      ETag: version,
      ...(isPackable ? { Vary: "Accept-Encoding" } : {}),
      ...extraHeaders,
    };
    // What the browser kept is still what stands here.
    if ((request.headers["if-none-match"] ?? "").split(",").some((one) => one.trim().replace(/^W[/]/, "") === version)) {
      response.writeHead(304, headers);
      response.end();
      return;
    }
    const body = isPacked ? await packed(file, version) : undefined;
    response.writeHead(200, {
      ...headers,
      ...(body === undefined ? {} : { "Content-Encoding": "gzip" }),
      "Content-Length": body?.length ?? size,
    });
    if (request.method === "HEAD" || size === 0) response.end();
    else if (body !== undefined) response.end(body);
    else {
      // As many bytes as were announced, also where a build writes the file meanwhile.
      createReadStream(file, { end: size - 1 })
        .on("error", () => response.destroy())
        .pipe(response);
    }
  };
};

/** The request handler that hands out the files of one folder to this machine only. */
export const folderAnswers = (folder: string, extraHeaders: Readonly<Record<string, string>> = {}) => {
  const answer = folderAnswer(folder, extraHeaders);
  return (request: IncomingMessage, response: ServerResponse): void => {
    answer(request, response).catch(() => {
      if (response.headersSent) response.destroy();
      else say(response, 500, "The page could not be read.");
    });
  };
};

/** A server, not yet listening, for the files of one folder. */
export const loopbackServer = (folder: string): Server => createServer(folderAnswers(folder));
