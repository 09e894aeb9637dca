import { type LimitInForce, limitInForce } from "../../../src/solver/code/limit-in-force";
import { namedLimit } from "../../../src/solver/code/named-limit";
import { type CodeProfile, figure, type Limit, type Rule } from "../../../src/solver/code/profile";
import { isProblem } from "../../../src/solver/problem";
import { codeOf, limitOf } from "./invented-code";

const codeWith = (unit: Limit["unit"], rule: Rule) => codeOf(limitOf({ item: "held", unit, rule, text: "as printed", clause: "1.2" }));

const said = (found: ReturnType<typeof limitInForce>): string =>
  isProblem(found) ? found.problem : `${found.kind} ${(found as LimitInForce).value.toString()}`;

const GUARD = { requires: "a guard", provided: { fact: "guard", is: ["yes"] } } as const;
const min: Rule = { comparator: "min", of: "headroom", min: figure("80", "in") };
const drop: Rule = { comparator: "required-when", of: "fallHeight", from: { moreThan: figure("30", "in") }, ...GUARD };

// Lengths in millimetres, 25.4 to the inch and 10 to the centimetre: 80 in is 2032, 7 is 177.8, 4 is 101.6, 3/8 is 9.525, 11 is 279.4,
// 30 is 762; 1 over 48 is 0.0208333....
describe("what a limit comes to, kind by kind", () => {
  test.each<readonly [string, Limit["unit"], Rule, string]>([
    ["a least", "in", min, "length 2032"],
    ["a greatest", "in", { comparator: "max", of: "riserHeight", max: figure("7", "in") }, "length 177.8"],
    ["a greatest in centimetres", "cm", { comparator: "max", of: "riserHeight", max: figure("20", "cm") }, "length 200"],
    ["a greatest in millimetres", "mm", { comparator: "max", of: "riserHeight", max: figure("190", "mm") }, "length 190"],
    ["an angle", "deg", { comparator: "max", of: { formula: "pitch" }, max: figure("42", "deg") }, "number 42"],
    ["a count", "count", { comparator: "max", of: "risers", max: figure("16", "count") }, "number 16"],
    ["an area", "sq in", { comparator: "max", of: { formula: "riser times run" }, max: figure("75", "sq in") }, "number 75"],
    ["a ball", "in", { comparator: "sphere", of: "guardGap", sphere: figure("4", "in") }, "length 101.6"],
    ["a spread", "in", { comparator: "uniformity", of: "rise", within: "flight", tolerance: figure("0.375", "in") }, "length 9.525"],
    ["a size that frees", "in", { comparator: "exempt-when", of: "treadDepth", atLeast: figure("11", "in"), frees: "" }, "length 279.4"],
    ["a threshold", "in", drop, "length 762"],
    ["a threshold of a count", "count", { ...drop, of: "risers", from: { atLeast: figure("4", "count") } }, "number 4"],
    ["one exact figure", "mm", { comparator: "equals", of: "walkline", values: [figure("300", "mm")] }, "length 300"],
    ["a slope", "ratio", { comparator: "slope", of: "treadSlope", rise: 1, run: 50 }, "number 0.02"],
    ["the first rule of a clause", "in", { comparator: "every", needs: "any", parts: [min, drop] }, "length 2032"],
    ["the first of two, one of which is enough", "in", { comparator: "either", parts: [drop, min] }, "length 762"],
  ])("%s", (_says, unit, rule, value) => {
    expect(said(limitInForce(codeWith(unit, rule), "held"))).toBe(value);
  });

  // 34 and 38 in are 863.6 and 965.2 mm; 23 to 37 cm are 230 to 370; 7 53/64 is 7.828125 in, 200 mm 7.8740157... in.
  const handrail: Rule = { comparator: "range", of: "handrailHeight", min: figure("34", "in"), max: figure("38", "in") };
  test.each<readonly [string, Rule, "in" | "mm", string]>([
    ["in its own unit", handrail, "in", "34 to 38"],
    ["in the other", handrail, "mm", "863.6 to 965.2"],
    ["of centimetres", { comparator: "range", of: "treadDepth", min: figure("23", "cm"), max: figure("37", "cm") }, "mm", "230 to 370"],
    ["to six places", { comparator: "range", of: "riserHeight", min: figure("7.828125", "in"), max: figure("200", "mm") }, "in",
      "7.828125 to 7.874016"],
    ["of degrees", { comparator: "range", of: { formula: "pitch" }, min: figure("30", "deg"), max: figure("50", "deg") }, "mm", "30 to 50"],
  ])("two figures %s", (_says, rule, unit, value) => {
    expect(said(limitInForce(codeWith("in", rule), "held", unit))).toBe(`text ${value}`);
  });

  test.each<readonly [string, Rule, string]>([
    ["two exact figures", { comparator: "equals", of: "walkline", values: [figure("270", "mm"), figure("300", "mm")] }, "limit-depends"],
    ["two thresholds", { ...drop, or: { of: "risers", from: { atLeast: figure("4", "count") } } }, "limit-depends"],
    ["another size of the stair", { comparator: "relation", of: "landingDepth", sense: "at least", than: ["width"] }, "limit-depends"],
    ["a table", { comparator: "table", rows: [{ when: { given: "width" }, words: "", rule: min }] }, "limit-depends"],
    ["steps that are to be alike", { comparator: "alike", of: ["rise"], sense: "" }, "limit-is-no-figure"],
    ["what a person judges", { comparator: "person", sense: "" }, "limit-is-no-figure"],
    ["what is not permitted", { comparator: "prohibited", thing: "", present: { given: "winders" } }, "limit-is-no-figure"],
    ["what is always required", { comparator: "required", ...GUARD }, "limit-is-no-figure"],
    ["words alone", { comparator: "shown", text: "counted from the floor" }, "limit-is-no-figure"],
  ])("%s: refused, with the printed text and its clause", (_says, rule, problem) => {
    expect(limitInForce(codeWith("in", rule), "Held")).toMatchObject({
      problem, details: { item: "held", code: "invented", text: "as printed", clause: "1.2" },
    });
  });
});

describe("an item that is not there", () => {
  const published = (...limits: readonly Limit[]): CodeProfile => {
    const { isCode: _none, ...code } = codeOf(...limits);
    return code;
  };
  const headroom = limitOf({ item: "headroom", unit: "in", rule: min });

  test("a topic of which a code has nothing is not on file, by its own name or that of a limit of other codes", () => {
    for (const item of ["winders", "Guard height", "walkline offset"])
      expect(limitInForce(published(headroom), item)).toMatchObject({ problem: "limit-not-on-file", details: { item, code: "invented" } });
  });

  test("rules of the trade have no topics: there it is unknown", () => {
    expect(limitInForce(codeOf(headroom), "winders")).toMatchObject({
      problem: "unknown-item", details: { item: "winders", nearest: '; there is only "headroom"' },
    });
  });

  test("one of a topic that is on file is answered with what the code has on it, spelt alike or not", () => {
    const code = published(headroom, limitOf({ item: "stair width", unit: "in", rule: min }));
    expect(limitInForce(code, "headroom other")).toMatchObject({ details: { nearest: '; nearest is "headroom"' } });
    expect(limitInForce(code, "width")).toMatchObject({ details: { nearest: '; nearest is "stair width"' } });
  });

  test("a width the code leaves free is none, and words on anything else are no figure", () => {
    const free: Rule = { comparator: "shown", text: "no least width" };
    const width = limitOf({ item: "stair width", unit: "mm", rule: free });
    expect(limitInForce(published(width), "stair width")).toEqual({
      kind: "text", value: "none in this code", status: "checked against the code's text",
    });
    expect(limitInForce(published(limitOf({ item: "counting", unit: "mm", rule: free })), "counting")).toMatchObject({
      problem: "limit-is-no-figure",
    });
    // Beside a limit on the same topic, what is only shown is no word that there is none.
    const other = limitOf({ item: "clear width above handrail", unit: "in", rule: min });
    expect(limitInForce(published(width, other), "stair width")).toMatchObject({ problem: "limit-is-no-figure" });
  });
});

describe("one quantity by any of its words", () => {
  const named = (item: string, ...items: readonly string[]) =>
    namedLimit(codeOf(...items.map((one) => limitOf({ item: one, unit: "in", rule: min }))), item)?.item;

  test.each([
    ["going", "tread depth"], ["run", "tread depth"], ["tread depth", "run"], ["tread depth", "going"],
    ["run public", "tread depth public"],
    ["rise", "riser height"], ["unit rise", "riser height"], ["riser", "riser height"], ["rise height", "riser height"],
    ["riser height dwelling", "rise dwelling"], ["run uniformity", "tread uniformity"], ["tread uniformity", "going uniformity"],
  ])("%s for %s", (item, its) => {
    expect(named(item, "headroom", its)).toBe(its);
  });

  test("the code's own word comes first", () => {
    expect(named("run", "tread depth", "run")).toBe("run");
    expect(named("Tread-Depth", "run", "tread depth")).toBe("tread depth");
  });

  test("what is no word for it names nothing", () => {
    expect(named("width", "headroom", "tread depth")).toBeUndefined();
    expect(named("outrun", "tread depth")).toBeUndefined();
    expect(named("tread depth dwelling", "run")).toBeUndefined();
  });
});
