import { type Failed, failed, folded, type Given, isEmpty, isFailed } from "./cells";
import { say } from "./say";

const asWritten = (text: string): string => text.normalize("NFC").trim().toLowerCase().replace(/\s+/g, " ");
const numbersOf = (text: string): string => (text.match(/\d+/g) ?? []).join(" ");
const lettersOf = (text: string): string => `${asWritten(text).replace(/[^\p{L}\p{N}+]/gu, "")}|${numbersOf(text)}`;

/** Ways in which two names may be one, the closest first; other numbers are another name, so that 4/4 is never 44. */
const WAYS: readonly ((text: string) => string)[] = [asWritten, lettersOf, (text) => `${folded(text)}|${numbersOf(text)}`];

/** The place of the cell that holds a name: as it is written, else by its letters and digits, else in another spelling or number. */
export const namePlace = (argument: string, cells: readonly Given[], name: string): number | Failed => {
  const texts = cells.map((cell) => (isEmpty(cell) || isFailed(cell) ? undefined : String(cell)));
  for (const way of WAYS) {
    const wanted = way(name);
    const place = texts.findIndex((text) => text !== undefined && way(text) === wanted);
    const found = texts[place];
    if (found === undefined) continue;
    const other = texts.find((text) => text !== undefined && way(text) === wanted && asWritten(text) !== asWritten(found));
    return other === undefined ? place : failed(say.severalNames(argument, name, found, other), "#N/A");
  }
  const names = texts.filter((text): text is string => text !== undefined);
  return failed(say.notThere(argument, name, names), "#N/A");
};
