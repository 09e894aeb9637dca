import type { Column, Row, WholeModel } from "./whole-model";

/** Columns and rows of a model as they are added; a row answers its number. */
export const modelInWork = () => {
  const columns: Column[] = [];
  const rows: Row[] = [];
  const row = (least: number, most: number): number => rows.push({ least, most }) - 1;
  return {
    model: { columns, rows } as WholeModel,
    row,
    column: (cost: number, most: number, entries: Column["entries"]): void => {
      columns.push({ cost, most, entries });
    },
    /** Entries of so many columns alike, each of which is 1 only where the one before it is: one order of them is enough. */
    inTurn: (count: number): Column["entries"][] => {
      const between = Array.from({ length: Math.max(0, count - 1) }, () => row(-Infinity, 0));
      return Array.from({ length: count }, (_, place) => [
        ...(place > 0 ? [[between[place - 1]!, 1] as const] : []), ...(place < count - 1 ? [[between[place]!, -1] as const] : []),
      ]);
    },
  };
};
