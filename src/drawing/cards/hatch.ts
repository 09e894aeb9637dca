import { type Drawn, line, type Spot, WEIGHT } from "./pen";

/** Between two lines of a hatching, square to them, in millimetres. */
const APART = 1.1;

/** Across lines at 45 degrees and along them. */
const turned = ([x, y]: Spot): Spot => [(x + y) * Math.SQRT1_2, (x - y) * Math.SQRT1_2];
const back = ([across, along]: Spot): Spot => [(across + along) * Math.SQRT1_2, (across - along) * Math.SQRT1_2];

/** Waste: lines at 45 degrees within a shape of any form. */
export const hatch = (shape: readonly Spot[]): readonly Drawn[] => {
  const corners = shape.map(turned);
  const across = corners.map(([at]) => at);
  const first = Math.ceil(Math.min(...across) / APART);
  const last = Math.floor(Math.max(...across) / APART);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, step) => (first + step) * APART).flatMap((at) => {
    const met = corners
      .flatMap(([from, fromAlong], place): readonly number[] => {
        const [to, toAlong] = corners[(place + 1) % corners.length] ?? [from, fromAlong];
        return from <= at === to <= at ? [] : [fromAlong + ((at - from) / (to - from)) * (toAlong - fromAlong)];
      })
      .sort((one, other) => one - other);
    return Array.from({ length: Math.floor(met.length / 2) }, (__, pair) =>
      line([back([at, met[2 * pair] ?? 0]), back([at, met[2 * pair + 1] ?? 0])], WEIGHT.hatch, { part: "waste" }),
    );
  });
};
