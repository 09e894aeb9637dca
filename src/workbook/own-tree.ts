import { LexerNode } from "@univerjs/engine-formula";

/**
 * A formula's tree of one's own. The engine keeps one tree for each text of a formula, and takes the names of LET out of it when a workbook
 * first works with it: the same formula in the next workbook found them gone and was in error.
 */
export const ownTree = (node: LexerNode): LexerNode => {
  const copy = new LexerNode();
  copy.setToken(node.getToken());
  copy.setIndex(node.getStartIndex(), -1);
  const lambda = node.getLambdaId();
  if (lambda) copy.setLambdaId(lambda);
  copy.setLambdaParameter(node.getLambdaParameter());
  copy.setDefinedNames([...node.getDefinedNames()]);
  for (const child of node.getChildren()) {
    const own = typeof child === "string" ? child : ownTree(child);
    if (typeof own !== "string") own.setParent(copy);
    copy.addChildren(own);
  }
  return copy;
};
