import { joinedNotes, nearNames, suspectNote } from "../../goods/near-names";
import { plainMarks } from "../../goods/plain-marks";
import type { Exact } from "../../length/exact";
import { type Problem, problem } from "../../problem";
import { dayText } from "../day";
import { type Article, counted, unitName } from "./article";
import type { Ledger } from "./ledger";
import { isLess } from "./ledger-line";
import type { Name } from "./move";
import { type Place, SHOP } from "./place";
import { jobSuspect } from "./stock-ledger";
import { ZERO } from "./stock";

export interface JobCostRow {
  readonly job: Name;
  readonly item: Name;
  readonly unit: string;
  readonly quantity: Exact;
  readonly price?: Exact;
  readonly cost: Exact;
  readonly charges: Exact;
  readonly waste: Exact;
  readonly wasteCost: Exact;
  readonly note: string;
}

export type JobCostProblem = "no-such-job" | "nothing-at-jobs";

interface Charged {
  readonly place: Place;
  readonly article: Article;
  quantity: Exact;
  cost: Exact;
  charges: Exact;
  waste: Exact;
  wasteCost: Exact;
}

const isThere = ({ quantity, cost, charges, waste, wasteCost }: Charged): boolean =>
  [quantity, cost, charges, waste, wasteCost].some((amount) => !amount.isZero());

const charged = <Bad>({ lines }: Ledger<Bad>, to: number): ReadonlyMap<string, ReadonlyMap<string, Charged>> => {
  const jobs = new Map<string, Map<string, Charged>>();
  const at = (place: Place, article: Article): Charged => {
    const job = jobs.get(place.key) ?? new Map<string, Charged>();
    jobs.set(place.key, job);
    const found = job.get(article.key) ?? { place, article, quantity: ZERO, cost: ZERO, charges: ZERO, waste: ZERO, wasteCost: ZERO };
    job.set(article.key, found);
    return found;
  };
  for (const { move, postings, scrapped } of lines) {
    if (move.day > to) break;
    for (const { place, article, column, quantity, value, charges } of postings) {
      if ((place.kind !== "job" && place.kind !== "shop") || article === undefined) continue;
      const item = at(place, article);
      item.quantity = isLess(column) ? item.quantity.minus(quantity) : item.quantity.plus(quantity);
      item.cost = isLess(column) ? item.cost.minus(value) : item.cost.plus(value);
      item.charges = item.charges.plus(charges);
    }
    if (scrapped === undefined) continue;
    const item = at(scrapped.place, scrapped.article);
    item.waste = item.waste.plus(scrapped.quantity);
    item.wasteCost = item.wasteCost.plus(scrapped.value);
  }
  return jobs;
};

const byText = (to: number): string => (to === Infinity ? "" : ` by ${dayText(to)}`);

const nothingThere = (job: string, to: number): Problem<JobCostProblem> =>
  problem("nothing-at-jobs", { where: job === "" ? "at a job or in the shop" : `left at "${job}"`, by: byText(to) });

const noSuchJob = (job: string, to: number, jobs: readonly Place[]): Problem<JobCostProblem> => {
  const near = nearNames(jobs.map(({ name }, row) => ({ item: name, row })))(job);
  return problem("no-such-job", { job, by: byText(to), near: near === undefined ? "" : `; like "${near.item}": same job?` });
};

/** What each job holds of each item at the close of `to`: jobs as they first appear, the shop last. */
export const jobCost = <Bad>(books: Ledger<Bad>, job: string, to = Infinity): readonly JobCostRow[] | Problem<JobCostProblem> => {
  const { nearGoods, nearJob } = books;
  const all = [...charged(books, to).values()].map((items) => [...items.values()]);
  const placeOf = ([first]: readonly Charged[]): Place => first?.place ?? SHOP;
  const ordered = [...all.filter((items) => placeOf(items).kind === "job"), ...all.filter((items) => placeOf(items).kind === "shop")];
  const isMeant = (items: readonly Charged[]): boolean => plainMarks(String(placeOf(items).name)) === plainMarks(job);
  const wanted = job === "" ? ordered : ordered.filter(isMeant);
  if (wanted.length === 0) return job === "" ? nothingThere(job, to) : noSuchJob(job, to, ordered.map(placeOf));
  const rows = wanted.flat().filter(isThere).map((item): JobCostRow => {
    const { place, article, quantity, cost, charges, waste, wasteCost } = item;
    const count = counted(article, quantity);
    return {
      job: place.name,
      item: article.name,
      unit: unitName(article),
      quantity: count,
      ...(count.isZero() ? {} : { price: cost.minus(charges).div(count) }),
      cost,
      charges,
      waste: counted(article, waste),
      wasteCost,
      note: joinedNotes(suspectNote(nearGoods(article.name)), jobSuspect(place, nearJob)),
    };
  });
  return rows.length === 0 ? nothingThere(job, to) : rows;
};
