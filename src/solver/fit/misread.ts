import type { Unit } from "../length/length";
import { isProblem, type Problem } from "../problem";
import type { ClosureLimits } from "./closure-notes";
import type { RiserReading } from "./riser-reading";
import { type Flight, flightReadings, inchIn, type PieceKind } from "./skirt-surface/flight-readings";
import { wrongSigns } from "./skirt-surface/lean-signs";
import { type Disagreement, disagreements } from "./skirt-surface/one-surface";
import { riserPiece, treadPiece } from "./skirt-surface/piece-readings";
import { LEAST_STEPS, stepsWithDiagonals, type SurfaceVerdict, surfaceVerdict } from "./skirt-surface/surface-verdict";
import { closuresOf } from "./skirt-surface/tape-variance";
import { stepName, type ToldMistake, toldMistake, type TypedFlight, whichOf, whyOf } from "./skirt-surface/told-mistake";
import type { TreadReading } from "./tread-reading";

interface Sized {
  readonly kind: "reading" | "angle";
  readonly value: number;
}

/** A reading that is doubtful, or why none is. */
export interface Misread {
  readonly step?: string | number;
  readonly reading: string;
  readonly read?: Sized;
  readonly likely?: Sized;
  readonly why: string;
  /** `named` for one explanation, `either` for two that are as likely. */
  readonly sure: "named" | "either" | "";
}

/** The readings of one flight, and how they were taken. */
export interface ReadFlight {
  readonly treads: readonly TreadReading[];
  readonly risers: readonly RiserReading[];
  readonly unit: Unit;
  readonly closure: ClosureLimits;
}

const NOTHING = "nothing stands out";
const length = (value: number): Sized => ({ kind: "reading", value });
const degrees = (value: number): Sized => ({ kind: "angle", value });

const rowsOfMistake = (mistake: ToldMistake, rival: ToldMistake | undefined, unit: Unit): readonly Misread[] => {
  const said = {
    why: `${whyOf(mistake, unit)}${rival === undefined ? "" : `, or ${whichOf(rival)} instead`}`,
    sure: rival === undefined ? ("named" as const) : ("either" as const),
  };
  const prefix = (kind: PieceKind): string => (kind === "riser" ? "riser " : "");
  if (mistake.kind !== "steps exchanged")
    return mistake.readings.map(({ kind, step, name, read, likely }) => ({
      step, reading: `${prefix(kind)}${name}`, read: length(read), likely: length(likely), ...said,
    }));
  const steps = new Map(mistake.readings.map(({ step, kind }) => [step, kind]));
  return [...steps].map(([step, kind]) => ({ step, reading: `every ${prefix(kind)}reading`, ...said }));
};

const surfaceRows = ({ mistakes }: SurfaceVerdict, flight: Flight, typed: TypedFlight): readonly Misread[] =>
  mistakes.flatMap(({ repair, rival }) => {
    const [mistake, other] = [toldMistake(repair, flight, typed), rival === undefined ? undefined : toldMistake(rival, flight, typed)];
    return [
      ...rowsOfMistake(mistake, other, typed.unit),
      ...(other === undefined ? [] : rowsOfMistake(other, mistake, typed.unit)),
    ];
  });

/** Pieces whose diagonals still disagree when every mistake found is put right: too little for the skirts to say which reading it is. */
const closureRows = (verdict: SurfaceVerdict, flight: Flight, typed: TypedFlight, { most }: ClosureLimits): readonly Misread[] => {
  const closures = closuresOf(flight, verdict.lengths);
  return (["tread", "riser"] as const).flatMap((kind) =>
    typed.pieces[kind].flatMap((_, row): Misread[] => {
      const closure = closures.get(`${kind} ${row}`) ?? 0;
      return Math.abs(closure) * inchIn(typed.unit) <= most
        ? []
        : [{
            step: stepName(typed.pieces[kind], row),
            reading: kind === "riser" ? "riser diagonals" : "diagonals",
            why: "the diagonals disagree, and no one reading stands out: read this step again",
            sure: "",
          }];
    }),
  );
};

const wrongSignRows = ({ treads, risers }: ReadFlight): readonly Misread[] =>
  (["left", "right"] as const).flatMap((side) => {
    const row = (step: string | number, reading: string, read: number): Misread => ({
      step, reading, read: degrees(read), likely: degrees(-read), why: "the other way than the rest of the flight", sure: "named",
    });
    const lean = treads.map((tread) => tread[`${side}Lean`]);
    const flare = risers.map((riser) => riser[`${side}Flare`]);
    return [
      ...wrongSigns(lean).map((at) => row(stepName(treads, at), `${side} lean`, lean[at]!)),
      ...wrongSigns(flare).map((at) => row(stepName(risers, at), `riser ${side} flare`, flare[at]!)),
    ];
  });

const disagreeingRows = (found: Disagreement, { treads, risers }: ReadFlight): readonly Misread[] => {
  const { side, about, lean, angle } = found;
  const [tread, riser] = [stepName(treads, found.tread), stepName(risers, found.riser)];
  const isLean = about === "lean";
  const said = {
    why: isLean ? "lean and riser disagree: read one again" : "flare and tread disagree: read one again",
    sure: "either" as const,
  };
  return [
    {
      step: isLean ? tread : riser,
      reading: isLean ? `${side} lean` : `riser ${side} flare`,
      read: degrees(lean),
      likely: degrees(isLean ? -angle : angle),
      ...said,
    },
    {
      step: isLean ? riser : tread,
      reading: isLean ? `riser ${side} angle` : `${side} angle`,
      read: degrees(angle),
      likely: degrees(isLean ? -lean : lean),
      ...said,
    },
  ];
};

/** A lean whose sign is named already does not disagree a second time. */
const isNamed = (named: readonly Misread[], row: Misread): boolean =>
  named.some(({ step, reading }) => step === row.step && reading === row.reading);

const leanRows = (given: ReadFlight): readonly Misread[] => {
  const signs = wrongSignRows(given);
  const pairs = disagreements(given.treads, given.risers).map((found) => disagreeingRows(found, given));
  return [...signs, ...pairs.filter(([first]) => first !== undefined && !isNamed(signs, first)).flat()];
};

const noVerdict = (because: string): Misread => ({ reading: "", why: `no verdict on lengths: ${because}`, sure: "" });

/** Which readings of a flight are doubtful, seen against all the others; nothing is changed. */
export const misread = (given: ReadFlight): readonly Misread[] | Problem<"step-twice"> => {
  const { unit, closure } = given;
  const pieces = { tread: given.treads.map(treadPiece), riser: given.risers.map(riserPiece) };
  const flight = flightReadings(pieces.tread, pieces.riser, unit);
  if (isProblem(flight)) return flight;
  const steps = stepsWithDiagonals(flight, "tread");
  const leans = leanRows(given);
  if (steps < LEAST_STEPS) 
    return [...leans, noVerdict(`it takes ${LEAST_STEPS} treads with back, front and a diagonal, got ${steps}`)];
  const typed: TypedFlight = { pieces, unit, division: closure.division };
  const verdict = surfaceVerdict(flight, inchIn(unit) / closure.division);
  if (verdict.skirts.length === 0) return [...leans, noVerdict("the runs are next to nothing")];
  const found = [...surfaceRows(verdict, flight, typed), ...closureRows(verdict, flight, typed, closure), ...leans];
  return found.length > 0 ? found : [{ reading: "", why: NOTHING, sure: "" }];
};
