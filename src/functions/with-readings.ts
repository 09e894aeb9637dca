import type { Parameter } from "./declare";
import { treadReadings } from "./tables";

/** Readings that a length of blanks may come from, instead of the stair's width alone. */
export const withReadings = {
  kind: "table",
  table: treadReadings,
  badRows: "refuse",
  rows: 2_000,
  optional: true,
  says: "Tread readings.",
  without: "Left out: the nominal width.",
} as const satisfies Parameter;
