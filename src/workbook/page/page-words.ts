import { mergeLocales } from "@univerjs/core";
import choice from "@univerjs/data-validation/locale/en-US";
import find from "@univerjs/find-replace/locale/en-US";
import sheet from "@univerjs/preset-sheets-core/locales/en-US";
import sheetChoice from "@univerjs/sheets-data-validation/locale/en-US";
import list from "@univerjs/sheets-data-validation-ui/locale/en-US";
import sort from "@univerjs/sheets-sort-ui/locale/en-US";

const LIST = "sheets-data-validation-ui";
const NOT_A_CHOICE = { title: "Not one of the choices" };
const FIND = "find-replace";
/** Nothing is replaced: both ways of opening it find. */
const FOUND = {
  toolbar: "Find (Ctrl+F)",
  shortcut: { ...find[FIND].shortcut, "open-find-dialog": "Find", "open-replace-dialog": "Find", panel: "Find" },
  dialog: { ...find[FIND].dialog, "find-placeholder": "Find in all sheets", "no-result": "Not found" },
};
const SORT = "sheets-sort-ui";
const SORTED = { sort: "Sort", "sort-asc-cur": "Up: 1 to 9, A to Z", "sort-desc-cur": "Down: 9 to 1, Z to A" };

/** The engine's words in the page, and ours where its own do not say what is meant. */
export const pageWords = mergeLocales(sheet, choice, sheetChoice, list, find, sort, {
  [LIST]: { ...list[LIST], alert: { ...list[LIST].alert, ...NOT_A_CHOICE }, error: NOT_A_CHOICE },
  [FIND]: { ...find[FIND], ...FOUND },
  [SORT]: { ...sort[SORT], general: { ...sort[SORT].general, ...SORTED } },
});
