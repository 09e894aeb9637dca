import { lengthOf, type Unit } from "../../solver/length/length";

/** What fits on Letter and on A4 alike, lying, with a margin and a line over it that says whose it is. */
export const WIDEST = 254;
export const HIGHEST = 172;

/** Scales of drafting, each 1 to so many: parts of an inch to the foot, and metric. */
export const SCALES: Readonly<Record<Unit, readonly number[]>> = {
  in: [1, 2, 4, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 256, 384, 512, 768, 1024],
  mm: [1, 2, 5, 10, 20, 25, 50, 75, 100, 200, 250, 500, 1000, 2000],
};

/** The largest scale at which a length goes into so much of the paper. */
export const scaleFor = (length: number, unit: Unit, room: number): number => {
  const least = lengthOf(length, unit).toNumber() / room;
  return SCALES[unit].find((scale) => scale >= least) ?? Math.ceil(least);
};
