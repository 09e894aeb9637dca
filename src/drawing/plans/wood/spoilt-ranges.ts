import { type Length, measure, type Unit } from "../../../solver/length/length";
import { clearStretches } from "../../../solver/yield/tally/clear-stretches";
import type { TallyBoard } from "../../../solver/yield/tally/tally-board";
import type { Spoilt } from "./cut-board";
import { sizeText } from "./size-text";

/** What of a board is not clear: its defects, or what lies outside the ranges given as clear. */
export const spoiltOf = (
  { length, defects, clear: given }: Pick<TallyBoard, "length" | "defects" | "clear">,
  clear: readonly { readonly from: Length; readonly to: Length }[], unit: Unit,
): readonly Spoilt[] => {
  if (defects.length === 0 && given.length === 0) return [];
  const word = given.length > 0 ? "not clear" : "defect";
  return clearStretches(length, clear, []).map((range): Spoilt => {
    const [from, to] = [measure(range.from, unit), measure(range.to, unit)];
    return { from, to, text: `${word} ${sizeText(from, unit)} to ${sizeText(to, unit)}` };
  });
};
