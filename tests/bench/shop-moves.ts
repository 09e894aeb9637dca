import { dayOfText, dayText } from "../../src/solver/books/day";

const HEADINGS = ["date", "job", "item", "quantity", "unit", "cost", "kind", "to", "invoice", "of", "share"] as const;
const FIRST_DAY = dayOfText("2024-01-02")!;

/** A row as cells, from the columns that hold something. */
const cells = (row: Readonly<Partial<Record<(typeof HEADINGS)[number], string | number>>>): unknown[] =>
  HEADINGS.map((heading) => row[heading] ?? "");

/** What one round of a shop's work takes: an invoice of four lines, its charges, its goods out to a job, and back. */
const ROWS_A_ROUND = 20;

const round = (index: number, goods: number): unknown[][] => {
  const day = FIRST_DAY + Math.floor((index * 3) / 4);
  const date = (after: number): string => dayText(day + after);
  const job = `Job ${(index % 60) + 1}`;
  const invoice = `A-${index}`;
  const items = [0, 1, 2, 3].map((line) => `board no. ${((index * 4 + line) % goods) + 1}`);
  const each = (item: string | undefined, quantity: number) => ({ item: item ?? "", quantity, unit: "each" });
  const lines = items.map((item, line) =>
    cells({ date: date(0), ...each(item, 6), cost: 120 + line * 31.35, kind: "purchase", invoice, ...(line === 3 ? { job } : {}) }),
  );
  return [
    ...lines,
    cells({ date: date(0), cost: 41.27, kind: "tax", invoice }),
    cells({ date: date(1), cost: 35, kind: "freight", invoice }),
    cells({ date: date(1), ...each(items[0], 4), job, kind: "issue" }),
    cells({ date: date(1), ...each(items[1], 3), job, kind: "issue" }),
    cells({ date: date(2), ...each(items[2], 5), job, kind: "issue" }),
    cells({ date: date(2), ...each(items[0], 1), job, kind: "transfer", to: "rack" }),
    cells({ date: date(2), ...each(items[1], 1), job, kind: "transfer", to: `Job ${((index + 7) % 60) + 1}` }),
    cells({
      date: date(3), item: `end of ${items[2] ?? ""}`, quantity: 1, unit: "each", job, kind: "offcut", to: "rack", of: items[2] ?? "",
      share: 0.375,
    }),
    cells({ date: date(3), ...each(items[0], 1), job, kind: "scrap" }),
    cells({ date: date(4), ...each(items[3], 1), job, kind: "return", cost: 30, invoice }),
    cells({ date: date(4), cost: 4.5, kind: "credit", invoice }),
    cells({ date: date(5), ...each(items[1], 1), job, kind: "issue" }),
    cells({ date: date(5), ...each(`end of ${items[2] ?? ""}`, 1), job, kind: "issue" }),
    cells({ date: date(6), ...each(items[0], 1), job: "shop", kind: "issue" }),
    cells({ date: date(34), cost: 6.15, kind: "freight", invoice }),
    cells({ date: date(6), ...each(items[2], 1), job, kind: "issue" }),
  ];
};

/** So many rows of an invented shop with 60 jobs, under their headings; `goods` is how many different items it buys. */
export const shopMoves = (rows: number, goods = 300): unknown[][] => [
  [...HEADINGS],
  ...Array.from({ length: Math.ceil(rows / ROWS_A_ROUND) }, (_, index) => round(index, goods)).flat().slice(0, rows),
];
