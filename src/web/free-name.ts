/** A workbook goes by this many characters, so that a file of its name can be saved anywhere. */
export const MOST_NAME = 60;

const NUMBERED = /^(.*) (\d+)$/;
/** What no file may have in its name on one system or another. */
const NOT_IN_FILES = /[\\/:*?"<>|\p{Cc}]+/gu;
const UNNAMED = "Workbook";

/** A name as a workbook may have it: one line, no longer than a file's, with nothing in it that a file's name may not have. */
export const workbookName = (given: string): string =>
  given.replaceAll(NOT_IN_FILES, " ").replaceAll(/\s+/g, " ").replaceAll(/^[\s.]+|[\s.]+$/g, "").slice(0, MOST_NAME).trim() || UNNAMED;

/** The name, or the next one with a number behind it, that no other workbook has. */
export const freeName = (given: string, taken: readonly string[]): string => {
  const name = workbookName(given);
  const lower = new Set(taken.map((one) => one.toLowerCase()));
  if (!lower.has(name.toLowerCase())) return name;
  const [, stem = name] = NUMBERED.exec(name) ?? [];
  for (let number = 2; ; number += 1) {
    const next = `${stem.slice(0, MOST_NAME - String(number).length - 1)} ${number}`;
    if (!lower.has(next.toLowerCase())) return next;
  }
};
