/** Wording of readings that fit no piece; shared by treads and risers. */
export const FIT_PROBLEMS = {
  "diagonal-too-short": {
    cell: "#VALUE!",
    says: "diagonal: {diagonal length} is no longer than the {distance length} between the two lines; read it again",
  },
  "second-diagonal-too-short": {
    cell: "#VALUE!",
    says: "second diagonal: {diagonal length} is no longer than the {distance length} between the two lines; read it again",
  },
  "nothing-fixes-the-end": {
    cell: "#VALUE!",
    says: 'diagonal: is missing; give a diagonal, a left offset or an angle, and write "square" for a measured zero',
  },
  "diagonal-on-the-wrong-side": {
    cell: "#VALUE!",
    says: "diagonal: puts the other left corner {farLeft length} along, beside the piece; the diagonals may be swapped, check both",
  },
  "edges-cross": { cell: "#VALUE!", says: "diagonal: the two ends meet within the depth of {depth length}; read this step again" },
  "bar-without-angles": { cell: "#VALUE!", says: "at: {at length} needs left angle and right angle, which carry the length to the back" },
  "angles-leave-no-length": { cell: "#VALUE!", says: "left angle: with right angle it leaves no length; read both angles again" },
} as const;
