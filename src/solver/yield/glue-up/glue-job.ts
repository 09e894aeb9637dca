import { goodsKey } from "../../goods/goods-key";
import { Exact } from "../../length/exact";
import type { Length, Unit } from "../../length/length";
import { isProblem, type Problem, problem } from "../../problem";
import { lengthOfMarks, marksDown, marksUp } from "../mark";
import { clearStretches } from "../tally/clear-stretches";
import { boardName, type TallyBoard } from "../tally/tally-board";
import { type BoardPrices, boardPrices } from "./board-prices";
import { type GluePanel, panelName } from "./glue-panel";
import type { GlueTerms } from "./glue-terms";
import type { GlueWork, Offer, PanelKind, Wood } from "./glue-work";
import { mostNet } from "./section-width";
import { suitableBoards, type UnsuitableBoards } from "./suitable-boards";

export type GlueFault =
  | UnsuitableBoards | "too-many-panels" | "too-many-boards" | "least-over-greatest" | "panel-too-long" | "boards-too-narrow"
  | "too-few-strips";

/** A board of a row: the row, which of its like boards, and where its stretches begin. */
interface JobBoard {
  readonly place: number;
  readonly copy: number;
  readonly starts: readonly number[];
  readonly wood: Wood;
}

export interface GlueJob {
  readonly work: GlueWork;
  readonly boards: readonly JobBoard[];
  /** The row of each panel of a kind, in the order of rows. */
  readonly panelsOf: readonly (readonly number[])[];
  /** What each offer costs. */
  readonly prices: readonly Exact[];
  /** What an offer weighs, without what only breaks ties: mills, or where nothing costs anything thousandths of a board foot. */
  readonly paid: readonly number[];
  readonly isOfMoney: boolean;
  readonly hasPrices: boolean;
}

const MOST_PANELS = 200;
const MOST_BOARDS = 400;
/** What a thousandth weighs, and what all board feet together: less, so that they only break ties. */
const THOUSANDTH = 1e7;
const FEET = 9e6;
const THOUSANDTHS = 1000;

/** Clear stretches in marks, as far apart as a kerf at least: the cut at a defect has to lie in it. */
const stretchesOf = (board: TallyBoard, { trim, kerf }: GlueTerms, unit: Unit): readonly { from: number; to: number }[] => {
  const end = board.length.minus(trim);
  const clear = clearStretches(board.length, board.defects, board.clear);
  return clear.map(({ from, to }, place) => {
    const before = clear[place - 1];
    const after = clear[place + 1];
    const spared = (gap: Length | undefined): Length =>
      gap === undefined || gap.gte(kerf) ? new Exact(0) : kerf.minus(gap).div(2);
    const start = Exact.max(trim, from.plus(spared(before === undefined ? undefined : from.minus(before.to))));
    const stop = Exact.min(end, to.minus(spared(after === undefined ? undefined : after.from.minus(to))));
    return { from: marksUp(start, unit), to: marksDown(stop, unit) };
  });
};

/** Every board by itself, those of equal use in the order of the tally, whatever the order of the others. */
const jobBoards = (
  boards: readonly TallyBoard[], suits: readonly ReadonlySet<number>[], shortest: number, terms: GlueTerms, unit: Unit,
): JobBoard[] => {
  const found = boards.flatMap((board, place) => {
    const stretches = stretchesOf(board, terms, unit).filter(({ from, to }) => to - from >= shortest);
    const wood: Wood = {
      width: marksDown(board.width.minus(board.edge), unit),
      stretches: stretches.map(({ from, to }) => to - from),
      suits: suits.map((places) => places.has(place)),
    };
    const starts = stretches.map(({ from }) => from);
    return Array.from({ length: board.quantity }, (_, copy): JobBoard => ({ place, copy, wood, starts }));
  });
  const total = ({ wood }: JobBoard): number => wood.stretches.reduce((sum, length) => sum + length, 0);
  const key = ({ wood: { stretches, suits: suited } }: JobBoard): string => JSON.stringify([stretches, suited]);
  return found
    .map((board) => ({ board, length: total(board), text: key(board) }))
    .sort((one, other) => other.board.wood.width - one.board.wood.width || other.length - one.length
      || Number(one.text > other.text) - Number(one.text < other.text))
    .map(({ board }) => board);
};

interface Offered {
  readonly offers: readonly Offer[];
  readonly prices: readonly Exact[];
  readonly paid: readonly number[];
  readonly isOfMoney: boolean;
}

/** What can be bought: boards, and lots of them. */
const offered = (boards: readonly JobBoard[], { rows, lots }: BoardPrices): Offered => {
  const groups = new Map<string, number[]>();
  boards.forEach(({ place }, wood) => {
    const { lot } = rows[place]!;
    const key = lot === undefined ? `board ${wood}` : `lot ${lot}`;
    groups.set(key, [...(groups.get(key) ?? []), wood]);
  });
  const goods = [...groups.values()].map((woods) => {
    const { lot, price } = rows[boards[woods[0]!]!.place]!;
    return {
      woods,
      price: lot === undefined ? price : (lots.get(lot) ?? price),
      feet: woods.reduce((sum, wood) => sum + rows[boards[wood]!.place]!.boardFeet.toNumber(), 0),
    };
  });
  const isOfMoney = goods.some(({ price }) => !price.isZero());
  const paid = goods.map(({ price, feet }) => Math.round((isOfMoney ? price.toNumber() : feet) * THOUSANDTHS));
  const allFeet = goods.reduce((sum, { feet }) => sum + feet, 0) || 1;
  const first = new Map<string, number>();
  const offers = goods.map(({ woods, feet }, place): Offer => {
    const weight = paid[place]! * THOUSANDTH + Math.round((feet / allFeet) * FEET) + woods.length;
    const key = woods.length > 1 ? String(place) : JSON.stringify([boards[woods[0]!]!.wood, weight]);
    const alike = first.get(key) ?? place;
    first.set(key, alike);
    return { woods, weight, alike };
  });
  return { offers, prices: goods.map(({ price }) => price), paid, isOfMoney };
};

/** The weight of a bound without what only breaks ties. */
export const paidOfWeight = (weight: number): number => Math.floor(weight / THOUSANDTH);

/** Panels alike, longest and widest first whatever the order of their rows. */
const kindsOf = (
  panels: readonly GluePanel[], terms: GlueTerms, unit: Unit, suits: readonly ReadonlySet<number>[],
): { readonly kind: PanelKind; readonly rows: readonly number[]; readonly suits: ReadonlySet<number> }[] => {
  const { strips } = terms;
  const least = marksUp(terms.leastStrip, unit);
  const most = marksDown(terms.greatestStrip, unit);
  const groups = new Map<string, number[]>();
  panels.forEach((panel, row) => {
    const { length, width, thickness, grade, alsoFrom, species } = panel;
    const sizes = [length, width, thickness].map((size) => size?.toString() ?? "");
    const key = JSON.stringify([...sizes, goodsKey(grade), goodsKey(alsoFrom), goodsKey(species)]);
    groups.set(key, [...(groups.get(key) ?? []), row]);
  });
  const found = [...groups].map(([key, rows]) => {
    const { length, width } = panels[rows[0]!]!;
    const need = marksUp(width!.plus(terms.roughWidth), unit);
    // A strip no wider than its panel serves as well, and one narrower than the others leave over serves none.
    const greatest = Math.min(most, Math.max(need, least));
    const kind: PanelKind = {
      length: marksUp(length.plus(terms.roughLength), unit),
      need,
      least: strips === Infinity ? least : Math.max(least, Math.min(greatest, need - (strips - 1) * greatest)),
      greatest,
      count: rows.reduce((sum, row) => sum + panels[row]!.quantity, 0),
    };
    return { key, kind, rows, suits: suits[rows[0]!]! };
  });
  return found.sort(
    (one, other) => other.kind.length - one.kind.length || other.kind.need - one.kind.need || (one.key < other.key ? -1 : 1),
  );
};

/** What no board can do for a kind of panel, the first of it. */
const faultOfKind = (
  kind: PanelKind, place: number, panel: GluePanel, terms: GlueTerms, unit: Unit, boards: readonly JobBoard[], tally: readonly TallyBoard[],
): Problem<GlueFault> | undefined => {
  const facts = { panel: panelName(panel) };
  const suited = boards.filter(({ wood }) => wood.suits[place] === true);
  const longest = (one: JobBoard): number => Math.max(0, ...one.wood.stretches);
  if (!suited.some((one) => longest(one) >= kind.length)) {
    const clear = suited.map((one) => Math.max(0, ...stretchesOf(tally[one.place]!, terms, unit).map(({ from, to }) => to - from)));
    const most = Math.max(...clear);
    const board = boardName(tally[suited[clear.indexOf(most)]!.place]!);
    return problem("panel-too-long", { ...facts, length: lengthOfMarks(kind.length, unit), longest: lengthOfMarks(most, unit), board });
  }
  const limits = { kerf: marksUp(terms.kerf, unit), joints: 2 * marksUp(terms.joint, unit) };
  if (kind.need > terms.strips * kind.greatest)
    return problem("too-few-strips", {
      ...facts, strips: terms.strips, greatest: terms.greatestStrip, all: terms.greatestStrip.times(terms.strips),
      need: lengthOfMarks(kind.need, unit),
    });
  const wide = suited.filter((one) => longest(one) >= kind.length);
  if (wide.some(({ wood }) => mostNet(wood.width, kind, limits) > 0)) return undefined;
  const widest = Math.max(...wide.map(({ wood }) => wood.width));
  return problem("boards-too-narrow", {
    ...facts, least: lengthOfMarks(kind.least, unit), widest: lengthOfMarks(Math.max(0, widest - limits.joints), unit),
  });
};

/** A glue-up in whole marks, panels rounded up and boards down, or what makes it none. */
export const glueJob = (
  panels: readonly GluePanel[], tally: readonly TallyBoard[], terms: GlueTerms, unit: Unit,
): GlueJob | Problem<GlueFault> => {
  const countOf = (rows: readonly { readonly quantity: number }[]): number => rows.reduce((sum, { quantity }) => sum + quantity, 0);
  if (countOf(panels) > MOST_PANELS) return problem("too-many-panels", { count: countOf(panels), most: MOST_PANELS });
  if (countOf(tally) > MOST_BOARDS) return problem("too-many-boards", { count: countOf(tally), most: MOST_BOARDS });
  if (terms.leastStrip.gt(terms.greatestStrip))
    return problem("least-over-greatest", { least: terms.leastStrip, greatest: terms.greatestStrip });
  const suits: ReadonlySet<number>[] = [];
  for (const panel of panels) {
    const found = suitableBoards(panel, tally, terms.plane);
    if (isProblem(found)) return found;
    suits.push(found);
  }
  const kinds = kindsOf(panels, terms, unit, suits);
  const shortest = Math.min(...kinds.map(({ kind }) => kind.length));
  const boards = jobBoards(tally, kinds.map((each) => each.suits), shortest, terms, unit);
  for (const [place, { kind, rows }] of kinds.entries()) {
    const fault = faultOfKind(kind, place, panels[rows[0]!]!, terms, unit, boards, tally);
    if (fault !== undefined) return fault;
  }
  const prices = boardPrices(tally);
  const { offers, ...goods } = offered(boards, prices);
  return {
    work: {
      kinds: kinds.map(({ kind }) => kind),
      woods: boards.map(({ wood }) => wood),
      offers,
      kerf: marksUp(terms.kerf, unit),
      joints: 2 * marksUp(terms.joint, unit),
      strips: terms.strips,
      isOfOneBoard: terms.together === "board",
    },
    boards,
    panelsOf: kinds.map(({ rows }) => rows.flatMap((row) => Array.from({ length: panels[row]!.quantity }, () => row))),
    ...goods,
    hasPrices: prices.hasPrices,
  };
};
