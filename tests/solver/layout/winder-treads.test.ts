import fc from "fast-check";
import { type WinderTread, type WinderTreadsGiven, winderTreads } from "../../../src/solver/layout/winder-treads";
import { winderTurn } from "../../../src/solver/layout/winder-turn";
import { isProblem } from "../../../src/solver/problem";

const QUARTER_OF_THREE: WinderTreadsGiven = {
  winders: 3, turn: 90, innerRadius: 6, width: 36, nosing: 1.25, strings: "straight", newel: 0,
};

const treads = (given: Partial<WinderTreadsGiven>): readonly WinderTread[] => {
  const found = winderTreads({ ...QUARTER_OF_THREE, ...given });
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

const placesOf = ({ corners }: WinderTread): Record<string, readonly [number, number]> =>
  Object.fromEntries(corners.map(({ corner, along, back }) => [corner, [Number(along.toFixed(4)), Number(back.toFixed(4))]]));

const sizeOf = ({ blank }: WinderTread): readonly number[] => [blank.length, blank.depth].map((size) => Number(size.toFixed(2)));

describe("three in a quarter turn, 36 wide round a well of 6, nosing 1 1/4", () => {
  /*
   * By hand, walls 42 from the centre. Winder 1: its back edge meets the first wall at 42 tan 30 + 1.25 / cos 30 = 24.2487 + 1.4434 =
   * 25.6921. The kite: its nose reaches 42 / cos 30 = 48.4974; the walls' corner is 42 √2 = 59.3970 out, 15 degrees on: 57.3731, 15.3731;
   * its back edge meets the second wall at 42 tan 30 - 1.4434 = 22.8053 from that wall's foot, which from its nose is 42 cos 60 + 22.8053
   * sin 60 = 40.7500 along, 42 sin 60 - 22.8053 cos 60 = 24.9705 back. Winder 3: its back edge is 1 1/4 past the second foot, 42 cos 30 -
   * 1.25 sin 30 = 35.7481 along, 42 sin 30 + 1.25 cos 30 = 22.0825 back. A narrow end turns 30 + asin(1.25 / 6) = 42.025: 6 cos = 4.4568
   * along.
   */
  test("corners against straight walls, from the centre", () => {
    const [first, kite, third] = treads({}).map(placesOf);
    expect(first).toMatchObject({ "nose, wide end": [42, 0], "back edge, wide end": [42, 25.6921], "nose, narrow end": [6, 0] });
    expect(kite).toMatchObject({ "nose, wide end": [48.4974, 0], "corner of the walls": [57.3731, 15.3731] });
    expect(kite?.["back edge, wide end"]?.[0]).toBeCloseTo(40.75, 3);
    expect(kite?.["back edge, wide end"]?.[1]).toBeCloseTo(24.9705, 3);
    expect(third).toMatchObject({ "nose, wide end": [48.4974, 0], "back edge, wide end": [35.7481, 22.0825] });
    for (const tread of [first, kite, third]) expect(tread?.["back edge, narrow end"]?.[0]).toBeCloseTo(4.457, 3);
  });

  test("blanks, and where each begins: 42 - 4.457 by 25.69, 57.3731 - 4.457 by 24.97, 48.4974 - 4.457 by 22.08", () => {
    expect(treads({}).map(sizeOf)).toEqual([[37.54, 25.69], [52.92, 24.97], [44.04, 22.08]]);
    for (const { blank } of treads({})) expect(blank.from).toBeCloseTo(4.457, 3);
  });

  test("between round strings all are alike: 42 - 4.457 by 42 sin(30 + asin(1.25 / 42)) = 42 sin 31.706 = 22.07", () => {
    expect(treads({ strings: "round" }).map(sizeOf)).toEqual([[37.54, 22.07], [37.54, 22.07], [37.54, 22.07]]);
  });
});

describe("the narrow end", () => {
  test("at a newel: q/2 tan 30 = 0.2887 q, the kite round the corner 2 (q/2 - 0.2887 q) = 0.4226 q", () => {
    const ends = (newel: number) => treads({ newel }).map(({ narrowEnd }) => narrowEnd);
    for (const [place, share] of [0.288675, 0.42265, 0.288675].entries()) expect(ends(10)[place]! / 10).toBeCloseTo(share, 5);
    expect(ends(4).map((end) => Number(end.toFixed(3)))).toEqual([1.155, 1.691, 1.155]);
    expect(treads({ newel: 4 }).map(({ roundsTheNewel }) => roundsTheNewel)).toEqual([false, true, false]);
  });

  test("6 in of it in a quarter of three wants a well of 6 / (2 sin 15) = 11.591", () => {
    for (const { narrowEnd } of treads({ innerRadius: 11.591 })) expect(narrowEnd).toBeCloseTo(6, 3);
  });

  test("is as deep as the turn of winders says without a newel", () => {
    const found = winderTurn({ ...QUARTER_OF_THREE, walkline: 12 });
    if (isProblem(found)) throw new Error(found.problem);
    expect(treads({})[0]?.narrowEnd).toBeCloseTo(found.depthAtTheNarrowEnd, 12);
  });
});

type Spot = readonly [x: number, y: number];

/**
 * The plan on paper, with none of the formulas: rays are turned by adding, places on them are found by halving until a point lies on a
 * string, and a piece is seen from its nose by drawing it from there.
 */
const onPaper = (given: WinderTreadsGiven) => {
  const { winders, innerRadius, width, nosing, strings, newel } = given;
  const reach = innerRadius + width;
  const turn = (given.turn / 180) * Math.PI;
  const ray = (line: number): Spot => [Math.cos((turn * line) / winders), Math.sin((turn * line) / winders)];
  const [ax, ay] = ray(winders);
  const isWithin = ([x, y]: Spot): boolean =>
    strings === "round" ? Math.hypot(x, y) < reach : x < reach && x * ax + y * ay < reach;
  const isWell = ([x, y]: Spot): boolean =>
    newel === 0 ? Math.hypot(x, y) < innerRadius : Math.max(Math.abs(x), Math.abs(y)) < newel / 2;
  /** Where a line parallel to a ray, moved back by so much, leaves a region. */
  const leaves = (line: number, back: number, isIn: (spot: Spot) => boolean): Spot => {
    const [x, y] = ray(line);
    const on = (far: number): Spot => [x * far - y * back, y * far + x * back];
    let [near, far] = [0, reach * 1000];
    for (let halving = 0; halving < 100; halving += 1) {
      const middle = (near + far) / 2;
      if (isIn(on(middle))) near = middle;
      else far = middle;
    }
    return on(near);
  };
  const seenFrom = (line: number, [x, y]: Spot): Spot => {
    const [ux, uy] = ray(line);
    return [x * ux + y * uy, y * ux - x * uy];
  };
  /** A corner of the walls, where walking along the first one the second is met. */
  const wallCorner: Spot = (() => {
    let [near, far] = [0, reach * 1000];
    for (let halving = 0; halving < 100; halving += 1) {
      const middle = (near + far) / 2;
      if (reach * ax + middle * ay < reach) near = middle;
      else far = middle;
    }
    return [reach, near];
  })();
  return { ray, isWithin, isWell, leaves, seenFrom, wallCorner, nosing };
};

const nosings = fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 1.5, noNaN: true }));
const turns = fc.record({
  winders: fc.integer({ min: 2, max: 8 }),
  turn: fc.double({ min: 30, max: 170, noNaN: true }),
  innerRadius: fc.double({ min: 3, max: 20, noNaN: true }),
  width: fc.double({ min: 26, max: 48, noNaN: true }),
  nosing: nosings,
  strings: fc.constantFrom("round" as const, "straight" as const),
  newel: fc.constant(0),
});
const roundNewels = fc.record({
  winders: fc.integer({ min: 4, max: 8 }),
  turn: fc.constantFrom(90, 180, 270),
  innerRadius: fc.double({ min: 0, max: 6, noNaN: true }),
  width: fc.double({ min: 26, max: 48, noNaN: true }),
  nosing: nosings,
  strings: fc.constantFrom("round" as const, "straight" as const),
  newel: fc.double({ min: 3.1, max: 8, noNaN: true }),
}).map((given) => (given.turn > 90 ? { ...given, strings: "round" as const } : given));
const every = fc.oneof(turns, roundNewels);

/** Twice the area of a polygon, by its corners; positive where they run round the way the turn does. */
const shoelace = (corners: readonly Spot[]): number =>
  corners.reduce((sum, [x, y], place) => {
    const [nextX, nextY] = corners[(place + 1) % corners.length] ?? [0, 0];
    return sum + x * nextY - y * nextX;
  }, 0);

const spots = ({ corners }: WinderTread): Spot[] => corners.map(({ along, back }) => [along, back]);

describe("against a plan on paper", () => {
  test("every corner lies where its line leaves the wide end or meets the narrow one", () => {
    fc.assert(
      fc.property(every, (given) => {
        const paper = onPaper(given);
        for (const [line, tread] of treads(given).entries()) {
          const expected: Readonly<Record<string, Spot>> = {
            "nose, narrow end": paper.leaves(line, 0, paper.isWell),
            "nose, wide end": paper.leaves(line, 0, paper.isWithin),
            "corner of the walls": paper.wallCorner,
            "back edge, wide end": paper.leaves(line + 1, given.nosing, paper.isWithin),
            "back edge, narrow end": paper.leaves(line + 1, given.nosing, paper.isWell),
          };
          for (const { corner, along, back } of tread.corners) {
            const wanted = expected[corner];
            if (wanted === undefined) continue;
            const [x, y] = paper.seenFrom(line, wanted);
            expect(along).toBeCloseTo(x, 6);
            expect(back).toBeCloseTo(y, 6);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test("a tread has the corner of the walls, and that of the newel, when it lies between its nose and the riser behind it", () => {
    fc.assert(
      fc.property(every, (given) => {
        const paper = onPaper(given);
        const isBetween = (line: number, spot: Spot): boolean =>
          paper.seenFrom(line, spot)[1] > 1e-6 && paper.seenFrom(line + 1, spot)[1] < given.nosing - 1e-6 &&
          paper.seenFrom(line, spot)[0] + paper.seenFrom(line + 1, spot)[0] > 0;
        const half = given.newel / 2;
        const posts: Spot[] = given.newel === 0 ? [] : [[half, half], [-half, half], [-half, -half], [half, -half]];
        for (const [line, tread] of treads(given).entries()) {
          const names = tread.corners.map(({ corner }) => corner);
          if (given.strings === "straight")
            expect(names.filter((name) => name === "corner of the walls")).toHaveLength(isBetween(line, paper.wallCorner) ? 1 : 0);
          expect(names.filter((name) => name === "corner of the newel")).toHaveLength(posts.filter((post) => isBetween(line, post)).length);
        }
      }),
      { numRuns: 300 },
    );
  });

  test("a blank holds the tread and touches it on all four sides", () => {
    fc.assert(
      fc.property(every, (given) => {
        const paper = onPaper(given);
        for (const [line, { blank, corners }] of treads(given).entries()) {
          // The wide end of a tread between round strings bulges between its corners: walk along it.
          const rim = Array.from({ length: 201 }, (_, part) => paper.leaves(line + part / 100, 0, paper.isWithin))
            .map((spot) => ({ spot, next: paper.seenFrom(line + 1, spot)[1] }))
            .filter(({ next }) => next <= given.nosing)
            .map(({ spot }) => paper.seenFrom(line, spot));
          const all = [...corners.map(({ along, back }): Spot => [along, back]), ...(given.strings === "round" ? rim : [])];
          const [alongs, backs] = [all.map(([along]) => along), all.map(([, back]) => back)];
          expect(blank.from).toBeCloseTo(Math.min(...alongs), 6);
          expect(blank.from + blank.length).toBeCloseTo(Math.max(...alongs), 6);
          expect(Math.min(...backs)).toBeCloseTo(0, 6);
          expect(blank.depth).toBeGreaterThanOrEqual(Math.max(...backs) - 1e-9);
          // Walked in steps, an arc is missed by less than half a step squared.
          expect(blank.depth).toBeCloseTo(Math.max(...backs), 1);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("treads without nosings tile the turn", () => {
  test("three in a quarter: 509.22 + 745.55 + 509.22 = 42², less the well's quarter of a circle", () => {
    // By hand: half of 42 x 42 tan 30 = 509.22, twice; the kite is what is left of 1764.
    const areas = treads({ nosing: 0 }).map((tread) => {
      const [narrow, ...others] = spots(tread);
      return (narrow === undefined ? 0 : shoelace([[0, 0], ...others.slice(0, -1)])) / 2;
    });
    expect(areas.map((area) => Number(area.toFixed(2)))).toEqual([509.22, 745.55, 509.22]);
    expect(areas[0]! + areas[1]! + areas[2]!).toBeCloseTo(42 ** 2, 9);
  });

  test("to the newel: the square less a quarter of the newel", () => {
    fc.assert(
      fc.property(roundNewels, (given) => {
        const tiles = treads({ ...given, turn: 90, strings: "straight", nosing: 0 });
        const area = tiles.reduce((sum, tread) => sum + shoelace(spots(tread)) / 2, 0);
        expect(area).toBeCloseTo((given.innerRadius + given.width) ** 2 - (given.newel / 2) ** 2, 6);
      }),
    );
  });

  test("a ring: every piece is cut out of it, and all together are the ring", () => {
    fc.assert(
      fc.property(turns, (given) => {
        const outer = given.innerRadius + given.width;
        const tiles = treads({ ...given, strings: "round", nosing: 0 });
        // A chord cuts off half of R² (turn - sin turn); the cut is added at the wide end and taken at the narrow one.
        const angle = ((given.turn / 180) * Math.PI) / given.winders;
        const sliver = (radius: number): number => (radius ** 2 * (angle - Math.sin(angle))) / 2;
        const area = tiles.reduce((sum, tread) => sum + shoelace(spots(tread)) / 2 + sliver(outer) - sliver(given.innerRadius), 0);
        const ring = (Math.PI * (outer ** 2 - given.innerRadius ** 2) * given.turn) / 360;
        expect(area).toBeCloseTo(ring, 6);
      }),
    );
  });

  /** In the unit of the call: nearer a line than this, a spot is on it. */
  const ON_A_LINE = 1e-9;

  test("any spot of the turn lies in one tread alone; with nosings in two only where one tread reaches under the next", () => {
    const isInside = ([x, y]: Spot, corners: readonly Spot[]): boolean =>
      corners.reduce((inside, [ax, ay], place) => {
        const [bx, by] = corners[(place + 1) % corners.length] ?? [0, 0];
        return ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay) ? !inside : inside;
      }, false);
    fc.assert(
      fc.property(
        roundNewels,
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (newels, across, up) => {
          const given = { ...newels, turn: 90, strings: "straight" as const };
          const paper = onPaper(given);
          const reach = given.innerRadius + given.width;
          const spot: Spot = [across * reach, up * reach];
          if (paper.isWell(spot)) return;
          // A spot on a nose itself belongs to either tread, as the last digit of a number falls.
          const behindNoses = Array.from({ length: given.winders }, (_, line) => paper.seenFrom(line, spot)[1]);
          if (behindNoses.some((behind) => Math.abs(behind) < ON_A_LINE)) return;
          const holders = (nosing: number): number[] =>
            treads({ ...given, nosing }).flatMap((tread, line) => (isInside(paper.seenFrom(line, spot), spots(tread)) ? [line] : []));
          expect(holders(0)).toHaveLength(1);
          const [line = 0] = holders(0);
          const wanted = line > 0 && paper.seenFrom(line, spot)[1] < given.nosing ? [line - 1, line] : [line];
          // A spot nearer the newel may lie under two nosings at once.
          expect(holders(given.nosing)).toEqual(expect.arrayContaining(wanted));
          for (const holder of holders(given.nosing).filter((one) => !wanted.includes(one)))
            expect(paper.seenFrom(holder + 1, spot)[1]).toBeLessThan(given.nosing);
        },
      ),
      { numRuns: 500 },
    );
  });
});

test("two in a quarter: the nose runs into the corner of the walls, and the tread below reaches round it", () => {
  // By hand: walls 42 out, corner 42 √2 = 59.397 along the second nose. The first tread's back edge lies 1 1/4 behind: on the second wall.
  const [first, second] = treads({ winders: 2 }).map(placesOf);
  expect(first).toMatchObject({ "corner of the walls": [42, 42] });
  expect(first?.["back edge, wide end"]).toEqual([Number((42 - 1.25 * Math.SQRT2).toFixed(4)), 42]);
  expect(second).toMatchObject({ "nose, wide end": [59.397, 0] });
  expect(second).not.toHaveProperty("corner of the walls");
});

test("one that turns a whole quarter between round strings is as deep as the wide end reaches", () => {
  // By hand: past square the arc is deepest at 90 degrees, 6 + 36.
  expect(treads({ winders: 1, strings: "round" })[0]?.blank.depth).toBeCloseTo(42, 12);
});

test("without a nosing they may run to a point: by hand the back edge of the first then ends 42 / cos 30 = 48.497 from it", () => {
  const [first] = treads({ innerRadius: 0, width: 42, nosing: 0 });
  expect(first?.narrowEnd).toBe(0);
  expect(first?.blank.from).toBeCloseTo(0, 12);
  const [, , wide] = first?.corners ?? [];
  expect(Math.hypot(wide?.along ?? 0, wide?.back ?? 0)).toBeCloseTo(48.497, 3);
});

test("a newel may be as thick as leaves any wood: by hand the corner of one of 59 is 59 / √2 = 41.72 out, the walls are 42", () => {
  // 59 / 2 x tan 30 = 17.032.
  expect(treads({ newel: 59 })[0]?.narrowEnd).toBeCloseTo(17.032, 3);
});

test.each([
  [{ turn: 180, winders: 6 }, "straight-strings-past-half-turn"],
  [{ turn: 270, winders: 2, strings: "round" as const }, "winder-past-a-quarter"],
  [{ turn: 100, winders: 1 }, "winder-past-a-quarter"],
  [{ innerRadius: 1.25 }, "nosing-past-the-narrow-end"],
  [{ innerRadius: 0 }, "nosing-past-the-narrow-end"],
  [{ turn: 60, newel: 4 }, "newel-not-square"],
  [{ newel: 2.5 }, "newel-thin"],
  [{ newel: 60 }, "newel-fills-the-turn"],
])("what has no treads is told: %j", (given, told) => {
  expect(winderTreads({ ...QUARTER_OF_THREE, ...given })).toMatchObject({ problem: told });
});

test("too few winders are told with what each would turn, and how many it takes: 270 by two are 135, by three 90", () => {
  expect(winderTreads({ ...QUARTER_OF_THREE, turn: 270, winders: 2, strings: "round" })).toMatchObject({
    details: { winders: 2, each: 135, least: 3 },
  });
});
