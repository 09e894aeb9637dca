import fc from "fast-check";
import { dayOfText } from "../../../../src/solver/books/day";
import { jobCost } from "../../../../src/solver/books/ledger/job-cost";
import { type Ledger, ledger } from "../../../../src/solver/books/ledger/ledger";
import { monthClose, type MonthCloseRow } from "../../../../src/solver/books/ledger/month-close";
import { rack } from "../../../../src/solver/books/ledger/rack";
import { stockLedger } from "../../../../src/solver/books/ledger/stock-ledger";
import { isProblem } from "../../../../src/solver/problem";
import { kindsMet, randomMoves, rankOf, readMoves, type TypedMove } from "../random-moves";

const SEED = 20260331;
const holds = (property: fc.IProperty<unknown[]>, numRuns = 100): void => {
  fc.assert(property as fc.IProperty<unknown>, { seed: SEED, numRuns });
};

const booksOf = (moves: readonly TypedMove[]): Ledger<never> => {
  const books = ledger<never>(readMoves(moves));
  expect(books.lines.flatMap(({ bad, move }) => (bad === undefined ? [] : [[move.row, bad]]))).toEqual([]);
  return books;
};

const closesOf = (books: Ledger<never>): readonly MonthCloseRow[] => {
  const rows = monthClose(books);
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};

/** Whole cents as the tests' own numbers: every amount here is under 2 ** 53 of them. */
const cents = (amount: { toNumber(): number } | number | string | undefined): number =>
  Math.round((typeof amount === "object" ? amount.toNumber() : Number(amount ?? 0)) * 100);

const FLOWS = ["bought", "freight", "tax", "in"] as const;
const LESS = ["credited", "returned", "out"] as const;

const monthOf = ({ date }: TypedMove): string => date.slice(0, "2026-01".length);
const lastDayOf = (month: string): number => dayOfText(`${month}-01`)! + 27;

/** Money on the papers of a month: purchases, freight and tax less credits and returns. */
const paid = (moves: readonly TypedMove[], month: string): number =>
  moves
    .filter((move) => monthOf(move) === month)
    .reduce((sum, { kind, cost }) => {
      if (["purchase", "freight", "tax"].includes(kind)) return sum + cents(cost);
      return kind === "credit" || kind === "return" ? sum - cents(cost) : sum;
    }, 0);

test("the random shops have rows of every kind", () => {
  const shops = fc.sample(randomMoves, { seed: SEED, numRuns: 150 });
  expect([...kindsMet(shops)].filter(([, count]) => count < 20)).toEqual([]);
});

describe("control totals", () => {
  test("each row adds up, and the total's cost is the money on the month's papers", () => {
    holds(fc.property(randomMoves, (moves) => {
      const rows = closesOf(booksOf(moves));
      for (const row of rows) {
        const sum = FLOWS.reduce((all, column) => all + cents(row[column]), cents(row.opening));
        expect(LESS.reduce((all, column) => all - cents(row[column]), sum)).toBe(cents(row.closing));
        expect(cents(row.closing) - cents(row.opening)).toBe(cents(row.cost));
      }
      const totals = rows.filter(({ where }) => where === "total");
      expect(totals.length).toBeGreaterThan(0);
      for (const total of totals) {
        expect(cents(total.in)).toBe(cents(total.out));
        expect(cents(total.cost)).toBe(paid(moves, total.month));
        const others = rows.filter(({ month, where }) => month === total.month && where !== "total");
        expect(others.reduce((sum, { closing }) => sum + cents(closing), 0)).toBe(cents(total.closing));
      }
    }));
  });

  test("RACK's total is the rack's closing, and JOBCOST by job is its closing, month by month", () => {
    holds(fc.property(randomMoves, (moves) => {
      const books = booksOf(moves);
      for (const { month, where, closing } of closesOf(books)) {
        // The last day of a month is not before its 28th; what is dated later stands in the month's own close.
        const to = Math.max(lastDayOf(month), ...moves.filter((move) => monthOf(move) === month).map(({ date }) => dayOfText(date)!));
        if (where === "rack") {
          const rows = rack(books, { to });
          expect(cents(rows[rows.length - 1]?.value)).toBe(cents(closing));
        } else if (where !== "total" && !["waste", "shrinkage", "price differences"].includes(String(where))) {
          const rows = jobCost(books, String(where), to);
          const sum = isProblem(rows) ? 0 : rows.reduce((all, { cost }) => all + cents(cost), 0);
          expect(sum).toBe(cents(closing));
        }
      }
    }));
  });

  test("goods: opening + bought - returned - cut up = at jobs + shop + scrapped off the rack + short + on the rack", () => {
    holds(fc.property(randomMoves, (moves) => {
      const books = booksOf(moves);
      const costs = jobCost(books, "");
      const lines = rack(books, {});
      const items = new Set(moves.flatMap(({ item }) => (item === undefined ? [] : [String(item)])));
      for (const item of items) {
        const own = (kind: string) => moves.filter((move) => move.kind === kind && move.item === item);
        // Inches here are always of goods first counted in feet or in inches.
        const unit = stockLedger(books).find((row) => row.item === item)?.unit;
        const scale = (move: TypedMove): number =>
          Number(move.quantity) * (unit === "ft" && move.unit === "in" ? 1 / 12 : unit === "in" && move.unit === "ft" ? 12 : 1);
        const many = (kind: string): number => own(kind).reduce((sum, move) => sum + scale(move), 0);
        const cut = moves.filter(({ of }) => of === item).reduce((sum, { quantity, share }) => sum + Number(quantity) * Number(share), 0);
        const scrapped = own("scrap").filter(({ job }) => job === undefined).reduce((sum, move) => sum + scale(move), 0);
        const came = many("opening") + many("purchase") + many("offcut") - many("return") - cut;
        const ofJobs = isProblem(costs) ? [] : costs.filter((row) => row.item === item);
        const atJobs = ofJobs.reduce((sum, row) => sum + row.quantity.toNumber(), 0);
        const held = lines.find((row) => row.item === item);
        const there = atJobs + scrapped + (held?.short?.toNumber() ?? 0) + (held?.quantity?.toNumber() ?? 0);
        expect(there).toBeCloseTo(came, 9);
      }
    }));
  });

  test("RACK: opening + in - out - short = quantity, whatever the days", () => {
    holds(fc.property(randomMoves, fc.nat(90), fc.nat(90), (moves, one, other) => {
      const from = dayOfText("2026-01-01")! + Math.min(one, other);
      for (const row of rack(booksOf(moves), { from, to: from + Math.abs(one - other) })) {
        if (row.quantity === undefined) continue;
        expect(row.opening!.plus(row.in!).minus(row.out!).minus(row.short!).eq(row.quantity)).toBe(true);
      }
    }));
  });

  test("no place keeps money without goods", () => {
    holds(fc.property(randomMoves, (moves) => {
      const books = booksOf(moves);
      const costs = jobCost(books, "");
      for (const { quantity, cost } of isProblem(costs) ? [] : costs) if (quantity.isZero()) expect(cost.toNumber()).toBe(0);
      for (const { quantity, value } of rack(books, {})) if (quantity?.isZero() === true) expect(value.toNumber()).toBe(0);
    }));
  });
});

/** Everything the four tables say, without the numbers of the rows. */
const said = (books: Ledger<never>): string =>
  JSON.stringify([stockLedger(books).map((row) => ({ ...row, row: 0 })), rack(books, {}), jobCost(books, ""), monthClose(books)]);

describe("what means nothing", () => {
  test("the order of the rows, but for those of one day and one rank", () => {
    holds(fc.property(randomMoves, fc.infiniteStream(fc.nat()), (moves, keys) => {
      const groupOf = (move: TypedMove): string => `${move.date} ${rankOf(move)}`;
      const places = moves.map((_, place) => ({ key: keys.next().value!, place })).sort((a, b) => a.key - b.key || a.place - b.place);
      const queues = new Map<string, TypedMove[]>();
      for (const move of moves) queues.set(groupOf(move), [...(queues.get(groupOf(move)) ?? []), move]);
      const shuffled = places.map(({ place }) => queues.get(groupOf(moves[place]!))!.shift()!);
      // Notes of counts name rows.
      const plain = (text: string): string => text.replace(/counted with row \d+/g, "counted with row");
      expect(plain(said(booksOf(shuffled)))).toBe(plain(said(booksOf(moves))));
    }));
  });

  test("feet or inches: no money moves", () => {
    holds(fc.property(randomMoves, (moves) => {
      const inInches = moves.map((move) =>
        move.unit === "ft" ? { ...move, unit: "in", quantity: move.quantity === "none" ? "none" : Number(move.quantity) * 12 } : move,
      );
      expect(JSON.stringify(closesOf(booksOf(inInches)))).toBe(JSON.stringify(closesOf(booksOf(moves))));
    }));
  });

  test("an invoice line in two whose quantities and cents add up", () => {
    holds(fc.property(randomMoves, fc.nat(), fc.integer({ min: 1, max: 99 }), (moves, which, percent) => {
      const lines = moves.filter((move) => move.kind === "purchase" && Number(move.quantity) > 1 && Number(move.cost) > 1);
      fc.pre(lines.length > 0);
      const line = lines[which % lines.length]!;
      const [quantity, cost] = [Math.ceil(Number(line.quantity) / 2), Math.max(1, Math.floor(cents(line.cost) * percent / 100))];
      const split = moves.flatMap((move) =>
        move !== line
          ? [move]
          : [
              { ...move, quantity, cost: cost / 100 },
              { ...move, quantity: Number(line.quantity) - quantity, cost: (cents(line.cost) - cost) / 100 },
            ].filter((half) => half.quantity > 0),
      );
      fc.pre(split.length === moves.length + 1);
      expect(JSON.stringify(closesOf(booksOf(split)))).toBe(JSON.stringify(closesOf(booksOf(moves))));
      expect(JSON.stringify(jobCost(booksOf(split), ""))).toBe(JSON.stringify(jobCost(booksOf(moves), "")));
    }));
  });

  test("issued and transferred straight back", () => {
    holds(fc.property(randomMoves, fc.integer({ min: 1, max: 8 }), (moves, eighths) => {
      const before = rack(booksOf(moves), {});
      const held = before.find(({ quantity }) => quantity !== undefined && quantity.gt(0));
      fc.pre(held !== undefined);
      const date = "2027-12-31";
      const goods = { date, item: String(held!.item), quantity: held!.quantity!.times(eighths).div(8).toNumber(), unit: held!.unit };
      const back: TypedMove[] = [
        { ...goods, kind: "issue", job: "Pine 7" }, { ...goods, kind: "transfer", job: "Pine 7", to: "rack" },
      ];
      const money = (rows: typeof before) => rows.map(({ item, quantity, value }) => [item, quantity?.toString(), value.toString()]);
      expect(money(rack(booksOf([...moves, ...back]), {}))).toEqual(money(before));
    }));
  });

  test("rows dated after a month, for that month", () => {
    holds(fc.property(randomMoves, fc.nat(3), (moves, which) => {
      const months = [...new Set(moves.map(monthOf))].sort();
      const month = months[which % months.length]!;
      const until = moves.filter((move) => monthOf(move) <= month);
      const closes = (rows: readonly TypedMove[]) => JSON.stringify(closesOf(booksOf(rows)).filter((row) => row.month <= month));
      fc.pre(until.some(({ kind }) => kind !== "opening"));
      expect(closes(until)).toBe(closes(moves));
      const to = Math.max(...until.map(({ date }) => dayOfText(date)!));
      expect(JSON.stringify(rack(booksOf(moves), { to }))).toBe(JSON.stringify(rack(booksOf(until), { to })));
      expect(JSON.stringify(jobCost(booksOf(moves), "", to))).toBe(JSON.stringify(jobCost(booksOf(until), "", to)));
    }));
  });
});
