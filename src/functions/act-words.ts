import { type Act, type ActsOfAStep, type AsRead, type Mark, otherEnd, type PieceKind, type Side } from "../solver/fit/acts";
import type { Outline } from "../solver/fit/outline";
import type { Unit } from "../solver/length/length";
import { markedLength, ruledLength } from "../solver/length/marked-length";
import {
  bevelText,
  checkText,
  depthText,
  freeEndText,
  fromTo,
  hookText,
  joined,
  markText,
  mitreText,
  swingText,
  type SwingWords,
  tapeText,
  type Ticket,
  tiltText,
} from "./act-phrases";
import type { ResultColumns } from "./declare";

/** The acts of a ticket as rows: every figure a person works to, in words that need no sign and no key. */

/** A row but for its number and its step. */
interface Words extends Partial<SwingWords> {
  readonly act: string;
  readonly hookOn?: string;
  readonly distance?: number;
  readonly tape?: string;
  readonly tilt?: string;
  readonly note?: string;
}

type Kind = Act["kind"];
type WordsOf = { readonly [K in Kind]: (act: Extract<Act, { readonly kind: K }>, ticket: Ticket) => Words };

/** A check of two marks, each a 128th off at most, and a figure rounded as much; half a millimetre's tape alike. */
const WRONG_MARK: Readonly<Record<Unit, string>> = { in: "1/32", mm: "1" };

const LARGE: Readonly<Record<Side, string>> = { left: "LEFT", right: "RIGHT" };
export const LEAVE_THE_LINE = "leave the line";
export const READ_AGAIN = "READ AGAIN";
export const ON_THE_FACE = "on the face";

export const LAID: Readonly<Record<PieceKind, string>> = {
  tread: "face up, nose toward you, back edge at the saw's fence",
  riser: "face up, bottom toward you, top edge at the saw's fence",
};
const RIPPED: Readonly<Record<PieceKind, string>> = {
  tread: "deep, nose edge, not yet rounded, to the rip fence",
  riser: "high, bottom edge to the rip fence",
};

const measured = (distance: number, { unit }: Ticket): Pick<Words, "distance" | "tape"> => ({
  distance,
  tape: markedLength(distance, unit),
});

/** Up to a heel, in wood that stays: a round blade's kerf is inches longer on the face than where it is through. */
const keptOffHeel = (ticket: Ticket, from: Mark, heel: Mark, finish: (stop: string) => string): string =>
  joined(fromTo(ticket, from, heel), finish(`where its kerf on the face reaches ${markText(ticket, heel)}`));

const sawnToHeel = (stop: string): string => `stop the saw ${stop}, the rest by hand saw`;
/** Most mitres are shorter than what a round blade leaves. */
const mitredByHand = (stop: string): string => `by hand saw: a round blade may only begin it, and stops ${stop}`;

const at = (end: Side, place: Mark["place"]): Mark => ({ end, place });

/** Marks and checks, and what is sawn on them. */
const OF_ENDS = {
  "read again": ({ note }) => ({ act: READ_AGAIN, note: joined("nothing is sawn from these readings", note) }),
  rip: ({ distance, piece, blank, note }, ticket) => ({
    act: "RIP",
    ...measured(distance, ticket),
    note: joined(RIPPED[piece], `${markedLength(blank, ticket.unit)} long when done`, "begin with a longer blank", note),
  }),
  "square the blank": ({ end }) => ({
    act: `SQUARE ${LARGE[end]} END`, swing: "square", tilt: "upright", note: "of the blank: every mark is hooked on it",
  }),
  gauge: ({ distance }, ticket) => ({
    act: "GAUGE",
    hookOn: "the nose",
    ...measured(distance, ticket),
    note: "a line on the face behind the nose, parallel to it, from end to end",
  }),
  mark: ({ mark, hook, distance, isBurnt }, { unit }) => ({
    act: `MARK ${LARGE[mark.end]} ${mark.place.toUpperCase()}`,
    hookOn: hookText(hook, isBurnt, unit),
    distance,
    tape: tapeText(distance, isBurnt, hook.along === "gauged line" ? "end" : "corner", unit),
    note: ON_THE_FACE,
  }),
  check: ({ from, to, distance, isBurnt }, ticket) => ({
    act: "CHECK",
    hookOn: checkText(ticket, from, to, isBurnt),
    distance,
    tape: markedLength(distance, ticket.unit),
    note: `off by more than ${WRONG_MARK[ticket.unit]}: mark again; if the marks hold, an end already sawn is wrong`,
  }),
  "saw end": ({ end, piece, swing, tilt, on }, ticket) => ({
    act: `SAW ${LARGE[end]} END`,
    ...swingText(end, swing, ticket.unit),
    tilt: tiltText(end, tilt, piece),
    note: joined(LAID[piece], on === undefined ? "strike it first" : fromTo(ticket, ...on), LEAVE_THE_LINE),
  }),
} satisfies Partial<WordsOf>;

const OF_RETURNS = {
  "saw to the heel": ({ end, swing }, ticket) => ({
    act: `SAW ${LARGE[end]} END`,
    ...swingText(end, swing, ticket.unit),
    tilt: "upright",
    note: joined(LAID.tread, keptOffHeel(ticket, at(end, "back"), at(end, "heel"), sawnToHeel), LEAVE_THE_LINE),
  }),
  mitre: ({ end, fromNose, toePastHeel }, ticket) => ({
    act: `MITRE ${LARGE[end]} END`,
    ...mitreText(fromNose, "nose", end, { corner: "heel", by: toePastHeel }, ticket.unit),
    tilt: "upright",
    note: joined(keptOffHeel(ticket, at(end, "toe"), at(end, "heel"), mitredByHand), LEAVE_THE_LINE),
  }),
  "mitre the return": ({ end, fromNose, toePastHeel, width }, ticket) => ({
    act: `MITRE ${LARGE[end]} RETURN`,
    ...mitreText(fromNose, "outer edge", otherEnd(end), { corner: "inner edge", by: toePastHeel }, ticket.unit),
    tilt: "upright",
    note:
      `of a long stick ripped ${markedLength(width, ticket.unit)} wide; face up, outer edge toward you: the mitre is its ` +
      `${otherEnd(end)} end, outer edge longer`,
  }),
  "end the return": ({ end, distance, angle, innerLonger }, ticket) => ({
    act: `SAW ${LARGE[end]} RETURN`,
    hookOn: "hook the long point of its mitre, along the outer edge",
    ...measured(distance, ticket),
    ...freeEndText(end, angle, innerLonger, ticket.unit),
    tilt: "upright",
    note: joined(
      "face up, outer edge toward you",
      innerLonger === 0 ? "long point to square end" : `${innerLonger > 0 ? "inner" : "outer"} edge longer at this end`,
    ),
  }),
} satisfies Partial<WordsOf>;

const OF_TAPERED = {
  "mark the depth": ({ end, isOpen, distance }, ticket) => ({
    act: `MARK ${LARGE[end]} DEPTH`,
    hookOn: isOpen ? `from the ${end} heel, along the sawn line` : `hook the ${end} nose corner, along the ${end} end`,
    ...measured(distance, ticket),
    note: "on the face: the back comes here",
  }),
  scribe: ({ marked }, ticket) => ({
    act: "SCRIBE BACK",
    note: joined(
      `from ${depthText(ticket, marked, "left")} to ${depthText(ticket, marked, "right")}`,
      "saw outside the line, plane to the riser",
    ),
  }),
} satisfies Partial<WordsOf>;

const OF_RISERS = {
  "mark the notch": ({ end, way, distance }, ticket) => ({
    act: "MARK NOTCH",
    hookOn: way === "along" ? `hook the ${end} end, along the bottom` : `hook the bottom, up the ${end} end`,
    ...measured(distance, ticket),
    note: "on the face and on the back",
  }),
  "saw the notch": ({ end }) => ({
    act: "SAW NOTCH",
    tilt: "upright",
    note: `off the lower ${end} corner, parallel to the end and to the bottom; notch right through`,
  }),
  "end the bevel": ({ end, distance }, ticket) => ({
    act: "MARK BEVEL",
    hookOn: `hook the ${end} end, along the top of the back`,
    ...measured(distance, ticket),
    note: `the bevel stops here: leave the last ${markedLength(distance, ticket.unit)} unbevelled`,
  }),
  bevel: ({ degrees, relief }, { acts, unit }) => ({
    act: "BEVEL TOP",
    offset: `back in by ${ruledLength(relief, unit)}`,
    tilt: bevelText(degrees),
    note: acts.some(({ kind }) => kind === "end the bevel")
      ? "by plane, up to the bevel mark: a saw would run past it"
      : "from end to end",
  }),
} satisfies Partial<WordsOf>;

const WORDS: WordsOf = { ...OF_ENDS, ...OF_RETURNS, ...OF_TAPERED, ...OF_RISERS };

const wordsOf = (act: Act, ticket: Ticket): Words => (WORDS[act.kind] as (act: Act, ticket: Ticket) => Words)(act, ticket);

/** What the words of a row are said of; no column shows it. */
export interface Made {
  readonly act?: Act;
  readonly outline?: Outline;
  readonly asRead?: AsRead;
}

/** Rows of one step, numbered in the order of the acts; a step without an answer has one row, with its reason. */
export const actRows = <Bad>({ step, acts, outline, asRead, bad }: ActsOfAStep<Bad>, unit: Unit): readonly { readonly made: Made }[] =>
  bad === undefined
    ? acts.map((act, place) => ({
        step, number: place + 1, ...wordsOf(act, { acts, unit }),
        made: { act, ...(outline === undefined ? {} : { outline }), ...(asRead === undefined ? {} : { asRead }) },
      }))
    : [{ step, act: READ_AGAIN, bad, made: {} } as { readonly made: Made }];

/** Steps a call may have: each makes up to two dozen rows. */
export const MOST_STEPS = 500;

/** What a ticket has in each row. */
export const ACT_COLUMNS = {
  step: { kind: "label", says: "Step of the reading." },
  number: { kind: "count", says: "Number of the act within the step, in the order in which they are done." },
  act: { kind: "text", says: "What is done, and at which end; READ AGAIN where the readings do not hold and nothing is to be sawn." },
  hookOn: { kind: "text", says: "Where the tape begins and along what it lies; marks by the numbers of the acts that made them." },
  distance: { kind: "reading", says: "Exact distance, net of anything burnt." },
  tape: {
    kind: "text",
    says:
      "The distance as the tape is read: to the nearest 1/32 in, strong and shy 1/64 past or short of it; in mm to the nearest " +
      "half. Where an inch (100 mm) is burnt it is in this figure.",
  },
  swing: {
    kind: "text",
    says:
      "Which way the near end of the blade's path, where the handle is, goes from square. A mitre is told as the saw's scale shows it.",
  },
  offset: {
    kind: "text",
    says:
      "The same swing as a distance, to the nearest 1/64 in: how far the corner named lies inside a square line through the other " +
      "one. Of a bevel, what it takes off the back.",
  },
  tilt: { kind: "text", says: "Which way the top of the blade leans, what that leaves longer, and what a square on the sawn end shows." },
  unit: { kind: "unit", says: "Unit of every length of the row." },
  note: { kind: "text", says: "How the piece lies, what the cut follows, what to look at again, or why the row has no answer." },
} as const satisfies ResultColumns;
