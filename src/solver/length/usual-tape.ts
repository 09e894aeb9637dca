import type { Unit } from "./length";

/** Divisions of the unit a tape usually shows. */
export const USUAL_TAPE: Readonly<Record<Unit, number>> = { in: 16, mm: 1 };
