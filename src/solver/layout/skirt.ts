import { stringer } from "./stringer";

/** Skirt boards of a flight; lengths in one unit, angles in degrees. */
export interface Skirt {
  readonly openSkirtWidth: number;
  readonly openSkirtLength: number;
  readonly closedSkirtWidth: number;
  readonly closedSkirtLength: number;
  readonly plumbCut: number;
  readonly levelCut: number;
}

export interface SkirtGiven {
  readonly rise: number;
  readonly run: number;
  readonly risers: number;
  readonly nosing: number;
  readonly treadThickness: number;
  readonly lowerBuildUp: number;
  /** The open skirt is cut like the stringer, out of as wide a board. */
  readonly boardWidth: number;
  /** What a closed skirt shows above the nosing line, square to it. */
  readonly shows: number;
  /** How far a closed skirt runs on before the first nosing and past the landing nosing, level. */
  readonly foot: number;
  readonly head: number;
}

/** Open skirts are cut like the stringer; closed ones have plumb ends and a level cut on the floor. */
export const skirt = (given: SkirtGiven): Skirt => {
  const { rise, run, risers, nosing, treadThickness, lowerBuildUp, boardWidth, shows, foot, head } = given;
  const slope = Math.hypot(rise, run);
  const { length, plumbCut, levelCut } = stringer({ rise, run, risers, boardWidth, treadThickness, lowerBuildUp, upperBuildUp: 0 });
  const level = (risers - 1) * run + foot + head;
  return {
    openSkirtWidth: boardWidth,
    openSkirtLength: length,
    closedSkirtWidth: shows + ((run + nosing) * rise + treadThickness * run) / slope,
    closedSkirtLength: (level * slope) / run + (rise / run) * (shows + (rise * run) / slope - (foot * rise) / slope),
    plumbCut,
    levelCut,
  };
};
