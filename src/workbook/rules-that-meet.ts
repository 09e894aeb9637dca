import { type ICommandInfo, type IRange, Rectangle } from "@univerjs/core";
import type { LexerTreeBuilder } from "@univerjs/engine-formula";
import { InsertRowCommand } from "@univerjs/sheets";
import { inReadingOrder, type LookRule } from "./engine-rules";

/** New rows between a block and the one that begins right under it, as wide as both. */
const between = (command: ICommandInfo, over: IRange, under: IRange): readonly IRange[] => {
  if (command.id !== InsertRowCommand.id) return [];
  const { startRow, endRow } = (command.params as { readonly range: IRange }).range;
  const [startColumn, endColumn] = [Math.max(over.startColumn, under.startColumn), Math.min(over.endColumn, under.endColumn)];
  const doMeet = over.endRow === startRow - 1 && under.startRow === startRow && startColumn <= endColumn;
  return doMeet ? [{ startRow, endRow, startColumn, endColumn }] : [];
};

/** Whether two rules are one in all but their cells: a rule of several blocks is stored, and comes back, as one for each. */
const saySame = (lexer: LexerTreeBuilder, one: LookRule, other: LookRule): boolean => {
  if (one === other) return true;
  const [from, to] = [inReadingOrder(one.ranges)[0], inReadingOrder(other.ranges)[0]];
  if (!from || !to || JSON.stringify(one.rule.style) !== JSON.stringify(other.rule.style)) return false;
  const moved = lexer.moveFormulaRefOffset(one.rule.value, to.startColumn - from.startColumn, to.startRow - from.startRow);
  return moved === other.rule.value;
};

/** The cells of a rule once rows came, with the new ones where it met itself or another that says the same. */
export const overWhatCame = (
  lexer: LexerTreeBuilder, command: ICommandInfo, rule: LookRule, rules: readonly LookRule[], moved: readonly IRange[],
): readonly IRange[] => {
  const came = rules.flatMap((other) => {
    const cells = rule.ranges.flatMap((range) => other.ranges.flatMap((next) => between(command, range, next)));
    return cells.length > 0 && saySame(lexer, rule, other) ? cells : [];
  });
  if (came.length === 0) return moved;
  const plain = ({ startRow, endRow, startColumn, endColumn }: IRange): IRange => ({ startRow, endRow, startColumn, endColumn });
  return inReadingOrder(Rectangle.mergeRanges([...moved, ...came]).map(plain));
};
