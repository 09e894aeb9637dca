import { guards, NO_GUARDS } from "./guards";
import { codeOf, mayBeGuarded, refusal } from "./refusal";
import { oneUndo } from "./undo-group";

/** Sheets that something is asked of, with the words for it. */
export interface Asked {
  readonly asked: string;
  readonly sheets: readonly string[];
  /** Whether Excel's own Undo takes it back in one step, however many parts it has. */
  readonly isOneUndo?: boolean;
}

/** Does something with the workbook; what Excel refuses comes out as an Error with a plain sentence. */
export const run = async <Result>(
  { asked, sheets, isOneUndo = false }: Asked, work: (context: Excel.RequestContext) => Promise<Result>,
): Promise<Result> => {
  try {
    return await (isOneUndo ? Excel.run(oneUndo(), work) : Excel.run(work));
  } catch (error) {
    const found = mayBeGuarded(error) ? await guards(sheets) : NO_GUARDS;
    // The code goes along: what it is decides whether the same is tried without a group.
    throw Object.assign(new Error(refusal(error, { asked, ...found })), { code: codeOf(error) });
  }
};

/** Whether Excel has something in one step of its Undo that it cannot take back: Excel.RunOptions, undo capabilities of add-ins. */
const isUndoRefused = (error: unknown): boolean =>
  codeOf(error) === "UndoNotSupported";

/** Does something in one step of Excel's Undo where there is such a thing and Excel takes it; in as many as it has parts where not. */
export const asOneUndo = async <Result>(hasGroups: boolean, work: (isOneUndo: boolean) => Promise<Result>): Promise<Result> => {
  if (!hasGroups) return work(false);
  try {
    return await work(true);
  } catch (error) {
    if (!isUndoRefused(error)) throw error;
    return work(false);
  }
};
