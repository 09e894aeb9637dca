import { type Length, lengthOf, measure, type Unit } from "../length/length";
import { sizeText } from "../code/size-text";
import { closureLimits } from "../fit/closure-limits";
import { riserHeight } from "../fit/riser-height";
import type { RiserOn } from "../fit/riser-on";
import { type TreadFit, treadFits } from "../fit/tread-fit";
import type { TreadReading } from "../fit/tread-reading";
import { isOpen } from "../layout/stair-facts";
import type { Stair } from "../layout/resolved-stair";
import { isProblem, type Problem, problem } from "../problem";

/** One kind of piece an order needs, at the size that serves every step. */
export interface Blank {
  readonly item: "tread" | "return" | "landing nosing" | "landing tread" | "riser";
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly quantity: number;
  readonly note: string;
}

export type BlankProblem = "no-total-rise" | "no-run" | "no-width" | "reading-fits-no-piece" | "tread-thicker-than-rise" | "lap-over-tread";

interface Sizes {
  readonly length: Length;
  readonly depth: Length;
  readonly returnLength: Length;
  readonly skirtToSkirt: Length;
  readonly note: string;
}

/** How the tape was held, as the note says it. */
const READ_WITH: Readonly<Record<RiserOn, string>> = {
  off: "read with no finished riser on",
  behind: "read with the finished riser behind on",
  both: "read between finished risers",
};

const openEnds = (stair: Stair): number => (["left", "right"] as const).filter((side) => isOpen(side, stair.openEnd)).length;

const nominal = (stair: Stair, run: Length, width: Length): Sizes => {
  const depth = run.plus(stair.nosing);
  return {
    length: width.plus(stair.overhang.times(openEnds(stair))),
    depth,
    returnLength: depth.plus(stair.overhang),
    skirtToSkirt: width,
    note: "from the nominal width",
  };
};

const measured = (stair: Stair, readings: readonly TreadReading[], unit: Unit): Sizes | Problem<BlankProblem> => {
  const fits = treadFits(readings, {
    nosing: measure(stair.nosing, unit),
    openEnd: stair.openEnd,
    overhang: measure(stair.overhang, unit),
    returnWidth: measure(stair.returnWidth, unit),
    thickness: measure(stair.treadThickness, unit),
    riserOn: stair.riserOn,
    riserThickness: measure(stair.riserThickness, unit),
    gap: 0,
    backGap: 0,
    undercut: 0,
    closure: closureLimits(undefined, unit),
    unit,
  });
  const good: TreadFit[] = [];
  for (const fit of fits) {
    if ("bad" in fit) return problem("reading-fits-no-piece", { step: fit.step ?? "" });
    good.push(fit);
  }
  const largest = (size: (fit: TreadFit) => number): Length => lengthOf(Math.max(...good.map(size)), unit);
  const longest = good.reduce((one, other) => (other.length > one.length ? other : one));
  return {
    length: largest(({ length }) => length),
    depth: largest(({ depth }) => depth),
    returnLength: largest(({ returnLength = 0, leftReturnLength = 0 }) => Math.max(returnLength, leftReturnLength)),
    skirtToSkirt: largest(({ longPoint }) => longPoint),
    note:
      `from the largest reading, step ${longest.step ?? ""}`.trim() +
      `, ${READ_WITH[stair.riserOn]}${stair.assumed.has("riserOn") ? " (assumed: type riser on where that is not so)" : ""}`,
  };
};

/** What a riser runs past an open skirt, where nobody gave it. */
const pastNote = (stair: Stair, ends: number, unit: Unit): string =>
  ends === 0 || !stair.assumed.has("runPast")
    ? ""
    : `; ${sizeText(stair.runPast, unit)} longer at each open end (assumed: type run past where that is not so)`;

const LEAST_TOP = "the least width, riser thickness and nosing; list a nosing blank to save the rip";

/** Where a landing's nosing piece stands, and what to look at before it is ordered. */
const landingTreadNote = (depth: Length, least: Length): string => {
  const where = "nosing piece of the landing at the top of the flight";
  if (depth.lt(least)) return `${where}; less than the riser and its nosing together, so it ends short of the riser's back`;
  return depth.eq(least) ? `${where}; ${LEAST_TOP}` : where;
};

/** The piece the upper floor, or the landing the flight ends on, begins with; none where a tread lies flush with it. */
const topPiece = (stair: Stair, treadLength: Length): Omit<Blank, "thickness"> => {
  const { landingTread, landingTreadLength } = stair;
  const isFloor = stair.topTread === "floor";
  const least = stair.nosing.plus(stair.riserThickness);
  if (landingTread === undefined) {
    return { item: "landing nosing", length: treadLength, width: least, quantity: stair.landingNosing && isFloor ? 1 : 0, note: LEAST_TOP };
  }
  return {
    item: "landing tread",
    length: landingTreadLength?.plus(stair.trimLength) ?? treadLength,
    width: landingTread.plus(stair.trimDepth),
    quantity: isFloor ? 1 : 0,
    note: landingTreadNote(landingTread, least),
  };
};

/** The sizes to order: treads, returns, the piece at the top, and risers, from the largest reading, or from the nominal width. */
export const blankList = (
  stair: Stair, readings: readonly TreadReading[] | undefined, unit: Unit,
): readonly Blank[] | Problem<BlankProblem> => {
  const { run, treads, risers, unitRise, width } = stair;
  if (risers === undefined || treads === undefined || unitRise === undefined) return problem("no-total-rise");
  if (run === undefined) return problem("no-run");
  if (readings === undefined && width === undefined) return problem("no-width");
  const sizes = readings === undefined ? nominal(stair, run, width ?? run) : measured(stair, readings, unit);
  if ("problem" in sizes) return sizes;
  const height = riserHeight(unitRise, stair.treadThickness, stair.lap);
  if (isProblem(height)) return height;
  const length = sizes.length.plus(stair.trimLength);
  const ends = openEnds(stair);
  const thickness = stair.treadThickness;
  const blanks: Blank[] = [
    { item: "tread", length, width: sizes.depth.plus(stair.trimDepth), thickness, quantity: treads, note: sizes.note },
    {
      item: "return", length: sizes.returnLength, width: stair.returnWidth, thickness, quantity: treads * ends,
      note: stair.runPast.lt(stair.overhang)
        ? "along its outer edge, which runs past the riser face by the overhang"
        : "the riser runs past the skirt by as much as the return overhangs: they end flush or the riser stands proud",
    },
    { ...topPiece(stair, length), thickness },
    {
      item: "riser", length: sizes.skirtToSkirt.plus(stair.runPast.times(ends)).plus(stair.trimLength), width: height,
      thickness: stair.riserThickness, quantity: risers,
      note: `rise less tread, plus lap; the first has no lap${pastNote(stair, ends, unit)}`,
    },
  ];
  return blanks.filter(({ quantity }) => quantity > 0);
};
