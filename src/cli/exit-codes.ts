/** What the command answers to whoever called it; each has its line in the help. */
export const EXIT = {
  /** Done as asked. */
  done: 0,
  /** With `--check`: cells have another value than the file says, or formulas would be mended. For `eval`: the formula is in error. */
  differs: 1,
  /** Done, but some formulas kept the value they had, or could not be mended. */
  kept: 2,
  /** The command, or a file it names, is not as it should be; nothing was written. */
  refused: 3,
  /** It took longer than allowed; nothing was written. */
  tooLong: 4,
} as const;

export const EXIT_SAYS: readonly (readonly [code: number, says: string])[] = [
  [EXIT.done, "done as asked"],
  [EXIT.differs, "recalc --check: cells differ; mend --check: formulas would be mended; eval: the formula is in error"],
  [EXIT.kept, "done, but formulas that cannot be worked out here kept their value, or cannot be mended; they are listed"],
  [EXIT.refused, "the command or a file is not as it should be; nothing was written"],
  [EXIT.tooLong, "it took longer than --limit; nothing was written"],
];
