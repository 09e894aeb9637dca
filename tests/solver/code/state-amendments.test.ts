import { amendedProfile } from "../../../src/solver/code/amended-profile";
import { codeCheck } from "../../../src/solver/code/check";
import type { CodeFacts } from "../../../src/solver/code/fact-labels";
import { STATE_AMENDMENTS } from "../../../src/solver/code/state-amendments";
import { isProblem } from "../../../src/solver/problem";
import { inches, profileOf } from "./stair-check";

const MARK = 1 / 64;

const tableOf = (state: string) => {
  const found = STATE_AMENDMENTS.find((one) => one.state === state);
  if (found === undefined) throw new Error(state);
  return found;
};

const verdict = (state: string, item: string, facts: CodeFacts) => {
  const { code, amendments } = tableOf(state);
  const rows = codeCheck(facts, profileOf(code), [], amendments.map((row) => ({ ...row, limit: `${row.limit} in`, authority: state })));
  if (isProblem(rows)) throw new Error(rows.problem);
  const row = rows.find((one) => one.item === item);
  expect(row?.sourceStatus).toBe(`amended by ${state}`);
  return row?.verdict;
};

test.each(STATE_AMENDMENTS.map((one) => [one.state, one] as const))(
  "%s: each row names a limit of the code it adopts, in that code's clause, with a source",
  (state, { code, amendments, source }) => {
    const profile = profileOf(code);
    expect(
      isProblem(
        amendedProfile(
          profile,
          amendments.map((row) => ({ ...row, authority: state })),
          "in",
        ),
      ),
    ).toBe(false);
    for (const { item, clause } of amendments)
      expect([item, profile.limits.find((one) => one.item === item)?.clause.startsWith(clause)]).toEqual([item, true]);
    expect(source).toMatch(/\d{4}/);
  },
);

// The amended figures as read in each state's adoption: greatest riser and least tread.
test.each([
  ["Connecticut", 8.25, 9],
  ["Montana", 8.25, 9],
  ["New Jersey", 8.25, 9],
  ["New York", 8.25, 9],
  ["North Carolina", 8.25, 9],
  ["Ohio", 8.25, 9],
  ["Oregon", 8, 9],
])("%s: a riser of %p and a tread of %p in", (state, riser, tread) => {
  expect([riser, riser + MARK].map((size) => verdict(state, "riser height", { riserHeight: inches(size) }))).toEqual(["pass", "fail"]);
  expect([tread, tread - MARK].map((size) => verdict(state, "tread depth", { treadDepth: inches(size) }))).toEqual(["pass", "fail"]);
});

test("what single states have beside it", () => {
  const winders = { winders: 3 };
  expect(
    [9, 9 - MARK].map((size) => verdict("New Jersey", "winder tread depth walkline", { ...winders, winderDepth: inches(size) })),
  ).toEqual(["pass", "fail"]);
  expect([30, 30 - MARK, 38, 38 + MARK].map((size) => verdict("New Jersey", "handrail height", { handrailHeight: inches(size) }))).toEqual([
    "pass",
    "fail",
    "pass",
    "fail",
  ]);
  expect(
    [4, 4 - MARK].map((size) => verdict("North Carolina", "winder tread depth any point", { ...winders, winderNarrowEnd: inches(size) })),
  ).toEqual(["pass", "fail"]);
  expect([148.5, 148.5 + MARK].map((size) => verdict("Ohio", "flight vertical rise", { totalRise: inches(size) }))).toEqual([
    "pass",
    "fail",
  ]);
  expect([10, 10 - MARK].map((size) => verdict("Oregon", "nosing exempt tread depth", { treadDepth: inches(size) }))).toEqual([
    "pass",
    "does not apply",
  ]);
  expect(
    [5 - MARK, 5, 5 + MARK].map((size) =>
      verdict("Oregon", "guard opening stair side", { fallHeight: inches(60), guardGap: inches(size) }),
    ),
  ).toEqual(["pass", "judge", "fail"]);
  const dwelling = { dwelling: "yes" } as const;
  expect(
    [8.25, 8.25 + MARK].map((size) => verdict("Pennsylvania", "riser height dwelling", { ...dwelling, riserHeight: inches(size) })),
  ).toEqual(["pass", "fail"]);
  expect([9, 9 - MARK].map((size) => verdict("Pennsylvania", "tread depth dwelling", { ...dwelling, treadDepth: inches(size) }))).toEqual([
    "pass",
    "fail",
  ]);
});
