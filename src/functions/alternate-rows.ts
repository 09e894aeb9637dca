import { type BadRow, isBadRow } from "../solver/bad-row";
import {
  type AlternateBoards,
  type AlternateRow,
  alternates,
  type AlternateVerdict,
  type CheckedStair,
  type CutAlternates,
  isFaulty,
  type StairChange,
} from "../solver/bid/alternates";
import type { Terms } from "../solver/bid/terms";
import type { LimitOfCode, OverallVerdict } from "../solver/code/overall-verdict";
import { codeProfile } from "../solver/code/profiles";
import { goodsKey } from "../solver/goods/goods-key";
import { joinedNotes } from "../solver/goods/near-names";
import type { Length, Unit } from "../solver/length/length";
import { isProblem, type Problem, problem } from "../solver/problem";
import type { BuyRow } from "../solver/yield/buy-list";
import { type Failed, failed, folded, isFailed } from "./cells";
import type { RowOf } from "./columns";
import { cuttingJobOf } from "./cutting";
import type { ResultRow, Size } from "./declare";
import { type GivenStair, readStair } from "./read-stair";
import type { TableRow } from "./read-table";
import { inSight, lengthText, quoted, sentence } from "./say";
import { SHEET_PROBLEMS } from "./sheets";
import { STAIR_PROBLEMS } from "./stair-problems";
import type { alternatePieces, amendments, changes, countedCosts, stock } from "./tables";

/** What ALTERNATES is given, as it was read. */
export interface GivenToAlternates {
  readonly costs: readonly (RowOf<typeof countedCosts.columns> & { readonly row: number })[];
  readonly changes: readonly TableRow<typeof changes.columns>[] | undefined;
  readonly stair: GivenStair | undefined;
  readonly code: string;
  readonly amendments: readonly RowOf<typeof amendments.columns>[] | undefined;
  readonly pieces: readonly TableRow<typeof alternatePieces.columns>[] | undefined;
  readonly stock: readonly RowOf<typeof stock.columns>[] | undefined;
  readonly kerf: Length;
  readonly trim: Size;
  readonly unit: Unit;
}

const UNIT = "unit";

/** The labels that each alternate changes, read as those of a stair table; the first row that cannot be read speaks for its alternate. */
const stairChanges = (rows: readonly TableRow<typeof changes.columns>[], unit: Unit): readonly StairChange<Failed>[] | Failed => {
  const byOption = new Map<string, { readonly option: string; bad?: Failed; readonly cells: (string | number)[][] }>();
  for (const row of rows) {
    const { option } = (isBadRow(row) ? row.read : row) as { readonly option?: string };
    if (option === undefined) return isBadRow(row) ? row.bad : failed("changes, option: is empty or 0; give a value");
    const known = byOption.get(goodsKey(option)) ?? { option, cells: [] };
    byOption.set(goodsKey(option), known);
    if (isBadRow(row)) known.bad ??= row.bad;
    else known.cells.push([row.label, row.value]);
  }
  return [...byOption.values()].map(({ option, bad, cells }) => {
    if (bad !== undefined) return { option, change: { bad } };
    const hasUnit = cells.some(([label = ""]) => folded(String(label)) === UNIT);
    const read = readStair("changes", hasUnit ? cells : [[UNIT, unit], ...cells]);
    return { option, change: isFailed(read) ? { bad: read } : read.given };
  });
};

/** The pieces as BUY reads them, each with its alternate; one as drawn that cannot be read is no fault of an alternate. */
const cutAlternates = ({ pieces, stock: sticks, kerf, trim }: GivenToAlternates, unit: Unit) => {
  if (pieces === undefined || sticks === undefined) return undefined;
  const asDrawn = pieces.find((row): row is BadRow<Failed> => isBadRow(row) && String(row.read?.["option"] ?? "") === "");
  if (asDrawn !== undefined) return asDrawn.bad;
  const { pieces: _none, ...saw } = cuttingJobOf({ pieces: [], stock: sticks, kerf, trim: trim.length, keep: undefined, unit });
  return {
    saw: { ...saw, ...(trim.width === undefined ? {} : { edgeTrim: trim.width }) },
    pieces: pieces.flatMap((row): CutAlternates<Failed>["pieces"] => {
      if (isBadRow(row)) return [row];
      const { pieces: read } = cuttingJobOf({
        pieces: [{ ...row, grain: "fixed" }], stock: [], kerf, trim: trim.length, keep: undefined, unit,
      });
      return read.map((piece) => ({ ...piece, option: row.option }));
    }),
  };
};

/** Names in a list of which a cell holds only the first. */
const MOST_NAMED = 3;

const namedLimits = (limits: readonly LimitOfCode[]): string => {
  const names = limits.slice(0, MOST_NAMED).map(({ item, clause }) => (clause === "" ? item : `${item} (${clause})`));
  return `${names.join(", ")}${limits.length > MOST_NAMED ? ` and ${limits.length - MOST_NAMED} more` : ""}`;
};

const overallText = ({ failing, mayFail, toSettle }: OverallVerdict): string =>
  [
    failing.length === 0 ? "none fail" : `fails ${namedLimits(failing)}`,
    ...(mayFail.length === 0 ? [] : [`may fail ${namedLimits(mayFail)}`]),
    ...(toSettle === 0 ? [] : [`${toSettle} to settle`]),
  ].join("; ");

type Wordings = Readonly<Record<string, { readonly says: string }>>;

const inWords = ({ problem: code, details }: Problem, wordings: Wordings, unit: Unit): string =>
  sentence(wordings[code]?.says ?? code, details, unit);

/** What is wrong with a cell, in a cell of words: an error that was handed over with its code. */
const said = ({ failed: code, says }: Failed): string => (code === "#VALUE!" || says.includes(code) ? says : `${code} ${says}`.trim());

const verdictText = (verdict: AlternateVerdict<Failed>, { stair }: GivenToAlternates, unit: Unit): string => {
  if (verdict === "not given") return stair === undefined ? "no stair given" : "no code given";
  if (typeof verdict === "string") return verdict;
  if (isFaulty<Failed>(verdict)) return `not checked: ${said(verdict.bad)}`;
  return isProblem(verdict) ? `no stair: ${inWords(verdict, STAIR_PROBLEMS, unit)}` : overallText(verdict);
};

const goodsText = (goods: readonly BuyRow[], unit: Unit): string => {
  const named = goods.map(({ item, quantity }) => `${quantity} ${typeof item === "object" ? `of ${lengthText(item, unit)}` : item}`);
  return goods.length === 0 ? "nothing to buy" : `${goods.reduce((sum, { quantity }) => sum + quantity, 0)}: ${named.join(", ")}`;
};

const boardsText = (boards: AlternateBoards<Failed>, { pieces }: GivenToAlternates, unit: Unit): string => {
  if (boards === "not given") return pieces === undefined ? "no pieces given" : "no stock given";
  if (boards === "too many plans") return "not planned: one call plans as drawn and three alternates; BUY plans this one";
  if (typeof boards === "string") return boards;
  if (isFaulty<Failed>(boards)) return `not planned: ${said(boards.bad)}`;
  return isProblem(boards) ? `cannot be cut: ${inWords(boards, SHEET_PROBLEMS, unit)}` : goodsText(boards, unit);
};

const uncountedNote = ({ uncounted }: AlternateRow<Failed>): string => {
  const [first] = uncounted;
  if (first === undefined) return "";
  const more = uncounted.length === 1 ? "" : ` and ${uncounted.length - 1} more`;
  return `hours not given for row ${first.row} (${inSight(String(first.item))})${more}: quantity and a unit of time`;
};

const NOT_IN_COSTS = { kind: "text", value: "not in costs" } as const;

const rowOf = (row: AlternateRow<Failed>, given: GivenToAlternates, unit: Unit): ResultRow => {
  const { option, part, priced, near, labour, blank, verdict, boards } = row;
  const nearest = near === undefined ? "" : `; nearest is ${quoted(near)}`;
  const unpriced = priced === undefined ? `in no row of costs${nearest}: write one name, or its costs` : "";
  return {
    option: option === "" ? "as drawn" : option,
    cost: priced?.cost ?? NOT_IN_COSTS,
    price: priced?.price ?? NOT_IN_COSTS,
    addOrDeduct: priced?.addOrDeduct ?? NOT_IN_COSTS,
    hours: priced === undefined
      ? NOT_IN_COSTS
      : labour.counted === 0 && labour.uncounted.length > 0 ? { kind: "text", value: "not given" } : labour.hours,
    verdict: verdictText(verdict, given, unit),
    boardsToBuy: boardsText(boards, given, unit),
    note: joinedNotes(part, joinedNotes(unpriced, joinedNotes(blank, uncountedNote(row)))),
  };
};

/** The stair as drawn with the code it is held against, where both are given. */
const checkedStair = ({ stair, code, amendments: local }: GivenToAlternates): CheckedStair | undefined | Problem<"unknown-code"> => {
  if (stair === undefined) return undefined;
  const profile = code === "" ? undefined : codeProfile(code);
  if (isProblem(profile)) return profile;
  return {
    ...stair,
    ...(profile === undefined ? {} : { profile }),
    amendments: (local ?? []).map((row) => ({ item: String(row.item), limit: row.limit, authority: row.authority })),
  };
};

/** The rows of ALTERNATES, in words where there is no figure. */
export const alternateRows = (given: GivenToAlternates, terms: Terms) => {
  const unit = given.stair?.unit ?? given.unit;
  if (unit !== given.unit && given.unit === "mm") return problem("stair-in-inches");
  const stair = checkedStair(given);
  if (isProblem(stair)) return stair;
  const changed = stairChanges(given.changes ?? [], unit);
  if (isFailed(changed)) return changed;
  const cutting = cutAlternates(given, unit);
  if (isFailed(cutting)) return cutting;
  const rows = alternates<Failed>({
    costs: given.costs, terms, changes: changed,
    ...(stair === undefined ? {} : { stair }),
    ...(cutting === undefined ? {} : { cutting }),
  });
  return isProblem(rows) ? rows : rows.map((row) => rowOf(row, given, unit));
};
