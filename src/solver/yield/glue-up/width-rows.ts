import { type Crosscuts, crosscuts, sectionLengths } from "./crosscuts";
import type { GlueWork, Wood } from "./glue-work";
import { mostNet, mostWithRips } from "./section-width";

/** What every choice of boards must meet: the sum of what its boards give is at least the need. */
export interface WidthRow {
  /** The one kind of panel it is about, where it is. */
  readonly kind?: number;
  readonly gives: readonly number[];
  readonly need: number;
}

/** Kinds, and lengths, that have a row of their own. */
const MOST_OWN = 4;

/** What one inch of net width of each kind is worth, and what of its width a section gives. */
interface Worth {
  readonly worths: readonly number[];
  readonly most: typeof mostNet;
}

/** The ways to crosscut each stretch, worked out once. */
type WaysOf = (stretch: number) => Crosscuts;

const waysOf = (lengths: readonly number[], kerf: number): WaysOf => {
  const known = new Map<number, Crosscuts>();
  return (stretch) => {
    const found = known.get(stretch) ?? crosscuts(stretch, lengths, kerf);
    known.set(stretch, found);
    return found;
  };
};

/** The most that a board gives: a section holds no more than its width of the kind of its length that is worth most. */
const mostOf = (work: GlueWork, wood: Wood, { worths, most }: Worth, lengths: readonly number[], ways: WaysOf): number => {
  const { kinds, kerf } = work;
  const counted = kinds.filter((_, kind) => wood.suits[kind] === true && worths[kind]! > 0);
  if (counted.length === 0) return 0;
  const least = Math.min(...counted.map((kind) => kind.least));
  const greatest = Math.max(...counted.map((kind) => kind.greatest));
  const byLength = new Map<number, number>();
  kinds.forEach(({ length }, kind) => {
    if (wood.suits[kind] === true) byLength.set(length, Math.max(byLength.get(length) ?? 0, worths[kind]!));
  });
  const worthOf = lengths.map((length) => byLength.get(length) ?? 0);
  const shortest = Math.min(...counted.map(({ length }) => length));
  const ofStretch = (stretch: number): number => {
    const found = ways(stretch);
    const byPart = (stretch + kerf) * Math.max(...lengths.map((length, place) => worthOf[place]! / (length + kerf)));
    if (found.isCut) return Math.min(byPart, Math.floor((stretch + kerf) / (shortest + kerf)) * Math.max(...worthOf));
    return Math.max(0, ...found.ways.map((way) => way.reduce((sum, [place, count]) => sum + count * worthOf[place]!, 0)));
  };
  return most(wood.width, { least, greatest }, work) * wood.stretches.reduce((sum, stretch) => sum + ofStretch(stretch), 0);
};

/** A row for worths of the kinds: of net width alone, or with each strip counted for what ripping it takes. */
const rowsOf = (work: GlueWork) => {
  const lengths = sectionLengths(work);
  const ways = waysOf(lengths, work.kerf);
  const row = (worths: readonly number[], most: typeof mostNet, needOf: (kind: number) => number): WidthRow => ({
    gives: work.woods.map((wood) => mostOf(work, wood, { worths, most }, lengths, ways)),
    need: work.kinds.reduce((sum, { count }, kind) => sum + worths[kind]! * needOf(kind) * count, 0),
  });
  const net = (kind: number): number => work.kinds[kind]!.need;
  const withRips = (kind: number): number => {
    const { need, greatest } = work.kinds[kind]!;
    return need + Math.ceil(need / greatest) * (work.kerf + work.joints);
  };
  return {
    plain: (worths: readonly number[]) => row(worths, mostNet, net),
    ripped: (worths: readonly number[]) => row(worths, mostWithRips, withRips),
    net,
    withRips,
  };
};

/** Where each panel is of one board, what a board gives above whole panels goes for nothing: rows by what one panel needs at least. */
const wholePanels = (rows: readonly (readonly [row: WidthRow, each: number])[], count: number): WidthRow => ({
  gives: rows[0]![0].gives.map((_, wood) => Math.min(...rows.map(([{ gives }, each]) => Math.floor(gives[wood]! / each)))),
  need: count,
});

/**
 * Rows that every plan meets, whatever the worths are: all panels by their area and by their width, each kind alone, and the longer ones.
 */
export const widthRows = (work: GlueWork): readonly WidthRow[] => {
  const { kinds, kerf, isOfOneBoard } = work;
  const { plain, ripped, net, withRips } = rowsOf(work);
  const own = kinds.slice(0, MOST_OWN).flatMap(({ count }, kind): WidthRow[] => {
    const alone = kinds.map((_, other) => (other === kind ? 1 : 0));
    const both = [plain(alone), ripped(alone)];
    return [{ ...both[0]!, kind }, ...(isOfOneBoard ? [wholePanels([[both[0]!, net(kind)], [both[1]!, withRips(kind)]], count)] : kinds.length === 1 ? both.slice(1) : [])];
  });
  if (kinds.length === 1) return own;
  const areas = kinds.map(({ length }) => length + kerf);
  const lengths = sectionLengths(work);
  const steps = lengths.filter((_, place) => place % Math.ceil(lengths.length / MOST_OWN) === 0 || place === lengths.length - 1);
  const longer = steps.map((least) => ripped(kinds.map(({ length }) => (length >= least ? 1 : 0))));
  const every = kinds.map(() => 1);
  const least = (of: (kind: number) => number): number => Math.min(...kinds.map((_, kind) => of(kind)));
  const whole = (): WidthRow =>
    wholePanels([[plain(every), least(net)], [ripped(every), least(withRips)]], kinds.reduce((sum, { count }) => sum + count, 0));
  return [plain(areas), ripped(areas), plain(every), ...(isOfOneBoard ? [whole()] : []), ...longer, ...own];
};

/** What the offers give to each row. */
export const ofOffers = (work: GlueWork, rows: readonly WidthRow[]): readonly WidthRow[] =>
  rows.map((row) => ({ ...row, gives: work.offers.map(({ woods }) => woods.reduce((sum, wood) => sum + row.gives[wood]!, 0)) }));
