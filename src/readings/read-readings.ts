import { dayOfText } from "../solver/books/day";
import { wordKey } from "../solver/word-key";
import type { ReadingSet, ReadStep } from "./reading-set";
import { headingsIn, readRow } from "./read-table-rows";
import { inQuotes, isUnread, oneLine, type TextLine, textLines, type Unread, unread } from "./text-lines";
import { EDITION, END, HEAD, type HeadLine, PART_NAMES, type Part, TITLE } from "./text-form";

const MOST_DIVISIONS = 64;

const TITLE_LINE = new RegExp(`^${TITLE.replace(" ", "\\s+")}\\s+(\\d+)$`, "i");
const HEAD_LINE = new RegExp(`^(${HEAD.join("|")})(?:\\t\\s*|\\s*:\\s*|\\s+|$)(.*)$`, "i");

type Head = Pick<ReadingSet, HeadLine>;

/** What may stand behind each word of the head, and what to write. */
const HEAD_RULES: { readonly [Name in HeadLine]: { readonly read: (text: string) => Head[Name] | undefined; readonly write: string } } = {
  job: { read: oneLine, write: "the name of the job" },
  unit: {
    read: (text) => {
      const key = text.toLowerCase();
      return key === "in" || key === "mm" ? key : undefined;
    },
    write: "in or mm",
  },
  tape: {
    read: (text) => (/^\d+$/.test(text) && Number(text) >= 1 && Number(text) <= MOST_DIVISIONS ? Number(text) : undefined),
    write: "the divisions of the unit on the tape: 16 or 32 of an inch, 1 or 2 of a millimetre",
  },
  taken: { read: (text) => (dayOfText(text) === undefined ? undefined : text), write: "the day as 2026-03-04" },
};

interface Reading {
  readonly head: Partial<Head>;
  readonly parts: Partial<Record<Part, readonly ReadStep[]>>;
  /** The table that the lines stand in, and its headings once they are read. */
  readonly part?: Part;
  readonly headings?: readonly string[];
}

const readHead = (reading: Reading, line: TextLine, name: HeadLine, text: string): Reading | Unread => {
  if (reading.head[name] !== undefined) return unread(line, `${name} stands twice; leave one of them out`);
  const { read, write } = HEAD_RULES[name];
  const value = read(text);
  return value === undefined
    ? unread(line, `${name} reads ${inQuotes(text)}; write ${write}`)
    : { ...reading, head: { ...reading.head, [name]: value } };
};

const missingIn = (head: Partial<Head>, line: TextLine): Unread | undefined => {
  const missing = HEAD.find((name) => head[name] === undefined);
  return missing === undefined
    ? undefined
    : unread(
      line,
      `reads ${inQuotes(line.text)}, and no line above it says ${missing}; write ${missing} and behind it ${HEAD_RULES[missing].write}`,
    );
};

const readBelow = (reading: Reading, line: TextLine): Reading | Unread => {
  const { head, part, headings, parts } = reading;
  const unit = head.unit ?? "in";
  const begun = PART_NAMES.find((name) => wordKey(name) === wordKey(line.text));
  if (begun !== undefined) {
    if (parts[begun] !== undefined) return unread(line, `${begun} stands twice; leave one of them out`);
    return missingIn(head, line) ?? { head, part: begun, parts: { ...parts, [begun]: [] } };
  }
  if (part === undefined)
    return unread(line, `reads ${inQuotes(line.text)}; before the tables stand ${HEAD.join(", ")}: write one of them, or leave it out`);
  if (headings === undefined) {
    const found = headingsIn(line, part);
    return isUnread(found) ? found : { ...reading, headings: found };
  }
  const row = readRow(line, part, headings, unit);
  if (isUnread(row)) return row;
  const rows = parts[part] ?? [];
  if (rows.some(({ step }) => step === row.step)) return unread(line, `step ${row.step} stands twice under ${part}; leave one of them out`);
  return { ...reading, parts: { ...parts, [part]: [...rows, row] } };
};

const readLine = (reading: Reading, line: TextLine): Reading | Unread => {
  const [, word = "", text = ""] = HEAD_LINE.exec(line.text) ?? [];
  const name = HEAD.find((one) => one === word.toLowerCase());
  return name !== undefined && reading.part === undefined ? readHead(reading, line, name, text.trim()) : readBelow(reading, line);
};

/** Whether somewhere in a text a set of readings begins. */
export const holdsReadings = (text: string): boolean => textLines(text).some((line) => TITLE_LINE.test(line.text));

const NONE_HERE: Unread = {
  says: `No line reads "${TITLE} ${EDITION}", with which readings begin; paste the whole text as the telephone gave it.`,
};

/**
 * The set of readings in a text, or one sentence that names the line, what it reads and what to write. Around the set there may be other
 * words of a message; within it every line is read or refused, and nothing is guessed.
 */
export const readReadings = (text: string): ReadingSet | Unread => {
  const lines = textLines(text);
  const start = lines.findIndex((line) => TITLE_LINE.test(line.text));
  const title = lines[start];
  if (title === undefined) return NONE_HERE;
  const edition = Number(TITLE_LINE.exec(title.text)?.[1]);
  if (edition !== EDITION) {
    const instead = `this page reads ${TITLE} ${EDITION}; load the page again for its newest build`;
    return unread(title, `reads ${inQuotes(title.text)}, and ${instead}`);
  }
  const second = lines.slice(start + 1).find((line) => TITLE_LINE.test(line.text));
  if (second !== undefined) return unread(second, "a second set of readings begins; take in one at a time");
  const end = lines.findIndex((line, place) => place > start && line.text.toLowerCase() === END);
  const last = lines[end];
  if (last === undefined) {
    const lost = `reads ${inQuotes(lines[lines.length - 1]?.text ?? "")} and is the last; the line "${END}" is missing`;
    return unread(lines[lines.length - 1] ?? title, `${lost}, so readings may be too; paste the whole text`);
  }
  let reading: Reading = { head: {}, parts: {} };
  for (const line of lines.slice(start + 1, end)) {
    const next = readLine(reading, line);
    if (isUnread(next)) return next;
    reading = next;
  }
  const { job, unit, tape, taken } = reading.head;
  if (job === undefined || unit === undefined || tape === undefined || taken === undefined)
    return missingIn(reading.head, last) ?? NONE_HERE;
  if (reading.part !== undefined && reading.headings === undefined) return unread(last, `no headings stand under ${reading.part}`);
  return { job, unit, tape, taken, treads: reading.parts.treads ?? [], risers: reading.parts.risers ?? [] };
};
