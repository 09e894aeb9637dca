import type { Effort } from "../shelf/effort";
import { type Draw, shuffled } from "../draws";
import type { GluedStrip, GlueWork, PanelKind } from "./glue-work";
import type { Section } from "./sections";

/** The next strip of a panel: out of which section, and how wide. */
interface NextStrip {
  readonly at: number;
  readonly net: number;
}

/** In which order sections are taken; widest first where nothing is drawn. */
export interface FillOrder {
  readonly draw: Draw | undefined;
  /** Strips a panel may have above the fewest there can be. */
  readonly spare: number;
}

/** What a panel still wants. */
interface Wanted {
  readonly place: number;
  readonly kind: PanelKind;
  readonly width: number;
  /** Strips it may still have. */
  readonly strips: number;
}

/** Losses in marks beyond any width: a strip that ends no panel, and a section longer than the panel, which is taken last. */
const NOT_LAST = 1e6;
const LONGER = 1e7;
/** Sections of a large job that are weighed for one strip. */
const MOST_LOOKED_AT = 64;

/** The net width of a strip that leaves no sliver to come; 0 where there is none. */
const netOf = (most: number, { least, greatest }: PanelKind, width: number, strips: number): number => {
  const net = Math.min(most, greatest);
  if (net < least) return 0;
  if (net >= width) return Math.max(width, least);
  const shortened = width - net < least ? width - least : net;
  return shortened < least || width - shortened > (strips - 1) * greatest ? 0 : shortened;
};

/** The best next strip out of the sections: one that ends the panel before others, then the one that loses least. */
const nextStrip = (work: GlueWork, sections: readonly Section[], wanted: Wanted, draw: Draw | undefined): NextStrip | undefined => {
  const { kerf, joints, woods } = work;
  const { kind, place, width, strips } = wanted;
  let at = -1;
  let best = 0;
  let least = Infinity;
  let looked = 0;
  // Of two that lose alike the wider, or with a draw the first from any place on.
  const start = draw === undefined ? 0 : Math.floor(draw() * sections.length);
  for (let count = 0; count < sections.length && looked < MOST_LOOKED_AT; count += 1) {
    const one = start + count < sections.length ? start + count : start + count - sections.length;
    const section = sections[one]!;
    if (section.length < kind.length || woods[section.wood]!.suits[place] !== true) continue;
    const most = section.left - joints;
    if (most < kind.least) continue;
    looked += 1;
    // As wide as it goes, or so that a least strip is left.
    for (const limit of [most, most - kerf - joints - kind.least]) {
      const net = netOf(limit, kind, width, strips);
      if (net === 0) continue;
      const isLast = net >= width;
      const left = most - net - kerf;
      const spoilt = left > 0 && left - joints < kind.least ? left : 0;
      const split = left <= 0 ? 0 : kerf + joints;
      const tie = draw === undefined ? 1 - net / (width + 1) : 0;
      const loss = spoilt + (isLast ? net - width : NOT_LAST + split + tie) + (section.length > kind.length ? LONGER : 0);
      if (loss >= least) continue;
      least = loss;
      at = one;
      best = net;
    }
  }
  return at < 0 ? undefined : { at, net: best };
};

/** The strips of one panel out of the sections, which it takes from; undefined where they do not hold it. */
const panelStrips = (
  work: GlueWork, sections: Section[], place: number, panel: number, order: FillOrder, effort: Effort,
): readonly GluedStrip[] | undefined => {
  const kind = work.kinds[place]!;
  const strips: GluedStrip[] = [];
  const allowed = Math.min(work.strips, Math.ceil(kind.need / kind.greatest) + order.spare);
  let width = kind.need;
  while (width > 0) {
    const most = allowed - strips.length;
    effort.left -= sections.length + 1;
    const next = most <= 0 ? undefined : nextStrip(work, sections, { place, kind, width, strips: most }, order.draw);
    if (next === undefined) return undefined;
    const section = sections.splice(next.at, 1)[0]!;
    const { wood, stretch, along, across } = section;
    strips.push({ wood, stretch, along, across, net: next.net, kind: place, panel });
    const taken = next.net + work.joints + work.kerf;
    section.across += taken;
    section.left -= taken;
    if (section.left > work.joints) sections.unshift(section);
    width -= next.net;
  }
  return strips;
};

/** Panels filled one after the other, or as far as it goes. */
export interface Filled {
  readonly strips: readonly GluedStrip[];
  /** The kind of panel that found no place, and how many panels have none. */
  readonly without?: number;
  readonly missing: number;
}

const missingFrom = ({ kinds }: GlueWork, kind: number, panel: number): number =>
  kinds.slice(kind).reduce((sum, { count }) => sum + count, -panel);

const widestFirst = (sections: Section[]): Section[] => sections.sort((one, other) => other.left - one.left);

/** Panel after panel out of all the sections. */
const acrossBoards = (work: GlueWork, sections: readonly Section[], order: FillOrder, effort: Effort): Filled => {
  const pool = order.draw === undefined ? widestFirst([...sections]) : shuffled(sections, order.draw);
  const strips: GluedStrip[] = [];
  for (const [kind, { count }] of work.kinds.entries())
    for (let panel = 0; panel < count; panel += 1) {
      const found = panelStrips(work, pool, kind, panel, order, effort);
      if (found === undefined) return { strips, without: kind, missing: missingFrom(work, kind, panel) };
      strips.push(...found);
    }
  return { strips, missing: 0 };
};

/** Panel after panel, each out of the sections of one board. */
const boardByBoard = (work: GlueWork, sections: readonly Section[], order: FillOrder, effort: Effort): Filled => {
  const boards = new Map<number, Section[]>();
  for (const section of sections) boards.set(section.wood, [...(boards.get(section.wood) ?? []), section]);
  const strips: GluedStrip[] = [];
  for (const [kind, { count }] of work.kinds.entries())
    for (let panel = 0; panel < count; panel += 1) {
      let found: readonly GluedStrip[] | undefined;
      for (const [wood, pool] of boards) {
        const trial = pool.map((section) => ({ ...section }));
        found = panelStrips(work, trial, kind, panel, order, effort);
        if (found === undefined) continue;
        boards.set(wood, trial);
        break;
      }
      if (found === undefined) return { strips, without: kind, missing: missingFrom(work, kind, panel) };
      strips.push(...found);
    }
  return { strips, missing: 0 };
};

export const filledPanels = (work: GlueWork, sections: readonly Section[], order: FillOrder, effort: Effort): Filled =>
  (work.isOfOneBoard ? boardByBoard : acrossBoards)(work, sections, order, effort);
