import { RADIANS_PER_DEGREE } from "../degrees";
import { type Problem, problem } from "../problem";

/** A point of a winder tread: along its nose from the centre of the turn, and square back from the nose. */
export interface WinderPoint {
  readonly along: number;
  readonly back: number;
}

export type WinderCornerName =
  | "nose, narrow end" | "nose, wide end" | "corner of the walls" | "back edge, wide end" | "back edge, narrow end" | "corner of the newel";

export interface WinderCorner extends WinderPoint {
  readonly corner: WinderCornerName;
}

/** One tread of a turn; lengths in one unit. */
export interface WinderTread {
  /** Corners in the order in which the edges join them, from the narrow end of the nose along it. */
  readonly corners: readonly WinderCorner[];
  /** From nosing to nosing; round the corner of the newel where one stands between. */
  readonly narrowEnd: number;
  readonly roundsTheNewel: boolean;
  /** Where the board begins along the nose, and its size: length along the nose, depth square to it. */
  readonly blank: { readonly from: number; readonly length: number; readonly depth: number };
}

export interface WinderTreadsGiven {
  readonly winders: number;
  readonly turn: number;
  readonly innerRadius: number;
  readonly width: number;
  readonly nosing: number;
  readonly strings: "round" | "straight";
  /** Side of a square newel that stands on the centre, square to both flights; 0 for none. */
  readonly newel: number;
}

export type WinderTreadsProblem =
  | "straight-strings-past-half-turn" | "winder-past-a-quarter" | "nosing-past-the-narrow-end" | "newel-not-square" | "newel-thin"
  | "newel-fills-the-turn";

const QUARTER = 90;
const HALF_TURN = 180;
/** Angles closer than this are one angle. */
const SAME_ANGLE = 1e-9;

/** What bounds one end of the treads, seen from the nose of one of them; angles in radians from that nose. */
interface End {
  /** Where a line leaves it that runs out at an angle, moved back square to itself. */
  readonly left: (angle: number, moved: number) => WinderPoint;
  readonly corners: readonly { readonly angle: number; readonly away: number }[];
  readonly isRound: boolean;
}

const at = (angle: number, away: number): WinderPoint => ({ along: away * Math.cos(angle), back: away * Math.sin(angle) });

const moved = (from: WinderPoint, angle: number, by: number): WinderPoint => ({
  along: from.along + by * Math.cos(angle),
  back: from.back + by * Math.sin(angle),
});

const roundEnd = (radius: number): End => ({
  left: (angle, back) => moved(at(angle + Math.PI / 2, back), angle, Math.sqrt(radius ** 2 - back ** 2)),
  corners: [],
  isRound: true,
});

/** Straight faces, each as far from the centre, by the angles their perpendiculars stand at. */
const facedEnd = (away: number, perpendiculars: readonly number[], corners: End["corners"]): End => ({
  left: (angle, back) => {
    const from = at(angle + Math.PI / 2, back);
    const reach = perpendiculars.flatMap((perpendicular) => {
      const towards = Math.cos(perpendicular - angle);
      if (towards < SAME_ANGLE) return [];
      return [(away - from.along * Math.cos(perpendicular) - from.back * Math.sin(perpendicular)) / towards];
    });
    return moved(from, angle, Math.min(...reach));
  },
  corners,
  isRound: false,
});

/** Two walls, each square to its flight, that meet half way round. */
const wallsEnd = (away: number, turn: number, turned: number): End =>
  facedEnd(away, [-turned, turn - turned], [{ angle: turn / 2 - turned, away: away / Math.cos(turn / 2) }]);

/** A square newel on the centre: four faces, and its corners as often as a whole turn and a nosing may pass them. */
const newelEnd = (side: number, turned: number): End =>
  facedEnd(
    side / 2,
    [0, 1, 2, 3].map((face) => (face * Math.PI) / 2 - turned),
    [0, 1, 2, 3, 4].map((corner) => ({ angle: ((2 * corner + 1) * Math.PI) / 4 - turned, away: side * Math.SQRT1_2 })),
  );

/** Corners of an end that a line has passed on its way from the nose to a point. */
const passed = ({ corners }: End, to: WinderPoint): readonly WinderPoint[] =>
  corners
    .filter(({ angle }) => angle > SAME_ANGLE && angle < Math.atan2(to.back, to.along) - SAME_ANGLE)
    .map(({ angle, away }) => at(angle, away));

const named = (corner: WinderCornerName) => (point: WinderPoint): WinderCorner => ({ corner, ...point });

const lengthOver = (points: readonly WinderPoint[]): number =>
  points.slice(1).reduce((sum, { along, back }, place) => {
    const { along: fromAlong, back: fromBack } = points[place] ?? { along, back };
    return sum + Math.hypot(along - fromAlong, back - fromBack);
  }, 0);

const blankOf = (points: readonly WinderPoint[]): WinderTread["blank"] => {
  const alongs = points.map(({ along }) => along);
  const from = Math.min(...alongs);
  return { from, length: Math.max(...alongs) - from, depth: Math.max(...points.map(({ back }) => back)) };
};

const treadOf = (given: WinderTreadsGiven, place: number): WinderTread => {
  const { winders, innerRadius, width, nosing, strings, newel } = given;
  const turn = given.turn * RADIANS_PER_DEGREE;
  const each = turn / winders;
  const turned = each * place;
  const reach = innerRadius + width;
  const wide = strings === "round" ? roundEnd(reach) : wallsEnd(reach, turn, turned);
  const narrow = newel === 0 ? roundEnd(innerRadius) : newelEnd(newel, turned);
  const [wideNose, wideBack] = [wide.left(0, 0), wide.left(each, nosing)];
  const [narrowNose, narrowBack] = [narrow.left(0, 0), narrow.left(each, nosing)];
  const nextNose = narrow.left(each, 0);
  const corners = [
    named("nose, narrow end")(narrowNose),
    named("nose, wide end")(wideNose),
    ...passed(wide, wideBack).map(named("corner of the walls")),
    named("back edge, wide end")(wideBack),
    named("back edge, narrow end")(narrowBack),
    ...[...passed(narrow, narrowBack)].reverse().map(named("corner of the newel")),
  ];
  const round = passed(narrow, nextNose);
  // A round end that turns past square is deepest on the way to its corner.
  const deepest = wide.isRound && wideBack.along < 0 ? [at(Math.PI / 2, reach)] : [];
  return {
    corners,
    narrowEnd: lengthOver([narrowNose, ...round, nextNose]),
    roundsTheNewel: round.length > 0,
    blank: blankOf([...corners, ...deepest]),
  };
};

const problemOf = (given: WinderTreadsGiven): Problem<WinderTreadsProblem> | undefined => {
  const { winders, turn, innerRadius, width, nosing, strings, newel } = given;
  if (strings === "straight" && turn >= HALF_TURN) return problem("straight-strings-past-half-turn", { turn });
  const least = Math.ceil(turn / QUARTER);
  if (winders < least) return problem("winder-past-a-quarter", { winders, each: turn / winders, least });
  if (newel === 0) {
    const isPast = nosing > 0 && nosing >= innerRadius;
    return isPast ? problem("nosing-past-the-narrow-end", { innerRadius, nosing }) : undefined;
  }
  if (turn % QUARTER !== 0) return problem("newel-not-square", { turn });
  if (newel <= 2 * nosing) return problem("newel-thin", { newel, nosing });
  const reach = innerRadius + width;
  return newel * Math.SQRT1_2 >= reach ? problem("newel-fills-the-turn", { newel, reach }) : undefined;
};

/**
 * Corners and blank of each tread of equal winders, from the bottom, each seen from its own nose. A tread lies between its nosing and the
 * riser above it, which stands a nosing behind the next nosing. Round strings are taken as round as far as the riser behind the last tread.
 */
export const winderTreads = (given: WinderTreadsGiven): readonly WinderTread[] | Problem<WinderTreadsProblem> =>
  problemOf(given) ?? Array.from({ length: given.winders }, (_, place) => treadOf(given, place));
