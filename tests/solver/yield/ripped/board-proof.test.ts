import { boardProof } from "../../../../src/solver/yield/ripped/board-proof";
import { type Case, NO_TERMS } from "../../../../src/solver/yield/ripped/refutation";
import type { Yard } from "../../../../src/solver/yield/ripped/yard";

const yard: Yard = {
  kinds: [{ length: 640, width: 320, wanted: 1, sort: 0 }], boards: [], stretches: [], takes: [], lots: [], kerf: 8, ways: ["rip"],
};
const one: Case = { terms: NO_TERMS, worth: [5], limitWorth: [], needed: 5, holds: new Float64Array(0), without: [] };

describe("a proof", () => {
  test("keeps the worths of each refutation", () => {
    expect(boardProof(yard, [[0]], [], [[one]])).toEqual({
      pieceRows: [[0]], divisions: [], refutations: [{ by: "worth", worth: [5], limitWorth: [], holds: [] }],
    });
  });

  // 400 cases: chosen, so that who repeats them is done in seconds
  test.each([[400, true], [401, false]])("of %d cases is kept: %p", (count, isKept) => {
    const proof = boardProof(yard, [[0]], [], Array.from({ length: count }, () => [one]));
    expect(proof !== undefined).toBe(isKept);
  });
});
