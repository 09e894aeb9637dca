import { Exact, roundedTo } from "../length/exact";
import { type Length, lengthOf, type Unit } from "../length/length";
import { USUAL_TAPE } from "../length/usual-tape";
import { type Problem, problem } from "../problem";

export interface PoleMark {
  readonly riser: number;
  /** Exact height of the finished tread. */
  readonly height: Length;
  /** Where the mark is scribed. */
  readonly mark: Length;
  readonly riseBetweenMarks: Length;
  readonly note: string;
}

/**
 * Marks of a story pole, each rounded from its own exact height, so that rounding never accumulates and neighbours differ by at most one
 * division. `below` is how far the marks lie below the finished treads.
 */
export const storyPole = (
  totalRise: Length, risers: number, divisions: number | undefined, below: Length, unit: Unit,
): readonly PoleMark[] | Problem<"mark-below-floor"> => {
  const step = lengthOf(new Exact(1).div(divisions ?? USUAL_TAPE[unit]), unit);
  const rise = totalRise.div(risers);
  if (below.gte(rise)) return problem("mark-below-floor", { below, rise });
  const marks: PoleMark[] = [];
  for (let riser = 1; riser <= risers; riser++) {
    const height = totalRise.times(riser).div(risers);
    const mark = roundedTo(height.minus(below), step);
    const last = marks[marks.length - 1];
    const isShy = riser === risers && below.isZero() && !mark.eq(height);
    marks.push({
      riser,
      height,
      mark,
      riseBetweenMarks: mark.minus(last?.mark ?? 0),
      note: isShy ? "the total rise lies between two marks; height has it exactly" : "",
    });
  }
  return marks;
};
