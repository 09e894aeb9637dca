import type { SheetJob } from "../../../../src/solver/yield/sheets/sheet-job";
import type { SheetPlan } from "../../../../src/solver/yield/sheets/sheet-plan";
import type { SheetPartProof } from "../../../../src/solver/yield/sheets/sheet-proof";
import { whole } from "../checker-numbers";
import { type CertificatePart, certificatePart, partingFaults } from "./certificate-job";
import { cheaperSheets } from "./cheaper-sheets";
import { type Count, holdsMore } from "./held-worth";

/** Steps of a check, of states of tables, strips and numbers of sheets looked at: some seconds. Beyond it nothing is certified. */
const MOST_STEPS = 2_000_000_000;

const CERTIFIED = "best possible (proven)";

const areCounts = (numbers: readonly number[], length: number): boolean =>
  numbers.length === length && numbers.every((each) => Number.isInteger(each) && each >= 0);

const shapeFault = ({ panels, sheets }: CertificatePart, { laws, tooSmall }: SheetPartProof): boolean =>
  laws.some(({ worth, holds }) => !areCounts(worth, panels.length) || !areCounts(holds, sheets.length)) ||
  tooSmall.some((counts) => !areCounts(counts, sheets.length));

const lawFaults = (part: CertificatePart, { laws }: SheetPartProof, count: Count): string[] =>
  laws.flatMap(({ worth, holds }, law) => part.sheets.flatMap((_, sheet) => {
    const more = holdsMore(part, sheet, worth, holds[sheet]!, count);
    if (more === "unknown") return ["the check takes too much work"];
    return more ? [`sheet kind ${sheet + 1} can hold more worth than law ${law + 1} says`] : [];
  }));

/** What is wrong with the proof that no plan costs less than so many billionths. */
const proofFaults = (job: SheetJob, { sheets: cut }: SheetPlan, proof: readonly SheetPartProof[], claimed: number): string[] => {
  const parting = partingFaults(job, proof);
  if (parting.length > 0) return parting;
  const parts = proof.map((part) => certificatePart(job, part));
  if (parts.some((part, at) => shapeFault(part, proof[at]!))) return ["worths or numbers are not whole numbers for all pieces and sheets"];
  const count = { left: MOST_STEPS };
  const faults = parts.flatMap((part, at) => lawFaults(part, proof[at]!, count));
  const choices = parts.map((part, at) => {
    const { stockRows, laws, tooSmall } = proof[at]!;
    const rows = stockRows.flat();
    const price = cut.reduce((sum, { stock }) => (rows.includes(stock) ? sum + Number(whole(job.stock[stock]!.price)) : sum), 0);
    return cheaperSheets(part, laws, tooSmall, price, count) ?? { counts: undefined, price };
  });
  if (choices.reduce((sum, { price }) => sum + price, 0) < claimed) {
    const named = choices.map(({ counts }) => counts?.join() ?? "those of the plan");
    faults.push(`sheets ${named.join(" and ")} cost less and are not shown too small`);
  }
  if (count.left <= 0) faults.push("the check takes too much work");
  return faults;
};

/**
 * Everything a plan claims and its proof does not prove, in words; nothing for a sound plan. What was only searched through is believed,
 * and then the plan may not be called proven.
 */
export const unproven = (job: SheetJob, plan: SheetPlan): string[] => {
  const { proof, bound, cost, verdict } = plan;
  const isCertified = verdict === CERTIFIED;
  if (isCertified && !bound.eq(cost)) return ["called certified, but the bound is not the cost"];
  if (proof === undefined) return isCertified ? ["called certified, but there is no proof"] : [];
  const isSearched = proof.some(({ tooSmall }) => tooSmall.length > 0);
  if (isCertified && isSearched) return ["called certified, but some sheets were only searched through"];
  return proofFaults(job, plan, proof, Number(whole(bound)));
};
