import { LAID, LEAVE_THE_LINE, ON_THE_FACE } from "../../functions/act-words";
import type { PieceAct } from "../../functions/cut-pieces";
import { markedLength } from "../../solver/length/marked-length";
import type { Unit } from "../../solver/length/length";

/** What is set large, what is set in heavy letters, and what is read once one stands nearer. */
export type Rank = "figure" | "strong" | "word";

export interface Run {
  readonly rank: Rank;
  readonly text: string;
}

/** An act as it stands on a card: lines of words, the first figure of the first line being what is worked to. */
export interface ActText {
  readonly number: string;
  readonly verb: string;
  readonly lines: readonly (readonly Run[])[];
}

const figure = (text: string): Run => ({ rank: "figure", text });
const strong = (text: string): Run => ({ rank: "strong", text });
const word = (text: string): Run => ({ rank: "word", text });
const words = (texts: readonly string[]): readonly Run[] => {
  const said = texts.filter((text) => text !== "").join("; ");
  return said === "" ? [] : [word(said)];
};

/** Said once for the whole card, in the plan and its legend. */
const SAID_ONCE: ReadonlySet<string> = new Set([LAID.tread, LAID.riser, LEAVE_THE_LINE, ON_THE_FACE]);
const WRONG_MARK = /^(?:off by more than .*: mark again|if the marks hold, an end already sawn is wrong)$/;
const BLANK = / long when done$/;
const LONGER = "begin with a longer blank";

const parts = (note: string): string[] => note.split("; ").filter((part) => part !== "");

/** The side a direction goes to, so that it is found at a glance. */
const loud = (said: string): string => said.replace(/to the (left|right)/g, (_, side: string) => `to the ${side.toUpperCase()}`);

/** A setting apart from its words: the figure first, heavy the way it goes, the rest as it is said. */
const setting = (said: string): readonly Run[] => {
  const [, degrees, rest = ""] = /^([\d.]+°),? ?(.*)$/.exec(said) ?? [];
  if (degrees === undefined) return [figure(said)];
  const [, before = "", way, after = ""] = /^(.*?)((?:near end of the cut|top of the blade) to the (?:left|right),?)(.*)$/.exec(rest) ?? [];
  if (way === undefined) return [figure(degrees), ...words([rest])];
  return [figure(degrees), ...words([before.trim()]), strong(loud(way)), ...words([after.trim()])];
};

const offsetRuns = (offset: string): readonly Run[] => {
  const [, corner, by] = /^(.* in by) (.*)$/.exec(offset) ?? [];
  return corner === undefined || by === undefined ? words([offset]) : [word(corner), figure(by)];
};

/** A figure of a tape; strong and shy are read once it is found. */
const marked = (reading: string): readonly Run[] => {
  const [, plain = reading, nearly] = /^(.*) (strong|shy)$/.exec(reading) ?? [];
  return [figure(plain), ...(nearly === undefined ? [] : [strong(nearly)])];
};

/** The tape's reading, and where an inch is burnt in it, the net length beside it. */
const tapeRuns = ({ act, cells }: PieceAct, unit: Unit): readonly Run[] => {
  if (cells.tape === "") return [];
  const [reading = "", ...where] = cells.tape.split(", ");
  const isBurnt = act !== undefined && "isBurnt" in act && act.isBurnt;
  const net = isBurnt ? `(net ${markedLength(act.distance, unit)})` : "";
  return [...marked(reading), ...(where.length === 0 ? [] : [strong(`${where.join(", ")},`), word(net)])];
};

/** How a return lies and where its mitre is: its picture shows it. */
const RETURN_LIES = /^face up, outer edge toward you/;
const RETURNS_LIE = "returns: face up";

/** Whether a card says all in its rows, leaves out what its pictures have, or says once what would stand in every row. */
export type Saying = "full" | "terse" | "short";

/** Of each cut to a heel; a card of many acts says it whole in a remark. */
const BY_HAND = /^from (mark \d+) to (mark \d+), the last of it by hand: never past mark \d+$/;
const STICK = /^of a long stick ripped (.*) wide$/;
/** Said fully on a card, where no column heads it. */
const STRIKE = /^strike it first$/;
const STRIKE_FULLY = "strike the line first";
const shorter = (part: string): string => part.replace(BY_HAND, "$1 to $2, last by hand").replace(STICK, "long stick, $1 wide");
const BY_HAND_ONCE = "last by hand: a round blade runs on at the face; never saw past the heel";

const notesOf = ({ act, cells }: PieceAct, length: Saying): string[] =>
  parts(cells.note)
    .filter(
      (part, place) =>
        !SAID_ONCE.has(part) && !WRONG_MARK.test(part) && (act?.kind !== "rip" || place === 0) &&
        !(length === "short" && RETURN_LIES.test(part)),
    )
    .map((part) => (length !== "full" ? shorter(part) : part).replace(STRIKE, STRIKE_FULLY));

/** A mitre as it is counted from the edge, which its picture has. */
const FROM_EDGE = / \([\d.]+° from the [a-z ]+\)/;

const isPlain = (tilt: string): boolean => tilt === "" || tilt === "upright";

/**
 * The words of a row of the sheet, in the order in which they are looked for at the saw. On a card of many acts what its pictures say is
 * not said again.
 */
export const actText = (row: PieceAct, unit: Unit, length: Saying): ActText => {
  const { number, act, offset, tilt } = row.cells;
  const hookOn = row.act?.kind === "gauge" ? `from ${row.cells.hookOn}` : row.cells.hookOn;
  const swing = length !== "full" ? row.cells.swing.replace(FROM_EDGE, "") : row.cells.swing;
  const [tilted = "", ...shown] = tilt.split("; ");
  const tiltRuns = isPlain(tilt) ? [] : [...setting(tilted), ...words(shown)];
  const notes = notesOf(row, length);
  // A width and an angle side by side would be taken for one another.
  const width = row.act?.kind === "mitre the return" ? notes.splice(0, 1) : [];
  const first = [
    ...tapeRuns(row, unit),
    ...words(width),
    ...words([hookOn, ...(swing === "" && offset === "" && tilt !== "upright" ? notes : [])]),
    ...(swing === "" ? [] : setting(swing)),
    ...(offset === "" ? [] : offsetRuns(offset)),
    ...(tilt === "upright" ? [strong("upright")] : []),
    ...(swing === "" && offset === "" && tilt !== "upright" ? [] : words(notes)),
  ];
  // A tilt that stands alone, as of a bevel, is what is set.
  const lines = swing === "" && tiltRuns.length > 0 ? [[...tiltRuns, ...first]] : [first, ...(tiltRuns.length === 0 ? [] : [tiltRuns])];
  return { number, verb: act, lines };
};

/** How long what the piece is cut out of is at least. */
export const blankText = (acts: readonly PieceAct[], unit: Unit): string => {
  const rip = acts.map(({ act }) => act).find((act) => act?.kind === "rip");
  return rip?.kind === "rip" ? `blank longer than ${markedLength(rip.blank, unit)}` : "";
};

/** What a check that does not hold means; it is the same of all of them. */
export const checkLimit = (acts: readonly PieceAct[]): string =>
  acts
    .map(({ cells }) => parts(cells.note).filter((part) => WRONG_MARK.test(part)))
    .find((said) => said.length > 0)
    ?.join("; ") ?? "";

/** What the acts say too, or what helps whoever takes readings and not whoever saws. */
export const NOT_FOR_THE_SAW = /^tapered: |^pack the riser behind|not used, /;

const NAMED = /read again \(MISREAD\)$/;

/** What the skirts of the whole flight say against a reading of a step that closes. */
export const doubtsNamed = ([first]: readonly PieceAct[]): string =>
  first?.act?.kind === "rip" ? parts(first.cells.note).filter((part) => NAMED.test(part)).join("; ") : "";

/** What was found out about the readings: it stands with the first act and belongs to the whole piece. */
export const remarks = (acts: readonly PieceAct[], length: Saying): readonly string[] => {
  const [first] = acts;
  const found = (first?.act?.kind === "rip" ? parts(first.cells.note).slice(1) : []).filter(
    (part) => !BLANK.test(part) && part !== LONGER && !NAMED.test(part),
  );
  const isByHand = acts.some(({ cells }) => parts(cells.note).some((part) => BY_HAND.test(part)));
  if (length === "full") return found;
  const lies = length === "short" && acts.some(({ act }) => act?.kind === "mitre the return") ? [RETURNS_LIE] : [];
  return [...(isByHand ? [BY_HAND_ONCE] : []), ...lies, ...found.filter((part) => !NOT_FOR_THE_SAW.test(part))];
};
