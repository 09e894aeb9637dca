import { type Box, doMeet, type Spot } from "./pen";

/** Room kept round a text, in millimetres. */
const AIR = 0.5;

const grown = ({ left, right, top, bottom }: Box): Box => ({ left: left - AIR, right: right + AIR, top: top - AIR, bottom: bottom + AIR });

/** Whether a place lies within a shape: how often a line from it meets the shape's edges. */
const isWithin = ([x, y]: Spot, shape: readonly Spot[]): boolean => {
  let inside = false;
  for (const [place, [x1, y1]] of shape.entries()) {
    const [x2, y2] = shape[(place + 1) % shape.length] ?? [x1, y1];
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  }
  return inside;
};

/** Places within a shape on which nothing stands yet. */
export interface FreeSpots {
  /** Takes the room of a line, which other lines may cross and no text may. */
  readonly take: (box: Box) => void;
  /** The first of the places whose text finds room, and whose lines cross no other text; taken from now on. */
  readonly first: <Place extends { readonly box: Box; readonly lines?: readonly Box[] }>(places: readonly Place[]) => Place | undefined;
  /** Takes room beside the shape, unless some of it is taken. */
  readonly beside: (boxes: readonly Box[]) => boolean;
}

export const freeSpots = (shape: readonly Spot[]): FreeSpots => {
  const outside: Box[] = [];
  const texts: Box[] = [];
  const lines: Box[] = [];
  const take = (box: Box): void => void lines.push(grown(box));
  const isFree = (box: Box): boolean => {
    const { left, right, top, bottom } = grown(box);
    const middle = (top + bottom) / 2;
    const edges: readonly Spot[] = [[left, top], [right, top], [left, bottom], [right, bottom], [left, middle], [right, middle]];
    return edges.every((spot) => isWithin(spot, shape)) && ![...texts, ...lines].some((other) => doMeet(box, other));
  };
  return {
    take,
    beside: (boxes) => {
      const isTaken = boxes.some((box) => outside.some((other) => doMeet(grown(box), other)));
      if (!isTaken) outside.push(...boxes);
      return !isTaken;
    },
    first: (places) => {
      const found = places.find(({ box, lines: drawn = [] }) =>
        isFree(box) && !drawn.some((one) => texts.some((other) => doMeet(one, other))));
      if (found !== undefined) {
        texts.push(grown(found.box));
        for (const one of found.lines ?? []) take(one);
      }
      return found;
    },
  };
};
