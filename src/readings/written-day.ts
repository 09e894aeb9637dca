const MONTHS = 12;
const FEBRUARY = 2;
const LONG_MONTHS: readonly number[] = [1, 3, 5, 7, 8, 10, 12];
const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

const daysIn = (year: number, month: number): number => {
  if (month === FEBRUARY) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return LONG_MONTHS.includes(month) ? 31 : 30;
};

/** Whether a text is a day of the calendar, written as `2026-03-04`. */
export const isWrittenDay = (text: string): boolean => {
  const [year = 0, month = 0, day = 0] = DAY.exec(text)?.slice(1).map(Number) ?? [];
  return month >= 1 && month <= MONTHS && day >= 1 && day <= daysIn(year, month);
};
