import { type Effort } from "./effort";
import { type Limits, type LinearAnswer, type Master, shortagePrice } from "./master";
import { type Pattern } from "./pattern";
import { piecesWanted, type Shelf } from "./shelf";

/** Floating-point dust: reduced costs, rates and times below these are none. */
const COST_DUST = 1e-7;
const RATE_DUST = 1e-9;
const TIMES_DUST = 1e-9;
const SINGULAR = 1e-11;
/** Pivots after which the inverse is built anew, so that rounding does not pile up. */
const FRESH_INVERSE = 100;
/** Pivots without gain after which the first column in order enters (Bland 1977, from memory): no cycles. */
const STALLED = 300;

/** Steps of a pivot for each entry of the inverse, its share of a fresh inverse in them, and of the look at one pattern. */
const PIVOT_STEPS = 4;
const PATTERN_STEPS = 12;

interface LimitRow {
  readonly stick: number;
  readonly isMost: boolean;
  readonly value: number;
}

/**
 * Revised primal simplex with a dense inverse (Dantzig and Orchard-Hays 1954, from memory). Columns: a pattern from 0 on; the surplus or slack of
 * row r is -1 - r; the shortage of row r is -1 - rows - r. Floating, so it only proposes: bounds are proven from its worths anew.
 */
export const simplexMaster = (shelf: Shelf, limits: Limits): Master => {
  const { kinds, sticks } = shelf;
  const pieces = piecesWanted(shelf);
  const size = kinds.length;
  const limitRows: LimitRow[] = sticks.flatMap((_, stick) => [
    ...(limits.most[stick]! < pieces ? [{ stick, isMost: true, value: limits.most[stick]! }] : []),
    ...(limits.least[stick]! > 0 ? [{ stick, isMost: false, value: limits.least[stick]! }] : []),
  ]);
  const rows = size + limitRows.length;
  const rowsOfStick = sticks.map((_, stick) => limitRows.flatMap((row, place) => (row.stick === stick ? [size + place] : [])));
  const right = Float64Array.from([...kinds.map((kind) => kind.wanted), ...limitRows.map((row) => row.value)]);
  const sign = Float64Array.from({ length: rows }, (_, row) => (row >= size && limitRows[row - size]!.isMost ? 1 : -1));
  const shortage = shortagePrice(shelf);

  const patterns: Pattern[] = [];
  const prices: number[] = [];
  let inverse = new Float64Array(rows * rows);
  const times = Float64Array.from(right);
  const basis = new Int32Array(rows);
  const worth = new Float64Array(rows);
  const column = new Float64Array(rows);
  let sinceFresh = 0;
  for (let row = 0; row < rows; row += 1) {
    inverse[row * rows + row] = 1;
    basis[row] = sign[row]! > 0 ? -1 - row : -1 - rows - row;
  }

  const price = (id: number): number => (id >= 0 ? prices[id]! : id < -rows ? shortage : 0);

  const eachEntry = (id: number, visit: (row: number, value: number) => void): void => {
    if (id < -rows) return visit(-1 - rows - id, 1);
    if (id < 0) return visit(-1 - id, sign[-1 - id]!);
    const { stick, kinds: held, counts } = patterns[id]!;
    for (let place = 0; place < held.length; place += 1) visit(held[place]!, counts[place]!);
    for (const row of rowsOfStick[stick]!) visit(row, 1);
  };

  const reducedCost = (id: number): number => {
    if (id < 0) return -sign[-1 - id]! * worth[-1 - id]!;
    const { stick, kinds: held, counts } = patterns[id]!;
    let cost = prices[id]!;
    for (let place = 0; place < held.length; place += 1) cost -= worth[held[place]!]! * counts[place]!;
    for (const row of rowsOfStick[stick]!) cost -= worth[row]!;
    return cost;
  };

  const freshWorths = (): void => {
    worth.fill(0);
    for (let row = 0; row < rows; row += 1) {
      const each = price(basis[row]!);
      if (each === 0) continue;
      for (let at = 0; at < rows; at += 1) worth[at]! += each * inverse[row * rows + at]!;
    }
  };

  /** Gauss-Jordan with the largest pivot of each column; left as it was where the basis has become singular. */
  const freshInverse = (): void => {
    const matrix = new Float64Array(rows * rows);
    const fresh = new Float64Array(rows * rows);
    for (let at = 0; at < rows; at += 1) {
      eachEntry(basis[at]!, (row, value) => (matrix[row * rows + at] = value));
      fresh[at * rows + at] = 1;
    }
    for (let at = 0; at < rows; at += 1) {
      let chosen = at;
      for (let row = at + 1; row < rows; row += 1) {
        if (Math.abs(matrix[row * rows + at]!) > Math.abs(matrix[chosen * rows + at]!)) chosen = row;
      }
      if (Math.abs(matrix[chosen * rows + at]!) < SINGULAR) return;
      for (const table of [matrix, fresh]) {
        if (chosen === at) break;
        const kept = table.slice(at * rows, (at + 1) * rows);
        table.copyWithin(at * rows, chosen * rows, (chosen + 1) * rows);
        table.set(kept, chosen * rows);
      }
      const pivot = matrix[at * rows + at]!;
      for (let each = 0; each < rows; each += 1) {
        matrix[at * rows + each]! /= pivot;
        fresh[at * rows + each]! /= pivot;
      }
      for (let row = 0; row < rows; row += 1) {
        const rate = matrix[row * rows + at]!;
        if (row === at || rate === 0) continue;
        for (let each = 0; each < rows; each += 1) {
          matrix[row * rows + each]! -= rate * matrix[at * rows + each]!;
          fresh[row * rows + each]! -= rate * fresh[at * rows + each]!;
        }
      }
    }
    inverse = fresh;
    for (let row = 0; row < rows; row += 1) {
      let sum = 0;
      for (let at = 0; at < rows; at += 1) sum += inverse[row * rows + at]! * right[at]!;
      times[row] = Math.max(0, sum);
    }
    freshWorths();
  };

  const entering = (isStalled: boolean): number | undefined => {
    let chosen: number | undefined;
    let least = -COST_DUST;
    for (let row = 0; row < rows; row += 1) {
      const cost = reducedCost(-1 - row);
      if (cost >= least) continue;
      chosen = -1 - row;
      least = cost;
      if (isStalled) return chosen;
    }
    for (let id = 0; id < patterns.length; id += 1) {
      const cost = reducedCost(id);
      if (cost >= least) continue;
      chosen = id;
      least = cost;
      if (isStalled) return chosen;
    }
    return chosen;
  };

  /** Brings a column into the basis; false where nothing leaves for it. */
  const enter = (id: number): boolean => {
    column.fill(0);
    eachEntry(id, (at, value) => {
      for (let row = 0; row < rows; row += 1) column[row]! += inverse[row * rows + at]! * value;
    });
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
    if (leaves < 0) return false;
    const gain = reducedCost(id);
    for (let row = 0; row < rows; row += 1) times[row] = Math.max(0, times[row]! - most * column[row]!);
    times[leaves] = most;
    const pivot = column[leaves]!;
    const from = leaves * rows;
    for (let at = 0; at < rows; at += 1) inverse[from + at]! /= pivot;
    for (let row = 0; row < rows; row += 1) {
      const rate = column[row]!;
      if (row === leaves || rate === 0) continue;
      const to = row * rows;
      for (let at = 0; at < rows; at += 1) inverse[to + at]! -= rate * inverse[from + at]!;
    }
    for (let at = 0; at < rows; at += 1) worth[at]! += gain * inverse[from + at]!;
    basis[leaves] = id;
    sinceFresh += 1;
    if (sinceFresh >= FRESH_INVERSE) {
      sinceFresh = 0;
      freshInverse();
    }
    return true;
  };

  const cost = (): number => {
    let sum = 0;
    for (let row = 0; row < rows; row += 1) sum += price(basis[row]!) * times[row]!;
    return sum;
  };

  const solve = (effort: Effort): LinearAnswer => {
    freshWorths();
    let stalled = 0;
    let last = Infinity;
    while (effort.left > 0) {
      const id = entering(stalled > STALLED);
      effort.left -= PIVOT_STEPS * rows * rows + PATTERN_STEPS * patterns.length;
      if (id === undefined || !enter(id)) break;
      const now = cost();
      stalled = now > last - RATE_DUST ? stalled + 1 : 0;
      last = now;
    }
    const uses = [...basis].flatMap((id, row) => (id >= 0 && times[row]! > TIMES_DUST ? [{ id, times: times[row]! }] : [])).sort((a, b) => a.id - b.id);
    return {
      cost: cost(),
      worth: worth.subarray(0, size),
      stickWorth: Float64Array.from(rowsOfStick, (of) => of.reduce((sum, row) => sum + worth[row]!, 0)),
      uses: uses.map((use) => ({ pattern: patterns[use.id]!, times: use.times })),
      shortage: [...basis].reduce((sum, id, row) => (id < -rows ? sum + times[row]! : sum), 0),
    };
  };

  return {
    add: (pattern) => {
      patterns.push(pattern);
      prices.push(sticks[pattern.stick]!.price);
    },
    solve,
    close: () => undefined,
  };
};
