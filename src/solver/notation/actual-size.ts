import { Exact } from "../length/exact";
import { type Length, lengthOf } from "../length/length";
import { parseLength } from "../length/parse-length";
import { isProblem, type Problem, problem } from "../problem";

export interface ActualSize {
  readonly thickness: Length;
  readonly width: Length;
}

/** Dry dressed sizes of the American Softwood Lumber Standard, PS 20: nominal and actual inches. */
const THICKNESSES: readonly (readonly [number, number])[] = [
  [0.375, 0.3125],
  [0.5, 0.4375],
  [0.625, 0.5625],
  [0.75, 0.625],
  [1, 0.75],
  [1.25, 1],
  [1.5, 1.25],
  [2, 1.5],
  [2.5, 2],
  [3, 2.5],
  [3.5, 3],
  [4, 3.5],
  [4.5, 4],
];
const WIDTHS: readonly (readonly [number, number])[] = [
  [2, 1.5],
  [3, 2.5],
  [4, 3.5],
  [5, 4.5],
  [6, 5.5],
  [7, 6.5],
  [8, 7.25],
  [9, 8.25],
  [10, 9.25],
  [11, 10.25],
  [12, 11.25],
  [14, 13.25],
  [16, 15.25],
];

const looked = (sizes: readonly (readonly [number, number])[], nominal: Length): Length | undefined => {
  const found = sizes.find(([name]) => lengthOf(name, "in").eq(nominal));
  return found && lengthOf(new Exact(found[1]), "in");
};

const listed = (sizes: readonly (readonly [number, number])[]): string => sizes.map(([name]) => name).join(", ");

/** Actual thickness and width of nominal lumber such as 1x8 or 5/4x12, dry and dressed. */
export const actualSize = (nominal: string): ActualSize | Problem<"not-a-nominal-size" | "size-not-listed"> => {
  const parts = nominal.split(/[x×]/i).map((part) => parseLength(part.replace(/"/g, ""), "in"));
  const [thickness, width, more] = parts;
  if (thickness === undefined || width === undefined || more !== undefined || isProblem(thickness) || isProblem(width)) {
    return problem("not-a-nominal-size", { nominal });
  }
  const size = { thickness: looked(THICKNESSES, thickness), width: looked(WIDTHS, width) };
  if (size.thickness === undefined) return problem("size-not-listed", { nominal, side: "thickness", known: listed(THICKNESSES) });
  if (size.width === undefined) return problem("size-not-listed", { nominal, side: "width", known: listed(WIDTHS) });
  return { thickness: size.thickness, width: size.width };
};
