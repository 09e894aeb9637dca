import { MARKS } from "../../src/functions/fit/marks";
import { NOTCH } from "../../src/functions/fit/notch";
import { RISERHEIGHT } from "../../src/functions/fit/riserheight";
import { RISERMARKS } from "../../src/functions/fit/risermarks";
import { EQUALIZE } from "../../src/functions/survey/equalize";
import { type Cells, cellsOf, printed } from "../functions/printed-rows";
import type { Printed } from "../functions/simulated-saw";
import { distance, type Point } from "../solver/fit/space";
import type { House, RoughFlight, RoughStep, Side, Sizes } from "./house";
import { way } from "./house";

/** What is read on a stair with a tape and a level, typed into the sheet, and what comes back printed. */

const RADIANS = Math.PI / 180;

export interface Tickets {
  /** What goes under each sub-tread. */
  readonly packing: readonly number[];
  readonly rises: readonly number[];
  readonly spread: number;
  /** Whether the sheet says that the spread asked for is reached. */
  readonly isWithin: boolean;
  readonly riserHeights: readonly number[];
  readonly notch: { readonly width: number; readonly height: number };
  readonly treads: readonly (readonly Printed[])[];
  readonly risers: readonly (readonly Printed[])[];
}

const column = ([headings = [], ...rows]: Cells, heading: string): readonly unknown[] =>
  rows.map((row) => row[headings.indexOf(heading)]);

const byStep = (cells: Cells, steps: number): readonly (readonly Printed[])[] => {
  const [headings = [], ...rows] = cells;
  const at = headings.indexOf("step");
  return Array.from({ length: steps }, (_, index) => printed([headings, ...rows.filter((row) => Number(row[at]) === index + 1)]));
};

/** A skirt's face at a place. */
export const skirtAt = ({ riser, subTread, skirts }: RoughStep, side: Side) => {
  const { at, perY, perZ } = skirts[side];
  return (y: number, z: number): number => at + perY * (y - riser) + perZ * (z - subTread);
};

/** Tops of the finished treads, the last one the floor or landing above: what lies on what, measured from the finished floor below. */
export const topsOf = ({ steps, upperBuildUp }: RoughFlight, packing: readonly number[], thickness: number): readonly number[] =>
  steps.map(({ subTread }, index) =>
    index + 1 === steps.length ? subTread + upperBuildUp : subTread + (packing[index] ?? 0) + thickness);

const between = (leftNear: Point, rightNear: Point, leftFar: Point, rightFar: Point): readonly number[] => [
  distance(leftNear, rightNear),
  distance(leftFar, rightFar),
  distance(leftNear, rightFar),
  distance(rightNear, leftFar),
];

/** Degrees that a face leans out, away from the piece, to the unit of `per`. */
const leaning = (side: Side, per: number): number => Math.atan(way(side) * per) / RADIANS;

const gapsOf = ({ skirts }: RoughStep): readonly (number | string)[] => [skirts.left.gap || "none", skirts.right.gap || "none"];

const treadReading = (flight: RoughFlight, index: number, underside: number, sizes: Sizes): readonly (number | string)[] => {
  const [step, behind] = [flight.steps[index], flight.steps[index + 1]];
  if (step === undefined || behind === undefined) throw new Error("no tread there");
  const back = behind.riser - (sizes.riserOn === "off" ? 0 : sizes.riserThickness);
  const front = step.riser - (sizes.riserOn === "both" ? sizes.riserThickness : 0);
  const [left, right] = [skirtAt(step, "left"), skirtAt(step, "right")];
  const on = (face: typeof left, y: number): Point => [face(y, underside), y, underside];
  return [
    index + 1, back - front, ...between(on(left, back), on(right, back), on(left, front), on(right, front)),
    leaning("left", step.skirts.left.perZ), leaning("right", step.skirts.right.perZ), ...gapsOf(step),
  ];
};

/** Read up the rough riser, from the tread or floor below to where the tread above will lie. */
const riserReading = (step: RoughStep, index: number, below: number, underside: number, cutHeight: number) => {
  const [left, right] = [skirtAt(step, "left"), skirtAt(step, "right")];
  const on = (face: typeof left, z: number): Point => [face(step.riser, z), step.riser, z];
  return [
    index + 1, underside - below, cutHeight,
    ...between(on(left, underside), on(right, underside), on(left, below), on(right, below)),
    // The face lies toward whoever comes up, against y.
    leaning("left", -step.skirts.left.perY), leaning("right", -step.skirts.right.perY), ...gapsOf(step),
  ];
};

export const ticketsOf = ({ sizes }: House, flight: RoughFlight): Tickets => {
  const { unit, thickness, lap } = sizes;
  const subTreads = [flight.floor - flight.lowerBuildUp, ...flight.steps.map(({ subTread }) => subTread)];
  const rough = subTreads.slice(1).map((top, index) => [top - (subTreads[index] ?? 0)]);
  const steps = flight.steps.length;
  const equalized = cellsOf(EQUALIZE, {
    roughRises: rough, treadThickness: thickness, lowerBuildUp: flight.lowerBuildUp, upperBuildUp: flight.upperBuildUp,
    spread: sizes.spread, unit,
  });
  const packing = column(equalized, "packing").slice(1, steps + 1).map(Number);
  const rises = column(equalized, "rise").slice(1, steps + 1).map(Number);
  const unitOf = (value: number): number | string => (unit === "mm" ? `${String(value)} mm` : value);
  const heights = cellsOf(RISERHEIGHT, {
    rise: rises.map((rise) => [unitOf(rise)]), treadThickness: unitOf(thickness), lap: unitOf(lap),
  }).map(([height]) => Number(height));
  const [notch = []] = cellsOf(NOTCH, {
    skirtThickness: unitOf(sizes.skirtThickness), runPast: unitOf(sizes.runPast), lap: unitOf(lap), clearance: unitOf(sizes.clearance),
  }).slice(-1);
  const tops = topsOf(flight, packing, thickness);
  const under = (index: number): number => (tops[index] ?? 0) - thickness;
  const shared = { openEnd: sizes.openEnd, undercut: sizes.undercut, unit };
  const treads = cellsOf(MARKS, {
    readings: [
      ["step", "run", "back", "front", "diagonal", "second diagonal", "left lean", "right lean", "left gap", "right gap"],
      ...flight.steps.slice(0, -1).map((_, index) => treadReading(flight, index, under(index), sizes)),
    ],
    nosing: sizes.nosing, overhang: sizes.overhang, returnWidth: sizes.returnWidth, thickness, riserOn: sizes.riserOn,
    riserThickness: sizes.riserThickness, backGap: sizes.backGap, ...shared,
  });
  const risers = cellsOf(RISERMARKS, {
    readings: [
      [
        "step", "height", "cut height", "top", "bottom", "diagonal", "second diagonal",
        "left flare", "right flare", "left gap", "right gap",
      ],
      ...flight.steps.map((step, index) =>
        riserReading(step, index, index === 0 ? flight.floor : (tops[index - 1] ?? 0), under(index), heights[index] ?? 0)),
    ],
    runPast: sizes.runPast, thickness: sizes.riserThickness, skirtThickness: sizes.skirtThickness, lap, clearance: sizes.clearance,
    ...shared,
  });
  return {
    packing, rises,
    spread: Number(column(equalized, "rise")[steps + 2]),
    isWithin: String(column(equalized, "note")[steps + 2]).startsWith("within"),
    riserHeights: heights,
    notch: { width: Number(notch[0]), height: Number(notch[1]) },
    treads: byStep(treads, steps - 1),
    risers: byStep(risers, steps),
  };
};
