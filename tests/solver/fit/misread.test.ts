import { closureLimits } from "../../../src/solver/fit/closure-limits";
import { type Misread, misread, type ReadFlight } from "../../../src/solver/fit/misread";
import type { RiserReading } from "../../../src/solver/fit/riser-reading";
import type { PieceReading } from "../../../src/solver/fit/skirt-surface/flight-readings";
import type { TreadReading } from "../../../src/solver/fit/tread-reading";
import { isProblem } from "../../../src/solver/problem";
import { changed, FIVE_STEPS, flightInSpace, skirts } from "./skirt-surface/flight-in-space";

const MILLIMETRES = 25.4;

const named = (readings: readonly PieceReading[]): readonly TreadReading[] =>
  readings.map(({ step, distance, near, far, diagonal, secondDiagonal }) => ({
    step: step!, run: distance!, back: near!, front: far!, diagonal: diagonal!, secondDiagonal: secondDiagonal!, leftLean: 0, rightLean: 0,
  }));

const risersOf = (readings: readonly PieceReading[]): readonly RiserReading[] =>
  readings.map(({ step, distance, near, far, diagonal, secondDiagonal }) => ({
    step: step!, height: distance!, top: near!, bottom: far!, diagonal: diagonal!, secondDiagonal: secondDiagonal!,
    leftFlare: 0, rightFlare: 0,
  }));

const rowsOf = (treads: readonly TreadReading[], given: Partial<ReadFlight> = {}): readonly Misread[] => {
  const unit = given.unit ?? "in";
  const found = misread({ treads, risers: [], unit, closure: closureLimits(undefined, unit), ...given });
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};

const said = (rows: readonly Misread[]) => rows.map(({ step, reading, read, likely, why, sure }) => [
  step, reading, read?.value, likely?.value, why, sure,
]);

const scaled = (treads: readonly TreadReading[]): readonly TreadReading[] =>
  treads.map(({ step, leftLean, rightLean, ...lengths }) => ({
    ...(Object.fromEntries(Object.entries(lengths).map(([key, value]) => [key, value * MILLIMETRES])) as unknown as TreadReading),
    step: step!, leftLean, rightLean,
  }));

const inch = named(changed(FIVE_STEPS, 4, ({ far }) => ({ far: far! + 1 })));

test("an honest flight: one row that says so", () => {
  expect(said(rowsOf(named(FIVE_STEPS)))).toEqual([[undefined, "", undefined, undefined, "nothing stands out", ""]]);
});

test("an inch is called an inch", () => {
  // By hand: the front of step 4 is 36, and an inch was added or taken off.
  expect(said(rowsOf(inch))).toEqual([[4, "front", 37, 36, "a whole inch too long", "named"]]);
  const short = named(changed(FIVE_STEPS, 4, ({ far }) => ({ far: far! - 1 })));
  expect(said(rowsOf(short))).toEqual([[4, "front", 35, 36, "a whole inch too short", "named"]]);
});

test("in millimetres the same reading is named, to the millimetre", () => {
  const [row] = rowsOf(scaled(inch), { unit: "mm" });
  expect(row).toMatchObject({ step: 4, reading: "front", sure: "named", why: "too long for the two skirts" });
  // By hand: 36 in are 914.4 mm, to the nearest millimetre 914.
  expect(row!.likely).toEqual({ kind: "reading", value: 914 });
});

test("a finer tape prints finer values", () => {
  // Planes: a front of 36.0400 read an inch long is put right to 1/32 with a 1/32 tape: 36 1/32 is nearest.
  const { treads } = flightInSpace(skirts(36.04, { along: 1, up: 0 }, { along: 1, up: 0 }), Array(5).fill(10), Array(5).fill(7.5));
  const read = named(changed(treads, 3, ({ far }) => ({ far: far! + 1 })));
  expect(rowsOf(read, { closure: closureLimits(32, "in") })[0]!.likely!.value).toBeCloseTo(36.03125, 10);
  expect(rowsOf(read, { closure: closureLimits(16, "in") })[0]!.likely!.value).toBeCloseTo(36.0625, 10);
});

test("exchanged lengths are two rows, each with the other's value", () => {
  const read = named(changed(FIVE_STEPS, 3, ({ diagonal, secondDiagonal }) => ({ diagonal: secondDiagonal!, secondDiagonal: diagonal! })));
  expect(said(rowsOf(read))).toEqual([
    [3, "diagonal", 37.625, 37.125, "diagonal and second diagonal exchanged", "named"],
    [3, "second diagonal", 37.125, 37.625, "diagonal and second diagonal exchanged", "named"],
  ]);
});

test("exchanged steps are a row each", () => {
  const { treads } = flightInSpace(skirts(38, { along: -2, up: 0 }, { along: 2, up: 0 }), Array(6).fill(10), Array(6).fill(7.7));
  const read = named([treads[0]!, { ...treads[2]!, step: 2 }, { ...treads[1]!, step: 3 }, ...treads.slice(3)]);
  expect(said(rowsOf(read)).map(([step, reading, , , why]) => [step, reading, why]).sort()).toEqual([
    [2, "every reading", "readings of steps 2 and 3 exchanged"],
    [3, "every reading", "readings of steps 2 and 3 exchanged"],
  ]);
});

test("readings of risers are called so, and a mistake among them is found", () => {
  const { treads, risers } = flightInSpace(skirts(36, { along: 1, up: 2 }, { along: -1, up: -2 }), Array(5).fill(10), Array(5).fill(7.5));
  const [top, bottom] = rowsOf(named(treads), { risers: risersOf(changed(risers, 2, ({ near, far }) => ({ near: far!, far: near! }))) });
  // By hand: at riser 2's foot, 10 along and 7 1/2 up, both skirts are in by 0.1 + 0.15, a riser higher by 0.15 more: 35.5 and 35.2.
  expect(said([top!, bottom!])).toEqual([
    [2, "riser top", expect.closeTo(35.5, 9), expect.closeTo(35.2, 9), "top and bottom exchanged", "named"],
    [2, "riser bottom", expect.closeTo(35.2, 9), expect.closeTo(35.5, 9), "top and bottom exchanged", "named"],
  ]);
  const [long] = rowsOf(named(treads), { risers: risersOf(changed(risers, 2, ({ near }) => ({ near: near! + 0.5 }))) });
  expect(long).toMatchObject({ step: 2, reading: "riser top", why: "too long for the two skirts", sure: "named" });
});

test("two explanations that nothing tells apart are two rows", () => {
  // A flight that is its own mirror image, one step's two diagonals both a tenth long: neither can be told from the other.
  const long = Math.hypot(36, 10);
  const steps = [1, 2, 3, 4, 5].map((step) => ({ step, distance: 10, near: 36, far: 36, diagonal: long, secondDiagonal: long }));
  const rows = rowsOf(named(changed(steps, 3, () => ({ diagonal: long + 0.1, secondDiagonal: long + 0.1 }))));
  expect(rows.slice(0, 2).map(({ step, reading, why, sure }) => [step, reading, why, sure])).toEqual([
    [3, "diagonal", "too long for the two skirts, or second diagonal of step 3 instead", "either"],
    [3, "second diagonal", "too long for the two skirts, or diagonal of step 3 instead", "either"],
  ]);
});

test("where both explanations turn out to be wrong, each is named by itself", () => {
  const long = Math.hypot(36, 10);
  const steps = [1, 2, 3, 4, 5].map((step) => ({ step, distance: 10, near: 36, far: 36, diagonal: long, secondDiagonal: long }));
  const rows = rowsOf(named(changed(steps, 3, () => ({ diagonal: long + 1, secondDiagonal: long + 1 }))));
  // By hand: the root of 36 squared and 10 squared is 37.3631, 37 3/8 to a sixteenth.
  expect(said(rows).sort()).toEqual([
    [3, "diagonal", long + 1, 37.375, "a whole inch too long", "named"],
    [3, "second diagonal", long + 1, 37.375, "a whole inch too long", "named"],
  ]);
});

test("diagonals that disagree too little for a name are said beside", () => {
  // By hand: step 1 closes at 35.7531 + 36.2076 - 36 - 35.9375 = 0.0232; the second diagonal 1/8 longer, leg 36.3372, at 0.1528.
  const read = named(changed(FIVE_STEPS, 1, ({ secondDiagonal }) => ({ secondDiagonal: secondDiagonal! + 0.125 })));
  const rows = rowsOf(read);
  expect(said(rows)).toEqual([
    [1, "diagonals", undefined, undefined, "the diagonals disagree, and no one reading stands out: read this step again", ""],
  ]);
});

test("fewer than four treads, or no diagonals: no verdict, in words", () => {
  const verdict = (steps: number): string =>
    `no verdict on lengths: it takes 4 treads with back, front and a diagonal, got ${steps}`;
  expect(said(rowsOf(inch.slice(1, 4)))).toEqual([[undefined, "", undefined, undefined, verdict(3), ""]]);
  const bare = inch.map(({ diagonal: _, secondDiagonal: __, ...rest }) => rest);
  expect(said(rowsOf(bare))).toEqual([[undefined, "", undefined, undefined, verdict(0), ""]]);
});

test("a lean with the wrong sign is named, by itself or beside lengths", () => {
  const leans = [1.2, 1.1, -1.2, 1.3, 1.2];
  const read = named(FIVE_STEPS).map((tread, row) => ({ ...tread, rightLean: leans[row]! }));
  expect(said(rowsOf(read))).toEqual([[3, "right lean", -1.2, 1.2, "the other way than the rest of the flight", "named"]]);
  const rows = rowsOf(inch.map((tread, row) => ({ ...tread, leftLean: leans[row]! })));
  expect(rows.map(({ reading }) => reading)).toEqual(["front", "left lean"]);
});

test("so is a riser's flare, by its own step, in degrees either way", () => {
  const flares = [1.2, 1.1, -1.2, 1.3, 1.2];
  const risers = (side: "leftFlare" | "rightFlare") =>
    flares.map((flare, row): RiserReading => ({
      step: row + 1, height: 8, top: 36, bottom: 36, leftFlare: 0, rightFlare: 0, [side]: flare,
    }));
  for (const [side, reading] of [["leftFlare", "riser left flare"], ["rightFlare", "riser right flare"]] as const) {
    const rows = rowsOf(named(FIVE_STEPS), { risers: risers(side) }).filter(({ why }) => why.startsWith("the other way"));
    expect(said(rows)).toEqual([[3, reading, -1.2, 1.2, "the other way than the rest of the flight", "named"]]);
    expect([rows[0]?.read?.kind, rows[0]?.likely?.kind]).toEqual(["angle", "angle"]);
  }
});

test("a lean and a riser that disagree are two rows; a sign that is named already is not said twice", () => {
  // By hand: 0.14 in 8 is 1.0026 degrees; the skirt leans away, the riser's end runs the other way.
  const riser = (step: number): RiserReading => ({
    step, height: 8, top: 36, bottom: 36, leftOffset: 0.14, leftFlare: 0, rightFlare: 0,
  });
  const treads = (leans: readonly number[]) => named(FIVE_STEPS).map((tread, row) => ({ ...tread, leftLean: leans[row]! }));
  const rows = rowsOf(treads([0, 3, 0, 0, 0]), { risers: [riser(2)] });
  expect(said(rows).map((row) => [row[0], row[1], row[4], row[5]])).toEqual([
    [2, "left lean", "lean and riser disagree: read one again", "either"],
    [2, "riser left angle", "lean and riser disagree: read one again", "either"],
  ]);
  expect(rows[0]!.likely!.value).toBeCloseTo(1.0026, 4);
  expect(rows[1]!.likely!.value).toBe(-3);
  const signs = rowsOf(treads([1, 1, -1, 1, 1]), { risers: [riser(3)] });
  expect(signs.map(({ reading }) => reading)).toEqual(["left lean"]);
});

test("a step in two rows is said", () => {
  const twice = misread({ treads: [...inch, inch[0]!], risers: [], unit: "in", closure: closureLimits(undefined, "in") });
  expect(twice).toEqual({ problem: "step-twice", details: { step: 1 } });
});

test("runs of next to nothing hold no planes, which is said", () => {
  // By hand: the root of the square of 1e-200 is none that a number holds, so every corner along the flight stands at one place.
  const flat = named(FIVE_STEPS).map((tread) => ({ ...tread, run: 1e-200 }));
  expect(said(rowsOf(flat)).map(([, , , , why]) => why)).toEqual(["no verdict on lengths: the runs are next to nothing"]);
});
