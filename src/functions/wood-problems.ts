/** Wording of a wood that was not found; shared by the functions of wood. */
export const WOOD_PROBLEMS = {
  "species-unknown": { cell: "#N/A", says: 'species: "{name}" is not known{nearest}; known are {known}' },
  "species-ambiguous": { cell: "#N/A", says: 'species: "{name}" may be {choices}; write one of them' },
} as const;
