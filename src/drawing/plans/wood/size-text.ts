import { exact } from "../../../solver/length/exact";
import type { Unit } from "../../../solver/length/length";
import { tapeText } from "../../../solver/length/tape-text";
import { USUAL_TAPE } from "../../../solver/length/usual-tape";

/** Plans are made on these marks. */
const FINEST = { in: 64, mm: 10 } as const;
const HAIR = 1e-6;

/** A size of a plan in words: inches to the usual mark of a tape where they stand on one, else to 1/64; millimetres to a tenth. */
export const sizeText = (value: number, unit: Unit): string => {
  if (unit === "mm") return `${exact(value).toDecimalPlaces(1).toString()} mm`;
  const marks = value * USUAL_TAPE.in;
  const denominator = Math.abs(marks - Math.round(marks)) < HAIR ? USUAL_TAPE.in : FINEST.in;
  return tapeText(exact(value), { denominator, feet: false, strong: false });
};

/** Length by width. */
export const flatText = (length: number, width: number, unit: Unit): string =>
  `${unit === "mm" ? sizeText(length, unit).replace(" mm", "") : sizeText(length, unit)} x ${sizeText(width, unit)}`;

/** Where a piece begins, in the words of the table. */
export const placeText = (along: number, across: number, unit: Unit): string =>
  `${sizeText(along, unit)} along, ${sizeText(across, unit)} across`;
