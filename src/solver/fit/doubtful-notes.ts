import { sizeText } from "../code/size-text";
import { lengthOf, type Unit } from "../length/length";
import { isProblem } from "../problem";
import { flightReadings, inchIn, type PieceKind, type PieceReading } from "./skirt-surface/flight-readings";
import { LEAST_STEPS, MOST_STEPS, stepsWithDiagonals, surfaceVerdict } from "./skirt-surface/surface-verdict";
import { type ToldMistake, toldMistake } from "./skirt-surface/told-mistake";

const READ_AGAIN = "read again (MISREAD)";

/** Whether a note names a reading of the step as doubtful. */
export const saysDoubtful = (note: string): boolean => note.includes(READ_AGAIN);

/** What the note of a row says of a mistake it has a part in. */
const said = ({ kind, readings }: ToldMistake, row: number, unit: Unit): string => {
  const here = readings.filter((one) => one.row === row);
  const names = here.map(({ name }) => name).join(" and ");
  if (kind === "exchanged") return `${names} likely exchanged: ${READ_AGAIN}`;
  if (kind === "steps exchanged")
    return `likely exchanged with step ${readings.find((one) => one.row !== row)?.step ?? ""}: ${READ_AGAIN}`;
  return `${names} likely ${sizeText(lengthOf(here[0]?.likely ?? 0, unit), unit)}: ${READ_AGAIN}`;
};

/**
 * The mistakes the skirts name in a table of readings. Only one of one flight is looked at: of so many rows that the skirts tell something,
 * and of no more than a flight has.
 */
export const namedMistakes = (
  kind: PieceKind, pieces: readonly PieceReading[], unit: Unit, division: number,
): readonly ToldMistake[] => {
  if (pieces.length < LEAST_STEPS || pieces.length > MOST_STEPS) return [];
  const flight = kind === "tread" ? flightReadings(pieces, [], unit) : flightReadings([], pieces, unit);
  if (isProblem(flight) || stepsWithDiagonals(flight, kind) < LEAST_STEPS) return [];
  const typed = { pieces: { tread: [], riser: [], [kind]: pieces }, unit, division };
  return surfaceVerdict(flight, inchIn(unit) / division)
    .mistakes.filter(({ rival }) => rival === undefined)
    .map(({ repair }) => toldMistake(repair, flight, typed));
};

/** A note for each row whose reading the skirts name as doubtful, empty for the others. */
export const doubtfulNotes = (kind: PieceKind, pieces: readonly PieceReading[], unit: Unit, division: number): readonly string[] => {
  const named = namedMistakes(kind, pieces, unit, division);
  return pieces.map((_, row) =>
    named
      .filter(({ readings }) => readings.some((one) => one.row === row))
      .map((mistake) => said(mistake, row, unit))
      .join("; "),
  );
};
