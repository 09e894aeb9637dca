import fc from "fast-check";
import { type BilledRow, type BillingTerms, progressBilling, type ScheduledWork } from "../../../src/solver/bid/progress-billing";
import { exact } from "../../../src/solver/length/exact";
import { isProblem } from "../../../src/solver/problem";

interface Part {
  readonly value?: number;
  readonly done?: number;
  readonly stored?: number;
  readonly change?: boolean;
}

const schedule = (parts: readonly Part[]): ScheduledWork[] =>
  parts.map(({ value, done = 0, stored = 0, change = false }, index) => ({
    item: `part ${index + 1}`, row: index + 2, done, stored: exact(stored), change, ...(value === undefined ? {} : { value: exact(value) }),
  }));

const terms = (retainage = 0, paid = 0, deposit = 0): BillingTerms => ({
  retainage: exact(retainage), paid: exact(paid), deposit: exact(deposit),
});

const billed = (parts: readonly Part[], given: BillingTerms = terms()): readonly BilledRow[] => {
  const rows = progressBilling(schedule(parts), given);
  if (isProblem(rows)) throw new Error(rows.problem);
  return rows;
};

const summary = (rows: readonly BilledRow[], label: string): BilledRow => {
  const found = rows.find(({ item }) => item === label);
  if (found === undefined) throw new Error(label);
  return found;
};

const cents = (amount: { toNumber(): number } | undefined): number => Math.round((amount?.toNumber() ?? Number.NaN) * 100);
const due = (rows: readonly BilledRow[]): number => cents(summary(rows, "due").earned);

test("each row is in cents before it is added", () => {
  // By hand: 33.335 is 33.34, a third of 100.01 is 33.3367, 33.34; together 66.68, of which 10 % is 6.668.
  const rows = billed([{ value: 33.335, done: 1 }, { value: 100.01, done: 0.333333333333333 }], terms(0.1));
  expect(rows.slice(0, 2).map(({ value, earned, balance }) => [value, earned, balance].map(cents))).toEqual([
    [3334, 3334, 0],
    [10001, 3334, 6667],
  ]);
  expect([cents(summary(rows, "retainage").earned), due(rows)]).toEqual([-667, 6001]);
});

test("a bill after more was paid than is due is money back", () => {
  // By hand: half of 1,000 less 700.
  expect(due(billed([{ value: 1000, done: 0.5 }], terms(0, 700)))).toBe(-20000);
});

test("what is refused", () => {
  const refused = (parts: readonly Part[], given = terms()): unknown => progressBilling(schedule(parts), given);
  expect(refused([{ value: 10 }, { done: 1 }])).toMatchObject({ problem: "no-value", details: { item: "part 2", row: 3 } });
  expect(refused([{ value: 10, done: 0.9, stored: 2 }])).toMatchObject({
    problem: "earned-over-value",
    details: { item: "part 1", row: 2, earned: "11", value: "10" },
  });
  expect(refused([{ value: -10, done: 0, stored: 2 }])).toMatchObject({ problem: "earned-over-value" });
  expect(refused([{ value: 10, done: 1 }], terms(0, 0, 11))).toMatchObject({
    problem: "deposit-over-value",
    details: { deposit: "11", value: "10" },
  });
  // Work taken out again by a change leaves nothing a deposit can be credited against.
  expect(refused([{ value: 10, done: 1 }, { value: -10, done: 1, change: true }], terms(0, 0, 5))).toMatchObject({
    problem: "deposit-over-value",
    details: { value: "0" },
  });
  expect(due(billed([{ value: 10, done: 1 }, { value: -10, done: 1, change: true }], terms(0, 4)))).toBe(-400);
});

const parts = fc.array(
  fc.record({ value: fc.integer({ min: 1, max: 5_000_000 }).map((amount) => amount / 1000), change: fc.boolean() }),
  { minLength: 1, maxLength: 6 },
);
const share = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);

test("all draws and the deposit are contract and changes, to the cent, once all is done and nothing held back", () => {
  const draws = fc.array(fc.record({ done: fc.array(share, { minLength: 6, maxLength: 6 }), retainage: share }), { maxLength: 5 });
  fc.assert(
    fc.property(parts, draws, share, (work, bills, deposited) => {
      const worth = work.reduce((sum, { value }) => sum + Math.round(Number((value * 100).toPrecision(15))), 0);
      const deposit = Math.floor(worth * deposited) / 100;
      let paid = 0;
      for (const { done, retainage } of bills) {
        const rows = billed(work.map((part, index) => ({ ...part, done: done[index] ?? 0 })), terms(retainage, paid / 100, deposit));
        // A bill that comes to less than was paid is not sent.
        paid += Math.max(0, due(rows));
      }
      const last = billed(work.map((part) => ({ ...part, done: 1 })), terms(0, paid / 100, deposit));
      const [contract, changes] = ["contract", "changes"].map((label) => cents(summary(last, label).value)) as [number, number];
      expect(contract + changes).toBe(worth);
      expect(paid + due(last) + Math.round(deposit * 100)).toBe(contract + changes);
      expect(cents(summary(last, "earned").balance)).toBe(0);
    }),
  );
});

test("on every bill earned, retainage, deposit credited and paid come to due, and balances to what is left", () => {
  fc.assert(
    fc.property(parts, fc.array(share, { minLength: 6, maxLength: 6 }), share, share, (work, done, retainage, deposited) => {
      const worth = work.reduce((sum, { value }) => sum + value, 0);
      const given = terms(retainage, 12.5, Math.floor(worth * deposited));
      const rows = billed(work.map((part, index) => ({ ...part, done: done[index] ?? 0 })), given);
      const column = (labels: readonly string[]): number => labels.reduce((sum, label) => sum + cents(summary(rows, label).earned), 0);
      expect(column(["earned", "retainage", "deposit credited", "paid"])).toBe(due(rows));
      const balances = rows.slice(0, work.length).reduce((sum, { balance }) => sum + cents(balance), 0);
      expect(balances).toBe(cents(summary(rows, "earned").balance));
    }),
  );
});

test("a part split in two whose cents add up changes nothing of a bill of finished or unbegun parts", () => {
  fc.assert(
    fc.property(parts, fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }), fc.nat(), share, share, (work, full, which, part, held) => {
      const whole = work.map((one, index) => ({ ...one, value: Math.ceil(one.value * 100) / 100, done: full[index] === true ? 1 : 0 }));
      const at = which % whole.length;
      const split = whole.flatMap((one, index) => {
        const first = Math.round(one.value * part * 100) / 100;
        return index === at ? [{ ...one, value: first }, { ...one, value: Math.round((one.value - first) * 100) / 100 }] : [one];
      });
      const tail = (rows: readonly BilledRow[]) => rows.slice(-7).map(({ value, earned, balance }) => [value, earned, balance].map(String));
      const given = terms(held, 3, 0.5);
      // A split that leaves a part without a value is none.
      if (split.some(({ value }) => value === 0) || whole.reduce((sum, { value }) => sum + value, 0) < 0.5) return;
      expect(tail(billed(split, given))).toEqual(tail(billed(whole, given)));
    }),
  );
});
