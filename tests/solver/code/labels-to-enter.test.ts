import { type CodeFacts, FACT_LABELS, FACT_NAMES, type FactName } from "../../../src/solver/code/fact-labels";
import type { CheckRow } from "../../../src/solver/code/check";
import { inches, profileOf, rowsAsTyped } from "./stair-check";

const STAIR: CodeFacts = { unit: "in", totalRise: inches(107.5), risers: 14, riserHeight: inches(107.5).div(14), treadDepth: inches(10) };

const noteOf = (item: string, rows: readonly CheckRow[]): string => rows.find((row) => row.item === item)?.note ?? "";

/** Values that decide most limits one way or the other. */
const valuesOf = (fact: FactName): readonly unknown[] => {
  const { kind, choices } = FACT_LABELS[fact];
  if (choices !== undefined) return choices;
  if (kind === "length") return [inches("0.1"), inches(6), inches(400)];
  return kind === "count" ? [1, 60] : kind === "angle" ? [1, 45] : [0.001, 1];
};

const IS_OPEN = ["not given", "judge", "assumed: would pass", "assumed: would fail"];

const isNamed = (label: string, note: string): boolean =>
  note.split("; ").some((topic) =>
    topic
      .replace(/^[^:]*: /, "")
      .split(", ")
      .includes(label),
  );

// By hand from IRC 2021 R311.7 and R312.1: what a bare stair leaves open, by what it is asked for; winders, and what a grip that is not
// round asks, are not.
test("a bare stair under the IRC waits for these", () => {
  expect(noteOf("labels to enter", rowsAsTyped(STAIR))).toBe([
    "these settle rows that read not given, judge or assumed",
    "rise and run: tread slope",
    "open risers: open riser gap, open riser height",
    "nosing: nosing, nosing radius, nosing bevel",
    "width: width, clear width, width at handrails",
    "headroom: headroom found",
    "handrail: handrail height, handrails, handrail projection, handrail clearance, grip",
    "guard: guard, fall height, guard height, guard gap, triangle gap, landing guard height, landing guard gap",
    "landing: landing depth, landing width, landing slope",
  ].join("; "));
});

test("what was given is not asked for again, and a value that nobody gave is", () => {
  const rows = rowsAsTyped({
    ...STAIR,
    nosing: inches(1.25),
    assumed: { nosing: "nosing assumed: common practice, no source" },
    grip: inches(1.5),
  });
  const note = noteOf("labels to enter", rows);
  expect([isNamed("nosing", note), isNamed("grip", note)]).toEqual([true, false]);
  expect(isNamed("nosing", noteOf("labels to enter", rowsAsTyped({ ...STAIR, nosing: inches(1.25) })))).toBe(false);
});

test("a question that the row assumed names is not named twice", () => {
  const rows = rowsAsTyped(STAIR);
  expect(noteOf("assumed", rows)).toContain("open risers no");
  expect(isNamed("open risers", noteOf("labels to enter", rows))).toBe(false);
});

describe.each(["irc-2021", "uk-adk-private"])("%s", (id) => {
  const checked = (facts: CodeFacts): readonly CheckRow[] => rowsAsTyped(facts, [], [], profileOf(id));
  const rows = checked(STAIR);
  const [note, questions] = [noteOf("labels to enter", rows), noteOf("assumed", rows)];
  const open = rows.filter(({ verdict }) => IS_OPEN.includes(verdict)).map(({ item }) => item);
  const missing = FACT_NAMES.filter((fact) => STAIR[fact] === undefined);
  const namedFacts = missing.filter((fact) => isNamed(FACT_LABELS[fact].label, note));

  test("a label that is named tells something, alone or once the others are given", () => {
    const answers = Object.fromEntries(namedFacts.map((fact) => [fact, valuesOf(fact).at(-1)]));
    const said = (facts: object): string => JSON.stringify(checked({ ...STAIR, ...facts }));
    const [none, all] = [said({}), said(answers)];
    expect(namedFacts.length).toBeGreaterThan(0);
    for (const fact of namedFacts) {
      const { [fact]: answer, ...others } = answers;
      expect([fact, said(others) !== all || said({ [fact]: answer }) !== none]).toEqual([fact, true]);
    }
  });

  test("a label that is not named brings no open row to pass or fail", () => {
    // Questions stand in the row `assumed`; what is as usual unless the table says otherwise is no question.
    const others = missing.filter(
      (fact) => !namedFacts.includes(fact) && !questions.includes(FACT_LABELS[fact].label) && FACT_LABELS[fact].usual === undefined,
    );
    expect(others.length).toBeGreaterThan(0);
    for (const fact of others) {
      const settled = valuesOf(fact).flatMap((value) =>
        checked({ ...STAIR, [fact]: value } as CodeFacts).filter(
          ({ item, verdict }) => open.includes(item) && ["pass", "fail"].includes(verdict),
        ),
      );
      expect([fact, settled]).toEqual([fact, []]);
    }
  });
});
