/** A workbook goes by this many characters, so that a file of its name can be saved anywhere. */
export const MOST_NAME = 60;

const NUMBERED = /^(.*) (\d+)$/;
/** What no file may have in its name on one system or another. */
const NOT_IN_FILES = /[\\/:*?"<>|\p{Cc}]+/gu;
/** What a name may not end in; half a sign is left where one was cut through. */
const END = /[\s.\ud800-\udbff]+$/;
const cut = (name: string, length: number): string => name.slice(0, length).replace(END, "");
const UNNAMED = "Workbook";

/** A name as a workbook may have it: one line, no longer than a file's, with nothing in it that a file's name may not have. */
export const workbookName = (given: string): string =>
  cut(given.replaceAll(NOT_IN_FILES, " ").replaceAll(/\s+/g, " ").replace(/^[\s.]+/, ""), MOST_NAME) || UNNAMED;

/** The name, or the next one with a number behind it, that no other workbook has. */
export const freeName = (given: string, taken: readonly string[]): string => {
  const name = workbookName(given);
  const lower = new Set(taken.map((one) => one.toLowerCase()));
  if (!lower.has(name.toLowerCase())) return name;
  const [, stem = name] = NUMBERED.exec(name) ?? [];
  for (let number = 2; ; number += 1) {
    const next = `${cut(stem, MOST_NAME - String(number).length - 1)} ${number}`;
    if (!lower.has(next.toLowerCase())) return next;
  }
};
