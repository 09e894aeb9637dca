import type { Unit } from "../../../solver/length/length";
import type { Draft, DraftMark } from "../draft";
import { paperPer } from "../laid-draft";
import { scaleFor } from "../scales";
import { boardMarks, type Key, OVER, UNDER } from "./board-marks";
import type { CutBoard } from "./cut-board";

/** Boards alike, by the names of all of them. */
interface Alike {
  readonly names: readonly string[];
  readonly board: CutBoard;
}

/** What the boards of a plan are, and what is said under each drawing of them. */
export interface BoardsSaid {
  readonly title: string;
  /** One of them, and several: board, boards. */
  readonly one: string;
  readonly several: string;
  readonly says: string;
  readonly notes: readonly string[];
  /** The function whose table lists them all. */
  readonly listed: string;
  readonly unit: Unit;
}

export interface NamedBoards {
  readonly name: string;
  readonly draft: Draft;
}

/** Room on the paper for boards, in millimetres: beside them stand the 0 and its margin, under them the sentences. */
const ROOM_WIDE = 226;
const ROOM_HIGH = 126;
/** More kinds of boards than anyone leafs through: the table lists them all. */
const MOST_DRAWN = 60;
const MOST_NAMES = 6;
const MOST_KEYS = 16;

const alikeOf = (boards: readonly CutBoard[]): readonly Alike[] => {
  const found = new Map<string, { names: string[]; board: CutBoard }>();
  for (const board of boards) {
    const key = JSON.stringify({ ...board, name: "" });
    const known = found.get(key);
    if (known === undefined) found.set(key, { names: [board.name], board });
    else known.names.push(board.name);
  }
  return [...found.values()];
};

/** Numbers that follow one another as a range. */
const ranges = (names: readonly string[]): string[] => {
  const found: { from: string; to: string; count: number }[] = [];
  for (const name of names) {
    const last = found[found.length - 1];
    const isNext = last !== undefined && /^\d+$/.test(name) && Number(last.to) + 1 === Number(name);
    if (isNext) Object.assign(last, { to: name, count: last.count + 1 });
    else if (last?.to !== name) found.push({ from: name, to: name, count: 1 });
  }
  return found.flatMap(({ from, to, count }) => (count === 1 ? [from] : count === 2 ? [from, to] : [`${from} to ${to}`]));
};

const namesOf = ({ names }: Alike, { one, several }: BoardsSaid): string => {
  const [first = ""] = names;
  if (names.length === 1) return `${one} ${first}`;
  const all = ranges(names);
  const shown = all.length > MOST_NAMES ? [...all.slice(0, MOST_NAMES), "more"] : all;
  return `${several} ${shown.join(", ")}, ${names.length} alike`;
};

/** The scale at which the longest and the widest have room. */
const scaleOf = (boards: readonly Alike[], unit: Unit): number =>
  Math.max(
    scaleFor(Math.max(...boards.map(({ board }) => board.length)), unit, ROOM_WIDE),
    scaleFor(Math.max(...boards.map(({ board }) => board.width)), unit, ROOM_HIGH - OVER - UNDER),
  );

/** As many on a drawing as have room one under another. */
const pages = (boards: readonly Alike[], per: number): readonly (readonly Alike[])[] => {
  const found: Alike[][] = [];
  let high = Infinity;
  for (const one of boards) {
    const own = one.board.width * per + OVER + UNDER;
    if (high + own > ROOM_HIGH) {
      found.push([]);
      high = 0;
    }
    found[found.length - 1]?.push(one);
    high += own;
  }
  return found;
};

const keySentence = (key: Key): string[] => {
  if (key.length === 0) return [];
  const shown = key.slice(0, MOST_KEYS).map((text, place) => `(${place + 1}) ${text}`);
  return [`Numbers stand for: ${shown.join("; ")}${key.length > MOST_KEYS ? "; the others are in the table" : ""}.`];
};

const drawn = (boards: readonly Alike[], per: number, scale: number, said: BoardsSaid): NamedBoards => {
  const key: Key = [];
  const marks: DraftMark[] = [];
  let unnamed = 0;
  let y = 0;
  for (const one of boards) {
    y -= one.board.width;
    const found = boardMarks(one.board, namesOf(one, said), y, per, key);
    marks.push(...found.marks);
    unnamed += found.unnamed;
    y -= (OVER + UNDER) / per;
  }
  const names = boards.map((one) => one.names[0] ?? "");
  const [first = "", last = ""] = [names[0], names[names.length - 1]];
  const name = first === last ? `${said.one} ${first}` : `${said.several} ${first} to ${last}`;
  return {
    name,
    draft: {
      title: `${said.title}, ${name}`, says: said.says, unit: said.unit, scale, marks,
      notes: [
        ...said.notes,
        ...keySentence(key),
        ...(unnamed === 0 ? [] : [`Pieces without words or number are too small for them here; ${said.listed} lists them.`]),
      ],
    },
  };
};

/** Boards to scale along and across, some to a drawing; boards that are cut alike are drawn once. */
export const boardsDrawings = (boards: readonly CutBoard[], said: BoardsSaid): readonly NamedBoards[] => {
  const all = alikeOf(boards);
  const shown = all.slice(0, MOST_DRAWN);
  const scale = scaleOf(shown, said.unit);
  const per = paperPer(said.unit, scale);
  const more = all.length - shown.length;
  const notes = more === 0 ? said.notes : [...said.notes, `${more} more are not drawn; ${said.listed} lists them all.`];
  return pages(shown, per).map((page) => drawn(page, per, scale, { ...said, notes }));
};
