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

/** The engine's toolbar and menus without what would be gone when the page is opened again. */
export const menus: Readonly<Record<string, { readonly hidden: true }>> = Object.fromEntries(
  NOT_STORED.map((id) => [id, { hidden: true }]),
);
