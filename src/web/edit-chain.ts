import type { BookRecord, PlacedEdit } from "./records";

/** Edits in the order in which they follow on the sheets kept whole. */
export interface EditChain {
  /** The edits that belong to the workbook: of two tabs that went on from one state, those of the one that was first. */
  readonly main: readonly PlacedEdit[];
  /** Edits of tabs that another was before, by opening, with all that they follow on; those that follow on nothing known stand alone. */
  readonly others: ReadonlyMap<string, readonly PlacedEdit[]>;
}

const ROOT = 0;

/** How the edits found with a workbook follow on each other. */
export const editChain = ({ revision, keptBy, holds = {} }: BookRecord, edits: readonly PlacedEdit[]): EditChain => {
  const ordered = edits.filter(({ opening, edit }) => edit > (holds[opening] ?? 0)).sort((one, other) => one.place - other.place);
  const byPlace = new Map(ordered.map((edit) => [edit.place, edit]));
  const byNumber = new Map(ordered.map((edit) => [`${edit.opening} ${edit.edit}`, edit]));
  /** The place of what an edit follows on; undefined where that is gone. */
  const before = (edit: PlacedEdit): number | undefined => {
    if (edit.edit > 1) {
      if (edit.opening === keptBy && edit.edit === (holds[keptBy] ?? 0) + 1) return ROOT;
      return byNumber.get(`${edit.opening} ${edit.edit - 1}`)?.place;
    }
    if (edit.revision !== revision) return undefined;
    return edit.after === ROOT || byPlace.has(edit.after) ? edit.after : undefined;
  };
  const next = new Map<number, PlacedEdit>();
  for (const edit of ordered) {
    const place = before(edit);
    if (place !== undefined && !next.has(place)) next.set(place, edit);
  }
  const main: PlacedEdit[] = [];
  for (let edit = next.get(ROOT); edit !== undefined; edit = next.get(edit.place)) main.push(edit);

  const pathTo = (place: number | undefined): readonly PlacedEdit[] => {
    const path: PlacedEdit[] = [];
    for (let edit = byPlace.get(place ?? ROOT); edit !== undefined; edit = byPlace.get(before(edit) ?? ROOT)) path.unshift(edit);
    return path;
  };
  const isMain = new Set(main);
  const others = new Map<string, readonly PlacedEdit[]>();
  for (const edit of ordered)
    if (!isMain.has(edit)) others.set(edit.opening, [...(others.get(edit.opening) ?? pathTo(before(edit))), edit]);
  return { main, others };
};
