import { DEGREES_PER_RADIAN, RADIANS_PER_DEGREE } from "../solver/degrees";
import { pieceFrame } from "../solver/fit/piece-frame";
import { returnMarks } from "../solver/fit/return-marks";
import { arcRadius } from "../solver/layout/arc-radius";
import { railBetweenNewels } from "../solver/layout/rail-between-newels";
import { skirt } from "../solver/layout/skirt";
import { stringer } from "../solver/layout/stringer";
import { winderTreads } from "../solver/layout/winder-treads";
import { isProblem } from "../solver/problem";
import { FLIGHTS_FIGURES, ONE_FLIGHT_FIGURES } from "./flight-figures";
import { dashed, distance, type Figure, line, type Mark, type Point, point, caption, shape, thin } from "./figure";

/** Sizes the figures are drawn at, in inches: a usual flight, drawn with its leans and laps large enough to see. */
const RISE = 7.5;
const RUN = 10;
const NOSING = 1.25;
const TREAD = 1;
const FLOOR = 0.75;
const along = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [ax + (bx - ax) * share, ay + (by - ay) * share];
const onCircle = (radius: number, degrees: number): Point => [
  radius * Math.cos(degrees * RADIANS_PER_DEGREE),
  radius * Math.sin(degrees * RADIANS_PER_DEGREE),
];
const arc = (radius: number, from: number, to: number): Point[] =>
  Array.from({ length: 41 }, (_, part) => onCircle(radius, from + ((to - from) * part) / 40));

/** The outline of finished steps: riser k at k - 1 runs, its tread a nosing proud of it. */
const steps = (count: number): Point[] =>
  Array.from({ length: count }, (_, step): Point[] => [
    [step * RUN, step * RISE],
    [step * RUN, (step + 1) * RISE - TREAD],
    [step * RUN - NOSING, (step + 1) * RISE - TREAD],
    [step * RUN - NOSING, (step + 1) * RISE],
    [(step + 1) * RUN, (step + 1) * RISE],
  ]).flat();

const noses = (count: number): Point[] => Array.from({ length: count }, (_, step): Point => [step * RUN - NOSING, (step + 1) * RISE]);

const FLIGHT = 4;
const first: Point = [-NOSING, RISE];
const last: Point = [(FLIGHT - 1) * RUN - NOSING, FLIGHT * RISE];

const layout: Figure = {
  says:
    "A flight from the side: total rise H, unit rise r, run g from nosing to nosing, nosing p, tread t, and the pitch of the line " +
    "through the nosings.",
  marks: [
    line([-14, 0], [0, 0], ...steps(FLIGHT), [FLIGHT * RUN + 6, FLIGHT * RISE]),
    dashed(...noses(FLIGHT)),
    distance([-12, 0], [-12, FLIGHT * RISE], "H"),
    distance([FLIGHT * RUN + 2, 3 * RISE], [FLIGHT * RUN + 2, FLIGHT * RISE], "r", 8),
    distance([RUN - NOSING, 2 * RISE], [2 * RUN - NOSING, 2 * RISE], "g", -14),
    distance([-NOSING, 0.35 * RISE], [0, 0.35 * RISE], "p", 4),
    distance([2.4 * RUN, 3 * RISE], [2.4 * RUN, 3 * RISE - TREAD], "t", -6),
    caption([2.2 * RUN - NOSING, 3.2 * RISE], "pitch", "left"),
  ],
};

const pitch: Figure = {
  says: "Pitch: the angle whose rise is r and whose run is g.",
  marks: [
    shape([0, 0], [RUN, 0], [RUN, RISE]),
    distance([0, 0], [RUN, 0], "g", 12),
    distance([RUN, RISE], [RUN, 0], "r", -12),
    caption([2.6, 0.75], "pitch", "right"),
  ],
};

const storyPole: Figure = {
  says: "A story pole: every mark k is measured from the floor, k times H over n, and never from the mark below.",
  marks: [
    shape([0, 0], [2, 0], [2, 32], [0, 32]),
    line([-6, 0], [14, 0]),
    ...[1, 2, 3, 4].flatMap((k) => [thin([0, k * RISE], [2, k * RISE]), caption([2, k * RISE], `mark ${k} = ${k}·H/n`, "right")]),
    distance([0, 0], [0, 2 * RISE], "2·H/n", -12),
  ],
};

const cutStringer: Figure = {
  says:
    "A cut stringer under finished treads: its length along the slope, the throat, which is the wood remaining under the cuts, the " +
    "drop at the foot by tread less floor, and the hang of its top level cut below the rough upper floor.",
  marks: (() => {
    const count = 4;
    const board = 11.25;
    const { throat } = stringer({
      rise: RISE,
      run: RUN,
      risers: count,
      boardWidth: board,
      treadThickness: TREAD,
      lowerBuildUp: FLOOR,
      upperBuildUp: FLOOR,
    });
    const cuts: Point[] = Array.from({ length: count - 1 }, (_, k): Point[] => [
      [k * RUN, (k + 1) * RISE - TREAD],
      [(k + 1) * RUN, (k + 1) * RISE - TREAD],
    ]).flat();
    const slope = Math.hypot(RISE, RUN);
    const under: Point = [(throat * RISE) / slope, (-throat * RUN) / slope];
    const lowInner: Point = [RUN, RISE - TREAD];
    const foot: Point = [0, -FLOOR];
    const top: Point = cuts[cuts.length - 1] ?? foot;
    const bottomAt = (x: number): number => lowInner[1] + under[1] + ((x - lowInner[0] - under[0]) * RISE) / RUN;
    const heel: Point = [lowInner[0] + under[0] + ((-FLOOR - lowInner[1] - under[1]) * RUN) / RISE, -FLOOR];
    return [
      shape(foot, ...cuts, [top[0], bottomAt(top[0])], heel),
      line([-8, -FLOOR], [RUN * 2, -FLOOR]),
      dashed([-8, 0], [0, 0]),
      line([top[0], top[1] + RISE + TREAD - FLOOR], [top[0] + 10, top[1] + RISE + TREAD - FLOOR]),
      distance([top[0] + 4, top[1] + RISE + TREAD - FLOOR], [top[0] + 4, top[1]], "hang", -8),
      distance(lowInner, [lowInner[0] + under[0], lowInner[1] + under[1]], "throat", 0),
      distance([-8, -FLOOR], [-8, 0], "a", -6),
      distance([0, RISE - TREAD], [0, RISE], "t", -8),
      caption([RUN * 1.2, RISE * 2.4], "length along the slope", "left"),
    ];
  })(),
};

const headroomFigure: Figure = {
  says:
    "Headroom h plumb from the line of the nosings to the underside at the far edge of an opening, floor F thick; the opening L is " +
    "level from the landing nosing.",
  marks: [
    line([-14, 0], [0, 0], ...steps(FLIGHT), [FLIGHT * RUN + 8, FLIGHT * RISE]),
    dashed([-14, RISE - (14 - NOSING) * (RISE / RUN)], last),
    shape([-14, FLIGHT * RISE], [-8, FLIGHT * RISE], [-8, FLIGHT * RISE - 6], [-14, FLIGHT * RISE - 6]),
    distance([-8, FLIGHT * RISE + 2], [last[0], FLIGHT * RISE + 2], "L"),
    distance([-8, FLIGHT * RISE - 6], [-8, RISE - (8 - NOSING) * (RISE / RUN)], "h", 8),
    distance([-16, FLIGHT * RISE], [-16, FLIGHT * RISE - 6], "F", 6),
    distance([last[0], FLIGHT * RISE - 8], [last[0] + NOSING, FLIGHT * RISE - 8], "p", 6),
  ],
};

const skirtFigure: Figure = {
  says:
    "A closed skirt shows m above the nosing line, square to it, and reaches down to the lowest back corner of a tread; plumb " +
    "ends, a level cut on the floor.",
  marks: (() => {
    const shows = 3;
    const found = skirt({
      rise: RISE,
      run: RUN,
      risers: FLIGHT,
      nosing: NOSING,
      treadThickness: TREAD,
      lowerBuildUp: 0,
      boardWidth: 10,
      shows,
      foot: 4,
      head: 4,
    });
    const slope = Math.hypot(RISE, RUN);
    const above: Point = [(-shows * RISE) / slope, (shows * RUN) / slope];
    const lift = (shows * slope) / RUN;
    const deep = (found.closedSkirtWidth * slope) / RUN;
    const at = (x: number): number => first[1] + ((x - first[0]) * RISE) / RUN + lift;
    const [from, to] = [first[0] - 4, last[0] + 4];
    const meets = from + ((deep - at(from)) * RUN) / RISE;
    return [
      shape([from, 0], [from, at(from)], [to, at(to)], [to, at(to) - deep], [meets, 0]),
      thin([0, 0], ...steps(FLIGHT)),
      dashed(first, last),
      line([from - 6, 0], [meets + 8, 0]),
      distance(along(first, last, 0.55), [along(first, last, 0.55)[0] + above[0], along(first, last, 0.55)[1] + above[1]], "m"),
      distance([from, -2], [first[0], -2], "foot", 6),
      distance([last[0], at(to) + 2], [to, at(to) + 2], "head", -4),
    ];
  })(),
};

const railFigure: Figure = {
  says:
    "The rail runs with the nosings, a plumb handrail height above them; its length is from the first nosing to the landing nosing " +
    "along the rake.",
  marks: [
    line([-6, 0], [0, 0], ...steps(FLIGHT), [FLIGHT * RUN + 6, FLIGHT * RISE]),
    dashed(first, last),
    line([first[0], first[1] + 18], [last[0], last[1] + 18]),
    distance([first[0], first[1]], [first[0], first[1] + 18], "handrail height", -6),
    distance([first[0], first[1] + 18], [last[0], last[1] + 18], "rail length", -10),
  ],
};

const railNewels: Figure = {
  says:
    "A rail between newels: each newel is placed by its centre, level behind the first nosing; the rail is cut between the faces, its " +
    "length along the rake, and its top meets a face at a height F over the lower floor, and T over the tread the newel stands on.",
  marks: (() => {
    const width = 3.5;
    const newels = [-5, 2 * RUN + 5];
    const flight = { rise: RISE, run: RUN, risers: FLIGHT, handrailHeight: 18 };
    const pieces = railBetweenNewels(newels.map((place) => ({ place, width })), flight);
    const [low, high] = [(newels[0] ?? 0) + width / 2, (newels[1] ?? 0) - width / 2];
    const piece = isProblem(pieces) ? undefined : pieces[0];
    const top = (behind: number, height: number | undefined): Point => [first[0] + behind, height ?? 0];
    const [from, to] = [top(low, piece?.from.heightOverTheLowerFloor), top(high, piece?.to.heightOverTheLowerFloor)];
    const post = (centre: number, foot: number, head: number): Mark => {
      const [left, right] = [first[0] + centre - width / 2, first[0] + centre + width / 2];
      return shape([left, foot], [right, foot], [right, head], [left, head]);
    };
    return [
      line([-14, 0], [0, 0], ...steps(FLIGHT), [FLIGHT * RUN + 6, FLIGHT * RISE]),
      post(newels[0] ?? 0, 0, from[1] + 2),
      post(newels[1] ?? 0, 3 * RISE, to[1] + 6),
      line(from, to),
      distance(from, to, "length", -10),
      distance([from[0], 0], [from[0], from[1]], "F", 4),
      distance([to[0], 3 * RISE], [to[0], to[1]], "T", -4),
      distance([first[0], -3], [first[0] + (newels[1] ?? 0), -3], "place", 8),
      thin([first[0], -4], first),
    ];
  })(),
};

const winders: Figure = {
  says:
    "Winders turn through A about a centre: depth is straight between nosings at radius R, the arc runs along the walkline; on " +
    "straight walls nosings are measured from the foot of the perpendicular.",
  marks: (() => {
    const [inner, width, walkline] = [6, 36, 12];
    const outer = inner + width;
    const wall = (degrees: number): Point =>
      degrees <= 45
        ? [outer, outer * Math.tan(degrees * RADIANS_PER_DEGREE)]
        : [outer * Math.tan((90 - degrees) * RADIANS_PER_DEGREE), outer];
    return [
      thin(...arc(inner, 0, 90)),
      dashed(...arc(inner + walkline, 0, 90)),
      line([outer, 0], [outer, outer], [0, outer]),
      ...[0, 30, 60, 90].map((degrees) => line(onCircle(inner, degrees), wall(degrees))),
      point([0, 0], "centre", "below"),
      distance([0, 0], onCircle(inner + walkline, 30), "R", 0),
      distance(onCircle(inner + walkline, 30), onCircle(inner + walkline, 60), "depth", 0),
      distance([outer, 0], wall(30), "w·tan θ", 14),
      caption(onCircle(inner + walkline, 78), "walkline", "above"),
    ];
  })(),
};

const winderTread: Figure = {
  says:
    "A kite winder from above, its nose toward you: every corner is measured along the nose from the centre of the turn and square back " +
    "from it; the blank, dashed, takes it with the grain along the nose, and reaches back under the next nosing, drawn thin.",
  marks: (() => {
    const [reach, inner] = [42, 6];
    const found = winderTreads({
      winders: 3, turn: 90, innerRadius: inner, width: reach - inner, nosing: 2, strings: "straight", newel: 0,
    });
    const kite = isProblem(found) ? undefined : found[1];
    const places = (kite?.corners ?? []).map(({ corner, along, back }) => ({ corner, at: [along, back] as Point }));
    const atCorner = (name: string): Point => places.find(({ corner }) => corner === name)?.at ?? [0, 0];
    const [narrow, wide, walls] = ["nose, narrow end", "nose, wide end", "corner of the walls"].map(atCorner) as [Point, Point, Point];
    const [wideBack, narrowBack] = ["back edge, wide end", "back edge, narrow end"].map(atCorner) as [Point, Point];
    const { from, length, depth } = kite?.blank ?? { from: 0, length: 0, depth: 0 };
    const turned = Math.atan2(narrowBack[1], narrowBack[0]) * DEGREES_PER_RADIAN;
    return [
      line(narrow, wide, walls, wideBack, narrowBack, ...arc(inner, turned, 0)),
      dashed([from, 0], [from + length, 0], [from + length, depth], [from, depth], [from, 0]),
      dashed([0, 0], narrow),
      thin(onCircle(inner, 30), onCircle(reach / Math.cos(30 * RADIANS_PER_DEGREE), 30)),
      point([0, 0], "centre", "below"),
      point(wide, "nose, wide end", "below"),
      point(walls, "corner of the walls", "left"),
      point(wideBack, "back edge, wide end", "above"),
      caption([from, depth], "blank", "left"),
      distance([0, 0], [walls[0], 0], "along", 24),
      distance([walls[0], 0], walls, "back", -10),
      caption([reach * 0.68, depth * 0.12], "grain along the nose", "above"),
    ];
  })(),
};

const startingStepFigure = (end: "half round" | "quarter round"): Figure => ({
  says:
    `A starting step with a ${end} end from above, its front toward you: the riser on its face from the wall skirt along the front, ` +
    `round the end of radius ρ, and ${end === "half round" ? "back to the second riser's end" : "straight to the second riser's line"}, ` +
    "standing E past the open skirt; the tread, dashed, a nosing p further.",
  marks: (() => {
    const [width, past, runPast] = [18, 9, 1];
    const [far, radius, half] = [width + past, RUN / 2, end === "half round"];
    const round = (size: number): Point[] => arc(size, -90, half ? 90 : 0).map(([x, y]) => [far - radius + x, radius + y]);
    const [face, edge] = [round(radius), round(radius + NOSING)];
    const back: Point[] = half ? [[width + runPast, RUN + NOSING]] : [[far + NOSING, RUN], [width + runPast, RUN]];
    const foot = onCircle(radius, -35);
    const rim: Point = [far - radius + foot[0], radius + foot[1]];
    return [
      line([0, 0], ...face, half ? [width + runPast, RUN] : [far, RUN]),
      line([0, RUN], [width + runPast, RUN]),
      dashed([0, -NOSING], ...edge, ...back),
      line([0, -4], [0, RUN + 8]),
      shape([width - 0.75, RUN], [width, RUN], [width, RUN + 8], [width - 0.75, RUN + 8]),
      thin([width, RUN], [width, -4]),
      distance([0, -4], [width, -4], "width", 0),
      distance([width, -4], [far, -4], "E", 0),
      distance([far - radius, radius], rim, "ρ", 0),
      distance([4, 0], [4, RUN], "run", 0),
      distance([9, -NOSING], [9, 0], "p", 0),
      distance([width, RUN + 4], [width + runPast, RUN + 4], "", 0),
      caption([width + runPast, RUN + 4], "run past", "right"),
      caption([0, RUN + 5], "wall skirt", "right"),
      caption([width - 0.75, RUN + 6], "open skirt", "left"),
      caption([11, RUN], "second riser", "above"),
    ];
  })(),
});

const balusters: Figure = {
  says: "Balusters w wide with equal gaps in a clear opening S, a gap at either end.",
  marks: (() => {
    const [count, width, gap] = [4, 1.25, 3.5];
    const clear = count * width + (count + 1) * gap;
    const left = (index: number): number => gap + index * (width + gap);
    return [
      line([-2, 0], [clear + 2, 0]),
      line([-2, 14], [clear + 2, 14]),
      shape([-2, 0], [0, 0], [0, 14], [-2, 14]),
      shape([clear, 0], [clear + 2, 0], [clear + 2, 14], [clear, 14]),
      ...Array.from({ length: count }, (_, index) =>
        shape([left(index), 0], [left(index) + width, 0], [left(index) + width, 14], [left(index), 14]),
      ),
      distance([0, -1], [clear, -1], "S", 6),
      distance([0, 6], [gap, 6], "gap", 0),
      distance([left(1), 15], [left(1) + width, 15], "w", -4),
    ];
  })(),
};

const treadBalustersFigure: Figure = {
  says:
    "Balusters on a tread: the first is flush with the riser face below, the others a like distance on, so that the level gap is the " +
    "same from tread to tread; length on the centre, from the tread to the underside of the rail, long point at the face up the stair.",
  marks: (() => {
    const [width, perTread, under] = [1.25, 2, 14];
    const apart = RUN / perTread;
    const railAt = (x: number): number => RISE + under + ((x + NOSING) * RISE) / RUN;
    const count = 2 * perTread;
    return [
      line([-6, 0], [0, 0], ...steps(2), [2 * RUN + 4, 2 * RISE]),
      line([-NOSING - 3, railAt(-NOSING - 3)], [2 * RUN + 2, railAt(2 * RUN + 2)]),
      ...Array.from({ length: count }, (_, index) => {
        const x = index * apart;
        const foot = RISE * (Math.floor(index / perTread) + 1);
        return shape([x, foot], [x + width, foot], [x + width, railAt(x + width)], [x, railAt(x)]);
      }),
      distance([0, RISE - 2.5], [apart + width / 2, RISE - 2.5], "centre", 4),
      distance([width, RISE + 6], [apart, RISE + 6], "gap", 0),
      distance([apart + width / 2, RISE], [apart + width / 2, railAt(apart + width / 2)], "length", 10),
      distance([width / 2, railAt(width / 2)], [apart + width / 2, railAt(apart + width / 2)], "rake", -8),
    ];
  })(),
};

const arcFigure: Figure = {
  says: "An arc over a chord, its rise at the middle, and the radius to the centre.",
  marks: (() => {
    const [chord, rise] = [24, 6];
    const radius = arcRadius(chord, rise);
    const half = Math.asin(chord / 2 / radius) * DEGREES_PER_RADIAN;
    const moved = ([x, y]: Point): Point => [x, y - (radius - rise)];
    return [
      line(...arc(radius, 90 + half, 90 - half).map(moved)),
      distance([-chord / 2, 0], [chord / 2, 0], "chord", 8),
      distance([0, 0], [0, rise], "rise", -4),
      dashed([0, rise - radius], [chord / 2, 0]),
      point([0, rise - radius], "centre", "below"),
      caption(along([0, rise - radius], [chord / 2, 0], 0.5), "radius", "right"),
    ];
  })(),
};

const finished: Figure = {
  says:
    "Rough rises run from sub-tread to sub-tread; the first finished rise gains the tread t and loses the lower floor a, the last " +
    "gains the upper floor b and loses the tread.",
  marks: [
    line([-8, 0], [0, 0], [0, RISE], [RUN, RISE], [RUN, 2 * RISE], [2 * RUN, 2 * RISE], [2 * RUN, 3 * RISE], [2 * RUN + 12, 3 * RISE]),
    shape([-NOSING, RISE], [RUN, RISE], [RUN, RISE + TREAD], [-NOSING, RISE + TREAD]),
    shape([RUN - NOSING, 2 * RISE], [2 * RUN, 2 * RISE], [2 * RUN, 2 * RISE + TREAD], [RUN - NOSING, 2 * RISE + TREAD]),
    shape([-8, 0], [0, 0], [0, FLOOR], [-8, FLOOR]),
    shape([2 * RUN, 3 * RISE], [2 * RUN + 12, 3 * RISE], [2 * RUN + 12, 3 * RISE + FLOOR], [2 * RUN, 3 * RISE + FLOOR]),
    distance([-6, 0], [-6, RISE], "rough 1", 10),
    distance([-4, FLOOR], [-4, RISE + TREAD], "first", -4),
    distance([2 * RUN + 4, 2 * RISE + TREAD], [2 * RUN + 4, 3 * RISE + FLOOR], "last", -4),
    caption([6, RISE + TREAD], "t", "above"),
    caption([-8, FLOOR], "a", "above"),
    caption([2 * RUN + 12, 3 * RISE + FLOOR], "b", "above"),
  ],
};

const equalize: Figure = {
  says:
    "Packing under sub-tread k raises rise k and lowers rise k + 1 by as much; a floor that comes up lowers the first rise, or raises " +
    "the last.",
  marks: [
    line([-10, 0], [0, 0], [0, 6.6], [RUN, 6.6], [RUN, 15], [2 * RUN, 15], [2 * RUN, 22.4], [2 * RUN + 10, 22.4]),
    shape([0, 6.6], [RUN, 6.6], [RUN, 7.5], [0, 7.5]),
    dashed([-NOSING, 7.5], [RUN, 7.5]),
    distance([RUN, 6.6], [RUN, 7.5], "packing k", 10),
    distance([-2, 0], [-2, 7.5], "rise k", -4),
    distance([RUN + 3, 7.5], [RUN + 3, 15], "rise k + 1", 12),
    dashed([-10, 2.4], [0, 2.4]),
    distance([-9, 0], [-9, 2.4], "lower more", 6),
    dashed([2 * RUN, 24.9], [2 * RUN + 10, 24.9]),
    distance([2 * RUN + 1, 22.5], [2 * RUN + 1, 24.9], "upper more", 6),
  ],
};

const packingFigure: Figure = {
  says: "A straightedge over stringers: the gap under it at each point is packed, and a middle stringer is left a setback c lower.",
  marks: [
    line([0, 0], [30, 0]),
    shape([1, -0.2], [3, -0.2], [3, -6], [1, -6]),
    shape([14, -2.2], [16, -2.2], [16, -6], [14, -6]),
    shape([27, -1.2], [29, -1.2], [29, -6], [27, -6]),
    distance([14, 0], [14, -2.2], "gap", 8),
    dashed([11, -0.6], [19, -0.6]),
    caption([19, -0.8], "c", "right"),
    caption([29, 0], "straightedge", "above"),
  ],
};

const leanFigure: Figure = {
  says:
    "A skirt that is off square to the sub-tread by an offset over a height leans by the angle between; positive leans away from " +
    "the piece, whose face is then longer than its underside.",
  marks: [
    dashed([0, 0], [0, 12]),
    line([0, 0], [-3, 12]),
    shape([0, 0], [16, 0], [16, 1], [-0.25, 1]),
    distance([-3, 12], [0, 12], "offset", -6),
    distance([3, 0], [3, 12], "height", -6),
    caption([-0.8, 5], "lean", "left"),
    caption([9, 1], "face longer", "above"),
  ],
};

const tread: Figure = {
  says:
    "A tread from above: back BL to BR along the riser face, front FL to FR on the edge of the sub-tread a run M away, both " +
    "diagonals, the piece carried on to its depth D; a mitred return on the right, its toe measured along the nose from the " +
    "finished nose corner at the wall, its heel from the finished wall end on a line the return's width w behind the nose.",
  marks: (() => {
    const [distanceRead, depth, back, s, farRight] = [10, 14, 36, 1.5, 38];
    const carried = (x: number, from: number, to = depth): number => from + ((x - from) * to) / distanceRead;
    const [leftNose, rightNose] = [carried(s, 0), carried(farRight, back)];
    const angleOf = (out: number): number => Math.atan2(out, distanceRead) * DEGREES_PER_RADIAN;
    const width = 2.5;
    const found = returnMarks(
      angleOf(farRight - back),
      angleOf(-s),
      { back, front: rightNose - leftNose },
      { depth, overhang: width, returnWidth: width, backGap: 0 },
    );
    const [toe, heel] = [leftNose + found.toe, leftNose + found.heel];
    const hook = carried(s, 0, depth - width);
    return [
      shape([0, 0], [back, 0], [rightNose, -depth], [leftNose, -depth]),
      thin([s, -distanceRead], [farRight, -distanceRead]),
      dashed([0, 0], [farRight, -distanceRead]),
      dashed([back, 0], [s, -distanceRead]),
      line([rightNose, -depth], [toe, -depth], [toe - (rightNose - back), 0]),
      thin([toe, -depth], [heel, -depth + width]),
      point([0, 0], "BL"),
      point([back, 0], "BR"),
      point([s, -distanceRead], "FL", "left"),
      point([farRight, -distanceRead], "FR", "left"),
      point([toe, -depth], "toe", "right"),
      point([heel, -depth + width], "heel", "right"),
      distance([back * 0.45, 0], [back * 0.45, -distanceRead], "M", -8),
      distance([-3, 0], [-3, -depth], "D", 8),
      distance([hook, -depth + width], [heel, -depth + width], "", 0),
      caption([back * 0.45, -depth + width], "heel at the hook", "below"),
      distance([leftNose, -depth], [toe, -depth], "toe", 14),
      caption([s / 2, -distanceRead / 2], "left angle", "right"),
    ];
  })(),
};

const taperedTread: Figure = {
  says:
    "A tapered step as its piece lies at the saw, nose level: left run ML and right run MR are square to the riser behind, left " +
    "depth DL and right depth DR square to the nose; the blank is ripped to the larger, and its back is scribed from one to the other.",
  marks: (() => {
    // As read: back line level, runs of 8 and 12, the front turned by what they differ.
    const read = { leftDistance: 8, rightDistance: 12, near: 36, farLeft: -0.5, farRight: 37 };
    const { left, right, distance: front, nearSlope } = pieceFrame({
      ...read, closure: undefined, closedBy: undefined, isFarByAngles: false, unused: [],
    });
    const to = front + 2 * NOSING;
    const [nl, nr]: readonly [Point, Point] = [[-to * left.slope, -to], [right.at + (to - right.ahead) * right.slope, -to]];
    const [fl, fr]: readonly [Point, Point] = [[-front * left.slope, -front], [right.at + (front - right.ahead) * right.slope, -front]];
    const [bl, br]: readonly [Point, Point] = [[0, 0], [right.at, -right.ahead]];
    // From a front corner square to the back line.
    const foot = ([x, y]: Point): Point => {
      const at = (x - nearSlope * y) / (1 + nearSlope * nearSlope);
      return [at, -nearSlope * at];
    };
    return [
      shape(bl, br, nr, nl),
      thin(fl, fr),
      dashed([-6, 0], bl),
      dashed(br, [br[0] + 7, br[1]]),
      distance(fl, foot(fl), "ML", 0),
      distance(fr, foot(fr), "MR", 0),
      distance([bl[0] - 4, nl[1]], [bl[0] - 4, bl[1]], "DL", 0),
      distance([br[0] + 5, nr[1]], [br[0] + 5, br[1]], "DR", 0),
      caption(along(nl, nr, 0.5), "nose", "below"),
      caption(along(bl, br, 0.5), "back, scribed", "above"),
    ];
  })(),
};

const riser: Figure = {
  says: "A riser from the front: top TL to TR, bottom BL to BR a height M below, both diagonals, and the end run past the open skirt by q.",
  marks: [
    shape([0, 0], [36, 0], [37, -7.5], [0.8, -7.5]),
    dashed([0, 0], [37, -7.5]),
    dashed([36, 0], [0.8, -7.5]),
    line([36, 0], [37.5, 0], [38.5, -7.5], [37, -7.5]),
    point([0, 0], "TL"),
    point([36, 0], "TR"),
    point([0.8, -7.5], "BL", "below"),
    point([37, -7.5], "BR", "below"),
    distance([-2, 0], [-2, -7.5], "M", 6),
    distance([36, 1], [37.5, 1], "q", -10),
  ],
};

const notchFigure: Figure = {
  says: "The notch in a riser's lower corner at the open end: as wide as skirt, run past and clearance, as high as lap and clearance.",
  marks: [
    line([0, 7], [20, 7], [20, 1.5], [16.5, 1.5], [16.5, 0], [0, 0], [0, 7]),
    distance([16.5, 0], [20, 0], "width", 10),
    distance([16.5, 0], [16.5, 1.5], "height", -10),
    caption([8, 4], "riser from the front", "above"),
  ],
};

const riserHeight: Figure = {
  says: "A riser stands from what it laps of the tread below to the underside of the tread above: rise less tread plus lap.",
  marks: [
    shape([-NOSING, -TREAD], [RUN, -TREAD], [RUN, 0], [-NOSING, 0]),
    shape([RUN, -0.5], [RUN + 0.75, -0.5], [RUN + 0.75, RISE - TREAD], [RUN, RISE - TREAD]),
    shape([RUN - NOSING, RISE - TREAD], [2 * RUN, RISE - TREAD], [2 * RUN, RISE], [RUN - NOSING, RISE]),
    distance([RUN - 4, 0], [RUN - 4, RISE], "r", 6),
    distance([RUN + 4, RISE - TREAD], [RUN + 4, -0.5], "height", -6),
    distance([RUN + 2, 0], [RUN + 2, -0.5], "lap", -4),
  ],
};

const bevelFigure: Figure = {
  says: "A back bevel: the face meets, the back stands open by thickness times the tangent of the bevel.",
  marks: [
    shape([0, 0], [12, 0], [12, 4], [1.4, 4]),
    dashed([0, 0], [0, 4]),
    distance([0, 4], [1.4, 4], "opening", -8),
    distance([12, 0], [12, 4], "thickness", -14),
    caption([0.4, 1.6], "bevel", "right"),
  ],
};

const gapFigure: Figure = {
  says: "An end cut short and off its angle: the gap at the back and the gap at the front of the tread.",
  marks: [
    line([0, 2], [0, -14]),
    shape([1.5, 0], [20, 0], [20, -12], [0.4, -12]),
    distance([0, 0], [1.5, 0], "back", -8),
    distance([0, -12], [0.4, -12], "front", 8),
    distance([20, 0], [20, -12], "depth", -8),
  ],
};

const holdingTheTape: Figure = {
  says:
    "Three ways of holding the tape, seen from the side: off, from the rough riser to the edge of the sub-tread; behind, from the " +
    "finished riser behind to that edge; both, from the finished riser behind to the face of the one in front. The finished tread " +
    "lies between the finished riser behind and its nosing.",
  marks: (() => {
    // The stair goes up to the left; the tread read lies in the middle. Rough faces at 0 and at the sub-tread's edge, a riser thick each
    // way.
    const [run, thick, sub] = [10, 1.2, 1];
    const edge = run;
    return [
      line([-6, 7], [0, 7], [0, 0], [edge, 0], [edge, -6]),
      thin([-6, 7 - sub], [-1, 7 - sub], [-1, -sub], [edge - 1, -sub], [edge - 1, -6]),
      shape([0, 0.1], [thick, 0.1], [thick, 6], [0, 6]),
      shape([edge, -6], [edge + thick, -6], [edge + thick, 0], [edge, 0]),
      dashed([thick, 0.1], [edge + thick + NOSING, 0.1], [edge + thick + NOSING, TREAD + 0.1], [thick, TREAD + 0.1]),
      distance([0, 3], [edge, 3], "off", 0),
      distance([thick, 4.6], [edge, 4.6], "behind", 0),
      distance([thick, 6.2], [edge + thick, 6.2], "both", 0),
      thin([edge, 0], [edge, 5]),
      thin([edge + thick, 0], [edge + thick, 6.6]),
      caption([edge + thick + NOSING, TREAD / 2], "tread", "right"),
      caption([edge + thick / 2, -6], "riser in front", "below"),
      caption([edge - 1, -4], "sub-tread", "left"),
      caption([-1, 3], "rough riser", "left"),
    ];
  })(),
};

/** A piece between two skirts, seen from its nose or its bottom: one leans or flares away, the other comes in over it. */
const settings = (nose: string, other: string): Figure => ({
  says:
    `What left set and right set say. From above, ${nose} toward you: the near end of the blade's path swings left or right of ` +
    `square. From the ${nose}, face up: where the blade leans away from the piece the face is longer, where it leans over the piece ` +
    `the ${other} is longer.`,
  marks: [
    shape([0, 0], [36, 0], [38, -8], [-1.5, -8]),
    dashed([0, 0], [0, -10]),
    dashed([36, 0], [36, -10]),
    caption([-1.8, -9], "left", "left"),
    caption([38.4, -9], "right", "right"),
    caption([18, -5], `face up, ${nose} toward you`, "above"),
    shape([0, -17], [36, -17], [38, -13.5], [1.6, -13.5]),
    dashed([0, -17], [0, -12.5]),
    dashed([36, -17], [36, -12.5]),
    caption([1.2, -18.6], `${other} longer`, "right"),
    caption([36.8, -12.6], "face longer", "left"),
  ],
});

/** The tape's hook: a bar across its end. */
const hookAt = ([x, y]: Point): Mark => line([x, y - 0.7], [x, y + 0.7]);

const treadMarks: Figure = {
  says:
    "The marks of a tread from above, nose toward you, one end at a wall and the other open: the toe along the nose and the back along " +
    "the back edge, each hooked on its own corner, the heel on a line gauged the return's width behind the nose; dashed, the checks from " +
    "mark to mark and both diagonals; beside it the return, outer edge toward you, with the saw scale's mitre.",
  marks: (() => {
    const [deep, width, angle] = [11, 2, -3];
    const wall = (y: number): number => -y * Math.tan(angle * RADIANS_PER_DEGREE) - deep * Math.tan(-angle * RADIANS_PER_DEGREE);
    const [toe, heel, back]: readonly [Point, Point, Point] = [[38, -deep], [35.9, -deep + width], [35.5, 0]];
    const [noseCorner, backCorner]: readonly [Point, Point] = [[wall(-deep), -deep], [wall(0), 0]];
    return [
      shape(backCorner, back, heel, toe, noseCorner),
      thin([wall(-deep + width), -deep + width], [38, -deep + width]),
      ...[noseCorner, backCorner].map(hookAt),
      hookAt([wall(-deep + width), -deep + width]),
      distance([noseCorner[0], -deep - 2], [toe[0], -deep - 2], "toe", 12),
      distance([wall(-deep + width), -deep + width + 2.4], [heel[0], -deep + width + 2.4], "heel", 1),
      distance([backCorner[0], 1.5], [back[0], 1.5], "back", -8),
      dashed(noseCorner, back),
      dashed(backCorner, toe),
      caption([38, -deep + width], "gauge", "right"),
      point(toe, "", "right"),
      point(heel, "", "right"),
      point(back, "", "right"),
      caption([17.5, -2.6], "face up, nose toward you"),
      shape([24, -18.5], [22, -20.5], [36, -20.5], [36, -18.5]),
      caption([29, -20.5], "return, outer edge toward you", "below"),
    ];
  })(),
};

const riserMarks: Figure = {
  says:
    "The marks of a riser, face up and bottom toward you, its right end open: top and bottom hooked on the finished left end, both " +
    "diagonals dashed, the notch along the bottom and up the end, and the stretch of the top that stays unbevelled behind.",
  marks: [
    line([0.6, 0], [36.5, 0], [36.9, -6.4], [34.4, -6.4], [34.5, -7.5], [0, -7.5], [0.6, 0]),
    hookAt([0.6, 0]),
    hookAt([0, -7.5]),
    distance([0.6, 3.4], [36.5, 3.4], "top", -8),
    distance([0, -9.5], [37, -9.5], "bottom", 12),
    thin([34.5, -7.5], [37, -7.5], [36.9, -6.4]),
    dashed([0.6, 0], [37, -7.5]),
    dashed([0, -7.5], [36.5, 0]),
    dashed([0.6, -0.5], [33.8, -0.5], [34.2, 0]),
    distance([34.2, 1.2], [36.5, 1.2], "unbevelled", -8),
    caption([37.4, -6.8], "notch", "right"),
  ],
};

/** Two skirts from above, drawn with their waves and taper large enough to see: where they stand at each run up the stair. */
const leftSkirt = (along: number): Point => [1.2 * Math.sin(along / 14), along];
const rightSkirt = (along: number): Point => [34 + along / 12 + Math.sin(along / 9), along];
const skirtsUpTo = (end: number) => {
  const places = Array.from({ length: 41 }, (_, part) => (end * part) / 40);
  return [line(...places.map(leftSkirt)), line(...places.map(rightSkirt))];
};

const misreadFigure: Figure = {
  says:
    "Two skirts from above, which bend slowly: the lengths of all steps end on them, but one front, drawn heavy, runs on past the " +
    "skirt. Its likely length is the one that ends on the skirt.",
  marks: (() => {
    const [end, wrong] = [40, 20];
    const [from, to] = [leftSkirt(wrong), rightSkirt(wrong)];
    const past: Point = [to[0] + 3, wrong];
    return [
      ...skirtsUpTo(end),
      ...[0, 10, 30, 40].map((along) => thin(leftSkirt(along), rightSkirt(along))),
      line(from, past),
      distance(from, past, "read", -10),
      distance(from, to, "likely", 10),
      dashed(leftSkirt(40), rightSkirt(30)),
      dashed(rightSkirt(40), leftSkirt(30)),
      caption(leftSkirt(6), "left skirt", "left"),
      caption(rightSkirt(6), "right skirt", "right"),
    ];
  })(),
};

const nextStepFigure: Figure = {
  says:
    "Two skirts from above: steps read so far in full lines, the next one dashed where the skirts run on, with its back, its front " +
    "and the give or take.",
  marks: (() => {
    const [read, front, back] = [30, 30, 40];
    const spread = 0.8;
    const band = (side: typeof leftSkirt, sign: number) => dashed(side(read), [side(back)[0] + sign * spread, back]);
    return [
      ...skirtsUpTo(read),
      ...[0, 10, 20, 30].map((along) => thin(leftSkirt(along), rightSkirt(along))),
      ...[-1, 1].flatMap((sign) => [band(leftSkirt, sign), band(rightSkirt, sign)]),
      dashed(leftSkirt(back), rightSkirt(back)),
      distance(leftSkirt(back), rightSkirt(back), "back", -8),
      distance(leftSkirt(front), rightSkirt(front), "front", 8),
      caption(leftSkirt(10), "read", "left"),
      caption([rightSkirt(back)[0] + spread, back], "give or take", "right"),
    ];
  })(),
};

/** Plain figures for each geometric function, by its name. */
export const FIGURES: Readonly<Record<string, readonly Figure[]>> = {
  LAYOUT: [layout],
  PITCH: [pitch],
  STORYPOLE: [storyPole],
  STRINGER: [cutStringer],
  OPENING: [headroomFigure],
  HEADROOM: [headroomFigure],
  SKIRT: [skirtFigure],
  RAIL: [railFigure, railNewels],
  FLIGHTS: FLIGHTS_FIGURES,
  ONEFLIGHT: ONE_FLIGHT_FIGURES,
  WINDERS: [winders],
  WINDERTREADS: [winderTread],
  STARTINGSTEP: [startingStepFigure("half round"), startingStepFigure("quarter round")],
  BALUSTERS: [balusters],
  TREADBALUSTERS: [treadBalustersFigure],
  ARC: [arcFigure],
  FINISHED: [finished],
  EQUALIZE: [equalize],
  PACKING: [packingFigure],
  LEAN: [leanFigure],
  TREADFIT: [tread, taperedTread, holdingTheTape, settings("nose", "underside")],
  RISERFIT: [riser, settings("bottom", "back")],
  MARKS: [treadMarks, settings("nose", "underside"), taperedTread],
  RISERMARKS: [riserMarks, settings("bottom", "back")],
  MISREAD: [misreadFigure],
  NEXTSTEP: [nextStepFigure],
  NOTCH: [notchFigure],
  RISERHEIGHT: [riserHeight],
  RELIEF: [bevelFigure],
  BEVEL: [bevelFigure],
  GAP: [gapFigure],
};
