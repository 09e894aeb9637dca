import { itemKey } from "../bid/item-key";
import { Exact, exact } from "../length/exact";
import { type Length, lengthIn, lengthOf, type Unit } from "../length/length";
import { isOpen } from "../layout/stair-facts";
import type { Stair } from "../layout/resolved-stair";
import { type Problem, problem } from "../problem";
import { nearestLabel } from "../code/nearest-label";
import { words } from "../words";
import { TAKEOFF_ITEMS, type TakeoffItem } from "./items";

export interface Allowance {
  readonly item: string | number;
  /** A share: 0.1 is ten percent more. */
  readonly allowance: number;
}

export interface TakeoffLine {
  readonly item: string;
  readonly quantity?: Exact;
  readonly unit: string;
  readonly howItWasCounted: string;
  readonly note?: string;
  readonly bad?: Problem<"no-width">;
}

export type TakeoffProblem = "no-total-rise" | "no-run" | "no-width" | "allowance-for-nothing" | "allowance-over-one" | "two-allowances";

const SCREWS_A_TREAD = 4;
const NAILS_A_RISER = 6;
/** Screws from behind the riser: common practice, no source. */
const SCREW_LENGTH = lengthOf(2, "in");
/** Less than this in the tread holds little: common practice, no source. */
const LEAST_PENETRATION = lengthOf(1, "in");
/**
 * Pilot holes for a number 8, 0.164 in at the shank: shank size through the first piece (US Army EN5155, Pilot and Starter Holes); in a
 * hardwood tread 90 % of the root (from memory), the root about two thirds of the shank (Wood Handbook, FPL-GTR-190, chapter 8).
 */
const SHANK = lengthOf(0.164, "in");
const LEAD_HOLE = SHANK.times(2).div(3).times("0.9");
const SHEET_AREA = 32;
const SQUARE_INCHES_PER_SQUARE_FOOT = 144;
const INCHES_PER_FOOT = 12;

const pilotHoles = (unit: Unit): string => {
  const [shank, lead] = [SHANK, LEAD_HOLE].map((length) => `${lengthIn(length, unit).toSignificantDigits(3).toString()} ${unit}`);
  return `pilot holes for a no. 8: ${shank ?? ""} through the riser, ${lead ?? ""} in a hardwood tread; test in scrap`;
};

interface Counted {
  readonly quantity: Exact;
  readonly how: string;
}

const counted = (quantity: Exact | number, how: string): Counted => ({ quantity: new Exact(quantity), how: `${how} = ${new Exact(quantity).toDecimalPlaces(2).toString()}` });

const screwWords = (riserThickness: Length, unit: Unit): string => {
  const left = SCREW_LENGTH.minus(riserThickness);
  const size = (length: Length): string => `${lengthIn(length, unit).toDecimalPlaces(2).toString()} ${unit}`;
  return left.gte(LEAST_PENETRATION)
    ? `; ${size(SCREW_LENGTH)} screws leave ${size(left)} in the tread`
    : `; ${size(SCREW_LENGTH)} screws leave only ${size(left)} in the tread: longer ones`;
};

const counts = (stair: Stair & { readonly treads: number; readonly risers: number; readonly run: Length; readonly unitRise: Length }, unit: Unit): Readonly<Partial<Record<TakeoffItem, Counted | Problem<"no-width">>>> => {
  const { treads, risers, run, unitRise, width, nosing } = stair;
  const open = (["left", "right"] as const).filter((side) => isOpen(side, stair.openEnd)).length;
  const closed = 2 - open;
  const inches = (length: Length): Exact => lengthIn(length, "in");
  const text = (length: Length): string => inches(length).toDecimalPlaces(3).toString();
  const treadItem = (["treadWithoutReturn", "treadWithOneReturn", "treadWithTwoReturns"] as const)[open] ?? "treadWithoutReturn";
  const perWidth = (count: (width: Length) => Counted): Counted | Problem<"no-width"> => (width === undefined ? problem("no-width") : count(width));
  const depth = run.plus(nosing);
  const area = (across: Length): Exact =>
    inches(depth).times(inches(across)).times(treads).plus(inches(unitRise).times(inches(across)).times(risers)).div(SQUARE_INCHES_PER_SQUARE_FOOT);
  const isPast = stair.runPast.gt(0) && open > 0;
  return {
    [treadItem]: counted(treads, `${treads} treads`),
    landingNosing: stair.landingNosing && stair.topTread === "floor" ? counted(1, "1 at the upper floor") : counted(0, "none"),
    riser: counted(risers, `${risers} risers`),
    openSkirt: counted(open, `${open} open`),
    closedSkirt: counted(closed, `${closed} closed`),
    mitredReturn: counted(treads * open, `${treads} treads x ${open}`),
    runPastRiser: counted(isPast ? risers * open : 0, `${risers} risers x ${open}`),
    // The first riser stands on the floor: no tread runs back under it.
    notch: counted(isPast ? (risers - 1) * open : 0, `(${risers} risers - 1) x ${open}`),
    scribedEnd: counted(treads * closed, `${treads} treads x ${closed}`),
    cove: perWidth((across) => counted(inches(across).plus(inches(depth).times(open)).times(treads).div(INCHES_PER_FOOT), `${treads} treads x (${text(across)} + ${open} x ${text(depth)}) / 12`)),
    screws: { ...counted(treads * SCREWS_A_TREAD, `${treads} treads x ${SCREWS_A_TREAD}`), how: `${treads} treads x ${SCREWS_A_TREAD} = ${treads * SCREWS_A_TREAD}${screwWords(stair.riserThickness, unit)}` },
    nails: counted(risers * NAILS_A_RISER, `${risers} risers x ${NAILS_A_RISER}`),
    adhesiveBead: perWidth((across) => counted(inches(run).times(stair.stringers).plus(inches(across)).times(treads).div(INCHES_PER_FOOT), `${treads} treads x (${stair.stringers} x ${text(run)} + ${text(across)}) / 12`)),
    finishArea: perWidth((across) => counted(area(across), `(${treads} x ${text(depth)} + ${risers} x ${text(unitRise)}) x ${text(across)} / 144`)),
    protectionSheets: perWidth((across) => {
      const sheets = area(across).div(SHEET_AREA).ceil();
      return { quantity: sheets, how: `${area(across).toDecimalPlaces(2).toString()} / ${SHEET_AREA}, rounded up = ${sheets.toString()}` };
    }),
  };
};

const PERCENT = 100;

/** Allowances that cannot be meant: for an item that is not counted, of more than the item itself, or two that differ. */
const wrongAllowance = (allowances: readonly Allowance[], known: readonly string[]): Problem<TakeoffProblem> | undefined => {
  for (const { item, allowance } of allowances) {
    const name = String(item);
    const other = allowances.find((one) => itemKey(one.item) === itemKey(name) && one.allowance !== allowance);
    if (!known.some((one) => itemKey(one) === itemKey(name))) return problem("allowance-for-nothing", { item: name, nearest: nearestLabel(name, known) });
    if (allowance > 1) return problem("allowance-over-one", { item: name, allowance, percent: allowance * PERCENT, share: allowance / PERCENT });
    if (other !== undefined) return problem("two-allowances", { item: name, first: allowance, second: other.allowance });
  }
  return undefined;
};

/** What a stair takes, counted from its labels, each line with the count it came from; allowances add their share and counted pieces round up. */
export const takeoff = (stair: Stair, allowances: readonly Allowance[], unit: Unit): readonly TakeoffLine[] | Problem<TakeoffProblem> => {
  const { treads, risers, run, unitRise } = stair;
  if (treads === undefined || risers === undefined || unitRise === undefined) return problem("no-total-rise");
  if (run === undefined) return problem("no-run");
  const found = counts({ ...stair, treads, risers, run, unitRise }, unit);
  const known = Object.keys(TAKEOFF_ITEMS).map(words);
  const wrong = wrongAllowance(allowances, known);
  if (wrong !== undefined) return wrong;
  return (Object.keys(TAKEOFF_ITEMS) as TakeoffItem[]).flatMap((key): TakeoffLine[] => {
    const line = found[key];
    if (line === undefined) return [];
    const item = words(key);
    const note = key === "screws" ? { note: pilotHoles(unit) } : {};
    const { unit: counting } = TAKEOFF_ITEMS[key];
    if ("problem" in line) return [{ item, unit: counting, howItWasCounted: "", bad: line }];
    if (line.quantity.isZero()) return [];
    const allowance = allowances.find((one) => itemKey(one.item) === itemKey(item))?.allowance ?? 0;
    if (allowance === 0) return [{ item, quantity: line.quantity, unit: counting, howItWasCounted: line.how, ...note }];
    const more = line.quantity.times(exact(allowance).plus(1));
    const quantity = counting === "each" ? more.ceil() : more;
    return [{ item, quantity, unit: counting, howItWasCounted: `${line.how}, and ${exact(allowance).times(PERCENT).toString()} % = ${quantity.toDecimalPlaces(2).toString()}`, ...note }];
  });
};
