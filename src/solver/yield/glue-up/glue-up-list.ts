import type { Exact } from "../../length/exact";
import type { Length, Unit } from "../../length/length";
import { isProblem, type Problem } from "../../problem";
import { lengthOfMarks } from "../mark";
import type { TallyBoard } from "../tally/tally-board";
import { glueUp, inWords } from "./glue-up";
import type { GluePlan, NoGluePlan } from "./glue-plan";
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
  const found = glueUp(panels, tally, terms, unit);
  if (isProblem(found)) return found;
  const { plan } = found;
  const { job, strips, cost } = plan;
  const listing = { plan, tally, unit };
  const listed = rowsOf(panels, listing);
  const total: GlueRow = {
    panel: "total",
    stripsInAll: strips.length,
    boardsInAll: new Set(strips.map(({ wood }) => wood)).size,
    ...(job.hasPrices ? { cost } : {}),
    note: inWords(found),
  };
  return { rows: [...listed.strips.map(({ row }) => row), ...listed.panels, total], boards: boardsOf(listing, listed.strips) };
};

/** The rows alone. */
export const glueUpList = (...given: Parameters<typeof glueUpRows>): readonly GlueRow[] | Problem<NoGluePlan> => {
  const found = glueUpRows(...given);
  return isProblem(found) ? found : found.rows;
};
