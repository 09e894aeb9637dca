import { type Length, measure, type Unit } from "../../solver/length/length";
import type { CuttingJob } from "../../solver/yield/cutting-job";
import type { CuttingPlan } from "../../solver/yield/cutting-plan";
import type { PlannedStick } from "../../solver/yield/planned-sticks";
import { box, closed, dimensionText, type Draft, type DraftMark, hatch, inside, note, upright } from "./draft";
import { paperPer } from "./laid-draft";
import { scaleFor, WIDEST } from "./scales";

/** Sticks that are cut alike, by the number of the first and how many there are. */
interface Alike {
  readonly first: number;
  readonly count: number;
  readonly stick: PlannedStick;
}

/** On the paper, in millimetres: a stick across, from stick to stick, and what stands past the ends of a stick. */
const ACROSS = 7;
const APART = 34;
const BESIDE = 46;
const STICKS_A_SHEET = 4;
/** More kinds of sticks than anyone leafs through: CUTS lists them all. */
const MOST_DRAWN = 60;

const keyOf = ({ stock, pieces, leftOver }: PlannedStick): string =>
  JSON.stringify([stock, leftOver, pieces.map(({ label, length, position }) => [label, length, position])]);

const alikeOf = (sticks: readonly PlannedStick[]): readonly Alike[] => {
  const found: Alike[] = [];
  for (const [place, stick] of sticks.entries()) {
    const last = found[found.length - 1];
    if (last !== undefined && keyOf(last.stick) === keyOf(stick)) found[found.length - 1] = { ...last, count: last.count + 1 };
    else found.push({ first: place + 1, count: 1, stick });
  }
  return found;
};

const numbersOf = ({ first, count }: Alike): string =>
  count === 1 ? `stick ${first}` : `sticks ${first} to ${first + count - 1}, ${count} alike`;

/** What is sawn away or cut off, in the order it lies along the stick. */
const wasteOf = ({ stick }: Alike, job: CuttingJob, long: Length): readonly (readonly [Length, Length])[] => {
  const far = long.minus(job.trim).minus(stick.leftOver);
  const gaps = stick.pieces.map(({ position, length }, place): readonly [Length, Length] => {
    const next = stick.pieces[place + 1]?.position ?? far;
    return [position.plus(length), next];
  });
  return [[job.trim.times(0), job.trim], ...gaps, [long.minus(job.trim), long]];
};

/** One stick with its pieces, at a height of the drawing. */
const stickMarks = (one: Alike, job: CuttingJob, y: number, high: number): DraftMark[] => {
  const { unit } = job;
  const { stick } = one;
  const stock = job.stock[stick.stock];
  if (stock === undefined) return [];
  const long = stock.length;
  const end = measure(long, unit);
  const left = measure(stick.leftOver, unit);
  const last = measure(long.minus(job.trim).minus(stick.leftOver), unit);
  const name = stock.label === "" ? "" : `, ${stock.label}`;
  const isKept = job.keep !== undefined && stick.leftOver.gte(job.keep);
  return [
    closed("thick", ...box([0, y], [end, y + high])),
    ...wasteOf(one, job, long).flatMap(([from, to]): DraftMark[] => {
      if (to.lte(from)) return [];
      const area = box([measure(from, unit), y], [measure(to, unit), y + high]);
      return [closed("thin", ...area), hatch(area, { apart: 0.8 })];
    }),
    ...(left > 0 ? [
      hatch(box([last, y], [last + left, y + high]), { apart: 2.4, falls: true }),
      inside([last, y + high], [last + left, y + high], left, isKept ? "offcut kept" : "left over", 4),
    ] : []),
    ...stick.pieces.flatMap(({ label, length, position }): DraftMark[] => {
      const [at, size] = [measure(position, unit), measure(length, unit)];
      return [
        inside([at, y + high / 4], [at + size, y + high / 4], size, String(label) === "" ? "" : String(label)),
        ...(at > 0 ? [upright([0, y], [at, y], at, "", "below")] : []),
      ];
    }),
    inside([0, y], [end, y], end, "stick", -18),
    note([0, y + high * 1.5], `${numbersOf(one)}${name}`, "right"),
  ];
};

const saidOf = (length: Length, unit: Unit): string => dimensionText(measure(length, unit), unit);

/** The cut plan of sticks to scale along them, some to a drawing. */
export const sticksDrawings = (job: CuttingJob, plan: CuttingPlan): readonly { readonly name: string; readonly draft: Draft }[] => {
  const all = alikeOf(plan.sticks);
  const drawn = all.slice(0, MOST_DRAWN);
  const unit: Unit = job.unit;
  const longest = Math.max(...drawn.map(({ stick }) => measure(job.stock[stick.stock]?.length ?? job.trim, unit)));
  const per = paperPer(unit, scaleFor(longest, unit, WIDEST - BESIDE));
  const sheets = Array.from({ length: Math.ceil(drawn.length / STICKS_A_SHEET) }, (_, sheet) =>
    drawn.slice(sheet * STICKS_A_SHEET, (sheet + 1) * STICKS_A_SHEET));
  return sheets.map((sticks, sheet) => {
    const [first, last] = [sticks[0], sticks[sticks.length - 1]];
    const to = (last?.first ?? 1) + (last?.count ?? 1) - 1;
    const from = first?.first ?? 1;
    const name = from === to ? `stick ${from}` : `sticks ${from} to ${to}`;
    return {
      name,
      draft: {
        title: `Cut plan, ${name} of ${plan.sticksUsed}`,
        says: `The cut plan of ${name}, each with its pieces in cutting order, the kerfs and what is left over hatched.`,
        unit,
        marks: sticks.flatMap((one, place) => stickMarks(one, job, (-place * APART) / per, ACROSS / per)),
        notes: [
          "To scale along the sticks, not across. Under a stick, from its left end to the start of each piece. Hatched close: kerf of " +
            `${saidOf(job.kerf, unit)}${job.trim.isZero() ? "" : ` and trim of ${saidOf(job.trim, unit)}`}; hatched wide: left over.`,
          `Yield ${plan.yield.times(100).toDecimalPlaces(1).toString()} %, ${plan.verdict}.`,
          ...(all.length > drawn.length && sheet === sheets.length - 1
            ? [`Of ${all.length} kinds of sticks the first ${drawn.length} are drawn; CUTS lists them all.`]
            : []),
        ],
      },
    };
  });
};
