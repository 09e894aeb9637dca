import { readFileSync } from "node:fs";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { readReadings } from "../../src/readings/read-readings";
import { inventedJob } from "../../src/sheets/demo/invented-job";
import { hostedFolder, type HostedFolder } from "../hosting/hosted-folder";
import { FOLDER, SHOP, shopHost, type ShopHost } from "../hosting/shop-host";
import { flightInSpace, skirts } from "../solver/fit/skirt-surface/flight-in-space";
import { startedBrowser } from "./chromium";
import { seriousFaults } from "./serious-faults";
import { value } from "./shown-book";

const browserTime = 400_000;
/** How long a page may take on a slow, busy machine before its test gives up, in milliseconds: a limit, not a wait. */
const SLOWEST = 120_000;
/** A telephone, upright, held in one hand. */
const telephone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
/** What a thumb hits, in pixels. */
const LEAST = 44;

let host: ShopHost;
let browser: Browser;
let built: HostedFolder;

beforeAll(async () => {
  // The package that makes the certificate says so.
  jest.spyOn(console, "log").mockImplementation(() => undefined);
  built = hostedFolder(`https://${SHOP}${FOLDER.slice(0, -1)}`);
  host = await shopHost(built.folder);
  browser = await startedBrowser(["--ignore-certificate-errors", `--host-resolver-rules=MAP ${SHOP} 127.0.0.1`]);
}, browserTime);

afterAll(async () => {
  await browser?.close();
  await host?.close();
  built?.remove();
}, browserTime);

beforeEach(() => host.be("well"));

interface Stair {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly faults: readonly string[];
}

const address = (name: string): string => `https://${SHOP}:${host.port}${FOLDER}${name}`;

const opened = async (): Promise<Stair> => {
  const context = await browser.newContext({ ignoreHTTPSErrors: true, ...telephone });
  context.setDefaultTimeout(SLOWEST);
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", ({ message }) => faults.push(`error: ${message}`));
  page.on("console", (message) => void (message.type() === "error" && faults.push(`console: ${message.text()}`)));
  await page.goto(address("at-stair.html"));
  await page.waitForSelector("html[data-ready=yes]");
  return { context, page, faults };
};

/**
 * No signal, once the worker says that it keeps the page: for the page and for its worker, which the browser's own switch leaves its
 * network.
 */
const withoutSignal = async ({ context, page }: Stair): Promise<void> => {
  await page.waitForSelector("html[data-kept=yes]");
  host.be("gone");
  await context.setOffline(true);
};

const tap = (page: Page, name: string): Promise<void> => page.getByRole("button", { name, exact: true }).tap();
const big = (page: Page) => page.locator(".moving button").nth(1);

const FRACTIONS = [
  "0, on the inch", "1/16", "1/8", "3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "11/16", "3/4", "13/16", "7/8", "15/16",
];

/** A length in sixteenths as a thumb takes it: the fraction, and the whole inch where it is not lit already. */
const taped = async (page: Page, length: number): Promise<void> => {
  await tap(page, FRACTIONS[(length % 1) * 16] ?? "");
  const whole = page.getByRole("button", { name: `${Math.floor(length)} inches`, exact: true });
  if ((await whole.getAttribute("aria-pressed")) !== "true") await whole.tap();
};

const read = async (page: Page, ...lengths: readonly number[]): Promise<void> => {
  for (const length of lengths) {
    await taped(page, length);
    await big(page).tap();
  }
};

/** Keys and fields too small for a thumb, and what an accessibility checker finds, on the screen shown. */
const unfit = async (page: Page): Promise<readonly string[]> => {
  const small = await page.evaluate(
    (least) =>
      [...document.querySelectorAll("button, input")].flatMap((target) => {
        const { width, height } = target.getBoundingClientRect();
        return Math.min(width, height) >= least ? [] : [`${target.textContent}: ${width} x ${height}`];
      }),
    LEAST,
  );
  const isWide = await page.evaluate((width) => document.documentElement.scrollWidth > width, telephone.viewport.width);
  return [...small, ...(await seriousFaults(page)), ...(isWide ? ["wider than the screen"] : [])];
};

const text = async (page: Page, part: string): Promise<string> => (await page.locator(part).innerText()).replaceAll("\u00a0", " ");

/** Which way the lit tape runs on the sketch: across to the right or left, and away from or toward who stands below it. */
const tapeRuns = (page: Page): Promise<string> =>
  page.locator("svg line[stroke-width='7']").first().evaluate((line) => {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = ["x1", "y1", "x2", "y2"].map((name) => Number(line.getAttribute(name)));
    const across = Math.abs(x2 - x1) < 1 ? "" : x2 > x1 ? "right" : "left";
    return `${across} ${Math.abs(y2 - y1) < 1 ? "" : y2 > y1 ? "toward" : "away"}`.trim();
  });

const sixteenth = (length: number | undefined): number => Math.round((length ?? 0) * 16) / 16;

/** Treads between two skirts, each corner where planes meet in space, read to the nearest sixteenth: back, front and both diagonals. */
const SKIRTS = skirts(36.3, { along: 0.4, up: 0.3 }, { along: -0.5, up: 0.2 });
const TREADS = flightInSpace(SKIRTS, [10, 10, 10, 10, 10], [7.5, 7.5, 7.5, 7.5, 7.5])
  .treads.map(({ near, far, diagonal, secondDiagonal }) => [near, far, diagonal, secondDiagonal].map(sixteenth));
const [FIRST = [], SECOND = [], THIRD = [], FOURTH = [], FIFTH = []] = TREADS;
const [fourthBack = 0, fourthFront = 0, ...fourthDiagonals] = FOURTH;

const inches = (length: number): string => {
  const fraction = FRACTIONS[(length % 1) * 16];
  return length % 1 === 0 ? String(length) : `${Math.floor(length)} ${fraction}`;
};

test(
  "without a signal a flight is read by touch; a planted inch is named before the step is left, read again; all is there after a reload",
  async () => {
    const stair = await opened();
    const { page, faults } = stair;
    await withoutSignal(stair);
    await page.reload();
    await page.waitForSelector("html[data-ready=yes]");
    expect(await unfit(page)).toEqual([]);

    await page.getByLabel("Job").fill("Invented house");
    await tap(page, "Start");
    expect(await unfit(page)).toEqual([]);
    expect(await big(page).isDisabled()).toBe(true);
    await tap(page, "10 inches");
    // The whole inch alone is no reading.
    expect(await big(page).isDisabled()).toBe(true);
    // Riser face to front edge; along both from left to right; back left to front right; back right to front left.
    const ways = ["toward", "right", "right", "right toward", "left toward"];
    for (const [place, length] of [10, ...FIRST].entries()) {
      expect(await tapeRuns(page)).toBe(ways[place]);
      await read(page, length);
    }
    expect(await text(page, "h1")).toBe("STEP 1 CLOSES");
    expect(await unfit(page)).toEqual([]);
    await big(page).tap();
    for (const [place, lengths] of [SECOND, THIRD].entries()) {
      await read(page, ...lengths);
      expect(await text(page, "h1")).toBe(`STEP ${place + 2} CLOSES`);
      await big(page).tap();
    }

    await read(page, fourthBack);
    // The planted mistake: an inch too much along the front.
    await taped(page, fourthFront + 1);
    expect(await text(page, ".frame")).toMatch(/ more than step 3 says \(.*\)\. Read it again while the tape is on it\.$/);
    expect(await unfit(page)).toEqual([]);
    expect(await big(page).innerText()).toBe("It is right: next");
    await big(page).tap();
    await read(page, ...fourthDiagonals);
    expect(await text(page, "h1")).toBe("STEP 4 DOES NOT CLOSE");
    expect(await text(page, "main > .frame")).toBe(
      `Likely: front ${inches(fourthFront)}, not ${inches(fourthFront + 1)}. A whole inch too long.`,
    );
    const lit = await page.locator("svg").getAttribute("aria-label");
    expect(lit).toBe("The opening from above, the tape along the front edge, skirt to skirt.");
    expect(await unfit(page)).toEqual([]);
    expect(await big(page).innerText()).toBe("Read front again");
    await big(page).tap();
    await read(page, fourthFront);
    expect(await text(page, "h1")).toBe("STEP 4 CLOSES");
    expect(await text(page, ".said")).toMatch(/Nothing stands out\.\s+Step 5 will read back /);
    await big(page).tap();

    const [fifthBack = 0, fifthFront = 0, ...fifthDiagonals] = FIFTH;
    await read(page, fifthBack);
    await taped(page, fifthFront);
    await page.reload();
    await page.waitForSelector("html[data-ready=yes]");
    expect(await text(page, ".value strong")).toBe(inches(fifthFront));
    expect(await text(page, ".where")).toBe("Step 5 of 13");
    await big(page).tap();
    await read(page, ...fifthDiagonals);
    await tap(page, "List: all readings");
    expect(await unfit(page)).toEqual([]);

    const [download] = await Promise.all([page.waitForEvent("download"), tap(page, "Save readings")]);
    expect(download.suggestedFilename()).toBe("Invented house readings.txt");
    const saved = readReadings(readFileSync(await download.path(), "utf8"));
    expect(saved).toMatchObject({ job: "Invented house", unit: "in", tape: 16, risers: [] });
    expect("treads" in saved ? saved.treads : saved).toEqual(
      TREADS.map(([back, front, diagonal, secondDiagonal], place) => ({
        step: place + 1, read: { run: 10, back, front, diagonal, secondDiagonal }, kept: false,
      })),
    );
    // What could not be fetched is said in the console by the browser itself.
    expect(faults.filter((fault) => !fault.includes("Failed to load resource"))).toEqual([]);
    await stair.context.close();
  },
  browserTime,
);

test(
  "under four treads a step that does not close is kept as doubtful, undone touch by touch, and copied as text",
  async () => {
    const { context, page, faults } = await opened();
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await tap(page, "Start");
    await read(page, 10, ...FIRST);
    await big(page).tap();
    const [back = 0, front = 0, ...diagonals] = SECOND;
    await read(page, back, front + 1, ...diagonals);
    expect(await text(page, "h1")).toBe("STEP 2 DOES NOT CLOSE");
    expect(await text(page, ".said")).toContain(`Differs most from step 1: front ${inches(front + 1)}, there ${inches(FIRST[1] ?? 0)}.`);
    await tap(page, "Keep as read: doubtful");
    expect(await text(page, ".said")).toContain("Kept as read: doubtful.");
    expect(await big(page).innerText()).toBe("Next: step 3");
    await tap(page, "List: all readings");
    await tap(page, "Copy readings");
    await page.getByText("Copied.").waitFor();
    const copied = readReadings(await page.evaluate(() => navigator.clipboard.readText()));
    expect("treads" in copied ? copied.treads.map(({ step, kept }) => [step, kept]) : copied).toEqual([[1, false], [2, true]]);

    // Back over the list, the keeping, and Next and its two keys of the last reading.
    await tap(page, "Undo");
    await tap(page, "Undo");
    expect(await page.getByRole("button", { name: "Keep as read: doubtful" }).count()).toBe(1);
    await tap(page, "Undo");
    expect(await text(page, ".value strong")).toBe(inches(diagonals[1] ?? 0));
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

test(
  "a tape in millimetres has tens, ten digits and halves, and other numbers are typed",
  async () => {
    const { context, page, faults } = await opened();
    await tap(page, "Unit: mm");
    await tap(page, "Read: risers");
    await tap(page, "Start");
    await tap(page, "19 tens");
    await tap(page, "4");
    await tap(page, "+ half");
    expect(await text(page, ".value strong")).toBe("194.5");
    expect(await unfit(page)).toEqual([]);
    await big(page).tap();
    await tap(page, "123: other numbers");
    expect(await unfit(page)).toEqual([]);
    for (const digit of ["1", "0", "4", "7"]) await tap(page, digit);
    await tap(page, "Use it");
    expect(await text(page, ".value strong")).toBe("1047");
    expect(await text(page, ".asked strong")).toBe("TOP");
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);

test(
  "what was copied at the stair comes into the sheet of the same telephone, differences shown first",
  async () => {
    const { context, page, faults } = await opened();
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await page.getByLabel("Job").fill(inventedJob.job);
    await tap(page, "Start");
    // The demo's first tread has 36 3/4 at the back, and these beside it. By hand: 36 7/8 - 36 3/4 = 1/8.
    await read(page, 10, 36.875, 36.625, 38.1875, 37.875);
    await tap(page, "List: all readings");
    await tap(page, "Copy readings");
    await page.getByText("Copied.").waitFor();
    await page.goto(address(""));
    await page.waitForSelector("html[data-ready=yes]");
    await tap(page, "Open …");
    await tap(page, "Take in readings …");
    const dialog = page.locator("dialog.taking-in");
    await dialog.getByRole("textbox", { name: "Readings as text" }).focus();
    await page.keyboard.press("ControlOrMeta+V");
    await dialog.getByRole("table").waitFor();
    const cells = await dialog.locator("tbody tr").first().locator(":scope > *").allInnerTexts();
    expect(cells.map((cell) => cell.replaceAll("\u00a0", " ").trim())).toEqual(["tread 1", "back", "36 3/4", "36 7/8", "1/8 longer"]);
    expect(await dialog.locator("tbody tr").count()).toBe(1);
    await dialog.getByRole("button", { name: "Take in 1 reading" }).tap();
    await page.locator("#status", { hasText: "Took 1 reading into Fit" }).waitFor();
    expect(await value(page, "Fit", "C9")).toBe(36.875);
    expect(faults).toEqual([]);
    await context.close();
  },
  browserTime,
);
