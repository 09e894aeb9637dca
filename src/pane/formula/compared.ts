type Compared = string | number | boolean | null;

/** An empty cell is what the other one would be, empty. */
const beside = (cell: Compared, other: Compared): string | number | boolean => {
  if (cell !== null) return cell;
  if (typeof other === "number") return 0;
  return typeof other === "boolean" ? false : "";
};

/** Numbers come before texts, texts before true and false. */
const KINDS = ["number", "string", "boolean"];

/** How a spreadsheet orders two values: below 0 where the first comes first, 0 where they are alike; letters of either case are. */
export const compared = (one: Compared, other: Compared): number => {
  const [first, second] = [beside(one, other), beside(other, one)];
  if (typeof first !== typeof second) return KINDS.indexOf(typeof first) - KINDS.indexOf(typeof second);
  if (typeof first === "string") return first.toUpperCase().localeCompare(String(second).toUpperCase());
  return Number(first) - Number(second);
};
