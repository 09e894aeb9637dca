/** Options with which all that a run does is one step of Excel's own Undo. */
export const oneUndo = (): Excel.RunOptions => {
  const options: Excel.RunOptions = {};
  options.mergeUndoGroup = true;
  return options;
};
