import type { Solve } from "./answer";

/** The cell a user stands on. */
export interface StandingCell {
  readonly sheet: string;
  readonly address: string;
  /** The sentence that goes with its error, where it shows one. */
  readonly error: string | undefined;
}

/** What the pane asks of the sheet beside it; where there is no sheet, a part is missing and the pane leaves out what needs it. */
export interface PaneHost {
  /** Where the pane stands, in words. */
  readonly place: string;
  /** Works an example again with the functions the sheet uses. */
  readonly solve?: Solve;
  /** Writes a formula into the cell selected; answers what came of it, in words. */
  readonly insert?: (formula: string) => string;
  /** Calls at once and on every change of the cell selected. */
  readonly onSelection?: (tell: (cell: StandingCell | undefined) => void) => void;
}
