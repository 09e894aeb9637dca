import type { PieceKind } from "../solver/fit/acts";
import { MOST_STEPS } from "../solver/fit/skirt-surface/surface-verdict";
import { measure, type Unit } from "../solver/length/length";
import { parseLength } from "../solver/length/parse-length";
import { isProblem } from "../solver/problem";
import type { Flight, Taking } from "./taking";

/** What is asked before the first touch, as it stands in its fields. */
export interface Asked {
  readonly job: string;
  readonly unit: Unit;
  readonly tape: number;
  readonly piece: PieceKind;
  readonly first: string;
  readonly count: string;
  readonly across: string;
  readonly width: string;
}

/** Tapes that are sold, finest last: divisions of the unit. */
export const TAPES: Readonly<Record<Unit, readonly (readonly [divisions: number, says: string])[]>> = {
  in: [[16, "1/16"], [32, "1/32"]],
  mm: [[1, "whole mm"], [2, "half mm"]],
};

/** Common sizes, no source: only the keys stand round them. */
const COMMON: Readonly<Record<Unit, Readonly<Record<PieceKind, Pick<Asked, "across" | "width">>>>> = {
  in: { tread: { across: "10", width: "36" }, riser: { across: "7 1/2", width: "36" } },
  mm: { tread: { across: "250", width: "900" }, riser: { across: "190", width: "900" } },
};

export const askedAnew = (piece: PieceKind, { job, unit, tape }: Taking = { job: "", unit: "in", tape: 16 }): Asked => ({
  job, unit, tape, piece, first: "1", count: "13", ...COMMON[unit][piece],
});

/** The same with another unit, whose tapes and sizes are others. */
export const inUnit = (asked: Asked, unit: Unit): Asked =>
  unit === asked.unit ? asked : { ...asked, unit, tape: TAPES[unit][0]?.[0] ?? 1, ...COMMON[unit][asked.piece] };

export const forPiece = (asked: Asked, piece: PieceKind): Asked =>
  piece === asked.piece ? asked : { ...asked, piece, across: COMMON[asked.unit][piece].across };

const wholeNumber = (text: string, name: string, least: number, most: number): number | string => {
  const number = Number(text);
  return text.trim() !== "" && Number.isInteger(number) && number >= least && number <= most
    ? number
    : `${name}: reads "${text}"; write a whole number from ${least} to ${most}.`;
};

const length = (text: string, name: string, unit: Unit): number | string => {
  const found = parseLength(text, unit);
  const value = isProblem(found) ? 0 : measure(found, unit);
  return value > 0 ? value : `${name}: reads "${text}"; write a length such as ${unit === "in" ? "10 or 7 1/2" : "250"}.`;
};

const HIGHEST_STEP = 99;

/** The flight that is meant, or a sentence for each field that cannot be read. */
export const flightAsked = ({ piece, first, count, across, width, unit }: Asked): Flight | readonly string[] => {
  const read = [
    wholeNumber(first, "First step", 1, HIGHEST_STEP),
    // So many steps the functions look at together.
    wholeNumber(count, "How many", 1, MOST_STEPS),
    length(across, piece === "tread" ? "Run" : "Rise", unit),
    length(width, "Width", unit),
  ];
  const wrong = read.filter((one) => typeof one === "string");
  if (wrong.length > 0) return wrong;
  const [from = 1, many = 1, along = 0, wide = 0] = read as number[];
  return { piece, first: from, last: from + many - 1, across: along, width: wide };
};
