import { Direction, ICommandService, type IAccessor, type Injector } from "@univerjs/core";
import { MoveSelectionCommand, MoveSelectionEnterAndTabCommand, SheetsSelectionsService } from "@univerjs/preset-sheets-core";

/** An accessor that hands out everything but the power to run commands: what a command does besides them is done, the selection stays. */
const withoutCommands = (injector: Injector): IAccessor =>
  ({
    get: (id: Parameters<IAccessor["get"]>[0]) => (id === ICommandService ? { executeCommand: () => true } : injector.get(id as never)),
  }) as unknown as IAccessor;

/**
 * Enter after a chain of Tabs goes under the cell where the chain began, which the engine remembers until an arrow key is pressed. It
 * remembers it through a click on another cell too, so that the next entry would land far from where it was typed. Here a chain ends as
 * soon as the cell selected is not the one that the last Tab or Enter went to.
 */
export const tabChain = (injector: Injector): void => {
  const commands = injector.get(ICommandService);
  const place = (): string => {
    const primary = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
    return `${primary?.actualRow ?? ""} ${primary?.actualColumn ?? ""}`;
  };
  let reached = "";
  commands.beforeCommandExecuted(({ id }) => {
    if (id !== MoveSelectionEnterAndTabCommand.id || place() === reached) return;
    // What an arrow key does to the memory, whichever way there is room to go.
    for (const direction of [Direction.DOWN, Direction.UP]) void MoveSelectionCommand.handler(withoutCommands(injector), { direction });
  });
  commands.onCommandExecuted(({ id }) => {
    if (id === MoveSelectionEnterAndTabCommand.id) reached = place();
  });
};
