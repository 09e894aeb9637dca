import { toldAnswer, type ToldAnswer } from "../functions/told-answer";
import type { Solve } from "./answer";
import {
  answerLines, argumentLines, type AskedCall, codeLines, codeOf, type ExplainedLine, line, nameOf, ourCalls, readAsked, shownText, textOf,
  unitOfLimit,
} from "./explained-call";
import { type FormulaTree, formulaTree, treeParts } from "./formula/formula-tree";
import type { CellsOf } from "./formula/worked-out";
import type { Block, CellHost, HeldCell, HeldCells, Place } from "./host";
import { placeText } from "./place-text";
import { cellsOfFormula, type StandingFormula, standingFormula } from "./standing-formula";
import { why } from "./why";

/** What a cell is, in a sentence, and what stands behind it, each under its name. */
export interface Explained {
  readonly says: string;
  readonly lines: readonly ExplainedLine[];
}

/** Rows of an answer that are read for the figures of its other labels. */
const MOST_ROWS = 500;
/** Cells that a formula of the spreadsheet's own names are shown so far. */
const MOST_READ = 8;

const plainValue = (value: HeldCell["value"]): string | number | boolean | null =>
  typeof value === "object" && value !== null ? null : value;

/** The rows of an answer as they stand: all of a table by labels, the heading and the asked row of any other. */
const answerRows = async (at: Block, row: number, isByLabel: boolean, host: CellHost): Promise<HeldCells> => {
  if (isByLabel && at.rows <= MOST_ROWS) return (await host.read([at]))[0] ?? [];
  const [own = []] = await host.read([{ ...at, row: at.row + row, rows: 1 }]);
  return Array.from({ length: row + 1 }, (_, place) => (place === row ? (own[0] ?? []) : []));
};

const headline = (where: string, { value, is }: ToldAnswer, isText: boolean): string => {
  if (value === "") return `${where} is empty: ${is === "" ? "the answer is an empty text" : `nothing stands for ${is}`}.`;
  const shown = isText ? `"${value}"` : value;
  return is === "" ? `${where} shows ${shown}.` : `${where} shows ${shown}: ${is}.`;
};

/** A cell that one call of ours fills, or that it spills into. */
const ofOurs = async (
  place: Place, { at }: StandingFormula, asked: AskedCall, host: CellHost, wrong: string | undefined,
): Promise<Explained> => {
  const told = readAsked(asked);
  const { result } = asked.declaration;
  const isByLabel = result.kind === "table" && Object.keys(result.columns)[0] === "label";
  const rows = await answerRows(at, asked.row, isByLabel, host);
  const cells = rows.map((row) => row.map(({ value }) => plainValue(value)));
  const bare = toldAnswer(asked.declaration, { rows: cells, row: asked.row, column: asked.column }, told?.unit);
  const code = codeOf(told, bare);
  const unit = unitOfLimit(asked.declaration, told, code);
  const answer = bare.isBare ? { ...bare, value: `${bare.value} ${unit}`.trim() } : bare;
  const isText = typeof cells[asked.row]?.[asked.column] === "string";
  return {
    says: wrong ?? headline(placeText(place), answer, isText),
    lines: [
      ...line("Function", `${nameOf(asked.declaration)}: ${asked.declaration.says}`),
      ...argumentLines(asked, told),
      ...answerLines(asked, told, answer, codeLines(code, answer, unit)),
    ],
  };
};

/** The function of ours whose answer stands in cells that a formula names. */
const filledBy = async (part: FormulaTree, sheet: string, host: CellHost): Promise<string> => {
  if (part.kind !== "cells") return "";
  const standing = await standingFormula({ sheet: part.sheet ?? sheet, ...part.from }, host);
  const tree = standing === undefined ? undefined : formulaTree(standing.formula);
  const [found] = tree === undefined ? [] : ourCalls(tree);
  return found === undefined ? "" : `, filled by ${nameOf(found[1])}`;
};

/** A formula as it was read, and the cells it names. */
interface Read {
  readonly tree: FormulaTree | undefined;
  readonly cellsOf: CellsOf | undefined;
}

/** A cell whose formula is the spreadsheet's own, with calls of ours in it or without. */
const ofTheSheet = async (
  place: Place, value: HeldCell["value"], standing: StandingFormula, { tree, cellsOf }: Read, host: CellHost,
): Promise<Explained> => {
  const calls = tree === undefined ? [] : ourCalls(tree);
  const names = [...new Set(calls.map(([, declaration]) => nameOf(declaration)))];
  const parts = tree === undefined ? [] : treeParts(tree).filter(({ kind }) => kind === "cells");
  const read = [...new Map(parts.map((part) => [textOf(part), part])).values()].slice(0, MOST_READ);
  const shown = await Promise.all(
    read.map(async (part) => {
      const rows = cellsOf?.(part) ?? [];
      const one = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : undefined;
      const says = one === undefined || (typeof one === "object" && one !== null) ? "" : ` shows ${shownText(one)}`;
      return `${textOf(part)}${says}${await filledBy(part, standing.at.sheet, host)}`;
    }),
  );
  return {
    says:
      `${placeText(place)} shows ${shownText(value)}: a formula of the spreadsheet's own` +
      `${names.length === 0 ? "" : `, around ${names.join(" and ")}`}.`,
    lines: [...line("Formula", standing.formula), ...line("Reads", shown.join("; "))],
  };
};

const typedIn = (where: string, value: HeldCell["value"]): string =>
  value === null || value === ""
    ? `${where} is empty.`
    : `${where} holds ${typeof value === "string" ? "the text " : ""}${shownText(value)}, typed in: nothing is worked out there.`;

/** What a cell is: a good answer of ours, an error, a formula of the spreadsheet's own, or what somebody typed. */
export const explained = async (place: Place, host: CellHost, solve: Solve): Promise<Explained> => {
  const [[[cell] = []] = []] = await host.read([{ ...place, rows: 1, columns: 1 }]);
  const value = cell?.value ?? null;
  const wrong = await why(place, host, solve);
  const standing = await standingFormula(place, host);
  if (standing === undefined) return { says: wrong ?? typedIn(placeText(place), value), lines: [] };
  const tree = formulaTree(standing.formula);
  const cellsOf = tree === undefined ? undefined : await cellsOfFormula(tree, standing.at.sheet, host);
  const [first] = tree === undefined ? [] : ourCalls(tree);
  if (first === undefined || cellsOf === undefined || tree === undefined) {
    const own = await ofTheSheet(place, value, standing, { tree, cellsOf }, host);
    return wrong === undefined ? own : { ...own, says: wrong };
  }
  const [call, declaration] = first;
  const { at } = standing;
  const asked: AskedCall = { call, declaration, cellsOf, solve, row: place.row - at.row, column: place.column - at.column };
  if (call === tree) return ofOurs(place, standing, asked, host, wrong);
  const own = await ofTheSheet(place, value, standing, { tree, cellsOf }, host);
  return {
    says: wrong ?? own.says,
    lines: [
      ...own.lines,
      ...line("Function", `${nameOf(declaration)}: ${declaration.says}`),
      ...argumentLines(asked, readAsked({ ...asked, row: 0, column: 0 })),
      ...line("Source", declaration.source),
    ],
  };
};
