import { STAIR_PROBLEMS } from "./stair-problems";

/** Wording of stairs and readings that give no sizes to order. */
export const ORDER_PROBLEMS = {
  ...STAIR_PROBLEMS,
  "no-total-rise": { cell: "#VALUE!", says: "total rise: is missing, empty or 0; give total rise with risers or max rise" },
  "no-run": { cell: "#VALUE!", says: "run: is missing, empty or 0; give run, total run or available run" },
  "no-width": { cell: "#VALUE!", says: "width: is missing, empty or 0; give width, skirt to skirt, or a table of readings" },
  "reading-fits-no-piece": {
    cell: "#VALUE!",
    says: "readings: step {step}: readings do not make a piece; TREADFIT of the same readings says why",
  },
  "tread-thicker-than-rise": {
    cell: "#VALUE!",
    says: "tread thickness: {thickness} leaves no riser under a rise of {rise}; give a thinner tread",
  },
  "lap-over-tread": { cell: "#VALUE!", says: "lap: {lap} is more than the tread is thick, {thickness}" },
} as const;
