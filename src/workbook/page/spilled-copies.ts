import type { Injector } from "@univerjs/core";
import { IClipboardInterfaceService, IEditorBridgeService } from "@univerjs/preset-sheets-core";

/** Copies spilled cells as they are shown, which the engine leaves empty: `spilled` answers their text where any are selected. */
export const spilledCopies = (injector: Injector, spilled: () => string | undefined): void => {
  const clipboard = injector.get(IClipboardInterfaceService);
  const bridge = injector.get(IEditorBridgeService);
  const write = clipboard.write.bind(clipboard);
  clipboard.write = (text, html, ...more) => {
    const shown = bridge.isVisible().visible ? undefined : spilled();
    return shown === undefined ? write(text, html, ...more) : clipboard.writeText(shown);
  };
};
