import type { ActText, Rank, Remark, Run } from "./act-text";
import { textWidth } from "./letter-widths";
import { baseline, box, type Drawn, line, text, WEIGHT } from "./pen";

/** Where the acts stand on a card, in millimetres. */
export interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Letters of a row as high as `pitch`. */
interface Sizes {
  readonly pitch: number;
  readonly gap: number;
  readonly verb: number;
  readonly number: number;
  readonly digits: number;
  readonly of: Readonly<Record<Rank, number>>;
}

/** Nothing is smaller than this on a card, in millimetres: at a bench's distance it would not be read. */
export const SMALLEST = 2.5;
/** Between runs of one line. */
const GAP = { usual: 1.8, close: 1.3 } as const;
const BOX_ROOM = 6;
const NUMBER_WIDE = 4.3;
/** Rows from the highest that are easily read at a distance to the lowest that hold the largest figures in these sizes. */
const HIGHEST = 5.7;
const EASY = 4.6;
/** Rows so little lower that leave each act its line are read more easily than higher ones that break it. */
const UNBROKEN = 0.5;
const LOWEST = 2.65;
/** Words of rows as high as this begin below one another. */
const LINED_UP = 3.3;
/** From the middle of a row down to the line its letters stand on, in parts of its height: the largest and the smallest have room. */
const ON_LINE = 0.27;
const STEP = 0.1;

const sizesOf = (pitch: number): Sizes => {
  const size = (part: number, most: number): number => Math.min(most, Math.max(SMALLEST, pitch * part));
  return {
    pitch,
    gap: pitch < LINED_UP ? GAP.close : GAP.usual,
    verb: size(0.64, 3.5),
    number: Math.min(4.1, pitch - 0.3),
    digits: SMALLEST,
    of: { figure: size(0.88, 4.9), strong: size(0.64, 3.4), word: size(0.6, 3.15) },
  };
};

const isHeavy = (rank: Rank): boolean => rank !== "word";
const runWidth = ({ rank, text: words }: Run, { of }: Sizes): number => textWidth(words, of[rank], isHeavy(rank));

interface Placed extends Run {
  readonly x: number;
  readonly line: number;
}

/** Words that nobody ends a line with. */
const LEADS_ON = /^(?:a|an|and|at|by|from|in|its|mark|of|on|or|the|to)$/i;
const isFigure = (word: string): boolean => /^\d[\d/.]*°?$/.test(word);

/** What a line is broken between: a number keeps the word before it and its unit or noun, and a small word what it leads to. */
const unbroken = (words: string): readonly string[] =>
  words.split(" ").reduce<string[]>((made, word) => {
    const before = made[made.length - 1];
    const [last] = before?.split(" ").slice(-1) ?? [];
    const isBound = last !== undefined && (/^\d/.test(word) || isFigure(last) || LEADS_ON.test(last));
    return isBound ? [...made.slice(0, -1), `${before ?? ""} ${word}`] : [...made, word];
  }, []);

const phrases = (words: string): readonly string[] => words.replace(/([;,:]) /g, "$1\n").split("\n");

const OFFSET = / in by$/;
/** Whether a run is read with the one after it: a corner and how far it is in, a figure and what it is nearly. */
const isBoundTo = (run: Run, next: Run | undefined): next is Run =>
  next !== undefined && (OFFSET.test(run.text) || (run.rank === "figure" && /^(strong|shy)$/.test(next.text)));

/**
 * Runs one after the other from `x`, and what is too long for a line on the next from `indent`: a phrase as it is where it finds room on
 * one line, if `arePhrasesWhole`.
 */
const flowed = (
  runs: readonly Run[], x: number, indent: number, right: number, sizes: Sizes, arePhrasesWhole: boolean,
): readonly Placed[] => {
  const placed: Placed[] = [];
  let [at, on] = [x, 0];
  for (const [place, run] of runs.entries()) {
    const wide = (words: string): number => textWidth(words, sizes.of[run.rank], isHeavy(run.rank));
    const next = runs[place + 1];
    const bound = isBoundTo(run, next) ? sizes.gap + runWidth(next, sizes) : 0;
    const isWhole = run.rank !== "word" || OFFSET.test(run.text);
    const whole = isWhole ? [run.text] : phrases(run.text);
    let held = "";
    const put = (): void => {
      if (held === "") return;
      placed.push({ rank: run.rank, text: held, x: at, line: on });
      at += wide(held) + sizes.gap;
      held = "";
    };
    const hasRoom = (words: string): boolean => at + wide(held === "" ? words : `${held} ${words}`) + bound <= right;
    // The words of a whole card begin below one another.
    if (place > 0 && run.rank === "word" && at < indent && placed.every(({ rank }) => rank !== "word")) at = indent;
    for (const phrase of whole) {
      const isKept = isWhole || (arePhrasesWhole && indent + wide(phrase) <= right);
      for (const piece of isKept ? [phrase] : unbroken(phrase)) {
        if (hasRoom(piece)) {
          held = held === "" ? piece : `${held} ${piece}`;
          continue;
        }
        put();
        [at, on, held] = [indent, on + 1, piece];
      }
    }
    put();
  }
  return placed;
};

const linesOf = (placed: readonly Placed[]): number => 1 + Math.max(0, ...placed.map(({ line: on }) => on));

/** Whole phrases where they take no more lines. */
const flow = (runs: readonly Run[], x: number, indent: number, right: number, sizes: Sizes): readonly Placed[] => {
  const [whole, broken] = [true, false].map((arePhrasesWhole) => flowed(runs, x, indent, right, sizes, arePhrasesWhole)) as [
    readonly Placed[], readonly Placed[],
  ];
  return linesOf(whole) <= linesOf(broken) ? whole : broken;
};

/** One act of a row. */
interface Slot {
  readonly act: ActText;
  readonly left: number;
  readonly lines: readonly (readonly Placed[])[];
  readonly height: number;
}

const slot = (act: ActText, left: number, figure: number, indent: number, right: number, sizes: Sizes): Slot => {
  const lines = act.lines.map((runs) => flow(runs, figure, indent, right, sizes));
  return { act, left, lines, height: lines.reduce((sum, placed) => sum + linesOf(placed), 0) };
};

const verbWidth = ({ verb }: ActText, sizes: Sizes): number => textWidth(verb, sizes.verb, true);

const figureWidth = ({ lines: [first = []] }: ActText, sizes: Sizes): number => {
  const end = first.findIndex(({ rank }) => rank === "word");
  return first.slice(0, end < 0 ? 1 : end).reduce((sum, run) => sum + runWidth(run, sizes) + sizes.gap, 0);
};

/** Past this a figure has words of its own between it and the next one, which nothing is lined up by. */
const WIDEST_FIGURE = 38;

type Row = readonly Slot[];

/** Where a row of two acts with the same words has them, in parts of its width. */
const SHARED = { second: 0.34, words: 0.68 } as const;

/** Two acts that differ in nothing but their end and their figure: the words stand once, behind both. */
const sharing = (one: ActText, other: ActText, left: number, right: number, sizes: Sizes): Row | undefined => {
  const [[ofOne = [], more], [ofOther = [], others]] = [one.lines, other.lines];
  const wordsOf = (runs: readonly Run[]): string => runs.filter(({ rank }) => rank === "word").map(({ text: words }) => words).join();
  if (more !== undefined || others !== undefined || wordsOf(ofOne) === "" || wordsOf(ofOne) !== wordsOf(ofOther)) return undefined;
  const [second, words] = [left + (right - left) * SHARED.second, left + (right - left) * SHARED.words];
  const plain = (act: ActText, runs: readonly Run[]): ActText => ({ ...act, lines: [runs.filter(({ rank }) => rank !== "word")] });
  const begins = (act: ActText, from: number): number => from + BOX_ROOM + verbWidth(act, sizes) + sizes.gap;
  const first = slot(plain(one, ofOne), left, begins(one, left), left, second - sizes.gap, sizes);
  const next = slot(plain(other, ofOther), second, begins(other, second), second, words - sizes.gap, sizes);
  const said = flow(ofOther.filter(({ rank }) => rank === "word"), words, words, right, sizes);
  if (first.height !== 1 || next.height !== 1 || linesOf(said) !== 1) return undefined;
  return [first, { ...next, lines: [[...(next.lines[0] ?? []), ...said]] }];
};

const rowsOf = (acts: readonly ActText[], { left, right }: Room, sizes: Sizes, canPair: boolean): readonly Row[] => {
  const figure = left + BOX_ROOM + Math.max(...acts.map((act) => verbWidth(act, sizes))) + sizes.gap;
  // Where rows are low words follow their figure at once.
  const lined = sizes.pitch < LINED_UP ? [] : acts.map((act) => figureWidth(act, sizes)).filter((width) => width < WIDEST_FIGURE);
  const indent = figure + Math.max(0, ...lined);
  const middle = (left + right) / 2 + 1;
  const half = (act: ActText, from: number, to: number): Slot | undefined => {
    const begins = from + BOX_ROOM + verbWidth(act, sizes) + sizes.gap;
    const made = slot(act, from, begins, begins, to, sizes);
    return made.height === 1 ? made : undefined;
  };
  const rows: Row[] = [];
  for (let place = 0; place < acts.length; place += 1) {
    const [one, next] = [acts[place], acts[place + 1]];
    if (one === undefined) continue;
    const isPair = canPair && next !== undefined && one.verb.split(" ")[0] === next.verb.split(" ")[0];
    const shared = isPair ? sharing(one, next, left, right, sizes) : undefined;
    if (shared !== undefined) {
      rows.push(shared);
      place += 1;
      continue;
    }
    const [first, second] = isPair ? [half(one, left, middle - 2), half(next, middle, right)] : [];
    if (first !== undefined && second !== undefined) {
      rows.push([first, second]);
      place += 1;
    } else rows.push([slot(one, left, figure, indent, right, sizes)]);
  }
  return rows;
};

const heightOf = (row: Row): number => Math.max(...row.map(({ height }) => height));

/** Remarks of the whole piece, under its acts: loud ones each on lines of its own. */
const remarkLines = (remarks: readonly Remark[], { left, right }: Room, sizes: Sizes): readonly Placed[] => {
  const small = { ...sizes, of: { ...sizes.of, word: SMALLEST, strong: SMALLEST } };
  const quiet = remarks.filter(({ isLoud }) => !isLoud).map(({ text: words }) => words).join("; ");
  const loud = remarks.filter(({ isLoud }) => isLoud).map(({ text: words }) => words);
  let from = 0;
  return [...loud, ...(quiet === "" ? [] : [quiet])].flatMap((words, place) => {
    // Heavy letters are wider: they are laid out in a room as much narrower.
    const isLoud = place < loud.length;
    const room = isLoud ? left + ((right - left) * textWidth(words, SMALLEST, false)) / textWidth(words, SMALLEST, true) : right;
    const placed = flow([{ rank: "word", text: words }], left, left, room, small);
    const begun = from;
    from += linesOf(placed);
    return placed.map((one) => ({ ...one, rank: isLoud ? ("strong" as const) : one.rank, line: one.line + begun }));
  });
};

/** A line of remarks is as high as its letters ask for. */
const REMARK_PITCH = 3.1;

const slotDrawn = ({ act, left, lines }: Slot, top: number, sizes: Sizes): readonly Drawn[] => {
  const middleOf = (line: number): number => top + (line + 0.5) * sizes.pitch;
  const standsOn = (line: number): number => middleOf(line) + sizes.pitch * ON_LINE;
  const part = `act ${act.number}`;
  const middle = middleOf(0);
  const half = sizes.number / 2;
  let line = 0;
  const texts = lines.flatMap((placed, place) => {
    const from = line;
    line += linesOf(placed);
    // The second setting of a saw is its tilt.
    const label = place === 0 ? [] : [text([left + BOX_ROOM, standsOn(from)], "TILT", { size: sizes.of.strong, isBold: true })];
    return [
      ...label,
      ...placed.map(({ rank, text: words, x, line: on }) =>
        text([x, standsOn(from + on)], words, { size: sizes.of[rank], isBold: isHeavy(rank), part: `${part} ${rank}` }),
      ),
    ];
  });
  return [
    box({ left, right: left + NUMBER_WIDE, top: middle - half, bottom: middle + half }, WEIGHT.blade),
    text([left + NUMBER_WIDE / 2, baseline(middle, sizes.digits)], act.number, { size: sizes.digits, isBold: true, anchor: "middle" }),
    text([left + BOX_ROOM, standsOn(0)], act.verb, { size: sizes.verb, isBold: true, part: `${part} verb` }),
    ...texts,
  ];
};

interface Layout {
  readonly sizes: Sizes;
  readonly rows: readonly Row[];
  readonly remarks: readonly Placed[];
  readonly height: number;
}

const layout = (acts: readonly ActText[], remarks: readonly Remark[], room: Room, pitch: number, canPair: boolean): Layout => {
  const sizes = sizesOf(pitch);
  const rows = rowsOf(acts, room, sizes, canPair);
  const said = remarkLines(remarks, room, sizes);
  const lines = rows.reduce((sum, row) => sum + heightOf(row), 0);
  return { sizes, rows, remarks: said, height: lines * pitch + (said.length === 0 ? 0 : linesOf(said) * REMARK_PITCH) };
};

/**
 * The largest letters with which all acts find room, unbroken if they can be: one act a row while that is easily read, two where it is
 * not.
 */
const fitted = (acts: readonly ActText[], remarks: readonly Remark[], room: Room): Layout => {
  const pitches = (to: number): readonly number[] =>
    Array.from({ length: Math.round((HIGHEST - to) / STEP) + 1 }, (_, step) => HIGHEST - step * STEP);
  const tried = [
    ...pitches(EASY).map((pitch) => [pitch, false] as const),
    ...pitches(LOWEST).flatMap((pitch) => [[pitch, false], [pitch, true]] as const),
  ];
  const fits = ({ height }: Layout): boolean => height <= room.bottom - room.top;
  const largest =
    tried.map(([pitch, canPair]) => () => layout(acts, remarks, room, pitch, canPair)).reduce<Layout | undefined>(
      (found, make) => {
        if (found !== undefined) return found;
        const made = make();
        return fits(made) ? made : undefined;
      }, undefined,
    ) ?? layout(acts, remarks, room, LOWEST, true);
  const isUnbroken = ({ rows }: Layout): boolean => rows.flat().every(({ lines, height }) => height === lines.length);
  const { pitch } = largest.sizes;
  if (isUnbroken(largest) || pitch - UNBROKEN < LINED_UP) return largest;
  const smaller = [1, 2, 3, 4, 5].map((step) => layout(acts, remarks, room, pitch - step * STEP, false));
  return smaller.find((made) => fits(made) && isUnbroken(made)) ?? largest;
};

const remarksDrawn = (said: readonly Placed[], top: number): readonly Drawn[] =>
  said.map(({ rank, text: words, x, line: on }) =>
    text([x, baseline(top + (on + 0.5) * REMARK_PITCH, SMALLEST)], words, { size: SMALLEST, isBold: isHeavy(rank), part: "remark" }));

const rowsBelow = (acts: readonly ActText[], remarks: readonly Remark[], room: Room): readonly Drawn[] => {
  const [all, needed] = [fitted(acts, remarks, room), fitted(acts, remarks.filter(({ isSpare }) => isSpare !== true), room)];
  const isFree = all.sizes.pitch >= needed.sizes.pitch && all.height <= room.bottom - room.top;
  const { sizes, rows, remarks: said } = isFree ? all : needed;
  let top = room.top;
  const drawn = rows.flatMap((row) => {
    const here = top;
    top += heightOf(row) * sizes.pitch;
    return [
      ...row.flatMap((each) => slotDrawn(each, here, sizes)),
      line([[room.left, top], [room.right, top]], WEIGHT.tape),
    ];
  });
  return [...drawn, ...remarksDrawn(said, top)];
};

/** The acts in cutting order, each with a box to tick; over them what is chosen first. */
export const actRows = (acts: readonly ActText[], remarks: readonly Remark[], room: Room): readonly Drawn[] => {
  const first = remarks.filter(({ isFirst }) => isFirst === true);
  if (first.length === 0) return rowsBelow(acts, remarks, room);
  const said = remarkLines(first, room, sizesOf(LOWEST));
  const top = room.top + linesOf(said) * REMARK_PITCH;
  return [
    ...remarksDrawn(said, room.top),
    line([[room.left, top], [room.right, top]], WEIGHT.tape),
    ...rowsBelow(acts, remarks.filter(({ isFirst }) => isFirst !== true), { ...room, top }),
  ];
};
