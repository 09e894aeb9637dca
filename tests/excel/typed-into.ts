/** What stands in a cell after an entry that is no formula: its value, and its format where the entry changes it. */
export interface Entered {
  readonly value: string | number | boolean;
  readonly format?: string;
}

const NUMBER = /^[-+]?(\d+\.?\d*|\.\d+)(%?)$/;
const FRACTION = /^(\d+)\/(\d+)$/;
const MIXED = /^(\d+) (\d+)\/(\d+)$/;
const FRACTION_FORMAT = /[?#\d]\/[?\d]/;
const MONTHS = 12;
const DAYS = 31;

/**
 * Of the year 2026, days from the last of 1899 as Excel counts them: 1 January is 46,023 (DATE, Microsoft support; by hand 126 x 365 + 31
 * leap days + 2).
 */
const NEW_YEAR = 46_023;
const BEFORE_MONTH = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/**
 * Excel reads what is put into a cell as if it were typed. A cell of text keeps it as it is: "Text format cells are treated as text even
 * when a number is in the cell", Number format codes. An apostrophe says text and is no part of it: Format numbers as text. "12/2 changes
 * to 2-Dec", and "0 1/2" or a fraction format makes a fraction: Stop automatically changing numbers to dates, Display numbers as
 * fractions. All of Microsoft support, the wording from memory.
 */
export const typedInto = (format: string, entered: string | number | boolean): Entered => {
  if (format === "@") return { value: String(entered) };
  if (typeof entered !== "string") return { value: entered };
  if (entered.startsWith("'")) return { value: entered.slice(1) };
  const text = entered.trim();
  if (/^(true|false)$/i.test(text)) return { value: text.toLowerCase() === "true" };
  const [, digits, percent] = NUMBER.exec(text) ?? [];
  if (digits !== undefined) return { value: Number(text.replace("%", "")) / (percent === "%" ? 100 : 1) };
  const [, whole, over, under] = MIXED.exec(text) ?? [];
  if (whole !== undefined)
    return { value: Number(whole) + Number(over) / Number(under), ...(format === "General" ? { format: "# ?/?" } : {}) };
  const [, above, below] = FRACTION.exec(text) ?? [];
  if (above === undefined) return { value: entered };
  if (FRACTION_FORMAT.test(format)) return { value: Number(above) / Number(below) };
  const [month, day] = [Number(above), Number(below)];
  if (month < 1 || month > MONTHS || day < 1 || day > DAYS) return { value: entered };
  return { value: NEW_YEAR + (BEFORE_MONTH[month - 1] ?? 0) + day - 1, ...(format === "General" ? { format: "d-mmm" } : {}) };
};
