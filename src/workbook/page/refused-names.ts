import { CanceledError, ICommandService, type Injector } from "@univerjs/core";
import { IMessageService } from "@univerjs/preset-sheets-core";
import { InsertDefinedNameCommand } from "@univerjs/sheets";

/** To read the sentence in, in milliseconds. */
const READ_IN = 8000;

const SAYS =
  "Names are not kept with a workbook of this page, so none is given. Type an address to go there, as in Survey!C8, and write addresses " +
  "in formulas.";

/** A name typed in the name box would be gone when the page is opened again, and its formulas with it: it is refused in words. */
export const refusedNames = (injector: Injector): void => {
  const messages = injector.get(IMessageService);
  injector.get(ICommandService).beforeCommandExecuted(({ id }) => {
    if (id !== InsertDefinedNameCommand.id) return;
    messages.show({ content: SAYS, duration: READ_IN });
    throw new CanceledError();
  });
};
