import { type Length, measure, type Unit } from "../../solver/length/length";
import { isProblem, type Problem, problem } from "../../solver/problem";
import type { Stair } from "../../solver/layout/resolved-stair";
import { type PoleMark, storyPole } from "../../solver/layout/story-pole";
import type { Point } from "../figure";
import { box, closed, dimensionText, type Draft, type DraftMark, hatch, inside, line, note, outside, running } from "./draft";

/** A stair in plain numbers of its unit, with the heights its story pole has. */
interface Side {
  readonly unit: Unit;
  readonly marks: readonly PoleMark[];
  /** Finished treads over the lower floor, from the floor itself. */
  readonly heights: readonly number[];
  readonly rise: number;
  readonly run: number;
  readonly treads: number;
  readonly nosing: number;
  readonly tread: number;
  readonly total: number;
}

/** The landing nosing, from which an opening is measured. */
const landingNosing = ({ heights, run, nosing, total }: Side): Point => [(heights.length - 2) * run - nosing, total];

/** The finished steps from the foot of the first riser to the upper floor: risers plumb, each tread a nosing proud of its riser. */
const profile = ({ heights, run, nosing, tread, treads }: Side): Point[] => {
  const steps = heights.slice(1).flatMap((top, place): Point[] => {
    const face = place * run;
    return [[face, heights[place] ?? 0], [face, top - tread], [face - nosing, top - tread], [face - nosing, top]];
  });
  return [...steps, [treads * run, heights[heights.length - 1] ?? 0]];
};

const lengthOn = (value: Length | undefined, unit: Unit): number | undefined => (value === undefined ? undefined : measure(value, unit));

/** The floors, the upper one in section where its thickness is known. */
const floors = (side: Side, reach: number, left: number, thickness: number | undefined): DraftMark[] => {
  const { run, total, treads, rise } = side;
  const end = treads * run;
  const under = total - (thickness ?? 0);
  return [
    line("thick", [left, 0], [0, 0]),
    line("thin", [0, 0], [end + reach, 0]),
    hatch(box([left, -rise / 2], [end + reach, 0]), { apart: 3 }),
    line("thick", [end, total], [end + reach, total]),
    ...(thickness === undefined || thickness === 0 ? [] : [
      line("thick", [end, total], [end, under], [end + reach, under]),
      hatch(box([end, under], [end + reach, total]), { apart: 2 }),
    ]),
  ];
};

const POLE_PARTS = 0.12;

/** The story pole, its marks as they are scribed, each measured from the floor. */
const pole = (side: Side, left: number): DraftMark[] => {
  const { marks, unit, rise, total } = side;
  const wide = rise * POLE_PARTS * 2;
  return [
    closed("thin", ...box([left, 0], [left + wide, total])),
    ...marks.flatMap(({ mark }): DraftMark[] => {
      const high = measure(mark, unit);
      return [line("thick", [left, high], [left + wide, high])];
    }),
    ...marks.map(({ riser, mark }): DraftMark => {
      const high = measure(mark, unit);
      return running([left, 0], [left, high], high, `${riser}:`, "left");
    }),
    note([left + wide / 2, total + rise * 0.4], "story pole", "above"),
  ];
};

interface Overhead {
  readonly opening: number;
  readonly floor: number;
  readonly headroom: number;
  readonly says: string;
}

/** The opening there is, with the headroom found; or the one that is needed, with the headroom wanted. */
const overheadOf = (stair: Stair, unit: Unit): Overhead | undefined => {
  const [opening, floor, found] = [stair.opening, stair.floorThickness, stair.headroomFound].map((one) => lengthOn(one, unit));
  const [needed, wanted] = [stair.openingNeededFromTheLandingNosing, stair.headroom].map((one) => lengthOn(one, unit));
  if (floor === undefined) return undefined;
  if (opening !== undefined && found !== undefined) return { opening, floor, headroom: found, says: "opening there is" };
  if (needed !== undefined && wanted !== undefined) return { opening: needed, floor, headroom: wanted, says: "opening needed" };
  return undefined;
};

/** The floor over the stair from the far edge of the opening on, and the headroom under that edge. */
const overhead = (side: Side, { opening, floor, headroom, says }: Overhead, rows: number): DraftMark[] => {
  const { total, rise, run } = side;
  const nose = landingNosing(side);
  const edge = nose[0] - opening;
  const cut = edge - Math.max(run, floor * 1.2);
  const slab = box([cut, total - floor], [edge, total]);
  const foot: Point = [edge, total - floor - headroom];
  const isHeld = headroom > 0 && foot[1] > -rise / 2;
  return [
    line("thick", [cut, total], [edge, total], [edge, total - floor], [cut, total - floor]),
    hatch(slab, { apart: 2 }),
    outside("above", rows, [edge, total], nose, opening, says),
    inside([cut, total], [cut, total - floor], floor, "floor", -3),
    ...(isHeld ? [inside(foot, [edge, total - floor], headroom, "headroom")] : []),
  ];
};

const sideOf = (stair: Stair, unit: Unit): Side | Problem => {
  const { totalRise, risers, unitRise, run, treads } = stair;
  if (totalRise === undefined || risers === undefined || unitRise === undefined) return problem("no-total-rise");
  if (run === undefined || treads === undefined) return problem("no-run");
  const marks = storyPole(totalRise, risers, undefined, totalRise.times(0), unit);
  if (isProblem(marks)) return marks;
  return {
    unit, marks, treads,
    heights: [0, ...marks.map(({ height }) => measure(height, unit))],
    rise: measure(unitRise, unit), run: measure(run, unit), nosing: measure(stair.nosing, unit),
    tread: measure(stair.treadThickness, unit), total: measure(totalRise, unit),
  };
};

/** The nosing line, from the foot of the headroom where that stands before the first nosing. */
const nosingLine = (side: Side, from: number): DraftMark => {
  const { rise, run, nosing } = side;
  const at = (x: number): Point => [x, rise + ((x + nosing) * rise) / run];
  return line("dashed", at(Math.min(from, -nosing)), landingNosing(side));
};

const sizes = (side: Side): DraftMark[] => {
  const { rise, run, nosing, total, treads, heights } = side;
  const count = heights.length - 1;
  const end = treads * run;
  return [
    ...(treads === 0 ? [] : [
      outside("below", 0, [0, 0], [run, 0], run, "run"),
      outside("below", 1, [0, 0], [end, 0], treads * run, `${treads} runs, total run`),
    ]),
    outside("right", 0, [(count - 1) * run, total - rise], [end, total], rise, "rise"),
    outside("right", 1, [end, 0], [end, total], total, `${count} rises, total rise`),
    ...(nosing === 0 ? [] : [inside([-nosing, rise - side.tread], [0, rise - side.tread], nosing, "nosing", -4)]),
  ];
};

/** Where there is an opening and another headroom is wanted, what that asks for. */
const wantedSays = (stair: Stair, unit: Unit): string[] => {
  const [wanted, needed] = [stair.headroom, stair.openingNeededFromTheLandingNosing].map((one) => lengthOn(one, unit));
  if (stair.opening === undefined || wanted === undefined || needed === undefined) return [];
  return [`Wanted is a headroom of ${dimensionText(wanted, unit)}, which takes an opening of ${dimensionText(needed, unit)}.`];
};

/** A straight flight from the side, going up to the right, with its story pole; opening and headroom where they are known. */
export const stairElevation = (stair: Stair, unit: Unit): Draft | Problem => {
  const side = sideOf(stair, unit);
  if (isProblem(side)) return side;
  const { run, nosing, rise } = side;
  const over = overheadOf(stair, unit);
  const edge = over === undefined ? -nosing : landingNosing(side)[0] - over.opening;
  const reach = Math.max(run, 1.5 * rise);
  const poleAt = Math.min(-nosing, edge - (over === undefined ? 0 : Math.max(run, over.floor * 1.2))) - 2.5 * run;
  const isUnder = over !== undefined && edge < -nosing - run;
  return {
    title: "Stair elevation",
    says: `A flight of ${side.heights.length - 1} rises from the side, going up to the right, finished treads, with its story pole.`,
    unit,
    marks: [
      ...floors(side, reach, poleAt - run / 2, lengthOn(stair.floorThickness, unit)),
      line("thick", ...profile(side)),
      nosingLine(side, Math.max(edge, -nosing - run)),
      ...pole(side, poleAt),
      ...(over === undefined ? [] : overhead(side, over, 0)),
      ...sizes(side),
      ...(stair.pitch === undefined ? [] : [
        note([landingNosing(side)[0] / 2, (side.total + rise) / 2], `nosing line, pitch ${stair.pitch.toFixed(1)} degrees`, "left"),
      ]),
    ],
    notes: [
      "Rises and runs between finished treads and riser faces. Pole marks from the finished lower floor, " +
        `to the nearest ${unit === "in" ? "1/16 in" : "millimetre"}, finished tread to finished tread.`,
      ...(over === undefined
        ? ["Opening and headroom are drawn where opening or headroom is given with floor thickness."]
        : ["Opening level from the landing nosing; headroom plumb from the nosing line to the underside at the far edge."]),
      ...wantedSays(stair, unit),
      ...(isUnder ? ["The far edge lies before the foot of the stair: headroom there is over the floor, not over the nosing line."] : []),
    ],
  };
};
