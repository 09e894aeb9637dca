import type { Exact } from "../length/exact";
import { tapeText } from "../length/tape-text";
import { type PublishedUnit, UNIT_SIZE } from "./profile";

/** The finest mark of a tape, and decimals finer than one. */
const FINEST_TAPE = 64;
const DECIMALS = 4;

const UNIT_WORDS: Readonly<Record<PublishedUnit, string>> = {
  in: " in", mm: " mm", cm: " cm", "sq in": " sq in", deg: " degrees", ratio: "", count: "",
};

/**
 * A size in millimetres (or square millimetres, or as it is) in a published unit as a shop reads it: inches on a tape's mark as a fraction,
 * anything else in decimals, with the unit.
 */
export const sizeText = (size: Exact, unit: PublishedUnit): string => {
  const value = size.div(UNIT_SIZE[unit]);
  const onTape = unit === "in" && value.times(FINEST_TAPE).isInteger();
  const number = onTape
    ? tapeText(value, { denominator: FINEST_TAPE, feet: false, strong: false }).replace(/"$/, "")
    : value.toDecimalPlaces(DECIMALS).toString();
  return `${number}${UNIT_WORDS[unit]}`;
};
