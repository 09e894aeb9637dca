import { catalogue } from "../../src/functions/catalogue";
import { functionsShown } from "../browser/functions-shown";
import { openedPages, type Opened } from "../browser/opened-page";
import { hostedFolder, type HostedFolder } from "./hosted-folder";

const browserTime = 400_000;
// A telephone held upright, in pixels.
const narrow = { width: 360, height: 640 };

let hosted: HostedFolder;
let pages: Opened;

beforeAll(async () => {
  hosted = hostedFolder("https://example.org/stairs");
  pages = await openedPages(hosted.folder);
}, browserTime);

afterAll(async () => {
  await pages?.close();
  hosted?.remove();
}, browserTime);

test(
  "the pane of a hosted folder shows every function, under the names with a hash, and asks nobody else for anything",
  async () => {
    const { page, faults } = await pages.open("taskpane.html");
    await functionsShown(page);
    expect(await page.locator(".function").count()).toBe(catalogue.length);
    expect(faults).toEqual([]);
  },
  browserTime,
);

test(
  "every other page of a hosted folder opens under its policy, in our style, without a fault and no wider than a telephone",
  async () => {
    // The pane is opened above, the live sheet by on-site.test.ts.
    const names = hosted.names.filter((name) => name.endsWith(".html") && name !== "taskpane.html" && name !== "index.html");
    expect(names).toEqual(expect.arrayContaining(["install.html", "offline.html", "reference.html"]));
    const seen: unknown[] = [];
    for (const name of names) {
      const { page, faults } = await pages.open(name, { viewport: narrow });
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      const styled = await page.evaluate(
        () => [...document.styleSheets].every((sheet) => sheet.cssRules.length > 0) && document.styleSheets.length > 0,
      );
      if (faults.length > 0 || width > narrow.width || !styled) seen.push({ name, faults, width, styled });
      await page.close();
    }
    expect(seen).toEqual([]);
  },
  browserTime,
);

test(
  "who opens install.html reads how to put the add-in into Excel",
  async () => {
    const { page } = await pages.open("install.html");
    expect(await page.textContent("h1")).toBe("How to put Treadsheet into Excel");
    await page.click('a[href="install-mac.html"]');
    expect(await page.textContent("h1")).toBe("The Mac folder");
  },
  browserTime,
);
