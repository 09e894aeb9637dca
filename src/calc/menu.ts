import { configuration, node, text, value, within } from "./configuration-xml";

/** What the menu calls, a service of menu.py. */
export const MENU_SERVICE = "treadsheet.Menu";

const CALC_ALONE = "com.sun.star.sheet.SpreadsheetDocument";

/** What can be chosen, as menu.py knows it, and as it stands in the menu. */
const ENTRIES = [
  ["table", "Insert as table"],
  ["fit", "Fit the tables"],
  ["why", "Why?"],
  ["mend", "Mend"],
  ["copy", "Save a copy for Excel…"],
  ["node", "Where Node is…"],
] as const;

const entry = ([action, title]: (typeof ENTRIES)[number], index: number): string =>
  node(`m${index}`, [
    value("URL", `service:${MENU_SERVICE}?${action}`), text("Title", title), value("Target", "_self"), value("Context", CALC_ALONE),
  ]);

/** The menu Treadsheet, in Calc alone. */
export const menu = (): string =>
  configuration("Addons", [
    within("AddonUI", [
      within("OfficeMenuBar", [
        node("treadsheet.menu", [
          text("Title", "Treadsheet"), value("Context", CALC_ALONE), within("Submenu", ENTRIES.map(entry)),
        ]),
      ]),
    ]),
  ]);
