import { NAMESPACE } from "../../functions/formula";

/**
 * A text, a function's name with the workbook or the path before it that Excel may put there, or a sheet's name. Excel saves a function of
 * an add-in under _xldudf_ with every point an underscore, shows that name where it did not find the function, and may have set [2]! or
 * another add-in's path before it: github.com/OfficeDev/office-js/issues 3558, 2568, 2051.
 */
const PARTS = /"(?:[^"]|"")*"|(\[\d+\]!|'(?:[^']|'')*'!)?([\p{L}_][\p{L}\d_.]*)(?=\s*\()|'(?:[^']|'')*'/gu;
const STORED = new RegExp(`^_xldudf_${NAMESPACE}_(\\w+)$`, "i");
const OWN = new RegExp(`^${NAMESPACE}[.]\\w+$`, "i");

/** A formula with our functions under the names that they are typed by, and whether it calls one of them. */
export const ownNames = (formula: string): { readonly formula: string; readonly isOurs: boolean } => {
  let isOurs = false;
  const typed = formula.replace(PARTS, (part: string, before: string | undefined, name: string | undefined) => {
    const stored = name === undefined ? undefined : STORED.exec(name)?.[1];
    if (stored === undefined && !OWN.test(name ?? "")) return part;
    isOurs = true;
    if (stored !== undefined) return `${NAMESPACE}.${stored.toUpperCase()}`;
    return before?.startsWith("[") === true ? (name ?? "") : part;
  });
  return { formula: typed, isOurs };
};
