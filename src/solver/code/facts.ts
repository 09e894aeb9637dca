import { Exact } from "../length/exact";
import type { Unit } from "../length/length";
import { resolvedStair, type StairProblem } from "../layout/resolved-stair";
import type { StairFacts } from "../layout/stair-facts";
import { isProblem, type Problem } from "../problem";
import { words } from "../words";
import { type CodeFacts, type FactName, HELD_AS_GIVEN } from "./fact-labels";

/** 0 is what an empty cell reads as, and no fact that is only for the check is 0, so it tells nothing. */
const isNothing = (value: unknown): boolean => value === undefined || value === 0 || (value instanceof Exact && value.isZero());

const WANTED = "the headroom wanted; give opening and floor thickness for the one there is";

/**
 * What a code check needs of a stair table: the layout's rise, run and headroom, and the labels that are only for the check. `marks` says
 * which of the labels were not given by anybody, as LAYOUT marks them; defaults of our own are marked with them.
 */
export const facts = (given: StairFacts, unit: Unit, marks: Readonly<Record<string, string>> = {}): CodeFacts | Problem<StairProblem> => {
  const stair = resolvedStair(given);
  if (isProblem(stair)) return stair;
  const { unitRise, run, totalRise, risers, width, nosing, stringerBoard, treadThickness, throat, headroomFound, assumed } = stair;
  const found = isNothing(headroomFound) ? undefined : headroomFound;
  const headroom = found ?? given.headroom;
  const because = (key: string): string | undefined => marks[key] ?? assumed.get(key);
  const labelled = (fact: FactName, key: string = fact) => {
    const why = because(key);
    return why === undefined ? {} : { [fact]: `${words(key)} assumed: ${why}` };
  };
  return {
    ...Object.fromEntries(HELD_AS_GIVEN.filter((fact) => !isNothing(given[fact])).map((fact) => [fact, given[fact]])),
    unit,
    nosing,
    ...(because("treadThickness") === undefined ? { treadThickness } : {}),
    ...(because("stringerBoard") === undefined ? { stringerBoard, ...(throat === undefined ? {} : { throat }) } : {}),
    ...(unitRise === undefined ? {} : { riserHeight: unitRise }),
    ...(run === undefined ? {} : { treadDepth: run }),
    ...(totalRise === undefined ? {} : { totalRise }),
    ...(risers === undefined ? {} : { risers }),
    ...(width === undefined ? {} : { width }),
    ...(headroom === undefined ? {} : { headroom }),
    assumed: {
      ...Object.assign({}, ...HELD_AS_GIVEN.map((fact) => labelled(fact))) as Record<string, string>,
      ...labelled("nosing"),
      ...labelled("risers"),
      ...labelled("riserHeight", "unitRise"),
      ...labelled("treadDepth", "run"),
      ...labelled("totalRise"),
      ...labelled("width"),
      ...(headroom === undefined ? {} : found === undefined ? { headroom: WANTED } : labelled("headroom", "headroomFound")),
    },
  };
};
