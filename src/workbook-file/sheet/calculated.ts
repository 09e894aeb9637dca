import type { PlainValue } from "../../sheets/sheet-data";
import type { StoredError } from "./cell-value";

/** What a cell shows the next formula: null for an empty one. */
export type CalculatedValue = PlainValue | StoredError | null;

/** What the formulas of a workbook come to, asked of whatever works them out. */
export interface Calculated {
  readonly value: (sheet: string, address: string) => CalculatedValue;
  /** The block that spilled from a cell, row by row; the cell alone where nothing did. */
  readonly spill: (sheet: string, address: string) => readonly (readonly CalculatedValue[])[];
}
