import { DEGREES_PER_RADIAN } from "../../degrees";
import { isProblem } from "../../problem";
import { corners, type CornerReading } from "../corner-reading";
import type { RiserReading } from "../riser-reading";
import type { TreadReading } from "../tread-reading";
import { middleAndSpread } from "./lean-signs";

/** Two names of one surface that disagree: a tread's lean and the angle of the riser's end, or a riser's flare and the tread's angle. */
export interface Disagreement {
  readonly tread: number;
  readonly riser: number;
  readonly side: "left" | "right";
  readonly about: "lean" | "flare";
  /** As read: the lean or flare, and the angle of the other piece. */
  readonly lean: number;
  readonly angle: number;
  /** Degrees. */
  readonly by: number;
}

/** Degrees within which a lean and an angle are one surface: twice what a bevel gauge is read to; common practice, no source. */
const ONE_SURFACE = 0.5;
/** So many times what the flight's own pairs usually disagree by is too much: a hand that reads leans coarsely is not told so each time. */
const FAR = 3;
const PAIRS_THAT_SHOW_A_HAND = 4;

/** Cut angles of both ends in degrees, undefined where the readings fix none. */
const anglesOf = (reading: CornerReading): { readonly left: number; readonly right: number } | undefined => {
  const found = corners(reading);
  if (isProblem(found)) return undefined;
  const angle = (out: number, distance: number): number => Math.atan2(out, distance) * DEGREES_PER_RADIAN;
  return { left: angle(-found.farLeft, found.leftDistance), right: angle(found.farRight - found.near, found.rightDistance) };
};

const treadAngles = (reading: TreadReading) => {
  const { run, leftRun = run, rightRun = run, back, front } = reading;
  if (leftRun === undefined || rightRun === undefined) return undefined;
  const distances = { leftDistance: leftRun, rightDistance: rightRun };
  return anglesOf({ ...reading, ...distances, near: back, ...(front === undefined ? {} : { far: front }) });
};

const riserAngles = (reading: RiserReading) => {
  const { height, top, bottom } = reading;
  return anglesOf({ ...reading, leftDistance: height, rightDistance: height, near: top, ...(bottom === undefined ? {} : { far: bottom }) });
};

/** Pairs that disagree more than a gauge does, and more than this hand's pairs usually do. */
const farApart = (pairs: readonly Disagreement[]): readonly Disagreement[] => {
  const usual = pairs.length < PAIRS_THAT_SHOW_A_HAND ? 0 : FAR * middleAndSpread(pairs.map(({ by }) => by)).spread;
  return pairs.filter(({ by }) => Math.abs(by) > Math.max(ONE_SURFACE, usual));
};

/**
 * Where the two readings of one surface disagree: the lean of a tread's end is the angle of the riser's same end with the other sign, and
 * the flare of a riser's end the angle of the tread's same end. 0 is a lean or flare nobody read.
 */
export const disagreements = (treads: readonly TreadReading[], risers: readonly RiserReading[]): readonly Disagreement[] => {
  const matched = treads.flatMap((tread, row) => {
    const other = risers.findIndex(({ step }, place) => (tread.step === undefined ? place === row : String(step) === String(tread.step)));
    return other < 0 ? [] : [{ tread, row, riser: risers[other]!, other }];
  });
  return (["left", "right"] as const).flatMap((side) => {
    const leans = matched.flatMap(({ tread, row, riser, other }): Disagreement[] => {
      const [lean, angle] = [tread[`${side}Lean`], riserAngles(riser)?.[side]];
      return lean === 0 || angle === undefined ? [] : [{ tread: row, riser: other, side, about: "lean", lean, angle, by: lean + angle }];
    });
    const flares = matched.flatMap(({ tread, row, riser, other }): Disagreement[] => {
      const [flare, angle] = [riser[`${side}Flare`], treadAngles(tread)?.[side]];
      return flare === 0 || angle === undefined
        ? []
        : [{ tread: row, riser: other, side, about: "flare", lean: flare, angle, by: flare - angle }];
    });
    return [...farApart(leans), ...farApart(flares)];
  });
};
