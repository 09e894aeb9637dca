import {
  type Act,
  type ActsOfAStep,
  type CheckedFrom,
  degreesOf,
  type Edge,
  type Hook,
  type Mark,
  OTHER_SIDE,
  otherEnd,
  type PieceKind,
  type Side,
  type Swing,
} from "../solver/fit/acts";
import type { Unit } from "../solver/length/length";
import { isUnderTheRule, markedLength, ruledLength } from "../solver/length/marked-length";
import type { ResultColumns } from "./declare";

/** The acts of a ticket as rows: every figure a person works to, in words that need no sign and no key. */

/** A row but for its number and its step. */
interface Words {
  readonly act: string;
  readonly hookOn?: string;
  readonly distance?: number;
  readonly tape?: string;
  readonly swing?: string;
  readonly offset?: string;
  readonly tilt?: string;
  readonly note?: string;
}

/** What a tape is burnt by: as much as is easily taken off again in the head. */
const BURNT: Readonly<Record<Unit, { readonly says: string; readonly mark: number }>> = {
  in: { says: "an inch", mark: 1 },
  mm: { says: "100", mark: 100 },
};

const SAYS_OF_A_WRONG_MARK: Readonly<Record<Unit, string>> = { in: "1/32", mm: "1" };

const LARGE: Readonly<Record<Side, string>> = { left: "LEFT", right: "RIGHT" };
const SQUARE_SET = 90;
const SHOWS = "square on the end: light shows at the";

const sentence = (...parts: readonly (string | undefined)[]): string => parts.filter((part) => part !== undefined && part !== "").join("; ");

/** Words of one step's acts. */
const wordsIn = (acts: readonly Act[], unit: Unit) => {
  const tape = (value: number): string => markedLength(value, unit);
  const burnt = BURNT[unit];
  const numberOf = ({ end, place }: Mark): number =>
    acts.findIndex((act) => act.kind === "mark" && act.mark.end === end && act.mark.place === place) + 1;
  const markNumber = (mark: Mark): string => `mark ${numberOf(mark)}`;

  /** Which way the near end of the blade's path goes, and which corner lies inside a square line through the other. */
  const swung = (end: Side, { angle, over, far, near }: Swing): Pick<Words, "swing" | "offset"> => {
    const inside = Math.abs(over * Math.tan((angle * Math.PI) / (2 * SQUARE_SET)));
    if (isUnderTheRule(inside, unit)) return { swing: "square" };
    return {
      swing: `${degreesOf(angle)}°, near end to the ${angle > 0 ? end : otherEnd(end)}`,
      offset: `${angle > 0 ? far : near} in by ${ruledLength(inside, unit)}`,
    };
  };

  const tilted = (end: Side, tilt: number, piece: PieceKind): string => {
    const degrees = degreesOf(tilt);
    if (Number(degrees) === 0) return "upright";
    const [way, side, light] =
      tilt > 0
        ? [`${end}, away from the piece`, "face", "bottom"]
        : [`${otherEnd(end)}, over the piece`, OTHER_SIDE[piece], "top"];
    return `${degrees}°, top of the blade to the ${way}: ${side} longer; ${SHOWS} ${light}`;
  };

  const corner = (end: Side, edge: Edge): string => (edge === "gauged line" ? `${end} end` : `${end} ${edge} corner`);
  const lies = (edge: Edge): string => (edge === "gauged line" ? "on the gauged line" : `along the ${edge}`);

  const hooked = ({ end, along, isSquared }: Hook, isBurnt: boolean): string =>
    `${isBurnt ? `burn ${burnt.says} at` : "hook"} the ${isSquared ? `squared ${end} end` : corner(end, along)}, ${lies(along)}`;

  const onTape = (distance: number, isBurnt: boolean, at: string): string =>
    isBurnt ? `${tape(distance + burnt.mark)}, the ${burnt.mark} at the ${at}` : tape(distance);

  const checked = (from: CheckedFrom, to: Mark, isBurnt: boolean): string => {
    if ("place" in from) return `from ${markNumber(from)} to ${markNumber(to)}`;
    const at = corner(from.end, from.corner);
    // A tape that begins at the mark does not repeat what was forgotten at the corner.
    return isBurnt ? `burn ${burnt.says} at ${markNumber(to)}, read at the ${at}` : `hook the ${at}, to ${markNumber(to)}`;
  };

  const laid: Readonly<Record<PieceKind, string>> = {
    tread: "face up, nose toward you, back edge at the saw's fence",
    riser: "face up, bottom toward you, top edge at the saw's fence",
  };

  const mitreSet = (fromEdge: number, edge: string, way: Side): string =>
    `${degreesOf(SQUARE_SET - fromEdge)}° on the saw's scale, near end to the ${way} (${degreesOf(fromEdge)}° from the ${edge})`;

  const wordsOf = (act: Act): Words => {
    switch (act.kind) {
      case "read again":
        return { act: "READ AGAIN", note: sentence("no end is sawn from these readings", act.note) };
      case "rip":
        return {
          act: "RIP",
          distance: act.distance,
          tape: tape(act.distance),
          note: sentence(
            act.piece === "tread" ? "deep, nose edge to the fence" : "high, bottom edge to the fence",
            `blank at least ${tape(act.blank)} long`,
            act.note,
          ),
        };
      case "square the blank":
        return {
          act: `SQUARE ${LARGE[act.end]} END`, swing: "square", tilt: "upright", note: "of the blank: every mark is hooked on it",
        };
      case "gauge":
        return {
          act: "GAUGE", hookOn: "the nose", distance: act.distance, tape: tape(act.distance),
          note: "a line on the face behind the nose, parallel to it, from end to end",
        };
      case "mark":
        return {
          act: `MARK ${LARGE[act.mark.end]} ${act.mark.place.toUpperCase()}`,
          hookOn: hooked(act.hook, act.isBurnt),
          distance: act.distance,
          tape: onTape(act.distance, act.isBurnt, act.hook.along === "gauged line" ? "end" : "corner"),
          note: "on the face",
        };
      case "check":
        return {
          act: "CHECK",
          hookOn: checked(act.from, act.to, act.isBurnt),
          distance: act.distance,
          tape: onTape(act.distance, act.isBurnt, "mark"),
          note: `off by more than ${SAYS_OF_A_WRONG_MARK[unit]}: a mark is wrong, saw nothing`,
        };
      case "saw end":
        return {
          act: `SAW ${LARGE[act.end]} END`,
          ...swung(act.end, act.swing),
          tilt: tilted(act.end, act.tilt, act.piece),
          note: sentence(
            laid[act.piece],
            act.on === undefined ? undefined : `from ${markNumber(act.on[0])} to ${markNumber(act.on[1])}`,
            "leave the line",
          ),
        };
      case "saw to the heel":
        return {
          act: `SAW ${LARGE[act.end]} END`,
          ...swung(act.end, act.swing),
          tilt: "upright",
          note: sentence(
            laid.tread,
            `from ${markNumber({ end: act.end, place: "back" })} to ${markNumber({ end: act.end, place: "heel" })}, stop there`,
            "leave the line",
          ),
        };
      case "mitre":
        return {
          act: `MITRE ${LARGE[act.end]} END`,
          swing: mitreSet(act.fromNose, "nose", act.end),
          offset: `heel in by ${ruledLength(act.toePastHeel, unit)}`,
          tilt: "upright",
          note: sentence(
            `from ${markNumber({ end: act.end, place: "toe" })} to ${markNumber({ end: act.end, place: "heel" })}`,
            "leave the line",
          ),
        };
      case "mitre the return":
        return {
          act: `MITRE ${LARGE[act.end]} RETURN`,
          distance: act.width,
          tape: tape(act.width),
          swing: mitreSet(act.fromNose, "outer edge", otherEnd(act.end)),
          offset: `inner edge in by ${ruledLength(act.toePastHeel, unit)}`,
          tilt: "upright",
          note: `ripped to this width; face up, outer edge toward you: the mitre is its ${otherEnd(act.end)} end, outer edge longer`,
        };
      case "end the return":
        return {
          act: `SAW ${LARGE[act.end]} RETURN`,
          hookOn: "hook the long point of its mitre, along the outer edge",
          distance: act.distance,
          tape: tape(act.distance),
          ...(act.innerLonger === 0
            ? { swing: "square" }
            : {
                swing: `${degreesOf(act.angle)}°, near end to the ${act.innerLonger > 0 ? otherEnd(act.end) : act.end}`,
                offset: `${act.innerLonger > 0 ? "outer" : "inner"} edge in by ${ruledLength(Math.abs(act.innerLonger), unit)}`,
              }),
          tilt: "upright",
          note: sentence(
            "face up, outer edge toward you",
            act.innerLonger === 0 ? "long point to square end" : `${act.innerLonger > 0 ? "inner" : "outer"} edge longer at this end`,
          ),
        };
      case "mark the notch":
        return {
          act: "MARK NOTCH",
          hookOn: act.way === "along" ? `hook the ${act.end} end, along the bottom` : `hook the bottom, up the ${act.end} end`,
          distance: act.distance,
          tape: tape(act.distance),
          note: "on the face and on the back",
        };
      case "saw the notch":
        return {
          act: "SAW NOTCH",
          tilt: "upright",
          note: `off the lower ${act.end} corner, parallel to the end and to the bottom; notch right through`,
        };
      case "end the bevel":
        return {
          act: "MARK BEVEL",
          hookOn: `hook the ${act.end} end, along the top of the back`,
          distance: act.distance,
          tape: tape(act.distance),
          note: `the bevel stops here: leave the last ${tape(act.distance)} unbevelled`,
        };
      case "bevel":
        return {
          act: "BEVEL TOP",
          offset: `back in by ${ruledLength(act.relief, unit)}`,
          tilt: `${degreesOf(act.degrees)}°, off the back of the top edge, not off the face`,
          note: acts.some(({ kind }) => kind === "end the bevel") ? "up to the bevel mark" : "from end to end",
        };
    }
  };
  return wordsOf;
};

/** Rows of one step, numbered in the order of the acts; a step without an answer has one row, with its reason. */
export const actRows = <Bad>({ step, acts, bad }: ActsOfAStep<Bad>, unit: Unit): readonly object[] => {
  if (bad !== undefined) return [{ step, act: "READ AGAIN", bad }];
  const wordsOf = wordsIn(acts, unit);
  return acts.map((act, place) => ({ step, number: place + 1, ...wordsOf(act) }));
};

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
    says: "Which way the near end of the blade's path, where the handle is, goes from square. A mitre is told as the saw's scale shows it.",
  },
  offset: {
    kind: "text",
    says: "The same swing as a distance, to the nearest 1/64 in: how far the corner named lies inside a square line through the other one.",
  },
  tilt: { kind: "text", says: "Which way the top of the blade leans, what that leaves longer, and what a square on the sawn end shows." },
  unit: { kind: "unit", says: "Unit of every length of the row." },
  note: { kind: "text", says: "How the piece lies, what the cut follows, what to look at again, or why the row has no answer." },
} as const satisfies ResultColumns;
