import { TALLY_PROBLEMS } from "./tally-problems";

/** Wording of what is wrong with a glue-up, for each function that makes one. */
export const GLUE_PROBLEMS = {
  ...TALLY_PROBLEMS,
  "panel-without-width": { cell: "#VALUE!", says: "width: panel {panel} has none; give its finished width" },
  "panel-without-thickness": {
    cell: "#VALUE!",
    says: "thickness: panel {panel} has none, and the boards are of several, {there}; give its finished thickness",
  },
  "panel-without-grade": {
    cell: "#VALUE!",
    says: "grade: panel {panel} has none, and the boards are of several, {there}; give one, or write any under also from",
  },
  "panel-without-species": {
    cell: "#VALUE!",
    says: "species: panel {panel} has none, and the boards are of several, {there}; give the panel's",
  },
  "no-board-of-grade": {
    cell: "#N/A",
    says: "grade: no board is {grades}; panel {panel} takes no other; write one that will do under also from",
  },
  "no-board-of-species": { cell: "#N/A", says: 'species: no board is "{species}", and panel {panel} takes no other; add boards' },
  "panel-too-thick": {
    cell: "#N/A",
    says: "thickness: panel {panel} is {thickness} thick when glued, more than {written} dresses to ({dressed}); add thicker boards",
  },
  "panel-too-long": {
    cell: "#N/A",
    says:
      "length: panel {panel} is {length} long in the rough, more than the longest clear stretch of its boards, {longest} on board " +
      "{board}; add longer boards",
  },
  "boards-too-narrow": {
    cell: "#N/A",
    says: "least strip: panel {panel} takes strips of {least} or more, and its widest board nets {widest}; add wider boards",
  },
  "too-few-strips": {
    cell: "#N/A",
    says:
      "strips: {strips} of at most {greatest} are {all}, and panel {panel} needs {need}; write more strips or a wider greatest strip",
  },
  "least-over-greatest": {
    cell: "#VALUE!",
    says: "least strip: {least} is more than the greatest strip, {greatest}; write it smaller",
  },
  "too-many-panels": {
    cell: "#VALUE!",
    says: "panels: {count} panels are more than one plan takes; split the job into plans of {most} or fewer",
  },
  "too-many-boards": {
    cell: "#VALUE!",
    says: "tally: {count} boards are more than one plan takes; leave out what will not be used, {most} or fewer",
  },
  "tally-too-small": {
    cell: "#N/A",
    says: "tally: at {length} its boards net {gives} at most, and panel {panel} and its like need {need}; add boards",
  },
  "panels-too-many": { cell: "#N/A", says: "tally: its boards are too small for all {panels} panels together; add boards" },
  "no-plan-found": {
    cell: "#N/A",
    says: "tally: no way was found to get all panels out of its boards; without a place: panel {panel}; add boards",
  },
} as const;
