import { CommandType, ICommandService, type Injector } from "@univerjs/core";
import { ContextMenuGroup, ContextMenuPosition, IMenuManagerService, MenuItemType } from "@univerjs/preset-sheets-core";

const EXPLAIN = "treadsheet.explain-cell";

/** Adds Explain this cell to the menu of the cells. */
export const explainMenu = (injector: Injector, explain: () => void): void => {
  injector.get(ICommandService).registerCommand({
    id: EXPLAIN,
    type: CommandType.COMMAND,
    handler: () => {
      explain();
      return true;
    },
  });
  injector.get(IMenuManagerService).mergeMenu({
    [ContextMenuPosition.MAIN_AREA]: {
      [ContextMenuGroup.OTHERS]: {
        [EXPLAIN]: { order: 0, menuItemFactory: () => ({ id: EXPLAIN, type: MenuItemType.BUTTON, title: "treadsheet.explainCell" }) },
      },
    },
  });
};
