import type { GlueWork } from "./glue-work";

/** So many sections of the length that has this place among the lengths. */
type Cut = readonly [place: number, count: number];

export interface Crosscuts {
  /** Ways to crosscut a stretch, each as its cuts. */
  readonly ways: readonly (readonly Cut[])[];
  /** There are more ways than these. */
  readonly isCut: boolean;
}

/** Ways of one stretch up to which all are looked at; beyond them the first, longest sections first, stand for all. */
const MOST_WAYS = 300;
/** Lengths up to which a plan keeps each; beyond them those next to one another are cut alike and trimmed. */
const MOST_LENGTHS = 5;

/** Rough lengths of the panels, each once, longest first. */
export const sectionLengths = ({ kinds }: Pick<GlueWork, "kinds">): readonly number[] =>
  [...new Set(kinds.map(({ length }) => length))].sort((one, other) => other - one);

/** Few lengths that serve all: the longest of each group of lengths near one another, longest first. */
export const plannedLengths = (lengths: readonly number[]): readonly number[] => {
  const found = [...lengths];
  while (found.length > MOST_LENGTHS) {
    let at = 1;
    for (let place = 2; place < found.length; place += 1)
      if (found[place - 1]! - found[place]! < found[at - 1]! - found[at]!) at = place;
    found.splice(at, 1);
  }
  return found;
};

/** Every way to crosscut a stretch into sections of these lengths, longest first, that leaves no room for one more. */
export const crosscuts = (stretch: number, lengths: readonly number[], kerf: number): Crosscuts => {
  const ways: Cut[][] = [];
  let isCut = false;
  const last = lengths.length - 1;
  const shortest = lengths[last]! + kerf;
  const extend = (cuts: readonly Cut[], from: number, room: number): void => {
    if (room < shortest) ways.push([...cuts]);
    if (room < shortest) return;
    for (let place = from; place <= last; place += 1) {
      const each = lengths[place]! + kerf;
      const most = Math.floor(room / each);
      for (let count = most; count >= (place === last ? Math.max(1, most) : 1); count -= 1) {
        isCut = isCut || ways.length >= MOST_WAYS;
        if (isCut) return;
        extend([...cuts, [place, count]], place + 1, room - count * each);
      }
    }
  };
  extend([], 0, stretch + kerf);
  return { ways, isCut };
};
