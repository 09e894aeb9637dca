/** What can be wrong with a code and with its amendments; shared by every function that checks a stair. */
export const CODE_PROBLEMS = {
  "unknown-code": { cell: "#N/A", says: 'code: "{code}" is not known{hint}; known are {known}' },
  "unknown-amendment": { cell: "#VALUE!", says: 'amendments, item: "{item}" is no limit of {code}{nearest}' },
  "amended-twice": { cell: "#VALUE!", says: 'amendments, item: "{item}" appears twice; keep one' },
  "amended-limit-unreadable": {
    cell: "#VALUE!",
    says: 'amendments, {item}: read "{given}", which is no limit of that kind; write it as the column limit of the result does, or none',
  },
  "amended-limit-not-positive": {
    cell: "#VALUE!",
    says: "amendments, {item}: must be more than 0, got {given}; write none to take a limit off",
  },
  "amended-range-needed": { cell: "#VALUE!", says: 'amendments, {item}: has two limits, got "{given}"; write both, such as 34 to 38' },
  "amended-range-reversed": {
    cell: "#VALUE!",
    says: 'amendments, {item}: "{given}" has the larger number first; write the smaller number first',
  },
  "not-amendable": { cell: "#VALUE!", says: "amendments, {item}: has no figure to change, got {given}; write none to take it off" },
} as const;
