import { jobCost } from "../../../../src/solver/books/ledger/job-cost";
import { ledger } from "../../../../src/solver/books/ledger/ledger";
import { monthClose } from "../../../../src/solver/books/ledger/month-close";
import { rack } from "../../../../src/solver/books/ledger/rack";
import { stockLedger } from "../../../../src/solver/books/ledger/stock-ledger";
import { isProblem } from "../../../../src/solver/problem";
import { readMoves, type TypedMove } from "../random-moves";

const goods = { item: "goods", unit: "each" } as const;

const booksOf = (moves: readonly TypedMove[]) => {
  const books = ledger<never>(readMoves(moves));
  expect(books.lines.filter(({ bad }) => bad !== undefined)).toEqual([]);
  return books;
};

const issuesOf = (moves: readonly TypedMove[]): readonly number[] =>
  stockLedger(booksOf(moves)).filter(({ kind }) => kind === "issue").map(({ value }) => value!.toNumber());

const heldOf = (moves: readonly TypedMove[]) => {
  const [held] = rack(booksOf(moves), {});
  return { quantity: held!.quantity!.toNumber(), value: held!.value.toNumber(), average: held!.average!.toNumber() };
};

const closing = (moves: readonly TypedMove[], where: string): number => {
  const rows = monthClose(booksOf(moves));
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows.filter((row) => row.where === where).at(-1)!.closing.toNumber();
};

describe("OpenStax, Principles of Accounting, Volume 1, 10.3, The Spy Who Loves You, perpetual weighted average", () => {
  const moves: readonly TypedMove[] = [
    { ...goods, date: "2026-07-01", kind: "opening", quantity: 150, cost: 3150 },
    { ...goods, date: "2026-07-05", kind: "issue", job: "sales", quantity: 120 },
    { ...goods, date: "2026-07-10", kind: "purchase", quantity: 225, cost: 6075 },
    { ...goods, date: "2026-07-15", kind: "issue", job: "sales", quantity: 180 },
    { ...goods, date: "2026-07-25", kind: "purchase", quantity: 210, cost: 6930 },
  ];
  const issued = issuesOf(moves);
  const held = heldOf(moves);

  test("issues of 2,520 and 4,732, closing 8,902: the book rounds its averages, and owns up to a difference of a dollar", () => {
    expect(issued[0]).toBe(2520);
    expect(Math.abs(issued[1]! - 4732)).toBeLessThan(1);
    expect(Math.abs(issued[0]! + issued[1]! - 7253)).toBeLessThan(1);
    expect(Math.abs(held.value - 8902)).toBeLessThan(1);
    expect(held.quantity).toBe(285);
    expect(held.average).toBeCloseTo(31.24, 1);
  });

  // By hand: 630 + 6,075 = 6,705 for 255; 180 x 6,705 / 255 = 4,732.9412; 6,705 - 4,732.94 + 6,930 = 8,902.06.
  test("not rounded on the way: 4,732.94 and 8,902.06", () => expect([issued[1], held.value]).toEqual([4732.94, 8902.06]));

  test("issued and closing are 16,155 together by any formula, as by the book's first-in first-out", () => {
    expect(Math.round((issued[0]! + issued[1]! + held.value) * 100)).toBe(16_155_00);
  });
});

// A review question for accountants, Metro Co., moving average: 1.75 after the second lot, 900 issued are 1,575, 3,225 left for 1,100, at
// 2.93.
test("Metro Co.", () => {
  const moves: readonly TypedMove[] = [
    { ...goods, date: "2026-01-01", kind: "opening", quantity: 1000, cost: 1000 },
    { ...goods, date: "2026-01-07", kind: "purchase", quantity: 600, cost: 1800 },
    { ...goods, date: "2026-01-20", kind: "issue", job: "sales", quantity: 900 },
    { ...goods, date: "2026-01-25", kind: "purchase", quantity: 400, cost: 2000 },
  ];
  expect(issuesOf(moves)).toEqual([1575]);
  expect(stockLedger(booksOf(moves))[1]!.average!.toNumber()).toBe(1.75);
  const held = heldOf(moves);
  expect([held.quantity, held.value, Math.round(held.average * 100)]).toEqual([1100, 3225, 293]);
});

// Double Entry Bookkeeping, Inventory Shrinkage: book 2,000 at 14, 1,895 counted, 105 short, 1,470.
test("shrinkage at a count", () => {
  const moves: readonly TypedMove[] = [
    { ...goods, date: "2026-01-01", kind: "opening", quantity: 2000, cost: 28_000 },
    { ...goods, date: "2026-01-31", kind: "count", quantity: 1895 },
  ];
  expect(closing(moves, "shrinkage")).toBe(1470);
  expect(heldOf(moves)).toEqual({ quantity: 1895, value: 26_530, average: 14 });
  expect(stockLedger(booksOf(moves))[1]!.note).toBe("book 2000, short 105");
});

// An enterprise software manual, Allocating Freight Costs by Item for Inbound Transactions: 12.50 by 50, 60 and 90 is 3.13, 3.75 and 5.62.
test("freight of one invoice, by the cost of its lines", () => {
  const line = (item: string, cost: number): TypedMove => (
    { date: "2026-01-05", kind: "purchase", item, unit: "each", quantity: 1, cost, invoice: "F-1" }
  );
  const moves: readonly TypedMove[] = [
    line("pine", 50), line("ash", 60), line("walnut", 90), { date: "2026-01-20", kind: "freight", cost: 12.5, invoice: "F-1" },
  ];
  expect(stockLedger(booksOf(moves)).slice(0, 3).map(({ charges }) => charges!.toNumber())).toEqual([3.13, 3.75, 5.62]);
});

// OpenStax, Principles of Accounting, Volume 2, 4.3 to 4.5, Dinosaur Vinyl, job MAC001: materials 300 + 100 + 60 + 60 in production, 120 +
// 60 in finishing, 520 and 180. (Its labour and overhead are no goods.)
test("materials of one job", () => {
  const drawn: readonly (readonly [string, number])[] = [
    ["vinyl", 300], ["ink", 100], ["ink", 60], ["paper", 60], ["grommets", 120], ["wood", 60],
  ];
  const moves = drawn.map(([item, cost], row): TypedMove => (
    { date: `2026-01-${String(row + 10)}`, kind: "purchase", job: "MAC001", item, unit: "each", quantity: 1, cost }
  ));
  const rows = jobCost(booksOf(moves), "MAC001");
  if (isProblem(rows)) throw new Error(rows.problem);
  expect(rows.map(({ item, cost }) => [item, cost.toNumber()])).toEqual([
    ["vinyl", 300], ["ink", 160], ["paper", 60], ["grommets", 120], ["wood", 60],
  ]);
  expect(closing(moves, "MAC001")).toBe(700);
});
