import type { CheckRow, Verdict } from "../../../src/solver/code/check";
import { VERDICTS } from "../../../src/solver/code/check";
import { overallVerdict } from "../../../src/solver/code/overall-verdict";

const row = (verdict: Verdict | "", place: number): CheckRow => ({
  item: `limit ${place}`, given: "", limit: "", margin: "", unit: "", verdict, clause: `R${place}`, sourceStatus: "", note: "",
});

test("what fails and what may fail is named with its clause, and a person settles all that neither passes nor fails", () => {
  const rows = [...VERDICTS, "fail" as const, "" as const].map(row);
  // By hand: of the ten verdicts fail, pass, no limit and does not apply are settled.
  expect(overallVerdict(rows)).toEqual({
    failing: [{ item: "limit 0", clause: "R0" }, { item: "limit 10", clause: "R10" }],
    mayFail: [{ item: "limit 2", clause: "R2" }],
    toSettle: 6,
  });
});

test("a check without rows has nothing to say", () => {
  expect(overallVerdict([])).toEqual({ failing: [], mayFail: [], toSettle: 0 });
});
