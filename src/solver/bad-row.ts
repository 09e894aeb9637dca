/** A row that could not be read: what is wrong with it, and the step, label or item by which the user knows it. */
export interface BadRow<Bad> {
  readonly bad: Bad;
  readonly label: string | number;
  /** Its place, and what could be read of it, by column: what it may be about. */
  readonly row?: number;
  readonly read?: Readonly<Record<string, unknown>>;
}

export const isBadRow = <Row extends object, Bad>(row: Row | BadRow<Bad>): row is BadRow<Bad> => "bad" in row;

export const goodRows = <Row extends object, Bad>(rows: readonly (Row | BadRow<Bad>)[]): readonly Row[] =>
  rows.filter((row): row is Row => !isBadRow(row));

/** Answers the good rows together and puts each bad one back in its place, as `rowOf` words it. */
export const besideBadRows = <Row extends object, Bad, Result>(
  rows: readonly (Row | BadRow<Bad>)[], answers: (good: readonly Row[]) => readonly Result[], rowOf: (row: BadRow<Bad>) => Result,
): readonly Result[] => {
  const results = answers(goodRows(rows)).values();
  return rows.map((row) => (isBadRow(row) ? rowOf(row) : results.next().value!));
};
