import { isWritten, type MergedReading, type MergedStep, pieceName } from "./merged-readings";
import type { ReadingSet } from "./reading-set";

/** What is named one by one. */
const MOST_NAMED = 4;
const UNIT_WORDS = { in: "inches", mm: "millimetres" } as const;

/** One of a thing, or so many of them. */
export const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? "" : "s"}`;

const named = (parts: readonly string[]): string =>
  parts.slice(0, MOST_NAMED).join("; ") + (parts.length > MOST_NAMED ? `; and ${parts.length - MOST_NAMED} more` : "");

/** Whose readings a set has, of what, and how they were read. */
export const saidOfSet = ({ job, unit, tape, taken, treads, risers }: ReadingSet): string => {
  const of = [counted(treads.length, "tread"), counted(risers.length, "riser")].join(", ");
  const division = `${tape === 1 ? "1" : `1/${tape}`} ${unit}`;
  return `${job === "" ? "No job named" : job}: ${of}. Last read ${taken}, in ${UNIT_WORDS[unit]}, on a tape in ${division}.`;
};

/** The steps that did not close at the stair; empty where all did. */
export const saidOfKept = (steps: readonly MergedStep[]): string => {
  const kept = steps.filter((step) => step.kept).map(pieceName);
  return kept.length === 0 ? "" : `Did not close at the stair, kept as read: ${kept.join(", ")}. Read again before cutting.`;
};

const BECOMES: readonly (readonly [becomes: MergedReading["becomes"], one: string, several: string])[] = [
  ["differs", "differs", "differ"],
  ["new", "is new", "are new"],
  ["same", "is the same and not listed", "are the same and not listed"],
  ["stays", "cannot be taken in", "cannot be taken in"],
];

/** How many readings become what. */
export const saidOfAll = (steps: readonly MergedStep[]): string => {
  const all = steps.flatMap(({ readings }) => readings);
  const parts = BECOMES.flatMap(([becomes, one, several]) => {
    const count = all.filter((reading) => reading.becomes === becomes).length;
    return count === 0 ? [] : [{ count, says: count === 1 ? one : several }];
  });
  const [first, another] = parts;
  if (first === undefined) return "There is no reading in it.";
  if (another === undefined) return `${first.count === 1 ? "1 reading" : `All ${first.count} readings`} ${first.says}.`;
  return `Of ${all.length} readings ${parts.map(({ count, says }) => `${count} ${says}`).join(", ")}.`;
};

/** What a difference is in one sentence: was 36 5/8, now 36 3/4: 1/8 longer. */
export const saidOfDifference = ({ was, now, says }: MergedReading): string => `was ${was}, now ${now}: ${says}`;

/** What was written into a sheet, and what was not. */
export const saidOfTaking = (sheet: string, taken: readonly MergedStep[], leftOut: readonly MergedStep[]): string => {
  const all = taken.flatMap((step) => step.readings.map((one) => ({ step, one })));
  const written = all.filter(({ one }) => isWritten(one));
  const changed = written.filter(({ one }) => one.becomes === "differs");
  const staying = all.filter(({ one }) => one.becomes === "stays");
  const nameOf = ({ step, one }: (typeof all)[number]): string => `${pieceName(step)}, ${one.name}`;
  return [
    `Took ${counted(written.length, "reading")} into ${sheet}. Ctrl+Z takes all back.`,
    ...(changed.length === 0 ? [] : [`Changed: ${named(changed.map((each) => `${nameOf(each)} ${saidOfDifference(each.one)}`))}.`]),
    ...(leftOut.length === 0 ? [] : [`Left out: ${leftOut.map(pieceName).join(", ")}.`]),
    ...(staying.length === 0 ? [] : [`Not taken in: ${named(staying.map(nameOf))}.`]),
  ].join(" ");
};
