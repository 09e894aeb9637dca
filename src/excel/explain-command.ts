/** The command of the manifest that stands in the menu of a cell. */
export const EXPLAIN_COMMAND = "explainCell";

/**
 * Has the command open the pane and do something there. It shows the page of the runtime it shares with the pane, which the button on the
 * ribbon opens too (Show or hide the task pane of your Office Add-in); a task pane of its own would be a second one (Configure your Office
 * Add-in to use a shared runtime, multiple task panes).
 */
export const onExplain = (explain: () => void): void => {
  // A page beside Excel may have none, whatever the types say.
  const actions = Office.actions as Office.Actions | undefined;
  actions?.associate(EXPLAIN_COMMAND, async (event: Office.AddinCommands.Event): Promise<void> => {
    try {
      explain();
      await Office.addin.showAsTaskpane();
    } catch {
      // A pane that cannot be opened is opened by the button on the ribbon, and has the answer.
    } finally {
      // "You must implement event.completed, otherwise your function won't run" (Create add-in commands, button controls).
      event.completed();
    }
  });
};
