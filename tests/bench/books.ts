import { dayOfText } from "../../src/solver/books/day";
import type { WorksheetFunction } from "../host/stand-in";
import type { Workbook } from "../../src/workbook/workbook";
import type { CellData, SheetData } from "../../src/workbook/workbook-data";
import { shopMoves } from "./shop-moves";

/** What a person waits for without noticing it much; a call of the largest input is measured against the same. */
const SECONDS = 2;
const MOVES = 20_000;
const LEDGERS = ["STOCKLEDGER", "RACK", "JOBCOST", "MONTHCLOSE"] as const;
const seconds = (milliseconds: number): string => `${(milliseconds / 1000).toFixed(2)} s`;

/** The four functions over one table of moves that none has seen before, one after the other: the first reckons, all share it. */
export const sharedLedgerRows = (functions: ReadonlyMap<string, WorksheetFunction>): readonly (readonly string[])[] => {
  // Goods that no other bench has, so that nothing of it is remembered.
  const moves = shopMoves(MOVES, 317);
  const times = LEDGERS.map((id) => {
    const solve = functions.get(id);
    if (solve === undefined) throw new Error(`functions.js does not associate ${id}`);
    const began = performance.now();
    solve(moves);
    return [id, performance.now() - began] as const;
  });
  const all = times.reduce((sum, [, time]) => sum + time, 0);
  return [
    ...times.map(([id, time], place) => [id, place === 0 ? "reckons" : "shares it", seconds(time), ""]),
    ["all four", "", seconds(all), all <= SECONDS * 1000 ? "met" : `missed: over ${SECONDS} s`],
  ];
};

const JOBS = 60;
/** A round of 20 moves is three quarters of a day apart: 486 of them are a year. */
const YEAR = 9_720;
const ROUNDS = 5;
const FIRST = 2;
const LAST = FIRST + YEAR - 1;
const middle = (numbers: readonly number[]): number => [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? 0;

type Cells = Record<string, CellData>;

/** The moves as a person types them: dates are dates. */
const movesSheet = (): SheetData => {
  const cells: Cells = {};
  for (const [row, held] of shopMoves(YEAR).entries()) {
    for (const [column, value] of held.entries()) {
      if (typeof value !== "string" && typeof value !== "number") continue;
      const isDate = column === 0 && row > 0 && typeof value === "string";
      if (value !== "") cells[`${"ABCDEFGHIJK".charAt(column)}${row + 1}`] = { value: isDate ? dayOfText(value) ?? value : value };
    }
  }
  return { name: "Moves", cells };
};

/** The ledger, the rack, the jobs and the months: a formula each. */
const ours = (): SheetData => ({
  name: "Answers",
  cells: Object.fromEntries(LEDGERS.map((id, place) => [
    `${["A", "R", "AF", "AR"][place] ?? "A"}1`, { formula: `=STAIR.${id}(Moves!A1:K${LAST})` },
  ])),
});

/** What was bought for each job in each month, a SUMIFS each over the same rows. */
const native = (): SheetData => {
  const column = (letter: string): string => `Moves!${letter}$${FIRST}:${letter}$${LAST}`;
  const cells: Cells = {};
  for (let job = 1; job <= JOBS; job += 1) {
    cells[`A${job + 1}`] = { value: `Job ${job}` };
    for (let month = 1; month <= 12; month += 1) {
      const letter = "BCDEFGHIJKLM".charAt(month - 1);
      cells[`${letter}${job + 1}`] = {
        formula:
          `=SUMIFS(${column("F")},${column("B")},A${job + 1},${column("A")},">="&DATE(2024,${month},1),` +
          `${column("A")},"<"&DATE(2024,${month + 1},1))`,
      };
    }
  }
  return { name: "Answers", cells };
};

/** Milliseconds from the edit of an invoice until all is settled. */
const edited = async (book: Workbook, round: number): Promise<number> => {
  const began = performance.now();
  // The first line of an invoice in the middle of the year.
  book.put("Moves", { [`F${FIRST + (YEAR / 2)}`]: { value: 120 + round } });
  await book.settled();
  return performance.now() - began;
};

/** A year of sixty jobs in one workbook: an edit of one invoice, with our four functions and with SUMIFS, the two taking turns. */
export const jobsYearRow = async (opened: () => Workbook): Promise<readonly string[]> => {
  const books: Workbook[] = [];
  for (const answers of [ours(), native()]) {
    const book = opened();
    book.load({ version: 1, sheets: [movesSheet(), answers] });
    await book.settled();
    books.push(book);
  }
  const [own, other] = books;
  if (own === undefined || other === undefined) throw new Error("no workbooks");
  const times: (readonly [number, number])[] = [];
  for (let round = 1; round <= ROUNDS; round += 1) times.push([await edited(own, round), await edited(other, round)]);
  for (const [name, book, at] of [["ours", own, "A2"], ["SUMIFS", other, "B2"]] as const)
    if (typeof book.value("Answers", at) !== "number") throw new Error(`${name}: ${at} of Answers shows no number`);
  for (const book of books) book.dispose();
  const [one, two] = [middle(times.map(([time]) => time)), middle(times.map(([, time]) => time))];
  return [`${YEAR.toLocaleString("en-US")} moves of ${JOBS} jobs`, seconds(one), seconds(two), (one / two).toFixed(2)];
};
