import fc from "fast-check";
import { type Length, lengthOf, measure, type Unit } from "../../../src/solver/length/length";
import { pitch } from "../../../src/solver/layout/pitch";
import { resolvedStair } from "../../../src/solver/layout/resolved-stair";
import { riserCount } from "../../../src/solver/layout/riser-count";
import type { StairFacts } from "../../../src/solver/layout/stair-facts";
import { stairLayout } from "../../../src/solver/layout/stair-layout";
import { storyPole } from "../../../src/solver/layout/story-pole";
import { isProblem } from "../../../src/solver/problem";

const inches = (value: number | string): Length => lengthOf(value, "in");

/** A layout as plain numbers by label, in the unit given. */
const laidOut = (facts: StairFacts, unit: Unit = "in"): Record<string, number | string> => {
  const lines = stairLayout(facts, unit);
  if (isProblem(lines))
    return {
      problem: lines.problem,
      ...Object.fromEntries(
        Object.entries(lines.details).map(([key, fact]) => [key, typeof fact === "object" ? measure(fact, "in") : fact]),
      ),
    };
  return Object.fromEntries(
    lines.flatMap(({ key, value }) => (value === undefined ? [] : [[key, typeof value === "object" ? measure(value, unit) : value]])),
  );
};

describe("number of risers", () => {
  test.each([
    // 106 1/2 against a greatest rise of 8 is 13.3, so 14. 30 against 4 is 7.5, so 8. 96 against 7 is 13.7, so 14. 112 in sevens is 16.
    [106.5, 8, 14], [30, 4, 8], [96, 7, 14], [112, 7, 16],
  ])("%d in, none over %d, takes %d", (rise, most, risers) => {
    expect(riserCount(inches(rise), inches(most))).toBe(risers);
  });

  test("other policies of old books are not ours: one drops the fraction, one takes the nearest, we never pass the greatest", () => {
    // US Navy Builder 3 & 2: 107 / 7 = 15.29, printed 15, which makes 7 1/8 in. Modern Carpentry p. 604: 94 / 7 = 13.43, printed 13.
    for (const [rise, printed] of [[107, 15], [94, 13]] as const) {
      expect(riserCount(inches(rise), inches(7))).toBe(printed + 1);
      expect(rise / printed).toBeGreaterThan(7);
    }
  });

  test("float dust makes no extra riser", () => {
    // 1.1 + 1.1 + 1.1 is 3.3000000000000003 in binary; as a sheet shows it, it is three risers of 1.1.
    expect(riserCount(inches(1.1 + 1.1 + 1.1), inches(1.1))).toBe(3);
    expect(riserCount(inches(0.1 + 0.2), inches(0.1))).toBe(3);
    // A total that is a sum of 0.1s at the boundary: 1,085 tenths are 108.5 = 14 x 7.75.
    const tenths = Array.from({ length: 1085 }, () => 0.1).reduce((sum, tenth) => sum + tenth, 0);
    expect(tenths).not.toBe(108.5);
    expect(riserCount(inches(tenths), inches(7.75))).toBe(14);
  });

  test("millimetres and inches meet exactly", () => {
    // 14 x 7 3/4 in is 2,755.9 mm exactly; a tenth of a millimetre more takes another riser.
    expect(riserCount(lengthOf("2755.9", "mm"), inches(7.75))).toBe(14);
    expect(riserCount(lengthOf("2756", "mm"), inches(7.75))).toBe(15);
    expect(riserCount(lengthOf(600, "mm"), lengthOf(200, "mm"))).toBe(3);
  });

  test("a taller rise never needs fewer risers, and no riser is over the greatest", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6400 }),
        fc.integer({ min: 0, max: 640 }),
        fc.integer({ min: 200, max: 640 }),
        (sixteenths, more, most) => {
          const count = riserCount(inches(sixteenths / 16), inches(most / 64));
          expect(riserCount(inches((sixteenths + more) / 16), inches(most / 64))).toBeGreaterThanOrEqual(count);
          expect(sixteenths * 4).toBeLessThanOrEqual(count * most);
          expect(sixteenths * 4).toBeGreaterThan((count - 1) * most);
        },
      ),
    );
  });
});

describe("published layouts", () => {
  test("84 in and 104 1/2 in of run in 12 risers: Hodgson", () => {
    expect(laidOut({ totalRise: inches(84), risers: 12, totalRun: inches(104.5) })).toMatchObject({ unitRise: 7, treads: 11, run: 9.5 });
  });

  test("105 5/8 in in 14 or 15 risers: King, Inside Finishing (1912)", () => {
    for (const [risers, printed] of [[14, 7.54], [15, 7.04]] as const) {
      expect(laidOut({ totalRise: inches(105.625), risers, run: inches(10) })["unitRise"]).toBeCloseTo(printed, 2);
    }
  });

  test("a dog-legged stair by two calls, 20 risers to 130 in over a 42 in landing: Notes on Building Construction 2", () => {
    // Each flight of 10 risers ends on the landing or the floor, so 9 treads of 10 in run 90 in; 90 + 42 is the plan length printed, 132
    // in.
    const flights = [65, 65].map((rise) => laidOut({ totalRise: inches(rise), risers: 10, run: inches(10) }));
    for (const flight of flights) expect(flight).toMatchObject({ unitRise: 6.5, treads: 9, totalRun: 90 });
    expect(Number(flights[0]?.["totalRun"]) + 42).toBe(132);
    expect(flights.reduce((sum, { risers }) => sum + Number(risers), 0)).toBe(20);
  });

  test("130 in by 19: Notes on Building Construction 2, 6 16/19, kept exact", () => {
    expect(laidOut({ totalRise: inches(130), risers: 19, run: inches(10) })["unitRise"]).toBeCloseTo(6 + 16 / 19, 12);
  });

  test("146 1/4 in of run over 13 treads: Glencoe, 11 1/4", () => {
    expect(laidOut({ totalRise: inches(98), risers: 14, totalRun: inches(146.25) })["run"]).toBe(11.25);
  });

  test("106 1/2 in none over 8: question-and-answer page", () => {
    const found = laidOut({ totalRise: inches(106.5), maxRise: inches(8), run: inches(9.75) });
    expect(found).toMatchObject({ risers: 14, treads: 13 });
    expect(found["unitRise"]).toBeCloseTo(7.6, 1);
  });

  test("12 treads have 13 rises: New Zealand numeracy resource", () => {
    const found = laidOut({ totalRise: lengthOf(2400, "mm"), risers: 13, availableRun: lengthOf(3000, "mm") }, "mm");
    expect(found).toMatchObject({ treads: 12, run: 250 });
    expect(Number(found["unitRise"]) / 10).toBeCloseTo(18.46, 2);
  });

  test("30 in by steps of 34 in: long-tread step manual", () => {
    expect(laidOut({ totalRise: inches(30), maxRise: inches(4), run: inches(34) })).toMatchObject({
      risers: 8,
      unitRise: 3.75,
      treads: 7,
      totalRun: 238,
    });
  });

  test("112 in in sevens with an 11 1/4 in tread: The Carpenters' Guide", () => {
    expect(laidOut({ totalRise: inches(112), maxRise: inches(7), run: inches(10) })).toMatchObject({
      risers: 16,
      unitRise: 7,
      boardDepth: 11.25,
    });
  });

  test("a top tread level with the floor: BC carpentry tutorial", () => {
    const found = laidOut({ totalRise: lengthOf(2100, "mm"), risers: 12, run: lengthOf(250, "mm"), topTread: "flush" }, "mm");
    expect(found).toMatchObject({ unitRise: 175, treads: 12, totalRun: 3000 });
    // The stringer printed is hypot(2100, 3000) = 3661.97; here twelve slope lengths.
    expect(Number(found["slopeLength"]) * 12).toBeCloseTo(3662, 0);
  });

  test("stairwell length: BC carpentry tutorial, without its 75 mm allowance", () => {
    const found = laidOut(
      {
        totalRise: lengthOf(2100, "mm"),
        risers: 12,
        run: lengthOf(250, "mm"),
        headroom: lengthOf(2000, "mm"),
        floorThickness: lengthOf(285, "mm"),
      },
      "mm",
    );
    expect(Number(found["openingNeededFromTheLandingNosing"]) + 75).toBeCloseTo(3339, 0);
  });

  test("headroom under an opening is the opening's inverse", () => {
    // By hand: rise 7.5, run 10, headroom 80 and floor 10 want (80 + 10) x 10 / 7.5 = 120; with a 1 1/4 nosing 121 1/4 from the face.
    const wanted = { totalRise: inches(105), risers: 14, run: inches(10), headroom: inches(80), floorThickness: inches(10) };
    expect(laidOut(wanted)).toMatchObject({ openingNeededFromTheLandingNosing: 120, openingNeededFromTheFace: 121.25 });
    expect(laidOut({ ...wanted, opening: inches(120) })["headroomFound"]).toBe(80);
    // Two facts that never disagree: a short opening gives less headroom than wanted, and no error.
    expect(laidOut({ ...wanted, opening: inches(100) })["headroomFound"]).toBe(65);
  });

  test("2R + T: US Army EN5156: rise 7 1/2 with tread 10 and rise 6 1/2 with tread 12 make 25", () => {
    expect(laidOut({ totalRise: inches(75), risers: 10, run: inches(10) })["2R+T"]).toBe(25);
    expect(laidOut({ totalRise: inches(65), risers: 10, run: inches(12) })["2R+T"]).toBe(25);
  });

  test("angles of Washington Administrative Code 296-24-76511 Table D-1; its row 8 over 9 1/2 is 40 deg 06 min", () => {
    const ROWS = [
      [6.5, 11, 30, 35],
      [6.75, 10.75, 32, 8],
      [7, 10.5, 33, 41],
      [7.25, 10.25, 35, 16],
      [7.5, 10, 36, 52],
      [7.75, 9.75, 38, 29],
      [8, 9.5, 40, 6],
      [8.25, 9.25, 41, 44],
      [8.5, 9, 43, 22],
      [8.75, 8.75, 45, 0],
      [9, 8.5, 46, 38],
      [9.25, 8.25, 48, 16],
      [9.5, 8, 49, 54],
    ] as const;
    for (const [rise, run, degrees, minutes] of ROWS)
      expect(Math.abs(pitch(rise, run) * 60 - (degrees * 60 + minutes))).toBeLessThanOrEqual(0.51);
  });
});

describe("the stringer", () => {
  // By hand on the 3-4-5 triangle (Vitruvius IX.0.8): rise 6, run 8, slope length 10, so a 11 1/4 board keeps 11 1/4 - 6 x 8 / 10 = 6.45.
  const base = { totalRise: inches(60), risers: 10, run: inches(8) };
  test("throat, drop and hang", () => {
    expect(laidOut(base)).toMatchObject({ slopeLength: 10, throat: 6.45, drop: 1, hang: 7 });
    // The Carpenters' Guide: the first rise is cut down by the tread. A 3/4 floor still to come takes 3/4 of that back.
    expect(laidOut({ ...base, treadThickness: inches(1.125), lowerBuildUp: inches(0.75), upperBuildUp: inches(0.5) })).toMatchObject({
      drop: 0.375,
      hang: 6.625,
    });
    expect(laidOut({ ...base, topTread: "flush", upperBuildUp: inches(0.5) })["hang"]).toBe(0.5);
  });
});

// 7 3/4 in are 196.85 mm; 2,750 over that is 13.97, so 14.
test("a count of risers says from which greatest rise, in the unit of the stair", () => {
  const said = (unit: Unit): unknown => {
    const lines = stairLayout({ totalRise: lengthOf(2750, "mm"), run: lengthOf(250, "mm") }, unit);
    return isProblem(lines) ? lines : lines.filter(({ key }) => key === "risers").map(({ value, assumed }) => [value, assumed]);
  };
  expect(said("in")).toEqual([[14, "assumed: from a max rise of 7 3/4 in: the greatest rise of the IRC, R311.7.5.1"]]);
  expect(said("mm")).toEqual([[14, "assumed: from a max rise of 196.85 mm: the greatest rise of the IRC, R311.7.5.1"]]);
});

describe("more facts than are needed", () => {
  const base = { totalRise: inches(107.5), risers: 14, run: inches(10) };
  test("agree within 1/64", () => {
    expect(laidOut({ ...base, totalRun: inches(130.15) })["run"]).toBe(10);
    expect(laidOut({ ...base, totalRun: inches(130.25) })).toMatchObject({
      problem: "labels-disagree",
      label: "run",
      value: 10,
      other: "total run over the treads",
    });
    expect(laidOut({ ...base, treadDepth: inches(10.01) })["run"]).toBe(10);
    expect(laidOut({ ...base, treadDepth: inches(10.5) })).toMatchObject({
      problem: "labels-disagree",
      label: "run",
      other: "tread depth",
    });
    expect(laidOut({ ...base, unitRise: inches(7.6875) })["unitRise"]).toBeCloseTo(107.5 / 14, 12);
    expect(laidOut({ ...base, unitRise: inches(7.75) })["problem"]).toBe("labels-disagree");
    expect(laidOut({ ...base, treads: 14 })["problem"]).toBe("treads-disagree");
    expect(laidOut({ ...base, boardDepth: inches(11.5) })["problem"]).toBe("labels-disagree");
    expect(laidOut({ ...base, slopeLength: inches(13) })["problem"]).toBe("labels-disagree");
    expect(laidOut({ ...base, pitch: 40 })["problem"]).toBe("labels-disagree");
  });

  test("a greatest rise that the count breaks, and a run that does not fit, are named", () => {
    expect(laidOut({ ...base, risers: 13, maxRise: inches(7.75) })).toMatchObject({
      problem: "rise-over-greatest",
      risers: 13,
      greatest: 7.75,
    });
    expect(laidOut({ ...base, availableRun: inches(126) })).toMatchObject({ problem: "available-run-short", available: 126, needed: 130 });
    expect(laidOut({ ...base, availableRun: inches(140) })["totalRun"]).toBe(130);
  });

  // By hand: 13 treads under a floor that is the last are 14 risers, 13 under a last tread level with it are 13; 13 x 10 = 130, 14 x 7 1/2
  // = 105.
  test("a count of treads tells the risers", () => {
    expect(laidOut({ totalRise: inches(98), treads: 13, run: inches(10) })).toMatchObject({ risers: 14, unitRise: 7, totalRun: 130 });
    expect(laidOut({ totalRise: inches(91), treads: 13, topTread: "flush", run: inches(10) })).toMatchObject({ risers: 13, unitRise: 7 });
    expect(laidOut({ unitRise: inches(7.5), treads: 13, totalRun: inches(130) })).toMatchObject({ risers: 14, totalRise: 105, run: 10 });
    expect(laidOut({ totalRise: inches(98), treads: 11, maxRise: inches(7.75), run: inches(10) })).toMatchObject({
      problem: "rise-over-greatest",
      risers: 12,
    });
  });

  test("a size found on site stays where the layout cannot work it out", () => {
    expect(laidOut({ ...base, headroomFound: inches(79) })).toMatchObject({ headroomFound: 79 });
    expect(laidOut({ ...base, openingNeededFromTheFace: inches(120) })).toMatchObject({ openingNeededFromTheFace: 120 });
  });

  // By hand on the 3-4-5 triangle: 11 1/4 - 6 x 8 / 10 = 6.45; 2 x 6 + 8 = 20; atan(6/8) = 36.87 degrees.
  test("every function is refused a stair that contradicts itself, not only the layout", () => {
    const stair = { totalRise: inches(60), risers: 10, run: inches(8) };
    const problemOf = (facts: StairFacts): string => {
      const found = resolvedStair({ ...stair, ...facts });
      return isProblem(found) ? found.problem : "";
    };
    expect([problemOf({ throat: inches(6.45) }), problemOf({ "2R+T": inches(20) }), problemOf({ pitch: 36.87 })]).toEqual(["", "", ""]);
    expect([problemOf({ throat: inches(6) }), problemOf({ "2R+T": inches(21) }), problemOf({ pitch: 38 })]).toEqual(
      Array(3).fill("labels-disagree"),
    );
  });

  test("what is missing is named", () => {
    expect(laidOut({ totalRise: inches(100) })["problem"]).toBe("no-run");
    expect(laidOut({ run: inches(10) })["problem"]).toBe("no-total-rise");
  });

  test("a stair of one rise has no tread", () => {
    expect(laidOut({ totalRise: inches(6), run: inches(10) })).toMatchObject({ risers: 1, treads: 0, totalRun: 0 });
    expect(laidOut({ totalRise: inches(6), totalRun: inches(10) })["problem"]).toBe("run-without-treads");
  });
});

describe("laws of the layout", () => {
  const stairs = fc.record({
    rise: fc.integer({ min: 320, max: 3200 }),
    run: fc.integer({ min: 128, max: 256 }),
    most: fc.integer({ min: 80, max: 140 }),
  });

  test("rises times their number are the total rise; runs times treads the total run", () => {
    fc.assert(
      fc.property(stairs, ({ rise, run, most }) => {
        const found = laidOut({ totalRise: inches(rise / 16), maxRise: inches(most / 16), run: inches(run / 16) });
        expect(Number(found["unitRise"]) * Number(found["risers"])).toBeCloseTo(rise / 16, 9);
        expect(Number(found["run"]) * Number(found["treads"])).toBeCloseTo(Number(found["totalRun"]), 9);
      }),
    );
  });

  test("the same stair in millimetres is the same stair", () => {
    fc.assert(
      fc.property(stairs, ({ rise, run, most }) => {
        const facts = { totalRise: inches(rise / 16), maxRise: inches(most / 16), run: inches(run / 16) };
        const [imperial, metric] = [laidOut(facts), laidOut(facts, "mm")];
        for (const key of ["unitRise", "run", "boardDepth", "throat", "slopeLength", "hang"]) {
          expect(Number(metric[key])).toBeCloseTo(Number(imperial[key]) * 25.4, 9);
        }
        expect(metric["pitch"]).toBe(imperial["pitch"]);
      }),
    );
  });
});

describe("story pole", () => {
  const marks = (rise: number | string, risers: number, divisions?: number, below: number | string = 0, unit: Unit = "in"): number[] => {
    const pole = storyPole(lengthOf(rise, unit), risers, divisions, lengthOf(below, unit), unit);
    if (isProblem(pole)) throw new Error(pole.problem);
    return pole.map(({ mark }) => measure(mark, unit));
  };

  test("109 1/2 in by 15: Glencoe, 7 3/10 is no ruler fraction, so marks alternate and end on the total", () => {
    // By hand: 7.3, 14.6, 21.9, 29.2, 36.5 to the nearest 1/16: 7 5/16, 14 5/8, 21 7/8, 29 3/16, 36 1/2.
    expect(marks("109.5", 15).slice(0, 5)).toEqual([7.3125, 14.625, 21.875, 29.1875, 36.5]);
    expect(marks("109.5", 15)[14]).toBe(109.5);
  });

  test("96 in by 14: JLC, fourteen times the printed 6 7/8 would be 1/4 over; the pole is not", () => {
    expect(marks(96, 14, 8)[0]).toBe(6.875);
    expect(marks(96, 14, 8)[13]).toBe(96);
  });

  test("whole millimetres by themselves, sub-treads lower by the tread", () => {
    // By hand: 2,700 / 14 = 192.857; 192.857 - 32 = 160.857, marked 161.
    expect(marks(2700, 14, undefined, 0, "mm")[0]).toBe(193);
    expect(marks(2700, 14, undefined, 32, "mm")[0]).toBe(161);
  });

  test("no mark is off by more than half a division, neighbours differ by one at most", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 12800 }),
        fc.integer({ min: 1, max: 30 }),
        fc.constantFrom(2, 4, 8, 16, 32),
        (parts, risers, divisions) => {
          const found = marks(parts / 64, risers, divisions);
          for (const [index, mark] of found.entries()) {
            expect(Math.abs(mark - ((parts / 64) * (index + 1)) / risers)).toBeLessThanOrEqual(0.5 / divisions + 1e-9);
          }
          const rises = found.map((mark, index) => mark - (found[index - 1] ?? 0));
          expect(Math.max(...rises) - Math.min(...rises)).toBeLessThanOrEqual(1 / divisions + 1e-9);
        },
      ),
    );
  });
});
