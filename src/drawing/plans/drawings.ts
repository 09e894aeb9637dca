import { resolvedStair, type Stair } from "../../solver/layout/resolved-stair";
import { isProblem, type Problem } from "../../solver/problem";
import type { GivenStair } from "../../functions/read-stair";
import type { Draft } from "./draft";
import { stairElevation } from "./stair-elevation";
import type { Unit } from "../../solver/length/length";

/** A drawing of a call with the name it is asked for by. */
export interface NamedDraft {
  readonly name: string;
  readonly draft: Draft;
}

export type Drawn = readonly NamedDraft[] | Problem;

const named = (name: string, draft: Draft | Problem): Drawn => (isProblem(draft) ? draft : [{ name, draft }]);

/** Those that can be drawn, or why the first cannot. */
const together = (...drawn: readonly Drawn[]): Drawn => {
  const [first = []] = drawn;
  return isProblem(first) ? first : drawn.flatMap((one) => (isProblem(one) ? [] : one));
};

const ofTheStair = ({ given, unit }: GivenStair, draw: (stair: Stair, unit: Unit) => Drawn): Drawn => {
  const stair = resolvedStair(given);
  return isProblem(stair) ? stair : draw(stair, unit);
};

type Given = Readonly<Record<string, unknown>>;

/** The drawings of each function that has some, from what its solver is given. */
export const DRAWINGS: Readonly<Record<string, (given: Given, unit: Unit) => Drawn>> = {
  LAYOUT: ({ stair }) => ofTheStair(stair as GivenStair, (found, unit) => together(named("elevation", stairElevation(found, unit)))),
};
