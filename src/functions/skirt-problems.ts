/** Wording of what is wrong with the readings of a flight as a whole. */
export const SKIRT_PROBLEMS = {
  "step-twice": { cell: "#VALUE!", says: "step: {step} stands in two rows of one table; give the readings of one flight, each step once" },
  "too-few-steps": {
    cell: "#N/A",
    says: "treads: it takes {least} with back, front and a diagonal to tell the next one, got {steps}",
  },
  "no-skirts": { cell: "#VALUE!", says: "run: is next to nothing, which tells nothing of the skirts; read the runs again" },
} as const;
