/** A day as it was given, and as a spreadsheet counts it. */
export interface GivenDay {
  /** Days since 1899-12-30: the number of a date in a spreadsheet, in its 1900 system. */
  readonly day: number;
  readonly given: string | number;
}

/** 1970-01-01 in a spreadsheet. */
const UNIX_DAY = 25_569;
const DAYS_OF_400_YEARS = 146_097;
/** From 0000-03-01, where the days of the calendar begin below, to 1970-01-01. */
const MARCH_OF_0 = 719_468;

/** Years begin in March, so that a leap day is the last of its year (days from civil, a known algorithm; from memory). */
const dayOfDate = (year: number, month: number, day: number): number => {
  const years = month > 2 ? year : year - 1;
  const cycle = Math.floor(years / 400);
  const yearOfCycle = years - cycle * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfCycle = yearOfCycle * 365 + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100) + dayOfYear;
  return cycle * DAYS_OF_400_YEARS + dayOfCycle - MARCH_OF_0 + UNIX_DAY;
};

const dateOfDay = (day: number): readonly [year: number, month: number, day: number] => {
  const from = day - UNIX_DAY + MARCH_OF_0;
  const cycle = Math.floor(from / DAYS_OF_400_YEARS);
  const dayOfCycle = from - cycle * DAYS_OF_400_YEARS;
  const yearOfCycle = Math.floor(
    (dayOfCycle - Math.floor(dayOfCycle / 1460) + Math.floor(dayOfCycle / 36_524) - Math.floor(dayOfCycle / 146_096)) / 365,
  );
  const dayOfYear = dayOfCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100));
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9;
  return [yearOfCycle + cycle * 400 + (month <= 2 ? 1 : 0), month, dayOfYear - Math.floor((153 * fromMarch + 2) / 5) + 1];
};

const padded = (value: number, digits: number): string => String(value).padStart(digits, "0");

const texts = new Map<number, string>();
const MOST_KEPT = 20_000;

/** 2026-03-04. */
export const dayText = (day: number): string => {
  const known = texts.get(day);
  if (known !== undefined) return known;
  const [year, month, dayOfMonth] = dateOfDay(day);
  const text = `${padded(year, 4)}-${padded(month, 2)}-${padded(dayOfMonth, 2)}`;
  if (texts.size >= MOST_KEPT) texts.clear();
  texts.set(day, text);
  return text;
};

/** 2026-03: the month a day is in. */
export const monthText = (day: number): string => dayText(day).slice(0, -"-00".length);

/** The day of a date written year, month, day: 2026-03-04. Any other text, and a day that no month has, is none. */
export const dayOfText = (text: string): number | undefined => {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (year === undefined) return undefined;
  const found = dayOfDate(Number(year), Number(month), Number(day));
  return dayText(found) === text ? found : undefined;
};
