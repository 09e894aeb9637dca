/** Wording of the ways in which a stair table has no layout; shared by every function that takes one. */
export const STAIR_PROBLEMS = {
  "labels-disagree": {
    cell: "#VALUE!",
    says: "{label}: {value} disagrees with {otherValue}, the {other}; they may differ by {within} at most",
  },
  "treads-disagree": {
    cell: "#VALUE!",
    says: "treads: {given} disagrees with {found}, the treads of {risers} risers with the top tread {topTread}",
  },
  "rise-over-greatest": {
    cell: "#VALUE!",
    says:
      "risers: {risers} gives a rise of {rise}, more than the max rise of {greatest}; give more risers, or, where your code allows it, a " +
      "greater max rise",
  },
  "run-without-treads": { cell: "#VALUE!", says: "total run: {given} is given for one riser, which has no tread; enter the run" },
  "available-run-short": {
    cell: "#VALUE!",
    says: "available run: {available} is less than the total run of {needed} that a run of {run} takes; a shorter run, or fewer treads",
  },
} as const;
