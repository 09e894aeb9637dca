import type { Spot } from "./paper";

/** Less than a pen draws. */
const SHORTEST = 0.02;

/** Lines at 45 degrees within an outline of any shape, so far apart, rising to the right or falling. */
export const hatching = (outline: readonly Spot[], apart: number, isFalling: boolean): readonly (readonly [Spot, Spot])[] => {
  const way = isFalling ? -1 : 1;
  // Across the lines, and along them.
  const across = ([x, y]: Spot): number => (x * way + y) * Math.SQRT1_2;
  const along = ([x, y]: Spot): number => (x - y * way) * Math.SQRT1_2;
  const spot = (over: number, on: number): Spot => [(over * way + on) * Math.SQRT1_2, (over - on * way) * Math.SQRT1_2];
  const overs = outline.map(across);
  const [least, most] = [Math.min(...overs), Math.max(...overs)];
  const lines: (readonly [Spot, Spot])[] = [];
  for (let over = least + apart / 2; over < most; over += apart) {
    const crossings = outline.flatMap((from, place) => {
      const to = outline[(place + 1) % outline.length] ?? from;
      const [a, b] = [across(from), across(to)];
      if (a < over === b < over) return [];
      return [along(from) + ((along(to) - along(from)) * (over - a)) / (b - a)];
    }).sort((one, other) => one - other);
    for (let place = 0; place + 1 < crossings.length; place += 2) {
      const [from = 0, to = from] = crossings.slice(place, place + 2);
      if (to - from > SHORTEST) lines.push([spot(over, from), spot(over, to)]);
    }
  }
  return lines;
};
