import { LAID, LEAVE_THE_LINE, ON_THE_FACE } from "../../functions/act-words";
import type { PieceAct } from "../../functions/cut-pieces";
import { otherEnd } from "../../solver/fit/acts";
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

/** Whether a card says all in its rows, leaves out what its pictures have, or says once what would stand in every row. */
export type Saying = "full" | "terse" | "short";

type Shorter = readonly (readonly [RegExp, string])[];

const FROM_TO: Shorter = [[/^from (mark \d+) to (mark \d+)$/, "$1 to $2"]];
/** A blade lowered short of the heel and pushed to the fence cuts against its turning; pulled toward the heel it would climb. */
const TO_HEEL = /^stop the saw where its kerf on the face reaches mark (\d+), the rest by hand saw$/;
/** A table or a mitre saw follows no scribed line: common practice, no source. */
const SCRIBED: Shorter = [[/^saw outside the line, plane to the riser$/, "by band saw or plane: saw outside the line, plane to the riser"]];
const BEGUN = "begin with the kerf on the face at mark $1, push to the fence; the rest by hand saw";
/** What a mitre is sawn with stands before its degrees. */
const BY_HAND = /^by hand saw(?:: |$)/;
/** What a card of many acts says in fewer words, without leaving any of it out. */
const SHORTER: Readonly<Record<Saying, Shorter>> = {
  full: [...FROM_TO, ...SCRIBED, [TO_HEEL, BEGUN]],
  terse: [
    ...FROM_TO,
    ...SCRIBED,
    [TO_HEEL, BEGUN],
    [/^of a long stick ripped (.*) wide$/, "long stick, $1 wide"],
  ],
  short: [
    [/^from mark (\d+) to mark (\d+)$/, "marks $1 to $2"],
    ...SCRIBED,
    [TO_HEEL, "kerf on face from $1, push; rest by hand"],
    // What a round blade may do of it stands under the acts or in the foot.
    [/^by hand saw: .*$/, "by hand saw"],
    // How wide stands with how thick and how long, under the acts.
    [/^of a long stick ripped (.*) wide$/, "outer edge toward you"],
    [/^face up, outer edge toward you: .*$|^long point to square end$|^on the face: the back comes here$/, ""],
    [/^face up, outer edge toward you$/, "outer edge toward you"],
  ],
};
const shorter = (part: string, length: Saying): string => SHORTER[length].reduce((said, [long, short]) => said.replace(long, short), part);

/** Said fully on a card, where no column heads it. */
const fuller = (part: string, { act }: PieceAct): string =>
  part === "strike it first" && act?.kind === "saw end" ? `strike the line just inside the blank's ${act.end} end` : part;

const notesOf = (row: PieceAct, length: Saying): string[] =>
  parts(row.cells.note)
    .filter((part, place) => !SAID_ONCE.has(part) && !WRONG_MARK.test(part) && (row.act?.kind !== "rip" || place === 0))
    .map((part) => fuller(shorter(part, length), row))
    .filter((part) => part !== "");

/** A mitre as it is counted from the edge, which its picture has. */
const FROM_EDGE = / \([\d.]+° from the [a-z ]+\)/;

const TO_THE_RIGHT = "top of the blade to the right";

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
  const said = notesOf(row, length);
  const isByHand = said.some((part) => BY_HAND.test(part));
  const notes = said.map((part) => part.replace(BY_HAND, "")).filter((part) => part !== "");
  // A width and an angle side by side would be taken for one another.
  const width = row.act?.kind === "mitre the return" ? notes.splice(0, 1) : [];
  const first = [
    ...(isByHand ? [strong("HAND SAW")] : []),
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

/** Of the least length of a blank or a stick: eighths of an inch, whole millimetres, never less than what is cut out of it. */
const PARTS: Readonly<Record<Unit, number>> = { in: 8, mm: 1 };
/** Less than anybody measures, so that what is an eighth but for its last digit is not the next one. */
const HAIR = 1e-6;
const atLeast = (length: number, unit: Unit): string => markedLength(Math.ceil(length * PARTS[unit] - HAIR) / PARTS[unit], unit);

/** How long what the piece is cut out of is at least; what a saw needs past each end is the shop's. */
export const blankText = (acts: readonly PieceAct[], unit: Unit): string => {
  const rip = acts.map(({ act }) => act).find((act) => act?.kind === "rip");
  return rip?.kind === "rip" ? `blank at least ${atLeast(rip.blank, unit)} + waste both ends` : "";
};

/** What a check that does not hold means; it is the same of all of them. */
export const checkLimit = (acts: readonly PieceAct[]): string =>
  acts
    .map(({ cells }) => parts(cells.note).filter((part) => WRONG_MARK.test(part)))
    .find((said) => said.length > 0)
    ?.join("; ") ?? "";

/** What the acts say too, or what helps whoever takes readings and not whoever saws. */
const NOT_FOR_THE_SAW = /^tapered: |not used, /;
/** What is done in the place of all that is on the card. */
const INSTEAD = /^or instead of the taper: pack (.*), and read this step anew$/;
/** Whether a part of a note is about what to make of the readings, which a step to read again does not come to. */
export const isOfSoundReadings = (part: string): boolean => NOT_FOR_THE_SAW.test(part) || INSTEAD.test(part);

const NAMED = /read again \(MISREAD\)$/;

/** What the skirts of the whole flight say against a reading of a step that closes. */
export const doubtsNamed = ([first]: readonly PieceAct[]): string =>
  first?.act?.kind === "rip" ? parts(first.cells.note).filter((part) => NAMED.test(part)).join("; ") : "";

/** A sentence of the whole piece, loud where whoever misses it does something wrong. */
export interface Remark {
  readonly text: string;
  readonly isLoud: boolean;
  /** Chosen before anything is done: over the acts. */
  readonly isFirst?: boolean;
  /** Says why, and not what: only where the acts lose no room to it. */
  readonly isSpare?: boolean;
}

const UNCHECKED = /^unchecked: (.*) would check this step$/;

const onCard = (part: string, isCrowded: boolean): Remark => ({
  text: part
    .replace(INSTEAD, "Instead of this card: pack $1; read anew")
    .replace(/ in at its (left|right) end/, '" thick at its $1 end')
    .replace(/ mm at its (left|right) end/, " mm thick at its $1 end")
    .replace(UNCHECKED, "the readings at the stair are unchecked: $1 there would check them"),
  isLoud: INSTEAD.test(part),
  // Where rows have the least room what only asks for more shares a line with what is said below.
  isFirst: INSTEAD.test(part) || (!isCrowded && UNCHECKED.test(part)),
});

/** The other way to the same end: turned about, a blade leant the other way is the same blade, and its near end goes the same way. */
const tiltsLeftOnly = (acts: readonly PieceAct[]): readonly Remark[] => {
  const sawn = acts.flatMap(({ act, cells }) => (act?.kind === "saw end" && cells.tilt.includes(TO_THE_RIGHT) ? [act] : []));
  const [first, second] = sawn;
  if (first === undefined) return [];
  const { end, swing: { near } } = first;
  const waste = second === undefined
    ? `the waste is then on your ${otherEnd(end)}`
    : `the waste of the ${end} end is then on your ${otherEnd(end)}, of the ${second.end} end on your ${otherEnd(second.end)}`;
  return [{
    isLoud: true,
    text:
      `If your saw tilts left only: for a TILT to the RIGHT turn the board end for end, face up, ${near} to the fence; ` +
      `tilt LEFT, handle the same way; ${waste}; turn the board back after`,
  }];
};

/** What a round blade of a usual size is across, in the unit of its tape: common practice, no source. */
const BLADE: Readonly<Record<Unit, number>> = { in: 10, mm: 250 };
const KERF_PART: Readonly<Record<Unit, number>> = { in: 0.5, mm: 5 };

/** Half the chord of a blade so far below the face: what its kerf has there past where it is through. */
const kerfText = (acts: readonly PieceAct[], thickness: number, unit: Unit): readonly Remark[] => {
  if (!acts.some(({ act }) => act?.kind === "saw to the heel")) return [];
  const across = BLADE[unit];
  const past = Math.round(Math.sqrt(thickness * Math.max(0, across - thickness)) / KERF_PART[unit]) * KERF_PART[unit];
  return [{
    isLoud: false, isSpare: true,
    text: `kerf of a ${across} blade: some ${markedLength(past, unit)} longer on the face than where it is through`,
  }];
};

/** What returns are made of: as thick as their tread, and long enough to hold. */
const sticks = (acts: readonly PieceAct[], thickness: number, unit: Unit): readonly Remark[] => {
  const mitred = acts.map(({ act }) => act).find((act) => act?.kind === "mitre the return");
  if (mitred?.kind !== "mitre the return") return [];
  const long = acts.flatMap(({ act }) => (act?.kind === "end the return" ? [act.distance + Math.abs(act.innerLonger)] : []));
  const [wide, thick] = [mitred.width, thickness].map((length) => markedLength(length, unit)) as [string, string];
  return [{
    isLoud: false, text: `returns: clamp long stick, ${wide} wide, ${thick} thick, well over ${atLeast(Math.max(...long), unit)}, face up`,
  }];
};

/** What the row of a mitre has no room for; of two it stands in the foot. */
const mitreByHand = (acts: readonly PieceAct[], isCrowded: boolean): readonly Remark[] =>
  isCrowded && acts.filter(({ act }) => act?.kind === "mitre").length === 1
    ? [{ isLoud: false, text: "mitre: a round blade may only begin it, and stops with its kerf on the face at the heel" }]
    : [];

/** What was found out about the readings, which stands with the first act and is of the whole piece, and what holds of several acts. */
export const remarks = (acts: readonly PieceAct[], thickness: number, unit: Unit, isCrowded: boolean): readonly Remark[] => {
  const [first] = acts;
  const found = (first?.act?.kind === "rip" ? parts(first.cells.note).slice(1) : [])
    .filter((part) => !BLANK.test(part) && part !== LONGER && !NAMED.test(part) && !NOT_FOR_THE_SAW.test(part))
    .map((part) => onCard(part, isCrowded));
  const said = [
    ...tiltsLeftOnly(acts), ...mitreByHand(acts, isCrowded), ...sticks(acts, thickness, unit), ...kerfText(acts, thickness, unit), ...found,
  ];
  return [...said.filter(({ isLoud }) => isLoud), ...said.filter(({ isLoud }) => !isLoud)];
};
