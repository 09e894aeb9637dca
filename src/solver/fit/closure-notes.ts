/** What diagonals may disagree by, and how close together closures of one cause lie, in the unit of the readings. */
export interface ClosureLimits {
  readonly most: number;
  readonly alike: number;
}

interface Checked {
  readonly closure: number | undefined;
  readonly unused: readonly string[];
}

/** So many steps off the same way are no accident of the tape. */
const STEPS_THAT_SHOW_A_RULE = 3;
const UNUSED: Readonly<Record<string, string>> = {
  leftOffset: "left offset not used, the diagonals fix the end",
  leftAngle: "left angle not used, the end is fixed without it",
};

const sameCause = (closures: readonly number[], { most, alike }: ClosureLimits): boolean => {
  const large = closures.filter((closure) => Math.abs(closure) > most);
  if (large.length < STEPS_THAT_SHOW_A_RULE) return false;
  const [least, greatest] = [Math.min(...large), Math.max(...large)];
  return Math.sign(least) === Math.sign(greatest) && greatest - least <= alike;
};

/** What to say of each reading: unchecked, diagonals that disagree, and whether all disagree by one cause. */
export const closureNotes = (found: readonly (Checked | undefined)[], limits: ClosureLimits): readonly string[] => {
  const closures = found.flatMap((one) => (one?.closure === undefined ? [] : [one.closure]));
  const everyStep = sameCause(closures, limits);
  return found.map((one) => {
    if (one === undefined) return "";
    const notes = one.unused.map((name) => UNUSED[name] ?? name);
    if (one.closure === undefined) notes.push("unchecked: one more diagonal would check this step");
    else if (Math.abs(one.closure) > limits.most) {
      notes.push(everyStep ? "every step is off by the same amount: is run the distance between the lines you measured?" : "the diagonals disagree: read this step again");
    }
    return notes.join("; ");
  });
};
