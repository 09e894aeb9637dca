import { facts } from "../../../src/solver/code/facts";
import { isProblem } from "../../../src/solver/problem";
import { inches, rowOf } from "./stair-check";

const known = (given: Parameters<typeof facts>[0]) => {
  const found = facts(given, "in");
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

test("rise comes out of total rise and count, exactly: 107 1/2 over 14 is 7.678571...", () => {
  const found = known({ totalRise: inches(107.5), risers: 14, run: inches(10) });
  expect(found.riserHeight?.times(14).toDecimalPlaces(40).eq(inches(107.5))).toBe(true);
  expect(found.treadDepth?.eq(inches(10))).toBe(true);
  expect(rowOf("riser height", found)).toMatchObject({ verdict: "pass" });
});

test("a nosing nobody gave would pass and says so, one that was given passes", () => {
  const stair = { totalRise: inches(107.5), risers: 14, run: inches(10) };
  expect(rowOf("nosing projection", known(stair))).toMatchObject({ verdict: "assumed: would pass", given: 1.25, margin: 0 });
  expect(rowOf("nosing projection", known(stair)).note).toContain("nosing assumed");
  expect(rowOf("nosing projection", known({ ...stair, nosing: inches(1) })).note).not.toContain("assumed");
});

// By hand: opening 120, rise 7, run 10: 120 x 7 / 10 - floor 10 = 74 in.
test("the headroom found counts before the one wanted, and a wish is called one", () => {
  const stair = { totalRise: inches(105), risers: 15, run: inches(10), headroom: inches(80) };
  const wanted = rowOf("headroom", known(stair));
  expect(wanted).toMatchObject({ verdict: "assumed: would pass", given: 80 });
  expect(wanted.note).toContain("the headroom wanted");
  const found = rowOf("headroom", known({ ...stair, opening: inches(120), floorThickness: inches(10) }));
  expect(found).toMatchObject({ verdict: "fail", given: 74, margin: -6 });
  expect(found.note).not.toContain("wanted");
});

test("what is only for the check is taken as it stands", () => {
  const found = known({ guardHeight: inches(36), fallHeight: inches(40), guardIsHandrail: "yes", handrails: "both" });
  expect(found).toMatchObject({ guardIsHandrail: "yes", handrails: "both" });
  expect(found.guardHeight?.eq(inches(36))).toBe(true);
});

test("a slope of 0 is an empty cell and passes nothing", () => {
  expect(rowOf("walking surface slope", known({ treadSlope: 0 })).verdict).toBe("not given");
});

test("headroom left empty in a layout that goes into the check as it stands is not given, not 0", () => {
  expect(rowOf("headroom", known({ unitRise: inches(7), headroomFound: inches(0) })).verdict).toBe("not given");
});

test("a stair that contradicts itself is not checked", () => {
  expect(facts({ totalRise: inches(105), risers: 15, run: inches(10), totalRun: inches(150) }, "in")).toMatchObject({
    problem: "labels-disagree",
  });
});

test("a stair of which only the rise is known is checked for what that tells", () => {
  expect(rowOf("riser height", known({ unitRise: inches(8) }))).toMatchObject({ verdict: "fail", given: 8 });
});

// By hand: 11 1/4 less 7 x 10 / sqrt(149) = 11.25 - 5.7346... in; what nobody gave of stringers and treads is not held.
test("stringers and treads are held where they were given, and a default never passes for one", () => {
  const stair = { totalRise: inches(105), risers: 15, run: inches(10) };
  const bare = known(stair);
  expect([bare.stringerBoard, bare.throat, bare.treadThickness]).toEqual([undefined, undefined, undefined]);
  const given = known({ ...stair, stringerBoard: inches(11.25), treadThickness: inches(1.25) });
  expect(given.throat?.div("25.4").toNumber()).toBeCloseTo(11.25 - 70 / Math.sqrt(149), 9);
  expect(given.stringerBoard?.eq(inches(11.25))).toBe(true);
  expect(given.treadThickness?.eq(inches(1.25))).toBe(true);
});

describe("a label that another table marks as assumed", () => {
  const given = {
    totalRise: inches(105), risers: 15, run: inches(10), nosing: inches(1), width: inches(36), opening: inches(130),
    floorThickness: inches(10), guardHeight: inches(36), clearWidth: inches(35),
  };

  // The fact as the check calls it, and the label it stands under.
  test.each([
    ["nosing", "nosing"], ["risers", "risers"], ["riserHeight", "unitRise"], ["treadDepth", "run"], ["totalRise", "totalRise"],
    ["width", "width"], ["headroom", "headroomFound"], ["guardHeight", "guardHeight"], ["clearWidth", "clearWidth"],
  ])("%s by %s", (fact, label) => {
    const found = facts(given, "in", { [label]: "as the drawing has it" });
    if (isProblem(found)) throw new Error(found.problem);
    const words = label.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
    expect(found.assumed).toEqual({ [fact]: `${words} assumed: as the drawing has it` });
  });

  test("is said before a reason of our own, and nothing is said of what was given", () => {
    const { nosing: _nosing, ...without } = given;
    const bare = facts(without, "in", { nosing: "as the drawing has it" });
    if (isProblem(bare)) throw new Error(bare.problem);
    expect(bare.assumed).toEqual({ nosing: "nosing assumed: as the drawing has it" });
    expect(known(given).assumed).toEqual({});
  });

  test("a headroom that is only wanted says so even where the one found is marked", () => {
    const wanted = facts({ unitRise: inches(7), headroom: inches(80) }, "in", { headroomFound: "as the drawing has it" });
    if (isProblem(wanted)) throw new Error(wanted.problem);
    expect(wanted.assumed?.["headroom"]).toBe("the headroom wanted; give opening and floor thickness for the one there is");
    expect(known({ unitRise: inches(7) }).assumed).not.toHaveProperty("headroom");
  });
});

test("what a stair does not tell is no fact", () => {
  const bare = known({ unitRise: inches(7) });
  expect(Object.keys(bare).sort()).toEqual(["assumed", "nosing", "riserHeight", "unit"]);
  expect(known({ run: inches(10), width: inches(36) })).not.toHaveProperty("riserHeight");
  expect(known({ run: inches(10), width: inches(36) }).width?.eq(inches(36))).toBe(true);
  expect(known({ totalRise: inches(105), risers: 15 }).totalRise?.eq(inches(105))).toBe(true);
  expect(known({ totalRise: inches(105), risers: 15 }).risers).toBe(15);
});

test("a length of 0 and a count of 0 that are only for the check are empty cells", () => {
  const found = known({ unitRise: inches(7), guardHeight: inches(0), stairRisers: 0, fallHeight: inches(30), storeysJoined: 2 });
  expect(found).not.toHaveProperty("guardHeight");
  expect(found).not.toHaveProperty("stairRisers");
  expect(found.fallHeight?.eq(inches(30))).toBe(true);
  expect(found.storeysJoined).toBe(2);
});
