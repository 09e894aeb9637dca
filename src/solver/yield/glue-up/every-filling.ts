import { type Effort, isSpent } from "../shelf/effort";
import { crosscuts, sectionLengths } from "./crosscuts";
import type { GluedStrip, GlueWork, PanelKind } from "./glue-work";
import { type PanelCounts, stripWidths } from "./strip-widths";

/** The strips of a filling, "none" where there is no filling at all, or "not known" where there is too much to look through. */
export type EveryFilling = readonly GluedStrip[] | "none" | "not known";

/** A section: where on which board it lies, and how long it is. */
interface Part {
  readonly wood: number;
  readonly stretch: number;
  readonly along: number;
  readonly length: number;
}

interface Panel {
  readonly place: number;
  readonly copy: number;
  readonly kind: PanelKind;
}

/** Ways to crosscut one board, and panels times sections, beyond which nothing is tried. */
const MOST_WAYS = 2_000;
const MOST_COUNTS = 2_000;

/** Every way to crosscut a board's stretches; undefined where there are too many. */
const waysOf = (work: GlueWork, wood: number, lengths: readonly number[]): readonly (readonly Part[])[] | undefined => {
  let ways: readonly (readonly Part[])[] = [[]];
  for (const [stretch, room] of work.woods[wood]!.stretches.entries()) {
    const { ways: cuts, isCut } = crosscuts(room, lengths, work.kerf);
    if (isCut || ways.length * cuts.length > MOST_WAYS) return undefined;
    const cutParts = cuts.map((way) => {
      let along = 0;
      return way.flatMap(([of, count]) => Array.from({ length: count }, (): Part => {
        const part = { wood, stretch, along, length: lengths[of]! };
        along += part.length + work.kerf;
        return part;
      }));
    });
    ways = ways.flatMap((before) => cutParts.map((parts) => [...before, ...parts]));
  }
  return ways;
};

/** For each section the one before it that gives the same, where there is one. */
const twinsOf = ({ woods, isOfOneBoard }: GlueWork, parts: readonly Part[]): readonly (number | undefined)[] => {
  const last = new Map<string, number>();
  return parts.map(({ wood, length }, section) => {
    const { width, suits } = woods[wood]!;
    const key = JSON.stringify([length, width, suits, isOfOneBoard ? wood : 0]);
    const before = last.get(key);
    last.set(key, section);
    return before;
  });
};

/** Strips side by side in their sections, panel after panel. */
const laidStrips = (
  { kerf, joints }: GlueWork, parts: readonly Part[], panels: readonly Panel[], rows: readonly PanelCounts[], nets: readonly number[][],
): readonly GluedStrip[] => {
  const across = parts.map(() => 0);
  return panels.flatMap(({ place, copy, kind }, panel) =>
    parts.flatMap(({ wood, stretch, along }, section) => {
      const count = rows[panel]!.counts[section]!;
      let more = nets[panel]![section]! - count * kind.least;
      return Array.from({ length: count }, (): GluedStrip => {
        const net = kind.least + Math.min(more, kind.greatest - kind.least);
        const strip = { wood, stretch, along, across: across[section]!, net, kind: place, panel: copy };
        more -= net - kind.least;
        across[section] = across[section]! + net + joints + kerf;
        return strip;
      });
    }),
  );
};

/** Sections to be filled: what each has left for strips of the least width, and the counts of the panels so far. */
interface Filling {
  readonly work: GlueWork;
  readonly parts: readonly Part[];
  readonly panels: readonly Panel[];
  readonly widths: readonly number[];
  readonly twins: readonly (number | undefined)[];
  readonly rooms: number[];
  readonly rows: PanelCounts[];
}

/** One panel's strips so far, section by section. */
interface Row {
  readonly panel: number;
  readonly counts: number[];
  readonly strips: number;
  /** So far the same as those of a like panel before it, than which it takes no more. */
  readonly isTied: boolean;
  /** The board of its strips, where there is one. */
  readonly wood: number | undefined;
}

/** The most strips worth a try: of sections alike so far the first gives at least as many, of like panels the first takes as many. */
const mostOf = ({ work, parts, panels, widths, twins, rooms, rows }: Filling, row: Row, section: number): number => {
  const { kind, place } = panels[row.panel]!;
  const { wood, length } = parts[section]!;
  if (length < kind.length || work.woods[wood]!.suits[place] !== true) return 0;
  if (work.isOfOneBoard && row.wood !== undefined && row.wood !== wood) return 0;
  // One strip as wide as two takes less: a second one only where the first is as wide as it goes.
  const widest = Math.min(widths[section]! - work.joints, Math.max(kind.need, kind.least));
  const twin = twins[section];
  const isAsTwin = twin !== undefined && rows.every(({ counts }) => counts[twin] === counts[section]);
  return Math.min(
    work.strips - row.strips, Math.floor(rooms[section]! / (kind.least + work.joints + work.kerf)), Math.ceil(widest / kind.greatest),
    isAsTwin ? row.counts[twin!]! : Infinity, row.isTied ? rows[rows.length - 1]!.counts[section]! : Infinity,
  );
};

/** Whether all sections together are wide enough for the panels so far and those to come. */
const areWideEnough = ({ work: { kerf, joints }, panels, widths, rows }: Filling): boolean => {
  const taken = rows.map(({ kind, counts }) => {
    const strips = counts.reduce((sum, count) => sum + count, 0);
    return Math.max(kind.need, kind.least * strips) + strips * (kerf + joints);
  });
  const toCome = panels.slice(rows.length).map(({ kind }) => kind.need + Math.ceil(kind.need / kind.greatest) * (kerf + joints));
  const sum = (each: readonly number[]): number => each.reduce((all, one) => all + one, 0);
  return sum(taken) + sum(toCome) <= sum(widths) + widths.length * kerf;
};

/** Panel after panel, each with every number of strips from every section. */
const filled = (filling: Filling, effort: Effort): EveryFilling => {
  const { work, parts, panels, widths, rooms, rows } = filling;
  const panel = rows.length;
  effort.left -= parts.length * (panel + 1);
  if (isSpent(effort)) return "not known";
  const nets = stripWidths(work, rows, widths);
  if (nets === undefined || !areWideEnough(filling)) return "none";
  if (panel === panels.length) return laidStrips(work, parts, panels, rows, nets);
  const { kind, place } = panels[panel]!;
  const taken = (row: Row, section: number): EveryFilling => {
    const { counts, strips, isTied } = row;
    if (section === parts.length || strips * kind.least >= kind.need || strips === work.strips) {
      if (strips * kind.greatest < kind.need) return "none";
      rows.push({ kind, counts: [...counts] });
      const found = filled(filling, effort);
      rows.pop();
      return found;
    }
    for (let count = mostOf(filling, row, section); count >= 0; count -= 1) {
      effort.left -= 1;
      const used = count * (kind.least + work.joints + work.kerf);
      counts[section] = count;
      rooms[section] = rooms[section]! - used;
      const found = taken({
        ...row, strips: strips + count, isTied: isTied && count === rows[panel - 1]!.counts[section]!,
        wood: count > 0 ? parts[section]!.wood : row.wood,
      }, section + 1);
      rooms[section] = rooms[section]! + used;
      counts[section] = 0;
      if (found !== "none") return found;
    }
    return "none";
  };
  const isTied = panels[panel - 1]?.place === place;
  return taken({ panel, counts: parts.map(() => 0), strips: 0, isTied, wood: undefined }, 0);
};

/**
 * Looks through every filling of the boards there is: every way to crosscut each, and of each section every number of strips for every
 * panel. For small sets of boards that drawn orders do not fill, and to show that nothing does.
 */
export const everyFilling = (work: GlueWork, woods: readonly number[], effort: Effort): EveryFilling => {
  const panels = work.kinds.flatMap((kind, place) => Array.from({ length: kind.count }, (_, copy): Panel => ({ place, copy, kind })));
  if (panels.length * woods.length > MOST_COUNTS) return "not known";
  const lengths = sectionLengths(work);
  const ways = woods.map((wood) => waysOf(work, wood, lengths));
  const from = (at: number, parts: readonly Part[]): EveryFilling => {
    if (at < woods.length) {
      for (const cut of ways[at] ?? []) {
        const found = from(at + 1, [...parts, ...cut]);
        if (found !== "none") return found;
      }
      return ways[at] === undefined ? "not known" : "none";
    }
    if (panels.length * parts.length > MOST_COUNTS) return "not known";
    const widths = parts.map(({ wood }) => work.woods[wood]!.width);
    const rooms = widths.map((width) => width + work.kerf);
    return filled({ work, parts, panels, widths, twins: twinsOf(work, parts), rooms, rows: [] }, effort);
  };
  return from(0, []);
};
