import type { Unit } from "../../src/solver/length/length";
import { distance, level, type Plane, planeThrough, type Point, shifted, threePlanes, upright } from "../solver/fit/space";

/**
 * Someone who has nothing but the printed rows, a tape, a square and a saw: reads the words, follows them on a block, and ends with planes
 * and points in space. x to the right, y from the far edge (a tread's back, a riser's top) to the near one, z up to the face. None of the
 * project's own figures and formulas are here, and the column of exact distances is not read.
 */

type Side = "left" | "right";

export interface Printed {
  readonly number: number;
  readonly act: string;
  readonly hookOn: string;
  readonly tape: string;
  readonly swing: string;
  readonly offset: string;
  readonly tilt: string;
  readonly note: string;
}

/** What is done wrong on purpose. */
export type Misreading = "swing mirrored" | "tilt mirrored" | "inch forgotten" | undefined;

export interface Block {
  readonly thickness: number;
  readonly unit: Unit;
  readonly misread?: Misreading;
  /** On a saw that tilts to the left only, what is done instead of a tilt to the right, in the words of the card. */
  readonly otherWay?: string;
}

/** A return as it is sawn, in its own plane: along its outer edge from the long point of its mitre, and in from that edge. */
export interface SawnReturn {
  readonly width: number;
  /** Where the inner edge begins and where both edges end. */
  readonly innerFrom: number;
  readonly innerTo: number;
  readonly outerTo: number;
  /** At which of its ends the mitre is, outer edge toward the operator. */
  readonly mitreAt: Side;
}

interface Sawn {
  depth: number;
  gauged: number;
  readonly ends: Map<Side, Plane>;
  readonly marks: Map<number, Point>;
  readonly named: Map<string, Point>;
  /** Toe, heel and back point of each open end, as sawn. */
  readonly mitres: Map<Side, { toe: Point; heel: Point }>;
  readonly returnLines: Map<Side, { back: Point; heel: Point }>;
  readonly returns: Map<Side, SawnReturn>;
  /** Where the scribed back of a tapered piece begins and ends. */
  scribed: { readonly left: Point; readonly right: Point } | undefined;
  /** What each check reads more than what is printed. */
  readonly checks: number[];
  readonly notch: Map<Side, { along: number; up: number }>;
  readonly squareStretch: Map<Side, number>;
  bevel: { degrees: number; relief: number } | undefined;
  /** What the words say twice and did not say alike. */
  readonly contradictions: string[];
  readonly order: string[];
}

const RADIANS = Math.PI / 180;
const matched = (text: string, pattern: RegExp): RegExpExecArray => {
  const found = pattern.exec(text);
  if (found === null) throw new Error(`"${text}" cannot be read as ${pattern.source}`);
  return found;
};

const WHOLE_AND_FRACTION = String.raw`(?:(\d+(?:\.\d+)?)(?: (\d+)\/(\d+))?|(\d+)\/(\d+))(?: (strong|shy))?`;

/** A figure of the tape in words: 38 1/4 strong. Strong and shy are a 64th. */
const figure = (text: string): number => {
  const [, whole = "0", over, under, over2, under2, word] = matched(text, new RegExp(`^${WHOLE_AND_FRACTION}$`));
  const fraction = Number(over ?? over2 ?? 0) / Number(under ?? under2 ?? 1);
  return Number(whole) + fraction + (word === "strong" ? 1 / 64 : word === "shy" ? -1 / 64 : 0);
};

/** What the tape is read at, and what of it stands at the corner where it begins. */
export const readTape = (text: string): { readonly at: number; readonly begins: number } => {
  const [, at = "", begins] = matched(text, /^(.*?)(?:, the (\d+) at the (?:corner|end|mark))?$/);
  return { at: figure(at), begins: Number(begins ?? 0) };
};

const isSide = (text: string | undefined): text is Side => text === "left" || text === "right";
const sideIn = (text: string): Side => {
  const [, side] = matched(text, /\b(left|right)\b/i);
  const lower = side?.toLowerCase();
  if (!isSide(lower)) throw new Error(text);
  return lower;
};
/** Turned half about on the table, the face still up. */
const halfAbout = ([x, y, z]: Point): Point => [-x, -y, z];
const opposite = (side: Side): Side => (side === "left" ? "right" : "left");
/** +1 to the right. */
const way = (side: Side): 1 | -1 => (side === "right" ? 1 : -1);

export const xAt = (plane: Plane, y: number, z: number): number => threePlanes(plane, upright(y), level(z))[0];

/** Along a tape's hook, which reaches half an inch down an end. */
const HOOK_INCHES = 0.5;
const LONG_INCHES = 100;
const BLANK_BEGINS_INCHES = 4;

export const sawn = (rows: readonly Printed[], block: Block): Sawn => {
  const { thickness, unit, misread } = block;
  const inch = unit === "mm" ? 25.4 : 1;
  const piece: Sawn = {
    depth: 0,
    gauged: 0,
    ends: new Map(),
    marks: new Map(),
    named: new Map(),
    mitres: new Map(),
    returnLines: new Map(),
    returns: new Map(),
    scribed: undefined,
    checks: [],
    notch: new Map(),
    squareStretch: new Map(),
    bevel: undefined,
    contradictions: [],
    order: [],
  };
  const say = (isSo: boolean, what: string): void => {
    if (!isSo) piece.contradictions.push(what);
  };
  const yOf = (line: string): number => {
    if (line === "nose" || line === "bottom") return piece.depth;
    if (line === "back" || line === "top") return 0;
    if (line === "gauged line") return piece.depth - piece.gauged;
    throw new Error(line);
  };
  const markNumbered = (number: string | undefined): Point => {
    const found = piece.marks.get(Number(number));
    if (found === undefined) throw new Error(`nobody made mark ${String(number)}`);
    return found;
  };
  const endSawn = (side: Side): Plane => {
    const found = piece.ends.get(side);
    if (found === undefined) throw new Error(`the ${side} end is not sawn yet`);
    return found;
  };
  const cornerOn = (side: Side, line: string): Point => [xAt(endSawn(side), yOf(line), thickness), yOf(line), thickness];

  /** A plane through a line on the face, its top leaning as the words say. */
  const blade = (end: Side, far: Point, near: Point, words: string): Plane => {
    if (words === "upright") return planeThrough(far, near, shifted(far, [0, 0, 1]));
    const [, degrees, side, where, longer, light] = matched(
      words,
      new RegExp(
        String.raw`^([\d.]+)°, top of the blade to the (left|right), (over|away from) the piece: (face|underside|back) longer; ` +
          "square on the end: light shows at the (face|underside|back)$",
      ),
    );
    if (!isSide(side)) throw new Error(words);
    const leant = (from: Point, to: Point, toward: Side): Point => {
      const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
      // Square to the cut, on the face, to the right: the near end of the path has the greater y.
      const right: Point = [(to[1] - from[1]) / long, -(to[0] - from[0]) / long, 0];
      const lean = Math.tan(Number(degrees) * RADIANS) * way(toward) * (misread === "tilt mirrored" ? -1 : 1);
      return shifted(from, [right[0] * lean, right[1] * lean, 1]);
    };
    const turned = (): Plane => {
      const [, , toward, handle] = matched(
        block.otherWay ?? "", /turn the board end for end, face up, (nose|bottom) to the fence; tilt (LEFT|RIGHT), handle (.*)$/,
      );
      // What lay at the fence lies toward the operator now.
      const [atFence, toOperator] = [halfAbout(near), halfAbout(far)];
      const [before, now] = [near[0] - far[0], toOperator[0] - atFence[0]].map(Math.sign);
      say((handle === "the same way") === (before === now), `handle ${String(handle)}`);
      return planeThrough(far, near, halfAbout(leant(atFence, toOperator, toward === "LEFT" ? "left" : "right")));
    };
    const isTurned = block.otherWay !== undefined && side === "right";
    const plane = isTurned ? turned() : planeThrough(far, near, leant(far, near, side));
    // The same told three more ways: each is looked up on the plane.
    if (misread === undefined) {
      const outwardBelow = (xAt(plane, far[1], 0) - xAt(plane, far[1], thickness)) * way(end);
      say((where === "over") === (side !== end), `${words}: over or away`);
      say((longer === "face") === outwardBelow < 0, `${words}: which is longer`);
      say((light === "face") === outwardBelow > 0, `${words}: where light shows`);
    }
    return plane;
  };

  /** How far the near point lies to the right of the far one, by the offset in words; the angle and the way of the near end prove it. */
  const swungBy = (end: Side, { swing, offset }: Printed, over: number, far: string, near: string): number => {
    if (swing === "square") return 0;
    const [, inside = "", by = ""] = matched(offset, /^([a-z ]+) in by (.*)$/);
    const [, degrees, goes] = matched(swing, /^([\d.]+)°, near end of the cut to the (left|right)$/);
    if (![far, near].includes(inside)) throw new Error(`${offset}: neither ${far} nor ${near}`);
    if (!isSide(goes)) throw new Error(swing);
    const inward = -way(end) * figure(by);
    const shift = inside === near ? inward : -inward;
    say(Math.sign(shift) === way(goes), `${swing}, ${offset}`);
    const byOffset = Math.abs(Math.atan(shift / over)) / RADIANS;
    say(Math.abs(byOffset - Number(degrees)) < 0.05 + inch / 64 / over / RADIANS, `${swing}, ${offset}: how much`);
    return misread === "swing mirrored" ? -shift : shift;
  };

  const edgesIn = (note: string): { readonly far: string; readonly near: string } => {
    const [, near = "", far = ""] = matched(note, /face up, (nose|bottom) toward you, (back|top) edge at the saw's fence/);
    return { near, far };
  };

  const follow = (row: Printed): void => {
    const { act, number, hookOn, tape, note } = row;
    piece.order.push(act);
    if (act === "RIP") {
      piece.depth = figure(tape);
      return;
    }
    if (act === "GAUGE") {
      if (hookOn !== "the nose") throw new Error(hookOn);
      piece.gauged = figure(tape);
      return;
    }
    if (/^SQUARE (LEFT|RIGHT) END$/.test(act)) {
      const side = sideIn(act);
      piece.ends.set(side, planeThrough([0, 0, 0], [0, 1, 0], [0, 0, 1]));
      return;
    }
    if (/^SAW (LEFT|RIGHT) END$/.test(act)) {
      const end = sideIn(act);
      const { far, near } = edgesIn(note);
      const marks = /from mark (\d+) to mark (\d+)/.exec(note);
      if (marks === null) {
        const begin = (end === "left" ? BLANK_BEGINS_INCHES : LONG_INCHES) * inch;
        const shift = swungBy(end, row, piece.depth, far, near);
        piece.ends.set(end, blade(end, [begin, 0, thickness], [begin + shift, piece.depth, thickness], row.tilt));
        return;
      }
      const [one, other] = [markNumbered(marks[1]), markNumbered(marks[2])];
      const [back, front] = one[1] < other[1] ? [one, other] : [other, one];
      const isToHeel = note.includes("by hand");
      const shift = swungBy(end, row, front[1] - back[1], far, isToHeel ? "heel" : near);
      // The marks rule; the swing that sets the saw must agree with them, within what two marks and it are rounded by.
      if (misread === undefined) say(Math.abs(front[0] - back[0] - shift) < (3 * inch) / 64, `${row.swing} against the marks`);
      const plane = blade(end, back, front, row.tilt);
      if (isToHeel) piece.returnLines.set(end, { back: one, heel: other });
      else piece.ends.set(end, plane);
      return;
    }
    if (/^MARK (LEFT|RIGHT) (NOSE|TOE|HEEL|BACK|TOP|BOTTOM)$/.test(act)) {
      const [, verb = "", corner, edge, , squared, along = "gauged line"] = matched(
        hookOn,
        new RegExp(
          "^(hook|burn (?:an inch|100) at) the (?:(left|right) (nose|back|top|bottom) corner|(left|right) end|squared (left|right) end), " +
            "(?:along the (nose|back|top|bottom)|on the gauged line)$",
        ),
      );
      const from = sideIn(hookOn);
      if (corner !== undefined && edge !== along) throw new Error(hookOn);
      const { at, begins } = readTape(tape);
      if (verb === "hook" ? begins !== 0 : begins !== (unit === "mm" ? 100 : 1)) throw new Error(`${hookOn}: ${tape}`);
      const plane = endSawn(from);
      const y = yOf(along);
      const face = xAt(plane, y, thickness);
      const reached = xAt(plane, y, thickness - Math.min(thickness, HOOK_INCHES * inch));
      // A hook lies against whatever stands out furthest of the end.
      const zero = verb !== "hook" || squared !== undefined ? face : from === "left" ? Math.min(face, reached) : Math.max(face, reached);
      const net = misread === "inch forgotten" ? at : at - begins;
      const made: Point = [zero - way(from) * net, y, thickness];
      piece.marks.set(number, made);
      piece.named.set(act.slice(5).toLowerCase(), made);
      return;
    }
    if (act === "CHECK") {
      const { at, begins } = readTape(tape);
      const marks = /^from mark (\d+) to mark (\d+)$/.exec(hookOn);
      if (marks !== null) {
        piece.checks.push(distance(markNumbered(marks[1]), markNumbered(marks[2])) - at);
        return;
      }
      const burnt = /^from mark (\d+) to the (left|right) (nose|back|top|bottom) corner, nothing burnt$/.exec(hookOn);
      const [, side, edge, mark] =
        burnt === null
          ? matched(hookOn, /^hook the (left|right) (nose|back|top|bottom) corner, to mark (\d+)$/)
          : ["", burnt[2], burnt[3], burnt[1]];
      if (!isSide(side) || edge === undefined) throw new Error(hookOn);
      piece.checks.push(distance(cornerOn(side, edge), markNumbered(mark)) + begins - at);
      return;
    }
    if (/^MITRE (LEFT|RIGHT) END$/.test(act)) {
      const end = sideIn(act);
      const [, toe, heel] = matched(note, /from mark (\d+) to mark (\d+)/);
      const [, , goes] = matched(
        row.swing, /^([\d.]+)° on the saw's scale, near end of the cut to the (left|right) \(([\d.]+)° from the nose\)$/,
      );
      say(goes === end, row.swing);
      piece.mitres.set(end, { toe: markNumbered(toe), heel: markNumbered(heel) });
      return;
    }
    if (/^MITRE (LEFT|RIGHT) RETURN$/.test(act)) {
      const end = sideIn(act);
      const [, scale, goes, fromEdge] = matched(
        row.swing,
        /^([\d.]+)° on the saw's scale, near end of the cut to the (left|right) \(([\d.]+)° from the outer edge\)$/,
      );
      const [, mitreAt] = matched(note, /face up, outer edge toward you: the mitre is its (left|right) end, outer edge longer/);
      if (!isSide(mitreAt)) throw new Error(note);
      const width = figure(matched(note, /^of a long stick ripped (.*?) wide;/)[1] ?? "");
      // From square, which is what the scale counts from.
      const innerFrom = width * Math.tan(Number(scale) * RADIANS);
      const [, by = ""] = matched(row.offset, /^inner edge in by (.*)$/);
      say(goes === mitreAt, `${row.swing}: ${note}`);
      say(Math.abs(Number(scale) + Number(fromEdge) - 90) < 0.11, row.swing);
      say(Math.abs(innerFrom - figure(by)) < (width / inch) * 0.003 * inch + inch / 64, `${row.swing}, ${row.offset}`);
      piece.returns.set(end, { width, innerFrom, innerTo: 0, outerTo: 0, mitreAt });
      return;
    }
    if (/^SAW (LEFT|RIGHT) RETURN$/.test(act)) {
      const end = sideIn(act);
      const begun = piece.returns.get(end);
      if (begun === undefined) throw new Error("no mitre on the return");
      if (hookOn !== "hook the long point of its mitre, along the outer edge") throw new Error(hookOn);
      const outerTo = figure(tape);
      if (row.swing === "square") {
        piece.returns.set(end, { ...begun, outerTo, innerTo: outerTo });
        return;
      }
      const [, edge, by = ""] = matched(row.offset, /^(outer|inner) edge in by (.*)$/);
      const [, , goes] = matched(row.swing, /^([\d.]+)°, near end of the cut to the (left|right)$/);
      const innerTo = outerTo + (edge === "outer" ? 1 : -1) * figure(by);
      // Its free end is the other one; the outer edge is the near one.
      const free = opposite(begun.mitreAt);
      say((outerTo > innerTo ? free : opposite(free)) === goes, `${row.swing}, ${row.offset}`);
      say(note.includes(`${innerTo > outerTo ? "inner" : "outer"} edge longer`), `${note}: which edge`);
      piece.returns.set(end, { ...begun, outerTo, innerTo });
      return;
    }
    if (/^MARK (LEFT|RIGHT) DEPTH$/.test(act)) {
      const end = sideIn(act);
      const [, , fromHeel] = matched(
        hookOn,
        /^(?:hook the (left|right) nose corner, along the \1 end|from the (left|right) heel, along the sawn line)$/,
      );
      if (sideIn(hookOn) !== end) throw new Error(hookOn);
      const line = piece.returnLines.get(end);
      if (fromHeel !== undefined && line === undefined) throw new Error("no heel is sawn there");
      const begin = line?.heel ?? cornerOn(end, "nose");
      const toward = line?.back ?? cornerOn(end, "back");
      const share = figure(tape) / distance(begin, toward);
      piece.marks.set(number, [begin[0] + (toward[0] - begin[0]) * share, begin[1] + (toward[1] - begin[1]) * share, thickness]);
      return;
    }
    if (act === "SCRIBE BACK") {
      const [, left = "", right = ""] = matched(note, /^from (mark \d+|the left back corner) to (mark \d+|the right back corner); /);
      const place = (words: string, side: Side): Point =>
        words.startsWith("mark ") ? markNumbered(words.slice(5)) : (piece.returnLines.get(side)?.back ?? cornerOn(side, "back"));
      piece.scribed = { left: place(left, "left"), right: place(right, "right") };
      return;
    }
    if (act === "MARK NOTCH") {
      const end = sideIn(hookOn);
      const so = piece.notch.get(end) ?? { along: 0, up: 0 };
      if (note !== "on the face and on the back") throw new Error(note);
      if (/^hook the (left|right) end, along the bottom$/.test(hookOn)) piece.notch.set(end, { ...so, along: figure(tape) });
      else if (/^hook the bottom, up the (left|right) end$/.test(hookOn)) piece.notch.set(end, { ...so, up: figure(tape) });
      else throw new Error(hookOn);
      return;
    }
    if (act === "SAW NOTCH") {
      matched(note, /^off the lower (left|right) corner, parallel to the end and to the bottom; notch right through$/);
      if (piece.notch.get(sideIn(note)) === undefined) throw new Error("no notch is marked there");
      return;
    }
    if (act === "MARK BEVEL") {
      const side = sideIn(matched(hookOn, /^hook the (left|right) end, along the top of the back$/)[0]);
      piece.squareStretch.set(side, figure(tape));
      return;
    }
    if (act === "BEVEL TOP") {
      const [, degrees] = matched(row.tilt, /^([\d.]+)°, off the back of the top edge, not off the face$/);
      const [, by = ""] = matched(row.offset, /^back in by (.*)$/);
      piece.bevel = { degrees: Number(degrees), relief: figure(by) };
      return;
    }
    throw new Error(`nobody knows how to ${act}`);
  };

  rows.forEach((row, place) => {
    if (row.number !== place + 1) throw new Error("the acts are not numbered in their order");
    follow(row);
  });
  return piece;
};
