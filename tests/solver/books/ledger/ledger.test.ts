import { jobCost } from "../../../../src/solver/books/ledger/job-cost";
import { ledger } from "../../../../src/solver/books/ledger/ledger";
import { monthClose } from "../../../../src/solver/books/ledger/month-close";
import { rack } from "../../../../src/solver/books/ledger/rack";
import { sharedLedger } from "../../../../src/solver/books/ledger/shared-ledger";
import { stockLedger } from "../../../../src/solver/books/ledger/stock-ledger";
import { isProblem } from "../../../../src/solver/problem";
import { MONTH_MOVES } from "../worked-month";
import { MOVE_COLUMNS, readMoves, type TypedMove } from "../random-moves";

const booksOf = (moves: readonly TypedMove[]) => {
  const books = ledger<never>(readMoves(moves));
  expect(books.lines.filter(({ bad }) => bad !== undefined).map(({ bad }) => bad)).toEqual([]);
  return books;
};

/** Some cells of one row, counted as on the sheet, money and quantities as numbers. */
const lineOf = (moves: readonly TypedMove[], row: number) => {
  const line = stockLedger(booksOf(moves)).find((one) => one.row === row)!;
  const number = (value: unknown) => (typeof value === "object" && value !== null ? Number(value) : value);
  return Object.fromEntries(Object.entries(line).map(([key, value]) => [key, number(value)]));
};

const closesOf = (moves: readonly TypedMove[], month?: string): Readonly<Record<string, number>> => {
  const rows = monthClose(booksOf(moves));
  if (isProblem(rows)) throw new Error(rows.problem);
  const last = month ?? rows.at(-1)!.month;
  return Object.fromEntries(rows.filter((row) => row.month === last).map(({ where, closing }) => [String(where), closing.toNumber()]));
};

const oak = { item: "oak", unit: "each" } as const;
const bought: TypedMove = { ...oak, date: "2026-03-02", kind: "purchase", quantity: 10, cost: 500, invoice: "A-1" };
const atElm: TypedMove = { ...bought, job: "Elm 12" };
const issue = (quantity: number, date = "2026-03-03"): TypedMove => ({ ...oak, date, kind: "issue", quantity, job: "Elm 12" });

describe("returns", () => {
  test("take out what is credited; a fee for restocking stays in the rest", () => {
    const moves = [bought, { ...oak, date: "2026-03-04", kind: "return", quantity: 1, cost: 45, invoice: "A-1" } as const];
    // By hand: 500 - 45 = 455 for 9.
    expect(lineOf(moves, 3)).toMatchObject({ from: "rack", to: "", cost: 45, value: 45, onTheRack: 9 });
    expect(closesOf(moves)).toEqual({ rack: 455, total: 455 });
  });

  test("a purchase of less than nothing is one, and a line of its paper", () => {
    const moves: readonly TypedMove[] = [
      bought, { ...bought, date: "2026-03-04", quantity: -1, cost: -45 },
      { date: "2026-03-04", kind: "invoice total", cost: 455, invoice: "A-1" },
    ];
    expect(lineOf(moves, 3)).toMatchObject({ kind: "return", from: "rack", quantity: 1, cost: 45, value: 45 });
    expect(lineOf(moves, 4)).toMatchObject({ note: "agrees" });
  });

  test("of the last ones leave what was not credited to price differences", () => {
    const moves = [bought, { ...oak, date: "2026-03-04", kind: "return", quantity: 10, cost: 450 } as const];
    // By hand: 500 - 450 = 50.
    expect(closesOf(moves)).toEqual({ rack: 0, "price differences": 50, total: 50 });
    expect(lineOf(moves, 3)).toMatchObject({ value: 450, onTheRack: 0, note: "none left: 50.00 to price differences" });
  });
});

describe("counts", () => {
  const counted = (quantity: number | "none"): TypedMove => ({ ...oak, date: "2026-03-31", kind: "count", quantity });

  test("several of one item on one day add up", () => {
    const moves = [bought, counted(6), counted(3)];
    expect(lineOf(moves, 3)).toMatchObject({ note: "counted with row 4" });
    // By hand: 6 + 3 = 9 of 10 at 50.
    expect(lineOf(moves, 4)).toMatchObject({ to: "shrinkage", value: 50, onTheRack: 9, note: "counted 9 in 2 rows, book 10, short 1" });
  });

  test("over what the books have are worth the average, and make shrinkage less", () => {
    const moves = [bought, counted(12)];
    expect(lineOf(moves, 3)).toMatchObject({ to: "shrinkage", value: -100, onTheRack: 12, average: 50, note: "book 10, over 2" });
    expect(closesOf(moves)).toEqual({ rack: 600, shrinkage: -100, total: 500 });
  });

  test("over when the books have none are worth what the last ones were", () => {
    // By hand: the last 4 of 10 stood at 200, 50 each.
    const moves = [bought, issue(6), issue(4, "2026-03-04"), counted(2)];
    expect(lineOf(moves, 5)).toMatchObject({ value: -100, onTheRack: 2, note: "book 0, over 2" });
  });

  test("none", () => {
    expect(lineOf([bought, counted("none")], 3)).toMatchObject({ quantity: 0, value: 500, onTheRack: 0, note: "book 10, short 10" });
  });

  test("are at the close of the day, wherever they stand", () => {
    expect(lineOf([bought, { ...counted(6), date: "2026-03-03" }, issue(4)], 3)).toMatchObject({ note: "book 6, short 0" });
  });
});

describe("charges", () => {
  const line = (item: string, cost: number, more: Partial<TypedMove> = {}): TypedMove => (
    { date: "2026-03-02", kind: "purchase", item, unit: "each", quantity: 1, cost, invoice: "A-1", ...more }
  );
  const freight = (cost: number, more: Partial<TypedMove> = {}): TypedMove => (
    { date: "2026-03-20", kind: "freight", cost, invoice: "A-1", ...more }
  );

  test("of one item, or of one job, fall on its lines alone", () => {
    const lines = [line("oak", 100), line("ash", 300), line("ash", 100, { job: "Elm 12" })];
    expect(lineOf([...lines, freight(8, { item: "Ash" })], 5)).toMatchObject({ note: "on A-1: rack ash 6.00, Elm 12 ash 2.00" });
    expect(lineOf([...lines, freight(8, { job: "Elm 12" })], 5)).toMatchObject({ note: "on A-1: ash 8.00" });
  });

  test("without an invoice fall on the purchases of their day", () => {
    const moves = [line("oak", 100, { invoice: undefined! }), freight(8, { date: "2026-03-02", invoice: undefined! })].map(
      ({ invoice: _invoice, ...move }) => move,
    );
    expect(lineOf(moves, 3)).toMatchObject({ note: "on the purchases of 2026-03-02: oak 8.00" });
  });

  test("a debit note is a negative credit", () => {
    const moves = [bought, { date: "2026-03-09", kind: "credit", cost: -20, invoice: "A-1" } as const];
    expect(lineOf(moves, 2)).toMatchObject({ cost: 500, charges: 20, value: 520 });
  });

  test("scrap sold lowers the goods of the job", () => {
    const moves = [atElm, { ...oak, unit: "", date: "2026-03-09", kind: "credit", cost: 30, job: "Elm 12" } as const];
    expect(closesOf(moves)).toEqual({ rack: 0, "Elm 12": 470, total: 470 });
    const rows = jobCost(booksOf(moves), "Elm 12");
    // By hand: 470 + 30 = 500 for 10 are 50, as paid.
    expect(isProblem(rows) ? rows : [rows[0]!.price!.toNumber(), rows[0]!.charges.toNumber()]).toEqual([50, -30]);
  });

  test("late, for a job that has none of the goods left, are price differences", () => {
    const moves = [atElm, { ...oak, date: "2026-03-09", kind: "transfer", quantity: 10, job: "Elm 12", to: "rack" } as const,
      freight(18, { date: "2026-04-02" })];
    expect(closesOf(moves)).toEqual({ rack: 500, "Elm 12": 0, "price differences": 18, total: 518 });
    expect(lineOf(moves, 4)).toMatchObject({ value: 18, note: "late for A-1: Elm 12 oak 0.00, price differences 18.00" });
  });

  test("a late credit stops where the goods are worth nothing", () => {
    const moves = [atElm, { ...oak, date: "2026-03-09", kind: "transfer", quantity: 9, job: "Elm 12", to: "rack" } as const,
      { date: "2026-04-02", kind: "credit", cost: 80, invoice: "A-1" } as const];
    // By hand: one is left at 50; 80 - 50 = 30 is a difference of April.
    expect(closesOf(moves)).toEqual({ rack: 450, "Elm 12": 0, "price differences": -30, total: 420 });
  });

  test("lines of two months on one invoice: each in its own", () => {
    const moves = [line("oak", 100), line("ash", 100, { date: "2026-04-01" }), freight(10, { date: "2026-04-05" })];
    expect(lineOf(moves, 4)).toMatchObject({ note: "on A-1: ash 5.00; late for A-1: rack oak 5.00", value: 5 });
    expect(closesOf(moves, "2026-03")).toEqual({ rack: 100, total: 100 });
    expect(closesOf(moves)).toEqual({ rack: 210, total: 210 });
  });

  test("a note names a dozen shares, and how many more", () => {
    const lines = Array.from({ length: 15 }, (_, place) => line(`good ${place}`, 10));
    expect(String(lineOf([...lines, freight(15)], 17)["note"])).toMatch(/^on A-1: good 0 1\.00, .*good 11 1\.00, and 3 more$/);
  });
});

describe("offcuts, scrap and transfers", () => {
  const offcut = (more: Partial<TypedMove> = {}): TypedMove => ({
    item: "oak end", unit: "each", date: "2026-03-09", kind: "offcut", quantity: 1,
    job: "Elm 12", to: "rack", of: "oak", share: 0.4, ...more,
  });

  test("an offcut at less than its share leaves the rest in the job", () => {
    // By hand: 0.4 x 50 = 20; at 15 the job keeps 485 for 9.6.
    expect(closesOf([atElm, offcut()])).toEqual({ rack: 20, "Elm 12": 480, total: 500 });
    expect(closesOf([atElm, offcut({ cost: 15 })])).toEqual({ rack: 15, "Elm 12": 485, total: 500 });
    expect(lineOf([atElm, offcut({ cost: 15 })], 3)).toMatchObject({ cost: 15, value: 15, note: "0.400 of oak" });
  });

  test("at less than its share, of the last: the rest is a price difference", () => {
    const moves = [{ ...atElm, quantity: 1, cost: 50 }, offcut({ share: 1, cost: 15 })];
    expect(closesOf(moves)).toEqual({ rack: 15, "Elm 12": 0, "price differences": 35, total: 50 });
    expect(lineOf(moves, 3)).toMatchObject({ note: "1.000 of oak; none left: 35.00 to price differences" });
  });

  test("three thirds are one, as 15 digits have them", () => {
    const moves = [{ ...atElm, quantity: 1, cost: 50 }, offcut({ share: 0.333333333333333, quantity: 3 })];
    expect(closesOf(moves)).toEqual({ rack: 50, "Elm 12": 0, total: 50 });
    const two = [{ ...atElm, quantity: 2, cost: 50 }, offcut({ share: 0.666666666666667, quantity: 3 })];
    expect(closesOf(two)).toEqual({ rack: 50, "Elm 12": 0, total: 50 });
  });

  test("goods by the dozen are cut one by one", () => {
    const dozen: TypedMove = { ...atElm, unit: "dozen", quantity: 1, cost: 600 };
    // By hand: 0.4 of one of twelve at 50 is 20.
    expect(closesOf([dozen, offcut()])).toEqual({ rack: 20, "Elm 12": 580, total: 600 });
    expect(lineOf([dozen, offcut()], 3)).toMatchObject({ note: "0.033 of oak" });
  });

  test("scrap off the rack is waste of the shop, at a job it stays", () => {
    const scrap = (job = "rack"): TypedMove => ({ ...oak, date: "2026-03-09", kind: "scrap", quantity: 1, job });
    expect(closesOf([bought, scrap()])).toEqual({ rack: 450, waste: 50, total: 500 });
    expect(lineOf([bought, scrap()], 3)).toMatchObject({ from: "rack", to: "waste", value: 50, onTheRack: 9 });
    expect(closesOf([atElm, scrap("Elm 12")])).toEqual({ rack: 0, "Elm 12": 500, total: 500 });
    expect(lineOf([{ ...bought, job: "shop" }, scrap("shop")], 3)).toMatchObject({ to: "shop", note: "stays in the cost of the shop" });
  });

  test("what was scrapped and then carried off is said", () => {
    const moves: readonly TypedMove[] = [
      atElm, { ...oak, date: "2026-03-09", kind: "scrap", quantity: 4, job: "Elm 12" },
      { ...oak, date: "2026-03-10", kind: "transfer", quantity: 8, job: "Elm 12", to: "rack" },
    ];
    expect(lineOf(moves, 4)).toMatchObject({ note: "4 scrapped at Elm 12 and 2 left" });
  });

  test("the last ones take the cents that are left", () => {
    // By hand: 100 / 3 = 33.33; 66.67 / 2 = 33.335, half a cent away from zero 33.34; 33.33 left.
    const moves = [{ ...bought, quantity: 3, cost: 100 }, issue(1), issue(1), issue(1)];
    expect([3, 4, 5].map((row) => lineOf(moves, row)["value"])).toEqual([33.33, 33.34, 33.33]);
  });
});

test("goods that no row gives a unit are counted without one", () => {
  const moves: readonly TypedMove[] = [
    { ...bought, unit: "" }, { date: "2026-03-03", kind: "issue", item: "oak", quantity: 4, job: "Elm 12" },
  ];
  expect(lineOf(moves, 3)).toMatchObject({ unit: "", quantity: 4, value: 200 });
});

test("a row is rounded once, on reading: 38.005 is 38.01 as a row, 114.015 is 114.02", () => {
  expect(closesOf([{ ...bought, quantity: 3, cost: 114.015 }])["rack"]).toBe(114.02);
  expect(closesOf([1, 2, 3].map((quantity) => ({ ...bought, quantity, cost: 38.005 })))["rack"]).toBe(114.03);
});

describe("the worked month", () => {
  const typed = MONTH_MOVES.slice(1).map((row) =>
    Object.fromEntries(MOVE_COLUMNS.flatMap((column, place) => (row[place] === "" ? [] : [[column, row[place]]]))) as unknown as TypedMove,
  );
  /** Rows as text, in any order. */
  const unordered = (rows: readonly object[]): readonly string[] => rows.map((row) => JSON.stringify({ ...row, row: 0 })).sort();
  const said = (moves: readonly TypedMove[]) => {
    const books = booksOf(moves);
    const [costs, closes] = [jobCost(books, ""), monthClose(books)];
    if (isProblem(costs) || isProblem(closes)) throw new Error("no tables");
    return [stockLedger(books), rack(books, {}), costs, closes].map(unordered);
  };
  const first = said(typed);

  // No two rows of one day there are about the same goods, so no order of the rows means anything.
  test("says the same in any order of its rows: 20 of them", () => {
    let state = 18;
    const next = (below: number): number => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      return Math.floor((state / 2 ** 32) * below);
    };
    for (let time = 0; time < 20; time += 1) {
      const shuffled = [...typed];
      for (let at = shuffled.length - 1; at > 0; at -= 1) {
        const other = next(at + 1);
        [shuffled[at], shuffled[other]] = [shuffled[other]!, shuffled[at]!];
      }
      // Rows of one day as they stand name the lines of an invoice: those of 2 March stay in their order.
      const isLine = ({ date, kind }: TypedMove): boolean => date === "2026-03-02" && kind === "purchase";
      const lines = typed.filter(isLine).values();
      expect(said(shuffled.map((move) => (isLine(move) ? lines.next().value! : move)))).toEqual(first);
    }
  });

  test("is reckoned once for all who ask", () => {
    const moves = readMoves(typed);
    expect(sharedLedger(readMoves(typed))).toBe(sharedLedger(moves));
    expect(sharedLedger(readMoves(typed.slice(1).map((move) => move)))).not.toBe(sharedLedger(moves));
  });
});
