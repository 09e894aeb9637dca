import { readFile } from "node:fs/promises";
import type { Server } from "node:http";
import path from "node:path";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { listeningPort } from "../../src/serve/listening-port";
import { loopbackServer } from "../../src/serve/loopback-server";
import { startedBrowser } from "./chromium";

const project = path.resolve(__dirname, "../..");
/** How long a page may take on a slow, busy machine before its test gives up, in milliseconds: a limit, not a wait. */
const SLOWEST = 120_000;
/** What the platform's script tries at a time of its own, and the policy of our pages refuses: no request leaves the machine. */
const REFUSED_TO_PLATFORM =
  /^Framing 'https:\/\/telemetryservice\.firstpartyapps\.oaspapps\.com\/' violates the following Content Security Policy directive/;
const platformScripts = "https://appsforoffice.microsoft.com/lib/1/hosted/";

export interface OpenedPage {
  readonly page: Page;
  /** Requests to anywhere but this machine and the platform's scripts, and errors of the page itself. */
  readonly faults: readonly string[];
}

/** The platform's script: out of reach, or one of the test's own in its place; the real one unless said. */
export type Platform = "away" | { readonly script: string };

export interface Opened {
  readonly open: (
    file: string,
    options?: BrowserContextOptions & { readonly platform?: Platform; readonly context?: BrowserContext },
  ) => Promise<OpenedPage>;
  /** A context for several tabs of one browser profile. */
  readonly context: (options?: BrowserContextOptions) => Promise<BrowserContext>;
  readonly close: () => Promise<void>;
}

const readPlatformScript = (url: string): Promise<Buffer> =>
  readFile(
    path.join(project, "node_modules/@microsoft/office-js/dist", path.posix.normalize(new URL(url).pathname.replace("/lib/1/hosted/", ""))),
  );

/** The built pages on a server of their own, with a browser to open them in. */
export const openedPages = async (folder = path.join(project, "dist")): Promise<Opened> => {
  const server: Server = loopbackServer(folder);
  const port = await listeningPort(server, 0);
  const own = `http://127.0.0.1:${port}/`;
  const browser: Browser = await startedBrowser();
  return {
    context: (options) => browser.newContext(options),
    open: async (file, { platform, context: given, ...options } = {}) => {
      const faults: string[] = [];
      const context = given ?? (await browser.newContext(options));
      const page = await context.newPage();
      page.setDefaultTimeout(SLOWEST);
      page.on("pageerror", ({ message }) => faults.push(`error: ${message}`));
      page.on("console", (message) => {
        if (message.type() === "error" && !REFUSED_TO_PLATFORM.test(message.text())) faults.push(`console: ${message.text()}`);
      });
      await page.route("**/*", async (route) => {
        const url = route.request().url();
        if (url.startsWith(own)) return route.continue();
        if (!url.startsWith(platformScripts)) {
          faults.push(`request: ${url}`);
          return route.abort();
        }
        if (platform === "away") return route.abort();
        if (platform !== undefined) return route.fulfill({ body: platform.script, contentType: "text/javascript" });
        return route.fulfill({ body: await readPlatformScript(url), contentType: "text/javascript" });
      });
      await page.goto(own + file);
      return { page, faults };
    },
    close: async () => {
      await browser.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
};
