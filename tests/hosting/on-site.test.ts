import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { startedBrowser } from "../browser/chromium";
import { functionsShown } from "../browser/functions-shown";
import { hostedFolder, type HostedFolder } from "./hosted-folder";
import { FOLDER, SHOP, shopHost, type ShopHost } from "./shop-host";
import type { Shown } from "../browser/shown-book";

const browserTime = 400_000;
/** How long a page may take on a slow, busy machine before its test gives up, in milliseconds: a limit, not a wait. */
const SLOWEST = 120_000;
const project = path.resolve(__dirname, "../..");
const address = `https://${SHOP}${FOLDER.slice(0, -1)}`;
// A telephone held upright, in pixels.
const telephone = { viewport: { width: 390, height: 844 }, hasTouch: true };

let host: ShopHost;
let browser: Browser;
let built: HostedFolder;
let newer: HostedFolder;
const folders: string[] = [];

/** The folder of a build with one style more. */
const newerFolder = (): HostedFolder => {
  const dist = mkdtempSync(path.join(tmpdir(), "treadsheet-newer-"));
  folders.push(dist);
  for (const name of readdirSync(path.join(project, "dist"))) {
    if (name !== "tools") cpSync(path.join(project, "dist", name), path.join(dist, name), { recursive: true });
  }
  mkdirSync(path.join(dist, "tools"));
  for (const name of ["hosting.js", "on-site"])
    cpSync(path.join(project, "dist/tools", name), path.join(dist, "tools", name), { recursive: true });
  appendFileSync(path.join(dist, "web.css"), "\nhtml { --of-the-newer-build: yes; }\n");
  return hostedFolder(address, dist);
};

beforeAll(async () => {
  // The package that makes the certificate says so.
  jest.spyOn(console, "log").mockImplementation(() => undefined);
  built = hostedFolder(address);
  newer = newerFolder();
  host = await shopHost(built.folder);
  // The certificate is the test's own, and the shop's name leads to this machine.
  browser = await startedBrowser(["--ignore-certificate-errors", `--host-resolver-rules=MAP ${SHOP} 127.0.0.1`]);
}, browserTime);

afterAll(async () => {
  await browser?.close();
  await host?.close();
  built?.remove();
  newer?.remove();
  for (const folder of folders) rmSync(folder, { recursive: true });
}, browserTime);

beforeEach(() => {
  host.handOut(built.folder);
  host.be("well");
});

const own = (name: string, on = SHOP): string => `https://${on}:${host.port}${FOLDER}${name}`;

/** No signal, for the page and for its worker, which the browser's own switch leaves its network. */
const withoutSignal = async (context: BrowserContext): Promise<void> => {
  host.be("gone");
  await context.setOffline(true);
};

const ready = async (page: Page): Promise<void> => void (await page.waitForSelector("html[data-ready=yes]"));

const opened = async (context: BrowserContext, on = SHOP): Promise<{ readonly page: Page; readonly faults: readonly string[] }> => {
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", ({ message }) => faults.push(`error: ${message}`));
  page.on("console", (message) => void (message.type() === "error" && faults.push(`console: ${message.text()}`)));
  page.on("request", (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(own("", on))) faults.push(`request: ${request.url()}`);
  });
  await page.goto(own("", on));
  await ready(page);
  return { page, faults };
};

const shops = async (): Promise<BrowserContext> => {
  const context = await browser.newContext({ ignoreHTTPSErrors: true, ...telephone });
  context.setDefaultTimeout(SLOWEST);
  return context;
};

/** The one build that this browser keeps, once its worker has taken over and it is another than the one said. */
const keptAlone = (page: Page, other = ""): Promise<string> =>
  page.evaluate(async (before) => {
    for (;;) {
      const { active } = await navigator.serviceWorker.ready;
      const [first, ...more] = await caches.keys();
      if (active?.state === "activated" && first !== undefined && first !== before && more.length === 0) return first;
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
  }, other);

const typed = async (page: Page, cell: string, text: string): Promise<void> => {
  await page.evaluate((to) => (globalThis as unknown as Shown).treadsheetBook.select("Job", to), cell);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  await page.waitForFunction(
    ([at, wanted]) => {
      const book = (globalThis as unknown as Shown).treadsheetBook;
      return (book.formula("Job", at ?? "") ?? book.value("Job", at ?? "")) === wanted;
    },
    [cell, text],
  );
  await page.evaluate(() => (globalThis as unknown as Shown).treadsheetBook.settled());
};

const cell = (page: Page, at: string): Promise<unknown> =>
  page.evaluate((to) => (globalThis as unknown as Shown).treadsheetBook.value("Job", to), at);

const isNewer = (page: Page): Promise<boolean> =>
  page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue("--of-the-newer-build") !== "");

test(
  "the sheet opens from a shop's host, keeps what is typed, and without a signal opens again as it was",
  async () => {
    const context = await shops();
    const { page, faults } = await opened(context);
    await keptAlone(page);
    // By hand: 108 / 14 = 7 5/7 and more than 7 3/4 at 13, so 14 risers (as in the guide's first lines).
    await typed(page, "T1", "=STAIR.RISERS(108)");
    expect(await cell(page, "T1")).toBe(14);
    await page.reload();
    await ready(page);
    expect(await cell(page, "T1")).toBe(14);
    expect(faults).toEqual([]);

    await withoutSignal(context);
    await page.reload();
    await ready(page);
    expect(await cell(page, "T1")).toBe(14);
    // By hand: 125 / 7 3/4 is a little over 16, so 17.
    await typed(page, "T2", "=STAIR.RISERS(125)");
    await page.close();
    const { page: again } = await opened(context);
    expect([await cell(again, "T1"), await cell(again, "T2")]).toEqual([14, 17]);
    await context.close();
  },
  browserTime,
);

test(
  "a host that is out of order, or says nothing, is as good as none",
  async () => {
    const context = await shops();
    const { page } = await opened(context);
    await keptAlone(page);
    for (const mood of ["out of order", "silent"] as const) {
      host.be(mood);
      await page.reload();
      await ready(page);
      expect(host.asked()).toContain("index.html");
    }
    await context.close();
  },
  browserTime,
);

test(
  "a newer build is there at the next opening with what was typed, alone, and without a signal too",
  async () => {
    const context = await shops();
    const { page } = await opened(context);
    const before = await keptAlone(page);
    await typed(page, "T1", "=STAIR.RISERS(108)");
    expect(await isNewer(page)).toBe(false);
    host.handOut(newer.folder);
    await page.close();

    const { page: next } = await opened(context);
    expect(await isNewer(next)).toBe(true);
    expect(await cell(next, "T1")).toBe(14);
    await keptAlone(next, before);
    await withoutSignal(context);
    await next.reload();
    await ready(next);
    expect(await isNewer(next)).toBe(true);
    expect(await cell(next, "T1")).toBe(14);
    await context.close();
  },
  browserTime,
);

test(
  "the reading screen opens without a signal too, also from a host that sends a page on to its name without .html",
  async () => {
    for (const mood of ["well", "sending on"] as const) {
      host.be(mood);
      const context = await shops();
      const page = await context.newPage();
      await page.goto(own("at-stair.html"));
      await ready(page);
      await keptAlone(page);
      await withoutSignal(context);
      for (const name of ["at-stair.html", ...(mood === "well" ? [] : ["at-stair"])]) {
        await page.goto(own(name));
        await ready(page);
        expect(await page.getByRole("button", { name: "Start" }).count()).toBe(1);
      }
      await context.close();
    }
  },
  browserTime,
);

test(
  "the pane comes from the host alone, also in a browser that keeps the sheet",
  async () => {
    const context = await shops();
    const { page } = await opened(context);
    await keptAlone(page);
    await context.route("https://appsforoffice.microsoft.com/**", (route) => route.abort());
    host.asked();
    await page.goto(own("taskpane.html"));
    await functionsShown(page);
    expect(host.asked()).toEqual(expect.arrayContaining(["taskpane.html", "functions.js"]));
    await withoutSignal(context);
    await expect(page.reload()).rejects.toThrow(/ERR_/);
    await context.close();
  },
  browserTime,
);

test(
  "on localhost no worker is registered and nothing is kept, though the folder is a host's",
  async () => {
    const context = await shops();
    const { page, faults } = await opened(context, "localhost");
    await page.waitForLoadState("load");
    expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
    expect(await page.evaluate(() => caches.keys())).toEqual([]);
    expect(host.asked()).not.toContain("worker.js");
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);
