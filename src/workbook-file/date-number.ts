/** Days from the first day of 1900 to that of 1904 as serial dates count them (ECMA-376-1, 18.17.4.1). */
export const DAYS_TO_1904 = 1462;
/** Day 25569 is 1 January 1970, from which the language counts. */
const UNIX_DAY = 25_569;
const DAY = 86_400_000;
const ISO = /^(\d{4})-(\d\d)-(\d\d)(?:T(\d\d):(\d\d)(?::(\d\d(?:\.\d+)?))?Z?)?$/;

/** A date that a cell holds as text (ECMA-376-1, 18.18.11, type d) as the number a sheet counts by; undefined for any other text. */
export const dateNumber = (text: string): number | undefined => {
  const [, year, month, day, hours = "0", minutes = "0", seconds = "0"] = ISO.exec(text) ?? [];
  if (year === undefined || month === undefined || day === undefined) return undefined;
  const whole = Date.UTC(Number(year), Number(month) - 1, Number(day)) / DAY + UNIX_DAY;
  const part = (Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds);
  return whole + (part * 1000) / DAY;
};
