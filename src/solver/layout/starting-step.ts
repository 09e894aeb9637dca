import { type Problem, problem } from "../problem";

export type StartingEnd = "half round" | "quarter round";

/** A first step that runs past the open skirt, its end rounded; lengths in one unit. */
export interface StartingStepGiven {
  readonly run: number;
  readonly nosing: number;
  /** Wall skirt to the face of the open skirt; undefined where nobody gave it. */
  readonly width: number | undefined;
  /** How far the second riser runs past the open skirt. */
  readonly runPast: number;
  readonly riserThickness: number;
  /** How far the end of the riser stands past the face of the open skirt. */
  readonly past: number;
  readonly end: StartingEnd;
  /** Radius of a quarter round on the riser's face; half the run where it is undefined, as it is for a half round. */
  readonly radius: number | undefined;
  readonly bend: "veneer" | "kerfs";
  /** What is left of the riser in the bend: of a veneer its thickness, of kerfs what the saw leaves. */
  readonly leaf: number;
  readonly kerf: number;
}

export interface StartingStep {
  readonly riserRadius: number;
  /** The front, from the wall skirt to the bend; with the others that count from there undefined without a width. */
  readonly straightBeforeTheBend: number | undefined;
  readonly bendOnTheFace: number;
  readonly straightAfterTheBend: number;
  readonly riserLengthOnTheFace: number | undefined;
  /** The piece before it is bent: a veneer keeps its length in the middle of its thickness, kerfs are laid out on the face. */
  readonly riserLengthLaidFlat: number | undefined;
  readonly treadLength: number | undefined;
  readonly treadDepthAtTheEnd: number;
  readonly treadRadius: number;
  /** Of the block a veneer is bent round. */
  readonly blockRadius: number | undefined;
  readonly veneerLength: number | undefined;
  readonly kerfs: number | undefined;
  readonly kerfDepth: number | undefined;
  readonly kerfSpacing: number | undefined;
}

export type StartingStepProblem =
  | "radius-of-a-half-round" | "radius-over-the-run" | "past-too-short" | "bend-past-the-wall" | "leaf-too-thick" | "riser-too-thick"
  | "kerfs-too-wide";

/** What each end turns through, in radians. */
const TURNS: Readonly<Record<StartingEnd, number>> = { "half round": Math.PI, "quarter round": Math.PI / 2 };

const plus = (length: number | undefined, more: number): number | undefined => (length === undefined ? undefined : length + more);

const radiusOf = ({ run, end, radius }: StartingStepGiven): number => (end === "half round" ? run / 2 : (radius ?? run / 2));

/** Past the open skirt a half round comes back to the second riser's end; a quarter round ends in line with its face. */
const leastPast = (given: StartingStepGiven): number => (given.end === "half round" ? radiusOf(given) : 0) + given.runPast;

const kerfCount = ({ end, riserThickness, leaf, kerf }: StartingStepGiven): number =>
  Math.ceil((TURNS[end] * (riserThickness - leaf)) / kerf);

const problemOf = (given: StartingStepGiven): Problem<StartingStepProblem> | undefined => {
  const { run, width, runPast, riserThickness, past, end, radius, bend, leaf, kerf } = given;
  if (end === "half round" && radius !== undefined) return problem("radius-of-a-half-round", { radius, half: run / 2 });
  const bent = radiusOf(given);
  if (bent > run) return problem("radius-over-the-run", { radius: bent, run });
  const least = leastPast(given);
  if (past < least) return problem("past-too-short", { past, least, end, runPast });
  if (width !== undefined && width + past < bent) return problem("bend-past-the-wall", { radius: bent, room: width + past });
  if (leaf >= riserThickness) return problem("leaf-too-thick", { leaf, riserThickness });
  if (riserThickness >= bent) return problem("riser-too-thick", { riserThickness, radius: bent });
  if (bend === "veneer") return undefined;
  // Cuts wider than deep, or with no wood between them, are no kerfs.
  const depth = riserThickness - leaf;
  const isTooWide = kerf > depth || kerfCount(given) * kerf >= TURNS[end] * bent;
  return isTooWide ? problem("kerfs-too-wide", { kerf, depth, radius: bent }) : undefined;
};

const bendOf = (given: StartingStepGiven): Pick<StartingStep, "blockRadius" | "veneerLength" | "kerfs" | "kerfDepth" | "kerfSpacing"> => {
  const { end, bend, leaf, riserThickness } = given;
  const radius = radiusOf(given);
  const none = { blockRadius: undefined, veneerLength: undefined, kerfs: undefined, kerfDepth: undefined, kerfSpacing: undefined };
  if (bend === "veneer") return { ...none, blockRadius: radius - leaf, veneerLength: TURNS[end] * (radius - leaf / 2) };
  const kerfs = kerfCount(given);
  return { ...none, kerfs, kerfDepth: riserThickness - leaf, kerfSpacing: (TURNS[end] * radius) / kerfs };
};

/**
 * Riser and tread of a first step with a rounded end. The riser runs along the front, round the end and, of a half round, back along the
 * line of the second riser to that riser's end; of a quarter round, back to that line.
 */
export const startingStep = (given: StartingStepGiven): StartingStep | Problem<StartingStepProblem> => {
  const wrong = problemOf(given);
  if (wrong !== undefined) return wrong;
  const { run, nosing, width, runPast, past, end } = given;
  const riserRadius = radiusOf(given);
  const bendOnTheFace = TURNS[end] * riserRadius;
  const before = plus(width, past - riserRadius);
  const after = end === "half round" ? past - riserRadius - runPast : run - riserRadius;
  const bend = bendOf(given);
  return {
    riserRadius,
    straightBeforeTheBend: before,
    bendOnTheFace,
    straightAfterTheBend: after,
    riserLengthOnTheFace: plus(before, bendOnTheFace + after),
    riserLengthLaidFlat: plus(before, (bend.veneerLength ?? bendOnTheFace) + after),
    treadLength: plus(width, past + nosing),
    treadDepthAtTheEnd: run + (end === "half round" ? 2 : 1) * nosing,
    treadRadius: riserRadius + nosing,
    ...bend,
  };
};
