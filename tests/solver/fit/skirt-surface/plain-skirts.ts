import { augmented } from "./plain-algebra";

/** Treads between two skirts, written out from the description alone: every length is the right skirt at a corner less the left one. */
export interface At {
  readonly along: number;
  readonly high: number;
}

export interface Seen {
  readonly left: At;
  readonly right: At;
  readonly turn: number;
  readonly tread: number;
  readonly slant: number;
}

export interface Skirt {
  readonly waves: number;
  readonly reach: number;
  readonly roughness: number;
  readonly squareness: number;
}

/** Back, front, diagonal and second diagonal of a tread 10 deep; `longest` is the longer of back and front. */
export const tread = (number: number, back: At, front: At, longest: number): readonly Seen[] => {
  const slant = Math.hypot(longest, 10) / longest;
  return [
    { left: back, right: back, turn: 0, tread: number, slant: 1 },
    { left: front, right: front, turn: 0, tread: number, slant: 1 },
    { left: back, right: front, turn: 10, tread: number, slant },
    { left: front, right: back, turn: -10, tread: number, slant },
  ];
};

export const plainSkirts = ({ waves, reach, roughness, squareness }: Skirt) => {
  const wave = (one: At, other: At): number =>
    waves ** 2 * Math.exp(-((one.along - other.along) ** 2 + (one.high - other.high) ** 2) / (2 * reach ** 2)) +
    (one.along === other.along && one.high === other.high ? roughness ** 2 : 0);
  const shared = (one: Seen, other: Seen): number =>
    wave(one.left, other.left) + wave(one.right, other.right) + (one.tread === other.tread ? one.turn * other.turn * squareness ** 2 : 0);
  const design = ({ left, right }: Seen): readonly number[] => [1, right.along, right.high, -left.along];
  return { shared, design };
};

export const plainModel = (skirt: Skirt, seen: readonly Seen[], tape: number) => {
  const { shared, design } = plainSkirts(skirt);
  const covariance = seen.map((one) => seen.map((other) => shared(one, other) + (one === other ? tape * one.slant ** 2 : 0)));
  return { covariance, design: seen.map(design), plain: augmented(covariance, seen.map(design)) };
};

const DEGREE = Math.PI / 180;
/** Straight, usual and wavy, as the method describes them. */
const KINDS: readonly Skirt[] = [
  { waves: 1 / 32, reach: 40, roughness: 0.01, squareness: 0.1 * DEGREE },
  { waves: 1 / 16, reach: 30, roughness: 0.02, squareness: 0.2 * DEGREE },
  { waves: 1 / 8, reach: 25, roughness: 0.04, squareness: 0.3 * DEGREE },
];

/**
 * Give or take of the step over `steps` square ones of 10 by 30, read exactly: nothing is off, so each kind of skirt is as likely as its
 * own spread makes it. Rises 7 3/4; a 1/16 tape rounds by the root of 1/12 of a division, and a careful hand is off by 0.012.
 */
export const plainGiveOrTake = (steps: number): number => {
  const front = (step: number): At => ({ along: 10 * (step - 1), high: 7.75 * step });
  const back = (step: number): At => ({ along: 10 * step, high: 7.75 * step });
  const seen = Array.from({ length: steps }, (_, at) => tread(at + 1, back(at + 1), front(at + 1), 30)).flat();
  const tape = 1 / (12 * 16 ** 2) + 0.012 ** 2;
  const [nextBack, nextFront] = tread(steps + 1, back(steps + 1), front(steps + 1), 30) as [Seen, Seen];
  const found = KINDS.map((kind) => {
    const { shared, design } = plainSkirts(kind);
    const { plain } = plainModel(kind, seen, tape);
    const variance = (one: Seen): number =>
      plain.guess(seen.map(() => 30), seen.map((other) => shared(one, other)), shared(one, one), design(one)).variance;
    return { likely: Math.exp(-plain.logSize / 2), back: variance(nextBack), front: variance(nextFront) };
  });
  const all = found.reduce((sum, { likely }) => sum + likely, 0);
  const mean = (side: "back" | "front"): number => found.reduce((sum, one) => sum + (one.likely / all) * one[side], 0);
  return 1.96 * Math.sqrt(Math.max(mean("back"), mean("front")) + tape);
};
