import { RADIANS_PER_DEGREE } from "../degrees";
import type { Corners, UnusedReading } from "./corner-reading";

/** What readings may disagree by, and how close together closures of one cause lie, in the unit of the readings. */
export interface ClosureLimits {
  /** The most that two diagonals may disagree by. */
  readonly most: number;
  readonly alike: number;
  /** One division of the tape. */
  readonly division: number;
}

type Checked = Pick<Corners, "leftDistance" | "rightDistance" | "closure" | "closedBy" | "isFarByAngles" | "unused">;

/** So many steps off the same way are no accident of the tape. */
const STEPS_THAT_SHOW_A_RULE = 3;
/** A bevel gauge set and read by eye, in degrees: common practice, no source. */
const GAUGE = 0.25;
/** A quarter of the closure on either edge is the least-squares answer to one step whose four lengths are read alike. */
const SHARE_OF_AN_EDGE = 0.25;

/** What is to be done about readings that disagree: until then no size of the step is to be cut. */
export const READ_AGAIN = "read this step again";
const EVERY_STEP = "every step is off by the same amount: is run the distance between the lines you measured?";

/** Whether a note says that every step is off alike, so that what is doubtful is the run. */
export const saysEveryStep = (note: string): boolean => note.includes(EVERY_STEP);

/** Whether a note says that the readings of the step disagree, so that none of its sizes holds. */
export const saysDisagreeing = (note: string): boolean => note.includes(READ_AGAIN) || saysEveryStep(note);

const DIAGONALS_FIX = "the diagonals fix the end";
const FRONT_MISSING = "the length it runs to is missing";
const UNUSED: Readonly<Record<UnusedReading, (found: Checked) => string>> = {
  diagonal: () => `diagonal not used, ${FRONT_MISSING}`,
  secondDiagonal: () => `second diagonal not used, ${FRONT_MISSING}`,
  leftOffset: ({ isFarByAngles }) => `left offset not used, ${isFarByAngles ? "both angles fix the end" : DIAGONALS_FIX}`,
  leftAngle: () => "left angle not used, the end is fixed without it",
  rightAngle: () => "right angle not used, the end is fixed without it",
};

/** Two gauge readings, each out by as much as a gauge may be, and one division of the tape; or the limit of two diagonals. */
const limitOf = ({ closedBy, leftDistance, rightDistance }: Checked, { most, division }: ClosureLimits): number =>
  closedBy === "angles" ? Math.hypot(leftDistance, rightDistance) * Math.tan(GAUGE * RADIANS_PER_DEGREE) + division : most;

const isTooLarge = (found: Checked, limits: ClosureLimits): boolean =>
  found.closure !== undefined && Math.abs(found.closure) > limitOf(found, limits);

/** Both edges longer by a quarter of the diagonals' closure, while it is small enough to be the tape's and not a misreading. */
export const adjusted = (read: Corners, limits: ClosureLimits): Corners => {
  if (read.closure === undefined || read.closedBy !== "diagonals" || isTooLarge(read, limits)) return read;
  const more = read.closure * SHARE_OF_AN_EDGE;
  return { ...read, near: read.near + more, farRight: read.farRight + more };
};

const sameCause = (closures: readonly number[], { most, alike }: ClosureLimits): boolean => {
  const large = closures.filter((closure) => Math.abs(closure) > most);
  if (large.length < STEPS_THAT_SHOW_A_RULE) return false;
  const [least, greatest] = [Math.min(...large), Math.max(...large)];
  return Math.sign(least) === Math.sign(greatest) && greatest - least <= alike;
};

const unchecked = ({ isFarByAngles }: Checked): string =>
  `unchecked: ${isFarByAngles ? "a length along the other line" : "one more diagonal"} would check this step`;

/** What to say of each reading: unchecked, readings that disagree, and whether all disagree by one cause. */
export const closureNotes = (found: readonly (Checked | undefined)[], limits: ClosureLimits): readonly string[] => {
  const closures = found.flatMap((one) => (one?.closure === undefined || one.closedBy !== "diagonals" ? [] : [one.closure]));
  const everyStep = sameCause(closures, limits);
  return found.map((one) => {
    if (one === undefined) return "";
    const notes = one.unused.map((name) => UNUSED[name](one));
    if (one.closure === undefined) notes.push(unchecked(one));
    else if (isTooLarge(one, limits)) {
      if (one.closedBy === "angles") notes.push(`the lengths and the angles disagree: ${READ_AGAIN}`);
      else
        notes.push(everyStep ? EVERY_STEP : `the diagonals disagree: ${READ_AGAIN}`);
    }
    return notes.join("; ");
  });
};
