import { celsius, moistureContent } from "../../../src/solver/wood/moisture-content";
import { movement } from "../../../src/solver/wood/movement";
import { SPECIES, speciesNamed } from "../../../src/solver/wood/species";
import { treadLoad } from "../../../src/solver/wood/tread-load";
import { isProblem } from "../../../src/solver/problem";

// USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, Table 4-2, emc-01: degrees Fahrenheit, then percent at 5 to 95 % humidity by fives.
const TABLE_4_2: readonly (readonly [number, readonly number[]])[] = [
  [30, [1.4, 2.6, 3.7, 4.6, 5.5, 6.3, 7.1, 7.9, 8.7, 9.5, 10.4, 11.3, 12.4, 13.5, 14.9, 16.5, 18.5, 21.0, 24.3]],
  [40, [1.4, 2.6, 3.7, 4.6, 5.5, 6.3, 7.1, 7.9, 8.7, 9.5, 10.4, 11.3, 12.3, 13.5, 14.9, 16.5, 18.5, 21.0, 24.3]],
  [50, [1.4, 2.6, 3.6, 4.6, 5.5, 6.3, 7.1, 7.9, 8.7, 9.5, 10.3, 11.2, 12.3, 13.4, 14.8, 16.4, 18.4, 20.9, 24.3]],
  [60, [1.3, 2.5, 3.6, 4.6, 5.4, 6.2, 7.0, 7.8, 8.6, 9.4, 10.2, 11.1, 12.1, 13.3, 14.6, 16.2, 18.2, 20.7, 24.1]],
  [70, [1.3, 2.5, 3.5, 4.5, 5.4, 6.2, 6.9, 7.7, 8.5, 9.2, 10.1, 11.0, 12.0, 13.1, 14.4, 16.0, 17.9, 20.5, 23.9]],
  [80, [1.3, 2.4, 3.5, 4.4, 5.3, 6.1, 6.8, 7.6, 8.3, 9.1, 9.9, 10.8, 11.7, 12.9, 14.2, 15.7, 17.7, 20.2, 23.6]],
  [90, [1.2, 2.3, 3.4, 4.3, 5.1, 5.9, 6.7, 7.4, 8.1, 8.9, 9.7, 10.5, 11.5, 12.6, 13.9, 15.4, 17.3, 19.8, 23.3]],
  [100, [1.2, 2.3, 3.3, 4.2, 5.0, 5.8, 6.5, 7.2, 7.9, 8.7, 9.5, 10.3, 11.2, 12.3, 13.6, 15.1, 17.0, 19.5, 22.9]],
  [110, [1.1, 2.2, 3.2, 4.0, 4.9, 5.6, 6.3, 7.0, 7.7, 8.4, 9.2, 10.0, 11.0, 12.0, 13.2, 14.7, 16.6, 19.1, 22.4]],
  [120, [1.1, 2.1, 3.0, 3.9, 4.7, 5.4, 6.1, 6.8, 7.5, 8.2, 8.9, 9.7, 10.6, 11.7, 12.9, 14.4, 16.2, 18.6, 22.0]],
  [130, [1.0, 2.0, 2.9, 3.7, 4.5, 5.2, 5.9, 6.6, 7.2, 7.9, 8.7, 9.4, 10.3, 11.3, 12.5, 14.0, 15.8, 18.2, 21.5]],
  [140, [0.9, 1.9, 2.8, 3.6, 4.3, 5.0, 5.7, 6.3, 7.0, 7.7, 8.4, 9.1, 10.0, 11.0, 12.1, 13.6, 15.3, 17.7, 21.0]],
  [150, [0.9, 1.8, 2.6, 3.4, 4.1, 4.8, 5.5, 6.1, 6.7, 7.4, 8.1, 8.8, 9.7, 10.6, 11.8, 13.1, 14.9, 17.2, 20.4]],
  [160, [0.8, 1.6, 2.4, 3.2, 3.9, 4.6, 5.2, 5.8, 6.4, 7.1, 7.8, 8.5, 9.3, 10.3, 11.4, 12.7, 14.4, 16.7, 19.9]],
  [170, [0.7, 1.5, 2.3, 3.0, 3.7, 4.3, 4.9, 5.6, 6.2, 6.8, 7.4, 8.2, 9.0, 9.9, 11.0, 12.3, 14.0, 16.2, 19.3]],
  [180, [0.7, 1.4, 2.1, 2.8, 3.5, 4.1, 4.7, 5.3, 5.9, 6.5, 7.1, 7.8, 8.6, 9.5, 10.5, 11.8, 13.5, 15.7, 18.7]],
  [190, [0.6, 1.3, 1.9, 2.6, 3.2, 3.8, 4.4, 5.0, 5.5, 6.1, 6.8, 7.5, 8.2, 9.1, 10.1, 11.4, 13.0, 15.1, 18.1]],
  [200, [0.5, 1.1, 1.7, 2.4, 3.0, 3.5, 4.1, 4.6, 5.2, 5.8, 6.4, 7.1, 7.8, 8.7, 9.7, 10.9, 12.5, 14.6, 17.5]],
];

test("equilibrium moisture content agrees with all 342 values of Table 4-2 to a tenth of a percent", () => {
  expect(TABLE_4_2.flatMap(([, row]) => row)).toHaveLength(342);
  for (const [temperature, row] of TABLE_4_2) {
    for (const [index, printed] of row.entries()) {
      expect(Math.abs(moistureContent(celsius(temperature), (index + 1) * 0.05) - printed)).toBeLessThanOrEqual(0.1);
    }
  }
});

test("70 F over the whole range: flooring technical manual reprinting the table, x-emc-01, with 26.6 at 98 %", () => {
  expect(moistureContent(celsius(70), 0.98)).toBeCloseTo(26.6, 0);
  expect(moistureContent(celsius(70), 0.6)).toBeCloseTo(11, 1);
});

const moved = (width: number, species: string, from: number, to: number, cut: "flat" | "quarter" = "flat"): number => {
  const change = movement(width, species, from, to, cut);
  if (typeof change !== "number") throw new Error(change.problem);
  return change;
};

describe("movement", () => {
  test("5 in of red oak over 4.8 %: Hardwood Floors magazine, x-mv-01, 0.08856", () => {
    expect(moved(5, "red oak", 6.2, 11)).toBeCloseTo(0.08856, 9);
    // The 4.8 % is 11.0 less 6.2 at 70 F, 60 and 30 %.
    expect(moistureContent(celsius(70), 0.6) - moistureContent(celsius(70), 0.3)).toBeCloseTo(4.8, 1);
  });

  test("8 in of red alder over 6 %: woodworking magazine, x-mv-05, 0.1248 by its rounded 0.0026; Table 13-5 has 0.00256", () => {
    expect(moved(8, "red alder", 6, 12)).toBeCloseTo(8 * 0.00256 * 6, 9);
    expect(moved(8, "red alder", 6, 12)).toBeCloseTo(0.1248, 2);
  });

  test("Table 13-5, radial and tangential, values seen in the table", () => {
    const SEEN: readonly (readonly [string, number, number])[] = [
      ["white oak", 0.0018, 0.00365], ["red oak", 0.00158, 0.00369], ["hard maple", 0.00165, 0.00353], ["red maple", 0.00137, 0.00289], ["walnut", 0.0019, 0.00274],
      ["cherry", 0.00126, 0.00248], ["ash", 0.00169, 0.00274], ["yellow birch", 0.00256, 0.00338], ["beech", 0.0019, 0.00431], ["chestnut", 0.00116, 0.00234], ["aspen", 0.00119, 0.00234],
    ];
    for (const [species, radial, tangential] of SEEN) {
      expect(moved(1, species, 8, 9, "quarter")).toBeCloseTo(radial, 12);
      expect(moved(1, species, 8, 9)).toBeCloseTo(tangential, 12);
    }
  });

  test("swelling there and shrinking back cancel, and nothing is told outside 6 to 14 %", () => {
    expect(moved(11.25, "white oak", 7, 12) + moved(11.25, "white oak", 12, 7)).toBe(0);
    expect(movement(10, "white oak", 5.9, 8, "flat")).toMatchObject({ problem: "moisture-outside", details: { name: "fromMC" } });
    expect(movement(10, "white oak", 8, 14.1, "flat")).toMatchObject({ problem: "moisture-outside", details: { name: "toMC" } });
  });
});

describe("woods by name", () => {
  test.each([["Oak, White", "white oak"], ["walnut", "black walnut"], ["sugar maple", "hard maple"], ["MAPLE (hard)", "hard maple"], ["poplar", "yellow poplar"]])("%s is %s", (name, species) => {
    expect(speciesNamed(name)).toMatchObject({ name: species });
  });

  test("a name that fits several, or none, says which there are", () => {
    expect(speciesNamed("oak")).toMatchObject({ problem: "species-ambiguous" });
    expect(speciesNamed("teak")).toMatchObject({ problem: "species-unknown" });
    expect(new Set(SPECIES.map(({ name }) => name)).size).toBe(SPECIES.length);
  });
});

/** Deflection at mid-span by integrating the moment twice along the beam, in 4,000 steps: no formula of Table 9-1 is used. */
const integrated = (span: number, load: number, uniform: number, stiffness: number): number => {
  const STEPS = 4000;
  const dx = span / STEPS;
  const reaction = (load + uniform * span) / 2;
  const moment = (x: number): number => reaction * x - (uniform * x * x) / 2 - (x > span / 2 ? load * (x - span / 2) : 0);
  let [slope, sag] = [0, 0];
  const sags: number[] = [];
  for (let step = 0; step < STEPS; step += 1) {
    sag += slope * dx + (moment((step + 0.5) * dx) / stiffness / 2) * dx * dx;
    slope += (moment((step + 0.5) * dx) / stiffness) * dx;
    sags.push(sag);
  }
  // The far end comes back to the support: the line between the ends is taken off.
  const end = sags[STEPS - 1] ?? 0;
  return Math.abs((sags[STEPS / 2 - 1] ?? 0) - end / 2);
};

describe("a tread under load", () => {
  const beam = { span: 36, depth: 11.25, thickness: 1.75, elasticity: 1.78e6 };

  test("deflection agrees with the moment integrated along the span, for a point, a uniform load and both", () => {
    for (const [load, uniform] of [[300, 0], [0, 10], [300, 10]] as const) {
      const stiffness = (beam.elasticity * beam.depth * beam.thickness ** 3) / 12;
      const { deflection } = treadLoad({ ...beam, load, uniform });
      expect(integrated(beam.span, load, uniform, stiffness) / deflection).toBeCloseTo(1, 5);
    }
  });

  test("Wood Handbook, FPL-GTR-190, Table 9-1, beam-01: 1/48 of a point load, 5/384 of a spread one", () => {
    // Simple span: k W L cubed / (E I), W the whole load; I = depth x thickness cubed / 12.
    const bend = (beam.elasticity * beam.depth * beam.thickness ** 3) / 12 / beam.span ** 3;
    expect(treadLoad({ ...beam, load: 300, uniform: 0 }).deflection * bend).toBeCloseTo(300 / 48, 9);
    expect(treadLoad({ ...beam, load: 0, uniform: 10 }).deflection * bend).toBeCloseTo((5 * 360) / 384, 9);
  });

  test("Hatfield, American House-Carpenter, arts. 124 and 125, x-be-05 and 06: broken at 18 times the load of an inch square over a foot", () => {
    // Four times the safe load breaks it. Art. 125 says 10 ft and reckons with 15.
    expect(treadLoad({ ...beam, span: 120, depth: 3, thickness: 8, load: 4 * 2400, uniform: 0 }).bendingStress).toBeCloseTo(18 * 500, 6);
    expect(treadLoad({ ...beam, span: 180, depth: 5, thickness: 9.909, load: 4 * 4500, uniform: 0 }).bendingStress / (18 * 550)).toBeCloseTo(1, 3);
  });

  test("Tredgold, Elementary Principles of Carpentry, Rules V and VI, x-be-07 and 08: a fortieth of an inch a foot", () => {
    // His constant a is 17,280 / E: W l cubed / (4 E b d cubed) = L / 40 with l = 12 L.
    const bend = (a: number, feet: number, load: number, breadth: number, depth: number): number =>
      treadLoad({ span: feet * 12, depth: breadth, thickness: depth, load, uniform: 0, elasticity: 17280 / a }).deflection;
    expect(bend(0.00957, 24, 900, 6, 9.38)).toBeCloseTo(24 / 40, 2);
    expect(bend(0.0164, 16, 4000, 9.72, 12)).toBeCloseTo(16 / 40, 3);
  });

  test("Gere, Mechanics of Materials, solution 5.8, x-be-10, and Record, x-be-13: shear is 3 V over twice the section", () => {
    // V 6,407 lb on 64.07 sq in is 150 psi; a load at mid-span is 2 V. Record prints 0.75 P / (b h) and 1.5 P l / (b h squared).
    expect(treadLoad({ ...beam, depth: 6.407, thickness: 10, load: 2 * 6407, uniform: 0 }).shearStress).toBeCloseTo(150, 6);
    const found = treadLoad({ ...beam, load: 300, uniform: 0 });
    expect(found.shearStress).toBeCloseTo((0.75 * 300) / (11.25 * 1.75), 9);
    expect(found.bendingStress).toBeCloseTo((1.5 * 300 * 36) / (11.25 * 1.75 ** 2), 9);
  });

  test("textbook companion 3862, example 10.1, x-be-14: 120 by 180 mm over 3 m at 10 MPa carries 5.76 kN a metre", () => {
    expect(treadLoad({ span: 3000, depth: 120, thickness: 180, load: 0, uniform: 5.76, elasticity: 12000 }).bendingStress).toBeCloseTo(10, 9);
  });

  test("Berg, Safe Building, x-be-01 and 02: 3 by 10 over 9 ft at 750 psi carries 2,778 lb spread and 1,389 at mid-span", () => {
    const joist = { span: 108, depth: 3, thickness: 10, elasticity: 1e6 };
    expect(treadLoad({ ...joist, load: 0, uniform: 2777.78 / 108 }).bendingStress).toBeCloseTo(750, 1);
    expect(treadLoad({ ...joist, load: 1388.89, uniform: 0 }).bendingStress).toBeCloseTo(750, 1);
  });

  test("Berg, Safe Building, x-be-03: 1,000 lb over 192 in, E 800,000, I 333; its own numbers give 0.5535, not the 0.548 printed", () => {
    // Of width b and height 10, I = b 10³ / 12 = 333 for b = 3.996.
    expect(treadLoad({ span: 192, depth: 3.996, thickness: 10, load: 1000, uniform: 0, elasticity: 8e5 }).deflection).toBeCloseTo(0.5535, 3);
  });

  test("mechanics reviewer, problem 511, beam-06: 2 by 4 under 80 lb a foot reaches 3,000 psi at 11.547 ft", () => {
    expect(treadLoad({ span: 11.547 * 12, depth: 2, thickness: 4, load: 0, uniform: 80 / 12, elasticity: 1e6 }).bendingStress).toBeCloseTo(3000, 0);
  });

  test("Record, Mechanical Properties of Wood (1914), beam-03: three times the thickness bends a 27th, three times the span 27 times", () => {
    const bend = (given: Partial<typeof beam>): number => treadLoad({ ...beam, ...given, load: 300, uniform: 0 }).deflection;
    expect(bend({ thickness: 5.25 }) * 27).toBeCloseTo(bend({}), 12);
    expect(bend({ span: 108 }) / 27).toBeCloseTo(bend({}), 12);
  });
});

test("a problem is data", () => {
  expect(isProblem(speciesNamed("teak"))).toBe(true);
});
