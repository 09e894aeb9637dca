import type { CertificatePart } from "./certificate-job";

/** Work left to the checker; at 0 it has given up. */
export interface Count {
  left: number;
}

/** A piece as it lies, its kerf counted in. */
interface Lying {
  readonly panel: number;
  readonly along: number;
  readonly across: number;
  readonly worth: number;
  readonly wanted: number;
}

/** A sheet to be filled one way round, in steps that all its sizes are multiples of. */
interface Turned {
  readonly long: number;
  readonly wide: number;
  /** Narrowest first. */
  readonly lying: readonly Lying[];
}

const divisor = (one: number, other: number): number => (other === 0 ? one : divisor(other, one % other));

const turned = (part: CertificatePart, sheet: number, first: "rip" | "crosscut", worth: readonly number[]): Turned => {
  const { length, width, suits } = part.sheets[sheet]!;
  const [long, wide] = first === "rip" ? [length + part.kerf, width + part.kerf] : [width + part.kerf, length + part.kerf];
  const lying = part.panels.flatMap((size, panel): Lying[] => {
    if (!suits[panel]! || worth[panel]! <= 0) return [];
    const [one, other] = [size.length + part.kerf, size.width + part.kerf];
    const common = { panel, worth: worth[panel]!, wanted: size.wanted };
    const along = { ...common, along: one, across: other };
    const across = { ...common, along: other, across: one };
    if (size.turns && one !== other) return [along, across];
    return [first === "rip" ? along : across];
  }).filter((each) => each.along <= long && each.across <= wide);
  lying.sort((one, other) => one.across - other.across || other.along - one.along || one.panel - other.panel);
  const alongStep = lying.reduce((step, { along }) => divisor(step, along), 0) || 1;
  const acrossStep = lying.reduce((step, { across }) => divisor(step, across), 0) || 1;
  return {
    long: Math.floor(long / alongStep), wide: Math.floor(wide / acrossStep),
    lying: lying.map((each) => ({ ...each, along: each.along / alongStep, across: each.across / acrossStep })),
  };
};

/** The table, by room, with up to so many of one thing more to choose from. */
const withMore = (table: Float64Array, size: number, worth: number, most: number, count: Count): Float64Array => {
  const more = Float64Array.from(table);
  const copies = Math.min(most, Math.floor((table.length - 1) / size));
  for (let room = table.length - 1; room >= size; room -= 1) {
    let best = more[room]!;
    for (let copy = 1; copy <= copies && copy * size <= room; copy += 1) best = Math.max(best, table[room - copy * size]! + copy * worth);
    more[room] = best;
  }
  count.left -= table.length * (1 + copies);
  return more;
};

/**
 * For each lying piece the most worth of pieces up to it in one strip, by the strip's length, and of strips led by pieces up to it, by the
 * depth: as if every strip and every way to lie had all pieces to itself. Never too little.
 */
const bounds = ({ long, wide, lying }: Turned, count: Count) => {
  let behind: Float64Array = new Float64Array(long + 1);
  let beside: Float64Array = new Float64Array(wide + 1);
  return lying.map(({ along, across, worth, wanted }) => {
    behind = withMore(behind, along, worth, wanted, count);
    beside = withMore(beside, across, worth + behind[long - along]!, wanted, count);
    return { behind, beside };
  });
};

/** What is on the sheet so far, and the depth that is free. */
interface State {
  readonly held: readonly number[];
  readonly worth: number;
  readonly free: number;
}

/**
 * All that a sheet cut one way round can hold that is worth more than is said, or the first of it. Strips are put on it from the widest
 * down, and of the ways to hold the same only the one that leaves most depth is kept, where by the bounds it can come to more. "unknown"
 * where the count is spent.
 */
const worthMore = (of: Turned, panels: number, said: number, isOneEnough: boolean, count: Count): readonly State[] | "unknown" => {
  const { long, lying } = of;
  const bound = bounds(of, count);
  const states = new Map<string, State>([["", { held: Array.from({ length: panels }, () => 0), worth: 0, free: of.wide }]]);
  for (let leader = lying.length - 1; leader >= 0; leader -= 1) {
    const { beside } = bound[leader]!;
    for (const [key, { worth, free }] of states) if (worth + beside[free]! <= said) states.delete(key);
    const waiting = [...states.values()];
    const kept = (state: State): void => {
      const key = state.held.join();
      count.left -= panels;
      if ((states.get(key)?.free ?? -1) >= state.free) return;
      states.set(key, state);
      waiting.push(state);
    };
    const strip = (held: number[], worth: number, free: number, place: number, room: number): void => {
      count.left -= 1;
      if (count.left <= 0 || worth + (place < 0 ? 0 : bound[place]!.behind[room]!) + beside[free]! <= said) return;
      if (place < 0) return kept({ held: [...held], worth, free });
      const { panel, along, worth: each, wanted } = lying[place]!;
      const most = Math.min(wanted - held[panel]!, Math.floor(room / along));
      for (let taken = 0; taken <= most; taken += 1) {
        strip(held, worth + taken * each, free, place - 1, room - taken * along);
        held[panel]! += 1;
      }
      held[panel]! -= most + 1;
    };
    const { panel, along, across, worth, wanted } = lying[leader]!;
    for (let state = waiting.pop(); state !== undefined; state = waiting.pop()) {
      if (isOneEnough && state.worth > said) return [state];
      if (state.held[panel]! >= wanted || across > state.free) continue;
      const held = [...state.held];
      held[panel]! += 1;
      strip(held, state.worth + worth, state.free - across, leader, long - along);
    }
    if (count.left <= 0) return "unknown";
  }
  return [...states.values()].filter(({ worth }) => worth > said);
};

/** Whether a kind of sheet can hold more worth than is said, cut in two stages any way round that is asked for. */
export const holdsMore = (
  part: CertificatePart, sheet: number, worth: readonly number[], said: number, count: Count,
): boolean | "unknown" => {
  for (const first of part.ways) {
    const found = worthMore(turned(part, sheet, first, worth), part.panels.length, said, true, count);
    if (found === "unknown") return found;
    if (found.length > 0) return true;
  }
  return false;
};

/** How many of each kind a sheet can hold, worth more than is said, in all ways; "unknown" where the count is spent. */
export const heldSets = (
  part: CertificatePart, sheet: number, worth: readonly number[], said: number, count: Count,
): readonly (readonly number[])[] | "unknown" => {
  const all: (readonly number[])[] = [];
  for (const first of part.ways) {
    const found = worthMore(turned(part, sheet, first, worth), part.panels.length, said, false, count);
    if (found === "unknown") return found;
    all.push(...found.map(({ held }) => held));
  }
  return all;
};
