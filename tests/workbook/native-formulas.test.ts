/** @jest-environment ./tests/workbook/engine-environment.cjs */
import { readFileSync } from "node:fs";
import path from "node:path";
import type { Workbook } from "../../src/workbook/workbook";
import { bench, type Cell, change, type Gives, nativeFormulas } from "./native-formulas";
import { closeWorkbooks, openedWorkbook } from "./opened-workbook";

afterAll(closeWorkbooks);

type Rows = readonly (readonly unknown[])[];

const page = readFileSync(path.resolve(__dirname, "../../docs/native-functions.md"), "utf8");

// Each formula has some rows to itself, right of what it reads and what spills there.
const COLUMN = "T";
const ROWS_EACH = 8;
const addressOf = (place: number): string => `${COLUMN}${1 + place * ROWS_EACH}`;

// As many digits as Microsoft's pages print.
const DIGITS = 9;
const rounded = (cell: unknown): unknown => (typeof cell === "number" ? Number(cell.toPrecision(DIGITS)) : cell);

const shownAt = (book: Workbook, address: string): Rows =>
  book
    .spill("Bench", address)
    .map((cells) => cells.map((cell) => rounded(typeof cell === "object" && cell !== null ? cell.error : cell)));

const rowsOf = (gives: Gives): Rows =>
  (typeof gives === "object" ? gives : [[gives]]).map((cells) => cells.map(rounded));

const first: Rows[] = [];
const second: Rows[] = [];

beforeAll(async () => {
  const formulas = Object.fromEntries(nativeFormulas.map(({ formula }, place) => [addressOf(place), formula]));
  const book = await openedWorkbook({ Bench: { ...bench, ...formulas } });
  const read = (): readonly Rows[] => nativeFormulas.map((_, place) => shownAt(book, addressOf(place)));
  first.push(...read());
  for (const [address, value] of Object.entries(change)) book.setCell("Bench", address, value);
  await book.settled();
  book.recalculate();
  await book.settled();
  second.push(...read());
});

test.each(nativeFormulas.map((one, place) => ({ ...one, place })))("$formula", ({ place, gives, then, here }) => {
  expect([first[place], second[place]]).toEqual(here === undefined ? [rowsOf(gives), rowsOf(then)] : [[[here]], [[here]]]);
});

test("what differs from Excel differs, and stands on the page, formula by formula", () => {
  const told = (cell: Cell): string => (typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell));
  const differing = nativeFormulas.flatMap(({ formula, gives, here }) => (here === undefined ? [] : [{ formula, gives, here }]));
  expect(differing.filter(({ gives, here }) => gives === here)).toEqual([]);
  expect([...page.matchAll(/^\| `(=.+?)` \| `(.+?)` \| `(.+?)` \|$/gm)].map(([, ...cells]) => cells)).toEqual(
    differing.map(({ formula, gives, here }) => [
      formula,
      typeof gives === "object" ? gives.map((cells) => cells.map(told).join(", ")).join("; ") : told(gives),
      told(here),
    ]),
  );
});

test("the cells that the formulas of the page read stand on it as they are here", () => {
  const shown = [...page.matchAll(/^\| (\d) \| (.+) \| (.+) \| (.+) \|$/gm)].flatMap(([, row, ...cells]) =>
    ["J", "K", "L"].map((name, at) => [`${name}${row}`, cells[at]]));
  const read = Object.entries(bench).filter(([address]) => /^[JKL]/.test(address));
  expect(shown).toEqual(read.map(([address, cell]) => [address, String(cell)]));
});

test("each function that the page says is not there is not there, and the others of the page are", async () => {
  const [, listed = ""] = /## Functions it does not have\n\n.*\n\n([\s\S]*?)\n\n##/.exec(page) ?? [];
  const names = [...listed.matchAll(/`([A-Z.]+)`/g)].map(([, name = ""]) => name);
  expect(names.length).toBeGreaterThan(20);
  const book = await openedWorkbook({ Bench: Object.fromEntries(names.map((name, row) => [`A${row + 1}`, `=${name}(1)`])) });
  expect(names.filter((_, row) => JSON.stringify(book.value("Bench", `A${row + 1}`)) !== '{"error":"#NAME?"}')).toEqual([]);
});
