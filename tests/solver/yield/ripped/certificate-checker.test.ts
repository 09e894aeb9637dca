import fc from "fast-check";
import { Exact } from "../../../../src/solver/length/exact";
import { isProblem } from "../../../../src/solver/problem";
import type { BoardProof, ProofWorths, SetProof } from "../../../../src/solver/yield/ripped/board-proof";
import { rippingPlan, type RippingPlan } from "../../../../src/solver/yield/ripped/ripping-plan";
import { unproven } from "./certificate-checker";
import { leastOfAll } from "./every-choice";
import { jobOf, plainJob, type PlainJob } from "./plain-job";
import { tinyJobs } from "./tiny-jobs";

const CERTIFIED = "best possible (proven)";
const CENT = new Exact(1).div(100);

const proven = (job: PlainJob): { readonly plan: RippingPlan; readonly proof: BoardProof } | undefined => {
  const plan = rippingPlan(jobOf(job));
  return isProblem(plan) || plan.proof === undefined ? undefined : { plan, proof: plan.proof };
};

const replaced = <Item>(all: readonly Item[], at: number, by: Item): Item[] => all.map((each, place) => (place === at ? by : each));
const left = <Item>(all: readonly Item[], at: number): Item[] => all.filter((_, place) => place !== at);

const neededBy = ({ pieces }: PlainJob, { pieceRows }: BoardProof, { worth }: ProofWorths): number =>
  worth.reduce((sum, each, kind) => sum + each * pieceRows[kind]!.reduce((all, row) => all + (pieces[row]!.quantity ?? 1), 0), 0);

const withRefutations = (proof: BoardProof, refutations: readonly SetProof[]): BoardProof => ({ ...proof, refutations });

/** A piece said to be worth more than all are, and a board said to hold nothing. */
const falseWorths = (job: PlainJob, proof: BoardProof): BoardProof[] =>
  proof.refutations.flatMap((law, at) => {
    if (law.by !== "worth") return [];
    const much = neededBy(job, proof, law) + 1;
    const board = law.holds.findIndex((each) => each > 0);
    return [
      ...law.worth.map((each, kind) => ({ ...law, worth: replaced(law.worth, kind, each + much) })),
      ...(board < 0 ? [] : [{ ...law, holds: replaced(law.holds, board, 0) }]),
      { ...law, worth: law.worth.slice(1) },
      { ...law, worth: law.worth.map((each) => each + 0.5) },
    ].map((each) => withRefutations(proof, replaced(proof.refutations, at, each)));
  });

/** One of the ways to divide a stretch left out. */
const withoutDivision = (proof: BoardProof): BoardProof[] =>
  proof.divisions.flatMap((stretches, board) => stretches.flatMap((listed, stretch) => listed.flatMap(({ into }, at) =>
    typeof into === "string"
      ? []
      : [{ ...proof, divisions: replaced(proof.divisions, board, replaced(stretches, stretch, left(listed, at))) }])));

describe("the proof of a plan of boards", () => {
  test("is repeated on tiny jobs, and each of them is called proven", () => {
    let plans = 0;
    fc.assert(fc.property(tinyJobs, (job) => {
      const found = proven(job);
      if (found === undefined) return;
      plans += 1;
      expect(found.plan.verdict).toBe(CERTIFIED);
      expect(unproven(job, found.plan)).toEqual([]);
    }), { numRuns: 150, seed: 31 });
    expect(plans).toBeGreaterThan(60);
  });

  test("is refused where a worth is raised, a holding lowered, a worth missing or a part, or a way to divide a stretch left out", () => {
    let spoilt = 0;
    fc.assert(fc.property(tinyJobs, (job) => {
      const found = proven(job);
      if (found === undefined) return;
      for (const proof of [...falseWorths(job, found.proof), ...withoutDivision(found.proof)]) {
        spoilt += 1;
        expect(unproven(job, { ...found.plan, proof })).not.toEqual([]);
      }
    }), { numRuns: 60, seed: 32 });
    expect(spoilt).toBeGreaterThan(500);
  });

  test("is refused where it claims a cent more, or a board of the plan costs a cent less", () => {
    let spoilt = 0;
    fc.assert(fc.property(tinyJobs, (job) => {
      const found = proven(job);
      if (found === undefined) return;
      const { cost, boards } = found.plan;
      expect(unproven(job, { ...found.plan, cost: cost.plus(CENT), bound: cost.plus(CENT) })).not.toEqual([]);
      for (const { board } of boards) {
        const { price = 0, owned } = job.boards[board]!;
        if (price === 0 || owned === true) continue;
        spoilt += 1;
        const cheaper = { ...job, boards: replaced(job.boards, board, { ...job.boards[board]!, price: price - 0.01 }) };
        expect(unproven(cheaper, found.plan)).not.toEqual([]);
      }
    }), { numRuns: 100, seed: 33 });
    expect(spoilt).toBeGreaterThan(30);
  });

  /** A choice that costs less and holds enough by every law, by looking at each set of boards. */
  const isLeftOpen = (job: PlainJob, proof: BoardProof, laws: readonly ProofWorths[], cost: number): boolean =>
    Array.from({ length: 2 ** job.boards.length }, (_, number) => number).some((number) => {
      const set = [...job.boards.keys()].filter((at) => (number >> at) % 2 === 1);
      const lots = new Set(set.flatMap((at) => (job.boards[at]!.lotPrice === undefined ? [] : [40])));
      const own = set.reduce((sum, at) => sum + (job.boards[at]!.owned === true ? 0 : job.boards[at]!.price ?? 0), 0);
      if (own + [...lots].reduce((sum, each) => sum + each, 0) >= cost) return false;
      return laws.every((law) => set.reduce((sum, at) => sum + law.holds[at]!, 0) >= neededBy(job, proof, law));
    });

  test("is refused without one of its worths just where a cheaper set of boards then keeps all others", () => {
    const seen = { refused: 0, kept: 0 };
    fc.assert(fc.property(tinyJobs, (job) => {
      const found = proven(job);
      if (found === undefined) return;
      const { plan, proof } = found;
      const laws = proof.refutations.flatMap((each) => (each.by === "worth" ? [each] : []));
      if (laws.length < proof.refutations.length) return;
      for (const rest of [[], ...laws.map((_, at) => left(laws, at)), ...laws.map((law) => [law])]) {
        const isOpen = isLeftOpen(job, proof, rest, plan.cost.toNumber());
        seen[isOpen ? "refused" : "kept"] += 1;
        expect(unproven(job, { ...plan, proof: withRefutations(proof, rest) }).length > 0).toBe(isOpen);
      }
    }), { numRuns: 200, seed: 34 });
    expect(Math.min(seen.refused, seen.kept)).toBeGreaterThan(50);
  });

  test("of a dearer plan is never accepted, whatever prices it was made for", () => {
    let dearer = 0;
    fc.assert(fc.property(tinyJobs, (job) => {
      const boards = job.boards.map(({ price, ...rest }) => (price === undefined ? rest : { ...rest, price: 65 - price }));
      const other = proven({ ...job, boards });
      if (other === undefined) return;
      const lots = new Set(other.plan.boards.flatMap(({ board: at }) => (job.boards[at]!.lotPrice === undefined ? [] : ["X"])));
      const cost = other.plan.boards.reduce((sum, { board: at }) =>
        sum + (job.boards[at]!.owned === true ? 0 : job.boards[at]!.price ?? 0), 40 * lots.size);
      const least = leastOfAll(job)!;
      const claimed = { ...other.plan, cost: new Exact(cost), bound: new Exact(cost), verdict: CERTIFIED };
      if (cost === least) return;
      dearer += 1;
      expect(unproven(job, claimed)).not.toEqual([]);
    }), { numRuns: 150, seed: 35 });
    expect(dearer).toBeGreaterThan(10);
  });

  describe("in cases", () => {
    /** Each of the proofs with one case said to hold nothing, and with one part left out. */
    const spoiltCases = (proof: SetProof): SetProof[] => {
      if (proof.by === "worth") return [{ ...proof, holds: proof.holds.map(() => 0) }];
      if (proof.by === "count") {
        return [
          { ...proof, upTo: proof.over }, { ...proof, over: proof.upTo },
          ...spoiltCases(proof.upTo).map((upTo) => ({ ...proof, upTo })), ...spoiltCases(proof.over).map((over) => ({ ...proof, over })),
        ];
      }
      if (proof.by === "division") {
        return proof.parts.flatMap((part, at) => [
          { ...proof, parts: left(proof.parts, at) },
          ...spoiltCases(part.proof).map((each) => ({ ...proof, parts: replaced(proof.parts, at, { ...part, proof: each }) })),
        ]);
      }
      return proof.fewer.flatMap((part, at) => [
        { ...proof, fewer: left(proof.fewer, at) },
        ...spoiltCases(part.proof).map((each) => ({ ...proof, fewer: replaced(proof.fewer, at, { ...part, proof: each }) })),
      ]);
    };

    const kindsOf = (proof: SetProof): SetProof["by"][] => {
      if (proof.by === "worth") return ["worth"];
      if (proof.by === "count") return ["count", ...kindsOf(proof.upTo), ...kindsOf(proof.over)];
      return [proof.by, ...(proof.by === "division" ? proof.parts : proof.fewer).flatMap(({ proof: part }) => kindsOf(part))];
    };

    const byDivision = plainJob(
      [
        { label: "riser", length: 30.5, width: 7.25, quantity: 3, grade: "1C", alsoFrom: "FAS" },
        { label: "nosing", length: 31.5, width: 3.5, grade: "FAS" },
      ],
      [{ length: 108, width: 10.5, grade: "FAS", price: 44 }, { length: 75, width: 10.125, grade: "FAS", defects: [[22, 25]], price: 51 }],
      { kerf: 0 },
    );
    const byAll = plainJob(
      [
        { label: "cleat", length: 29.5, quantity: 3, grade: "FAS" },
        { label: "nosing", length: 39, width: 3.5, quantity: 2, grade: "FAS", alsoFrom: "any" },
        { label: "return", length: 37.5, width: 2, quantity: 3, grade: "1C", alsoFrom: "any" },
      ],
      [
        { length: 83, width: 11.25, grade: "FAS", defects: [[7, 10]], price: 31 },
        { length: 72, width: 11.875, grade: "1C", defects: [[23, 26]], price: 17 },
        { length: 104, width: 7.25, grade: "FAS", owned: true, defects: [[10, 13]], price: 58 },
      ],
      { trim: 0.5 },
    );

    test.each([
      ["of division", byDivision, ["division"]],
      ["of division, count and packing", byAll, ["count", "division", "packing"]],
    ])("%s is repeated whole, and refused without one of them", (_, job, kinds) => {
      const { plan, proof } = proven(job)!;
      expect(unproven(job, plan)).toEqual([]);
      expect(plan.cost.toNumber()).toBe(leastOfAll(job));
      const inCases = proof.refutations.filter(({ by }) => by !== "worth");
      expect([...new Set(inCases.flatMap(kindsOf))].filter((by) => by !== "worth").sort()).toEqual(kinds);
      const worths = proof.refutations.filter(({ by }) => by === "worth");
      expect(unproven(job, { ...plan, proof: withRefutations(proof, worths) })).not.toEqual([]);
      const [needed] = inCases;
      expect(unproven(job, { ...plan, proof: withRefutations(proof, [...worths, needed!]) })).toEqual([]);
      for (const spoilt of spoiltCases(needed!))
        expect(unproven(job, { ...plan, proof: withRefutations(proof, [...worths, spoilt]) })).not.toEqual([]);
    });
  });

  test("is missed where a plan is called proven without one, or with a bound below its cost", () => {
    const job = plainJob([{ label: "riser", length: 40, width: 7.25 }], [{ length: 48, width: 8, price: 20 }]);
    const { plan } = proven(job)!;
    const { proof: _, ...rest } = plan;
    expect(unproven(job, { ...rest, proof: undefined })).toEqual(["called certified, but there is no proof"]);
    expect(unproven(job, { ...plan, bound: new Exact(19) })).toEqual(["called certified, but the bound is not the cost"]);
    expect(unproven(job, { ...rest, proof: undefined, verdict: "best possible (searched, not certified)" })).toEqual([]);
  });
});
