import { type Cut } from "./greedy-sheets";
import { type SheetShelf, type Way } from "./sheet-shelf";

interface OpenStrip {
  readonly across: number;
  free: number;
  readonly shapes: number[];
}

interface OpenSheet {
  readonly way: number;
  deep: number;
  readonly strips: OpenStrip[];
}

/** Puts a shape where it fits first: at the end of a strip that is open, or into a strip of its own; false where there is no room. */
const isPut = (sheet: OpenSheet, { shapes, room }: Way, place: number): boolean => {
  const { along, across } = shapes[place]!;
  const strip = sheet.strips.find((each) => each.across >= across && each.free >= along);
  if (strip !== undefined) {
    strip.free -= along;
    strip.shapes.push(place);
    return true;
  }
  if (across > sheet.deep) return false;
  sheet.deep -= across;
  sheet.strips.push({ across, free: room - along, shapes: [place] });
  return true;
};

/**
 * A plan as the shop makes it by hand: widest piece first, each where it first fits, new sheets of one kind and way while there are any
 * that take it, else of the next. It comes to an end whatever the size of the job; undefined where the sheets run out.
 */
export const firstFit = ({ kinds, sheets }: SheetShelf, ways: readonly Way[], preferred: number): Cut[] | undefined => {
  const order = [preferred, ...ways.keys()];
  const available = sheets.map((sheet) => sheet.available);
  const open: OpenSheet[] = [];
  const placeOf = ways.map(({ shapes }) => kinds.map((_, kind) => shapes.findIndex((shape) => shape.kind === kind)));
  const widest = [...kinds.keys()].sort((one, other) => {
    const size = (kind: number): number => (ways[preferred]!.first === "rip" ? kinds[kind]!.width : kinds[kind]!.length);
    return size(other) - size(one) || one - other;
  });
  for (const kind of widest)
    for (let count = 0; count < kinds[kind]!.wanted; count += 1) {
      const place = (way: number): number => placeOf[way]![kind]!;
      if (open.some((sheet) => place(sheet.way) >= 0 && isPut(sheet, ways[sheet.way]!, place(sheet.way)))) continue;
      const way = order.find((each) => place(each) >= 0 && available[ways[each]!.sheet]! > 0);
      if (way === undefined) return undefined;
      available[ways[way]!.sheet]! -= 1;
      const sheet = { way, deep: ways[way]!.depth, strips: [] };
      isPut(sheet, ways[way]!, place(way));
      open.push(sheet);
    }
  return open.map(({ way, strips }) => ({
    filling: { way, strips: strips.map(({ shapes }) => [...shapes].sort((one, other) => other - one)) }, times: 1,
  }));
};
