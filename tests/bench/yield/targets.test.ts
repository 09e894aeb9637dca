import type { Measured } from "./checked-job";
import { figures, rank } from "./figures";
import { judged } from "./targets";

const job = (changed: Partial<Measured>): Measured => ({
  name: "", milliseconds: 10, cost: 100, bound: 100, gap: 0, isProven: true, isCertified: true, failed: [], contradictions: [], ...changed,
});

// By hand: of 1 to 20 the 10th is the middle and the 19th the 95th of 100.
const twenty = Array.from({ length: 20 }, (_, index) => job({ milliseconds: 20 - index }));

describe("the figures of a sample", () => {
  test("ranks, as counted by hand", () => {
    const numbers = twenty.map(({ milliseconds }) => milliseconds);
    expect([0.5, 0.95, 1].map((share) => rank(numbers, share))).toEqual([10, 19, 20]);
    expect(rank([7], 0.5)).toBe(7);
  });

  test("shares and gaps, as reckoned by hand", () => {
    const jobs = [
      job({}),
      job({ isCertified: false }),
      job({ isProven: false, isCertified: false, gap: 0.9 }),
      job({ failed: ["one", "two"], contradictions: ["three"] }),
    ];
    const { proven, certified, meanGap, mostGap, failed, contradictions } = figures({ jobs, peak: 1 });
    expect([proven, certified, mostGap, failed, contradictions]).toEqual([75, (100 * 2) / 3, 0.9, 1, 1]);
    expect(meanGap).toBeCloseTo(0.225, 12);
  });
});

describe("targets", () => {
  const verdicts = (jobs: readonly Measured[], peak = 100): Record<string, string> =>
    Object.fromEntries(
      judged([{ set: "carpenter", search: "in a cell", sample: { jobs, peak } }]).map(({ target, verdict }) => [target, verdict]),
    );

  test("are met by quick and proven jobs, and those of other sets are not measured", () => {
    const found = verdicts(twenty.map((each) => ({ ...each, milliseconds: each.milliseconds / 2 })));
    expect(
      Object.entries(found)
        .filter(([target]) => target.startsWith("carpenter, in a cell"))
        .map(([, verdict]) => verdict),
    ).toEqual(["met", "met", "met", "met"]);
    expect(found["falkenauer_u, in a cell: all proven"]).toBe("not measured");
    expect(found["any: no failed check"]).toBe("met");
  });

  test.each<[string, Partial<Measured>, number, string]>([
    ["an unproven job in twenty", { isProven: false }, 100, "carpenter, in a cell: all proven"],
    ["a proof that nobody can check", { isCertified: false }, 100, "carpenter, in a cell: all certified"],
    ["a slow job", { milliseconds: 2_001 }, 100, "any, in a cell: longest at most 2000 ms"],
    ["a failed check", { failed: ["a piece nobody asked for"] }, 100, "any: no failed check"],
    ["a contradiction", { contradictions: ["costs 99"] }, 100, "any: no contradiction with published figures"],
    ["much memory", {}, 401, "any: memory at most 400 MB"],
  ])("are missed with %s", (_, changed, peak, target) => {
    expect(verdicts([...twenty.slice(1), job(changed)], peak)[target]).toBe("missed");
  });
});
