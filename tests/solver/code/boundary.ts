import { Decimal } from "decimal.js";
import { conditionTruth } from "../../../src/solver/code/condition";
import { type CodeFacts, FACT_LABELS, type MeasuredFact, type Step } from "../../../src/solver/code/fact-labels";
import { finding } from "../../../src/solver/code/finding/finding";
import type { RuleOf } from "../../../src/solver/code/finding/compared";
import type { Condition, Figure, Limit, Measure, Rule, UniformityRule } from "../../../src/solver/code/profile";
import { Exact } from "../../../src/solver/length/exact";
import { isFigureText, leavesItsFigureOut, numbersIn, sizeIn } from "./printed-text";

/**
 * What the printed text of a record says of sizes one mark under, on and one mark over its figure, compared with what the check finds.
 * The figure is read from the text by `printed-text.ts` and never taken from the rule.
 */

interface Stair {
  readonly facts: CodeFacts;
  readonly steps: readonly Step[];
}

type Place = "under" | "on" | "over";
interface Trial {
  readonly place: Place;
  readonly size: Decimal;
}

/**
 * The marks a size is off by: sixteenths and sixty-fourths of an inch, a millimetre, a degree or a count; and a twentieth, for small
 * figures.
 */
const MARKS: Readonly<Record<string, readonly string[]>> = {
  in: ["1.5875", "0.396875"], mm: ["1"], cm: ["1"], "sq in": ["645.16"], deg: ["1"], count: ["1"],
};
const TWENTIETH = 20;

/** Sizes under, on and over a figure. Those of a code in inches also in whole millimetres, the nearest on either side. */
const trials = (size: Decimal, unit: string): readonly Trial[] => {
  const apart = [...(MARKS[unit] ?? []), ...(unit === "count" || size.isZero() ? [] : [size.div(TWENTIETH).toString()])];
  const sizes = [
    ...apart.flatMap((mark) => [size.minus(mark), size.plus(mark)]), size,
    ...(unit === "in" ? [size.floor(), size.ceil()] : []),
  ];
  return sizes
    .filter((one) => !one.isNegative())
    .map((one) => ({ size: one, place: one.lt(size) ? "under" : one.gt(size) ? "over" : "on" }));
};

const EXACT_KINDS: readonly string[] = ["length"];

const ofFact = (fact: MeasuredFact, size: Decimal): Stair => ({
  facts: { [fact]: EXACT_KINDS.includes(FACT_LABELS[fact].kind) ? new Exact(size.toString()) : size.toNumber() } as CodeFacts, steps: [],
});

const DEGREES = 180;

/** A rise and a run that give a formula a size. */
const ofFormula = (formula: string, size: Decimal): Stair => {
  const pairs: Readonly<Record<string, () => readonly [Decimal, Decimal]>> = {
    "two risers plus run": () => [size.div(4), size.div(2)],
    "riser plus run": () => [size.div(4), size.times("0.75")],
    "run less riser": () => [new Decimal(170), size.plus(170)],
    // A riser of 5 in: 70, 72 and 75 sq in divide by it without a rest.
    "riser times run": () => [new Decimal(127), size.div(127)],
    pitch: () => [new Exact(250).times(Exact.tan(new Exact(size.toString()).times(Exact.acos(-1)).div(DEGREES))), new Decimal(250)],
  };
  const [rise, run] = pairs[formula]?.() ?? [size, size];
  return { facts: { riserHeight: new Exact(rise.toString()), treadDepth: new Exact(run.toString()) }, steps: [] };
};

/** The stairs that show a size, one for each fact of a measure. */
const showing = (measure: Measure, size: Decimal): readonly Stair[] => {
  if (typeof measure === "string") return [ofFact(measure, size)];
  if ("formula" in measure) return [ofFormula(measure.formula, size)];
  if ("inner" in measure) return [{ facts: {}, steps: [1, 2, 3].map((step) => ({ step, rise: new Exact(size.toString()) })) }];
  return measure.map((fact) => ofFact(fact, size));
};

const DESIGN = { rise: "riserHeight", run: "treadDepth", width: "clearWidth", nosing: "nosing" } as const;
const BASE = 200;

const spreading = ({ of, within }: UniformityRule, size: Decimal): Stair => {
  if (typeof of !== "string") return ofFact(of.spread, size);
  const [small, large] = [new Exact(BASE), new Exact(size.plus(BASE).toString())];
  const sizes = within === "bottom step" ? [large, small, small] : [small, large, large];
  return {
    facts: within === "design" || within === "bottom step" ? { [DESIGN[of]]: small } : {},
    steps: sizes.map((one, index) => ({ step: index + 1, [of]: one })),
  };
};

const REQUIRED = "breaks or not given";
const outcomeOf = (rule: Rule, limit: Limit, { facts, steps }: Stair): string => {
  const { outcome } = finding(rule, limit, { facts, steps, reached: () => "unknown", behind: () => [] });
  return rule.comparator === "required-when" && (outcome === "breaks" || outcome === "not given") ? REQUIRED : outcome;
};

type Expected = Readonly<Record<Place, string>>;
const AT_LEAST: Expected = { under: "breaks", on: "holds", over: "holds" };
const AT_MOST: Expected = { under: "holds", on: "holds", over: "breaks" };
const EXACTLY: Expected = { under: "breaks", on: "holds", over: "breaks" };
const KEPT_OUT: Expected = { under: "holds", on: "touches", over: "breaks" };
const EXEMPT: Expected = { under: "does not apply", on: "holds", over: "holds" };
const REQUIRED_FROM: Expected = { under: "does not apply", on: REQUIRED, over: REQUIRED };
const REQUIRED_ABOVE: Expected = { under: "does not apply", on: "does not apply", over: REQUIRED };

/** The text a figure was printed in, as its record has it. */
interface Said {
  readonly text: string;
  readonly unit: string;
}

const told = (figure: Figure): Said => {
  if (figure.printed === undefined) throw new Error(`a figure of ${figure.value.toString()} that was not read from a text`);
  return { text: figure.printed, unit: figure.unit };
};

const place = (trial: Trial, said: Said): string => `${trial.size.toString()} ${trial.place} "${said.text}" ${said.unit}`;

/** What the check finds otherwise than the words have it. */
const against = (
  rule: Rule,
  limit: Limit,
  said: Said,
  expected: Expected,
  stairs: (size: Decimal) => readonly Stair[],
  size = sizeIn(said.text, said.unit),
): readonly string[] =>
  trials(size, said.unit).flatMap((trial) =>
    stairs(trial.size).flatMap((stair) => {
      const found = outcomeOf(rule, limit, stair);
      return found === expected[trial.place] ? [] : [`${limit.item}: ${place(trial, said)}: ${found}, not ${expected[trial.place]}`];
    }),
  );

/** The figures of a rule as texts: those of the limit's own text where the whole of it is figures, else the words the record names. */
const saidOf = (figures: readonly Figure[], limit: Limit, isMain: boolean): readonly Said[] => {
  const own = numbersIn(limit.text);
  if (!isMain || !isFigureText(limit.text) || own.length !== figures.length) return figures.map(told);
  return own.map((number, index) => ({ text: number.toString(), unit: figures[index]?.unit ?? limit.unit }));
};

const MAIN_UNIT_NEEDED = "the figure of a limit is in another unit than the limit";

const conditionFaults = (condition: Condition, limit: Limit): readonly string[] => {
  if ("all" in condition) return condition.all.flatMap((part) => conditionFaults(part, limit));
  if ("any" in condition) return condition.any.flatMap((part) => conditionFaults(part, limit));
  if ("not" in condition) return conditionFaults(condition.not, limit);
  const [figure, expected] = ((): readonly [Figure | undefined, Readonly<Record<Place, string>>] => {
    if ("moreThan" in condition) return [condition.moreThan, { under: "no", on: "no", over: "yes" }];
    if ("atLeast" in condition) return [condition.atLeast, { under: "no", on: "yes", over: "yes" }];
    if ("lessThan" in condition) return [condition.lessThan, { under: "yes", on: "no", over: "no" }];
    if ("atMost" in condition) return [condition.atMost, { under: "yes", on: "yes", over: "no" }];
    return [undefined, { under: "", on: "", over: "" }];
  })();
  if (figure === undefined || !("fact" in condition) || "is" in condition) return [];
  const said = told(figure);
  return trials(sizeIn(said.text, said.unit), said.unit).flatMap((trial) => {
    const found = conditionTruth(condition, ofFact(condition.fact, trial.size).facts, () => "unknown");
    return found === expected[trial.place] ? [] : [`${limit.item}, ${condition.fact}: ${place(trial, said)}: ${found}`];
  });
};

const rangeFaults = (rule: RuleOf<"range">, limit: Limit, isMain: boolean): readonly string[] => {
  const [low, high] = saidOf([rule.min, rule.max], limit, isMain);
  if (low === undefined || high === undefined) return [];
  const [least, most] = [sizeIn(low.text, low.unit), sizeIn(high.text, high.unit)];
  return [...trials(least, low.unit), ...trials(most, high.unit)].flatMap(({ size }) =>
    showing(rule.of, size).flatMap((stair) => {
      const expected = size.lt(least) || size.gt(most) ? "breaks" : "holds";
      const found = outcomeOf(rule, limit, stair);
      return found === expected
        ? []
        : [`${limit.item}: ${size.toString()}, "${low.text} to ${high.text}" ${high.unit}: ${found}, not ${expected}`];
    }),
  );
};

const slopeFaults = (rule: RuleOf<"slope">, limit: Limit, isMain: boolean): readonly string[] => {
  const [rise, run] = numbersIn(isMain && isFigureText(limit.text) ? limit.text : (rule.printed ?? ""));
  if (rise === undefined || run === undefined) return [`${limit.item}: a slope that was not read from a text`];
  // Steeper is over: one unit less of run, or a twentieth less.
  return [
    [run.plus(1), "holds"],
    [run, "holds"],
    [run.minus(1), "breaks"],
    [run.times("0.95"), "breaks"],
    [run.times("1.05"), "holds"],
  ].flatMap(([over, expected]) =>
    showing(rule.of, rise.div(over as Decimal)).flatMap((stair) => {
      const found = outcomeOf(rule, limit, stair);
      return found === expected ? [] : [`${limit.item}: ${rise.toString()}:${String(over)} is ${found}, not ${String(expected)}`];
    }),
  );
};

const requiredWhenFaults = (rule: RuleOf<"required-when">, limit: Limit, isMain: boolean): readonly string[] => {
  const both = [{ of: rule.of, from: rule.from }, ...(rule.or === undefined ? [] : [rule.or])];
  return both
    .flatMap(({ of, from }, index) => {
      const figure = "atLeast" in from ? from.atLeast : from.moreThan;
      const [said] = saidOf([figure], limit, isMain && both.length === 1);
      // The other threshold, where there is one, is given and not reached.
      const others = both.filter((_, at) => at !== index).flatMap((other) => showing(other.of, new Decimal(1)));
      const beside = Object.assign({}, ...others.map(({ facts }) => facts)) as CodeFacts;
      // Words decide whether the figure itself counts, where the text has them.
      const exclusive = isMain && both.length === 1 && isFigureText(limit.text) ? leavesItsFigureOut(limit.text) : "moreThan" in from;
      return said === undefined
        ? []
        : against(rule, limit, said, exclusive ? REQUIRED_ABOVE : REQUIRED_FROM, (size) =>
            showing(of, size).map(({ facts, steps }) => ({ facts: { ...beside, ...facts }, steps })),
          );
    })
    .concat(conditionFaults(rule.provided, limit));
};

const relationFaults = (rule: RuleOf<"relation">, limit: Limit): readonly string[] => {
  const [fact] = rule.than;
  const part = rule.part === undefined ? new Decimal(1) : new Decimal("0.5");
  const expected: Expected = rule.sense === "at least" ? AT_LEAST : rule.sense === "at most" ? AT_MOST : EXACTLY;
  const than = (whole: Decimal) => (size: Decimal) =>
    showing(rule.of, size).map(({ facts }) => ({ facts: { ...facts, ...ofFact(fact, whole).facts }, steps: [] }));
  const whole = rule.capped === undefined ? new Decimal(1000) : sizeIn(told(rule.capped).text, rule.capped.unit).times("0.9");
  const faults = against(rule, limit, { text: whole.times(part).toString(), unit: "mm" }, expected, than(whole));
  if (rule.capped === undefined) return faults;
  const cap = told(rule.capped);
  return [...faults, ...against(rule, limit, cap, expected, than(sizeIn(cap.text, cap.unit).times(2)))];
};

const ruleFaults = (rule: Rule, limit: Limit, isMain: boolean): readonly string[] => {
  const held = (figure: Figure, expected: Expected, of: Measure): readonly string[] => {
    const [said] = saidOf([figure], limit, isMain);
    if (isMain && figure.unit !== limit.unit) return [`${limit.item}: ${MAIN_UNIT_NEEDED}`];
    return said === undefined ? [] : against(rule, limit, said, expected, (size) => showing(of, size));
  };
  switch (rule.comparator) {
    case "min":
      return held(rule.min, AT_LEAST, rule.of);
    case "max":
      return held(rule.max, AT_MOST, rule.of);
    case "sphere":
      return held(rule.sphere, KEPT_OUT, rule.of);
    case "exempt-when":
      return held(rule.atLeast, EXEMPT, rule.of);
    case "range":
      return rangeFaults(rule, limit, isMain);
    case "equals":
      return saidOf(rule.values, limit, isMain).flatMap((said) => against(rule, limit, said, EXACTLY, (size) => showing(rule.of, size)));
    case "slope":
      return slopeFaults(rule, limit, isMain);
    case "uniformity": {
      const [said] = saidOf([rule.tolerance], limit, isMain);
      return said === undefined ? [] : against(rule, limit, said, AT_MOST, (size) => [spreading(rule, size)]);
    }
    case "required-when":
      return requiredWhenFaults(rule, limit, isMain);
    case "relation":
      return relationFaults(rule, limit);
    case "required":
      return conditionFaults(rule.provided, limit);
    case "prohibited":
      return conditionFaults(rule.present, limit);
    case "every":
    case "either":
      return rule.parts.flatMap((part, index) => ruleFaults(part, limit, isMain && index === 0));
    case "table":
      return rule.rows.flatMap((row) => [...conditionFaults(row.when, limit), ...ruleFaults(row.rule, limit, false)]);
    default:
      return [];
  }
};

/** Every way in which a limit, its conditions and its exceptions decide otherwise than their printed words. */
export const boundaryFaults = (limit: Limit): readonly string[] => [
  ...ruleFaults(limit.rule, limit, true),
  ...limit.applies.flatMap(({ when }) => conditionFaults(when, limit)),
  ...limit.exceptions.flatMap(({ when, then }) => [
    ...conditionFaults(when, limit),
    ...(typeof then === "string" ? [] : ruleFaults(then, limit, false)),
  ]),
];

const isFigure = (node: object): node is Figure => "value" in node && "unit" in node;
const LOOSER = "1.1";

/** A figure a tenth larger or smaller, or by one where it counts; none is left as it was. */
const moved = (figure: Figure, up: boolean): Figure => {
  const { value, unit } = figure;
  if (unit === "count" || value.isZero()) return { ...figure, value: up || value.isZero() ? value.plus(1) : value.minus(1) };
  return { ...figure, value: up ? value.times(LOOSER) : value.div(LOOSER) };
};

/** Copies of a record's rules and conditions, each with one figure moved and its printed text left as it is. */
export const withOneFigureMoved = <Node>(node: Node): readonly Node[] => {
  if (typeof node !== "object" || node === null) return [];
  if (Array.isArray(node)) {
    return node.flatMap((part: unknown, index) =>
      withOneFigureMoved(part).map((other) => node.map((one: unknown, at) => (at === index ? other : one)) as Node),
    );
  }
  if (isFigure(node)) return [moved(node, true), moved(node, false)] as unknown as readonly Node[];
  if (node instanceof Exact || node instanceof Decimal) return [];
  const slope = node as { readonly comparator?: string; readonly run?: number; readonly part?: { readonly times: Exact } };
  const steeper =
    slope.comparator === "slope" && slope.run !== undefined
      ? [
          { ...node, run: slope.run * 1.1 },
          { ...node, run: slope.run / 1.1 },
        ]
      : [];
  const halves = slope.part === undefined ? [] : [{ ...node, part: { ...slope.part, times: slope.part.times.times(LOOSER) } }];
  return [
    ...steeper,
    ...halves,
    ...Object.entries(node).flatMap(([key, part]) => withOneFigureMoved(part as unknown).map((other) => ({ ...node, [key]: other }))),
  ];
};

type MainRule = Extract<Rule, { readonly comparator: "min" | "max" | "range" | "sphere" | "equals" }>;
const MAIN_KINDS: readonly string[] = ["min", "max", "range", "sphere", "equals"];

/** The rule that gives a limit its figure, where that is a size compared with one. */
export const mainRule = (rule: Rule): MainRule | undefined => {
  if ("parts" in rule) return mainRule(rule.parts[0]);
  return MAIN_KINDS.includes(rule.comparator) ? (rule as MainRule) : undefined;
};

const VERDICTS: Readonly<Record<MainRule["comparator"], Expected>> = {
  min: { under: "fail", on: "pass", over: "pass" },
  max: { under: "pass", on: "pass", over: "fail" },
  range: { under: "", on: "", over: "" },
  sphere: { under: "pass", on: "judge", over: "fail" },
  equals: { under: "fail", on: "pass", over: "fail" },
};

/** Stairs beside the printed figure of a limit, each with the verdict its words have for it. */
export const rowTrials = (limit: Limit): readonly { readonly facts: CodeFacts; readonly verdict: string; readonly what: string }[] => {
  const rule = mainRule(limit.rule);
  if (rule === undefined) return [];
  const figures =
    "values" in rule
      ? rule.values
      : "sphere" in rule
        ? [rule.sphere]
        : [...("min" in rule ? [rule.min] : []), ...("max" in rule ? [rule.max] : [])];
  const sizes = saidOf(figures, limit, true).map(({ text, unit }) => sizeIn(text, unit));
  const [least, most] = [sizes[0], sizes[sizes.length - 1]];
  if (least === undefined || most === undefined) return [];
  return sizes.flatMap((size) => trials(size, limit.unit)).flatMap(({ size, place: where }) => {
    const verdict = rule.comparator === "range" ? (size.lt(least) || size.gt(most) ? "fail" : "pass")
      : rule.comparator === "equals" ? (sizes.some((one) => one.eq(size)) ? "pass" : "fail") : VERDICTS[rule.comparator][where];
    return showing(rule.of, size).filter(({ steps }) => steps.length === 0).map(({ facts }) => ({
      facts, what: `${limit.item} at ${size.toString()}`, verdict: verdict === "fail" && limit.advisory ? "caution" : verdict,
    }));
  });
};
