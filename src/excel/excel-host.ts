import type { PaneHost } from "../pane/host";
import { excelCells } from "./cells";
import { insertedTape } from "./inserted-tape";
import { excelMending } from "./mending";
import { EXCEL_API, type OfficePart, versionNeeded } from "./office-calls";
import { excelPictures } from "./pictures";
import { excelSelection, type PaneVisibility } from "./selection";
import { excelSheets } from "./sheets";
import { excelSpills, noSpills } from "./spills";

/** Whether the host has a requirement set in a version. */
export type Supports = (set: string, version: string) => boolean;

const CELLS: readonly OfficePart[] = ["run", "cells", "selection", "shown-tape", "inserted-tape"];
const SHEETS: readonly OfficePart[] = [...CELLS, "sheets", "sheet-looks", "sheet-settings", "sheet-rules"];
const PICTURES: readonly OfficePart[] = [...CELLS, "pictures"];
const MENDING: readonly OfficePart[] = [...CELLS, "mending"];

const ALWAYS_SEEN: PaneVisibility = { isVisible: () => true, onChange: () => undefined };

/** The pane's host in Excel, as far as this Excel has what each part calls; what it lacks is stated in words. */
export const excelHost = (
  supports: Supports, visibility = ALWAYS_SEEN, later?: (go: () => void) => void,
): Pick<PaneHost, "cells" | "sheets" | "mending" | "drawings" | "lacks"> => {
  const lacks: string[] = [];
  const has = (parts: readonly OfficePart[], without: string): boolean => {
    const version = versionNeeded(...parts);
    if (version === undefined || supports(EXCEL_API, version)) return true;
    lacks.push(`${without} This Excel is too old for it: update Excel to one with ${EXCEL_API} ${version}.`);
    return false;
  };
  if (!has(CELLS, "Inserting functions, ready sheets, Why? and Mend are switched off; the functions themselves work in cells."))
    return { lacks };
  const spills = has(
    ["spills"],
    "Whether cells belong to a spilled table cannot be seen before an insert, and Why? cannot tell for spilled cells.",
  )
    ? excelSpills
    : noSpills;
  const quietly = (part: OfficePart): boolean => {
    const version = versionNeeded(part);
    return version === undefined || supports(EXCEL_API, version);
  };
  // Without them the same is set block by block.
  const hasAreas = quietly("areas");
  const hasUndoGroups = quietly("undo-group");
  return {
    lacks,
    cells: { ...excelCells, ...excelSelection(visibility, later), ...insertedTape(hasAreas, hasUndoGroups), ...spills },
    ...(has(SHEETS, "Adding ready sheets is switched off.") ? { sheets: excelSheets(hasAreas, hasUndoGroups) } : {}),
    ...(has(MENDING, "Mend is switched off.") ? { mending: excelMending(quietly("error-cells")) } : {}),
    ...(has(PICTURES, "Drawings are not placed as pictures.") ? { drawings: excelPictures } : {}),
  };
};
