import type { GlueWork, PanelKind } from "./glue-work";

/** How many strips a panel takes from each section. */
export interface PanelCounts {
  readonly kind: PanelKind;
  readonly counts: readonly number[];
}

/** What is still to be given: to the panels, and by the sections above the least widths of their strips. */
interface Transport {
  readonly rooms: number[];
  /** By panel and section: net width above the least, and the most of it. */
  readonly given: number[][];
  readonly most: readonly (readonly number[])[];
}

/** Moves width to a panel from a section that has some, or from one whose other panel can have it from elsewhere; how much was moved. */
const moved = ({ rooms, given, most }: Transport, panel: number, wanted: number, seen: Set<number>): number => {
  for (let section = 0; section < rooms.length; section += 1) {
    const more = Math.min(wanted, most[panel]![section]! - given[panel]![section]!);
    if (more <= 0 || seen.has(section)) continue;
    seen.add(section);
    let found = Math.min(more, rooms[section]!);
    if (found > 0) rooms[section] = rooms[section]! - found;
    for (let other = 0; found === 0 && other < given.length; other += 1) {
      const could = other === panel ? 0 : Math.min(more, given[other]![section]!);
      if (could <= 0) continue;
      found = moved({ rooms, given, most }, other, could, seen);
      given[other]![section] = given[other]![section]! - found;
    }
    if (found === 0) continue;
    given[panel]![section] = given[panel]![section]! + found;
    return found;
  }
  return 0;
};

/**
 * For strips so many a panel and section, the net width that each section gives each panel: a transport, with each strip between its least
 * and its greatest. Undefined where no widths serve.
 */
export const stripWidths = (
  { kerf, joints }: Pick<GlueWork, "kerf" | "joints">, panels: readonly PanelCounts[], widths: readonly number[],
): number[][] | undefined => {
  const rooms = widths.map((width, section) =>
    panels.reduce((left, { kind, counts }) => left - counts[section]! * (kind.least + joints + kerf), width + kerf));
  if (rooms.some((room) => room < 0)) return undefined;
  const given = panels.map(() => widths.map(() => 0));
  const most = panels.map(({ kind, counts }) => counts.map((count) => (count === 0 ? 0 : count * (kind.greatest - kind.least))));
  const transport = { rooms, given, most };
  for (const [panel, { kind, counts }] of panels.entries()) {
    let wanted = kind.need - kind.least * counts.reduce((sum, count) => sum + count, 0);
    while (wanted > 0) {
      const found = moved(transport, panel, wanted, new Set());
      if (found === 0) return undefined;
      wanted -= found;
    }
  }
  return given.map((row, panel) => row.map((more, section) => more + panels[panel]!.counts[section]! * panels[panel]!.kind.least));
};
