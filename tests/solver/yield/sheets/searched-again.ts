import type { SheetJob } from "../../../../src/solver/yield/sheets/sheet-job";
import type { SheetPlan } from "../../../../src/solver/yield/sheets/sheet-plan";
import type { SheetLaw } from "../../../../src/solver/yield/sheets/sheet-proof";
import { type CertificatePart, certificatePart } from "./certificate-job";
import { type Count, heldSets } from "./held-worth";

const dot = (one: readonly number[], other: readonly number[]): number => one.reduce((sum, each, at) => sum + each * other[at]!, 0);

/** Of these those that no other holds all of; the larger first. */
const undominated = (sets: readonly (readonly number[])[], count: Count): (readonly number[])[] => {
  const size = (set: readonly number[]): number => set.reduce((sum, each) => sum + each, 0);
  const kept: (readonly number[])[] = [];
  for (const set of [...sets].sort((one, other) => size(other) - size(one))) {
    count.left -= kept.length;
    if (!kept.some((other) => set.every((each, kind) => each <= other[kind]!))) kept.push(set);
  }
  return kept;
};

/**
 * Whether so many of each kind of sheet hold all pieces, by a search of its own: the largest piece that is left goes on some sheet, with
 * all that can lie beside it, as long as by every law the other sheets hold the rest. "unknown" where the count is spent.
 */
export const holdAll = (
  part: CertificatePart, laws: readonly SheetLaw[], numbers: readonly number[], count: Count,
): boolean | "unknown" => {
  const { panels, sheets, pieces } = part;
  const areas = panels.map(({ length, width }) => length * width);
  const largest = [...panels.keys()].sort((one, other) => areas[other]! - areas[one]! || one - other);
  const spareBy = ({ worth, holds }: SheetLaw, counts: readonly number[], left: readonly number[]): number =>
    dot(holds, counts) - dot(worth, left);
  const wanted = panels.map((panel) => panel.wanted);
  // the law with least to spare bounds what a sheet must hold; a piece worth nothing by it counts a little
  const share = (law: SheetLaw): number => spareBy(law, numbers, wanted) / dot(law.worth, wanted);
  const [tight] = [...laws].sort((one, other) => share(one) - share(other));
  const times = pieces + 1;
  const worth = panels.map((_, kind) => (tight?.worth[kind] ?? 0) * times + 1);
  const failed = new Set<string>();
  const visit = (left: readonly number[], counts: readonly number[]): boolean | "unknown" => {
    const kind = largest.find((each) => left[each]! > 0);
    if (kind === undefined) return true;
    const spare = laws.map((law) => spareBy(law, counts, left));
    const key = `${left.join()}/${counts.join()}`;
    if (spare.some((each) => each < 0) || failed.has(key)) return false;
    const rest = { ...part, panels: panels.map((panel, at) => ({ ...panel, wanted: left[at]! })) };
    for (const sheet of sheets.keys()) {
      if (counts[sheet] === 0) continue;
      const least = tight === undefined ? 0 : tight.holds[sheet]! - spareBy(tight, counts, left);
      const found = heldSets(rest, sheet, worth, Math.max(0, least * times) - 1, count);
      if (found === "unknown") return found;
      const isEnough = (set: readonly number[]): boolean =>
        set[kind]! > 0 && laws.every((law, at) => dot(law.worth, set) >= law.holds[sheet]! - spare[at]!);
      for (const set of undominated(found.filter(isEnough), count)) {
        const fewer = counts.map((each, at) => (at === sheet ? each - 1 : each));
        const answer = visit(left.map((each, at) => each - set[at]!), fewer);
        if (answer !== false) return answer;
      }
    }
    failed.add(key);
    return count.left > 0 ? false : "unknown";
  };
  return visit(wanted, numbers);
};

/** Steps for one number of sheets: half a minute. */
const MOST_STEPS = 2_000_000_000;

/** Of the numbers of sheets that a sound proof names as searched through, as many by what a search of the checker's own finds. */
export interface SearchedAgain {
  readonly named: number;
  readonly tooSmall: number;
  /** The solver was wrong. */
  readonly holdAll: number;
}

export const searchedAgain = (job: SheetJob, { proof = [] }: Pick<SheetPlan, "proof">): SearchedAgain => {
  const answers = proof.flatMap((part) => {
    const { laws, tooSmall } = part;
    return tooSmall.map((numbers) => holdAll(certificatePart(job, part), laws, numbers, { left: MOST_STEPS }));
  });
  return {
    named: answers.length, tooSmall: answers.filter((each) => each === false).length,
    holdAll: answers.filter((each) => each === true).length,
  };
};
