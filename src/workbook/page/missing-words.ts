/**
 * Words that the engine shows and has none for: in their place it would show the names it asks for them by, such as
 * sheets-formula.progress.done. Every name it can ask for has a text: tests/workbook/page-words.test.ts.
 */
export const PROGRESS = {
  "analyzing": "Reading the formulas",
  "calculating": "Calculating",
  "array-analysis": "Reading the spills",
  "array-calculation": "Calculating the spills",
  "done": "Calculated",
};

/** The engine has the arguments of its other LET. */
export const LET_ARGUMENTS = {
  name1: { name: "name1", detail: "The first name: it begins with a letter and is no cell." },
  nameValue1: { name: "value1", detail: "What the first name stands for." },
  calculationOrName2: { name: "result_or_name2", detail: "What to work out with the names; or a second name, and then its value." },
  nameValue2: { name: "value2", detail: "What the second name stands for." },
  calculationOrName3: { name: "result_or_name3", detail: "What to work out with the names; or a third name, and then its value." },
};

export const BORDERS = {
  borderTop: "Line above",
  borderBottom: "Line below",
  borderLeft: "Line on the left",
  borderRight: "Line on the right",
  borderNone: "No lines",
  borderAll: "All lines",
  borderOutside: "Lines around",
  borderInside: "Lines inside",
  borderHorizontal: "Level lines inside",
  borderVertical: "Upright lines inside",
  borderColor: "Colour of the lines",
  borderSize: "Thickness of the lines",
  borderType: "Kind of line",
  borderTlbr: "Diagonal from top left",
  borderTlbcTlmr: "Two diagonals from top left",
  borderTlbrTlbcTlmr: "Three diagonals from top left",
  borderBlTr: "Diagonal from bottom left",
  borderMltrBctr: "Two diagonals to top right",
};

export const MERGED = { warning: "Merged cells", dismantleMergeCellWarning: "Some merged cells will be parted. Go on?" };
export const FILTERED = {
  error: "Rows are hidden by a filter", notAllowedToInsertRange: "Cells cannot move there while rows are hidden: show all rows first.",
};
export const TEXT_NUMBER = { error: "Number as text", forceStringInfo: "This number is stored as text." };
export const PARTLY_REPLACED = "{0} replaced, {1} not";

export const NOT_FILTERED = "These cells cannot be filtered.";
