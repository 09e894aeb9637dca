import type { Page } from "playwright-core";

/** Shows the functions in the pane, which are made when somebody first looks at them. */
export const functionsShown = async (page: Page): Promise<void> => {
  await page.locator("#pane").getByRole("tab", { name: "Functions" }).click();
  await page.locator(".function").first().waitFor({ state: "attached" });
};
