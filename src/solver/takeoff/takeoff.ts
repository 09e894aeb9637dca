import { goodsKey } from "../goods/goods-key";
import { Exact, exact, wholeUp } from "../length/exact";
import { type Length, lengthIn, lengthOf, type Unit } from "../length/length";
import { isOpen } from "../layout/stair-facts";
import type { Stair } from "../layout/resolved-stair";
import { type Problem, problem } from "../problem";
import { nearestOrAll } from "../nearest-word";
import { sizeText } from "../code/size-text";
import { words } from "../words";
import { TAKEOFF_ITEMS, TAKEOFF_UNITS, type TakeoffItem } from "./items";

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

export type TakeoffProblem = "no-total-rise" | "no-run" | "no-width" | "allowance-for-nothing" | "two-allowances";

const SCREWS_A_TREAD = 4;
const NAILS_A_RISER = 6;
/**
 * Pilot holes for a number 8, 0.164 in at the shank: shank size through the first piece (US Army EN5155, Pilot and Starter Holes); in a
 * hardwood tread 90 % of the root (from memory), the root about two thirds of the shank (Wood Handbook, FPL-GTR-190, chapter 8).
 */
const SHANK = lengthOf(0.164, "in");
const LEAD_HOLE = SHANK.times(2).div(3).times("0.9");

interface Measures {
  readonly unit: Unit;
  /** Inches in a foot, millimetres in a metre. */
  readonly perLength: number;
  readonly decimals: number;
  /** Screws from behind the riser: common practice, no source. */
  readonly screw: Length;
  /** Less than this in the tread holds little: common practice, no source. */
  readonly leastPenetration: Length;
  /** What one sheet of protection covers, in the unit of area, and how it is sold: common practice, no source. */
  readonly sheet: string;
  readonly sheetArea: Exact;
}

/** Counted in the measures a stair in inches or one in millimetres is bought in. */
const MEASURES: Readonly<Record<Unit, Measures>> = {
  in: {
    unit: "in",
    perLength: 12,
    decimals: 3,
    screw: lengthOf(2, "in"),
    leastPenetration: lengthOf(1, "in"),
    sheet: "4 x 8 ft",
    sheetArea: new Exact(32),
  },
  mm: {
    unit: "mm",
    perLength: 1000,
    decimals: 2,
    screw: lengthOf(50, "mm"),
    leastPenetration: lengthOf(25, "mm"),
    sheet: "1220 x 2440 mm",
    sheetArea: new Exact("2.9768"),
  },
};

const SIGNIFICANT = 3;

const pilotHoles = ({ unit }: Measures): string => {
  const [shank, lead] = [SHANK, LEAD_HOLE].map((length) => `${lengthIn(length, unit).toSignificantDigits(SIGNIFICANT).toString()} ${unit}`);
  return `pilot holes for a no. 8: ${shank ?? ""} through the riser, ${lead ?? ""} in a hardwood tread; test in scrap`;
};

interface Counted {
  readonly quantity: Exact;
  readonly how: string;
}

const RESULT_DECIMALS = 2;

const result = (quantity: Exact, unit: string): string =>
  `${quantity.toDecimalPlaces(RESULT_DECIMALS).toString()}${unit === "each" ? "" : ` ${unit}`}`;

const counted = (quantity: Exact | number, how: string, unit = "each"): Counted => ({
  quantity: new Exact(quantity),
  how: `${how} = ${result(new Exact(quantity), unit)}`,
});

const screwWords = (riserThickness: Length, { unit, screw, leastPenetration }: Measures): string => {
  const left = screw.minus(riserThickness);
  const size = (length: Length): string => `${lengthIn(length, unit).toDecimalPlaces(RESULT_DECIMALS).toString()} ${unit}`;
  return left.gte(leastPenetration)
    ? `; ${size(screw)} screws leave ${size(left)} in the tread`
    : `; ${size(screw)} screws leave only ${size(left)} in the tread: use longer ones`;
};

type CountedStair = Stair & { readonly treads: number; readonly risers: number; readonly run: Length; readonly unitRise: Length };
type Counts = Readonly<Partial<Record<TakeoffItem, Counted | Problem<"no-width">>>>;

const openEnds = ({ openEnd }: CountedStair): number => (["left", "right"] as const).filter((side) => isOpen(side, openEnd)).length;

/** What is counted in lengths and areas across the stair, for which its width is needed. */
const countsAcross = (stair: CountedStair, measures: Measures): Counts => {
  const { treads, risers, run, unitRise, width, nosing } = stair;
  const { unit, perLength } = measures;
  const perArea = perLength ** 2;
  const { length: lengthUnit, area: areaUnit } = TAKEOFF_UNITS[unit];
  const open = openEnds(stair);
  const size = (length: Length): Exact => lengthIn(length, unit);
  const text = (length: Length): string => size(length).toDecimalPlaces(measures.decimals).toString();
  const perWidth = (count: (width: Length) => Counted): Counted | Problem<"no-width"> =>
    width === undefined ? problem("no-width") : count(width);
  const depth = run.plus(nosing);
  const area = (across: Length): Exact => size(depth).times(treads).plus(size(unitRise).times(risers)).times(size(across)).div(perArea);
  const coveOf = (across: Length): Exact => size(across).plus(size(depth).times(open)).times(treads).div(perLength);
  const beadOf = (across: Length): Exact => size(run).times(stair.stringers).plus(size(across)).times(treads).div(perLength);
  return {
    cove: perWidth((across) =>
      counted(coveOf(across), `${treads} treads x (${text(across)} + ${open} x ${text(depth)}) ${unit} / ${perLength}`, lengthUnit),
    ),
    adhesiveBead: perWidth((across) =>
      counted(
        beadOf(across),
        `${treads} treads x (${stair.stringers} x ${text(run)} + ${text(across)}) ${unit} / ${perLength}`,
        lengthUnit,
      ),
    ),
    finishArea: perWidth((across) =>
      counted(
        area(across),
        `(${treads} x ${text(depth)} + ${risers} x ${text(unitRise)}) x ${text(across)} sq ${unit} / ${perArea}`,
        areaUnit,
      ),
    ),
    protectionSheets: perWidth((across) => {
      const sheets = wholeUp(area(across).div(measures.sheetArea));
      return {
        quantity: sheets,
        how:
          `${result(area(across), areaUnit)} / ${measures.sheetArea.toString()} for a sheet of ${measures.sheet}, rounded up = ` +
          `${sheets.toString()}`,
      };
    }),
  };
};

/** The piece the upper floor, or the landing the flight ends on, begins with: one of the two, or none. */
const topPiece = ({ landingTread, landingNosing, topTread }: CountedStair): Counts => {
  if (topTread !== "floor") return {};
  if (landingTread !== undefined) return { landingTread: counted(1, "1 at the landing on top of the flight") };
  return landingNosing ? { landingNosing: counted(1, "1 at the upper floor") } : {};
};

/** What is counted piece by piece. */
const countsOfPieces = (stair: CountedStair, measures: Measures): Counts => {
  const { treads, risers } = stair;
  const open = openEnds(stair);
  const closed = 2 - open;
  const treadItem = (["treadWithoutReturn", "treadWithOneReturn", "treadWithTwoReturns"] as const)[open] ?? "treadWithoutReturn";
  const isPast = stair.runPast.gt(0) && open > 0;
  return {
    [treadItem]: counted(treads, `${treads} treads`),
    ...topPiece(stair),
    riser: counted(risers, `${risers} risers`),
    openSkirt: counted(open, `${open} open`),
    closedSkirt: counted(closed, `${closed} closed`),
    mitredReturn: counted(treads * open, `${treads} treads x ${open}`),
    runPastRiser: counted(isPast ? risers * open : 0, `${risers} risers x ${open}`),
    // The first riser stands on the floor: no tread runs back under it.
    notch: counted(isPast ? (risers - 1) * open : 0, `(${risers} risers - 1) x ${open}`),
    scribedEnd: counted(treads * closed, `${treads} treads x ${closed}`),
    screws: {
      ...counted(treads * SCREWS_A_TREAD, `${treads} treads x ${SCREWS_A_TREAD}`),
      how: `${treads} treads x ${SCREWS_A_TREAD} = ${treads * SCREWS_A_TREAD}${screwWords(stair.riserThickness, measures)}`,
    },
    nails: counted(risers * NAILS_A_RISER, `${risers} risers x ${NAILS_A_RISER}`),
  };
};

const PERCENT = 100;

/** Allowances that cannot be meant: for an item that is not counted, of more than the item itself, or two that differ. */
const wrongAllowance = (allowances: readonly Allowance[], known: readonly string[]): Problem<TakeoffProblem> | undefined => {
  for (const { item, allowance } of allowances) {
    const name = String(item);
    const other = allowances.find((one) => goodsKey(one.item) === goodsKey(name) && one.allowance !== allowance);
    if (!known.some((one) => goodsKey(one) === goodsKey(name)))
      return problem("allowance-for-nothing", { item: name, nearest: nearestOrAll(name, known) });
    if (other !== undefined) return problem("two-allowances", { item: name, first: allowance, second: other.allowance });
  }
  return undefined;
};

/** What to know of a line besides its count. */
const noteOf = (key: TakeoffItem, stair: Stair, measures: Measures): { readonly note?: string } => {
  if (key === "screws") return { note: pilotHoles(measures) };
  if (key !== "runPastRiser" || !stair.assumed.has("runPast")) return {};
  return { note: `run past ${sizeText(stair.runPast, measures.unit)} assumed; enter run past 0 where risers end at the skirt` };
};

/**
 * What a stair takes, counted from its labels, each line with the count it came from; allowances add their share and counted pieces round
 * up.
 */
export const takeoff = (stair: Stair, allowances: readonly Allowance[], unit: Unit): readonly TakeoffLine[] | Problem<TakeoffProblem> => {
  const { treads, risers, run, unitRise } = stair;
  if (treads === undefined || risers === undefined || unitRise === undefined) return problem("no-total-rise");
  if (run === undefined) return problem("no-run");
  const measures = MEASURES[unit];
  const laidOut = { ...stair, treads, risers, run, unitRise };
  const found: Counts = { ...countsOfPieces(laidOut, measures), ...countsAcross(laidOut, measures) };
  const known = Object.keys(TAKEOFF_ITEMS).map(words);
  const wrong = wrongAllowance(allowances, known);
  if (wrong !== undefined) return wrong;
  return (Object.keys(TAKEOFF_ITEMS) as TakeoffItem[]).flatMap((key): TakeoffLine[] => {
    const line = found[key];
    if (line === undefined) return [];
    const item = words(key);
    const note = noteOf(key, stair, measures);
    const countedIn = TAKEOFF_UNITS[unit][TAKEOFF_ITEMS[key].counts];
    if ("problem" in line) return [{ item, unit: countedIn, howItWasCounted: "", bad: line }];
    if (line.quantity.isZero()) return [];
    const allowance = allowances.find((one) => goodsKey(one.item) === goodsKey(item))?.allowance ?? 0;
    if (allowance === 0) return [{ item, quantity: line.quantity, unit: countedIn, howItWasCounted: line.how, ...note }];
    const more = line.quantity.times(exact(allowance).plus(1));
    const quantity = countedIn === "each" ? wholeUp(more) : more;
    return [
      {
        item,
        quantity,
        unit: countedIn,
        howItWasCounted: `${line.how}, and ${exact(allowance).times(PERCENT).toString()} % = ${result(quantity, countedIn)}`,
        ...note,
      },
    ];
  });
};
