import { quoted } from "../functions/say";

/** Why a text is no set of readings, in one sentence. */
export interface Unread {
  readonly says: string;
  /** The line that is meant, counted from 1. */
  readonly line?: number;
}

/** A line of a text that is not empty, counted from 1 as an editor counts them. */
export interface TextLine {
  readonly number: number;
  readonly text: string;
}

export const isUnread = (value: object): value is Unread => "says" in value;

export const unread = ({ number }: TextLine, sentence: string): Unread => ({ says: `Line ${number}: ${sentence}.`, line: number });

export const inQuotes = (text: string): string => (text === "" ? "nothing" : quoted(text));

const LINE_ENDS = /\r\n|[\r\n\u2028\u2029]/;
/** What a reply puts before a line it repeats. */
const REPEATED = /^(?:\s*>)+ ?/;
const NO_SPACE = /[\u200b\u2060\ufeff]/g;
const SPACES = /[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g;

/** A text as one line of a set. */
export const oneLine = (text: string): string => text.replace(NO_SPACE, "").replace(/\s+/g, " ").trim();

/** The lines of a text as a person sees them, whatever a message made of spaces and line ends. */
export const textLines = (text: string): readonly TextLine[] =>
  text.split(LINE_ENDS).flatMap((line, place) => {
    const plain = line.replace(NO_SPACE, "").replace(SPACES, " ").replace(REPEATED, "");
    // A tab at the end of a row is an empty cell.
    const seen = plain.replace(/^ +| +$/g, "");
    return seen.trim() === "" ? [] : [{ number: place + 1, text: seen.includes("\t") ? seen : seen.trim() }];
  });
