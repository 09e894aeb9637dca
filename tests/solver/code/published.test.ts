import type { Figure, Limit, Rule } from "../../../src/solver/code/profile";
import { PROFILES } from "../../../src/solver/code/profiles";
import { isFigureText, numbersIn } from "./printed-text";
import { PUBLISHED } from "./published-figures";
import { profileOf } from "./stair-check";

/** The first rule of a clause of several. */
const mainRule = (rule: Rule): Rule => ("parts" in rule ? mainRule(rule.parts[0]) : rule);

const UNITS: Readonly<Record<string, string>> = { deg: " degrees", ratio: "", count: "" };

/** What a limit asks, as the list has it: out of the printed text where that is figures, else out of the words its rule names. */
const asked = ({ rule, text, unit }: Limit): string => {
  const main = mainRule(rule);
  const named = (figure: Figure): string =>
    numbersIn(figure.printed ?? "")[0]
      ?.times(/ m$/.test(figure.printed ?? "") ? 1000 : 1)
      .toDecimalPlaces(6)
      .toString() ?? "";
  const own = isFigureText(text) ? numbersIn(text).map((number) => number.toDecimalPlaces(6).toString()) : undefined;
  const inUnit = (words: string): string => `${words}${UNITS[unit] ?? ` ${unit}`}`;
  switch (main.comparator) {
    case "min":
      return inUnit(`at least ${own?.[0] ?? named(main.min)}`);
    case "max":
      return inUnit(`at most ${own?.[0] ?? named(main.max)}`);
    case "range":
      return inUnit(`${own?.[0] ?? named(main.min)} to ${own?.[1] ?? named(main.max)}`);
    case "equals":
      return inUnit(`exactly ${(own ?? main.values.map(named)).join(" or ")}`);
    case "slope":
      return `at most ${own?.join(":") ?? main.printed ?? ""}`;
    case "uniformity":
      return inUnit(`apart at most ${own?.[0] ?? named(main.tolerance)}`);
    case "sphere":
      return inUnit(`a ball of ${own?.[0] ?? named(main.sphere)}`);
    case "exempt-when":
      return inUnit(`exempt from ${own?.[0] ?? named(main.atLeast)}`);
    case "required-when":
      return "atLeast" in main.from
        ? inUnit(`from ${own?.[0] ?? named(main.from.atLeast)}`)
        : inUnit(`above ${own?.[0] ?? named(main.from.moreThan)}`);
    default:
      return "";
  }
};

describe.each(Object.entries(PUBLISHED))("%s asks what was read in its text", (id, published) => {
  const { limits, outOfScope } = profileOf(id);
  test.each(published.map(([clause, item, what]) => [clause, item, what] as const))("%s %s", (clause, item, what) => {
    const limit = limits.find((one) => one.item === item);
    if (limit !== undefined) {
      // A table or a relation asks in words: the figure read is among them.
      const words = asked(limit);
      if (words !== "" && /[a-z]/.test(what.replace(/ \w+$/, ""))) expect(words).toBe(what);
      else expect(numbersIn(limit.text).map(String)).toEqual(expect.arrayContaining(numbersIn(what).map(String)));
      expect([limit.clause.startsWith(clause) || clause.startsWith(limit.clause), limit.clause, clause]).toEqual([
        true,
        limit.clause,
        clause,
      ]);
      return;
    }
    // What no check holds stands in words: every figure of it is among them.
    const record = outOfScope.find((one) => one.item === item);
    const figures = numbersIn(record?.text ?? "").map(String);
    expect(figures).toEqual(expect.arrayContaining(numbersIn(what).map(String)));
  });
});

/** The figures a limit decides by, whatever part of its clause they are in. */
const deciding = (node: unknown): readonly string[] => {
  if (typeof node !== "object" || node === null) return [];
  if (Array.isArray(node)) return node.flatMap(deciding);
  const { printed } = node as { readonly printed?: string };
  return [...(printed === undefined ? [] : numbersIn(printed).map(String)), ...Object.values(node).flatMap(deciding)];
};
const IN_WORDS: readonly string[] = ["", "one", "two", "three", "four"];

test("a figure that stands in a limit's text is one it decides by, or stands beside it in words", () => {
  const idle = PROFILES.flatMap(({ id, limits }) =>
    limits
      .filter(({ rule }) => rule.comparator !== "shown")
      .flatMap(({ item, text, rule, exceptions, measured }) => {
        const figures = deciding([rule, exceptions]);
        const metres = (number: string): string => String(Number(number) * 1000);
        return numbersIn(text)
          .map(String)
          .filter(
            (number) =>
              !figures.includes(number) &&
              !figures.includes(metres(number)) &&
              !new RegExp(`\\b${IN_WORDS[Number(number)] ?? "none"}\\b`).test(measured),
          )
          .map((number) => `${id}: ${item}, ${number}`);
      }),
  );
  expect(idle).toEqual([]);
});

test("every code is on the list", () => {
  expect(PROFILES.map(({ id }) => id).filter((id) => PUBLISHED[id] === undefined)).toEqual([]);
});

test("a limit that was not read in any text is never one that was", () => {
  for (const [id, published] of Object.entries(PUBLISHED)) {
    for (const [, item, , memory] of published) {
      const status = profileOf(id).limits.find((one) => one.item === item)?.status ?? "not yet checked";
      if (memory !== undefined) expect([id, item, status]).toEqual([id, item, "not yet checked"]);
    }
  }
});
