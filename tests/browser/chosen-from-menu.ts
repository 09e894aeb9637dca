import type { Locator } from "playwright-core";

/** For a menu to stand before it is opened again, in milliseconds. */
const MENU_TIME = 5_000;

/** Chooses an entry of a menu. A sheet that is drawn anew meanwhile drops its menu, as any menu goes: then it is opened again. */
export const chosenFromMenu = async (open: () => Promise<void>, entry: Locator): Promise<void> => {
  const isChosen = async (): Promise<boolean> => {
    await open();
    return entry.click({ timeout: MENU_TIME }).then(() => true, () => false);
  };
  while (!(await isChosen()));
};
