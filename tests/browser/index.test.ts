import { catalogue } from "../../src/functions/catalogue";
import { openedPages, type Opened } from "./opened-page";

const browserTime = 120_000;

let pages: Opened;

beforeAll(async () => {
  pages = await openedPages();
}, browserTime);

afterAll(() => pages?.close(), browserTime);

test(
  "the local page loads every worksheet function without a fault under its strict policy",
  async () => {
    const { page, faults } = await pages.open("");
    await page.waitForSelector("h1");
    expect(await page.locator("li").allTextContents()).toEqual(catalogue.map(({ id }) => `STAIR.${id}`));
    expect(faults).toEqual([]);
  },
  browserTime,
);
