import { type Area, type CutLine, isArea } from "./cut-board";

export type FirstCut = "rip" | "crosscut";

/** A strip, or a section crosscut first, with its pieces. */
export interface CutStrip {
  readonly pieces: readonly Area[];
  /** What the plan says is left at its end; undefined where it is what the last kerf leaves. */
  readonly leftOver?: number;
}

/** A clear stretch of a board, or a sheet within its trims, and how it is cut. */
export interface CutStretch {
  readonly room: Area;
  readonly first: FirstCut;
  readonly strips: readonly CutStrip[];
}

export interface StretchParts {
  readonly rests: readonly Area[];
  readonly firstCuts: readonly CutLine[];
}

/** The same with along and across exchanged: a crosscut strip is a ripped one turned. */
const turned = ({ along, across, length, width }: Area): Area => ({ along: across, across: along, length: width, width: length });
const turnedLine = ({ from, to }: CutLine): CutLine => ({ from: [from[1], from[0]], to: [to[1], to[0]] });

const HAIR = 1e-6;
const topOf = ({ across, width }: Area): number => across + width;
const endOf = ({ along, length }: Area): number => along + length;

/** What is left in a ripped strip: above its narrower pieces, and at its end. */
const restsOfStrip = ({ pieces, leftOver }: CutStrip, room: Area, kerf: number): Area[] => {
  const [low, top] = [Math.min(...pieces.map(({ across }) => across)), Math.max(...pieces.map(topOf))];
  const last = Math.max(...pieces.map(endOf));
  const left = leftOver ?? Math.max(0, endOf(room) - last - kerf);
  return [
    ...pieces.map((piece): Area => ({ ...piece, across: topOf(piece) + kerf, width: top - topOf(piece) - kerf })),
    { along: endOf(room) - left, across: low, length: left, width: top - low },
  ];
};

const rippedParts = ({ room, strips }: CutStretch, kerf: number): StretchParts => {
  const rests: Area[] = [];
  const firstCuts: CutLine[] = [];
  const cutAt = (across: number): void => void firstCuts.push({ from: [room.along, across], to: [endOf(room), across] });
  let free = room.across;
  const sorted = strips.map((strip) => ({
    strip, low: Math.min(...strip.pieces.map(({ across }) => across)), top: Math.max(...strip.pieces.map(topOf)),
  })).sort((one, other) => one.low - other.low);
  for (const { strip, low, top } of sorted) {
    // What lies between two strips and is of neither.
    if (low > free + HAIR) {
      rests.push({ ...room, across: free, width: low - kerf - free });
      cutAt(low - kerf / 2);
    }
    rests.push(...restsOfStrip(strip, room, kerf));
    free = top + kerf;
    if (topOf(room) > top + HAIR) cutAt(top + Math.min(kerf, topOf(room) - top) / 2);
  }
  rests.push({ ...room, across: free, width: topOf(room) - free });
  return { rests: rests.filter((one) => isArea(one)), firstCuts };
};

/** What a stretch leaves, and where it is cut first: from the places of its pieces. */
export const stretchParts = (stretch: CutStretch, kerf: number): StretchParts => {
  if (stretch.strips.length === 0) return { rests: [stretch.room], firstCuts: [] };
  if (stretch.first === "rip") return rippedParts(stretch, kerf);
  const { rests, firstCuts } = rippedParts({
    ...stretch, room: turned(stretch.room), strips: stretch.strips.map((strip) => ({ ...strip, pieces: strip.pieces.map(turned) })),
  }, kerf);
  return { rests: rests.map(turned), firstCuts: firstCuts.map(turnedLine) };
};
