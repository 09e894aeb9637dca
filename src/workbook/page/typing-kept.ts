import type { Injector } from "@univerjs/core";
import { IEditorBridgeService } from "@univerjs/preset-sheets-core";

/**
 * What is being typed stays. The engine fills the editor anew with what stands in its cell whenever a result is written there, also while
 * someone types into it: the first characters would be gone as soon as the calculation of the entry before ends.
 */
export const typingKept = (injector: Injector): void => {
  const bridge = injector.get(IEditorBridgeService);
  const refresh = bridge.refreshEditCellState.bind(bridge);
  bridge.refreshEditCellState = () => {
    // Once the edit ends the cell is chosen anew, and the editor filled with it.
    if (!bridge.isVisible().visible) refresh();
  };
};
