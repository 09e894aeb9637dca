import { jobCost } from "../../../../src/solver/books/ledger/job-cost";
import { ledger } from "../../../../src/solver/books/ledger/ledger";
import { monthClose } from "../../../../src/solver/books/ledger/month-close";
import { rack } from "../../../../src/solver/books/ledger/rack";
import { stockLedger } from "../../../../src/solver/books/ledger/stock-ledger";
import { dayOfText } from "../../../../src/solver/books/day";
import { isProblem, type Problem } from "../../../../src/solver/problem";
import { readMoves, type TypedMove } from "../random-moves";

const booksOf = (moves: readonly TypedMove[]) => ledger<never>(readMoves(moves));

/** What is wrong with the rows that are wrong, by row; rows are counted from 2. */
const faultsOf = (moves: readonly TypedMove[]): Readonly<Record<number, string>> =>
  Object.fromEntries(booksOf(moves).lines.flatMap(({ move, bad }) =>
    bad === undefined ? [] : [[move.row, (bad as Problem<string>).problem]]));

const lineOf = (moves: readonly TypedMove[], row: number) => {
  const line = stockLedger(booksOf(moves)).find((one) => one.row === row)!;
  if (line.bad !== undefined) throw new Error(JSON.stringify(line.bad));
  const plain = (value: unknown) => (typeof value === "object" && value !== null ? Number(value) : value);
  return Object.fromEntries(Object.entries(line).map(([key, value]) => [key, plain(value)]));
};

const closesOf = (moves: readonly TypedMove[]): Readonly<Record<string, Readonly<Record<string, number>>>> => {
  const rows = monthClose(booksOf(moves));
  if (isProblem(rows)) throw new Error(rows.problem);
  const months = [...new Set(rows.map(({ month }) => month))];
  return Object.fromEntries(months.map((month) =>
    [month, Object.fromEntries(rows.filter((row) => row.month === month).map((row) => [String(row.where), row.closing.toNumber()]))]));
};

const oak = { item: "oak", unit: "each" } as const;
const DAY = "2026-03-02";
const bought: TypedMove = { ...oak, date: DAY, kind: "purchase", quantity: 10, cost: 500, invoice: "A-1" };
const atElm: TypedMove = { ...bought, job: "Elm 12" };

// A day begins with what was there, then what came and what it cost to come; then what was done; a count is at its close.
describe("rows of one day", () => {
  test("openings, purchases, what is on their papers, all else as it stands, counts", () => {
    const moves: readonly TypedMove[] = [
      { ...oak, date: DAY, kind: "count", quantity: 9 },
      { ...oak, date: DAY, kind: "scrap", quantity: 1 },
      { ...bought, quantity: -1, cost: -50 },
      { date: DAY, kind: "invoice total", cost: 460, invoice: "A-1" },
      { date: DAY, kind: "freight", cost: 10, invoice: "A-1" },
      { ...oak, date: DAY, kind: "issue", quantity: 1, job: "Elm 12" },
      { date: DAY, kind: "credit", cost: 5, job: "Elm 12", item: "oak" },
      bought,
      { ...oak, date: DAY, kind: "opening", quantity: 2, cost: 100 },
    ];
    expect(booksOf(moves).lines.map(({ kind }) => kind)).toEqual([
      "opening", "purchase", "invoice total", "freight", "scrap", "return", "issue", "credit", "count",
    ]);
    expect(faultsOf(moves)).toEqual({});
  });

  test("a day before another comes first, wherever it stands", () => {
    const moves: readonly TypedMove[] = [bought, { ...oak, date: "2026-03-01", kind: "opening", quantity: 2, cost: 100 }];
    expect(booksOf(moves).lines.map(({ move }) => move.row)).toEqual([3, 2]);
  });
});

test("a job that is spelt like another is said where goods come from and where they go, once", () => {
  const moves: readonly TypedMove[] = [
    { ...atElm, job: "Birch" }, { ...oak, date: "2026-03-03", kind: "transfer", quantity: 1, job: "Birch", to: "Brich" },
    { ...oak, date: "2026-03-04", kind: "scrap", quantity: 1, job: "Brich" },
  ];
  const like = (name: string, row: number) => `like job "${name}" in row ${row}: same job?`;
  expect([2, 3, 4].map((row) => lineOf(moves, row)["note"])).toEqual([
    like("Brich", 3), `${like("Brich", 3)}; ${like("Birch", 2)}`, `stays in the cost of the job; ${like("Birch", 2)}`,
  ]);
});

test("no more is taken than there is, whatever takes it; all of it may be", () => {
  const acts: readonly TypedMove[] = [
    { ...oak, date: "2026-03-03", kind: "return", quantity: 10, cost: 5 }, { ...oak, date: "2026-03-03", kind: "scrap", quantity: 10 },
    { ...oak, date: "2026-03-03", kind: "issue", quantity: 10, job: "Elm 12" }, { ...bought, date: "2026-03-03", quantity: -10, cost: -5 },
    { item: "end", unit: "each", date: "2026-03-03", kind: "offcut", quantity: 10, of: "oak", share: 1, to: "rack" },
  ];
  for (const act of acts) {
    expect([act.kind, faultsOf([bought, act])]).toEqual([act.kind, {}]);
    const quantity = Number(act["quantity"]) * 1.1;
    expect([act.kind, faultsOf([bought, { ...act, quantity }])]).toEqual([act.kind, { 3: "not-on-hand" }]);
  }
});

test("what there is stands beside what was wanted", () => {
  const there = (...moves: readonly TypedMove[]) =>
    booksOf(moves).lines.map(({ bad }) => (bad as Problem<string> | undefined)?.details).find((details) => details !== undefined);
  const issue: TypedMove = { ...oak, date: "2026-03-03", kind: "issue", quantity: 12, job: "Elm 12" };
  expect(there(bought, issue)).toMatchObject({
    item: "oak", wanted: "12", there: "10", place: "on the rack", act: "issue", date: "2026-03-03",
  });
  expect(there(atElm, issue)).toMatchObject({ there: "0", place: "on the rack" });
  expect(there({ ...bought, job: "shop" }, { ...issue, kind: "scrap", job: "shop" })).toMatchObject({ there: "10", place: "in the shop" });
  expect(there(atElm, { ...issue, kind: "scrap" })).toMatchObject({ there: "10", place: "at Elm 12", act: "scrap" });
});

test("a row that could not be read says why, and what hangs on it follows", () => {
  const rows = readMoves([bought, { ...bought, item: "ash" }, { ...oak, date: "2026-03-05", kind: "scrap", quantity: 1 }]);
  const [first, second, third] = rows;
  const unread = (bad: string, read: Readonly<Record<string, unknown>>) =>
    ledger<string>([{ row: 2, label: 2, bad, read }, second!, third!]);
  const books = unread("not a number", { ...first! });
  expect(books.lines.map(({ move, bad }) => [move.row, typeof bad === "object" ? bad.details["first"] : bad])).toEqual([
    [2, "not a number"], [3, undefined], [4, 2],
  ]);
  // Of what is not even a move it is not known where it lies: it may be anywhere.
  const nowhere = unread("not a kind", { item: "oak", unit: "each", date: first!.date, job: "Elm 12" });
  expect(nowhere.lines.filter(({ bad }) => bad !== undefined).map(({ move }) => move.row)).toEqual([2, 4]);
  // Without a day it is before all.
  const undated = unread("not a date", { item: "oak", unit: "each", kind: "purchase", quantity: 1, cost: first!.cost! });
  expect(undated.lines.map(({ move, bad }) => [move.row, bad !== undefined])).toEqual([[2, true], [3, false], [4, true]]);
});

// Ten of the whole stand at 500, 50 each. Two offcuts, each a half of one, are one of it: 50; 24 in of halves of a foot are a foot.
test.each([
  ["", "", 2], ["each", "", 2], ["", "each", 2], ["each", "each", 2], ["", "ft", 2], ["each", "ft", 2], ["ft", "each", 2], ["ft", "", 2],
  ["ft", "ft", 2], ["ft", "in", 24], ["bf", "each", 2], ["bf", "ft", 2],
])("of a whole in %p, offcuts in %p: %d", (unit, offcutUnit, quantity) => {
  const end: TypedMove = {
    item: "end", unit: offcutUnit, date: "2026-03-03", kind: "offcut", quantity, job: "Elm 12", to: "rack", of: "whole", share: 0.5,
  };
  expect(lineOf([{ ...atElm, item: "whole", unit }, end], 3)).toMatchObject({ value: 50, note: "1.000 of whole" });
});

test("a fault calls goods as they were called first, and a row without goods by its kind", () => {
  const itemOf = (...moves: readonly TypedMove[]) =>
    booksOf(moves).lines.map(({ bad }) => (bad as Problem<string> | undefined)?.details).find((details) => details !== undefined)?.["item"];
  const scrap: TypedMove = { ...oak, date: "2026-03-03", kind: "scrap", quantity: -1 };
  expect(itemOf({ ...bought, item: "Oak blank" }, { ...scrap, item: "oak BLANK" })).toBe("Oak blank");
  expect(itemOf(bought, { ...scrap, item: "ash" })).toBe("ash");
  expect(itemOf(bought, { date: "2026-03-03", kind: "invoice total", cost: 5 })).toBe("invoice total");
});

test("what one is worth on the rack stands there as long as there is one", () => {
  const issue = (quantity: number): TypedMove => ({ ...oak, date: "2026-03-03", kind: "issue", quantity, job: "Elm 12" });
  expect(lineOf([bought, issue(9)], 3)).toMatchObject({ onTheRack: 1, average: 50 });
  expect(lineOf([bought, issue(10)], 3)).toMatchObject({ onTheRack: 0 });
  expect(lineOf([bought, issue(10)], 3)).not.toHaveProperty("average");
  expect(lineOf([atElm], 2)).not.toHaveProperty("onTheRack");
});

// A dash may mean nothing, a question mark that nobody knows: money would gather under it unseen.
test("a name in marks alone is none, in any column", () => {
  const transfer: TypedMove = { ...oak, date: "2026-03-03", kind: "transfer", quantity: 1, job: "Elm 12", to: "rack" };
  const end: TypedMove = { ...transfer, item: "end", kind: "offcut", of: "oak", share: 0.5 };
  const freight: TypedMove = { date: "2026-03-03", kind: "freight", cost: 5, invoice: "A-1" };
  const cases: readonly (readonly [TypedMove, string])[] = [
    [{ ...bought, item: "?" }, "name the goods"],
    [{ ...freight, item: "-" }, "name the goods, or leave it empty"],
    [{ ...bought, job: "—" }, "write the job or shop, or leave it empty for the rack"],
    [{ ...transfer, to: "..." }, "write the job it goes to, shop or rack"],
    [{ ...end, to: "..." }, "write the job it goes to, shop or rack"],
    [{ ...bought, to: "..." }, "leave it empty"],
    [{ ...bought, invoice: "#" }, "write the number of the paper, or leave it empty"],
    [{ ...end, of: "*" }, "name what the offcut was cut from"],
    [{ ...bought, of: "*" }, "leave it empty"],
  ];
  for (const [move, instead] of cases) {
    const line = booksOf([{ ...atElm, date: "2026-03-01" }, move]).lines.find(({ move: { row } }) => row === 3);
    const bad = line?.bad as Problem<string> | undefined;
    expect([move, bad?.problem, bad?.details["instead"]]).toEqual([move, "marks-alone", instead]);
  }
  expect(faultsOf([{ ...bought, item: 42, job: "№ 7", invoice: 9 }])).toEqual({});
});

describe("places", () => {
  test.each<readonly [string | undefined, string]>([
    [undefined, "rack"], ["Rack", "rack"], [" rack ", "rack"], ["SHOP", "shop"], ["Elm 12", "Elm 12"],
  ])("goods bought for %p are at %s", (job, where) => {
    const closes = closesOf([{ ...bought, ...(job === undefined ? {} : { job }) }])["2026-03"];
    expect(closes).toEqual(where === "rack" ? { rack: 500, total: 500 } : { rack: 0, [where]: 500, total: 500 });
  });

  test("a job is one however its name is written, and called as it was first", () => {
    expect(closesOf([atElm, { ...atElm, job: "elm  12", invoice: "A-2" }])["2026-03"]).toEqual({ rack: 0, "Elm 12": 1000, total: 1000 });
  });

  test.each(["waste", "Shrinkage", "price differences", "TOTAL"])("%s is a name of the books, in either column", (name) => {
    const transfer: TypedMove = { ...oak, date: DAY, kind: "transfer", quantity: 1, job: "Elm 12", to: name };
    expect(faultsOf([{ ...bought, job: name }])).toEqual({ 2: "own-name" });
    expect(faultsOf([atElm, transfer])).toEqual({ 3: "own-name" });
  });

  test("where goods go may be said once more, and not otherwise", () => {
    const issue: TypedMove = { ...oak, date: DAY, kind: "issue", quantity: 1, job: "Elm 12" };
    const opening: TypedMove = { ...oak, date: "2026-03-01", kind: "opening", quantity: 1, cost: 50, job: "Elm 12" };
    expect(faultsOf([bought, { ...issue, to: "elm 12" }])).toEqual({});
    expect(faultsOf([{ ...opening, to: "Elm 12" }])).toEqual({});
    expect(faultsOf([{ ...atElm, to: "Elm 12" }, { ...bought, to: "rack" }])).toEqual({});
    expect(faultsOf([{ ...atElm, to: "Ash 9" }])).toEqual({ 2: "to-not-read" });
    expect(faultsOf([atElm, { ...oak, date: DAY, kind: "scrap", quantity: 1, job: "Elm 12", to: "Elm 12" }])).toEqual({ 3: "to-not-read" });
    expect(faultsOf([atElm, { ...oak, date: DAY, kind: "return", quantity: 1, cost: 5, job: "Elm 12", to: "rack" }])).toEqual({
      3: "to-not-read",
    });
    expect(faultsOf([bought, { date: DAY, kind: "freight", cost: 5, invoice: "A-1", to: "Elm 12" }])).toEqual({});
  });
});

describe("signs", () => {
  const row = (kind: TypedMove["kind"], quantity: number, cost?: number): TypedMove =>
    ({
      ...oak, date: "2026-03-03", kind, quantity, ...(cost === undefined ? {} : { cost }),
      ...(kind === "issue" ? { job: "Elm 12" } : {}),
    });

  // Money and goods go the same way; less than nothing is a return where it is bought, and nothing anywhere else.
  test.each<readonly [TypedMove, string | undefined]>([
    [row("purchase", 1, 50), undefined], [row("purchase", -1, -50), undefined], [row("purchase", 1, -50), "signs-differ"],
    [row("purchase", -1, 50), "signs-differ"], [row("purchase", -1), "no-cost"], [row("return", 1, 50), undefined],
    [row("return", 1, -50), "signs-differ"], [row("return", -1, -50), "quantity-of-nothing"], [row("scrap", -1), "quantity-of-nothing"],
    [row("issue", 1), undefined], [row("issue", 0), "no-quantity"], [row("count", 0), undefined], [row("count", -1), "quantity-of-nothing"],
    [row("issue", 1, 5), "cost-at-average"], [row("scrap", 1, 5), "cost-at-average"], [row("count", 1, 5), "cost-at-average"],
    [row("return", 1), "no-cost"],
  ])("%j: %s", (move, fault) => {
    expect(faultsOf([bought, move])).toEqual(fault === undefined ? {} : { 3: fault });
  });

  test("an opening of less than nothing has no sense", () => {
    const opening: TypedMove = { ...oak, date: DAY, kind: "opening", quantity: 1, cost: -5 };
    expect(faultsOf([opening])).toEqual({ 2: "signs-differ" });
    expect(faultsOf([{ ...opening, quantity: -1 }])).toEqual({ 2: "quantity-of-nothing" });
  });
});

describe("a name that goods which are short may be under", () => {
  const hint = (has: string, wanted: string): unknown => {
    const moves: readonly TypedMove[] = [
      { ...bought, item: has }, { ...bought, item: wanted, quantity: 1, cost: 50 },
      { ...oak, date: "2026-03-03", kind: "issue", item: wanted, quantity: 5, job: "Elm 12" },
    ];
    const bad = booksOf(moves).lines.find(({ move }) => move.row === 4)?.bad as Problem<string> | undefined;
    return bad?.details?.["near"];
  };

  // One slip of the hand, two from nine letters and figures on; a figure may be wrong too.
  test.each([
    ["oak 42", "oak 43", ' (like "oak 42" in row 2)'], ["oak 42", "oak 36", ""],
    ["oak blank 42", "oak blank 36", ' (like "oak blank 42" in row 2)'],
    ["oak blank 42", "oak blank 421", ' (like "oak blank 42" in row 2)'], ["oak blank 142", "oak blank 536", ""], ["oak", "ash", ""],
  ])("%s and %s", (has, wanted, near) => {
    expect(hint(has, wanted)).toBe(near);
  });
});

describe("what a wrong row makes uncertain", () => {
  const after = { date: "2026-03-09" } as const;
  const bigIssue: TypedMove = { ...oak, date: "2026-03-03", kind: "issue", quantity: 99, job: "Elm 12" };

  test("both ends of what moves, and nothing else", () => {
    const moves: readonly TypedMove[] = [
      bought, { ...atElm, invoice: "A-2" }, { ...atElm, job: "Ash 9", invoice: "A-3" }, bigIssue,
      { ...oak, ...after, kind: "scrap", quantity: 1 }, { ...oak, ...after, kind: "scrap", quantity: 1, job: "Elm 12" },
      { ...oak, ...after, kind: "scrap", quantity: 1, job: "Ash 9" },
    ];
    expect(faultsOf(moves)).toEqual({ 5: "not-on-hand", 6: "after-bad-row", 7: "after-bad-row" });
  });

  test("what an offcut was cut from, and the offcut", () => {
    const end: TypedMove = {
      item: "end", unit: "each", date: "2026-03-03", kind: "offcut", quantity: 99, job: "Elm 12", to: "rack", of: "oak", share: 0.5,
    };
    const moves: readonly TypedMove[] = [
      atElm, { ...bought, invoice: "A-2" }, end,
      { ...oak, ...after, kind: "scrap", quantity: 1, job: "Elm 12" }, { ...oak, ...after, kind: "scrap", quantity: 1 },
      { item: "end", unit: "each", ...after, kind: "issue", quantity: 1, job: "Ash 9" },
    ];
    expect(faultsOf(moves)).toEqual({ 4: "not-on-hand", 5: "after-bad-row", 7: "after-bad-row" });
  });

  test("a count: the rack", () => {
    const moves: readonly TypedMove[] = [
      bought, { ...atElm, invoice: "A-2" }, { ...oak, date: "2026-03-03", kind: "count", quantity: -1 },
      { ...oak, ...after, kind: "scrap", quantity: 1 }, { ...oak, ...after, kind: "scrap", quantity: 1, job: "Elm 12" },
    ];
    expect(faultsOf(moves)).toEqual({ 4: "quantity-of-nothing", 5: "after-bad-row" });
  });

  test("a count at a job, which is one of the rack: the rack, and not the job", () => {
    const moves: readonly TypedMove[] = [
      bought, { ...atElm, invoice: "A-2" }, { ...oak, date: "2026-03-03", kind: "count", quantity: 9, job: "Elm 12" },
      { ...oak, ...after, kind: "scrap", quantity: 1 }, { ...oak, ...after, kind: "scrap", quantity: 1, job: "Elm 12" },
    ];
    expect(faultsOf(moves)).toEqual({ 4: "count-off-the-rack", 5: "after-bad-row" });
  });

  test("a charge over a wrong line says so, whatever else is wrong with its other lines", () => {
    const wrong: TypedMove = { ...bought, item: "ash", quantity: 0 };
    const ofOak: TypedMove = { date: "2026-03-20", kind: "credit", cost: 501, invoice: "A-1", item: "oak" };
    expect(faultsOf([bought, wrong, ofOak, { date: "2026-04-02", kind: "credit", cost: 5, invoice: "A-1" }])).toEqual({
      2: "after-bad-row", 3: "no-quantity", 4: "credited-too-much", 5: "after-bad-row",
    });
  });

  test("a late charge that cannot be: the goods it would have gone to, from its day on", () => {
    const late: TypedMove = { date: "2026-04-02", kind: "freight", cost: 9, quantity: 1, invoice: "A-1" };
    const scrap: TypedMove = { ...oak, kind: "scrap", quantity: 1, date: "2026-03-05" };
    expect(faultsOf([bought, scrap, late, { ...scrap, date: "2026-04-05" }])).toEqual({ 4: "quantity-of-money", 5: "after-bad-row" });
  });

  test("a charge of the month that cannot be: the lines of its paper, and what follows of them", () => {
    const freight: TypedMove = { date: "2026-03-20", kind: "freight", cost: 9, quantity: 1, invoice: "A-1" };
    const ash: TypedMove = { ...bought, item: "ash", invoice: "A-2" };
    expect(faultsOf([bought, ash, freight, { ...oak, date: "2026-03-05", kind: "scrap", quantity: 1 }])).toEqual({
      2: "after-bad-row", 4: "quantity-of-money", 5: "after-bad-row",
    });
  });

  test("the total of a paper of which a line is wrong is not compared", () => {
    const total: TypedMove = { date: "2026-03-20", kind: "invoice total", cost: 500, invoice: "A-1" };
    expect(faultsOf([{ ...bought, quantity: 0 }, total])).toEqual({ 2: "no-quantity", 3: "after-bad-row" });
  });
});

// By hand, in cents.
describe("charges that come late", () => {
  const late = (more: Partial<TypedMove> = {}): TypedMove => ({ date: "2026-04-02", kind: "freight", cost: 18, invoice: "A-1", ...more });
  const issue = (quantity: number): TypedMove => ({ ...oak, date: "2026-03-05", kind: "issue", quantity, job: "Elm 12" });

  test("go to what is left on the rack of them, the rest to price differences: 18 x 4/10", () => {
    const moves = [bought, issue(6), late()];
    expect(lineOf(moves, 4)).toMatchObject({ value: 18, note: "late for A-1: rack oak 7.20, price differences 10.80" });
    expect(closesOf(moves)).toEqual({
      "2026-03": { rack: 200, "Elm 12": 300, total: 500 },
      "2026-04": { rack: 207.2, "Elm 12": 300, "price differences": 10.8, total: 518 },
    });
  });

  test("all where all are left, none where none are, and no more than were bought where there are more", () => {
    expect(lineOf([bought, late()], 3)).toMatchObject({ note: "late for A-1: rack oak 18.00" });
    expect(lineOf([bought, issue(10), late()], 4)).toMatchObject({ note: "late for A-1: rack oak 0.00, price differences 18.00" });
    expect(lineOf([bought, { ...bought, invoice: "A-2" }, late()], 4)).toMatchObject({ note: "late for A-1: rack oak 18.00" });
  });

  test("go to a job whole, as long as it has any", () => {
    const back: TypedMove = { ...oak, date: "2026-03-09", kind: "transfer", quantity: 9, job: "Elm 12", to: "rack" };
    expect(lineOf([atElm, back, late()], 4)).toMatchObject({ note: "late for A-1: Elm 12 oak 18.00" });
  });

  test("take no more off than the goods are worth: a credit of 80 on one of 50, a refund of freight alike", () => {
    const credit = late({ kind: "credit", cost: 480 });
    // 480 x 4/10 = 192 of the 200 that are left; 288 are of what is gone.
    expect(lineOf([bought, issue(6), credit], 4)).toMatchObject({ note: "late for A-1: rack oak 192.00, price differences 288.00" });
    const cheap: TypedMove = { ...bought, cost: 50 };
    const note = (more: Partial<TypedMove>) => lineOf([cheap, late(more)], 3)["note"];
    expect(note({ kind: "credit", cost: 80 })).toBe("late for A-1: rack oak 50.00, price differences 30.00");
    expect(note({ cost: -80 })).toBe("late for A-1: rack oak -50.00, price differences -30.00");
    expect(note({ kind: "credit", cost: -80 })).toBe("late for A-1: rack oak -80.00");
    expect(closesOf([cheap, late({ kind: "credit", cost: -80 })])["2026-04"]).toEqual({ rack: 130, total: 130 });
  });

  test("each stands in its own column of the month", () => {
    const rows = monthClose(booksOf([bought, late(), late({ kind: "tax", cost: 3 }), late({ kind: "credit", cost: 2 })]));
    if (isProblem(rows)) throw new Error(rows.problem);
    const april = rows.find(({ month, where }) => month === "2026-04" && where === "rack")!;
    expect([april.freight, april.tax, april.credited, april.closing].map((one) => one.toNumber())).toEqual([18, 3, 2, 519]);
  });

  test("a charge dated between the lines of its paper falls on those that are there", () => {
    const april: TypedMove = { ...bought, item: "ash", date: "2026-04-10" };
    expect(lineOf([bought, april, late({ date: "2026-03-20" })], 4)).toMatchObject({ note: "on A-1: oak 18.00" });
    expect(lineOf([bought, april, late({ date: "2026-04-20" })], 4)).toMatchObject({
      note: "on A-1: ash 9.00; late for A-1: rack oak 9.00",
    });
  });
});

describe("credits on a paper", () => {
  const credit = (cost: number): TypedMove => ({ date: "2026-03-20", kind: "credit", cost, invoice: "A-1" });
  const freight = (cost: number): TypedMove => ({ date: "2026-03-20", kind: "freight", cost, invoice: "A-1" });

  test("take the goods to nothing and no further; freight on them may be credited too", () => {
    expect(faultsOf([bought, credit(500)])).toEqual({});
    expect(faultsOf([bought, credit(500.01)])).toEqual({ 2: "after-bad-row", 3: "credited-too-much" });
    expect(faultsOf([bought, freight(20), credit(520)])).toEqual({});
    expect(faultsOf([bought, freight(20), credit(520.01)])).toMatchObject({ 4: "credited-too-much" });
  });

  test("a refund of freight takes no more off than they stand at, and a debit note takes nothing off", () => {
    expect(faultsOf([bought, freight(-500)])).toEqual({});
    expect(faultsOf([bought, freight(-501)])).toEqual({ 2: "after-bad-row", 3: "credited-too-much" });
    expect(faultsOf([bought, credit(-501), credit(1001)])).toEqual({});
    // The debit note and the freight are not what is too much.
    expect(faultsOf([bought, credit(-1), freight(1), credit(503)])).toMatchObject({ 5: "credited-too-much" });
  });

  test("without an invoice, on the one paper of the day; for one item of it where several are", () => {
    const { invoice: _invoice, ...bare } = freight(9);
    const onDay: TypedMove = { ...bare, date: DAY };
    const ash: TypedMove = { ...bought, item: "ash", invoice: "A-2" };
    expect(faultsOf([bought, onDay])).toEqual({});
    expect(faultsOf([bought, ash, onDay])).toEqual({ 4: "several-invoices" });
    expect(lineOf([bought, ash, { ...onDay, item: "ash" }], 4)).toMatchObject({ note: "on A-2: ash 9.00" });
  });
});

describe("the total of a paper", () => {
  const total = (cost: number, date = "2026-03-31"): TypedMove => ({ date, kind: "invoice total", cost, invoice: "a-1" });
  const lines: readonly TypedMove[] = [
    bought, { ...bought, item: "ash", cost: 100 }, { ...bought, quantity: -1, cost: -50 },
    { date: "2026-03-20", kind: "freight", cost: 20, invoice: "A-1" }, { date: "2026-03-20", kind: "tax", cost: 7, invoice: "A-1" },
    { date: "2026-03-20", kind: "credit", cost: 5, invoice: "A-1" }, { ...bought, item: "elm", invoice: "A-2" },
    { ...bought, item: "elm", date: "2026-04-01" },
  ];

  // 500 + 100 - 50 of goods, 20 and 7; a credit is a paper of its own, and so is another month's.
  test("is that of its purchases, freight and tax of the month", () => {
    expect(lineOf([...lines, total(577)], 10)).toMatchObject({ note: "agrees" });
    expect(faultsOf([...lines, total(577.01)])).toEqual({ 10: "total-differs" });
    expect(lineOf([...lines, total(500, "2026-04-30")], 10)).toMatchObject({ note: "agrees" });
  });
});

describe("months", () => {
  const opening: TypedMove = { ...oak, date: "2026-02-28", kind: "opening", quantity: 2, cost: 100 };

  test("openings alone are the close of their month", () => {
    expect(closesOf([opening])).toEqual({ "2026-02": { rack: 100, total: 100 } });
  });

  test("openings before a month are what it begins with, also those that come between two", () => {
    const ash: TypedMove = { ...opening, item: "ash", date: "2026-04-05", cost: 40 };
    const issue: TypedMove = { ...oak, date: "2026-05-05", kind: "issue", quantity: 1, job: "Elm 12" };
    const rows = monthClose(booksOf([opening, bought, ash, issue]));
    if (isProblem(rows)) throw new Error(rows.problem);
    const onTheRack = rows.filter(({ where }) => where === "rack");
    expect(onTheRack.map((row) => [row.month, Number(row.opening), Number(row.closing)])).toEqual([
      ["2026-03", 100, 600], ["2026-05", 640, 590],
    ]);
  });

  test("no moves at all", () => {
    expect(monthClose(booksOf([]))).toHaveLength(2);
  });
});

describe("the cost of jobs", () => {
  const moves: readonly TypedMove[] = [
    { ...bought, job: "shop", quantity: 1, cost: 9 }, { ...atElm, invoice: "A-2" },
    { ...atElm, job: "Ash 9", item: "ash", cost: 30, invoice: "A-3" },
    { ...oak, date: "2026-03-09", kind: "scrap", quantity: 2, job: "Elm 12" },
    { ...atElm, date: "2026-04-01", invoice: "A-4" },
  ];
  const rowsOf = (job: string, to?: string) => {
    const rows = jobCost(booksOf(moves), job, to === undefined ? undefined : dayOfText(to));
    if (isProblem(rows)) return [rows.problem, rows.details];
    return rows.map(({ job: of, item, cost, waste, wasteCost }) => [of, item, ...[cost, waste, wasteCost].map(Number)]);
  };

  // 2 of 10 at 50 are scrapped: 100.
  test("jobs as they first appear, the shop last", () => {
    expect(rowsOf("", "2026-03-31")).toEqual([["Elm 12", "oak", 500, 2, 100], ["Ash 9", "ash", 30, 0, 0], ["shop", "oak", 9, 0, 0]]);
  });

  test("one job, by any spelling, to the close of a day", () => {
    expect(rowsOf("elm 12")).toEqual([["Elm 12", "oak", 1000, 2, 100]]);
    expect(rowsOf("elm 12", "2026-03-08")).toEqual([["Elm 12", "oak", 500, 0, 0]]);
    expect(rowsOf("elm 12", "2026-04-01")).toEqual([["Elm 12", "oak", 1000, 2, 100]]);
    expect(rowsOf("SHOP")).toEqual([["shop", "oak", 9, 0, 0]]);
  });

  test("a job that is not there, with one spelt like it, and one that is not there yet", () => {
    expect(rowsOf("Elms 12")).toEqual(["no-such-job", { job: "Elms 12", by: "", near: '; like "Elm 12": same job?' }]);
    expect(rowsOf("Oakwood", "2026-03-31")).toEqual(["no-such-job", { job: "Oakwood", by: " by 2026-03-31", near: "" }]);
    expect(rowsOf("", "2026-03-01")).toEqual(["nothing-at-jobs", { where: "at a job or in the shop", by: " by 2026-03-01" }]);
  });
});

describe("the rack", () => {
  const moves: readonly TypedMove[] = [
    { ...oak, date: "2026-02-28", kind: "opening", quantity: 2, cost: 100 }, bought,
    { ...oak, date: "2026-03-05", kind: "issue", quantity: 3, job: "Elm 12" }, { ...oak, date: "2026-03-31", kind: "count", quantity: 8 },
    { ...bought, item: "ash", date: "2026-04-02", invoice: "A-9" },
  ];
  const rowsOf = (from?: string, to?: string) => {
    const days = { ...(from === undefined ? {} : { from: dayOfText(from)! }), ...(to === undefined ? {} : { to: dayOfText(to)! }) };
    return rack(booksOf(moves), days).map(({ item, opening, in: into, out, short, quantity, value }) =>
      [item, ...[opening, into, out, short, quantity, value].map((one) => one?.toNumber())]);
  };

  // 2 + 10 - 3 are 9 at 50; 8 are counted.
  test.each<readonly [string | undefined, string | undefined, readonly (readonly unknown[])[]]>([
    [undefined, "2026-03-31", [["oak", 2, 10, 3, 1, 8, 400]]],
    ["2026-03-01", "2026-03-31", [["oak", 2, 10, 3, 1, 8, 400]]],
    ["2026-03-02", "2026-03-05", [["oak", 2, 10, 3, 0, 9, 450]]],
    ["2026-03-03", "2026-03-04", [["oak", 12, 0, 0, 0, 12, 600]]],
    ["2026-03-31", "2026-04-02", [["oak", 9, 0, 0, 1, 8, 400], ["ash", 0, 10, 0, 0, 10, 500]]],
    ["2026-04-01", undefined, [["oak", 8, 0, 0, 0, 8, 400], ["ash", 0, 10, 0, 0, 10, 500]]],
    [undefined, "2026-02-27", []],
  ])("from %p to %p", (from, to, rows) => {
    const sum = rows.reduce((all, row) => all + Number(row[6]), 0);
    expect(rowsOf(from, to)).toEqual([...rows, ["total", undefined, undefined, undefined, undefined, undefined, sum]]);
  });
});
