import { mergeLocales } from "@univerjs/core";
import choice from "@univerjs/data-validation/locale/en-US";
import find from "@univerjs/find-replace/locale/en-US";
import sheet from "@univerjs/preset-sheets-core/locales/en-US";
import sheetChoice from "@univerjs/sheets-data-validation/locale/en-US";
import list from "@univerjs/sheets-data-validation-ui/locale/en-US";
import filterSteps from "@univerjs/sheets-filter/locale/en-US";
import filter from "@univerjs/sheets-filter-ui/locale/en-US";
import sort from "@univerjs/sheets-sort-ui/locale/en-US";
import { BORDERS, FILTERED, LET_ARGUMENTS, MERGED, NOT_FILTERED, PARTLY_REPLACED, PROGRESS, TEXT_NUMBER } from "./missing-words";

const LIST = "sheets-data-validation-ui";
const NOT_A_CHOICE = { title: "Not one of the choices" };
const FIND = "find-replace";
/** Nothing is replaced: both ways of opening it find. */
const FOUND = {
  toolbar: "Find (Ctrl+F)",
  shortcut: { ...find[FIND].shortcut, "open-find-dialog": "Find", "open-replace-dialog": "Find", panel: "Find" },
  replace: { ...find[FIND].replace, "partial-success": PARTLY_REPLACED },
  dialog: { ...find[FIND].dialog, "find-placeholder": "Find in all sheets", "no-result": "Not found" },
};
const SORT = "sheets-sort-ui";
const SORTED = { sort: "Sort", "sort-asc-cur": "Up: 1 to 9, A to Z", "sort-desc-cur": "Down: 9 to 1, Z to A" };
const FILTER = "sheets-filter-ui";
const SHOWN_ROWS = {
  toolbar: {
    "smart-toggle-filter-tooltip": "Filter (Ctrl+Shift+L)",
    "clear-filter-criteria": "Show all rows",
    "re-calc-filter-conditions": "Apply again",
  },
  shortcut: { "smart-toggle-filter": "Filter" },
  permission: { filterErr: NOT_FILTERED },
  panel: {
    ...filter[FILTER].panel,
    confirm: "Show these",
    "clear-filter": "Show all rows",
    "search-placeholder": "Find among them",
    "filter-only": "Only this",
  },
};

const FORMULA = "sheets-formula";
const { functionList } = sheet[FORMULA];
const LET = { ...functionList.LET, functionParameter: { ...functionList.LET.functionParameter, ...LET_ARGUMENTS } };
const UI = "sheets-ui";
const shownByUi = {
  borderLine: { ...sheet[UI].borderLine, ...BORDERS },
  merge: { ...sheet[UI].merge, confirm: MERGED },
  filter: { ...sheet[UI].filter, confirm: FILTERED },
  info: { ...sheet[UI].info, ...TEXT_NUMBER },
};

/** The engine's words in the page, and ours where its own do not say what is meant. */
export const pageWords = mergeLocales(sheet, choice, sheetChoice, list, find, filterSteps, filter, sort, {
  [FORMULA]: { ...sheet[FORMULA], progress: PROGRESS, functionList: { ...functionList, LET } },
  [UI]: { ...sheet[UI], ...shownByUi },
  [LIST]: { ...list[LIST], alert: { ...list[LIST].alert, ...NOT_A_CHOICE }, error: NOT_A_CHOICE },
  [FIND]: { ...find[FIND], ...FOUND },
  [FILTER]: { ...filter[FILTER], ...SHOWN_ROWS },
  treadsheet: { explainCell: "Explain this cell" },
  [SORT]: { ...sort[SORT], general: { ...sort[SORT].general, ...SORTED } },
});
