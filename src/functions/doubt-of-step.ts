import type { PieceKind } from "../solver/fit/acts";
import { saysDisagreeing, saysEveryStep } from "../solver/fit/closure-notes";
import { namedMistakes } from "../solver/fit/doubtful-notes";
import type { RiserReading } from "../solver/fit/riser-reading";
import { riserPiece, treadPiece } from "../solver/fit/skirt-surface/piece-readings";
import type { ToldMistake } from "../solver/fit/skirt-surface/told-mistake";
import type { TreadReading } from "../solver/fit/tread-reading";
import type { Unit } from "../solver/length/length";
import { markedLength } from "../solver/length/marked-length";
import { words } from "../solver/words";
import { riserReadings, treadReadings } from "./tables";

/** Where a reading of a step lies: on the near line, on the far one, across, or from one line to the other. */
export type PlaceOfReading = "near" | "far" | "diagonal" | "second diagonal" | "between" | "left end" | "right end";

/** A reading as it was typed. */
export interface TakenReading {
  readonly place: PlaceOfReading;
  readonly name: string;
  /** From where to where, in the words of its own table. */
  readonly lies: string;
  readonly read: string;
  readonly isDoubtful: boolean;
  /** What the skirts of the flight say that it should have been. */
  readonly likely?: string;
}

/** Readings of one kind of piece, row by row, as their call has them, and the division of its tape. */
export interface TakenReadings {
  readonly kind: PieceKind;
  readonly rows: readonly (TreadReading | RiserReading)[];
  readonly unit: Unit;
  readonly division: number;
}

type Places = Readonly<Record<string, PlaceOfReading>>;
const PLACES: Readonly<Record<PieceKind, Places>> = {
  tread: {
    run: "between", leftRun: "left end", rightRun: "right end", back: "near", front: "far", diagonal: "diagonal",
    secondDiagonal: "second diagonal", leftAngle: "left end", rightAngle: "right end",
  },
  riser: {
    height: "between", top: "near", bottom: "far", diagonal: "diagonal", secondDiagonal: "second diagonal", leftAngle: "left end",
    rightAngle: "right end",
  },
};
const TABLES = { tread: treadReadings, riser: riserReadings } as const;
const DEGREES = 1;

/** What a table says of a reading, up to what is not about its place. */
const liesOf = (kind: PieceKind, name: string): string => {
  const columns: Readonly<Record<string, { readonly says: string }>> = TABLES[kind].columns;
  const [said = ""] = (columns[name]?.says ?? "").split(/[;.:]|, as | in degrees/);
  return `${said.slice(0, 1).toLowerCase()}${said.slice(1)}`;
};

/** Of readings that disagree, and of which the skirts name none: all that the two ways to one corner go through. */
const partsOf = (note: string, { diagonal, secondDiagonal }: Pick<TreadReading, "diagonal" | "secondDiagonal">): readonly string[] => {
  if (saysEveryStep(note)) return ["run", "height"];
  if (!saysDisagreeing(note)) return [];
  const across = diagonal === undefined || secondDiagonal === undefined ? ["leftAngle", "rightAngle"] : ["diagonal", "secondDiagonal"];
  return ["back", "front", "top", "bottom", ...across];
};

/** The readings of the steps of one call, and which of them are doubtful. */
export const doubts = ({ kind, rows, unit, division }: TakenReadings): ((row: number, note: string) => readonly TakenReading[]) => {
  const pieces = kind === "tread" ? (rows as readonly TreadReading[]).map(treadPiece) : (rows as readonly RiserReading[]).map(riserPiece);
  let named: readonly ToldMistake[] | undefined;
  return (row, note) => {
    named ??= namedMistakes(kind, pieces, unit, division);
    const reading = rows[row];
    if (reading === undefined) return [];
    const told = named.flatMap(({ kind: mistake, readings }) =>
      readings.filter((one) => one.row === row).map(({ name, likely }) => ({ name, likely, isLength: mistake !== "steps exchanged" })));
    const parts = partsOf(note, reading);
    const typed = Object.entries(reading) as [string, unknown][];
    return typed.flatMap(([name, value]): readonly TakenReading[] => {
      const place = PLACES[kind][name];
      if (place === undefined || typeof value !== "number") return [];
      const isAngle = name.endsWith("Angle");
      const said = words(name);
      const likely = told.find((one) => one.name === said);
      return [{
        place, name: said, lies: liesOf(kind, name), read: isAngle ? `${value.toFixed(DEGREES)}°` : markedLength(value, unit),
        isDoubtful: told.length > 0 ? likely !== undefined : parts.includes(name),
        ...(likely?.isLength === true ? { likely: markedLength(likely.likely, unit) } : {}),
      }];
    });
  };
};

/** Of two ways to a corner: what the one makes of the far length, and what was read of it. */
export interface Across {
  /** The length that goes into it. */
  readonly from: string;
  readonly name: string;
  readonly given: string;
  readonly read: string;
}

/**
 * What readings that disagree by `closure` leave for the far length: diagonals that reach too little along it want it shorter by that, and
 * so do angles that open too much.
 */
export const acrossBy = (
  kind: PieceKind, reading: TreadReading | RiserReading | undefined, closure: number | undefined, note: string, unit: Unit,
): Across | undefined => {
  const read: Readonly<Record<string, unknown>> = { ...reading };
  const [from, name] = kind === "tread" ? ["back", "front"] : ["top", "bottom"];
  const [far, run] = [read[name], read["run"]];
  if (typeof far !== "number" || closure === undefined || !saysDisagreeing(note) || saysEveryStep(note)) return undefined;
  // Seen from square to the near line, to which the far one may not be parallel.
  const [left, right] = [read["leftRun"] ?? run, read["rightRun"] ?? run];
  const taper = typeof left === "number" && typeof right === "number" ? right - left : 0;
  const along = Math.sqrt(far ** 2 - taper ** 2) + (note.includes("the diagonals disagree") ? closure : -closure);
  return { from, name, given: markedLength(Math.hypot(along, taper), unit), read: markedLength(far, unit) };
};
