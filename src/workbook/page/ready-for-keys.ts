import type { Injector } from "@univerjs/core";
import { IEditorBridgeService } from "@univerjs/preset-sheets-core";

const NO_WAIT = 0;

/** Until the sheet is drawn no cell can be typed into; from then on one is always made ready for it. */
export const takesKeys = (injector: Injector): Promise<void> =>
  new Promise((resolve) => {
    const { currentEditCellState$: ready } = injector.get(IEditorBridgeService);
    const ended = ready.subscribe((cell) => {
      if (!cell) return;
      resolve();
      // Not yet assigned where a cell is ready at once.
      setTimeout(() => ended.unsubscribe(), NO_WAIT);
    });
  });
