import type { Injector } from "@univerjs/core";
import { IMessageService } from "@univerjs/preset-sheets-core";

/** Milliseconds that a sentence stays on the screen. */
const READ_IN = 6000;

/** Shows sentences over the sheet, each for as long as it takes to read it. */
export const saying = (injector: Injector) => (content: string): void =>
  void injector.get(IMessageService).show({ content, duration: READ_IN });
