import type { Effort } from "../shelf/effort";

/** Floating-point dust: reduced costs, rates and times below these are none. */
const COST_DUST = 1e-7;
const RATE_DUST = 1e-9;
const TIMES_DUST = 1e-9;
/** Pivots without gain after which the first column in order enters (Bland 1977, from memory): no cycles. */
const STALLED = 60;
/** No program of this size takes as many; a guard against dust. */
const MOST_PIVOTS = 2_000;

/** At least so much with a price for what is short of it, or at most so much. */
export interface Row {
  readonly isLeast: boolean;
  readonly right: number;
  readonly shortage: number;
}

export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly values: readonly number[];
}

export interface LinearAnswer {
  readonly cost: number;
  /** What one more of each row's right side would cost; a row of at most has none above 0. */
  readonly worth: Float64Array;
  /** How often each column stands in the plan. */
  readonly times: Float64Array;
}

interface Tableau {
  readonly rows: readonly Row[];
  readonly columns: readonly Column[];
  readonly inverse: Float64Array;
  readonly times: Float64Array;
  readonly basis: Int32Array;
  readonly worth: Float64Array;
  readonly entering: Float64Array;
}

// ids: a column from 0 on; surplus or slack of row r is -1 - r; shortage of row r is -1 - rows - r
const costOf = ({ rows, columns }: Tableau, id: number): number =>
  id >= 0 ? columns[id]!.cost : id < -rows.length ? rows[-1 - rows.length - id]!.shortage : 0;

const opened = (rows: readonly Row[], columns: readonly Column[]): Tableau => {
  const size = rows.length;
  const inverse = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) inverse[row * size + row] = 1;
  return {
    rows, columns, inverse,
    times: Float64Array.from(rows, ({ right }) => right),
    basis: Int32Array.from(rows, ({ isLeast }, row) => (isLeast ? -1 - size - row : -1 - row)),
    worth: Float64Array.from(rows, ({ isLeast, shortage }) => (isLeast ? shortage : 0)),
    entering: new Float64Array(size),
  };
};

const reducedCost = ({ rows, columns, worth }: Tableau, id: number): number => {
  if (id < 0) return rows[-1 - id]!.isLeast ? worth[-1 - id]! : -worth[-1 - id]!;
  const { cost, rows: held, values } = columns[id]!;
  let left = cost;
  for (let place = 0; place < held.length; place += 1) left -= worth[held[place]!]! * values[place]!;
  return left;
};

/** The column that gains most, or where the plan is stalled the first that gains. */
const gaining = (tableau: Tableau, isStalled: boolean): number | undefined => {
  let chosen: number | undefined;
  let least = -COST_DUST;
  for (let id = -tableau.rows.length; id < tableau.columns.length; id += 1) {
    const cost = reducedCost(tableau, id);
    if (cost >= least) continue;
    chosen = id;
    least = cost;
    if (isStalled) break;
  }
  return chosen;
};

const fillEntering = ({ rows, columns, inverse, entering }: Tableau, id: number): void => {
  const size = rows.length;
  entering.fill(0);
  const [held, values] = id < 0 ? [[-1 - id], [rows[-1 - id]!.isLeast ? -1 : 1]] : [columns[id]!.rows, columns[id]!.values];
  for (let place = 0; place < held.length; place += 1) {
    const at = held[place]!;
    const value = values[place]!;
    for (let row = 0; row < size; row += 1) entering[row]! += inverse[row * size + at]! * value;
  }
};

const leaving = ({ rows, times, entering }: Tableau): number => {
  let leaves = -1;
  let most = Infinity;
  for (let row = 0; row < rows.length; row += 1) {
    if (entering[row]! <= RATE_DUST) continue;
    const ratio = times[row]! / entering[row]!;
    const isTie = leaves >= 0 && Math.abs(ratio - most) <= TIMES_DUST;
    if (isTie ? entering[row]! <= entering[leaves]! : ratio >= most) continue;
    most = Math.min(most, ratio);
    leaves = row;
  }
  return leaves;
};

const exchange = (tableau: Tableau, id: number, leaves: number): void => {
  const { rows, inverse, times, basis, worth, entering } = tableau;
  const size = rows.length;
  const gain = reducedCost(tableau, id);
  const pivot = entering[leaves]!;
  const most = times[leaves]! / pivot;
  const from = leaves * size;
  for (let at = 0; at < size; at += 1) inverse[from + at]! /= pivot;
  for (let row = 0; row < size; row += 1) {
    const rate = entering[row]!;
    if (row === leaves || rate === 0) continue;
    times[row] = Math.max(0, times[row]! - most * rate);
    const to = row * size;
    for (let at = 0; at < size; at += 1) inverse[to + at]! -= rate * inverse[from + at]!;
  }
  times[leaves] = most;
  for (let at = 0; at < size; at += 1) worth[at]! += gain * inverse[from + at]!;
  basis[leaves] = id;
};

/** A linear program that columns are added to: revised primal simplex with a dense inverse. Floating, so it only proposes. */
export const linearProgram = (rows: readonly Row[], columns: readonly Column[]): { readonly solve: (effort: Effort) => LinearAnswer } => {
  const tableau = opened(rows, columns);
  const { times, basis, worth } = tableau;
  const total = (): number => basis.reduce((sum, id, row) => sum + costOf(tableau, id) * times[row]!, 0);
  return {
    solve: (effort) => {
      let stalled = 0;
      let last = total();
      for (let pivot = 0; pivot < MOST_PIVOTS && effort.left > 0; pivot += 1) {
        const id = gaining(tableau, stalled > STALLED);
        effort.left -= 2 * rows.length * rows.length + 12 * columns.length;
        if (id === undefined) break;
        fillEntering(tableau, id);
        const leaves = leaving(tableau);
        if (leaves < 0) break;
        exchange(tableau, id, leaves);
        const now = total();
        stalled = now > last - RATE_DUST ? stalled + 1 : 0;
        last = now;
      }
      const used = new Float64Array(columns.length);
      for (let row = 0; row < rows.length; row += 1) if (basis[row]! >= 0 && times[row]! > TIMES_DUST) used[basis[row]!] = times[row]!;
      return { cost: total(), worth, times: used };
    },
  };
};
