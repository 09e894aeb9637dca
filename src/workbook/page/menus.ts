import type { Injector } from "@univerjs/core";
import { IMenuManagerService, type MenuSchemaType, RibbonDataGroup, RibbonStartGroup } from "@univerjs/preset-sheets-core";

/** What the engine offers that is not stored with a workbook: protecting ranges and sheets, and checks of entries other than lists. */
const NOT_STORED = [
  "sheet.contextMenu.permission",
  "sheet.command.add-range-protection-from-toolbar",
  "sheet.command.add-range-protection-from-sheet-bar",
  "sheet.command.view-sheet-permission-from-sheet-bar",
  "sheet.command.delete-worksheet-protection-from-sheet-bar",
  "sheet.command.change-sheet-protection-from-sheet-bar",
  "sheet.menu.data-validation",
];

/** Ways to sort beside the two of sorting.ts, which find the table themselves. */
const MORE_SORTS = ["asc-ext", "desc-ext", "custom"].flatMap((way) =>
  ["", "-ctx"].map((menu) => `sheet.command.sort-range-${way}${menu}`),
);

/** The engine's toolbar and menus without what would be gone when the page is opened again, and without a second way to do one thing. */
export const menus: Readonly<Record<string, { readonly hidden: true }>> = Object.fromEntries(
  [...NOT_STORED, ...MORE_SORTS].map((id) => [id, { hidden: true }]),
);

type Menu = Readonly<Record<string, MenuSchemaType>>;

/** Find, Sort and Filter, after the buttons that undo. */
const WITHIN_REACH: Readonly<Record<string, number>> = {
  "ui.operation.open-find-dialog": 10, "sheet.menu.sheets-sort": 11, "sheet.command.smart-toggle-filter": 12,
};

/**
 * Has Find, Sort and Filter among the first buttons; the engine puts them with the last ones, which a toolbar of common width folds away.
 */
export const findWithinReach = (injector: Injector): void => {
  const menu = injector.get(IMenuManagerService);
  const merge = menu.mergeMenu.bind(menu);
  menu.mergeMenu = (source, target) => {
    const { [RibbonDataGroup.ORGANIZATION]: late, ...rest } = source as Menu;
    const first: Record<string, MenuSchemaType> = {};
    const last: Record<string, MenuSchemaType> = {};
    for (const [id, item] of Object.entries((late ?? {}) as Menu)) {
      const order = WITHIN_REACH[id];
      if (order === undefined) last[id] = item;
      else first[id] = { ...item, order };
    }
    if (Object.keys(first).length === 0) merge(source, target);
    else merge({ ...rest, [RibbonStartGroup.HISTORY]: first, [RibbonDataGroup.ORGANIZATION]: last }, target);
  };
};
