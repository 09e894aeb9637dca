import { type Effort } from "../shelf/effort";
import { panelArea, type PanelKind, type Shape, type SheetShelf, type Way } from "./sheet-shelf";
import { stackCells, stripCells, type StripTables } from "./strip-tables";

/** What a search of a job needs besides its numbers of sheets. */
export interface SearchSide {
  readonly shelf: SheetShelf;
  readonly ways: readonly Way[];
  /** For each way the bounds of the worths that are first in the search. */
  readonly tables: readonly StripTables[];
  readonly worth: readonly number[];
  readonly areas: readonly number[];
  /** For each kind those that can be where it is, and are larger. */
  readonly larger: readonly (readonly number[])[];
}

/** Whether the one can lie wherever the other does, and takes more of it. */
const isLarger = (one: PanelKind, other: PanelKind): boolean =>
  one.length >= other.length && one.width >= other.width && panelArea(one) > panelArea(other) && (other.turns || !one.turns);

export const largerKinds = ({ kinds, takes }: SheetShelf): number[][] =>
  kinds.map((kind, place) =>
    kinds.flatMap((other, at) => (isLarger(other, kind) && takes.every((taken) => taken[place]! || !taken[at]!) ? [at] : [])),
  );

/** Steps of one look at a shape, and of a filling that is shown. */
const LOOK = 8;
const SHOWN = 20;

/** Whether nothing that is left could be put into a strip, beside its pieces or in the place of a smaller one; or into one of its own. */
const fullness = (shapes: readonly Shape[], larger: readonly (readonly number[])[], left: readonly number[]) => ({
  isFullStrip: (strip: readonly number[], opener: number, free: number): boolean => {
    const { across } = shapes[opener]!;
    for (let place = 0; place < shapes.length && shapes[place]!.across <= across; place += 1)
      if (left[shapes[place]!.kind]! > 0 && shapes[place]!.along <= free) return false;
    const fitsFor = (kind: number, along: number): boolean =>
      shapes.some((shape) => shape.kind === kind && shape.across <= across && shape.along >= along && shape.along - along <= free);
    return !strip.some((place, index) => {
      if (index > 0 && strip[index - 1] === place) return false;
      const { kind, along } = shapes[place]!;
      return larger[kind]!.some((other) => left[other]! > 0 && fitsFor(other, along));
    });
  },
  isFull: (deep: number): boolean => !shapes.some(({ kind, across }) => left[kind]! > 0 && across <= deep),
});

/** Depth and worth beside a strip, and the most area it may have where the strip before has the same widest piece. */
interface Below {
  readonly deep: number;
  readonly value: number;
  readonly most: number;
}

type Visit = (strips: readonly (readonly number[])[], held: readonly number[]) => boolean;

/**
 * Every filling of a sheet with a piece of one kind in it that is worth as much as is needed and is full: no piece that is left can be put
 * beside or in the place of a smaller one; any plan can be brought to such fillings by moving pieces forward. False where the effort, or
 * whoever looks at them, ends it.
 */
export const eachFilling = (
  { shelf, ways, tables, worth, areas, larger }: SearchSide, at: number, wanted: readonly number[], within: number, needed: number,
  effort: Effort, visit: Visit,
): boolean => {
  const { shapes, room, depth, cell } = ways[at]!;
  const { strips: inStrip, stacks } = tables[at]!;
  const [long, wide] = [stripCells(ways[at]!), stackCells(ways[at]!)];
  const inDepth = (opener: number, deep: number): number => stacks[opener * wide + Math.floor(deep / cell.across)]!;
  const left = [...wanted];
  const held = shelf.kinds.map(() => 0);
  const open: number[][] = [];
  const narrowest = shapes.findIndex(({ kind }) => kind === within);
  let isOver = false;
  const { isFullStrip, isFull } = fullness(shapes, larger, left);
  const take = (place: number, count: number): void => {
    left[shapes[place]!.kind]! -= count;
    held[shapes[place]!.kind]! += count;
  };
  const stack = (from: number, deep: number, value: number, opener: number, before: number): void => {
    if (value >= needed && held[within]! > 0 && isFull(deep)) {
      effort.left -= SHOWN * held.length;
      isOver = !visit(open.map((strip) => [...strip]), [...held]);
    }
    for (let place = from; place >= 0 && !isOver; place -= 1) {
      if (value + inDepth(place, deep) < needed || (held[within] === 0 && place < narrowest)) return;
      const { kind, along, across } = shapes[place]!;
      if (left[kind] === 0 || across > deep) continue;
      take(place, 1);
      open.push([place]);
      const below = { deep: deep - across, value, most: place === opener ? before : Infinity };
      fill(place, place, room - along, worth[kind]!, areas[kind]!, below);
      open.pop();
      take(place, -1);
    }
  };
  const fill = (opener: number, place: number, free: number, inside: number, area: number, below: Below): void => {
    effort.left -= LOOK;
    if (effort.left <= 0) isOver = true;
    const strip = open[open.length - 1]!;
    const more = place < 0 ? 0 : inStrip[place * long + Math.floor(free / cell.along)]!;
    if (isOver || below.value + inside + more + inDepth(opener, below.deep) < needed) return;
    if (place < 0) {
      effort.left -= LOOK * (strip.length + shapes.length);
      if (area <= below.most && isFullStrip(strip, opener, free)) stack(opener, below.deep, below.value + inside, opener, area);
      return;
    }
    const { kind, along } = shapes[place]!;
    const count = Math.min(left[kind]!, Math.floor(free / along));
    take(place, count);
    strip.push(...Array.from({ length: count }, () => place));
    for (let taken = count; ; taken -= 1) {
      fill(opener, place - 1, free - taken * along, inside + taken * worth[kind]!, area + taken * areas[kind]!, below);
      if (taken === 0) break;
      strip.pop();
      take(place, -1);
    }
  };
  if (narrowest >= 0) stack(shapes.length - 1, depth, 0, -1, Infinity);
  return !isOver;
};
