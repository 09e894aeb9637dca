import { Exact } from "../length/exact";
import { type Length } from "../length/length";
import { type Problem, isProblem, problem } from "../problem";
import { commonDivisor } from "./common-divisor";
import { type CuttingGroup, cuttingGroups, type ImpossibleSection, isWideEnough } from "./cutting-groups";
import { called, type CuttingJob, type Piece, sameGrade } from "./cutting-job";
import { isOnMark, lengthOfMarks, MARK_NAME, marksDown, marksUp } from "./mark";
import { type Proof, worthSteps } from "./shelf/certificate";
import { longestUnplaced } from "./shelf/hand-plan";
import { type Cut, outlay, type Shelf, type StickKind } from "./shelf/shelf";
import { type Effort, withShare } from "./shelf/effort";
import { type Engine, IN_A_CELL } from "./shelf/engine";
import { shelfPlan } from "./shelf/shelf-plan";

export interface PlannedPiece {
  /** Row of the pieces table, from 0. */
  readonly piece: number;
  readonly label: string | number;
  readonly length: Length;
  /** From the stick's end to the start of the piece; the trim is counted. */
  readonly position: Length;
}

export interface PlannedStick {
  /** Row of the stock table, from 0. */
  readonly stock: number;
  /** In cutting order. */
  readonly pieces: readonly PlannedPiece[];
  readonly leftOver: Length;
}

/** What the bound of one group of pieces and stock stands on, in terms of the job, so that it can be checked without the solver. */
export interface GroupProof {
  readonly grade: string;
  /** For each kind of piece, longest first, its rows of the pieces table; for each kind of stick its rows of the stock table. */
  readonly pieceRows: readonly (readonly number[])[];
  readonly stockRows: readonly (readonly number[])[];
  /** One unit of money in which all prices are whole, or rounded down, and the steps of worth to it. */
  readonly unit: Exact;
  readonly steps: number;
  /** What the worths alone prove, and the worths. */
  readonly certified: Exact;
  readonly proof: Proof;
}

export interface CuttingPlan {
  readonly sticks: readonly PlannedStick[];
  readonly cost: Exact;
  /** No plan costs less: proven. */
  readonly bound: Exact;
  /** The share of the cost that a better plan could save at most: (cost - bound) / cost. */
  readonly gap: Exact;
  readonly sticksUsed: number;
  /** Net length in pieces over gross length of the sticks used. */
  readonly yield: Exact;
  /** `best possible (proven)`, `best possible (searched, not certified)`, or the gap in words. */
  readonly verdict: string;
  /** One for each part of the job that is planned by itself. */
  readonly proofs: readonly GroupProof[];
  readonly notes: readonly string[];
}

export type ImpossibleCutting =
  | "free-without-limit" | "owned-without-limit" | "too-many-pieces" | "too-much-stock" | "too-many-parts" | ImpossibleSection
  | "piece-fits-no-stock" | "piece-fits-no-available-stock" | "piece-fits-no-stock-of-section" | "stock-runs-out" | "no-plan-found";

/** Each piece is a row of the cut list: more than this belongs into several jobs. */
const MOST_PIECES = 5_000;
/** Rows of stock, and parts planned by themselves, up to which a plan stays well within two seconds. */
const MOST_STOCK = 1_000;
const MOST_PARTS = 200;

/**
 * Rows of both tables up to which all of the effort is spent, and the least share that more of them leave; parts up to which it is. Rows are
 * read and laid out besides, and each part is begun anew, which the steps of the search do not count.
 */
const ROWS_AT_FULL_EFFORT = 60;
const LEAST_SHARE = 0.2;
const PARTS_AT_FULL_EFFORT = 50;

/** What the rows take is no more where the search is longer than in a cell. */
const effortFor = ({ pieces, stock }: CuttingJob, parts: number, { effort }: Engine): Effort => {
  const share = Math.max(LEAST_SHARE, Math.min(1, ROWS_AT_FULL_EFFORT / (pieces.length + stock.length))) * Math.min(1, PARTS_AT_FULL_EFFORT / parts);
  return { left: Math.max(effort * share, effort - IN_A_CELL.effort * (1 - share)) };
};

/** Whole units of money that a plan may cost: sums of worths, some twenty times as large, stay exact. */
const MOST_WHOLE = new Exact(2).pow(46);

/** What makes a job no job, although each of its arguments is one. */
const impossible = ({ pieces, stock }: CuttingJob): Problem<ImpossibleCutting> | undefined => {
  if (stock.length > MOST_STOCK) return problem("too-much-stock", { count: stock.length, most: MOST_STOCK });
  const endless = stock.findIndex(({ price, available }) => price.isZero() && available === Infinity);
  const free = stock[endless];
  if (free !== undefined) return problem(free.owned ? "owned-without-limit" : "free-without-limit", { stock: called(free.label, endless), length: free.length });
  const count = pieces.reduce((sum, piece) => sum + piece.quantity, 0);
  return count > MOST_PIECES ? problem("too-many-pieces", { count, most: MOST_PIECES }) : undefined;
};

/** One group's shelf, with the way back from its kinds to the rows of the job. */
interface Shelved {
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
    .filter((stock) => sameGrade(stock.grade) === sameGrade(piece.grade) && isWideEnough(stock, piece))
    .reduce<Length | undefined>((most, { length }) => (most === undefined || length.gt(most) ? length : most), undefined);

const shelved = (job: CuttingJob, group: CuttingGroup): Shelved | Problem<ImpossibleCutting> => {
  const { unit } = job;
  const kerf = marksUp(job.kerf, unit);
  const trim = marksUp(job.trim, unit);
  const kinds = pieceKinds(job, group);
  const widths = kinds.map(({ of }) => of.width);
  const stock = group.stock.map((row) => {
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
    const details = { piece: called(piece.label, rows[0]!), length: piece.length, grade: piece.grade, longest: lengthOfMarks(Math.max(0, roomiest - kerf), unit) };
    const there = longestSuiting(job, piece);
    if (there !== undefined && marksDown(there, unit) - 2 * trim + kerf > roomiest) return problem("piece-fits-no-available-stock", { ...details, there });
    return problem(hasSection ? "piece-fits-no-stock-of-section" : "piece-fits-no-stock", details);
  }
  const narrowestOf = takes.map((each) => Math.min(...widths.filter((_, kind) => each[kind]!)));
  const longEnough = stock.filter(({ holds, class: of }) => holds >= narrowestOf[of]!);
  const divisor = widths.reduce(commonDivisor, 0);
  const wanted = ({ rows }: Kind<unknown>): number => rows.reduce((sum, row) => sum + job.pieces[row]!.quantity, 0);
  const pieces = kinds.reduce((sum, kind) => sum + wanted(kind), 0);
  const money = wholePrices(longEnough.map(({ row }) => job.stock[row]!.price), pieces);
  // rows that differ in nothing the plan knows of are one kind, so that splitting a row changes nothing
  const sticks = new Map<string, { stick: StickKind; rows: number[] }>();
  for (const [index, { row, length, holds, class: section }] of longEnough.entries()) {
    const { available, owned } = job.stock[row]!;
    const stick = { section, holds: Math.floor(holds / divisor), usable: length - 2 * trim, price: money.whole[index]!, newLength: owned ? 0 : length };
    const key = [stick.holds, stick.usable, stick.price, stick.newLength, section].join();
    const known = sticks.get(key);
    if (known === undefined) sticks.set(key, { stick: { ...stick, available: Math.min(pieces, available) }, rows: [row] });
    else {
      known.stick = { ...known.stick, available: Math.min(pieces, available + known.stick.available) };
      known.rows.push(row);
    }
  }
  const sorted = [...sticks.values()].sort(
    ({ stick: a }, { stick: b }) => b.holds - a.holds || b.usable - a.usable || a.price - b.price || a.newLength - b.newLength || a.section - b.section,
  );
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

/** Gives out rows of a table one piece or stick at a time, in the order given. */
const dealer = (rows: readonly (readonly number[])[], count: (row: number) => number): ((kind: number) => number) => {
  const waiting = rows.map((each) => ({ each, place: 0, left: count(each[0]!) }));
  return (kind) => {
    const at = waiting[kind]!;
    while (at.left === 0) {
      at.place += 1;
      at.left = count(at.each[at.place]!);
    }
    at.left -= 1;
    return at.each[at.place]!;
  };
};

const plannedSticks = (job: CuttingJob, group: Shelved, cuts: readonly Cut[]): PlannedStick[] => {
  const { unit } = job;
  const trim = marksUp(job.trim, unit);
  const widths = group.shelf.kinds.map(({ width }) => width * group.shelf.marks);
  const known = new Map<number, Length>();
  // thousands of pieces begin at the same few places
  const lengthAt = (marks: number): Length => {
    if (!known.has(marks)) known.set(marks, lengthOfMarks(marks, unit));
    return known.get(marks)!;
  };
  const nextPiece = dealer(group.pieceRows, (row) => job.pieces[row]!.quantity);
  const nextStick = dealer(group.stockRows, (row) => job.stock[row]!.available);
  return cuts.map((cut) => {
    const stock = nextStick(cut.stick);
    let position = trim;
    const pieces = cut.kinds.map((kind) => {
      const row = nextPiece(kind);
      const { label, length } = job.pieces[row]!;
      const start = position;
      position += widths[kind]!;
      return { piece: row, label, length, position: lengthAt(start) };
    });
    const leftOver = Math.max(0, group.shelf.sticks[cut.stick]!.usable + trim - position);
    return { stock, pieces, leftOver: lengthAt(leftOver) };
  });
};

/** A gap in words is rounded up, to a hundredth of a percent: never better than it is. */
const gapInWords = (gap: Exact): string =>
  `not proven: at most ${gap.times(100).toDecimalPlaces(2, Exact.ROUND_UP).toString()} % of the cost could still be saved`;

const markNotes = (job: CuttingJob): string[] => {
  const { unit } = job;
  const off = (length: Length): boolean => !isOnMark(length, unit);
  const notes: string[] = [];
  const mark = MARK_NAME[unit];
  if (job.pieces.some((piece) => off(piece.length))) notes.push(`pieces finer than ${mark} are planned rounded up to it`);
  if (job.stock.some((stock) => off(stock.length))) notes.push(`stock finer than ${mark} is planned rounded down to it`);
  if (off(job.kerf)) notes.push(`the kerf is planned rounded up to ${mark}`);
  if (off(job.trim)) notes.push(`the trim is planned rounded up to ${mark}`);
  return notes;
};

/** Where two pieces of one group could lie side by side on its stock, a plan that rips could cost less. */
const isSideBySide = (job: CuttingJob, { pieces, stock }: CuttingGroup): boolean => {
  const widths = pieces.flatMap((row) => {
    const { width, quantity } = job.pieces[row]!;
    return width === undefined ? [] : Array.from({ length: Math.min(quantity, 2) }, () => width);
  });
  const [narrowest, next] = widths.sort((one, other) => one.cmp(other));
  const widest = stock.reduce<Length>((most, row) => (job.stock[row]!.width?.gt(most) ? job.stock[row]!.width! : most), new Exact(0));
  return narrowest !== undefined && next !== undefined && narrowest.plus(next).plus(job.kerf).lte(widest);
};

const sectionNotes = (job: CuttingJob, groups: readonly CuttingGroup[], sticks: readonly PlannedStick[]): string[] => {
  const isThicker = (stock: number, piece: number): boolean => {
    const { thickness } = job.pieces[piece]!;
    return thickness !== undefined && (job.stock[stock]!.thickness?.gt(thickness) ?? false);
  };
  const planed = sticks.reduce((count, { stock, pieces }) => count + pieces.filter(({ piece }) => isThicker(stock, piece)).length, 0);
  return [
    ...(planed === 0 ? [] : [`pieces cut from thicker stock and planed down: ${planed}`]),
    ...(groups.some((group) => isSideBySide(job, group)) ? ["one piece across each board; ripping two side by side is not planned, and could cost less"] : []),
  ];
};

/**
 * A plan that cuts all pieces from the stock at least cash cost, with a proven bound. Among plans of that cost, as far as the budget goes:
 * least new length, fewest sticks, fewest different patterns, largest end worth keeping, most of them in all, first in cutting order.
 * A stick S with kerf k and trim e at each end (kerf inside it) holds pieces l when the sum of (l + k) is at most S - 2e + k: an exact
 * fit fits. A piece goes on stock of its grade, at least as wide and as thick as it is, one piece across. Same job, same plan: the search
 * is counted in steps (Gilmore and Gomory 1961 state the problem; the year from memory).
 */
export const cuttingPlan = (job: CuttingJob, engine: Engine = IN_A_CELL): CuttingPlan | Problem<ImpossibleCutting> => {
  const fault = impossible(job);
  if (fault !== undefined) return fault;
  const groups = cuttingGroups(job);
  if (isProblem(groups)) return groups;
  if (groups.length > MOST_PARTS) return problem("too-many-parts", { count: groups.length, most: MOST_PARTS });
  const effort = effortFor(job, groups.length, engine);
  const sticks: PlannedStick[] = [];
  const proofs: GroupProof[] = [];
  let bound = new Exact(0);
  let isCertified = true;
  let isOptimal = true;
  for (const [place, group] of groups.entries()) {
    const shelfOf = shelved(job, group);
    if (isProblem(shelfOf)) return shelfOf;
    const { shelf, moneyUnit, pieceRows, stockRows } = shelfOf;
    const { cuts, certified, proven, proof } = withShare(effort, effort.left / (groups.length - place), (share) => shelfPlan(shelf, engine, share));
    if (cuts === undefined) {
      const row = pieceRows[longestUnplaced(shelf)]![0]!;
      const { label, length, grade: asked } = job.pieces[row]!;
      const taking = stockRows.flat().filter((each) => isWideEnough(job.stock[each]!, job.pieces[row]!));
      const longest = taking.reduce((most, each) => Math.max(most, marksDown(job.stock[each]!.length, job.unit)), 0);
      return problem(proven === Infinity ? "stock-runs-out" : "no-plan-found", {
        piece: called(label, row),
        length,
        grade: asked,
        longest: lengthOfMarks(longest - 2 * marksUp(job.trim, job.unit), job.unit),
      });
    }
    const planned = plannedSticks(job, shelfOf, cuts);
    const paid = planned.reduce((sum, stick) => sum.plus(job.stock[stick.stock]!.price), new Exact(0));
    // prices are rounded down to units only where they are finer than whole-number arithmetic; then no plan is proven the cheapest
    const isWhole = moneyUnit.times(outlay(shelf, cuts).cash).eq(paid);
    isCertified = isCertified && isWhole && certified === outlay(shelf, cuts).cash;
    isOptimal = isOptimal && isWhole && proven === outlay(shelf, cuts).cash;
    bound = bound.plus(moneyUnit.times(proven));
    sticks.push(...planned);
    proofs.push({ grade: group.grade, pieceRows, stockRows, unit: moneyUnit, steps: worthSteps(shelf), certified: moneyUnit.times(certified), proof });
  }
  const cost = sticks.reduce((sum, stick) => sum.plus(job.stock[stick.stock]!.price), new Exact(0));
  const gross = sticks.reduce((sum, stick) => sum.plus(job.stock[stick.stock]!.length), new Exact(0));
  const net = job.pieces.reduce((sum, piece) => sum.plus(piece.length.times(piece.quantity)), new Exact(0));
  const gap = cost.isZero() ? new Exact(0) : cost.minus(bound).div(cost);
  return {
    sticks,
    cost,
    bound,
    gap,
    sticksUsed: sticks.length,
    yield: net.div(gross),
    verdict: isCertified ? "best possible (proven)" : isOptimal ? "best possible (searched, not certified)" : gapInWords(gap),
    proofs,
    notes: [...markNotes(job), ...sectionNotes(job, groups, sticks)],
  };
};
