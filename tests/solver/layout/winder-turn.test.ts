import fc from "fast-check";
import { type WinderGiven, winderTurn } from "../../../src/solver/layout/winder-turn";
import { isProblem } from "../../../src/solver/problem";

const turned = (given: WinderGiven) => {
  const found = winderTurn(given);
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

describe("published winders", () => {
  test("three in a quarter turn at 18 in: Notes on Building Construction 2, 9 3/7 by 22/7 along the arc", () => {
    const found = turned({ winders: 3, turn: 90, innerRadius: 6, width: 30, walkline: 12, strings: "round" });
    expect((found.arcAtTheWalkline / Math.PI) * (22 / 7)).toBeCloseTo(66 / 7, 9);
    expect(found.arcAtTheWalkline).toBeCloseTo(9.4248, 4);
  });

  test("four at 18 in: Notes on Building Construction 2, `never more than 7` holds for the chord to the nearest quarter only", () => {
    const found = turned({ winders: 4, turn: 90, innerRadius: 6, width: 30, walkline: 12, strings: "round" });
    expect(found.arcAtTheWalkline).toBeCloseTo(7.07, 2);
    expect(found.depthAtTheWalkline).toBeCloseTo(7.02, 2);
  });

  test("fifteen steps in 270 degrees, 3.66 ft out: owner-builder worksheet, 18 degrees and 1.1498 ft of arc (pi taken 3.1415)", () => {
    const found = turned({ winders: 15, turn: 270, innerRadius: 43.92 - 12, width: 30, walkline: 12, strings: "round" });
    expect(found.arcAtTheWalkline / 12).toBeCloseTo(1.1498, 3);
  });
});

const RADIANS = Math.PI / 180;
const turns = fc.record({
  winders: fc.integer({ min: 1, max: 8 }),
  turn: fc.double({ min: 20, max: 170, noNaN: true }),
  innerRadius: fc.double({ min: 0, max: 20, noNaN: true }),
  width: fc.double({ min: 30, max: 48, noNaN: true }),
});

describe("by points on the plan", () => {
  test("depths are straight between nosings, arcs are longer", () => {
    fc.assert(
      fc.property(turns, ({ winders, turn, innerRadius, width }) => {
        const found = turned({ winders, turn, innerRadius, width, walkline: 12, strings: "round" });
        const at = (radius: number, line: number) =>
          [radius * Math.cos((turn * RADIANS * line) / winders), radius * Math.sin((turn * RADIANS * line) / winders)] as const;
        const chord = (radius: number): number => {
          const [[ax, ay], [bx, by]] = [at(radius, 0), at(radius, 1)];
          return Math.hypot(bx - ax, by - ay);
        };
        expect(found.depthAtTheWalkline).toBeCloseTo(chord(innerRadius + 12), 9);
        expect(found.depthAtTheNarrowEnd).toBeCloseTo(chord(innerRadius), 9);
        expect(found.arcAtTheWalkline).toBeGreaterThan(found.depthAtTheWalkline);
        expect(found.nosings).toHaveLength(2 * (winders + 1));
      }),
    );
  });

  test("nosings on straight walls lie where their ray from the centre meets the wall", () => {
    fc.assert(
      fc.property(turns, ({ winders, turn, innerRadius, width }) => {
        const found = turned({ winders, turn, innerRadius, width, walkline: 12, strings: "straight" });
        const away = innerRadius + width;
        // The first wall is x = away; its foot of the perpendicular is (away, 0). The second is its mirror in the bisector of the turn.
        for (const { nosing, string, along } of found.nosings) {
          const angle = (turn * RADIANS * (nosing - 1)) / winders;
          const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
          const normal = string === "first" ? [1, 0] : [Math.cos(turn * RADIANS), Math.sin(turn * RADIANS)];
          const reach = away / (dx * (normal[0] ?? 0) + dy * (normal[1] ?? 0));
          const foot = [away * (normal[0] ?? 0), away * (normal[1] ?? 0)];
          expect(along).toBeCloseTo(Math.hypot(reach * dx - (foot[0] ?? 0), reach * dy - (foot[1] ?? 0)), 6);
        }
      }),
    );
  });
});

test("a walkline outside the stair and straight walls that never meet are told", () => {
  expect(winderTurn({ winders: 3, turn: 90, innerRadius: 4, width: 10, walkline: 12, strings: "round" })).toMatchObject({
    problem: "walkline-outside",
  });
  expect(winderTurn({ winders: 6, turn: 180, innerRadius: 4, width: 36, walkline: 12, strings: "straight" })).toMatchObject({
    problem: "straight-strings-past-half-turn",
  });
});
