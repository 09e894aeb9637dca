/**
 * The least cost of a tiny glue-up, from every choice of boards, every way to crosscut each and every whole width of every strip. With all
 * sizes whole, whole widths are enough: for given strips the widths are those of a transport between sections and panels.
 */
export interface TinyGlueUp {
  readonly panels: readonly { readonly length: number; readonly need: number }[];
  readonly boards: readonly { readonly length: number; readonly width: number; readonly price: number }[];
  readonly kerf: number;
  /** Taken off a strip by jointing, both edges. */
  readonly joints: number;
  readonly least: number;
  readonly greatest: number;
  readonly strips: number;
  readonly isOfOneBoard: boolean;
}

interface Section {
  readonly board: number;
  readonly length: number;
  readonly left: number;
}

/** All ways to crosscut a length, each as lengths. */
const crosscuts = (length: number, lengths: readonly number[], kerf: number): number[][] => {
  if (lengths.length === 0) return [[]];
  const [first, ...others] = lengths;
  const without = crosscuts(length, others, kerf);
  return first! > length ? without : [...without, ...crosscuts(length - first! - kerf, lengths, kerf).map((way) => [first!, ...way])];
};

const keyOf = (sections: readonly Section[], ...further: readonly number[]): string =>
  `${sections.map(({ board, length, left }) => `${board} ${length} ${left}`).sort().join(",")}|${further.join(" ")}`;

/** Whether the panels come out of these sections. */
const holds = (job: TinyGlueUp, sections: readonly Section[]): boolean => {
  const failed = new Set<string>();
  const fill = (panel: number, rest: number, count: number, of: number, state: readonly Section[]): boolean => {
    if (rest <= 0) return panel + 1 === job.panels.length || fill(panel + 1, job.panels[panel + 1]!.need, 0, -1, state);
    if (count === job.strips) return false;
    const key = keyOf(state, panel, rest, count, of);
    if (failed.has(key)) return false;
    for (const [place, { board, length, left }] of state.entries()) {
      if (length < job.panels[panel]!.length || (job.isOfOneBoard && of >= 0 && of !== board)) continue;
      const most = Math.min(job.greatest, left - job.joints, Math.max(rest, job.least));
      for (let net = job.least; net <= most; net += 1) {
        const next = state.map((section, at) => (at === place ? { ...section, left: left - net - job.joints - job.kerf } : section));
        if (fill(panel, rest - net, count + 1, board, next)) return true;
      }
    }
    failed.add(key);
    return false;
  };
  return fill(0, job.panels[0]!.need, 0, -1, sections);
};

export const leastOfEvery = (job: TinyGlueUp): number | undefined => {
  const { boards } = job;
  const lengths = [...new Set(job.panels.map(({ length }) => length))];
  const sets = Array.from({ length: 2 ** boards.length }, (_, bits) => boards.map((__, at) => at).filter((at) => (bits >> at) % 2 === 1))
    .map((set) => ({ set, price: set.reduce((sum, at) => sum + boards[at]!.price, 0) }))
    .sort((one, other) => one.price - other.price);
  const isHeld = (set: readonly number[], sections: readonly Section[]): boolean => {
    const [first, ...others] = set;
    if (first === undefined) return holds(job, sections);
    const { length, width } = boards[first]!;
    return crosscuts(length, lengths, job.kerf).some((way) =>
      isHeld(others, [...sections, ...way.map((each) => ({ board: first, length: each, left: width }))]),
    );
  };
  return sets.find(({ set }) => isHeld(set, []))?.price;
};
