import { Exact } from "../../../../src/solver/length/exact";
import { isProblem } from "../../../../src/solver/problem";
import { sheetPlan, type SheetPlan } from "../../../../src/solver/yield/sheets/sheet-plan";
import type { SheetLaw, SheetPartProof } from "../../../../src/solver/yield/sheets/sheet-proof";
import { seeded } from "../job";
import { unproven } from "./certificate-checker";
import { certificatePart } from "./certificate-job";
import { everySheetPlan, isCut, type Rect } from "./every-sheet-plan";
import { holdsMore } from "./held-worth";
import { type PlainSheetJob, sheetJob } from "./job";
import { holdAll, searchedAgain } from "./searched-again";
import { tinyJobs } from "./tiny-jobs";

const CERTIFIED = "best possible (proven)";
const SEARCHED = "best possible (searched, not certified)";
const CENT = new Exact(1).div(100);
const MARKS = 64;

interface Proven {
  readonly plan: SheetPlan;
  readonly proof: readonly SheetPartProof[];
}

const proven = (job: PlainSheetJob): Proven | undefined => {
  const plan = sheetPlan(sheetJob(job));
  return isProblem(plan) || plan.proof === undefined ? undefined : { plan, proof: plan.proof };
};

/** As drawn, and as many whose edges are trimmed by more or by less than their ends. */
const jobs = (seed: number, count: number): PlainSheetJob[] => [
  ...tinyJobs(seed, count),
  ...tinyJobs(seed + 1, count).map((job, number) => ({ ...job, edges: number % 2, trim: number % 3 === 0 ? 1 : 0 })),
];

const replaced = <Item>(all: readonly Item[], at: number, by: Item): Item[] => all.map((each, place) => (place === at ? by : each));
const left = <Item>(all: readonly Item[], at: number): Item[] => all.filter((_, place) => place !== at);

/** Every way to change one law of one part. */
const withLaw = (
  proof: readonly SheetPartProof[], change: (law: SheetLaw, part: SheetPartProof) => readonly SheetLaw[],
): SheetPartProof[][] =>
  proof.flatMap((part, at) => part.laws.flatMap((law, place) =>
    change(law, part).map((each) => replaced(proof, at, { ...part, laws: replaced(part.laws, place, each) }))));

const wantedOf = ({ pieces }: PlainSheetJob, rows: readonly number[]): number =>
  rows.reduce((sum, row) => sum + (pieces[row]!.quantity ?? 1), 0);

const totalOf = (job: PlainSheetJob, { worth }: SheetLaw, { pieceRows }: SheetPartProof): number =>
  worth.reduce((sum, each, kind) => sum + each * wantedOf(job, pieceRows[kind]!), 0);

/** A piece worth more than all are, and a sheet that holds a little less or nothing. */
const falseLaws = (job: PlainSheetJob, law: SheetLaw, part: SheetPartProof): SheetLaw[] => [
  ...law.worth.map((each, kind) => ({ ...law, worth: replaced(law.worth, kind, each + totalOf(job, law, part) + 1) })),
  ...law.holds.flatMap((each, sheet) =>
    (each > 0 ? [each - 1, 0] : [-1]).map((less) => ({ ...law, holds: replaced(law.holds, sheet, less) }))),
];

const misshapenLaws = (law: SheetLaw): SheetLaw[] => [
  { ...law, worth: law.worth.slice(1) }, { ...law, worth: law.worth.map((each) => each + 0.5) },
  { ...law, holds: [...law.holds, 0] }, { ...law, worth: law.worth.map((each) => -each) },
];

/** The most worth that a sheet holds, by laying every set of the pieces on it, in plain inches. */
const mostByAllSets = (job: PlainSheetJob, { pieceRows }: SheetPartProof, sheetRow: number, worth: readonly number[]): number => {
  const { kerf = 0, trim = 0, edges = trim, first = "either" } = job;
  const pieces = pieceRows.flatMap((rows, kind) => rows.flatMap((row) => {
    const { length, width, free = false, quantity = 1 } = job.pieces[row]!;
    return Array.from({ length: quantity }, (): Rect & { kind: number } => ({ length, width: width!, free, kind }));
  }));
  const sheet = { length: job.stock[sheetRow]!.length - 2 * trim, width: job.stock[sheetRow]!.width! - 2 * edges };
  const ways = [true, false].filter((isRip) => first === "either" || isRip === (first === "rip"));
  return Array.from({ length: 2 ** pieces.length }, (_, set) => pieces.filter((_piece, at) => (set >> at) % 2 === 1))
    .filter((on) => on.length === 0 || ways.some((isRip) => isCut(on, sheet, kerf, isRip)))
    .reduce((most, on) => Math.max(most, on.reduce((sum, { kind }) => sum + worth[kind]!, 0)), 0);
};

/** Numbers of sheets that cost less than claimed, keep all laws and are not searched through: by looking at all numbers there are. */
const isLeftOpen = (job: PlainSheetJob, { pieceRows, stockRows }: SheetPartProof, laws: readonly SheetLaw[], cents: number): boolean => {
  const pieces = wantedOf(job, pieceRows.flat());
  const all = stockRows.reduce<number[][]>((before, rows) => {
    const most = rows.reduce((sum, row) => sum + (job.stock[row]!.available ?? pieces), 0);
    return before.flatMap((counts) => Array.from({ length: Math.min(most, pieces) + 1 }, (_, count) => [...counts, count]));
  }, [[]]);
  const sum = (counts: readonly number[], of: (kind: number) => number): number =>
    counts.reduce((at, each, kind) => at + each * of(kind), 0);
  return all.some((counts) =>
    sum(counts, () => 1) <= pieces && sum(counts, (kind) => job.stock[stockRows[kind]![0]!]!.cents ?? 0) < cents &&
    laws.every((law) => {
      const needed = law.worth.reduce((at, each, kind) => at + each * wantedOf(job, pieceRows[kind]!), 0);
      return sum(counts, (kind) => law.holds[kind]!) >= needed;
    }));
};

const testTime = 120_000;

describe("the proof of a plan of sheets", () => {
  test("is repeated on tiny jobs, and what is called proven has one", () => {
    const seen = { proven: 0, searched: 0 };
    for (const [number, job] of jobs(61_001, 250).entries()) {
      const plan = sheetPlan(sheetJob(job));
      if (isProblem(plan)) continue;
      expect({ number, job, faults: unproven(sheetJob(job), plan) }).toEqual({ number, job, faults: [] });
      expect([CERTIFIED, SEARCHED]).toContain(plan.verdict);
      const again = searchedAgain(sheetJob(job), plan);
      expect({ number, job, ...again }).toEqual({ number, job, named: again.named, tooSmall: again.named, holdAll: 0 });
      seen[plan.verdict === CERTIFIED ? "proven" : "searched"] += 1;
    }
    // a few in a thousand are only searched through
    expect(seen.proven).toBeGreaterThan(200);
    expect(seen.searched).toBeLessThan(5);
  }, testTime);

  test("names what a sheet holds at most: what the checker finds is what every set of pieces on it comes to", () => {
    let compared = 0;
    for (const job of jobs(62_001, 60)) {
      const found = proven(job);
      for (const part of found?.proof ?? []) for (const { worth, holds } of part.laws) for (const [kind, said] of holds.entries()) {
        compared += 1;
        const most = mostByAllSets(job, part, part.stockRows[kind]![0]!, worth);
        const more = (than: number) => holdsMore(certificatePart(sheetJob(job), part), kind, worth, than, { left: 1e7 });
        expect({ job, said, less: more(most - 1), same: more(most) }).toEqual({ job, said: most, less: true, same: false });
      }
    }
    expect(compared).toBeGreaterThan(50);
  }, testTime);

  test("is refused with a worth raised, a holding lowered, worths that are no whole numbers for all, or rows left out", () => {
    let spoilt = 0;
    for (const job of jobs(63_001, 120)) {
      const found = proven(job);
      if (found === undefined) continue;
      const proofs = [
        ...withLaw(found.proof, (law, part) => [...falseLaws(job, law, part), ...misshapenLaws(law)]),
        ...found.proof.flatMap((part, at) => [
          left(found.proof, at), [...found.proof, part],
          ...part.pieceRows.map((_, kind) => replaced(found.proof, at, { ...part, pieceRows: left(part.pieceRows, kind) })),
          ...part.stockRows.map((_, kind) => replaced(found.proof, at, { ...part, stockRows: left(part.stockRows, kind) })),
        ]),
      ];
      for (const proof of proofs) {
        spoilt += 1;
        expect({ job, proof, isRefused: unproven(sheetJob(job), { ...found.plan, proof }).length > 0 })
          .toEqual({ job, proof, isRefused: true });
      }
    }
    expect(spoilt).toBeGreaterThan(1_000);
  }, testTime);

  test("is refused where it claims a cent more, or a sheet of the plan costs a cent less", () => {
    let cheapened = 0;
    for (const job of jobs(64_001, 150)) {
      const found = proven(job);
      if (found === undefined) continue;
      const { cost, sheets } = found.plan;
      expect(unproven(sheetJob(job), { ...found.plan, cost: cost.plus(CENT), bound: cost.plus(CENT) })).not.toEqual([]);
      for (const row of new Set(sheets.map(({ stock }) => stock))) {
        const { cents = 0 } = job.stock[row]!;
        if (cents === 0) continue;
        cheapened += 1;
        const cheaper = { ...job, stock: replaced(job.stock, row, { ...job.stock[row]!, cents: cents - 1 }) };
        expect(unproven(sheetJob(cheaper), found.plan)).not.toEqual([]);
      }
    }
    expect(cheapened).toBeGreaterThan(50);
  }, testTime);
});

/** Ten sizes and three priced sheets, so that one law does not do: invented and seeded. */
const largerJob = (number: number): PlainSheetJob => {
  const draw = seeded(65_000 + number);
  return {
    pieces: Array.from({ length: 10 }, () => ({ length: 10 + draw(50), width: 6 + draw(20), quantity: 1 + draw(3), free: draw(3) === 0 })),
    stock: [[96, 48, 5_200], [60, 60, 4_600], [120, 48, 6_900]].map(([length, width, cents]) => ({
      length: length!, width: width!, cents: cents! + draw(400), available: 3 + draw(8),
    })),
    kerf: 0.125, first: number % 2 === 0 ? "rip" : "either",
  };
};

describe("laws of the proof of a plan of sheets", () => {
  test("are only those that are needed: without one of them a cheaper choice is open, and the proof refused", () => {
    const seen = { one: 0, more: 0 };
    for (const job of [...jobs(66_001, 100), ...Array.from({ length: 12 }, (_, number) => largerJob(number))]) {
      const found = proven(job);
      if (found?.plan.verdict !== CERTIFIED || found.proof.length !== 1) continue;
      const [part] = found.proof as [SheetPartProof];
      const cents = found.plan.cost.times(100).toNumber();
      expect(unproven(sheetJob(job), found.plan)).toEqual([]);
      expect(isLeftOpen(job, part, part.laws, cents)).toBe(false);
      for (const [at] of part.laws.entries()) {
        seen[part.laws.length === 1 ? "one" : "more"] += 1;
        const laws = left(part.laws, at);
        expect(isLeftOpen(job, part, laws, cents)).toBe(true);
        expect(unproven(sheetJob(job), { ...found.plan, proof: [{ ...part, laws }] })).not.toEqual([]);
      }
    }
    expect(seen.one).toBeGreaterThan(50);
    expect(seen.more).toBeGreaterThan(4);
  }, testTime);

  test("are refused where a sheet of the plan itself holds more than they say", () => {
    let compared = 0;
    for (const job of Array.from({ length: 6 }, (_, number) => largerJob(number))) {
      const found = proven(job);
      for (const [at, part] of found?.proof.entries() ?? []) for (const [place, law] of part.laws.entries()) {
        for (const [kind, rows] of part.stockRows.entries()) {
          const laid = found!.plan.sheets.filter(({ stock }) => rows.includes(stock)).map(({ strips }) => strips
            .flatMap(({ pieces }) => pieces)
            .reduce((sum, { piece }) => sum + law.worth[part.pieceRows.findIndex((each) => each.includes(piece))]!, 0));
          const most = Math.max(0, ...laid);
          expect(most).toBeLessThanOrEqual(law.holds[kind]!);
          if (most === 0) continue;
          compared += 1;
          const laws = replaced(part.laws, place, { ...law, holds: replaced(law.holds, kind, most - 1) });
          const faults = unproven(sheetJob(job), { ...found!.plan, proof: replaced(found!.proof, at, { ...part, laws }) });
          expect(faults).toContain(`sheet kind ${kind + 1} can hold more worth than law ${place + 1} says`);
        }
      }
    }
    expect(compared).toBeGreaterThan(8);
  }, testTime);

  /** Jobs that can only cost as much or more, or have other prices. */
  const harder: readonly ((job: PlainSheetJob) => PlainSheetJob)[] = [
    (job) => ({ ...job, kerf: (job.kerf ?? 0) + 1 }),
    (job) => ({ ...job, trim: (job.trim ?? 0) + 1 }),
    (job) => ({ ...job, edges: (job.edges ?? job.trim ?? 0) + 1 }),
    (job) => ({ ...job, pieces: job.pieces.map((each) => ({ ...each, free: false })) }),
    (job) => ({ ...job, first: job.first === "rip" ? "crosscut" : "rip" }),
    (job) => ({ ...job, pieces: job.pieces.map((each) => ({ ...each, quantity: (each.quantity ?? 1) + 1 })) }),
    (job) => ({ ...job, pieces: job.pieces.map((each) => ({ ...each, length: each.length + 1 })) }),
    (job) => ({ ...job, stock: job.stock.map((each) => ({ ...each, width: each.width! - 1 })) }),
    (job) => ({ ...job, stock: job.stock.map((each) => ({ ...each, available: 1 })) }),
    (job) => ({ ...job, stock: job.stock.map((each) => ({ ...each, cents: each.owned === true ? 0 : 60 - (each.cents ?? 0) })) }),
  ];

  test("of a harder job, or of one with other prices, never prove a plan for which every plan there is has a cheaper one", () => {
    const dearer = harder.map(() => 0);
    for (const job of jobs(67_001, 150)) {
      const least = everySheetPlan(job);
      for (const [way, change] of harder.entries()) {
        const found = proven(change(job));
        if (found === undefined) continue;
        const cost = found.plan.sheets.reduce((sum, { stock }) => sum + (job.stock[stock]!.cents ?? 0), 0);
        if (cost <= least) continue;
        dearer[way]! += 1;
        const claimed = { ...found.plan, cost: CENT.times(cost), bound: CENT.times(cost), verdict: CERTIFIED };
        expect({ job, way, isRefused: unproven(sheetJob(job), claimed).length > 0 }).toEqual({ job, way, isRefused: true });
      }
    }
    expect(Math.min(...dearer)).toBeGreaterThan(3);
  }, testTime);
});

/** By hand: birch and oak share no sheet; thin birch may come from thick. */
const IN_PARTS: PlainSheetJob = {
  pieces: [
    { label: "back", length: 30, width: 20, quantity: 3, grade: "birch", thickness: 0.25 },
    { label: "side", length: 30.01, width: 20, quantity: 2, grade: "oak", thickness: 0.75 },
  ],
  stock: [
    { label: "thick birch", length: 48, width: 24, cents: 1_500, grade: "Birch", thickness: 0.5 },
    { label: "thin birch", length: 96, width: 48, cents: 2_600, grade: "birch", thickness: 0.25 },
    { label: "oak", length: 96, width: 48, cents: 3_000, grade: "oak", thickness: 0.75 },
    { label: "thin oak", length: 96, width: 48, cents: 100, grade: "oak", thickness: 0.5 },
  ],
  kerf: 0.125,
};

/** Two kinds of sheet that one law does not rule out together: what the plan costs is every plan's least, found by a search. */
const ONLY_SEARCHED: PlainSheetJob = {
  pieces: [
    { length: 9, width: 1, quantity: 3, free: true }, { length: 7, width: 3, free: true }, { length: 5, width: 2, quantity: 2 },
  ],
  stock: [{ length: 13, width: 7, cents: 47, available: 2 }, { length: 13, width: 5, cents: 15 }],
  kerf: 1, trim: 0, edges: 1, first: "either",
};

describe("the proof of a plan of sheets, part by part", () => {
  const { plan, proof } = proven(IN_PARTS)!;

  test("is of the rows that share no sheet, and each part stands for itself", () => {
    // by hand: 3 of 30 x 20 are one of 96 x 48, or three of 48 x 24; 2 of oak one sheet, as the thinner does not do
    expect(plan.cost.toNumber()).toBe(56);
    expect(proof.map(({ pieceRows, stockRows }) => [pieceRows.flat(), stockRows.flat().sort()])).toEqual([[[0], [0, 1]], [[1], [2]]]);
    expect(unproven(sheetJob(IN_PARTS), plan)).toEqual([]);
  });

  test("is refused where rows are not alike, are in two parts, or a piece can be cut from sheets of none", () => {
    const [birch, oak] = proof as [SheetPartProof, SheetPartProof];
    const faultsOf = (of: readonly SheetPartProof[]): string[] => unproven(sheetJob(IN_PARTS), { ...plan, proof: of });
    expect(faultsOf([birch])).toEqual(["not every piece is in one part"]);
    expect(faultsOf([birch, birch, oak])).toEqual(["not every piece is in one part"]);
    expect(faultsOf([{ ...birch, stockRows: [[1]] }, oak])).toEqual(["a piece can be cut from sheets of no part"]);
    expect(faultsOf([{ ...birch, stockRows: [[0, 1]] }, oak])).toEqual(["sheets of one kind differ"]);
    expect(faultsOf([birch, { ...oak, stockRows: [[2, 3]] }])).toEqual(["sheets of one kind differ"]);
    const missing = "a row of sheets is in two parts, or is not there";
    expect(faultsOf([birch, { ...oak, stockRows: [[2], [0]] }])).toEqual([missing]);
    expect(faultsOf([birch, { ...oak, stockRows: [[2], [9]] }])).toEqual([missing]);
    const asOne = { ...birch, pieceRows: [[0, 1]], stockRows: [...birch.stockRows, ...oak.stockRows] };
    expect(faultsOf([asOne])).toEqual(["pieces of one kind differ"]);
    // a sheet more of which nothing is said
    const unsaid = "worths or numbers are not whole numbers for all pieces and sheets";
    expect(faultsOf([birch, { ...oak, stockRows: [[2], [3]] }])).toEqual([unsaid]);
  });

  test("counts in marks of 1/64 in, and what is wanted is rounded up", () => {
    // by hand: 30.01 x 64 = 1,920.64
    const part = certificatePart(sheetJob(IN_PARTS), proof[1]!);
    expect(part.panels[0]).toEqual({ length: 1_921, width: 20 * MARKS, wanted: 2, turns: false });
    expect(part.sheets).toEqual([{ length: 96 * MARKS, width: 48 * MARKS, price: 30e9, available: 2, suits: [true] }]);
  });
});

describe("a plan of sheets that is only searched through", () => {
  const { plan, proof } = proven(ONLY_SEARCHED)!;

  test("says so, names the numbers of sheets, and is not believed when it is called proven or leaves them out", () => {
    expect(plan.verdict).toBe(SEARCHED);
    expect(plan.cost.times(100).toNumber()).toBe(everySheetPlan(ONLY_SEARCHED));
    expect(proof.flatMap(({ tooSmall }) => tooSmall).length).toBe(1);
    expect(unproven(sheetJob(ONLY_SEARCHED), plan)).toEqual([]);
    expect(unproven(sheetJob(ONLY_SEARCHED), { ...plan, verdict: CERTIFIED }))
      .toEqual(["called certified, but some sheets were only searched through"]);
    expect(searchedAgain(sheetJob(ONLY_SEARCHED), plan)).toEqual({ named: 1, tooSmall: 1, holdAll: 0 });
    const without = proof.map((part) => ({ ...part, tooSmall: [] }));
    expect(unproven(sheetJob(ONLY_SEARCHED), { ...plan, proof: without })).not.toEqual([]);
  });

  test("and one without a proof, or with a bound below its cost, is not believed to be proven", () => {
    const job = sheetJob(ONLY_SEARCHED);
    expect(unproven(job, { ...plan, proof: undefined })).toEqual([]);
    expect(unproven(job, { ...plan, proof: undefined, verdict: CERTIFIED })).toEqual(["called certified, but there is no proof"]);
    expect(unproven(job, { ...plan, bound: plan.bound.minus(CENT), verdict: CERTIFIED }))
      .toEqual(["called certified, but the bound is not the cost"]);
  });

  test("is searched again: so many sheets hold all pieces just where there is a plan among all that there are", () => {
    const seen = { held: 0, tooSmall: 0 };
    for (const job of jobs(68_001, 40)) {
      const found = proven(job);
      if (found?.proof.length !== 1) continue;
      const [part] = found.proof as [SheetPartProof];
      for (let number = 1; number < 3 ** part.stockRows.length; number += 1) {
        const counts = part.stockRows.map((_, kind) => Math.floor(number / 3 ** kind) % 3);
        const stock = counts.map((available, kind) => ({ ...job.stock[part.stockRows[kind]![0]!]!, available }));
        const isHeld = everySheetPlan({ ...job, stock }) < Infinity;
        seen[isHeld ? "held" : "tooSmall"] += 1;
        for (const laws of [[], part.laws])
          expect({ job, counts, isHeld: holdAll(certificatePart(sheetJob(job), part), laws, counts, { left: 1e8 }) })
            .toEqual({ job, counts, isHeld });
      }
    }
    expect(Math.min(seen.held, seen.tooSmall)).toBeGreaterThan(50);
    const part = certificatePart(sheetJob(ONLY_SEARCHED), proof[0]!);
    expect(holdAll(part, [], [0, 3], { left: 10 })).toBe("unknown");
  }, testTime);
});
