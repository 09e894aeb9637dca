import type { CutPiece, Doubt } from "../../functions/cut-pieces";
import type { TakenReading } from "../../functions/doubt-of-step";
import { isOfSoundReadings } from "./act-text";
import { CARD_WIDTH } from "./card-facts";
import { UNITS } from "./foot";
import { textWidth } from "./letter-widths";
import { box, type Drawn, line, type Spot, struck, text, WEIGHT } from "./pen";
import { tapedOpening } from "./taped-opening";

const FRAME = { left: 7.4, right: 202.6 } as const;
const INNER = 11;
const [EDGE, RIGHT] = [7, 203];
const SMALLEST = 2.5;
/** Where the frame begins: under the sketch, or under the head where there is none. */
const TOP = { sketch: 65.4, none: 26 } as const;
const ROW = 5.8;
const NEW = { left: 160, right: 199, high: 5 } as const;
const SAID = [3.4, 3.2, 3, 2.7, SMALLEST] as const;
const MOST_LINES = 2;
/** Letters so small that two lines are better than one. */
const EASY = 3;
const GAP = 1.6;
/** Letters of a reading to take again, and where the word before its box begins. */
const ROW_MOST = 3.4;
const NEW_WORD = 150;

/** Words in lines no wider than their room. */
const wrapped = (words: string, size: number, room: number): readonly string[] => {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines[lines.length - 1] ?? ""} ${word}`;
    if (lines.length > 0 && textWidth(longer, size, false) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
};

interface Said {
  readonly words: string;
  readonly isBold?: boolean;
  readonly isStruck?: boolean;
}

/** Runs one after the other, each from where the one before ends; what is struck is struck. */
const inARow = ([x, y]: Spot, size: number, runs: readonly Said[]): readonly Drawn[] => {
  let at = x;
  return runs.flatMap(({ words, isBold = false, isStruck = false }) => {
    const made = text([at, y], words, { size, isBold, part: isStruck ? "struck reading" : "again" });
    at += textWidth(words, size, isBold) + GAP;
    return isStruck ? struck(made) : [made];
  });
};

/** A reading to take again: from where to where, what was read, what it likely is, and a box for the new one. */
const again = ({ name, lies, read, likely }: TakenReading, top: number): readonly Drawn[] => {
  const y = top + 4.3;
  const said: readonly Said[] = [
    { words: `${name}:`, isBold: true }, { words: `${lies}; read` }, { words: read, isBold: true, isStruck: true },
    ...(likely === undefined ? [] : [{ words: `expect about ${likely}; tape it` }]),
  ];
  const wide = (size: number): number => said.reduce((sum, { words, isBold = false }) => sum + textWidth(words, size, isBold) + GAP, 0);
  const size = SAID.find((one) => one < ROW_MOST && INNER + wide(one) <= NEW_WORD) ?? SMALLEST;
  return [
    ...inARow([INNER, y], size, said),
    text([NEW.left - 1.4, y], "new", { size: 2.7, anchor: "end" }),
    box({ left: NEW.left, right: NEW.right, top: top + 0.6, bottom: top + 0.6 + NEW.high }, WEIGHT.blade),
  ];
};

const COLUMNS = 4;
const HANGING_BOTTOM = 130.6;
const PITCHES = [4.6, 4.2, 3.8, 3.4, 3.1, 2.9] as const;
const NUMBER_ROOM = 5.4;

/** What hangs on the readings: with no box to tick, and no figure, which a line through it would leave to be read. */
const hanging = ({ acts }: Doubt, top: number, bottom: number): readonly Drawn[] => {
  // Whoever reads again has no use for a check.
  const shown = acts.filter((row) => row.act?.kind !== "check");
  const rows = Math.ceil(shown.length / COLUMNS);
  const pitch = PITCHES.find((one) => one * (rows + 1) <= bottom - top) ?? Math.min(...PITCHES);
  const size = Math.max(SMALLEST, Math.min(3.3, pitch * 0.78));
  const wide = (RIGHT - EDGE) / COLUMNS;
  const cells = shown.flatMap((row, place) => {
    const x = EDGE + Math.floor(place / rows) * wide;
    const y = top + pitch * ((place % rows) + 2) - pitch * 0.25;
    return [
      text([x, y], row.cells.number, { size }),
      ...struck(text([x + NUMBER_ROOM, y], row.cells.act, { size, part: `struck ${row.cells.number}` })),
    ];
  });
  return [
    text([EDGE, top + pitch * 0.75], "Struck: none of it is done, not even the rip, before there is a new card.", { size, isBold: true }),
    line([[EDGE, top + pitch], [RIGHT, top + pitch]], WEIGHT.tape),
    ...cells,
  ];
};

/** The names of the ends: an angle that nobody is to set is not shown at all. */
const ends = ({ outline }: CutPiece): readonly Drawn[] =>
  (outline === undefined ? [] : (["left", "right"] as const)).flatMap((side) => {
    const isOpen = outline?.ends[side].isOpen === true;
    const [x, anchor] = side === "left" ? [EDGE, "start" as const] : [CARD_WIDTH - EDGE, "end" as const];
    return [
      text([x, 23.4], `${side.toUpperCase()} END · ${isOpen ? "OPEN" : "SKIRT"}`, { size: 3, isBold: true, anchor }),
      text([x, 30], "angle: wait for", { size: SMALLEST, anchor }),
      text([x, 33.5], "the new card", { size: SMALLEST, anchor }),
    ];
  });

/** What stands in large letters below, and what stands with its reading. */
const SAID_BELOW = "nothing is sawn from these readings";
const NAMED = /^[a-z ]+ likely [\d/ ]+.*: read again \(MISREAD\)$/;
const LINES = { again: 133.2, unit: 136.6 } as const;

/** What the readings that disagree come to, each way, and which are read again. */
const sayingWhat = (part: string, { across, readings }: Doubt): string => {
  // What only the flight can tell from its neighbours: a back too short disagrees as a front too long does.
  const named = readings.filter(({ likely }) => likely !== undefined).map(({ name }) => name).join(" and ");
  const flight = named === "" ? "" : `; the steps around it say ${named}`;
  const told = across === undefined
    ? ""
    : `: with the ${across.from} they give a ${across.name} of ${across.given}, read as ${across.read}`;
  return part.replace(/ disagree: read this step again$/, ` disagree${told}${flight}; read again what is struck`);
};

/**
 * A step whose readings do not hold: the opening as it was taped with what is doubtful struck, why, room for the new readings, and what
 * hangs on them, struck too.
 */
export const doubtful = (piece: CutPiece): readonly Drawn[] => {
  const { acts: [first], doubt } = piece;
  const toTake = doubt?.readings.filter(({ isDoubtful }) => isDoubtful) ?? [];
  const top = doubt === undefined ? TOP.none : TOP.sketch;
  const says = (first?.cells.note ?? "")
    .split("; ")
    .filter((part) => part !== SAID_BELOW && !(doubt !== undefined && (NAMED.test(part) || isOfSoundReadings(part))))
    .map((part) => (doubt === undefined ? part : sayingWhat(part, doubt)))
    .join("; ");
  const room = FRAME.right - INNER - 4;
  const lined = (most: number, least: number): number | undefined =>
    SAID.find((one) => one >= least && wrapped(says, one, room).length <= most);
  const size = lined(1, EASY) ?? lined(MOST_LINES, SMALLEST) ?? SMALLEST;
  const lines = wrapped(says, size, room);
  const rowsTop = top + 9.6 + lines.length * size * 1.35;
  const boxes = Math.max(1, toTake.length);
  const bottom = rowsTop + boxes * ROW + 0.8;
  const blank: readonly Drawn[] = [
    text([INNER, rowsTop + 4.3], "new readings", { size: 3.3, isBold: true }),
    box({ left: INNER + 30, right: NEW.right, top: rowsTop + 0.6, bottom: rowsTop + 0.6 + NEW.high }, WEIGHT.blade),
  ];
  return [
    ...(doubt === undefined ? [] : [...tapedOpening(piece, doubt), ...ends(piece)]),
    box({ ...FRAME, top, bottom }, WEIGHT.frame),
    text([INNER, top + 6.8], "NOTHING IS SAWN FROM THIS CARD", { size: 5.6, isBold: true }),
    ...lines.map((words, place) => text([INNER, top + 9.6 + (place + 0.75) * size * 1.35], words, { size, part: "doubt" })),
    ...(toTake.length === 0 ? blank : toTake.flatMap((one, place) => again(one, rowsTop + place * ROW))),
    ...(doubt === undefined ? [] : hanging(doubt, bottom + 0.8, HANGING_BOTTOM)),
    text([EDGE, 135.6], "READ AGAIN BEFORE YOU CUT", { size: 5, isBold: true }),
    text([RIGHT, LINES.again], "Read it again, type it in, print the card anew.", { size: 3, anchor: "end" }),
    text([RIGHT, LINES.unit], UNITS[piece.unit], { size: SMALLEST, anchor: "end" }),
  ];
};
