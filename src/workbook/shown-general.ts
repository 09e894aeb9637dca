/** Digits of Arial as shares of the size of its type (its published metrics). */
const DIGIT = 0.556;
/** Pixels to the point, 96 to 72. */
const PIXELS_A_POINT = 96 / 72;
/** Left free beside the number, both sides together, in pixels. */
const ROOM = 8;
/** What a plain cell shows at most, the point counted: "up to 11 digits" (Microsoft support, Available number formats, General). */
const MOST = 11;
/** Smaller ones are written with a power of ten, and have no tail to cut. */
const LEAST = 1e-4;

/** A number as a plain cell of this width and type shows it: rounded to what fits, its whole part always whole. */
export const shownGeneral = (value: number, width: number, size: number): number => {
  if (Number.isInteger(value) || Math.abs(value) < LEAST) return value;
  const fits = Math.min(MOST, Math.floor((width - ROOM) / (DIGIT * size * PIXELS_A_POINT)));
  const whole = `${value < 0 ? "-" : ""}${Math.trunc(Math.abs(value))}.`.length;
  return fits - whole < 0 ? Math.round(value) : Number(value.toFixed(fits - whole));
};
