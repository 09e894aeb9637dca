import type { Figure, Limit, Rule } from "../../../src/solver/code/profile";
import { PROFILES } from "../../../src/solver/code/profiles";
import { edition, laterEdition } from "../../../src/solver/code/record/edition";
import { limitRecord } from "../../../src/solver/code/record/limit-record";
import { printed, slope, span } from "../../../src/solver/code/record/printed-figure";
import { Exact } from "../../../src/solver/length/exact";
import { numbersIn } from "./printed-text";

const COUNTS: readonly string[] = ["", "(?:one|a single)", "two", "three", "four"];

interface Said {
  readonly text: string;
  readonly words: readonly string[];
}

/** The printed figures inside a rule or condition, each with the words of the record that stand beside it. */
const figuresOf = (node: unknown, words: readonly string[]): readonly Said[] => {
  if (typeof node !== "object" || node === null || node instanceof Exact) return [];
  if (Array.isArray(node)) return node.flatMap((part) => figuresOf(part, words));
  const own = node as { readonly words?: string; readonly sense?: string };
  // An exception, a condition or a row of a table with words of its own is judged by them; without, by those of the record.
  const beside = own.words === undefined ? [...words, own.sense ?? ""] : [own.words];
  if ("value" in node && "unit" in node) return [{ text: (node as Figure).printed ?? "", words }];
  const { printed: slopeText } = node as { readonly printed?: string };
  if ("run" in node && slopeText !== undefined) return numbersIn(slopeText).map((number) => ({ text: number.toString(), words }));
  return Object.values(node).flatMap((part) => figuresOf(part, beside));
};

const stands = ({ text, words }: Said): boolean => {
  const [number] = numbersIn(text);
  if (number === undefined) return false;
  return number.isZero() || words.some((one) => numbersIn(one).some((other) => other.eq(number) || other.times(1000).eq(number))
    || new RegExp(`\\b${COUNTS[number.toNumber()] ?? "no such count"}\\b`).test(one));
};

describe("every figure a limit decides by stands in its own words, so that nobody is judged by what is not shown", () => {
  test.each(PROFILES.map((profile) => [profile.id, profile.limits] as const))("%s", (_id, limits) => {
    const shown = ({ text, measured, remark }: Limit) => [text, measured, remark];
    const hidden = limits.flatMap((limit) =>
      figuresOf([limit.rule, limit.applies, limit.exceptions], shown(limit))
        .filter((said) => !stands(said))
        .map(({ text }) => `${limit.item}: ${text}`),
    );
    expect(hidden).toEqual([]);
  });
});

/** What a count is taken over, by the fact it is compared with. */
const OVER: Readonly<Record<string, readonly string[]>> = {
  risers: ["flight", "stair"],
  winders: ["flight"],
  winderSets: ["stair"],
  stairRisers: ["stair"],
  risersBeforeTurn: ["stair"],
  storeysJoined: ["storeys"],
};
const heldAgainst = (rule: Rule): readonly string[] => {
  if ("parts" in rule) return rule.parts.flatMap(heldAgainst);
  if (rule.comparator === "table") return rule.rows.flatMap((row) => heldAgainst(row.rule));
  const facts = "of" in rule && typeof rule.of === "string" ? [rule.of] : [];
  return rule.comparator === "required-when" && typeof rule.or?.of === "string" ? [...facts, rule.or.of] : facts;
};

test("a limit on a count says what it counts", () => {
  const unsaid = PROFILES.flatMap(({ id, limits }) => limits.filter(({ rule, counts }) => {
    const over = heldAgainst(rule).flatMap((fact) => OVER[fact] ?? []);
    return over.length > 0 && (counts === undefined || !over.includes(counts));
  }).map(({ item }) => `${id}: ${item}`));
  expect(unsaid).toEqual([]);
});

describe("printed text read", () => {
  // By hand: 6 ft 8 in = 80 in, 12 ft 7 in = 151 in; 4 3/8 = 4.375.
  test.each([
    ["6 ft 8 in", "80", "in"],
    ["12 ft 7 in", "151", "in"],
    ["4 3/8 in", "4.375", "in"],
    ["5/16 in", "0.3125", "in"],
    ["1.5 cm", "1.5", "cm"],
    ["1.2 m", "1200", "mm"],
    ["865 mm", "865", "mm"],
    ["42 degrees", "42", "deg"],
    ["3 risers", "3", "count"],
    ["70 sq in", "70", "sq in"],
  ])("%s", (text, value, unit) => {
    const figure = printed(text);
    expect([figure.value.toString(), figure.unit]).toEqual([value, unit]);
  });

  test("two figures with one unit, and a slope", () => {
    const { min, max } = span("34 to 38 in");
    expect([min.value.toNumber(), min.unit, max.value.toNumber()]).toEqual([34, "in", 38]);
    expect(slope("1:20")).toMatchObject({ rise: 1, run: 20 });
  });

  test.each([["a few"], [""]])("%p is no figure", (text) => expect(() => printed(text)).toThrow("No figure"));
});

describe("records", () => {
  const source = { title: "Alder County stair code (invented)" };
  const limit = limitRecord({ unit: "in", status: "checked against the code's text", sources: [source] });
  const heading = { id: "alder-1", title: "Alder County (invented)", edition: "1", region: "nowhere" };
  const rise = limit({
    item: "riser height",
    clause: "A1.2",
    text: "8",
    measured: "plumb",
    rule: { comparator: "max", of: "riserHeight" },
  });
  const run = limit({ item: "tread depth", clause: "A1.3", text: "9", measured: "level", rule: { comparator: "min", of: "treadDepth" } });
  const first = edition({ ...heading, records: [rise, run] });
  const later = { id: "alder-2", edition: "2", read: { status: "checked against another edition", sources: [] } } as const;

  test("the figure is the printed text", () => {
    expect(first.limits[0]?.rule).toMatchObject({ max: { unit: "in", printed: "8" } });
  });

  test.each([["8 or so, as wide as 9"], ["as the flight"]])("%p is no figure: the record has to say which words are", (text) => {
    expect(() => edition({ ...heading, records: [{ ...rise, text }] })).toThrow("riser height");
  });

  test("a later edition is the one before with what was changed, dropped, added and renumbered", () => {
    const width = limit({ item: "stair width", clause: "B1.9", text: "36", measured: "level", rule: { comparator: "min", of: "width" } });
    const {
      limits,
      edition: year,
      region,
    } = laterEdition(first, {
      ...later,
      renumbered: [["A1", "B1"]],
      changed: { "riser height": { text: "7 3/4" } },
      dropped: ["tread depth"],
      added: [width],
    });
    expect(limits.map(({ item, clause, text }) => [item, clause, text])).toEqual([
      ["riser height", "B1.2", "7 3/4"],
      ["stair width", "B1.9", "36"],
    ]);
    expect(limits[0]?.rule).toMatchObject({ max: { printed: "7 3/4" } });
    expect([limits[0]?.status, year, region]).toEqual(["checked against another edition", "2", "nowhere"]);
  });

  test.each([
    ["a changed item", { changed: { "riser hight": { text: "7" } } }], ["a dropped item", { dropped: ["riser hight"] }],
    ["a renumbered clause", { renumbered: [["C7", "D7"] as const] }], ["an added item that is there", { added: [rise] }],
  ])("%s that does not fit the edition before is an error", (_what, difference) => {
    expect(() => laterEdition(first, { ...later, ...difference })).toThrow("alder-2");
  });
});
