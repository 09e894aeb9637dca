import { cents } from "../bid/cents";
import { goodsKey } from "../goods/goods-key";
import { Exact } from "../length/exact";
import type { Length, Unit } from "../length/length";
import { isProblem, type Problem } from "../problem";
import { boardFeet } from "../yield/board-feet";
import { boardPrices } from "../yield/glue-up/board-prices";
import { glueUp, inWords } from "../yield/glue-up/glue-up";
import type { GluePlan, NoGluePlan } from "../yield/glue-up/glue-plan";
import type { GluePanel } from "../yield/glue-up/glue-panel";
import type { GlueTerms } from "../yield/glue-up/glue-terms";
import { boardName, type TallyBoard } from "../yield/tally/tally-board";
import type { Blank } from "./blank-list";
import { inSeries } from "./saving";

/** Measured boards from which what no blank covers is glued up. */
export interface Gluing {
  readonly boards: readonly TallyBoard[];
  readonly terms: GlueTerms;
}

/** A kind of piece, and how many of it no blank covers. */
export interface Missing {
  readonly blank: Blank;
  readonly quantity: number;
}

/** A measured board to buy for a glue-up, or a lot with all its boards. */
export interface GluedRow {
  readonly item: string;
  readonly length?: Length;
  readonly width?: Length;
  readonly quantity: number;
  readonly price: Exact;
  readonly cost: Exact;
  /** Board feet of the finished pieces that its strips make, and of all that is bought. */
  readonly net: Exact;
  readonly gross: Exact;
  readonly note: string;
}

const ZERO = new Exact(0);
const sum = (amounts: readonly Exact[]): Exact => amounts.reduce((all, each) => all.plus(each), ZERO);

/** Any board given will do: whoever orders gives the boards of the grades that are meant. */
const panelOf = ({ blank, quantity }: Missing, row: number): GluePanel => ({
  row, quantity, label: blank.item, length: blank.length, width: blank.width, thickness: blank.thickness,
  grade: "", alsoFrom: "any", species: "",
});

/** Board feet of finished pieces by the board their strips come from: a strip has the share of its piece that it nets of all its strips. */
const netOfBoards = (
  { job, strips }: GluePlan, panels: readonly GluePanel[], boards: readonly TallyBoard[],
): ReadonlyMap<number, Exact> => {
  const keyOf = ({ kind, panel }: (typeof strips)[number]): string => `${kind} ${panel}`;
  const all = new Map<string, number>();
  for (const strip of strips) all.set(keyOf(strip), (all.get(keyOf(strip)) ?? 0) + strip.net);
  const net = new Map<number, Exact>();
  for (const strip of strips) {
    const { length, width } = panels[job.panelsOf[strip.kind]![strip.panel]!]!;
    const { thickness } = boards[job.boards[strip.wood]!.place]!;
    const share = boardFeet(thickness, width!, length, 1).times(strip.net).div(all.get(keyOf(strip))!);
    net.set(strip.wood, (net.get(strip.wood) ?? ZERO).plus(share));
  }
  return net;
};

/** As the tally calls it; a number, and what a blank is called too, with what it is. */
const namedBoard = ({ label = "", row, quantity }: TallyBoard, copy: number, taken: ReadonlySet<string>): string => {
  const isBare = typeof label === "number" || taken.has(goodsKey(label));
  const name = label === "" ? `board in row ${row}` : isBare ? `board ${label}` : label;
  return quantity === 1 ? name : `${name} (${copy + 1})`;
};

const namedLot = (lot: string | number): string => (/^lot\b/i.test(String(lot)) ? String(lot) : `lot ${lot}`);

/**
 * The boards to buy so that pieces no blank covers are glued up from them at least cost, or why they cannot; `taken` are names of blanks,
 * by key.
 */
export const gluedRows = (
  missing: readonly Missing[], { boards, terms }: Gluing, unit: Unit, taken: ReadonlySet<string>,
): readonly GluedRow[] | Problem<NoGluePlan> => {
  const panels = missing.map(panelOf);
  const found = glueUp(panels, boards, terms, unit);
  if (isProblem(found)) return found;
  const { plan } = found;
  const { rows, lots } = boardPrices(boards);
  const net = netOfBoards(plan, panels, boards);
  const { boards: woods } = plan.job;
  const lotOf = (wood: number): string | undefined => rows[woods[wood]!.place]!.lot;
  const used = [...net.keys()].sort((one, other) => woods[one]!.place - woods[other]!.place || woods[one]!.copy - woods[other]!.copy);
  const isFirst = (wood: number, place: number): boolean => used.findIndex((each) => lotOf(each) === lotOf(wood)) === place;
  const bought = used.filter((wood, place) => lotOf(wood) === undefined || isFirst(wood, place));
  const pieces = inSeries(missing.map(({ blank, quantity }) => `${quantity} x ${blank.item}`));
  const of = used.length === 1 ? "this board" : `${used.length} boards, this the first`;
  const look = [...new Set(missing.map(({ blank }) => blank.note))].filter((note) => note !== "");
  const first = [`${pieces} glued up of ${of}`, inWords(found), "GLUEUP plans the strips", ...look].join("; ");
  return bought.map((wood, place): GluedRow => {
    const { place: row, copy } = woods[wood]!;
    const board = boards[row]!;
    const lot = lotOf(wood);
    const note = place === 0 ? first : "for the same glue-up";
    if (lot === undefined) {
      const { price, boardFeet: gross } = rows[row]!;
      return {
        item: namedBoard(board, copy, taken), length: board.length, width: board.width, quantity: 1,
        price: cents(price), cost: cents(price),
        net: net.get(wood)!, gross, note,
      };
    }
    const price = cents(lots.get(lot)!);
    const cut = used.filter((each) => lotOf(each) === lot);
    const ofLot = boards.flatMap((each, at) => (rows[at]!.lot === lot ? [rows[at]!.boardFeet.times(each.quantity)] : []));
    return {
      item: namedLot(board.lot ?? boardName(board)), quantity: 1, price, cost: price, net: sum(cut.map((each) => net.get(each)!)),
      gross: sum(ofLot),
      note: `${note}; of the lot ${inSeries(cut.map((each) => namedBoard(boards[woods[each]!.place]!, woods[each]!.copy, taken)))} cut`,
    };
  });
};
