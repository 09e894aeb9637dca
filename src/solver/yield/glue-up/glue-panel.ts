import type { Length } from "../../length/length";

/** A panel to be glued up, or a number of like ones. */
export interface GluePanel {
  readonly row: number;
  readonly label?: string | number;
  readonly length: Length;
  /** Finished, as is the thickness. */
  readonly width?: Length;
  readonly thickness?: Length;
  readonly grade: string;
  /** Other grades that will do, with commas; `any` for all. */
  readonly alsoFrom: string;
  readonly species: string;
  readonly quantity: number;
}

export const panelName = ({ label, row }: Pick<GluePanel, "label" | "row">): string =>
  label === undefined || label === "" ? `in row ${row}` : String(label);
