import { type Problem, problem } from "../problem";

/** A newel by its centre, level behind the first nosing, and its width up the stair. */
export interface Newel {
  readonly place: number;
  readonly width: number;
}

/** What a face of a newel stands on. */
export type Footing = "lower floor" | "tread" | "upper floor";

export interface NewelFace {
  /** Counted from the bottom. */
  readonly newel: number;
  readonly side: "upper" | "lower";
  readonly footing: Footing;
  /** Counted from the bottom, where it stands on one. */
  readonly tread?: number;
  /** Top of the rail over the lower floor, and over what the face stands on; undefined without a handrail height. */
  readonly heightOverTheLowerFloor: number | undefined;
  readonly heightOverTheFooting: number | undefined;
}

/** The rail from one newel to the next, both ends cut plumb against their faces. */
export interface RailPiece {
  readonly from: NewelFace;
  readonly to: NewelFace;
  /** Along the rake, face to face. */
  readonly length: number;
}

export type NewelProblem = "one-newel" | "newels-meet";

export interface RakedFlight {
  readonly rise: number;
  readonly run: number;
  readonly risers: number;
  readonly handrailHeight: number | undefined;
}

/** A place on a nosing within this of a run is on it, not short of it: digits a cell cuts off. */
const ON_THE_NOSING = 1e-9;

const faceAt = (level: number, newel: number, side: "upper" | "lower", { rise, run, risers, handrailHeight }: RakedFlight): NewelFace => {
  // Nosing k lies k - 1 runs behind the first, k rises up; the last is the edge of the upper floor.
  const passed = Math.min(risers, Math.max(0, Math.floor(level / run + ON_THE_NOSING) + 1));
  const footing = passed === 0 ? "lower floor" : passed === risers ? "upper floor" : "tread";
  const top = handrailHeight === undefined ? undefined : rise + handrailHeight + (level * rise) / run;
  return {
    newel,
    side,
    footing,
    ...(footing === "tread" ? { tread: passed } : {}),
    heightOverTheLowerFloor: top,
    heightOverTheFooting: top === undefined ? undefined : top - passed * rise,
  };
};

/** The rail between each newel and the next, newels given from the bottom up. */
export const railBetweenNewels = (newels: readonly Newel[], flight: RakedFlight): readonly RailPiece[] | Problem<NewelProblem> => {
  if (newels.length < 2) return problem("one-newel");
  const { rise, run } = flight;
  const pieces: RailPiece[] = [];
  for (const [index, upper] of newels.slice(1).entries()) {
    const lower = newels[index];
    if (lower === undefined) continue;
    const [from, to] = [lower.place + lower.width / 2, upper.place - upper.width / 2];
    if (to <= from) return problem("newels-meet", { lower: index + 1, upper: index + 2, from, to });
    pieces.push({
      from: faceAt(from, index + 1, "upper", flight),
      to: faceAt(to, index + 2, "lower", flight),
      length: ((to - from) * Math.hypot(rise, run)) / run,
    });
  }
  return pieces;
};
