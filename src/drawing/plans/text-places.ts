import { isOver, type Outline, type PlacedText, type Spot, TEXT_SIZE, textOutline, textWidth } from "./paper";

/** A text looking for its place: the spots it would like, best first, and the spot it speaks of. */
export interface Wish {
  readonly text: string;
  readonly likes: readonly PlacedText[];
  readonly of: Spot;
}

export interface Settled {
  readonly text: PlacedText;
  /** From what it speaks of to the text, where it stands away from it. */
  readonly leader?: readonly [Spot, Spot];
}

interface Taken {
  readonly outline: Outline;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const taken = (outline: Outline): Taken => {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return { outline, left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

const doMeet = (mine: Taken, one: Taken): boolean =>
  one.right >= mine.left && one.left <= mine.right && one.bottom >= mine.top && one.top <= mine.bottom &&
  isOver(one.outline, mine.outline);

const isFree = (mine: Taken, there: readonly Taken[]): boolean => !there.some((one) => doMeet(mine, one));

const STEP = 2.5;
const FARTHEST = 400;
const WAYS = 16;
/** Half the height of a letter: a leader meets a text beside its middle. */
const HALF_LETTER = TEXT_SIZE * 0.35;
const LEADER_GAP = 0.8;

/** So many free places are compared, the nearest ones. */
const MOST_LOOKED_AT = 24;
/** A leader that crosses a line is as bad as one longer by this. */
const CROSSING = 5;

/** How hard a leader is to follow: by its length and by the lines it crosses. */
const costOf = (leader: Taken, drawn: readonly Taken[]): number =>
  Math.hypot(leader.right - leader.left, leader.bottom - leader.top) + CROSSING * drawn.filter((one) => doMeet(leader, one)).length;

/** Spots round about, ever farther, each with its leader. */
function* roundAbout({ text, of: [x, y] }: Wish): Generator<Settled & { readonly leader: readonly [Spot, Spot] }> {
  for (let away = 2 * STEP; away < FARTHEST; away += STEP) {
    for (let way = 0; way < WAYS; way += 1) {
      const angle = ((way + 0.5) * 2 * Math.PI) / WAYS;
      const end: Spot = [x + away * Math.cos(angle), y + away * Math.sin(angle)];
      const isLeft = Math.cos(angle) < 0;
      const at: Spot = [end[0] + (isLeft ? -LEADER_GAP : LEADER_GAP), end[1] + HALF_LETTER];
      yield { text: { at, text, anchor: isLeft ? "end" : "start", turned: 0 }, leader: [[x, y], end] };
    }
  }
}

/**
 * Gives each text a place where it stands over no line and no other text; it speaks from farther off where there is no room by it, but from
 * no area that is full.
 */
export const textPlaces = (wishes: readonly Wish[], lines: readonly Outline[], full: readonly Outline[] = []): readonly Settled[] => {
  const drawn = lines.map(taken);
  const closed = full.map(taken);
  const texts: Taken[] = [];
  const places = new Map<Wish, Settled>();
  const settle = (wish: Wish, found: Settled): void => {
    places.set(wish, found);
    texts.push(taken(textOutline(found.text)));
    if (found.leader !== undefined) drawn.push(taken(found.leader));
  };
  const fromAfar = (wish: Wish): Settled => {
    let near: PlacedText | undefined;
    let best: { readonly found: Settled; readonly cost: number } | undefined;
    let looked = 0;
    for (const found of roundAbout(wish)) {
      const outline = taken(textOutline(found.text));
      if (!isFree(outline, texts) || !isFree(outline, drawn) || !isFree(outline, closed)) continue;
      near ??= found.text;
      const leader = taken(found.leader);
      if (!isFree(leader, texts)) continue;
      looked += 1;
      const cost = costOf(leader, drawn);
      if (best === undefined || cost < best.cost) best = { found, cost };
      if (looked === MOST_LOOKED_AT) break;
    }
    if (best !== undefined) return best.found;
    // Where another text stands on the very spot, no leader leads there: the nearest place has to do.
    if (near !== undefined) return { text: near };
    throw new Error(`no room for "${wish.text}", ${textWidth(wish.text)} wide`);
  };
  for (const wish of wishes) {
    const liked = wish.likes.find((text) => {
      const outline = taken(textOutline(text));
      return isFree(outline, texts) && isFree(outline, drawn);
    });
    if (liked !== undefined) settle(wish, { text: liked });
  }
  // After those that have room where they belong, so that no leader takes it from them.
  for (const wish of wishes) if (!places.has(wish)) settle(wish, fromAfar(wish));
  return wishes.flatMap((wish) => places.get(wish) ?? []);
};
