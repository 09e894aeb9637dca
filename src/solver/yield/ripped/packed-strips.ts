import type { View } from "./view";

/** Steps of a search for one stretch beyond which it is given up. */
const MOST_STEPS = 20_000;

/**
 * Strips that hold all these pieces within the room, each led by the widest piece left; "none" where there are none, undefined where the
 * search was given up.
 */
export const packedStrips = (
  view: Pick<View, "along" | "across">, held: readonly number[], roomAlong: number, roomAcross: number,
): number[][] | "none" | undefined => {
  const { along, across } = view;
  const sorted = [...held].sort((one, other) => across[other]! - across[one]! || along[other]! - along[one]!);
  const used = sorted.map(() => false);
  const strips: number[][] = [];
  let steps = 0;
  const open = (left: number): boolean => {
    const leader = used.indexOf(false);
    if (leader < 0) return true;
    const kind = sorted[leader]!;
    if (across[kind]! > left || along[kind]! > roomAlong) return false;
    used[leader] = true;
    strips.push([kind]);
    if (fill(leader + 1, roomAlong - along[kind]!, left - across[kind]!)) return true;
    strips.pop();
    used[leader] = false;
    return false;
  };
  const fill = (from: number, room: number, left: number): boolean => {
    steps += 1;
    if (steps > MOST_STEPS) return false;
    let last = -1;
    for (let at = from; at < sorted.length; at += 1) {
      const kind = sorted[at]!;
      if (used[at]! || kind === last || along[kind]! > room) continue;
      last = kind;
      used[at] = true;
      strips[strips.length - 1]!.push(kind);
      if (fill(at + 1, room - along[kind]!, left)) return true;
      strips[strips.length - 1]!.pop();
      used[at] = false;
    }
    return open(left);
  };
  if (open(roomAcross)) return strips;
  return steps > MOST_STEPS ? undefined : "none";
};
