import fc from "fast-check";
import { MARKS } from "../../src/functions/fit/marks";
import { RISERMARKS } from "../../src/functions/fit/risermarks";
import type { Unit } from "../../src/solver/length/length";
import { distance, level, movedToward, type Plane, planeThrough, type Point, pointOn, shifted, threePlanes, turnedAbout, upright } from "../solver/fit/space";
import { type Cells, cellsOf, printed } from "./printed-rows";
import { openEndOf } from "./seated-return";
import { type Misreading, type Printed, readTape, sawn, xAt } from "./simulated-saw";

/** Corners may lie off by so much: the ticket's figures are rounded, the readings are exact. */
const LIMIT_INCHES = 1 / 64;
/** What the ticket says of a check that is off. */
const CHECK_INCHES = 1 / 32;
const RADIANS = Math.PI / 180;

/** An opening: two lines `run` apart at the level of the sub-tread (or up the back of the risers), and the surfaces through their ends. */
interface Opening {
  readonly run: number;
  readonly nearRight: number;
  readonly farLeft: number;
  readonly outRight: number;
  readonly leftLean: number;
  readonly rightLean: number;
  readonly thickness: number;
  readonly leftGap: number;
  readonly rightGap: number;
  readonly undercut: number;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const openings: fc.Arbitrary<Opening> = fc.record({
  run: between(8, 12),
  nearRight: between(28, 56),
  farLeft: between(-0.8, 0.8),
  outRight: between(-0.8, 0.8),
  leftLean: between(-4, 4),
  rightLean: between(-4, 4),
  thickness: between(0.75, 1.5),
  leftGap: fc.oneof(fc.constant(0), between(0, 0.125)),
  rightGap: fc.oneof(fc.constant(0), between(0, 0.125)),
  undercut: fc.oneof(fc.constant(0), between(0, 4)),
});

const scaled = (opening: Opening, by: number): Opening => ({
  ...opening,
  run: opening.run * by,
  nearRight: opening.nearRight * by,
  farLeft: opening.farLeft * by,
  outRight: opening.outRight * by,
  thickness: opening.thickness * by,
  leftGap: opening.leftGap * by,
  rightGap: opening.rightGap * by,
});

const inchesPer: Readonly<Record<Unit, number>> = { in: 1, mm: 25.4 };

interface Lines {
  readonly left: readonly [near: Point, far: Point];
  readonly right: readonly [near: Point, far: Point];
}

const linesOf = ({ run, nearRight, farLeft, outRight }: Opening): Lines => ({
  left: [[0, 0, 0], [farLeft, run, 0]],
  right: [[nearRight, 0, 0], [nearRight + outRight, run, 0]],
});

/** What a tape reads: lengths between points in space, nothing else. */
const taped = (opening: Opening) => {
  const { left, right } = linesOf(opening);
  return {
    near: distance(left[0], right[0]),
    far: distance(left[1], right[1]),
    diagonal: distance(left[0], right[1]),
    second: distance(right[0], left[1]),
  };
};

/** The surface an end is to have: the skirt, moved in by the gap, and turned in about the face's edge where it is undercut. */
const endOf = (opening: Opening, side: "left" | "right", isOpen: boolean, depth: number): Plane => {
  const way = side === "right" ? 1 : -1;
  const [near, far] = linesOf(opening)[side];
  const lean = isOpen ? 0 : side === "left" ? opening.leftLean : opening.rightLean;
  const skirt = planeThrough(near, far, shifted(near, [way * Math.tan(lean * RADIANS), 0, 1]));
  if (isOpen) return skirt;
  const middle: Point = [opening.nearRight / 2, opening.run / 2, opening.thickness / 2];
  const clear = movedToward(skirt, side === "left" ? opening.leftGap : opening.rightGap, middle);
  const at = (y: number): Point => threePlanes(clear, upright(y), level(opening.thickness));
  const [back, nose] = [at(0), at(depth)];
  return turnedAbout(clear, back, shifted(nose, [-back[0], -back[1], -back[2]]), way * opening.undercut);
};

/** Half of what all places of a piece are apart, once it is slid to where it fits best. */
const worst = (off: readonly number[]): number => (Math.max(...off) - Math.min(...off)) / 2;

/** How far the sawn piece's corners lie right of where they should, in the order of the ends given. */
const cornersOff = (plane: Plane, wanted: Plane, depth: number, thickness: number): readonly number[] =>
  [0, depth].flatMap((y) => [0, thickness].map((z) => xAt(plane, y, z) - xAt(wanted, y, z)));

const planeOf = (piece: ReturnType<typeof sawn>, side: "left" | "right"): Plane => {
  const plane = piece.ends.get(side);
  if (plane === undefined) throw new Error(`no ${side} end was sawn`);
  return plane;
};

interface Tread extends Opening {
  readonly nosing: number;
  readonly overhang: number;
  readonly returnWidth: number;
}

/** A size the shop chooses, and so one that its tape has: 32nds, whole millimetres. Only the opening is as it is found. */
const chosen = (unit: Unit, min: number, max: number): fc.Arbitrary<number> =>
  unit === "in"
    ? fc.integer({ min: min * 32, max: max * 32 }).map((parts) => parts / 32)
    : fc.integer({ min: Math.ceil(min * 25.4), max: Math.floor(max * 25.4) });

const treadsIn = (unit: Unit): fc.Arbitrary<Tread> =>
  fc
    .record({
      opening: openings,
      nosing: chosen(unit, 0.75, 1.5),
      overhang: chosen(unit, 0.5, 1.5),
      returnWidth: chosen(unit, 0.75, 3),
    })
    .map(({ opening, ...sizes }) => ({ ...scaled(opening, inchesPer[unit]), ...sizes }));

const treadRows = (tread: Tread, openEnd: string, unit: Unit): readonly Printed[] => {
  const { near, far, diagonal, second } = taped(tread);
  return printed(
    cellsOf(MARKS, {
      readings: [
        ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean", "right lean", "left gap", "right gap"],
        [3, tread.run, near, far, diagonal, second, tread.leftLean, tread.rightLean, tread.leftGap || "none", tread.rightGap || "none"],
      ],
      nosing: tread.nosing,
      openEnd,
      overhang: tread.overhang,
      returnWidth: tread.returnWidth,
      thickness: tread.thickness,
      undercut: tread.undercut,
      unit,
    }),
  );
};

/** The worst of eight corners of a tread between two skirts, in inches, and what its checks read more than is printed. */
const closedTread = (tread: Tread, unit: Unit, misread?: Misreading) => {
  const piece = sawn(treadRows(tread, "none", unit), { thickness: tread.thickness, unit, ...(misread === undefined ? {} : { misread }) });
  const off = (["left", "right"] as const).flatMap((side) =>
    cornersOff(planeOf(piece, side), endOf(tread, side, false, tread.run + tread.nosing), piece.depth, tread.thickness),
  );
  return { piece, worst: worst(off) / inchesPer[unit], checks: piece.checks.map((more) => Math.abs(more) / inchesPer[unit]) };
};

/** Where the return at an open end belongs, seen from above: the skirt's line moved square to itself, the nose, and past the riser. */
const returnOf = (tread: Tread, side: "left" | "right") => {
  const way = side === "right" ? 1 : -1;
  const [near, far] = linesOf(tread)[side];
  const depth = tread.run + tread.nosing;
  const outer = pointOn(near, far, way * tread.overhang);
  const inner = pointOn(near, far, way * (tread.overhang - tread.returnWidth));
  const at = (line: (y: number) => number, y: number): Point => [line(y), y, tread.thickness];
  return {
    outer,
    inner,
    heel: at(inner, depth - tread.returnWidth),
    longPoint: at(outer, depth),
    freeOuter: at(outer, -tread.overhang),
    freeInner: at(inner, -tread.overhang),
  };
};

const minus = ([a, b, c]: Point, [d, e, f]: Point): Point => [a - d, b - e, c - f];

/** A tread with returns: the worst place of wood and marks, of the seated returns' corners, and the checks, in inches. */
const openTread = (tread: Tread, openEnd: "left" | "right" | "both", unit: Unit, misread?: Misreading) => {
  const piece = sawn(treadRows(tread, openEnd, unit), { thickness: tread.thickness, unit, ...(misread === undefined ? {} : { misread }) });
  const open = (["left", "right"] as const).filter((side) => openEnd === side || openEnd === "both");
  const closed = (["left", "right"] as const).filter((side) => !open.includes(side));
  const off = [
    ...closed.flatMap((side) =>
      cornersOff(planeOf(piece, side), endOf(tread, side, false, tread.run + tread.nosing), piece.depth, tread.thickness)),
    ...open.flatMap((side) => {
      const [made, wanted] = [openEndOf(piece, side), returnOf(tread, side)];
      return [
        made.back[0] - wanted.inner(made.back[1]),
        made.heel[0] - wanted.inner(made.heel[1]),
        made.toe[0] - wanted.outer(made.toe[1]),
      ];
    }),
  ];
  const slid = (Math.max(...off) + Math.min(...off)) / 2;
  const inch = inchesPer[unit];
  const returns = open.map((side) => {
    const [made, wanted] = [openEndOf(piece, side), returnOf(tread, side)];
    const offBy = (corner: "heel" | "longPoint" | "freeOuter" | "freeInner"): Point => minus(made[corner], wanted[corner]);
    const corners = [offBy("heel"), offBy("longPoint"), offBy("freeOuter")];
    const long = distance(made.heel, made.longPoint);
    const [dx, dy] = [made.longPoint[0] - made.heel[0], made.longPoint[1] - made.heel[1]];
    return {
      /** How far the mitre opens at the nose, the return seated heel to heel. */
      seam: Math.abs((made.toe[0] - made.heel[0]) * dy - (made.toe[1] - made.heel[1]) * dx) / long / inch,
      /** The return by itself, slid to where it fits best, both ways. */
      shape: Math.max(worst(corners.map(([x]) => x)), worst(corners.map(([, y]) => y))) / inch,
      /** How far one corner of its free end lies behind the other, against what it should. */
      freeEnd: Math.abs(offBy("freeInner")[1] - offBy("freeOuter")[1]) / inch,
      /** In its place on the tread, in its place on the stair. */
      seated: Math.max(...[offBy("longPoint"), offBy("freeOuter")].map(([x, y]) => Math.hypot(x - slid, y))) / inch,
      isSquare: made.isSquare,
    };
  });
  return { piece, worst: worst(off) / inch, returns, checks: piece.checks.map((more) => Math.abs(more) / inch) };
};

const units = ["in", "mm"] as const;

const runs = { numRuns: 300 };
/** A check that is off by more than this is a wrong mark, as the ticket says. */
const checkLimit: Readonly<Record<Unit, number>> = { in: CHECK_INCHES, mm: 1 / 25.4 };
/** A return has no surface of the opening to meet: its shape hangs on three marks of the tape, in mm each to the half. */
const returnLimit: Readonly<Record<Unit, number>> = { in: LIMIT_INCHES, mm: 0.5 / 25.4 };

describe("treads by a saw that follows the printed rows and nothing else", () => {
  test.each(units)("between two skirts every corner comes within 1/64 of the opening, %s", (unit) => {
    fc.assert(
      fc.property(treadsIn(unit), (tread) => {
        const { piece, worst: off, checks } = closedTread(tread, unit);
        expect(piece.contradictions).toEqual([]);
        expect(off).toBeLessThanOrEqual(LIMIT_INCHES);
        expect(checks).toHaveLength(2);
        expect(Math.max(...checks)).toBeLessThanOrEqual(checkLimit[unit]);
      }),
      runs,
    );
  });

  test.each(units.flatMap((unit) => (["left", "right", "both"] as const).map((openEnd) => [openEnd, unit] as const)))(
    "open %s, wood and marks come within 1/64 of the opening, the return where it belongs, %s",
    (openEnd, unit) => {
      fc.assert(
        fc.property(treadsIn(unit), (tread) => {
          const { piece, worst: off, returns, checks } = openTread(tread, openEnd, unit);
          expect(piece.contradictions).toEqual([]);
          expect(off).toBeLessThanOrEqual(LIMIT_INCHES);
          expect(checks).toHaveLength(openEnd === "both" ? 6 : 4);
          expect(Math.max(...checks)).toBeLessThanOrEqual(checkLimit[unit]);
          expect(returns).toHaveLength(openEnd === "both" ? 2 : 1);
          for (const { seam, shape, freeEnd, seated, isSquare } of returns) {
            expect(shape).toBeLessThanOrEqual(returnLimit[unit]);
            // Sawn square while that is off by no more than 1/32; else to the figure.
            expect(freeEnd).toBeLessThanOrEqual((isSquare ? 1 / 32 : 0) + returnLimit[unit]);
            // Put together, both pieces' roundings meet.
            expect(seam).toBeLessThanOrEqual(checkLimit[unit]);
            expect(seated).toBeLessThanOrEqual(checkLimit[unit]);
          }
        }),
        runs,
      );
    },
  );

  test("the first end is sawn, marked from and checked before the second one is", () => {
    const [tread] = fc.sample(treadsIn("in"), { numRuns: 1, seed: 7 });
    if (tread === undefined) throw new Error("no tread");
    const order = (openEnd: string): readonly string[] => treadRows(tread, openEnd, "in").map(({ act }) => act);
    expect(order("none")).toEqual([
      "RIP", "SAW LEFT END", "MARK RIGHT NOSE", "MARK RIGHT BACK", "CHECK", "CHECK", "SAW RIGHT END",
    ]);
    expect(order("left")).toEqual([
      "RIP", "SAW RIGHT END", "GAUGE", "MARK LEFT TOE", "MARK LEFT HEEL", "MARK LEFT BACK", "CHECK", "CHECK", "CHECK", "CHECK",
      "SAW LEFT END", "MITRE LEFT END", "MITRE LEFT RETURN", "SAW LEFT RETURN",
    ]);
    expect(order("both")).toEqual([
      "RIP", "SQUARE LEFT END", "GAUGE", "MARK LEFT TOE", "MARK RIGHT TOE", "MARK LEFT HEEL", "MARK RIGHT HEEL", "MARK LEFT BACK",
      "MARK RIGHT BACK", "CHECK", "CHECK", "CHECK", "CHECK", "CHECK", "CHECK", "SAW LEFT END", "MITRE LEFT END", "SAW RIGHT END",
      "MITRE RIGHT END", "MITRE LEFT RETURN", "SAW LEFT RETURN", "MITRE RIGHT RETURN", "SAW RIGHT RETURN",
    ]);
  });
});

describe("what is read wrongly shows", () => {
  /** A step 2 degrees off square at the left and leaning in over the tread there. */
  const skewed: Tread = {
    run: 10, nearRight: 36, farLeft: -0.35, outRight: 0.1, leftLean: -2, rightLean: 1, thickness: 1, leftGap: 0, rightGap: 0,
    undercut: 0, nosing: 1.25, overhang: 1.25, returnWidth: 1.25,
  };

  test("a swing taken the other way spoils the piece, and a diagonal says so before the second end is sawn", () => {
    expect(closedTread(skewed, "in").worst).toBeLessThanOrEqual(LIMIT_INCHES);
    const { worst: off, checks } = closedTread(skewed, "in", "swing mirrored");
    expect(off).toBeGreaterThan(0.1);
    expect(Math.max(...checks)).toBeGreaterThan(CHECK_INCHES);
    const open = openTread(skewed, "right", "in", "swing mirrored");
    expect(open.worst).toBeGreaterThan(0.1);
    expect(Math.max(...open.checks)).toBeGreaterThan(CHECK_INCHES);
  });

  test("a blade leant the other way spoils the piece", () => {
    expect(closedTread(skewed, "in", "tilt mirrored").worst).toBeGreaterThan(LIMIT_INCHES);
  });

  test("an inch that was burnt and forgotten shows in the diagonals", () => {
    for (const { checks } of [closedTread(skewed, "in", "inch forgotten"), openTread(skewed, "right", "in", "inch forgotten")])
      expect(Math.max(...checks)).toBeGreaterThan(0.9);
    // By hand: 100 mm is 3.94 in, along a diagonal that runs 11 in 38 across, 0.96 of it.
    const metric = closedTread({ ...scaled(skewed, 25.4), nosing: 32, overhang: 32, returnWidth: 32 }, "mm", "inch forgotten");
    expect(Math.max(...metric.checks)).toBeGreaterThan(3.7);
  });
});

interface Riser extends Opening {
  readonly runPast: number;
  readonly skirtThickness: number;
  readonly lap: number;
  readonly clearance: number;
  readonly bevel: number;
}

const risersIn = (unit: Unit): fc.Arbitrary<Riser> =>
  fc
    .record({
      opening: openings,
      height: between(6.5, 8),
      runPast: chosen(unit, 0.125, 0.5),
      skirtThickness: chosen(unit, 0.5, 1),
      lap: chosen(unit, 0.125, 0.5),
      clearance: chosen(unit, 0, 0.0625),
      bevel: fc.constantFrom(0, 3, 4, 5),
    })
    .map(({ opening, height, ...sizes }) => ({ ...scaled({ ...opening, run: height }, inchesPer[unit]), ...sizes }));

const riserRows = (riser: Riser, openEnd: string, unit: Unit, step = 3): readonly Printed[] => {
  const { near, far, diagonal, second } = taped(riser);
  const { runPast, thickness, undercut, skirtThickness, lap, clearance, bevel } = riser;
  return printed(
    cellsOf(RISERMARKS, {
      readings: [
        ["step", "height", "top", "bottom", "diagonal", "second diagonal", "left flare", "right flare", "left gap", "right gap"],
        [step, riser.run, near, far, diagonal, second, riser.leftLean, riser.rightLean, riser.leftGap || "none", riser.rightGap || "none"],
      ],
      openEnd, runPast, thickness, undercut, skirtThickness, lap, clearance, bevel, unit,
    }),
  );
};

describe("risers by the same saw", () => {
  test.each(units.flatMap((unit) => (["none", "left", "right", "both"] as const).map((openEnd) => [openEnd, unit] as const)))(
    "open %s, ends with what runs past, notch and bevel, %s",
    (openEnd, unit) => {
      fc.assert(
        fc.property(risersIn(unit), (riser) => {
          const inch = inchesPer[unit];
          const piece = sawn(riserRows(riser, openEnd, unit), { thickness: riser.thickness, unit });
          const open = (["left", "right"] as const).filter((side) => openEnd === side || openEnd === "both");
          const off = (["left", "right"] as const).flatMap((side) => {
            const isOpen = open.includes(side);
            const past = isOpen ? (side === "right" ? 1 : -1) * riser.runPast : 0;
            return cornersOff(planeOf(piece, side), endOf(riser, side, isOpen, riser.run), piece.depth, riser.thickness)
              .map((more) => more - past);
          });
          expect(piece.contradictions).toEqual([]);
          expect(worst(off) / inch).toBeLessThanOrEqual(LIMIT_INCHES);
          expect(Math.abs(piece.depth - riser.run) / inch).toBeLessThanOrEqual(LIMIT_INCHES);
          expect(piece.checks).toHaveLength(2);
          for (const more of piece.checks) expect(Math.abs(more) / inch).toBeLessThanOrEqual(checkLimit[unit]);
          // Over the skirt, what runs past it, and the room: by hand, as the sizes stand one after the other from the end.
          const clears = riser.runPast + riser.skirtThickness + riser.clearance;
          expect([...piece.notch.keys()]).toEqual(open);
          for (const { along, up } of piece.notch.values()) {
            expect(Math.abs(along - clears) / inch).toBeLessThanOrEqual(LIMIT_INCHES);
            expect(Math.abs(up - riser.lap - riser.clearance) / inch).toBeLessThanOrEqual(LIMIT_INCHES);
          }
          expect(piece.bevel?.degrees).toBe(riser.bevel === 0 ? undefined : riser.bevel);
          if (riser.bevel !== 0) {
            expect([...piece.squareStretch.keys()]).toEqual(open);
            for (const stretch of piece.squareStretch.values())
              expect(Math.abs(stretch - clears) / inch).toBeLessThanOrEqual(LIMIT_INCHES);
            // The bevel as a plane through the face's upper edge, met with the back.
            const onEdge: Point = [0, 0, riser.thickness];
            const bevel = turnedAbout(upright(0), onEdge, [1, 0, 0], -riser.bevel);
            const back = threePlanes(bevel, level(0), planeThrough([0, 0, 0], [0, 1, 0], [0, 0, 1]));
            expect(Math.abs(Math.abs(back[1]) - (piece.bevel?.relief ?? 0)) / inch).toBeLessThanOrEqual(LIMIT_INCHES);
          }
        }),
        runs,
      );
    },
  );

  test("riser 1 stands on the floor and has no notch; without a lap none has", () => {
    const [riser] = fc.sample(risersIn("in"), { numRuns: 1, seed: 7 });
    if (riser === undefined) throw new Error("no riser");
    const notches = (rows: readonly Printed[]): number => rows.filter(({ act }) => act === "SAW NOTCH").length;
    expect(notches(riserRows(riser, "right", "in", 2))).toBe(1);
    expect(notches(riserRows(riser, "right", "in", 1))).toBe(0);
    expect(notches(riserRows({ ...riser, lap: 0 }, "right", "in", 2))).toBe(0);
  });
});

/** One cell of the row of an act, by heading. */
const cellOf = (cells: Cells, act: string, heading: string, which = 0): unknown => {
  const [headings = [], ...rows] = cells;
  return rows.filter((row) => row[headings.indexOf("act")] === act)[which]?.[headings.indexOf(heading)];
};

describe("figures worked by hand", () => {
  test("a wall skirt leaning in and an open end at the right", () => {
    // By hand: at the skirt 36.6875 + 10 x (tan 0.5242 + tan 1.2661), on the face tan 1.72 = 0.0300 less: back 36.6575, nose 37.0090.
    // Toe + 1.25/cos 1.2661 = 38.2593; heel - 1.25 x tan 45.633 = 36.9814, at the end itself - 1.25 x tan 0.5242 = 36.9700. Mitre line
    // 1.25/sin 44.367 = 1.7876. Return line: w = o, so the skirt's own line, 36.6575, and (11.25 - 1.25)/cos 1.2661 = 10.0024. Return
    // 12.5/cos 1.2661 = 12.5031. Diagonals: back corner 11.25 x tan 0.5242 = 0.1029 in, so hypot(36.7604, 11.25) and hypot(38.1564, 11.25).
    const cells = cellsOf(MARKS, {
      readings: [
        ["step", "run", "back", "left angle", "right angle", "left lean"],
        [4, 10, 36.6875, 0.5242, 1.2661, -1.72],
      ],
      openEnd: "right",
    });
    const distanceOf = (act: string, which = 0): number => Number(cellOf(cells, act, "distance", which));
    expect(distanceOf("RIP")).toBe(11.25);
    expect(distanceOf("MARK RIGHT TOE")).toBeCloseTo(38.2593, 3);
    expect(distanceOf("MARK RIGHT HEEL")).toBeCloseTo(36.97, 3);
    expect(distanceOf("MARK RIGHT BACK")).toBeCloseTo(36.6575, 3);
    expect(distanceOf("CHECK", 0)).toBeCloseTo(1.7876, 3);
    expect(distanceOf("CHECK", 1)).toBeCloseTo(10.0024, 3);
    expect(distanceOf("CHECK", 2)).toBeCloseTo(38.4434, 3);
    expect(distanceOf("CHECK", 3)).toBeCloseTo(39.7802, 3);
    expect(distanceOf("SAW RIGHT RETURN")).toBeCloseTo(12.5031, 3);
    expect(cellOf(cells, "MARK RIGHT TOE", "tape")).toBe("39 1/4 strong, the 1 at the corner");
    expect(cellOf(cells, "MARK RIGHT TOE", "hook on")).toBe("burn an inch at the left nose corner, along the nose");
    expect(cellOf(cells, "SAW LEFT END", "swing")).toBe("0.5°, near end of the cut to the left");
    expect(cellOf(cells, "SAW LEFT END", "offset")).toBe("back in by 7/64");
    expect(cellOf(cells, "MITRE RIGHT END", "swing")).toBe(
      "45.6° on the saw's scale, near end of the cut to the right (44.4° from the nose)",
    );
    expect(cellOf(cells, "SAW RIGHT RETURN", "swing")).toBe("square");
  });

  test("both ends open, hooked on the squared end", () => {
    // By hand: 1/2 of waste; toe to toe 37 + 1.25/cos 1 + 1.25/cos 2 = 39.5010; left toe to right heel - 1.25 x tan 46 = 38.2065; heel to
    // heel - 1.25 x tan 45.5 = 36.9345, so the left heel is 38.2065 - 36.9345 = 1.2720 from its toe. The nose is 37: 11.25 x (tan 1 + tan
    // 2) = 0.5892 more than the back.
    const rise = Math.tan(RADIANS) + Math.tan(2 * RADIANS);
    const cells = cellsOf(MARKS, {
      readings: [
        ["step", "run", "back", "left angle", "right angle"],
        [2, 10, 37 - 11.25 * rise, 1, 2],
      ],
      openEnd: "both",
    });
    const distanceOf = (act: string): number => Number(cellOf(cells, act, "distance"));
    expect(distanceOf("MARK LEFT TOE")).toBe(0.5);
    expect(distanceOf("MARK RIGHT TOE")).toBeCloseTo(40.001, 4);
    expect(distanceOf("MARK RIGHT HEEL")).toBeCloseTo(38.7065, 4);
    expect(distanceOf("MARK LEFT HEEL")).toBeCloseTo(1.772, 3);
    // 1.25 x tan 2 = 0.0437 is over 1/32, so the far end is not square; 1.25 x tan 1 = 0.0218 is not.
    expect(cellOf(cells, "SAW RIGHT RETURN", "swing")).toBe("2.0°, near end of the cut to the left");
    expect(cellOf(cells, "SAW RIGHT RETURN", "offset")).toBe("outer edge in by 3/64");
    expect(cellOf(cells, "SAW LEFT RETURN", "swing")).toBe("square");
  });
});

describe("what a ticket never says", () => {
  test("no sign, no doubtful cut: a step that does not close says READ AGAIN and nothing is sawn", () => {
    const cells = cellsOf(MARKS, {
      readings: [
        ["step", "run", "back", "front", "diagonal", "second diagonal"],
        [5, 10, 37, 37, 39, 38],
      ],
    });
    expect(printed(cells)).toEqual([
      {
        number: 1, act: "READ AGAIN", hookOn: "", tape: "", swing: "", offset: "", tilt: "",
        note: "nothing is sawn from these readings; the diagonals disagree: read this step again",
      },
    ]);
  });

  test("no minus, no plus, and no inches in the words of a ticket in mm", () => {
    fc.assert(
      fc.property(treadsIn("mm"), risersIn("mm"), (tread, riser) => {
        for (const row of [...treadRows(tread, "right", "mm"), ...riserRows(riser, "left", "mm")])
          for (const text of Object.values(row).map(String)) expect(text).not.toMatch(/[-−+"]\d|\d[-−+"]|inch|strong|shy|NaN/);
      }),
      { numRuns: 100 },
    );
  });

  test("the exact distance and the tape's words are the same length", () => {
    fc.assert(
      fc.property(treadsIn("in"), (tread) => {
        const { near, far, diagonal, second } = taped(tread);
        const readings = [["step", "run", "back", "front", "diagonal", "second diagonal"], [1, tread.run, near, far, diagonal, second]];
        const [headings = [], ...rows] = cellsOf(MARKS, { readings, openEnd: "both" });
        for (const row of rows) {
          const [exact, tape] = [row[headings.indexOf("distance")], row[headings.indexOf("tape")]];
          if (exact === "") expect(tape).toBe("");
          else {
            const { at: read } = readTape(String(tape));
            expect(Math.abs(read - Number(exact))).toBeLessThanOrEqual(1 / 128 + 1e-9);
          }
        }
      }),
      { numRuns: 100 },
    );
  });
});
