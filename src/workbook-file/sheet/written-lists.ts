import { type ChoiceList, LONGEST_CHOICES, type SheetData } from "../../sheets/sheet-data";
import { columnName } from "../../sheets/cell-address";
import { sheetPrefix } from "../formula/sheet-prefix";
import { escapedText } from "../xml-text";

export const CHOICES_SHEET = "Choices";

/** Collects the lists that are too long to be written where they are used: each takes up a column of a sheet for them. */
export interface LongLists {
  readonly place: (options: readonly string[]) => string;
  readonly sheet: () => SheetData | undefined;
}

export const longLists = (name: string): LongLists => {
  const lists = new Map<string, { readonly column: number; readonly options: readonly string[] }>();
  return {
    place: (options) => {
      const key = options.join(",");
      const { column } = lists.get(key) ?? { column: lists.size };
      lists.set(key, { column, options });
      const letters = columnName(column);
      return `${sheetPrefix(name)}$${letters}$1:$${letters}$${options.length}`;
    },
    sheet: () => {
      if (lists.size === 0) return undefined;
      const cells = [...lists.values()].flatMap(({ column, options }) =>
        options.map((option, row) => [`${columnName(column)}${row + 1}`, { value: option }] as const));
      return { name, cells: Object.fromEntries(cells), isHidden: true };
    },
  };
};

const isPlain = (option: string): boolean => option === option.trim();

const sourceOf = ({ options }: ChoiceList, long: LongLists): string => {
  const joined = options.join(",");
  return joined.length > LONGEST_CHOICES || !options.every(isPlain) ? long.place(options) : `"${joined.replaceAll('"', '""')}"`;
};

/** Lists of choices as checks of what is typed. */
export const listsXml = ({ lists = [] }: SheetData, long: LongLists): string => {
  if (lists.length === 0) return "";
  const written = lists.map((list) =>
    `<dataValidation type="list" allowBlank="1" showInputMessage="1" showErrorMessage="1" sqref="${list.cells}">` +
    `<formula1>${escapedText(sourceOf(list, long))}</formula1></dataValidation>`);
  return `<dataValidations count="${lists.length}">${written.join("")}</dataValidations>`;
};
