import type { Effort } from "../shelf/effort";
import { type Crosscuts, crosscuts, plannedLengths, sectionLengths } from "./crosscuts";
import type { Draw } from "../draws";
import type { GlueWork } from "./glue-work";
import { mostNet } from "./section-width";

/** A section of a board, and what of its width is left. */
export interface Section {
  readonly wood: number;
  readonly stretch: number;
  readonly along: number;
  readonly length: number;
  across: number;
  left: number;
}

/** A stretch of a board with the ways to crosscut it, and the net width a section gives at most. */
interface Place extends Crosscuts {
  readonly wood: number;
  readonly stretch: number;
  readonly net: number;
}

/** Sections of boards, in the order of the boards; with several lengths each stretch is cut as is wanted most by what is still to come. */
export type Sections = (woods: readonly number[], draw: Draw | undefined, effort: Effort) => Section[];

/** How far a draw moves what a length is wanted, and how much of that a section counts that is not wanted any more. */
const SPREAD = 0.5;
const SPARE = 0.01;

type Way = Crosscuts["ways"][number];

const sectionsOf = (work: GlueWork, place: Place, way: Way, lengths: readonly number[]): Section[] => {
  const found: Section[] = [];
  let along = 0;
  way.forEach(([of, count]) => {
    for (let one = 0; one < count; one += 1) {
      const length = lengths[of]!;
      found.push({ wood: place.wood, stretch: place.stretch, along, length, across: 0, left: work.woods[place.wood]!.width });
      along += length + work.kerf;
    }
  });
  return found;
};

/** The way of a stretch that is worth most; what nothing is wanted of counts a little, longer before shorter. */
const bestWay = (
  ways: Place["ways"], lengths: readonly number[], wanted: readonly number[], net: number, favour: readonly number[],
): Way | undefined => {
  let best = ways[0];
  let most = -1;
  for (const way of ways) {
    let worth = 0;
    for (const [of, count] of way) {
      const given = count * net;
      const used = Math.min(given, Math.max(0, wanted[of]!));
      worth += (used + (given - used) * SPARE) * lengths[of]! * favour[of]!;
    }
    if (worth <= most) continue;
    most = worth;
    best = way;
  }
  return best;
};

export const sectionsOfWork = (work: GlueWork): Sections => {
  const lengths = plannedLengths(sectionLengths(work));
  const least = Math.min(...work.kinds.map((kind) => kind.least));
  const greatest = Math.max(...work.kinds.map((kind) => kind.greatest));
  const places = work.woods.map(({ width, stretches }, wood) =>
    stretches.map((length, stretch): Place => ({
      wood, stretch, net: mostNet(width, { least, greatest }, work), ...crosscuts(length, lengths, work.kerf),
    })),
  );
  const wantedAtFirst = lengths.map((length, place) =>
    work.kinds.reduce(
      (sum, kind) => (kind.length <= length && kind.length > (lengths[place + 1] ?? 0) ? sum + kind.need * kind.count : sum), 0,
    ),
  );
  return (woods, draw, effort) => {
    const wanted = [...wantedAtFirst];
    const favour = lengths.map(() => (draw === undefined ? 1 : 1 + SPREAD * draw()));
    return woods.flatMap((wood) =>
      places[wood]!.flatMap((place) => {
        effort.left -= lengths.length === 1 ? 1 : place.ways.length;
        const way = lengths.length === 1 ? place.ways[0] : bestWay(place.ways, lengths, wanted, place.net, favour);
        if (way === undefined) return [];
        way.forEach(([of, count]) => {
          wanted[of] = wanted[of]! - count * place.net;
        });
        return sectionsOf(work, place, way, lengths);
      }),
    );
  };
};
