import { exact } from "../solver/length/exact";
import { tapeText } from "../solver/length/tape-text";
import { words } from "../solver/words";
import type { ReadingSet, ReadStep } from "./reading-set";
import { oneLine } from "./text-lines";
import { EDITION, END, HEAD, KEPT, NO, NOT_TAKEN, PART_NAMES, type Part, PARTS, STEP, TITLE, YES } from "./text-form";

const line = (cells: readonly (string | number)[]): string => cells.join("\t");

/** On a mark of the tape or half way between two: as the tape shows it. Else in decimals, so that nothing of a reading is lost. */
export const readingText = (value: number, { unit, tape }: Pick<ReadingSet, "unit" | "tape">): string => {
  const size = exact(value);
  const halves = 2 * tape;
  return unit === "in" && size.times(halves).isInteger()
    ? tapeText(size, { denominator: halves, feet: false, strong: false }).replace(/"$/, "")
    : size.toFixed();
};

const rowOf = (set: ReadingSet, part: Part, { step, read, kept }: ReadStep): string => {
  const lengths = PARTS[part].map((heading) => {
    const value = read[heading];
    return value === undefined ? NOT_TAKEN : readingText(value, set);
  });
  return line([step, ...lengths, kept ? YES : NO]);
};

/** A set of readings as text, for a message or a file: to be read by a person, mended by hand and read again by `readReadings`. */
export const readingsText = (set: ReadingSet): string => {
  const head = { ...set, job: oneLine(set.job) };
  const lines = [
    `${TITLE} ${EDITION}`,
    ...HEAD.map((name) => line([name, head[name]])),
    ...PART_NAMES.flatMap((part) => [
      "",
      part,
      line([STEP, ...PARTS[part].map(words), KEPT]),
      ...set[part].map((row) => rowOf(set, part, row)),
    ]),
    "",
    END,
  ];
  return `${lines.join("\n")}\n`;
};
