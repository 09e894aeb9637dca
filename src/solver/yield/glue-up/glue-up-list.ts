import { Exact } from "../../length/exact";
import type { Length, Unit } from "../../length/length";
import { isProblem, type Problem } from "../../problem";
import { lengthOfMarks } from "../mark";
import type { TallyBoard } from "../tally/tally-board";
import { gapOf, gluePlan, type GluePlan, type NoGluePlan } from "./glue-plan";
import type { GluePanel } from "./glue-panel";
import type { GlueTerms } from "./glue-terms";
import type { GluedStrip } from "./glue-work";

/** A strip, a panel, or all of them. */
export interface GlueRow {
  readonly panel: string | number;
  readonly strip?: number;
  readonly board?: string | number;
  readonly section?: number;
  readonly along?: Length;
  readonly across?: Length;
  readonly roughWidth?: Length;
  readonly netWidth?: Length;
  readonly length?: Length;
  readonly stripsInAll?: number;
  readonly boardsInAll?: number;
  readonly over?: Length;
  readonly cost?: Exact;
  readonly note?: string;
}

const PERCENT = 100;

/** The share of a plan that may be saved, rounded up to a tenth of a percent: never better than it is. */
const words = ({ gap, isSearched, job: { isOfMoney } }: GluePlan): string => {
  const how = isSearched ? "searched, not certified" : "proven";
  if (gap === 0) return `best possible (${how}): no choice of boards ${isOfMoney ? "costs less" : "is of fewer board feet"}`;
  const share = new Exact(gap).times(PERCENT).toDecimalPlaces(1, Exact.ROUND_UP).toString();
  return `at most ${share} % ${isOfMoney ? "" : "of the board feet "}could still be saved`;
};

/** Names of panels in the order of kinds and panels; where a name stands for several they are numbered. */
const panelNames = (panels: readonly GluePanel[], panelsOf: GluePlan["job"]["panelsOf"]) => {
  const labels = panels.map(({ label, row }) => (label === undefined || label === "" ? `row ${row}` : label));
  const counts = new Map<string, number>();
  panels.forEach(({ quantity }, row) => counts.set(String(labels[row]), (counts.get(String(labels[row])) ?? 0) + quantity));
  const numbers = new Map<string, number>();
  const nameOf = (row: number): string | number => {
    const label = labels[row]!;
    if (counts.get(String(label)) === 1) return label;
    const number = (numbers.get(String(label)) ?? 0) + 1;
    numbers.set(String(label), number);
    return `${label} ${number}`;
  };
  return panelsOf
    .flatMap((rows, kind) => rows.map((row, panel) => ({ kind, panel, row })))
    .sort((one, other) => one.row - other.row || one.panel - other.panel)
    .map((each) => ({ ...each, name: nameOf(each.row) }));
};

interface Listing {
  readonly plan: GluePlan;
  readonly tally: readonly TallyBoard[];
  readonly unit: Unit;
}

const boardCell = ({ plan: { job }, tally }: Listing, wood: number): string | number => {
  const { place, copy } = job.boards[wood]!;
  const { label, row, quantity } = tally[place]!;
  const name = label === undefined || label === "" ? `row ${row}` : label;
  return quantity === 1 ? name : `${name} (${copy + 1})`;
};

/** The number of each section on its board, from the end chalked 0. */
const sectionNumbers = (strips: readonly GluedStrip[]): ((strip: GluedStrip) => number) => {
  const keyOf = ({ stretch, along }: GluedStrip): number => stretch * 1e7 + along;
  const found = new Map<number, number[]>();
  for (const strip of strips) found.set(strip.wood, [...(found.get(strip.wood) ?? []), keyOf(strip)]);
  for (const [wood, keys] of found) found.set(wood, [...new Set(keys)].sort((one, other) => one - other));
  return (strip) => (found.get(strip.wood) ?? []).indexOf(keyOf(strip)) + 1;
};

/** Strips with their rows, panel after panel, and the panels with theirs. */
const rowsOf = (panels: readonly GluePanel[], listing: Listing) => {
  const { plan: { job, strips }, tally, unit } = listing;
  const { work, boards } = job;
  const marks = (count: number): Length => lengthOfMarks(count, unit);
  const sectionOf = sectionNumbers(strips);
  const names = panelNames(panels, job.panelsOf);
  const own = names.map(({ kind, panel }) =>
    strips
      .filter((strip) => strip.kind === kind && strip.panel === panel)
      .sort((one, other) => boards[one.wood]!.place - boards[other.wood]!.place || one.wood - other.wood
        || sectionOf(one) - sectionOf(other) || one.across - other.across),
  );
  const stripRow = (name: string | number) => (strip: GluedStrip, at: number): GlueRow => {
    const { place, starts } = boards[strip.wood]!;
    return {
      panel: name,
      strip: at + 1,
      board: boardCell(listing, strip.wood),
      section: sectionOf(strip),
      along: marks(starts[strip.stretch]! + strip.along),
      across: tally[place]!.edge.div(2).plus(marks(strip.across)),
      roughWidth: marks(strip.net + work.joints),
      netWidth: marks(strip.net),
      length: marks(work.kinds[strip.kind]!.length),
    };
  };
  const panelRow = (name: string | number, kind: number, of: readonly GluedStrip[]): GlueRow => {
    const net = of.reduce((sum, strip) => sum + strip.net, 0);
    return {
      panel: name, stripsInAll: of.length, boardsInAll: new Set(of.map(({ wood }) => wood)).size,
      netWidth: marks(net), length: marks(work.kinds[kind]!.length), over: marks(net - work.kinds[kind]!.need),
    };
  };
  return {
    strips: names.flatMap(({ name }, place) => own[place]!.map((strip, at) => ({ strip, row: stripRow(name)(strip, at) }))),
    panels: names.map(({ name, kind }, place) => panelRow(name, kind, own[place]!)),
  };
};

const mixed = ({ strips, job }: GluePlan): number => {
  const boards = new Map<string, Set<number>>();
  for (const { kind, panel, wood } of strips) {
    const key = `${kind} ${panel}`;
    boards.set(key, (boards.get(key) ?? new Set()).add(wood));
  }
  return job.work.isOfOneBoard ? 0 : [...boards.values()].filter(({ size }) => size > 1).length;
};

const plural = (count: number, one: string, several: string): string => (count === 1 ? `1 ${one}` : `${count} ${several}`);

/** The plan, and what it costs more to make each panel of one board, in words, where that is another plan and money counts. */
const withSameBoard = (
  panels: readonly GluePanel[], tally: readonly TallyBoard[], terms: GlueTerms, unit: Unit, plan: GluePlan,
): { readonly plan: GluePlan; readonly same?: string } => {
  const count = mixed(plan);
  if (count === 0 || !plan.job.isOfMoney) return { plan };
  const other = gluePlan(panels, tally, { ...terms, together: "board" }, unit);
  const mix = plural(count, "panel mixes boards", "panels mix boards");
  if (isProblem(other)) return { plan, same: `${mix}; no plan with each of one board was found` };
  const { bound, isSearched } = plan;
  if (other.paid < plan.paid) return { plan: { ...other, bound, gap: gapOf(other.paid, bound), isSearched } };
  const more = other.cost.minus(plan.cost);
  return { plan, same: `${mix}; same board costs ${more.isZero() ? "no" : more.toFixed(2)} more` };
};

/** A board that is cut for a glue-up, as the table calls it, with the rows of its strips. */
export interface GluedBoard {
  readonly name: string | number;
  readonly board: TallyBoard;
  readonly strips: readonly GlueRow[];
}

/** A glue-up as it is cut and glued. */
export interface GlueUpRows {
  /** A row a strip, a row a panel, then what it comes to. */
  readonly rows: readonly GlueRow[];
  /** In the order of the tally. */
  readonly boards: readonly GluedBoard[];
}

const boardsOf = (listing: Listing, strips: readonly { readonly strip: GluedStrip; readonly row: GlueRow }[]): readonly GluedBoard[] => {
  const { plan: { job }, tally } = listing;
  return [...new Set(strips.map(({ strip }) => strip.wood))]
    .sort((one, other) => job.boards[one]!.place - job.boards[other]!.place || job.boards[one]!.copy - job.boards[other]!.copy)
    .map((wood) => ({
      name: boardCell(listing, wood),
      board: tally[job.boards[wood]!.place]!,
      strips: strips.filter(({ strip }) => strip.wood === wood).map(({ row }) => row),
    }));
};

/** A glue-up as it is cut and glued, panel by panel and board by board. */
export const glueUpRows = (
  panels: readonly GluePanel[], tally: readonly TallyBoard[], terms: GlueTerms, unit: Unit,
): GlueUpRows | Problem<NoGluePlan> => {
  const found = gluePlan(panels, tally, terms, unit);
  if (isProblem(found)) return found;
  const { plan, same } = withSameBoard(panels, tally, terms, unit, found);
  const { job, strips, cost } = plan;
  const listing = { plan, tally, unit };
  const listed = rowsOf(panels, listing);
  const total: GlueRow = {
    panel: "total",
    stripsInAll: strips.length,
    boardsInAll: new Set(strips.map(({ wood }) => wood)).size,
    ...(job.hasPrices ? { cost } : {}),
    note: [words(plan), same].filter((part) => part !== undefined).join("; "),
  };
  return { rows: [...listed.strips.map(({ row }) => row), ...listed.panels, total], boards: boardsOf(listing, listed.strips) };
};

/** The rows alone. */
export const glueUpList = (...given: Parameters<typeof glueUpRows>): readonly GlueRow[] | Problem<NoGluePlan> => {
  const found = glueUpRows(...given);
  return isProblem(found) ? found : found.rows;
};
