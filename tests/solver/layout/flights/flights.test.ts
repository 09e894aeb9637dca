import fc from "fast-check";
import { call } from "../../../../src/functions/call";
import { isFailed } from "../../../../src/functions/cells";
import { FLIGHTS } from "../../../../src/functions/layout/flights";
import { coveredSpots, type FlightBuilt, nosings, onTheLine, walked } from "./walked-stair";

type Cell = string | number;
type Table = readonly (readonly Cell[])[];

const HEADINGS = [
  "flight", "risers", "run", "width", "turn", "landing depth", "well", "set back", "newel past", "newel short", "landing build up",
];

const figuresOf = (stair: Table, flights: Table) => {
  const answer = call(FLIGHTS, [stair, flights]);
  if (isFailed(answer)) throw new Error(answer.says);
  if (!Array.isArray(answer)) throw new Error(String(answer));
  const row = (flight: Cell, label: string) => answer.find(([of, name]) => of === flight && name === label);
  return {
    rows: answer,
    value: (flight: Cell, label: string): unknown => row(flight, label)?.[2],
    size: (flight: Cell, label: string): number => Number(row(flight, label)?.[2] ?? Number.NaN),
    note: (flight: Cell, label: string): unknown => row(flight, label)?.[4],
    has: (flight: Cell, label: string): boolean => row(flight, label) !== undefined,
  };
};

const L: Table = [["flight", "risers", "turn"], [1, 7, "quarter left"], [2, 8, ""]];
const L_STAIR: Table = [["total rise", 108.5], ["run", 10], ["width", 36], ["headroom", 80], ["floor thickness", 11]];

describe("worked by hand", () => {
  test("an L of 7 and 8 risers under 108 1/2 in", () => {
    const { size, value } = figuresOf(L_STAIR, L);
    // 108.5 / 15 = 7.2333; 7 of them; 6 x 10 + 36 and 36 + 7 x 10.
    expect(size("stair", "unit rise")).toBeCloseTo(7.2333, 4);
    expect(size(1, "landing height")).toBeCloseTo(50.6333, 4);
    expect([size("stair", "length in plan"), size("stair", "width in plan")]).toEqual([96, 106]);
    expect([size(1, "length of this leg"), size(2, "length of this leg")]).toEqual([96, 106]);
    // It turns left, so all but the 36 of the landing and flight 1 lies to the left: 7 x 10.
    expect(size("stair", "plan left of the first flight")).toBe(70);
    // 80 + 11 = 91 is more than 8 x 7.2333 = 57.8667; (91 - 57.8667) x 10 / 7.2333 = 45.81.
    expect(value(2, "opening over this flight")).toBe("all");
    expect(size(1, "opening over this flight")).toBeCloseTo(45.81, 2);
  });

  test.each([[0, 7.2333], [2, 4.34], [5, 0]])("a U of 8 and 7 risers with a well of 4, newel %d in past", (past, apart) => {
    const { size, note } = figuresOf(
      [["total rise", 108.5], ["run", 10], ["width", 36], ["handrail height", 36]],
      [["flight", "risers", "turn", "well", "newel past"], [1, 8, "half left", 4, past], [2, 7, "", "", ""]],
    );
    // 7 x 10 + 36; 36 + 4 + 36; 8 x 7.2333; up seven runs and back six.
    expect([size("stair", "length in plan"), size("stair", "width in plan")]).toEqual([106, 76]);
    expect(size(1, "landing height")).toBeCloseTo(57.8667, 4);
    expect(size("stair", "top riser face from the first")).toBe(10);
    expect(note("stair", "top riser face from the first")).toMatch(/^past the first riser face/);
    // One rise less the two offsets' share of a run: 7.2333 x (1 - 2 x past / 10).
    expect(size(1, "rails apart at the newel")).toBeCloseTo(apart, 4);
    expect(note(1, "rails apart at the newel")).toBe(past === 5 ? "the rails meet level" : "the rail from above is higher");
  });

  test("straight on over a landing one newel stands as far from both faces as the landing is deep", () => {
    const { size, note } = figuresOf(
      [["total rise", 98], ["run", 10], ["width", 36], ["nosing", 1], ["handrail height", 34]],
      [["risers", "turn", "landing depth", "newel past"], [6, "none", 36, 2], [8, "", "", ""]],
    );
    // Rise 98 / 14 = 7. 2 + 1 behind the landing's nosing: 34 + 3 x 0.7. 36 - 2 = 34 short of the next face: 34 + 7 + (1 - 34) x 0.7.
    expect(size(1, "rail from below at the newel")).toBeCloseTo(36.1, 9);
    expect(size(1, "rail from above at the newel")).toBeCloseTo(17.9, 9);
    expect(note(1, "rails apart at the newel")).toBe("the rail from below is higher");
  });

  test("one flight alone is a straight stair", () => {
    const { size, has } = figuresOf(L_STAIR, [["risers"], [15]]);
    // 14 x 10; 91 x 10 / 7.2333.
    expect([size("stair", "length in plan"), size("stair", "width in plan")]).toEqual([140, 36]);
    expect(size(1, "opening over this flight")).toBeCloseTo(125.81, 2);
    expect(has(1, "landing height")).toBe(false);
  });

  test("an opening over everything, where the floors are too near", () => {
    const { value, note } = figuresOf([["total rise", 70], ...L_STAIR.slice(1)], [["risers", "turn"], [5, "quarter left"], [5, ""]]);
    // 80 + 11 is more than 70.
    expect([value(1, "opening over this flight"), value(2, "opening over this flight")]).toEqual(["all", "all"]);
    expect(note(1, "opening over this flight")).toBe("headroom and floor thickness together are more than the total rise");
  });

  test("a quarter landing less deep than the flight it leads to is wide says so", () => {
    const depthNote = (depth: number) =>
      figuresOf(L_STAIR, [["risers", "turn", "landing depth"], [7, "quarter left", depth], [8, "", ""]]).note(1, "landing depth");
    expect([depthNote(35), depthNote(36)]).toEqual(["along this flight; less than flight 2 is wide", "along this flight"]);
  });

  test("what the newel block covers is the guard less the rail", () => {
    const rails = (guard: number) => figuresOf([...L_STAIR, ["handrail height", 36], ["landing guard height", guard]], L);
    // 42 - 36; 34 is 2 under it.
    expect([rails(42).size("stair", "guard over the rail"), rails(34).size("stair", "guard over the rail")]).toEqual([6, 2]);
    expect(rails(42).note("stair", "guard over the rail")).toMatch(/newel block has to cover/);
    expect(rails(34).note("stair", "guard over the rail")).toMatch(/guard ends this much under the rail/);
  });

  test("an opening that ends within the upper flight leaves the lower one and the landing alone", () => {
    // 80 + 11 = 91 under 13 risers of 7.2333 = 94.03: 91 x 10 / 7.2333 = 125.81.
    const { size, value } = figuresOf(L_STAIR, [["flight", "risers", "turn"], [1, 2, "quarter left"], [2, 13, ""]]);
    expect(size(2, "opening over this flight")).toBeCloseTo(125.81, 2);
    expect(value(1, "opening over this flight")).toBe("none");
  });

  test("headroom under the opening there is, and where one length does not tell it", () => {
    // 130 in out, 130 x 7.2333 / 10 = 94.03 down, less a floor of 11; of 8 risers only 80 in are this flight's.
    const under = (risers: Table) => figuresOf([...L_STAIR, ["opening", 130]], risers);
    const long = under([["flight", "risers", "turn"], [1, 2, "quarter left"], [2, 13, ""]]);
    expect(long.size(2, "headroom under the opening")).toBeCloseTo(83.0333, 4);
    expect(under(L).value(2, "headroom under the opening")).toBe("");
    expect(under(L).note(2, "headroom under the opening")).toBe("the opening reaches past flight 2");
  });
});

describe("published stairs", () => {
  test("Building Construction 3-2, Laying Out Dog-Legged Stair: 10 ft 10 in 20 risers of 6 1/2, 11 ft long", () => {
    const { size } = figuresOf(
      [["total rise", 130], ["run", 10], ["width", 36]],
      [["flight", "risers", "turn", "landing depth"], [1, 10, "half left", 42], [2, 10, "", ""]],
    );
    // Two flights of ten, treads of 10 in, landing 3 ft 6: 9 x 10 + 42 = 132 in.
    expect(size("stair", "unit rise")).toBe(6.5);
    expect(size("stair", "length in plan")).toBe(132);
  });

  test("Hodgson, Williams, Stair-Building, Fig. 33: 7 ft to the landing in 12 risers, runs of 9 1/2, landing 4 ft", () => {
    // 8 ft 8 1/2 by 11 is 9 1/2, 12 risers of 7 are 7 ft. The flight above the landing is ours, of 4 risers: the figure has the lower one.
    const { size } = figuresOf(
      [["total rise", 112], ["run", 9.5], ["width", 36]],
      [["flight", "risers", "turn", "landing depth"], [1, 12, "quarter right", 48], [2, 4, "", ""]],
    );
    expect([size("stair", "unit rise"), size(1, "landing height")]).toEqual([7, 84]);
    expect([size(1, "total run"), size(1, "landing depth")]).toEqual([104.5, 48]);
    // 8 ft 8 1/2 and the landing's 4 ft.
    expect(size(1, "length of this leg")).toBe(152.5);
  });

  test("a dog-legged stair of civil engineering notes: 3.3 m in 2 x 11 risers of 150, treads of 300, landing 1 m: 4000 long", () => {
    const { size } = figuresOf(
      [["unit", "mm"], ["total rise", 3300], ["run", 300], ["width", 1000]],
      [["flight", "risers", "turn"], [1, 11, "half right"], [2, 11, ""]],
    );
    expect([size("stair", "unit rise"), size("stair", "length in plan")]).toEqual([150, 4000]);
  });

  test("an L of civil engineering notes: 18 risers, 16 treads of 10 in, landing 3 ft 3: both legs together 19.83 ft", () => {
    const { size } = figuresOf(
      [["total rise", 126], ["run", 10], ["width", 39]], [["flight", "risers", "turn"], [1, 9, "quarter left"], [2, 9, ""]],
    );
    expect((size(1, "length of this leg") + size(2, "length of this leg")) / 12).toBeCloseTo(19.83, 2);
  });

  test("Kidder, Construction Superintendence art. 188: rail 2 ft 6 on the riser line, half a rise more on the landing", () => {
    // 2 ft 8 to 2 ft 10 there. On the riser line: no nosing. Half a run past either face the rails meet level, as high as the stair rail
    // at the middle of a tread.
    const { size } = figuresOf(
      [["total rise", 112.5], ["run", 10], ["width", 36], ["nosing", 0], ["handrail height", 30]],
      [["flight", "risers", "turn", "newel past"], [1, 7, "quarter left", 5], [2, 8, "", ""]],
    );
    expect(size(1, "rail from below at the newel")).toBeCloseTo(33.75, 9);
    expect(size(1, "rail from above at the newel")).toBeCloseTo(33.75, 9);
    expect(size(1, "rail from below at the newel")).toBeGreaterThan(32);
    expect(size(1, "rail from below at the newel")).toBeLessThan(34);
  });
});

const TURNS = ["none", "quarter left", "quarter right", "half left", "half right"] as const;
const eighths = (from: number, to: number) => fc.integer({ min: from * 8, max: to * 8 }).map((count) => count / 8);

interface Stair {
  readonly flights: readonly FlightBuilt[];
  readonly rise: number;
  readonly nosing: number;
  readonly newelPast: number;
  readonly newelShort: number;
  readonly headroom: number;
  readonly floor: number;
}

const flightBuilt = fc.record({
  risers: fc.integer({ min: 2, max: 9 }),
  run: eighths(9, 12),
  width: eighths(30, 44),
  turn: fc.constantFrom(...TURNS),
  landingDepth: eighths(44, 60),
  well: eighths(0, 12),
  setBack: eighths(0, 8),
});

/** A set back and a well count only at the turns that have them. */
const asBuilt = (flight: FlightBuilt, isLast: boolean): FlightBuilt => ({
  ...flight,
  turn: isLast ? "none" : flight.turn,
  well: !isLast && flight.turn.startsWith("half") ? flight.well : 0,
  setBack: !isLast && flight.turn !== "none" ? flight.setBack : 0,
});

const stairs: fc.Arbitrary<Stair> = fc.record({
  flights: fc.array(flightBuilt, { minLength: 2, maxLength: 5 }).map((all) =>
    all.map((one, index) => asBuilt(one, index === all.length - 1))),
  rise: eighths(6, 8),
  nosing: eighths(0, 1.5),
  newelPast: eighths(0, 4),
  newelShort: eighths(-3, 4).filter((short) => short !== 0),
  headroom: eighths(76, 90),
  floor: eighths(8, 14),
});

const total = ({ flights, rise }: Stair): number => flights.reduce((sum, { risers }) => sum + risers, 0) * rise;

const tablesOf = (stair: Stair): readonly [Table, Table] => [
  [
    ["total rise", total(stair)], ["nosing", stair.nosing], ["handrail height", 34], ["headroom", stair.headroom],
    ["floor thickness", stair.floor],
  ],
  [
    HEADINGS,
    ...stair.flights.map((flight, index): readonly Cell[] => {
      const isLast = index === stair.flights.length - 1;
      return [
        index + 1, flight.risers, flight.run, flight.width, flight.turn, isLast ? "" : flight.landingDepth, flight.well, flight.setBack,
        isLast ? "" : stair.newelPast, isLast ? "" : stair.newelShort, "",
      ];
    }),
  ],
];

const CLOSE = 7;

describe("laid out in space step by step, each riser face two points in plan and a height", () => {
  test("plan sizes, landings, the top riser", () => {
    fc.assert(
      fc.property(stairs, (stair) => {
        const found = figuresOf(...tablesOf(stair));
        const built = walked(stair.flights, stair.rise);
        const spots = coveredSpots(built);
        const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
        expect(found.size("stair", "width in plan")).toBeCloseTo(Math.max(...xs) - Math.min(...xs), CLOSE);
        expect(found.size("stair", "length in plan")).toBeCloseTo(Math.max(...ys) - Math.min(...ys), CLOSE);
        const left = -Math.min(...xs);
        const right = Math.max(...xs) - (stair.flights[0]?.width ?? 0);
        const beside = (label: string): number => (found.has("stair", label) ? found.size("stair", label) : 0);
        expect(beside("plan left of the first flight")).toBeCloseTo(left, CLOSE);
        expect(beside("plan right of the first flight")).toBeCloseTo(right, CLOSE);
        for (const [index, flight] of built.entries()) {
          const top = flight.faces[flight.faces.length - 1];
          if (flight.landing.length > 0) expect(found.size(index + 1, "landing height")).toBeCloseTo(top?.top ?? Number.NaN, CLOSE);
          else expect(top?.top).toBeCloseTo(total(stair), CLOSE);
        }
        const last = built[built.length - 1];
        const comesBack = last?.ahead[1] === -1;
        expect(found.has("stair", "top riser face from the first")).toBe(comesBack);
        if (!comesBack) return;
        const y = last.faces[last.faces.length - 1]?.left[1] ?? Number.NaN;
        expect(found.size("stair", "top riser face from the first")).toBeCloseTo(Math.abs(y), CLOSE);
        if (Math.abs(y) > 0.01) expect(found.note("stair", "top riser face from the first")).toMatch(y > 0 ? /^past/ : /^short of/);
      }),
      { numRuns: 150 },
    );
  });

  test("each leg is as long as what lies in line with its flight, landing edge to landing edge", () => {
    fc.assert(
      fc.property(stairs, (stair) => {
        const found = figuresOf(...tablesOf(stair));
        const built = walked(stair.flights, stair.rise);
        for (const [index, { faces, ahead, landing }] of built.entries()) {
          const before = stair.flights[index - 1]?.turn === "none" ? [] : (built[index - 1]?.landing ?? []);
          const along = [...faces.map(({ left }) => left), ...landing, ...before].map(([x, y]) => x * ahead[0] + y * ahead[1]);
          // A landing on from a wide flight reaches as far as the flight does.
          expect(found.size(index + 1, "length of this leg")).toBeCloseTo(Math.max(...along) - Math.min(...along), CLOSE);
        }
      }),
      { numRuns: 150 },
    );
  });

  test("rails run on along the nosings to the newel", () => {
    fc.assert(
      fc.property(stairs, (stair) => {
        const found = figuresOf(...tablesOf(stair));
        const built = walked(stair.flights, stair.rise);
        for (const [index, flight] of built.entries()) {
          const above = built[index + 1];
          if (above === undefined) continue;
          const landing = flight.faces[flight.faces.length - 1]?.top ?? Number.NaN;
          const [lower, upper] = [nosings(flight, stair.nosing), nosings(above, stair.nosing)];
          const [one, two] = [lower[0]!, lower[lower.length - 1]!];
          const [three, four] = [upper[0]!, upper[upper.length - 1]!];
          // The landing's riser face stands a nosing behind its nosing; the first face of the next flight is where its own way begins.
          const fromBelow = onTheLine(one, two, two[0] + stair.nosing + stair.newelPast) + 34 - landing;
          const fromAbove = onTheLine(three, four, -stair.newelShort) + 34 - landing;
          expect(found.size(index + 1, "rail from below at the newel")).toBeCloseTo(fromBelow, CLOSE);
          expect(found.size(index + 1, "rail from above at the newel")).toBeCloseTo(fromAbove, CLOSE);
          expect(found.size(index + 1, "rails apart at the newel")).toBeCloseTo(Math.abs(fromAbove - fromBelow), CLOSE);
          if (Math.abs(fromAbove - fromBelow) < 0.001) continue;
          const higher = fromAbove > fromBelow ? "from above is higher" : "from below is higher";
          expect(found.note(index + 1, "rails apart at the newel")).toContain(higher);
        }
      }),
      { numRuns: 150 },
    );
  });

  test("where the opening ends, the nosing line is just the headroom under the floor; what it leaves free is under it by less", () => {
    fc.assert(
      fc.property(stairs, (stair) => {
        const found = figuresOf(...tablesOf(stair));
        const built = walked(stair.flights, stair.rise);
        const underside = total(stair) - stair.floor;
        for (const [index, flight] of built.entries()) {
          const line = nosings(flight, stair.nosing);
          const [low, high] = [line[0]!, line[line.length - 1]!];
          const landingBelow = low[1] - stair.rise;
          const said = found.value(index + 1, "opening over this flight");
          if (said === "none") expect(underside - high[1]).toBeGreaterThanOrEqual(stair.headroom - 1e-9);
          else if (said === "all") expect(underside - landingBelow).toBeLessThanOrEqual(stair.headroom + 1e-9);
          else expect(underside - onTheLine(low, high, high[0] - Number(said))).toBeCloseTo(stair.headroom, CLOSE);
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe("one flight over another", () => {
  test("three flights of a U turned on: the third over the first, parallel to it", () => {
    // Rise 7, run 10.5, nosing 1, treads 1, boards 11 1/4: slope 12.6194, so the underside is 1 x 7 / 10.5 + 1 + 11.25 x 12.6194 / 10.5 =
    // 15.1875 under the nosing line. Flight 3 starts straight over flight 1, 16 rises of 7 up.
    const { size, note } = figuresOf(
      [["total rise", 168], ["run", 10.5], ["width", 36], ["nosing", 1], ["tread thickness", 1], ["stringer board", 11.25]],
      [["flight", "risers", "turn"], [1, 8, "half right"], [2, 8, "half right"], [3, 8, ""]],
    );
    expect(size(1, "headroom under another flight")).toBeCloseTo(16 * 7 - 15.1875, 3);
    expect(note(1, "headroom under another flight")).toMatch(/^under flight 3, plumb/);
  });

  test("two flights of an L or a U lie beside one another, not over", () => {
    for (const turn of ["quarter left", "half left"]) {
      const { rows } = figuresOf(L_STAIR, [["flight", "risers", "turn"], [1, 7, turn], [2, 8, ""]]);
      expect(rows.filter(([, label]) => label === "headroom under another flight")).toEqual([]);
    }
  });

  const BOARD = 11.25;
  const THICK = 1;

  /** Height of the underside of a flight's stringers over its foot: a board's width from the corners of its cuts, square to their line. */
  const underside = (rise: number, run: number, up: number): number => {
    const long = Math.hypot(rise, run);
    const down: readonly [number, number] = [(rise / long) * BOARD, (-run / long) * BOARD];
    return onTheLine([down[0], rise - THICK + down[1]], [run + down[0], 2 * rise - THICK + down[1]], up);
  };

  /** Plan of a flight as its least and greatest x and y. */
  const box = (flight: ReturnType<typeof walked>[number]) => {
    const spots = flight.faces.flatMap(({ left, right }) => [left, right]);
    const span = (axis: 0 | 1) => [Math.min(...spots.map((spot) => spot[axis])), Math.max(...spots.map((spot) => spot[axis]))] as const;
    return [span(0), span(1)] as const;
  };

  test("the least of all points that lie in both", () => {
    const going = fc.constantFrom(["half left"], ["half right"], ["quarter left"], ["quarter right"], ["half right", "quarter left"]);
    fc.assert(
      fc.property(stairs, going, fc.array(flightBuilt, { minLength: 3, maxLength: 6 }), (stair, turns, more) => {
        const flights = more.map((one, index) =>
          asBuilt({ ...one, turn: (turns[index % turns.length] ?? "none") as FlightBuilt["turn"] }, index === more.length - 1));
        const turning = { ...stair, flights };
        const [whole, table] = tablesOf(turning);
        const { rows } = figuresOf([...whole, ["stringer board", BOARD], ["tread thickness", THICK]], table);
        const built = walked(flights, stair.rise);
        for (const [low, lower] of built.entries()) {
          const said = rows.filter(([of, label]) => of === low + 1 && label === "headroom under another flight");
          const least = built.map(() => Infinity);
          for (const [high, upper] of built.entries()) {
            if (high <= low) continue;
            const [[ax, bx], [ay, by]] = box(lower);
            const [[cx, dx], [cy, dy]] = box(upper);
            const [fromX, toX, fromY, toY] = [Math.max(ax, cx), Math.min(bx, dx), Math.max(ay, cy), Math.min(by, dy)];
            if (toX - fromX < 1e-6 || toY - fromY < 1e-6) continue;
            const up = (flight: typeof lower, x: number, y: number): number => {
              const [sx, sy] = flight.faces[0]?.left ?? [0, 0];
              return (x - sx) * flight.ahead[0] + (y - sy) * flight.ahead[1];
            };
            const line = nosings(lower, stair.nosing);
            const foot = (upper.faces[0]?.top ?? 0) - stair.rise;
            const clear = [0, 0.25, 0.5, 0.75, 1].flatMap((across) => [0, 0.25, 0.5, 0.75, 1].map((on) => {
              const [x, y] = [fromX + (toX - fromX) * across, fromY + (toY - fromY) * on];
              return foot + underside(stair.rise, flights[high]?.run ?? 0, up(upper, x, y)) -
                onTheLine(line[0]!, line[line.length - 1]!, up(lower, x, y));
            }));
            least[high] = Math.min(...clear);
          }
          const lowest = Math.min(...least);
          expect(said.length).toBe(lowest === Infinity ? 0 : 1);
          if (lowest === Infinity) continue;
          expect(said[0]?.[2]).toBeCloseTo(lowest, CLOSE);
          const named = Number(/^under flight (\d+),/.exec(String(said[0]?.[4]))?.[1]);
          expect(least[named - 1]).toBeCloseTo(lowest, CLOSE);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe("laws", () => {
  const swapped = (text: Cell): Cell =>
    typeof text === "string" ? text.replace(/left|right/g, (side) => (side === "left" ? "right" : "left")) : text;

  test("a mirror exchanges left and right and nothing else", () => {
    fc.assert(
      fc.property(stairs, (stair) => {
        const [whole, flights] = tablesOf(stair);
        const { rows } = figuresOf(whole, flights);
        const mirrored = figuresOf(whole, flights.map((row, index) => (index === 0 ? row : row.map(swapped)))).rows;
        const sorted = (all: readonly (readonly unknown[])[]): string[] => all.map((row) => JSON.stringify(row)).sort();
        // Widths that differ on a straight landing stand flush left, so only stairs without one are mirrored to the last figure.
        fc.pre(stair.flights.slice(0, -1).every(({ turn }) => turn !== "none"));
        expect(sorted(mirrored)).toEqual(sorted(rows.map((row) => row.map((cell) => swapped(cell as Cell)))));
      }),
    );
  });

  test("millimetres are inches times 25.4", () => {
    fc.assert(
      fc.property(stairs, (stair) => {
        const [whole, flights] = tablesOf(stair);
        const metric = (cell: Cell): Cell => (typeof cell === "number" ? cell * 25.4 : cell);
        const inches = figuresOf(whole, flights).rows;
        const millimetres = figuresOf(
          [["unit", "mm"], ...whole.map(([label = "", value = ""]) => [label, metric(value)])],
          flights.map((row, index) => (index === 0 ? row : row.map((cell, column) => (column < 2 ? cell : metric(cell))))),
        ).rows;
        expect(millimetres.length).toBe(inches.length);
        for (const [index, [flight, label, value, unit]] of inches.entries()) {
          if (index === 0) continue;
          const [otherFlight, otherLabel, other, otherUnit] = millimetres[index] ?? [];
          expect([otherFlight, otherLabel, otherUnit]).toEqual([flight, label, unit === "in" ? "mm" : unit]);
          if (typeof value === "number") expect(other).toBeCloseTo(unit === "in" ? value * 25.4 : value, 6);
          else expect(other).toBe(value);
        }
      }),
      { numRuns: 50 },
    );
  });
});
