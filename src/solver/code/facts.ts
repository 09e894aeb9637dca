import { isProblem, type Problem } from "../problem";
import { Exact } from "../length/exact";
import type { Unit } from "../length/length";
import { type LayoutProblem, stairLayout } from "../layout/stair-layout";
import { resolvedStair } from "../layout/resolved-stair";
import type { StairFacts } from "../layout/stair-facts";
import { words } from "../words";
import { CHECK_LABELS, type CodeFacts, type FactName } from "./fact-labels";

type GivenLabels = StairFacts & Readonly<Record<string, unknown>>;

/** 0 is what an empty cell reads as, and no fact that is only for the check is 0, so it tells nothing. */
const isNothing = (value: unknown): boolean => value === undefined || value === 0 || (value instanceof Exact && value.isZero());

const yesOrNo = (value: unknown): unknown => (typeof value === "boolean" ? (value ? "yes" : "no") : value);

const copied = (given: GivenLabels): Record<string, unknown> =>
  Object.fromEntries(
    CHECK_LABELS.filter((fact) => !isNothing(given[fact])).map((fact) => [fact, yesOrNo(given[fact])]),
  );

const WANTED = "the headroom wanted; give opening and floor thickness for the one there is";

/**
 * What a code check needs of a stair table: the layout's rise, run and headroom, and the labels that are only for the check. `marks` says which of the
 * labels were not given by anybody, as LAYOUT marks them; defaults of our own are marked with them.
 */
export const facts = (given: GivenLabels, unit: Unit, marks: Readonly<Record<string, string>> = {}): CodeFacts | Problem<LayoutProblem> => {
  const stair = resolvedStair(given);
  if (isProblem(stair)) return stair;
  const { unitRise, run, totalRise, risers, width, nosing, stringerBoard, treadThickness, assumed } = stair;
  const isLaidOut = unitRise !== undefined && run !== undefined && totalRise !== undefined && risers !== undefined;
  const lines = isLaidOut ? stairLayout(given, unit) : [];
  if (isProblem(lines)) return lines;
  const laidOut = lines.find(({ key }) => key === "headroomFound")?.value;
  const throat = lines.find(({ key }) => key === "throat")?.value;
  const found = typeof laidOut === "object" ? laidOut : isNothing(given.headroomFound) ? undefined : given.headroomFound;
  const headroom = found ?? given.headroom;
  const because = (key: string): string | undefined => marks[key] ?? assumed.get(key);
  const said = (fact: FactName, key: string = fact) => {
    const why = because(key);
    return why === undefined ? {} : { [fact]: `${words(key)} assumed: ${why}` };
  };
  return {
    ...copied(given),
    unit,
    nosing,
    ...(because("treadThickness") === undefined ? { treadThickness } : {}),
    ...(because("stringerBoard") === undefined ? { stringerBoard, ...(typeof throat === "object" ? { throat } : {}) } : {}),
    ...(unitRise === undefined ? {} : { riserHeight: unitRise }),
    ...(run === undefined ? {} : { treadDepth: run }),
    ...(totalRise === undefined ? {} : { totalRise }),
    ...(risers === undefined ? {} : { risers }),
    ...(width === undefined ? {} : { width }),
    ...(headroom === undefined ? {} : { headroom }),
    assumed: {
      ...Object.assign({}, ...CHECK_LABELS.map((fact) => said(fact))) as Record<string, string>,
      ...said("nosing"),
      ...said("risers"),
      ...said("riserHeight", "unitRise"),
      ...said("treadDepth", "run"),
      ...said("totalRise"),
      ...said("width"),
      ...(headroom === undefined ? {} : found === undefined ? { headroom: WANTED } : said("headroom", "headroomFound")),
    },
  };
};
