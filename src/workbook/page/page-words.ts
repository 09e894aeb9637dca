import { mergeLocales } from "@univerjs/core";
import choice from "@univerjs/data-validation/locale/en-US";
import sheet from "@univerjs/preset-sheets-core/locales/en-US";
import sheetChoice from "@univerjs/sheets-data-validation/locale/en-US";
import list from "@univerjs/sheets-data-validation-ui/locale/en-US";

const LIST = "sheets-data-validation-ui";
const NOT_A_CHOICE = { title: "Not one of the choices" };

/** The engine's words in the page, and ours where its own do not say what is meant. */
export const pageWords = mergeLocales(sheet, choice, sheetChoice, list, {
  [LIST]: { ...list[LIST], alert: { ...list[LIST].alert, ...NOT_A_CHOICE }, error: NOT_A_CHOICE },
});
