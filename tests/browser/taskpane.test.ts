import { version } from "../../package.json";
import { catalogue } from "../../src/functions/catalogue";
import { CAUTION } from "../../src/functions/caution";
import { readyFileName, readyWorkbooks } from "../../src/sheets/ready-workbooks";
import { editionScript } from "../host/edition-2020";
import { functionsShown } from "./functions-shown";
import { openedPages, type Opened } from "./opened-page";
import { seriousFaults } from "./serious-faults";

const browserTime = 400_000;
// Width of an Office task pane as it opens, in pixels.
const paneSize = { width: 320, height: 700 };
// WCAG 2.2, 1.4.3 Contrast (Minimum).
const leastContrast = 4.5;

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

test(
  "the pane opens outside Excel with its title, version, caution and every function, and asks nobody else for anything",
  async () => {
    const { page, faults } = await pages.open("taskpane.html", { viewport: paneSize });
    await page.waitForSelector("h1");
    expect(await page.title()).toBe("Treadsheet");
    expect(await page.textContent("h1")).toBe("Treadsheet");
    expect(await page.textContent(".foot .quiet")).toMatch(new RegExp(`^Version ${version.replaceAll(".", "\\.")} · outside Excel`));
    // Once, at the foot.
    expect(await page.getByText(CAUTION, { exact: true }).allTextContents()).toEqual([CAUTION]);
    await functionsShown(page);
    // Notation serves every step and is none: it comes last.
    const steps = [...new Set(catalogue.map(({ group }) => group).filter((group) => group !== "Notation")), "Notation"];
    const shown = await page.locator(".function > summary > code").allTextContents();
    expect(shown.map((formula) => formula.replace(/\(.*/s, ""))).toEqual(
      steps.flatMap((step) =>
        catalogue.filter(({ group }) => group === step).map(({ id }) => `=STAIR.${id}`),
      ),
    );
    expect(await page.locator(".group > summary").allTextContents()).toEqual(steps);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "a request to anyone else would be noticed",
  async () => {
    const { page, faults } = await pages.open("taskpane.html", { viewport: paneSize });
    const noticed = page.waitForEvent("console");
    await page.evaluate(() => {
      document.body.append(Object.assign(document.createElement("img"), { src: "https://elsewhere.example/picture.png" }));
    });
    await noticed;
    expect(faults.join()).toContain("elsewhere.example");
  },
  browserTime,
);

test(
  "nothing in the pane is wider than the pane, with every part open",
  async () => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize });
    await page.locator("#pane").getByRole("tab", { name: "Job" }).waitFor();
    for (const tab of ["Job", "Functions", "Sheets", "Mend", "About"]) {
      await page.locator("#pane").getByRole("tab", { name: tab }).click();
      const width = await page.evaluate(() => {
        for (const part of document.querySelectorAll("details")) part.open = true;
        return document.documentElement.scrollWidth;
      });
      expect(width).toBeLessThanOrEqual(paneSize.width);
    }
  },
  browserTime,
);

test(
  "everything in the pane is reached by keyboard: the tabs by arrows, the parts by Tab and Enter",
  async () => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize });
    await page.locator("#pane").getByRole("tab", { name: "Job" }).waitFor();
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? "");
    await page.keyboard.press("Tab");
    expect(await focused()).toBe("Job");
    for (const [key, tab] of [
      ["ArrowRight", "Functions"],
      ["End", "About"],
      ["ArrowRight", "Job"],
      ["ArrowLeft", "About"],
      ["Home", "Job"],
      ["ArrowRight", "Functions"],
    ] as const) {
      await page.keyboard.press(key);
      expect(await focused()).toBe(tab);
      expect(await page.locator('[role="tabpanel"]:visible').getAttribute("id")).toBe(`part-${tab.toLowerCase()}`);
    }
    // The field that finds functions comes next, then the first step of the job.
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    const isOpen = () => page.evaluate(() => (document.activeElement?.parentElement as HTMLDetailsElement).open);
    expect(await isOpen()).toBe(true);
    await page.keyboard.press("Enter");
    expect(await isOpen()).toBe(false);
  },
  browserTime,
);

// What is not of color is the same in both.
test.each([["light", "all"], ["dark", "color"]] as const)(
  "in %s no part of the pane has a serious fault for an accessibility checker, by %s of its rules, with every function open",
  async (colorScheme, rules) => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize, colorScheme });
    await page.locator("#pane").getByRole("tab", { name: "Job" }).waitFor();
    for (const tab of ["Job", "Functions", "Sheets", "Mend", "About"]) {
      await page.locator("#pane").getByRole("tab", { name: tab }).click();
      await page.evaluate(() => {
        for (const part of document.querySelectorAll("details")) part.open = true;
      });
      expect([tab, await seriousFaults(page, "body", rules)]).toEqual([tab, []]);
    }
  },
  browserTime,
);

test(
  "an accessibility checker would find a planted fault",
  async () => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize });
    await page.locator("#pane").getByRole("tab", { name: "Job" }).waitFor();
    await page.evaluate(() => document.querySelector("#pane")?.append(document.createElement("button")));
    expect(await seriousFaults(page)).toEqual([expect.stringMatching(/^button-name: /)]);
    await page.evaluate(() => {
      const says = document.querySelector<HTMLElement>(".foot .caution");
      // Light grey on the pane's near white, by the definition of WCAG 2.2 some 1.3 to 1.
      if (says !== null) says.style.color = "rgb(220, 219, 217)";
    });
    expect(await seriousFaults(page, "#pane", "color")).toEqual([expect.stringMatching(/^color-contrast: /)]);
  },
  browserTime,
);

test.each(["light", "dark"] as const)(
  "in %s every text stands out from its ground",
  async (colorScheme) => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize, colorScheme });
    await functionsShown(page);
    const contrasts = await page.evaluate(() => {
      const part = (value: number): number => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4);
      // Relative luminance and contrast ratio as WCAG 2.2 defines them.
      const luminance = (color: string): number => {
        const [red = 0, green = 0, blue = 0] = (color.match(/[\d.]+/g) ?? []).map((value) => part(Number(value) / 255));
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
      };
      const ground = luminance(getComputedStyle(document.body).backgroundColor);
      return ["h1", ".quiet", ".caution", ".group > summary", ".function > summary > code", ".function > summary > .says"].map(
        (selector) => {
          const text = luminance(getComputedStyle(document.querySelector(selector) as Element).color);
          return { selector, contrast: (Math.max(text, ground) + 0.05) / (Math.min(text, ground) + 0.05), ground };
        },
      );
    });
    expect(contrasts.filter(({ contrast }) => contrast < leastContrast)).toEqual([]);
    expect((contrasts[0]?.ground ?? 0) > 0.5).toBe(colorScheme === "light");
  },
  browserTime,
);

test(
  "the pane still shows its functions when the platform's script is out of reach",
  async () => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize, platform: "away" });
    await functionsShown(page);
    expect(await page.locator(".function").count()).toBe(catalogue.length);
  },
  browserTime,
);

/**
 * Says what Office says of itself in Excel: onReady with the host, its theme and which requirement sets it has, by the types of Office.js.
 */
const inExcel = (isDarkTheme: boolean, newest: number): { readonly script: string } => ({
  script: `
    globalThis.CustomFunctions = { associate: () => undefined, Error: class extends Error {}, ErrorCode: {} };
    globalThis.Office = {
      HostType: { Excel: "Excel" },
      PlatformType: { PC: "PC", OfficeOnline: "OfficeOnline", Mac: "Mac" },
      context: {
        platform: "PC",
        officeTheme: { isDarkTheme: ${isDarkTheme} },
        requirements: { isSetSupported: (set, version) => set === "ExcelApi" && Number(version.split(".")[1]) <= ${newest} },
      },
      onReady: (ready) => Promise.resolve({ host: "Excel" }).then(ready),
    };`,
});

test.each([
  ["dark", "light"],
  ["light", "dark"],
] as const)("a %s theme of Excel goes before a system that is %s", async (theme, colorScheme) => {
  const { page } = await pages.open("taskpane.html", { viewport: paneSize, colorScheme, platform: inExcel(theme === "dark", 7) });
  await page.locator(".foot", { hasText: "in Excel" }).waitFor();
  const ground = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  // The two grounds of pane.css.
  expect(ground).toBe(theme === "dark" ? "rgb(32, 29, 26)" : "rgb(251, 250, 248)");
}, browserTime);

test(
  "an Excel too old for a part is told so in words, and keeps the list, its examples worked again and the rest",
  async () => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize, platform: inExcel(false, 7) });
    await page.getByText("This Excel is too old for it: update Excel to one with ExcelApi 1.8.").waitFor();
    await functionsShown(page);
    expect(await page.locator(".function").count()).toBe(catalogue.length);
    expect(await page.getByRole("button", { name: /^Insert/ }).count()).toBe(0);
    await page.locator("#pane").getByRole("tab", { name: "Sheets" }).click();
    expect(await page.getByRole("button", { name: /^Add/ }).count()).toBe(0);
    // The browser saves the files that lie beside the pane.
    const links = page.locator(".ways a");
    expect(await links.evaluateAll((all) => all.map((one) => [one.getAttribute("href"), one.getAttribute("target")]))).toEqual(
      readyWorkbooks.flatMap((ready) => [readyFileName(ready, "formulas"), readyFileName(ready, "values")])
        .map((name) => [`workbooks/${name}`, "_blank"]),
    );
    const { status, type } = await page.evaluate(async () => {
      const answer = await fetch(document.querySelector<HTMLAnchorElement>(".ways a")?.href ?? "");
      return { status: answer.status, type: answer.headers.get("Content-Type") };
    });
    // ECMA-376-1, 12.3.2, and the type that is registered for it.
    expect([status, type]).toEqual([200, "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(paneSize.width);
    expect(await seriousFaults(page, "#pane")).toEqual([]);
  },
  browserTime,
);

test(
  "About gives the version, every caution, the codes with how well each is founded, and the licences",
  async () => {
    const { page } = await pages.open("taskpane.html", { viewport: paneSize });
    await page.locator("#pane").getByRole("tab", { name: "About" }).click();
    const about = page.locator("#part-about");
    const text = (await about.textContent()) ?? "";
    expect(text).toContain(`Treadsheet ${version}`);
    for (const caution of new Set([CAUTION, ...catalogue.map((declaration) => declaration.caution ?? CAUTION)]))
      expect(caution === CAUTION ? await page.locator(".foot").textContent() : text).toContain(caution);
    // The count of the example of CODES.
    expect(text).toContain("irc-2021 International Residential Code, 2021: 48 of 48");
    expect(text).toContain("under the MIT licence");
    const links = await about.locator("a").evaluateAll((all) => all.map((one) => (one as HTMLAnchorElement).href));
    expect(links.map((address) => new URL(address).pathname)).toEqual([
      "/reference.html",
      "/codes.html",
      "/install.html",
      "/changelog.html",
      "/third-party-notices.txt",
    ]);
    for (const address of links) expect((await page.request.get(address)).status()).toBe(200);
    expect(text).toContain("decimal.js 10.6.0: MIT");
  },
  browserTime,
);

test(
  "a browser that knows ES2020 and nothing later shows the whole pane, its examples worked as by any other",
  async () => {
    const says: (string | null)[] = [];
    for (const script of ["", editionScript()]) {
      const context = await pages.context({ viewport: paneSize });
      await context.addInitScript(script);
      const { page, faults } = await pages.open("taskpane.html", { context, platform: inExcel(false, 7) });
      await page.locator(".foot", { hasText: "in Excel" }).waitFor();
      const isLater = await page.evaluate(() => ["at" in Array.prototype, "hasOwn" in Object, "replaceAll" in String.prototype]);
      expect(isLater).toEqual(Array(3).fill(script === ""));
      await functionsShown(page);
      expect(await page.locator(".function").count()).toBe(catalogue.length);
      await page.locator("#pane").getByRole("tab", { name: "About" }).click();
      says.push(await page.locator(".examples-say").textContent());
      expect(faults).toEqual([]);
    }
    expect(says[0]).toMatch(/examples/);
    expect(says[1]).toBe(says[0]);
  },
  browserTime,
);
