import { standIn } from "../../workbook/stand-in";

// What Excel gives functions.js, for a page without Excel: loaded before it.
const built = standIn();

Object.assign(globalThis, { CustomFunctions: built.CustomFunctions, treadsheetBuilt: built });
