import type { IRange } from "@univerjs/core";
import { deserializeRangeWithSheet, generateStringWithSequence, type LexerTreeBuilder, sequenceNodeType } from "@univerjs/engine-formula";

/** A reference as it is written from now on; undefined where it stays. */
export type Rewrite = (range: IRange, sheetName: string) => string | undefined;

/** A formula with its references written anew. */
export const rewritten = (lexer: LexerTreeBuilder, formula: string, rewrite: Rewrite): string => {
  const nodes = lexer.sequenceNodesBuilder(formula);
  if (!nodes) return formula;
  let isNew = false;
  const next = nodes.map((node) => {
    if (typeof node === "string" || node.nodeType !== sequenceNodeType.REFERENCE) return node;
    const { range, sheetName } = deserializeRangeWithSheet(node.token);
    const token = rewrite(range, sheetName);
    if (token === undefined || token === node.token) return node;
    isNew = true;
    return { ...node, token };
  });
  return isNew ? `=${generateStringWithSequence(next)}` : formula;
};
