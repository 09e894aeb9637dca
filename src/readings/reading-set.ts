/** Readings of one stair, as they leave the screen at the stair and as they come into a workbook. */
export interface ReadingSet {
  /** Whose stair, as Job has it. */
  readonly job: string;
  readonly unit: "in" | "mm";
  /** Divisions of an inch (16, 32), or of a millimetre (1, 2), that the tape was read to. */
  readonly tape: number;
  /** The day of the last reading, as `2026-03-04`. */
  readonly taken: string;
  readonly treads: readonly ReadStep[];
  readonly risers: readonly ReadStep[];
}

/** One tread or riser as taped. */
export interface ReadStep {
  readonly step: number;
  /** By the heading of the readings table (`back`, `secondDiagonal`): the number read, in the unit of the set. */
  readonly read: Readonly<Record<string, number>>;
  /** True where the step did not close and whoever read it kept it so. */
  readonly kept: boolean;
}
