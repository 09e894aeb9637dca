const TWO_DIGITS = 2;

const padded = (part: number): string => String(part).padStart(TWO_DIGITS, "0");

/** A day as it stands on paper and in the name of a file: 2026-11-29, by the clock of this place. */
export const dayOf = (moment: Date): string => `${moment.getFullYear()}-${padded(moment.getMonth() + 1)}-${padded(moment.getDate())}`;
