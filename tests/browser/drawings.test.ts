import fc from "fast-check";
import type { Page } from "playwright-core";
import { drawnCall } from "../../src/drawing/plans/drawn-call";
import { overlap } from "../drawing/plans/parsed-draft";
import { openedPages, type Opened } from "./opened-page";
import { seriousFaults } from "./serious-faults";
import { goTo, loaded, openedSheet } from "./shown-book";

const browserTime = 400_000;

let pages: Opened;
beforeAll(async () => {
  pages = await openedPages();
}, browserTime);
afterAll(() => pages?.close(), browserTime);

const BOOK = {
  version: 1 as const,
  sheets: [{
    name: "Mine",
    cells: {
      A1: { value: "total rise" }, B1: { value: 98 }, A2: { value: "risers" }, B2: { value: 14 }, A3: { value: "run" }, B3: { value: 9.5 },
      D1: { formula: "=STAIR.LAYOUT(A1:B3)" }, I1: { formula: "=STAIR.STRINGER(B1/B2,B3,B2,11.25)" }, N1: { value: 5 },
    },
  }],
};

test(
  "Drawings follows the table selected, saves it as SVG and prints it",
  async () => {
    const { page, faults } = await openedSheet(pages);
    await loaded(page, BOOK);
    await page.evaluate(() => Object.assign(window, { printed: 0, print: () => Object.assign(window, { printed: 1 }) }));
    const part = page.locator("#part-drawings");
    await page.locator("#pane").getByRole("tab", { name: "Drawings" }).click();
    await goTo(page, "Mine", "E4");
    await part.getByText("The table at Mine E4.").waitFor();
    expect(await part.locator("figcaption").allTextContents()).toEqual(["Stair elevation", "Stringer", "Closed skirt", "Open skirt"]);
    expect(await seriousFaults(page, "#pane")).toEqual([]);
    await goTo(page, "Mine", "J3");
    await part.getByText("The table at Mine J3.").waitFor();
    // By hand: 98 / 14 = 7.
    await part.locator("svg text", { hasText: 'rise 7"' }).waitFor();
    const download = page.waitForEvent("download");
    await part.getByRole("button", { name: "Save SVG" }).click();
    expect((await download).suggestedFilename()).toBe("Mine J3 stringer.svg");
    await part.getByRole("button", { name: "Print", exact: true }).click();
    expect(await page.evaluate(() => (window as unknown as { readonly printed: number }).printed)).toBe(1);
    expect(await page.locator("#tickets svg.draft").count()).toBe(1);
    await goTo(page, "Mine", "N1");
    await part.getByText("Select a cell of a table to see it drawn.").waitFor();
    expect(await part.locator("figure").count()).toBe(0);
    expect(faults).toEqual([]);
  },
  browserTime,
);

type Corner = readonly [number, number];

/** Each text of a drawing with the corners of its box as the browser sets it. */
const boxesIn = (page: Page, svg: string): Promise<readonly { readonly text: string; readonly corners: readonly Corner[] }[]> =>
  page.evaluate((text) => {
    document.body.innerHTML = text;
    return [...document.querySelectorAll("svg text")].map((one) => {
      const drawn = one as SVGTextElement;
      const { x, y, width, height } = drawn.getBBox();
      const matrix = drawn.getScreenCTM() ?? new DOMMatrix();
      const corners = [[x, y], [x + width, y], [x + width, y + height], [x, y + height]].map(([u = 0, v = 0]): Corner => {
        const at = new DOMPoint(u, v).matrixTransform(matrix);
        return [at.x, at.y];
      });
      return { text: drawn.textContent ?? "", corners };
    });
  }, svg);

test(
  "in 200 random drawings no two texts overlap by the boxes that the browser gives them",
  async () => {
    const { page } = await pages.open("reference.html");
    await page.goto("about:blank");
    const turn = fc.constantFrom("quarter left", "half right", "none");
    const random = fc.record({
      kind: fc.constantFrom("LAYOUT", "FLIGHTS", "CUTS", "BALUSTERS", "WINDERS", "MARKS", "RISERMARKS"),
      risers: fc.integer({ min: 2, max: 18 }), turn,
      rise: fc.integer({ min: 48, max: 66 }), run: fc.integer({ min: 64, max: 104 }), length: fc.integer({ min: 30, max: 400 }),
    });
    const callOf = ({ kind, risers, turn: turns, rise, run, length }: (typeof random extends fc.Arbitrary<infer One> ? One : never)) => {
      const stair = [["total rise", (rise * risers) / 8], ["run", run / 8], ["width", 36], ["headroom", 80], ["floor thickness", 11]];
      if (kind === "FLIGHTS") return drawnCall(kind, [stair.slice(0, 3), [["risers", "turn"], [risers, turns], [risers, ""]]]);
      if (kind === "CUTS") {
        const pieces = [["label", "length", "quantity"], ["tread", length / 8, risers]];
        return drawnCall(kind, [pieces, [["length", "price"], [60, 9], [96, 12]]]);
      }
      const [open, out] = [turns === "none" ? "both" : turns.endsWith("left") ? "left" : "right", (rise - 57) / 16];
      const steps = Array.from({ length: 1 + (risers % 5) }, (_, place) =>
        [place + 1, (kind === "MARKS" ? run : rise) / 8, 36 + place / 16, 36 + out, out === 0 ? "square" : out, place - 2]);
      if (kind === "MARKS") return drawnCall(kind, [[["step", "run", "back", "front", "left offset", "left lean"], ...steps], 1.25, open]);
      if (kind === "RISERMARKS") {
        const heads = ["step", "height", "top", "bottom", "left offset", "left flare"];
        return drawnCall(kind, [[heads, ...steps], open, 0.25, 0.75, 0, 0, 0.75, 0.25, 0, risers]);
      }
      if (kind === "BALUSTERS") return drawnCall(kind, [run, rise / 32]);
      if (kind === "WINDERS") return drawnCall(kind, [2 + (risers % 5), 90, 6, run / 2, 12, turns === "none" ? "round" : "straight"]);
      return drawnCall(kind, [[...stair, ["risers", risers]]]);
    };
    for (const one of fc.sample(random, { numRuns: 200, seed: 17 })) {
      const drawn = callOf(one);
      if (typeof drawn === "string") throw new Error(`${JSON.stringify(one)}: ${drawn}`);
      for (const { svg } of drawn) {
        const boxes = await boxesIn(page, svg);
        const over = boxes.flatMap((box, place) => boxes.slice(place + 1).filter(({ corners }) => overlap(box.corners, corners))
          .map((other) => `${box.text} | ${other.text}`));
        expect([one, over]).toEqual([one, []]);
      }
    }
  },
  browserTime,
);
