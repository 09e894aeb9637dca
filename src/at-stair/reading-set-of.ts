import type { ReadingSet, ReadStep } from "../readings/reading-set";
import type { PieceKind } from "../solver/fit/acts";
import { readAt, type State, stepsOf, type Taking } from "./taking";

const taken = (state: State, piece: PieceKind): readonly ReadStep[] =>
  stepsOf(state, piece).map(({ step, isKept }) => ({ step, read: readAt(state, { piece, step }), kept: isKept }));

/** What was read, as it leaves this screen. */
export const readingSetOf = (state: State, { job, unit, tape }: Taking): ReadingSet => ({
  job, unit, tape, taken: state.day, treads: taken(state, "tread"), risers: taken(state, "riser"),
});
