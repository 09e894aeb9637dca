import { amendmentBlocks, coverageBlocks, topicCell } from "../../src/generate/code-coverage";
import type { Block } from "../../src/generate/page";
import { TOPIC_NAMES } from "../../src/solver/code/coverage";
import { codeProfile, PROFILES } from "../../src/solver/code/profiles";
import { isProblem } from "../../src/solver/problem";

const tables = (blocks: readonly Block[]) => blocks.flatMap((block) => (block.kind === "table" ? [block] : []));

const cell = (topic: (typeof TOPIC_NAMES)[number], code: string): string => {
  const profile = codeProfile(code);
  if (isProblem(profile)) throw new Error(profile.problem);
  return topicCell(topic, profile);
};

test("codes.html has every topic of every code: limits and how they were read, none in this code, or not on file", () => {
  const [table] = tables(coverageBlocks(PROFILES));
  const codes = PROFILES.filter(({ isCode }) => isCode !== false).map(({ id }) => id);
  expect(table?.headings).toEqual(["code", ...TOPIC_NAMES]);
  expect(table?.rows.map(([id]) => id)).toEqual(codes);
  for (const row of table?.rows ?? []) {
    for (const answer of row.slice(1))
      expect(answer).toMatch(/^(\d+ (in its text|in another edition|not yet checked)(, \d+ .+)*|none in this code|not on file)$/);
  }
});

// By hand: IRC 2024 R318.7.5.1 is the one limit of a rise; 29 CFR 1926.1052 has none on file; the width of an Australian house stair is
// free;
// AS 1657 gives riser heights from memory; Ireland has its guard in memory alone.
test.each([
  ["rise", "irc-2024", "1 in its text"],
  ["rise", "osha-1926.1052", "not on file"],
  ["width", "au-ncc-2022-class1", "none in this code"],
  ["rise", "as-1657-2018", "1 not yet checked"],
  ["guard openings", "ie-tgd-k", "1 not yet checked"],
  ["width", "nbc-ca-2015", "1 in its text, 1 in another edition"],
] as const)("%s of %s: %s", (topic, code, words) => expect(cell(topic, code)).toBe(words));

test("a table of amendments has the headings CHECK reads, and its limits with their unit", () => {
  const all = tables(amendmentBlocks());
  expect(all.length).toBeGreaterThan(1);
  for (const { headings, rows } of all) {
    expect(headings.slice(0, 3)).toEqual(["item", "limit", "authority"]);
    for (const [, limit] of rows) expect(limit).toMatch(/^\d[\d /to]* in$/);
  }
});
