import { type Limits, type LinearAnswer, type Master, shortagePrice } from "./master";
import { type Pattern } from "./pattern";
import { piecesWanted, type Shelf } from "./shelf";

/** Floating-point dust: reduced costs, rates and times below these are none. */
const COST_DUST = 1e-7;
const RATE_DUST = 1e-9;
const TIMES_DUST = 1e-9;
const SINGULAR = 1e-11;
const ENTRY_DUST = 1e-14;
/** Pivots after which the inverse is built anew, so that rounding does not pile up: so many, or two to a row. */
const FRESH_INVERSE = 100;
/** Pivots without gain after which the first column in order enters (Bland 1977, from memory): no cycles. */
const STALLED = 300;

/** Steps of a pivot for each row besides those for each entry that changes, of a fresh inverse for each triple of rows, and of the look at
 * one pattern. */
const ROW_STEPS = 30;
const ENTRY_STEPS = 3;
const FRESH_STEPS = 1;
const PATTERN_STEPS = 12;

interface LimitRow {
  readonly stick: number;
  readonly isMost: boolean;
  readonly value: number;
}

/** The linear plan as it stands: which columns are in it and how often, and what each row is worth. */
interface Tableau {
  readonly size: number;
  readonly rows: number;
  /** For each kind of stick the rows that limit it. */
  readonly rowsOfStick: readonly (readonly number[])[];
  readonly right: Float64Array;
  readonly sign: Float64Array;
  readonly shortage: number;
  readonly patterns: Pattern[];
  readonly prices: number[];
  inverse: Float64Array;
  readonly times: Float64Array;
  readonly basis: Int32Array;
  readonly worth: Float64Array;
  readonly column: Float64Array;
  /** Places of a row of the inverse that are not zero: most are, where each stick holds few of many kinds. */
  readonly filled: Int32Array;
  sinceFresh: number;
}

const tableauOf = (shelf: Shelf, limits: Limits): Tableau => {
  const { kinds, sticks } = shelf;
  const pieces = piecesWanted(shelf);
  const size = kinds.length;
  const limitRows: LimitRow[] = sticks.flatMap((_, stick) => [
    ...(limits.most[stick]! < pieces ? [{ stick, isMost: true, value: limits.most[stick]! }] : []),
    ...(limits.least[stick]! > 0 ? [{ stick, isMost: false, value: limits.least[stick]! }] : []),
  ]);
  const rows = size + limitRows.length;
  const right = Float64Array.from([...kinds.map((kind) => kind.wanted), ...limitRows.map((row) => row.value)]);
  const sign = Float64Array.from({ length: rows }, (_, row) => (row >= size && limitRows[row - size]!.isMost ? 1 : -1));
  const inverse = new Float64Array(rows * rows);
  for (let row = 0; row < rows; row += 1) inverse[row * rows + row] = 1;
  return {
    size, rows, right, sign, inverse,
    rowsOfStick: sticks.map((_, stick) => limitRows.flatMap((row, place) => (row.stick === stick ? [size + place] : []))),
    shortage: shortagePrice(shelf),
    patterns: [],
    prices: [],
    times: Float64Array.from(right),
    basis: Int32Array.from(sign, (each, row) => (each > 0 ? -1 - row : -1 - rows - row)),
    worth: new Float64Array(rows),
    column: new Float64Array(rows),
    filled: new Int32Array(rows),
    sinceFresh: 0,
  };
};

const priceOf = ({ rows, prices, shortage }: Tableau, id: number): number => (id >= 0 ? prices[id]! : id < -rows ? shortage : 0);

const eachEntry = ({ rows, rowsOfStick, sign, patterns }: Tableau, id: number, visit: (row: number, value: number) => void): void => {
  if (id < -rows) return visit(-1 - rows - id, 1);
  if (id < 0) return visit(-1 - id, sign[-1 - id]!);
  const { stick, kinds: held, counts } = patterns[id]!;
  for (let place = 0; place < held.length; place += 1) visit(held[place]!, counts[place]!);
  for (const row of rowsOfStick[stick]!) visit(row, 1);
};

const reducedCost = ({ rowsOfStick, sign, patterns, prices, worth }: Tableau, id: number): number => {
  if (id < 0) return -sign[-1 - id]! * worth[-1 - id]!;
  const { stick, kinds: held, counts } = patterns[id]!;
  let cost = prices[id]!;
  for (let place = 0; place < held.length; place += 1) cost -= worth[held[place]!]! * counts[place]!;
  for (const row of rowsOfStick[stick]!) cost -= worth[row]!;
  return cost;
};

/** Divides a row of a square matrix, and tells where it is not zero: how many places, and which. */
const dividedRow = (matrix: Float64Array, from: number, rows: number, by: number, filled: Int32Array): number => {
  let count = 0;
  for (let at = 0; at < rows; at += 1) {
    const each = matrix[from + at]!;
    if (each === 0) continue;
    matrix[from + at] = each / by;
    filled[count] = at;
    count += 1;
  }
  return count;
};

/** Takes so many times one row of a matrix off another, at the places where it is not zero. */
const takeRow = (matrix: Float64Array, to: number, from: number, rate: number, filled: Int32Array, count: number): void => {
  for (let place = 0; place < count; place += 1) {
    const at = filled[place]!;
    const now = matrix[to + at]! - rate * matrix[from + at]!;
    matrix[to + at] = now < ENTRY_DUST && now > -ENTRY_DUST ? 0 : now;
  }
};

const freshWorths = (tableau: Tableau): void => {
  const { rows, worth, basis, inverse } = tableau;
  worth.fill(0);
  for (let row = 0; row < rows; row += 1) {
    const each = priceOf(tableau, basis[row]!);
    if (each === 0) continue;
    for (let at = 0; at < rows; at += 1) worth[at]! += each * inverse[row * rows + at]!;
  }
};

/**
 * The inverse of a square matrix by Gauss-Jordan with the largest pivot of each column; undefined where it is singular. The matrix is used
 * up.
 */
const inverted = (matrix: Float64Array, rows: number): Float64Array | undefined => {
  const fresh = new Float64Array(rows * rows);
  const filled = new Int32Array(rows);
  const freshFilled = new Int32Array(rows);
  for (let at = 0; at < rows; at += 1) fresh[at * rows + at] = 1;
  for (let at = 0; at < rows; at += 1) {
    let chosen = at;
    for (let row = at + 1; row < rows; row += 1) {
      if (Math.abs(matrix[row * rows + at]!) > Math.abs(matrix[chosen * rows + at]!)) chosen = row;
    }
    if (Math.abs(matrix[chosen * rows + at]!) < SINGULAR) return undefined;
    for (const table of [matrix, fresh]) {
      if (chosen === at) break;
      const kept = table.slice(at * rows, (at + 1) * rows);
      table.copyWithin(at * rows, chosen * rows, (chosen + 1) * rows);
      table.set(kept, chosen * rows);
    }
    const pivot = matrix[at * rows + at]!;
    const count = dividedRow(matrix, at * rows, rows, pivot, filled);
    const freshCount = dividedRow(fresh, at * rows, rows, pivot, freshFilled);
    for (let row = 0; row < rows; row += 1) {
      const rate = matrix[row * rows + at]!;
      if (row === at || rate === 0) continue;
      takeRow(matrix, row * rows, at * rows, rate, filled, count);
      takeRow(fresh, row * rows, at * rows, rate, freshFilled, freshCount);
    }
  }
  return fresh;
};

/** Builds the inverse anew from the columns that are in; left as it was where they have become singular. */
const freshInverse = (tableau: Tableau): void => {
  const { rows, basis, right, times } = tableau;
  const matrix = new Float64Array(rows * rows);
  for (let at = 0; at < rows; at += 1) eachEntry(tableau, basis[at]!, (row, value) => (matrix[row * rows + at] = value));
  const fresh = inverted(matrix, rows);
  if (fresh === undefined) return;
  tableau.inverse = fresh;
  for (let row = 0; row < rows; row += 1) {
    let sum = 0;
    for (let at = 0; at < rows; at += 1) sum += fresh[row * rows + at]! * right[at]!;
    times[row] = Math.max(0, sum);
  }
  freshWorths(tableau);
};

/** The column that gains most, or where the plan is stalled the first that gains. */
const entering = (tableau: Tableau, isStalled: boolean): number | undefined => {
  let chosen: number | undefined;
  let least = -COST_DUST;
  for (let row = 0; row < tableau.rows; row += 1) {
    const cost = reducedCost(tableau, -1 - row);
    if (cost >= least) continue;
    chosen = -1 - row;
    least = cost;
    if (isStalled) return chosen;
  }
  for (let id = 0; id < tableau.patterns.length; id += 1) {
    const cost = reducedCost(tableau, id);
    if (cost >= least) continue;
    chosen = id;
    least = cost;
    if (isStalled) return chosen;
  }
  return chosen;
};

/** The row whose column leaves for the one at hand, and how often that one comes in; -1 where none leaves. */
const leaving = ({ rows, times, column }: Tableau): { readonly leaves: number; readonly most: number } => {
  let leaves = -1;
  let most = Infinity;
  for (let row = 0; row < rows; row += 1) {
    if (column[row]! <= RATE_DUST) continue;
    const ratio = times[row]! / column[row]!;
    const isTie = leaves >= 0 && Math.abs(ratio - most) <= TIMES_DUST;
    if (isTie ? column[row]! <= column[leaves]! : ratio >= most) continue;
    most = Math.min(most, ratio);
    leaves = row;
  }
  return { leaves, most };
};

/** Brings a column into the basis, and tells how many steps it took; 0 where nothing leaves for it. */
const enter = (tableau: Tableau, id: number): number => {
  const { rows, inverse, times, basis, worth, column, filled } = tableau;
  column.fill(0);
  eachEntry(tableau, id, (at, value) => {
    for (let row = 0; row < rows; row += 1) column[row]! += inverse[row * rows + at]! * value;
  });
  const { leaves, most } = leaving(tableau);
  if (leaves < 0) return 0;
  const gain = reducedCost(tableau, id);
  for (let row = 0; row < rows; row += 1) times[row] = Math.max(0, times[row]! - most * column[row]!);
  times[leaves] = most;
  const from = leaves * rows;
  const count = dividedRow(inverse, from, rows, column[leaves]!, filled);
  let steps = ROW_STEPS * rows;
  for (let row = 0; row < rows; row += 1) {
    const rate = column[row]!;
    if (row === leaves || rate === 0) continue;
    takeRow(inverse, row * rows, from, rate, filled, count);
    steps += ENTRY_STEPS * count;
  }
  for (let place = 0; place < count; place += 1) worth[filled[place]!]! += gain * inverse[from + filled[place]!]!;
  basis[leaves] = id;
  tableau.sinceFresh += 1;
  if (tableau.sinceFresh >= Math.max(FRESH_INVERSE, 2 * rows)) {
    tableau.sinceFresh = 0;
    freshInverse(tableau);
    steps += FRESH_STEPS * rows * rows * rows;
  }
  return steps;
};

const costOf = (tableau: Tableau): number => {
  let sum = 0;
  for (let row = 0; row < tableau.rows; row += 1) sum += priceOf(tableau, tableau.basis[row]!) * tableau.times[row]!;
  return sum;
};

const answerOf = (tableau: Tableau): LinearAnswer => {
  const { size, rows, rowsOfStick, patterns, times, basis, worth } = tableau;
  const uses = [...basis]
    .flatMap((id, row) => (id >= 0 && times[row]! > TIMES_DUST ? [{ id, times: times[row]! }] : []))
    .sort((a, b) => a.id - b.id);
  return {
    cost: costOf(tableau),
    worth: worth.subarray(0, size),
    stickWorth: Float64Array.from(rowsOfStick, (of) => of.reduce((sum, row) => sum + worth[row]!, 0)),
    uses: uses.map((use) => ({ pattern: patterns[use.id]!, times: use.times })),
    shortage: [...basis].reduce((sum, id, row) => (id < -rows ? sum + times[row]! : sum), 0),
  };
};

/**
 * Revised primal simplex with a dense inverse (Dantzig and Orchard-Hays 1954, from memory). Columns: a pattern from 0 on; the surplus or
 * slack of row r is -1 - r; the shortage of row r is -1 - rows - r. Floating, so it only proposes: bounds are proven from its worths
 * anew.
 */
export const simplexMaster = (shelf: Shelf, limits: Limits): Master => {
  const tableau = tableauOf(shelf, limits);
  const { rows, patterns, prices } = tableau;
  return {
    add: (pattern) => {
      patterns.push(pattern);
      prices.push(shelf.sticks[pattern.stick]!.price);
    },
    solve: (effort) => {
      freshWorths(tableau);
      let stalled = 0;
      let last = Infinity;
      while (effort.left > 0) {
        const id = entering(tableau, stalled > STALLED);
        effort.left -= PATTERN_STEPS * (patterns.length + rows);
        const pivoted = id === undefined ? 0 : enter(tableau, id);
        effort.left -= pivoted;
        if (pivoted === 0) break;
        const now = costOf(tableau);
        stalled = now > last - RATE_DUST ? stalled + 1 : 0;
        last = now;
      }
      return answerOf(tableau);
    },
    close: () => undefined,
  };
};
