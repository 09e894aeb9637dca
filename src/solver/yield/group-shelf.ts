import { plainMarks } from "../goods/plain-marks";
import { Exact } from "../length/exact";
import type { Length } from "../length/length";
import { type Problem, problem } from "../problem";
import { commonDivisor } from "./common-divisor";
import { type CuttingGroup, isWideEnough } from "./cutting-groups";
import { called, type CuttingJob, type Piece } from "./cutting-job";
import { lengthOfMarks, marksDown, marksUp } from "./mark";
import type { Shelf, StickKind } from "./shelf/shelf";

/** Why a group of pieces and stock has no plan, whatever the search. */
export type ImpossibleShelf = "piece-fits-no-stock" | "piece-fits-no-available-stock" | "piece-fits-no-stock-of-section";

/** Whole units of money that a plan may cost: sums of worths, some twenty times as large, stay exact. */
const MOST_WHOLE = new Exact(2).pow(46);

/** One group's shelf, with the way back from its kinds to the rows of the job. */
export interface GroupShelf {
  readonly shelf: Shelf;
  /** For each kind of piece and of stick its rows, in the order given. */
  readonly pieceRows: readonly (readonly number[])[];
  readonly stockRows: readonly (readonly number[])[];
  readonly moneyUnit: Exact;
}

/** Prices in whole units of money: exact where they fit, rounded down to a finer unit than anyone pays where they do not. */
const wholePrices = (prices: readonly Exact[], pieces: number): { unit: Exact; whole: number[] } => {
  const finest = new Exact(10).pow(-Math.max(0, ...prices.map((price) => price.decimalPlaces())));
  const most = MOST_WHOLE.div(pieces);
  let unit = finest;
  while (prices.some((price) => price.div(unit).gt(most))) unit = unit.times(10);
  const whole = prices.map((price) => price.div(unit).floor().toNumber());
  const divisor = whole.reduce(commonDivisor, 0) || 1;
  return { unit: unit.times(divisor), whole: whole.map((price) => price / divisor) };
};

/** A kind of piece, or of stick, and the rows it stands for. */
interface Kind<Of> {
  readonly of: Of;
  readonly rows: number[];
}

const pieceKinds = (job: CuttingJob, { pieces, pieceClass }: CuttingGroup): Kind<{ readonly width: number; readonly class: number }>[] => {
  const kerf = marksUp(job.kerf, job.unit);
  const kinds = new Map<string, Kind<{ readonly width: number; readonly class: number }>>();
  for (const row of pieces) {
    const of = { width: marksUp(job.pieces[row]!.length, job.unit) + kerf, class: pieceClass.get(row)! };
    const key = `${of.width}/${of.class}`;
    const known = kinds.get(key);
    if (known === undefined) kinds.set(key, { of, rows: [row] });
    else known.rows.push(row);
  }
  return [...kinds.values()].sort(({ of: one }, { of: other }) => other.width - one.width || one.class - other.class);
};

/** The longest stock that a piece could be cut from by its grade, width and thickness, whether any is available or not. */
const longestSuiting = (job: CuttingJob, piece: Piece): Length | undefined =>
  job.stock
    .filter((stock) => plainMarks(stock.grade) === plainMarks(piece.grade) && isWideEnough(stock, piece))
    .reduce<Length | undefined>((most, { length }) => (most === undefined || length.gt(most) ? length : most), undefined);

/** A row of stock on the marks of the plan: its length, what it holds with the last kerf, and the class of its section. */
interface StockRow {
  readonly row: number;
  readonly length: number;
  readonly holds: number;
  readonly class: number;
}

/** The kinds of a group's sticks: rows that differ in nothing the plan knows of are one, so that splitting a row changes nothing. */
const stickKinds = (
  job: CuttingJob, rows: readonly StockRow[], prices: readonly number[], divisor: number, pieces: number,
): { readonly stick: StickKind; readonly rows: number[] }[] => {
  const trim = marksUp(job.trim, job.unit);
  const sticks = new Map<string, { stick: StickKind; rows: number[] }>();
  for (const [index, { row, length, holds, class: section }] of rows.entries()) {
    const { available, owned } = job.stock[row]!;
    const stick = {
      section,
      holds: Math.floor(holds / divisor),
      usable: length - 2 * trim,
      price: prices[index]!,
      newLength: owned ? 0 : length,
    };
    const key = [stick.holds, stick.usable, stick.price, stick.newLength, section].join();
    const known = sticks.get(key);
    if (known === undefined) sticks.set(key, { stick: { ...stick, available: Math.min(pieces, available) }, rows: [row] });
    else {
      known.stick = { ...known.stick, available: Math.min(pieces, available + known.stick.available) };
      known.rows.push(row);
    }
  }
  return [...sticks.values()].sort(
    ({ stick: a }, { stick: b }) =>
      b.holds - a.holds || b.usable - a.usable || a.price - b.price || a.newLength - b.newLength || a.section - b.section,
  );
};

/** The shelf of one group of pieces and stock; what is wrong where a piece fits on none of it. */
export const groupShelf = (job: CuttingJob, group: CuttingGroup): GroupShelf | Problem<ImpossibleShelf> => {
  const { unit } = job;
  const kerf = marksUp(job.kerf, unit);
  const trim = marksUp(job.trim, unit);
  const kinds = pieceKinds(job, group);
  const widths = kinds.map(({ of }) => of.width);
  const stock = group.stock.map((row): StockRow => {
    const length = marksDown(job.stock[row]!.length, unit);
    return { row, length, holds: length - 2 * trim + kerf, class: group.stockClass.get(row)! };
  });
  const takes = group.takes.map((each) => kinds.map(({ of }) => each[of.class]!));
  const roomiestOf = group.takes.map((_, of) => stock.reduce((most, each) => (each.class === of ? Math.max(most, each.holds) : most), 0));
  for (const [kind, { of, rows }] of kinds.entries()) {
    const roomiest = Math.max(...takes.map((each, of) => (each[kind]! ? roomiestOf[of]! : 0)));
    if (roomiest >= of.width) continue;
    const piece = job.pieces[rows[0]!]!;
    const hasSection = piece.width !== undefined || piece.thickness !== undefined;
    const details = {
      piece: called(piece.label, rows[0]!),
      length: piece.length,
      grade: piece.grade,
      longest: lengthOfMarks(Math.max(0, roomiest - kerf), unit),
    };
    const there = longestSuiting(job, piece);
    if (there !== undefined && marksDown(there, unit) - 2 * trim + kerf > roomiest)
      return problem("piece-fits-no-available-stock", { ...details, there });
    return problem(hasSection ? "piece-fits-no-stock-of-section" : "piece-fits-no-stock", details);
  }
  const narrowestOf = takes.map((each) => Math.min(...widths.filter((_, kind) => each[kind]!)));
  const longEnough = stock.filter(({ holds, class: of }) => holds >= narrowestOf[of]!);
  const divisor = widths.reduce(commonDivisor, 0);
  const wanted = ({ rows }: Kind<unknown>): number => rows.reduce((sum, row) => sum + job.pieces[row]!.quantity, 0);
  const pieces = kinds.reduce((sum, kind) => sum + wanted(kind), 0);
  const money = wholePrices(longEnough.map(({ row }) => job.stock[row]!.price), pieces);
  const sorted = stickKinds(job, longEnough, money.whole, divisor, pieces);
  return {
    pieceRows: kinds.map(({ rows }) => rows),
    stockRows: sorted.map(({ rows }) => rows),
    moneyUnit: money.unit,
    shelf: {
      kinds: kinds.map((kind) => ({ width: kind.of.width / divisor, wanted: wanted(kind) })),
      sticks: sorted.map(({ stick }) => stick),
      takes,
      marks: divisor,
      keep: job.keep === undefined ? 0 : marksUp(job.keep, unit),
    },
  };
};
