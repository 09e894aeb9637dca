import fc from "fast-check";
import { FLIGHTS } from "../../src/functions/layout/flights";
import { ONEFLIGHT } from "../../src/functions/layout/oneflight";
import type { Unit } from "../../src/solver/length/length";
import { cellsOf } from "../functions/printed-rows";

/**
 * A house whose carriage, risers and skirts are out of true, in space: x to the right of whoever goes up, y up the stair, z up. Nothing is
 * worked out here but where the wood of the rough stair stands.
 */

export type Side = "left" | "right";
export const SIDES: readonly Side[] = ["left", "right"];
/** +1 to the right. */
export const way = (side: Side): 1 | -1 => (side === "right" ? 1 : -1);

export const inchesPer: Readonly<Record<Unit, number>> = { in: 1, mm: 25.4 };

/** A skirt's face beside one step: x = at + perY (y - the rough riser's) + perZ (z - the sub-tread's). */
export interface SkirtFace {
  readonly at: number;
  readonly perY: number;
  readonly perZ: number;
  readonly gap: number;
}

/** A rough riser and the sub-tread on it. The upper floor is the last one's. */
export interface RoughStep {
  readonly riser: number;
  readonly subTread: number;
  readonly skirts: Readonly<Record<Side, SkirtFace>>;
}

/** What the shop chooses for the whole stair. */
export interface Sizes {
  readonly unit: Unit;
  readonly thickness: number;
  readonly riserThickness: number;
  readonly nosing: number;
  readonly lap: number;
  readonly openEnd: Side | "none" | "both";
  readonly overhang: number;
  readonly returnWidth: number;
  readonly runPast: number;
  readonly skirtThickness: number;
  readonly clearance: number;
  readonly backGap: number;
  readonly undercut: number;
  readonly riserOn: "off" | "behind" | "both";
  readonly spread: number | "least";
}

export interface RoughFlight {
  /** Height of the finished floor or landing it stands on. */
  readonly floor: number;
  readonly lowerBuildUp: number;
  readonly upperBuildUp: number;
  readonly steps: readonly RoughStep[];
}

export interface House {
  readonly sizes: Sizes;
  readonly totalRise: number;
  readonly flights: readonly RoughFlight[];
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** A size that the shop's tape has: 32nds, whole millimetres. */
const chosen = (unit: Unit, min: number, max: number): fc.Arbitrary<number> =>
  unit === "in"
    ? fc.integer({ min: Math.ceil(min * 32), max: Math.floor(max * 32) }).map((parts) => parts / 32)
    : fc.integer({ min: Math.ceil(min * 25.4), max: Math.floor(max * 25.4) });

const sizesIn = (unit: Unit): fc.Arbitrary<Sizes> =>
  fc
    .record({
      unit: fc.constant(unit),
      thickness: chosen(unit, 0.75, 1.5),
      riserThickness: chosen(unit, 0.5, 0.875),
      nosing: chosen(unit, 0.75, 1.25),
      lap: fc.oneof(fc.constant(0), chosen(unit, 0.125, 0.5)),
      openEnd: fc.constantFrom(...(["none", "left", "right", "both"] as const)),
      overhang: chosen(unit, 0.75, 1.5),
      returnWidth: chosen(unit, 0.75, 1.5),
      runPast: chosen(unit, 0.125, 0.5),
      skirtThickness: chosen(unit, 0.75, 1),
      clearance: chosen(unit, 0, 0.0625),
      backGap: fc.oneof(fc.constant(0), chosen(unit, 0.0625, 0.125)),
      undercut: fc.oneof(fc.constant(0), between(0, 4)),
      riserOn: fc.constantFrom(...(["off", "behind", "both"] as const)),
      spread: fc.oneof(fc.constant("least" as const), fc.constant(0.375 * inchesPer[unit])),
    })
    .map((sizes) => ({
      ...sizes,
      // A return is never so wide that it comes in past the notch over the skirt, 3/4 thick at least.
      returnWidth: Math.min(sizes.returnWidth, sizes.overhang + (unit === "in" ? 0.375 : 9)),
      // A return runs past the riser behind it; a tread that stays clear of that riser has none here.
      backGap: sizes.openEnd === "none" ? sizes.backGap : 0,
    }));

/** How far each thing is out, in inches and in inches to the inch. */
interface Fault {
  readonly riser: number;
  readonly subTread: number;
  readonly left: readonly [at: number, perY: number, perZ: number];
  readonly right: readonly [at: number, perY: number, perZ: number];
  readonly leftGap: number;
  readonly rightGap: number;
}

const slopes = fc.tuple(between(-0.03, 0.03), between(-0.06, 0.06), between(-0.06, 0.06));
const gaps = fc.oneof(fc.constant(0), between(0, 0.125));
const faults: fc.Arbitrary<Fault> = fc.record({
  riser: between(-0.25, 0.25),
  subTread: between(-0.2, 0.2),
  left: slopes,
  right: slopes,
  leftGap: gaps,
  rightGap: gaps,
});

interface Plan {
  readonly sizes: Sizes;
  readonly risers: readonly number[];
  readonly turn: string;
  readonly rise: number;
  readonly run: number;
  readonly width: number;
  readonly buildUps: readonly number[];
  readonly faults: readonly Fault[];
}

const isOpen = ({ openEnd }: Sizes, side: Side): boolean => openEnd === side || openEnd === "both";

type Place = Pick<RoughStep, "riser" | "subTread">;

/** An open skirt's outer face is what the return follows: it stands upright there. The face goes on from where the step below left it. */
const skirtFace = (plan: Plan, fault: Fault, side: Side, place: Place, below: RoughStep | undefined): SkirtFace => {
  const inch = inchesPer[plan.sizes.unit];
  const [bump, perY, slope] = fault[side];
  const open = isOpen(plan.sizes, side);
  const perZ = open ? 0 : slope;
  const reached = below === undefined ? 0 : place.subTread - below.subTread;
  const before = below?.skirts[side];
  const begins = below === undefined || before === undefined
    ? side === "right" ? plan.width : 0
    : before.at + before.perY * (place.riser - below.riser);
  return {
    at: begins + bump * inch + perZ * reached,
    perY,
    perZ,
    gap: open ? 0 : fault[side === "left" ? "leftGap" : "rightGap"] * inch,
  };
};

/** The last value of a label that the functions printed of the stair. */
const printedValue = (cells: readonly (readonly unknown[])[], label: string, column: number): number =>
  Number(cells.filter((row) => row[column] === label).pop()?.[column + 1]);

const framed = (plan: Plan): House => {
  const { sizes, risers, run, faults: out } = plan;
  const inch = inchesPer[sizes.unit];
  const count = risers.reduce((sum, more) => sum + more, 0);
  const totalRise = plan.rise * count;
  const stair = [["unit", sizes.unit], ["total rise", totalRise], ["run", run], ["width", plan.width]];
  const turnOf = (index: number): string => (index + 1 < risers.length ? plan.turn : "");
  const table = [["flight", "risers", "turn"], ...risers.map((each, index) => [index + 1, each, turnOf(index)])];
  const unitRise = printedValue(cellsOf(FLIGHTS, { stair, flights: table }), "unit rise", 1);
  let floor = 0;
  let used = 0;
  const flights = risers.map((each, index): RoughFlight => {
    const own = printedValue(cellsOf(ONEFLIGHT, { stair, flights: table, number: index + 1 }), "total rise", 0);
    const [lowerBuildUp = 0, upperBuildUp = 0] = plan.buildUps.slice(index);
    const steps: RoughStep[] = [];
    while (steps.length < each) {
      const fault = out[used++ % out.length];
      if (fault === undefined) throw new Error("no fault was drawn");
      const up = steps.length + 1;
      const place = {
        riser: (up - 1) * run + fault.riser * inch,
        subTread: up === each ? floor + own - upperBuildUp : floor + up * unitRise - sizes.thickness + fault.subTread * inch,
      };
      const below = steps[steps.length - 1];
      const face = (side: Side): SkirtFace => skirtFace(plan, fault, side, place, below);
      steps.push({ ...place, skirts: { left: face("left"), right: face("right") } });
    }
    const flight = { floor, lowerBuildUp, upperBuildUp, steps };
    floor += own;
    return flight;
  });
  return { sizes, totalRise, flights };
};

const FEWEST = 3;
/** Straight flights and turns, in inches or in millimetres. */
export const houses = (unit: Unit): fc.Arbitrary<House> => {
  const by = inchesPer[unit];
  return fc
    .record({
      sizes: sizesIn(unit),
      risers: fc.oneof(
        fc.tuple(fc.integer({ min: FEWEST, max: 14 })),
        fc.tuple(fc.integer({ min: FEWEST, max: 9 }), fc.integer({ min: FEWEST, max: 9 })),
      ),
      turn: fc.constantFrom("quarter left", "quarter right", "half left", "half right"),
      rise: between(6.75 * by, 7.75 * by),
      run: chosen(unit, 9, 11),
      width: between(30 * by, 48 * by),
      buildUps: fc.tuple(chosen(unit, 0, 1), chosen(unit, 0, 1), chosen(unit, 0, 1)),
      faults: fc.array(faults, { minLength: 14, maxLength: 18 }),
    })
    .map(framed);
};
