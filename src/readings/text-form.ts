import { riserReadings, treadReadings } from "../functions/tables";

/** The first line: what the text is, and which edition of its form. */
export const TITLE = "Treadsheet readings";
export const EDITION = 1;
/** The last line: without it a message that was cut short would end in a shorter reading. */
export const END = "end";

export const HEAD = ["job", "unit", "tape", "taken"] as const;
export type HeadLine = (typeof HEAD)[number];

/** The tables of the text, and of the readings tables of TREADFIT and RISERFIT the lengths that a tape gives. */
export const PARTS = {
  treads: ["run", "back", "front", "diagonal", "secondDiagonal"],
  risers: ["height", "top", "bottom", "diagonal", "secondDiagonal"],
} as const satisfies { treads: readonly (keyof typeof treadReadings.columns)[]; risers: readonly (keyof typeof riserReadings.columns)[] };
export type Part = keyof typeof PARTS;
export const PART_NAMES = ["treads", "risers"] as const satisfies readonly Part[];

export const STEP = "step";
export const KEPT = "kept";
/** In the place of a reading that was not taken: an empty cell is lost where a message makes spaces of tabs. */
export const NOT_TAKEN = "-";
export const YES = "yes";
export const NO = "no";
