import { provenLeast, worthSteps } from "./certificate";
import { type Generated } from "./column-generation";
import { wholeShelf } from "./master";
import { piecesWanted, type Shelf } from "./shelf";

/** Worths by width alone: no linear program, and so also for jobs too large for one. A stick counts as if it could be filled to the end. */
const byWidth = (shelf: Shelf): { worth: number[]; held: number[] } => {
  const steps = worthSteps(shelf);
  const pieces = piecesWanted(shelf);
  const rate = Math.min(
    ...shelf.sticks.filter(({ available, price }) => available >= pieces || price > 0).map(({ price, holds }) => (price * steps) / holds),
  );
  const share = Number.isFinite(rate) ? rate : 0;
  return {
    worth: shelf.kinds.map(({ width }) => Math.floor(width * share)),
    held: shelf.sticks.map(({ holds }) => Math.floor(holds * share)),
  };
};

/** What worths by width prove, without a linear program. */
export const provenByWidth = (shelf: Shelf): Pick<Generated, "worth" | "least"> => {
  const { worth, held } = byWidth(shelf);
  return { worth, least: provenLeast(shelf, wholeShelf(shelf), worthSteps(shelf), worth, held.map((each) => ({ worth: each }))) };
};
