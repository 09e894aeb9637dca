import { type Crosscuts, crosscuts, sectionLengths } from "./crosscuts";
import type { GlueWork } from "./glue-work";
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

/** What of its width a section gives. */
type Most = typeof mostNet;

/** Boards that suit the same kinds give alike by their stretches and their width. */
interface Alike {
  readonly least: number;
  readonly greatest: number;
  /** What the sections of a stretch are worth by the inch of net width. */
  readonly ofStretch: (stretch: number) => number;
}

/** Each inch of net width of a kind worth so much: a section holds no more than its width of the kind of its length worth most. */
const alike = (
  { kinds, kerf }: GlueWork, suits: readonly boolean[], worths: readonly number[], lengths: readonly number[],
  waysOf: (stretch: number) => Crosscuts,
): Alike | undefined => {
  const counted = kinds.filter((_, kind) => suits[kind] === true && worths[kind]! > 0);
  if (counted.length === 0) return undefined;
  const byLength = new Map<number, number>();
  kinds.forEach(({ length }, kind) => {
    if (suits[kind] === true) byLength.set(length, Math.max(byLength.get(length) ?? 0, worths[kind]!));
  });
  const worthOf = lengths.map((length) => byLength.get(length) ?? 0);
  const most = Math.max(...worthOf);
  const byPart = Math.max(...lengths.map((length, place) => worthOf[place]! / (length + kerf)));
  const shortest = Math.min(...counted.map(({ length }) => length));
  const reckoned = (stretch: number): number => {
    const { ways, isCut } = waysOf(stretch);
    if (isCut) return Math.min((stretch + kerf) * byPart, Math.floor((stretch + kerf) / (shortest + kerf)) * most);
    return ways.reduce((best, way) => Math.max(best, way.reduce((sum, [place, count]) => sum + count * worthOf[place]!, 0)), 0);
  };
  return {
    least: Math.min(...counted.map((kind) => kind.least)),
    greatest: Math.max(...counted.map((kind) => kind.greatest)),
    ofStretch: kept(reckoned),
  };
};

/** A function of one number that works each out once. */
const kept = <Value>(reckoned: (of: number) => Value): ((of: number) => Value) => {
  const known = new Map<number, Value>();
  return (of) => {
    const found = known.get(of) ?? reckoned(of);
    known.set(of, found);
    return found;
  };
};

/** A row for worths of the kinds: of net width alone, or with each strip counted for what ripping it takes. */
const rowsOf = (work: GlueWork) => {
  const lengths = sectionLengths(work);
  const ways = kept((stretch) => crosscuts(stretch, lengths, work.kerf));
  const keys = work.woods.map(({ suits }) => suits.map(Number).join(""));
  const givesOf = (worths: readonly number[], most: Most): readonly number[] => {
    const groups = new Map<string, Alike | undefined>();
    return work.woods.map(({ width, stretches, suits }, wood) => {
      const key = keys[wood]!;
      if (!groups.has(key)) groups.set(key, alike(work, suits, worths, lengths, ways));
      const group = groups.get(key);
      return group === undefined ? 0 : most(width, group, work) * stretches.reduce((sum, stretch) => sum + group.ofStretch(stretch), 0);
    });
  };
  const row = (worths: readonly number[], most: Most, needOf: (kind: number) => number): WidthRow => ({
    gives: givesOf(worths, most),
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
    const whole = isOfOneBoard ? [wholePanels([[both[0]!, net(kind)], [both[1]!, withRips(kind)]], count)] : [];
    return [{ ...both[0]!, kind }, ...both.slice(1), ...whole];
  });
  if (kinds.length === 1) return own;
  const areas = kinds.map(({ length }) => length + kerf);
  // Panels that the same boards suit, by themselves.
  const boardsOf = kinds.map((_, kind) => work.woods.map(({ suits }) => Number(suits[kind])).join(""));
  const groups = [...new Set(boardsOf)];
  const grouped = groups.length === 1 ? [] : groups.slice(0, MOST_OWN).flatMap((group) => {
    const worths = areas.map((area, kind) => (boardsOf[kind] === group ? area : 0));
    return [plain(worths), ripped(worths)];
  });
  const lengths = sectionLengths(work);
  const steps = lengths.filter((_, place) => place % Math.ceil(lengths.length / MOST_OWN) === 0 || place === lengths.length - 1);
  const longer = steps.map((least) => ripped(kinds.map(({ length }) => (length >= least ? 1 : 0))));
  const every = kinds.map(() => 1);
  const least = (of: (kind: number) => number): number => Math.min(...kinds.map((_, kind) => of(kind)));
  const whole = (): WidthRow =>
    wholePanels([[plain(every), least(net)], [ripped(every), least(withRips)]], kinds.reduce((sum, { count }) => sum + count, 0));
  return [plain(areas), ripped(areas), plain(every), ...(isOfOneBoard ? [whole()] : []), ...grouped, ...longer, ...own];
};

/** What the offers give to each row. */
export const ofOffers = (work: GlueWork, rows: readonly WidthRow[]): readonly WidthRow[] =>
  rows.map((row) => ({ ...row, gives: work.offers.map(({ woods }) => woods.reduce((sum, wood) => sum + row.gives[wood]!, 0)) }));
