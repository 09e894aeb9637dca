import type { CellValue } from "./workbook";

// Digits in a text count as a number, so that the tread marked T10 comes after T9; capitals are no matter.
const texts = new Intl.Collator("en", { numeric: true, sensitivity: "accent" });

/** Kinds of values as a spreadsheet sorts them ("Sort data in a range or table": numbers, text, FALSE and TRUE, errors). */
const kind = (value: Exclude<CellValue, null>): number => ["number", "string", "boolean", "object"].indexOf(typeof value);

const compared = (one: Exclude<CellValue, null>, other: Exclude<CellValue, null>): number => {
  if (typeof one === "string" && typeof other === "string") return texts.compare(one, other);
  if (typeof one === "object" || typeof other === "object") return kind(one) - kind(other);
  return kind(one) - kind(other) || Number(one) - Number(other);
};

/** The places of values in sorted order; equals stay as they were, and empty cells are last either way. */
export const sortOrder = (values: readonly CellValue[], isUp: boolean): readonly number[] => {
  const places = values.map((value, place) => ({ place, value: value === "" ? null : value }));
  places.sort((one, other) => {
    if (one.value === null || other.value === null) return Number(one.value === null) - Number(other.value === null);
    const difference = compared(one.value, other.value);
    return isUp ? difference : -difference;
  });
  return places.map(({ place }) => place);
};
