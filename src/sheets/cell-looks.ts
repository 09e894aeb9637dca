import type { OwnLook } from "./own-look";
import type { StyleName } from "./sheet-data";

export type { StyleName } from "./sheet-data";

const QUIET = "#6b6157";
const BAND = "#f4efe7";
const under = (ink: string): OwnLook => ({ borders: { bottom: { line: "thin", ink } } });
const LINE = under("#c9bfb1");
const INPUT: OwnLook = { ink: "#123f7a", fill: "#fff6d6", ...under("#e6d48f") };
const HEADING: OwnLook = { bold: true, size: 9, ink: QUIET, fill: BAND, wrap: true, ...LINE };

/**
 * What a style name in the workbook data stands for. Colours are written #rrggbb in lower case. Every look differs from every other, since
 * a cell's style name is found again by its look.
 */
export const cellLooks = {
  title: { bold: true, size: 15, ink: "#3b2a1a" },
  says: { size: 10, ink: QUIET, wrap: true },
  heading: HEADING,
  headingRight: { ...HEADING, across: "right" },
  input: { ...INPUT, across: "right" },
  inputText: { ...INPUT, across: "left" },
  label: { bold: true },
  total: { bold: true, fill: "#f7f3ec", ...LINE },
  caution: { size: 10, ink: "#8a2b12", wrap: true },
  name: { size: 9, ink: QUIET, fill: BAND, across: "center" },
  answer: { bold: true, size: 14, fill: BAND, across: "center" },
  answerText: { bold: true, size: 11, fill: BAND, across: "center", wrap: true },
  answerUnit: { size: 9, ink: QUIET, fill: BAND, across: "center", ...LINE },
  strip: { fill: BAND },
  part: { bold: true, size: 11, ink: "#7a4a1e", ...under("#7a4a1e") },
  right: { across: "right" },
  middle: { across: "center" },
  link: { bold: true, ink: "#7a4a1e" },
  // A line to write on; on paper, too, where nothing is typed on it.
  byHand: { across: "left", ...under("#000000") },
} as const satisfies Record<StyleName, OwnLook>;

/** How verdicts look, by the mark they begin with. Each has a mark and a word, so that colour is never alone. */
export const VERDICT_LOOKS: readonly { readonly mark: string; readonly look: OwnLook }[] = [
  { mark: "✗", look: { bold: true, ink: "#8c1d18", fill: "#fbe3df" } },
  { mark: "○", look: { ink: "#7a5200" } },
  { mark: "✓", look: { ink: "#1f5a2d", fill: "#e4f1e3" } },
  { mark: "–", look: { ink: "#8a8178" } },
];

/** The row of a table that adds the others up. */
export const TOTAL_LOOK: OwnLook = { bold: true, fill: "#e9f0e6" };

export const isStyleName = (name: unknown): name is StyleName => typeof name === "string" && Object.keys(cellLooks).includes(name);
