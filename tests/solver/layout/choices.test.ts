import fc from "fast-check";
import { codeProfile } from "../../../src/solver/code/profiles";
import { type Length, lengthOf, measure } from "../../../src/solver/length/length";
import { choices } from "../../../src/solver/layout/choices";
import { isProblem } from "../../../src/solver/problem";

const inches = (value: number): Length => lengthOf(value, "in");
const irc = () => {
  const profile = codeProfile("irc-2021");
  if (isProblem(profile)) throw new Error(profile.problem);
  return profile;
};

const chosen = (totalRise: number, availableRun?: number, code = true) => {
  const found = choices(inches(totalRise), availableRun === undefined ? undefined : inches(availableRun), code ? irc() : undefined, "in");
  if (isProblem(found)) throw new Error(found.problem);
  return found.map(({ risers, rise, run, twiceRisePlusRun, totalRun, verdict }) => ({
    risers,
    rise: measure(rise, "in"),
    run: measure(run, "in"),
    stride: measure(twiceRisePlusRun, "in"),
    totalRun: measure(totalRun, "in"),
    verdict,
  }));
};

test("105 5/8 in: King, Inside Finishing (1912) weighs 14 of 7.54 against 15 of 7.04; both are offered", () => {
  const found = chosen(105.625);
  expect(found.find(({ risers }) => risers === 14)?.rise).toBeCloseTo(7.54, 2);
  expect(found.find(({ risers }) => risers === 15)?.rise).toBeCloseTo(7.04, 2);
});

test("2h + d = 25: SAT practice test 6, a rise of 7 1/2 goes with 10 and one of 8 with 9", () => {
  // Eight inches is over the code's 7 3/4, so it comes last, and its run is the code's least rather than 9.
  const found = chosen(120);
  expect(found.find(({ risers }) => risers === 16)).toMatchObject({ rise: 7.5, run: 10, stride: 25, verdict: "pass" });
  expect(found.find(({ risers }) => risers === 15)).toMatchObject({ rise: 8, run: 10, verdict: "fail" });
  expect(found[found.length - 1]?.risers).toBe(15);
});

test("room for the run is shared out over one tread fewer than risers", () => {
  // By hand: 140 / 13.
  expect(chosen(105, 140).find(({ risers }) => risers === 14)?.run).toBeCloseTo(140 / 13, 12);
});

test("without a code there is no verdict and the run is never under 10", () => {
  for (const { verdict, run } of chosen(105, undefined, false)) {
    expect(verdict).toBe("not given");
    expect(run).toBeGreaterThanOrEqual(10);
  }
});

test("every rise lies between 5 and 8 1/4, no count between is left out, and those that pass come first", () => {
  fc.assert(
    fc.property(fc.integer({ min: 192, max: 3200 }), (sixteenths) => {
      const total = sixteenths / 16;
      const found = chosen(total);
      const counts = Array.from({ length: 200 }, (_, index) => index + 2).filter((count) => total / count >= 5 && total / count <= 8.25);
      expect(found.map(({ risers }) => risers).sort((one, other) => one - other)).toEqual(counts);
      const passes = found.map(({ verdict }) => verdict === "pass");
      expect(passes.lastIndexOf(true)).toBeLessThan(passes.includes(false) ? passes.indexOf(false) : passes.length);
      for (const { rise, run, verdict } of found) expect(verdict).toBe(rise <= 7.75 && run >= 10 && total <= 151 ? "pass" : "fail");
    }),
    { numRuns: 60 },
  );
});

test("a limit that turns on more than rise and run is not given, and is named", () => {
  const profile = irc();
  const wide = { when: { fact: "clearWidth", moreThan: { value: inches(44), unit: "mm" } }, words: "the stair is wide" } as const;
  const limits = profile.limits
    .filter(({ item }) => item === "tread depth" || item === "riser height")
    .map((limit) => (limit.item === "tread depth" ? { ...limit, applies: [wide] } : limit));
  // By hand: 27 in over four treads are 6 3/4 each, under the 10 of the code, if this invented one asks for it here.
  const found = choices(inches(30), inches(27), { ...profile, limits }, "in");
  if (isProblem(found)) throw new Error(found.problem);
  expect(found.find(({ risers }) => risers === 5)).toMatchObject({
    verdict: "not given", note: "tread depth (R311.7.5.2): CHECK says what it turns on",
  });
});
