import { downsized, handPlan } from "./hand-plan";
import { type LinearPlan } from "./linear-plan";
import { type Cut, piecesWanted, type Shelf } from "./shelf";

/** Floating-point dust below a whole number of sticks. */
const DUST = 1e-6;

/**
 * A plan from the linear one: every pattern as often as it is used in whole sticks, less the share of the pieces that free sticks can
 * take, and the pieces still wanted then by hand methods. Nothing where those find no room.
 */
export const patternPlan = (shelf: Shelf, linear: LinearPlan): readonly Cut[] | undefined => {
  const left = shelf.kinds.map((kind) => kind.wanted);
  const available = shelf.sticks.map((stick) => stick.available);
  const total = shelf.kinds.reduce((sum, kind) => sum + kind.width * kind.wanted, 0);
  const free = shelf.sticks.reduce((sum, stick) => (stick.price === 0 ? sum + stick.holds * stick.available : sum), 0);
  const share = Math.max(0, 1 - free / total);
  const cuts: Cut[] = [];
  for (const { stick, counts, times } of [...linear.patterns].sort((a, b) => b.times - a.times)) {
    let whole = Math.min(available[stick]!, Math.floor(times * share + DUST));
    for (const [kind, count] of counts.entries()) if (count > 0) whole = Math.min(whole, Math.floor(left[kind]! / count));
    const kinds = counts.flatMap((count, kind) => Array.from({ length: count }, () => kind));
    for (const [kind, count] of counts.entries()) left[kind]! -= count * whole;
    available[stick]! -= whole;
    for (let time = 0; time < whole; time += 1) cuts.push({ stick, kinds });
  }
  const places = left.flatMap((count, kind) => (count > 0 ? [kind] : []));
  if (places.length === 0) return downsized(shelf, cuts);
  const narrowest = Math.min(...places.map((kind) => shelf.kinds[kind]!.width));
  const sticks = shelf.sticks.flatMap((stick, index) => (available[index]! > 0 && stick.holds >= narrowest ? [index] : []));
  const rest: Shelf = {
    kinds: places.map((kind) => ({ width: shelf.kinds[kind]!.width, wanted: left[kind]! })),
    sticks: sticks.map((index) => ({ ...shelf.sticks[index]!, available: available[index]! })),
  };
  if (sticks.length === 0) return undefined;
  const capped = { ...rest, sticks: rest.sticks.map((stick) => ({ ...stick, available: Math.min(stick.available, piecesWanted(rest)) })) };
  const byHand = handPlan(capped);
  if (byHand === undefined) return undefined;
  const back = byHand.map((cut) => ({ stick: sticks[cut.stick]!, kinds: cut.kinds.map((kind) => places[kind]!) }));
  return downsized(shelf, [...cuts, ...back]);
};
