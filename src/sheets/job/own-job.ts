import type { Unit } from "../../solver/length/length";
import { TAKEOFF_ITEMS, TAKEOFF_UNITS } from "../../solver/takeoff/items";
import { words } from "../../solver/words";
import type { SheetData } from "../sheet-data";
import type { Filling } from "./filling";
import { JOB } from "./job";
import { jobSheets } from "./job-sheets";

/** What a person is asked before a job of their own: lengths are numbers in the unit. */
export interface AskedJob {
  readonly job: string;
  readonly unit: Unit;
  readonly code: string;
  readonly totalRise: number;
  readonly run: number;
  readonly width: number;
  readonly openEnd: "none" | "left" | "right" | "both";
}

/** The items a shop has hours and prices for, with their units; the figures are the shop's own. */
const items = (unit: Unit): Filling["items"] => [
  ...Object.entries(TAKEOFF_ITEMS).map(
    ([key, { counts }]) => [words(key), "", "", counts === "each" ? "each" : TAKEOFF_UNITS[unit][counts]]
  ),
  ["adhesive", "", "", "each"],
  ["labour", "", "", "hour"],
];

/** The same before anything is known but the unit: a size that is an empty text is a yellow cell still to be typed. */
type Asking = { readonly [Key in keyof AskedJob]: AskedJob[Key] | (AskedJob[Key] extends Unit ? never : "") };

/** What the sheets of one's own job are filled with: what was asked, and not one invented number. */
const ownFilling = ({ job, unit, code, totalRise, run, width, openEnd }: Asking): Filling => ({
  unit, job, code, totalRise, run, width, openEnd,
  customer: "", handrails: "",
  roughRises: [],
  floors: { treadThickness: "", lowerBuildUp: "", upperBuildUp: "" },
  alikeWithin: "",
  sizes: {},
  blanks: [], boards: [], kerf: "", trim: "", keep: "",
  treads: [], risersRead: [],
  balusterWidth: "", railHours: "", beadDiameter: "", cartridge: "",
  items: items(unit),
  terms: ["overhead on cost", "profit of price", "tax on price"].map((label) => [label, ""]), roundUpTo: "", besides: [],
  changes: [], ownPieces: [],
  moves: [], booked: `=${JOB.job}&""`, hoursSpent: "", hoursCost: "", month: "",
  pile: { treadBoards: [], otherBoards: [], sheets: [], terms: {}, sheetTrim: "", grades: [] },
});

/** The linked sheets of a job of one's own. */
export const ownJob = (asked: AskedJob): readonly SheetData[] => jobSheets(ownFilling(asked));

/** The linked sheets of a job before anything is typed. */
export const blankJob = (unit: Unit): readonly SheetData[] =>
  jobSheets(ownFilling({ job: "", unit, code: "", totalRise: "", run: "", width: "", openEnd: "" }));
