import type { Unit } from "../../length/length";
import { type Flight, inchIn, type Observed, type PieceKind, type PieceReading } from "./flight-readings";
import { READING_NAMES } from "./piece-readings";
import type { Repair } from "./repairs";

/** The readings of a flight as they were typed, in the unit of the call, and how finely. */
export interface TypedFlight {
  readonly pieces: Readonly<Record<PieceKind, readonly PieceReading[]>>;
  readonly unit: Unit;
  /** One division of the tape. */
  readonly division: number;
}

export interface ToldReading {
  readonly kind: PieceKind;
  readonly row: number;
  readonly step: string | number;
  /** As its own table calls it. */
  readonly name: string;
  readonly read: number;
  /** What it should have been, to a division of the tape. */
  readonly likely: number;
}

/** A mistake with the readings it is in, in the unit of the call. */
export interface ToldMistake {
  readonly kind: Repair["kind"];
  readonly readings: readonly ToldReading[];
}

/** A marks that hands miss by a whole one: an inch, or a centimetre. */
const WHOLE_MARKS: Readonly<Record<Unit, { readonly length: number; readonly name: string }>> = {
  in: { length: 1, name: "inch" },
  mm: { length: 10, name: "centimetre" },
};
/** Within so many inches of a whole mark it is one. */
const NEAR_A_MARK = 1 / 16;

/** A step as its reader calls it; one without a name by its place. */
export const stepName = (pieces: readonly PieceReading[], row: number): string | number => pieces[row]?.step ?? row + 1;

const typedLength = ({ across }: Observed, inches: number): number => Math.hypot(inches, across);

const typed = (pieces: TypedFlight["pieces"], { kind, row, place }: Observed): number => pieces[kind][row]![place]!;

export const toldMistake = ({ kind, changes }: Repair, { observed }: Flight, { pieces, unit, division }: TypedFlight): ToldMistake => ({
  kind,
  readings: changes.map(({ reading, to }, place) => {
    const one = observed[reading]!;
    const toTape = Math.round((typedLength(one, to) * inchIn(unit)) / division) * division;
    // What stands in each other's place is right as it was typed.
    const other = kind === "exchanged" ? observed[changes[1 - place]?.reading ?? reading]! : undefined;
    return {
      kind: one.kind,
      row: one.row,
      step: stepName(pieces[one.kind], one.row),
      name: READING_NAMES[one.kind][one.place],
      read: typed(pieces, one),
      likely: other === undefined ? toTape : typed(pieces, other),
    };
  }),
});

const pair = ({ readings }: ToldMistake): string => readings.map(({ name }) => name).join(" and ");

/** Steps a mistake is in, each once, in words. */
const steps = ({ readings }: ToldMistake): string => [...new Set(readings.map(({ step }) => step))].join(" and ");

/** What is wrong, in words. */
export const whyOf = (mistake: ToldMistake, unit: Unit): string => {
  const [first] = mistake.readings;
  if (mistake.kind === "exchanged") return `${pair(mistake)} exchanged`;
  if (mistake.kind === "steps exchanged" || first === undefined) return `readings of steps ${steps(mistake)} exchanged`;
  const more = first.read - first.likely;
  const { length, name } = WHOLE_MARKS[unit];
  const isWholeMark = Math.abs(Math.abs(more) - length) <= NEAR_A_MARK * inchIn(unit);
  const way = more > 0 ? "too long" : "too short";
  return isWholeMark ? `a whole ${name} ${way}` : `${way} for the two skirts`;
};

/** The readings a mistake is in, as another row may call them. */
export const whichOf = (mistake: ToldMistake): string => {
  if (mistake.kind === "steps exchanged") return `the readings of steps ${steps(mistake)}`;
  const [first] = mistake.readings;
  return `${first?.kind === "riser" ? "riser " : ""}${pair(mistake)} of step ${steps(mistake)}`;
};
