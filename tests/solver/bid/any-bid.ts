import * as fc from "fast-check";
import { type Cost, COST_KINDS } from "../../../src/solver/bid/cost";
import { type Terms, termsWith } from "../../../src/solver/bid/terms";
import { Exact } from "../../../src/solver/length/exact";

const hundredths = (value: number): Exact => new Exact(value).div(100);
const share = (most: number): fc.Arbitrary<Exact> =>
  fc.oneof(fc.constant(new Exact(0)), fc.integer({ min: 0, max: most * 1000 }).map((thousandths) => new Exact(thousandths).div(1000)));

export const anyCost: fc.Arbitrary<Cost> = fc.record({
  item: fc.constantFrom("oak", "cove", "fitting", "newel"),
  row: fc.constant(1),
  cost: fc.integer({ min: -1e7, max: 1e7 }).map(hundredths),
  kind: fc.constantFrom(...COST_KINDS),
  part: fc.constantFrom("", "hall", "loft"),
});

export const anyCosts = fc.array(anyCost, { minLength: 1, maxLength: 8 });

/** Any terms that may stand together and leave something for the cost. */
export const anyTerms: fc.Arbitrary<Terms> = fc
  .record({
    burden: share(1), taxPaidOnMaterials: share(0.3), contingency: share(0.3),
    overhead: share(0.4), profit: share(0.4), tax: share(0.3),
    overheadOf: fc.constantFrom("overheadOnCost", "overheadOnLabour", "overheadOnMaterials", "overheadOfPrice"),
    profitOf: fc.constantFrom("profitOnCost" as const, "profitOfPrice" as const),
    taxOf: fc.constantFrom("taxOnPrice" as const, "taxOnMaterials" as const),
    roundUpTo: fc.constantFrom(0, 0.05, 1, 10).map((to) => new Exact(to)),
  })
  .map(({ overhead, profit, tax, overheadOf, profitOf, taxOf, ...others }) =>
    termsWith({ ...others, [overheadOf]: overhead, [profitOf]: profit, [taxOf]: tax }));
