import { Exact } from "../../length/exact";
import { marksDown, marksUp } from "../mark";
import { edgeTrimOf, type SheetJob } from "./sheet-job";
import { isTaken, type SheetPart } from "./sheet-parts";
import { panelArea, type PanelKind, type SheetKind, type SheetShelf } from "./sheet-shelf";

/** The shelf of one part of a job, with the way back to the rows. */
export interface PartShelf {
  readonly shelf: SheetShelf;
  readonly pieceRows: readonly (readonly number[])[];
  readonly stockRows: readonly (readonly number[])[];
  readonly moneyUnit: Exact;
  /** What one unit of money counts in `cost`, beside which the area of the sheets is nothing. */
  readonly steps: number;
}

/** Whole numbers up to which sums of costs stay exact. */
const MOST_WHOLE = new Exact(2).pow(50);
/** The largest sheet counts so much area, where plans cost the same. */
const LARGEST_AREA = 50;

/** Rows that differ in nothing the plan knows of. */
const alike = (rows: readonly number[], keyOf: (row: number) => string): number[][] => {
  const found = new Map<string, number[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const known = found.get(key);
    if (known === undefined) found.set(key, [row]);
    else known.push(row);
  }
  return [...found.values()];
};

/** Prices in whole units: exact where they fit, rounded down where they are finer than anyone pays. */
const wholePrices = (prices: readonly Exact[], times: number): { readonly unit: Exact; readonly whole: number[] } => {
  const most = MOST_WHOLE.div(times);
  let unit = new Exact(10).pow(-Math.max(0, ...prices.map((price) => price.decimalPlaces())));
  while (prices.some((price) => price.div(unit).gt(most))) unit = unit.times(10);
  return { unit, whole: prices.map((price) => price.div(unit).floor().toNumber()) };
};

const comparePanels = (one: PanelKind, other: PanelKind): number =>
  panelArea(other) - panelArea(one) || other.length - one.length || Number(one.turns) - Number(other.turns);

const compareSheets = (one: SheetKind, other: SheetKind): number =>
  other.length * other.width - one.length * one.width || other.length - one.length || one.cost - other.cost;

/** In whole marks; a kerf is in every piece and once in every sheet. */
export const partShelf = (job: SheetJob, { pieces, stock }: SheetPart): PartShelf => {
  const { unit } = job;
  const kerf = marksUp(job.kerf, unit);
  const [trim, edgeTrim] = [marksUp(job.trim, unit), marksUp(edgeTrimOf(job), unit)];
  const taking = new Map(
    pieces.map((row) => [row, stock.map((at) => Number(isTaken(job, job.stock[at]!, job.pieces[row]!))).join("")] as const),
  );
  const sizeOf = (row: number) => ({
    length: marksUp(job.pieces[row]!.length, unit) + kerf, width: marksUp(job.pieces[row]!.width!, unit) + kerf,
  });
  const kinds = alike(pieces, (row) => `${Object.values(sizeOf(row)).join()}/${String(job.pieces[row]!.turns)}/${taking.get(row)!}`)
    .map((rows) => {
      const wanted = rows.reduce((sum, row) => sum + job.pieces[row]!.quantity, 0);
      return { rows, taken: taking.get(rows[0]!)!, kind: { ...sizeOf(rows[0]!), wanted, turns: job.pieces[rows[0]!]!.turns } };
    })
    .sort((one, other) => comparePanels(one.kind, other.kind) || (one.taken < other.taken ? -1 : 1));
  const count = kinds.reduce((sum, { kind }) => sum + kind.wanted, 0);
  const roomOf = (row: number) => ({
    length: marksDown(job.stock[row]!.length, unit) - 2 * trim + kerf,
    width: marksDown(job.stock[row]!.width!, unit) - 2 * edgeTrim + kerf,
  });
  const areaOf = (row: number): number => roomOf(row).length * roomOf(row).width;
  const largest = Math.max(...stock.map(areaOf));
  const steps = LARGEST_AREA * count + 1;
  const money = wholePrices(stock.map((row) => job.stock[row]!.price), steps * count);
  const costOf = (row: number): number =>
    money.whole[stock.indexOf(row)]! * steps + Math.max(1, Math.round((areaOf(row) / largest) * LARGEST_AREA));
  const takenBy = (row: number): string => kinds.map(({ taken }) => taken[stock.indexOf(row)]!).join("");
  const sheets = alike(stock, (row) => `${Object.values(roomOf(row)).join()}/${costOf(row)}/${takenBy(row)}`)
    .map((rows) => {
      const available = Math.min(count, rows.reduce((sum, row) => sum + job.stock[row]!.available, 0));
      return { rows, taken: takenBy(rows[0]!), sheet: { ...roomOf(rows[0]!), cost: costOf(rows[0]!), available } };
    })
    .sort((one, other) => compareSheets(one.sheet, other.sheet) || (one.taken < other.taken ? -1 : 1));
  return {
    pieceRows: kinds.map(({ rows }) => rows),
    stockRows: sheets.map(({ rows }) => rows),
    moneyUnit: money.unit,
    steps,
    shelf: {
      kinds: kinds.map(({ kind }) => kind),
      sheets: sheets.map(({ sheet }) => sheet),
      takes: sheets.map(({ taken }) => [...taken].map((each) => each === "1")),
      firsts: job.first === "either" ? ["rip", "crosscut"] : [job.first],
      kerf,
      ...(job.keep === undefined ? {} : { keep: { length: marksUp(job.keep.length, unit), width: marksUp(job.keep.width, unit) } }),
    },
  };
};
