import { bundlesOf, type Filling, type Section, sectionsOf } from "./bundles";
import { type Effort } from "./effort";
import { type KnapsackLists, knapsackLists, listFillings } from "./knapsack-lists";
import { type KnapsackTable, tableFillings } from "./knapsack-table";
import { type Shelf } from "./shelf";

export interface Knapsack {
  /** The best filling of each stick kind for a whole-number worth of each kind of piece, with no more of a kind than is wanted of it. */
  readonly fill: (worth: ArrayLike<number>, wanted: ArrayLike<number>, effort: Effort) => Filling[];
}

/** Cells of the table beyond which it is not built: they are bytes. */
const MOST_CELLS = 60_000_000;
/** Fillings that go by the table at once after lists grew too long: the next worths are much like the last. */
const BY_TABLE = 20;

/** A section with its lists, and how many fillings to come go by the table. */
interface Listed {
  readonly section: Section;
  readonly lists: KnapsackLists;
  byTable: number;
}

/** Lists of states for each section of stick, the table where they grow too long. Nothing where the table would take too much memory. */
export const knapsackOf = (shelf: Shelf): Knapsack | undefined => {
  const sections = sectionsOf(shelf);
  const all = shelf.kinds.map((kind) => kind.wanted);
  const cells = sections.map((section) => bundlesOf(shelf, section, all).length * (section.longest + 1));
  if (cells.reduce((sum, each) => sum + each, 0) > MOST_CELLS) return undefined;
  const listed = sections.map((section): Listed => ({ section, lists: knapsackLists(section), byTable: 0 }));
  let made: KnapsackTable | undefined;
  const table = (): KnapsackTable =>
    (made ??= {
      most: new Float64Array(Math.max(...sections.map(({ longest }) => longest)) + 1),
      taken: new Uint8Array(Math.max(...cells)),
    });
  const fill = (worth: ArrayLike<number>, wanted: ArrayLike<number>, effort: Effort): Filling[] => {
    const fillings: Filling[] = [];
    for (const each of listed) {
      const { section, lists } = each;
      const bundles = bundlesOf(shelf, section, wanted).filter(({ kind }) => worth[kind]! > 0);
      const byList = each.byTable > 0 ? undefined : listFillings(shelf, section, bundles, worth, lists, effort);
      if (byList !== undefined) each.byTable = 0;
      else each.byTable = each.byTable > 0 ? each.byTable - 1 : BY_TABLE;
      const found = byList ?? tableFillings(shelf, section, bundles, worth, table(), effort);
      for (const [place, stick] of section.sticks.entries()) fillings[stick] = found[place]!;
    }
    return fillings;
  };
  return { fill };
};
