import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";

const checker = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

interface Checked {
  readonly violations: readonly { readonly id: string; readonly impact: string; readonly nodes: readonly { readonly html: string }[] }[];
}

/** Rules of the checker that a color scheme bears on. */
const OF_COLOR: readonly string[] = ["color-contrast", "link-in-text-block"];

/**
 * What an accessibility checker finds serious or critical in a part of the page, by all its rules or those of color alone: the rule, and
 * where it is broken.
 */
export const seriousFaults = async (page: Page, part = "body", rules: "all" | "color" = "all"): Promise<readonly string[]> => {
  // Evaluated, not added as a script, which the page's policy would refuse.
  await page.evaluate(checker);
  const { violations } = (await page.evaluate(
    ([selector, options]) =>
      (globalThis as unknown as { readonly axe: { readonly run: (where: string, how: object) => Promise<unknown> } }).axe.run(
        selector,
        options,
      ),
    [part, { resultTypes: ["violations"], ...(rules === "color" ? { runOnly: OF_COLOR } : {}) }] as const,
  )) as Checked;
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
};
