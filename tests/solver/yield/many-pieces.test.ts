import { checkedPlan, seeded } from "./job";

/** Boards of five lengths, of which the longer ones cost less by the length, and pieces of a fifth to a whole board: invented. */
const jobOf = (pieces: number, seed: number) => {
  const below = seeded(seed);
  return {
    unit: "mm" as const,
    pieces: Array.from({ length: pieces }, () => ({ length: 20 + below(81) })),
    stock: [60, 80, 100, 120, 150].map((length) => ({ length, cents: Math.round(100 * Math.sqrt(length)) })),
  };
};

// The checker of certificates repeats each proof; no figure of a plan stands here.
test.each([300, 390, 410, 700, 1000].flatMap((pieces) => [1, 2].map((seed) => [pieces, seed] as const)))(
  "%i pieces on boards of five lengths (seed %i) are planned with proof: no number of pieces from which there is none",
  (pieces, seed) => {
    expect(checkedPlan(jobOf(pieces, seed)).verdict).toBe("best possible (proven)");
  },
);
