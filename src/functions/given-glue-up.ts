import type { Unit } from "../solver/length/length";
import type { GluePanel } from "../solver/yield/glue-up/glue-panel";
import type { GlueTerms } from "../solver/yield/glue-up/glue-terms";
import type { TallyBoard } from "../solver/yield/tally/tally-board";
import { type Failed, isFailed } from "./cells";
import type { RowOf } from "./columns";
import { type GivenGlue, glueTerms } from "./glue-rows";
import type { panels as panelTable } from "./tables";
import { tallyBoards, type TallyRow } from "./tally-boards";

/** The arguments of GLUEUP as they are read. */
export interface GivenGlueUp {
  readonly panels: readonly (RowOf<typeof panelTable.columns> & { readonly row: number })[];
  readonly tally: readonly TallyRow[];
  readonly glue: readonly GivenGlue[] | undefined;
  readonly unit: Unit;
}

/** A glue-up as the solver takes it. */
export interface GlueUp {
  readonly panels: readonly GluePanel[];
  readonly boards: readonly TallyBoard[];
  readonly terms: GlueTerms;
  /** Terms that were left out, in words. */
  readonly assumed: readonly string[];
  readonly unit: Unit;
}

/** The glue-up, or the sentence of the first cell that is none of what it should be. */
export const givenGlueUp = ({ panels, tally, glue = [], unit }: GivenGlueUp): GlueUp | Failed => {
  const boards = tallyBoards(tally, unit);
  if (isFailed(boards)) return boards;
  const given = glueTerms("glue", glue, unit);
  if (isFailed(given)) return given;
  return {
    panels: panels.map(({ label, item, step, width, depth, height, ...panel }) => {
      const name = label ?? item ?? step;
      const across = width ?? depth ?? height;
      return { ...panel, ...(name === undefined ? {} : { label: name }), ...(across === undefined ? {} : { width: across }) };
    }),
    boards, ...given, unit,
  };
};
