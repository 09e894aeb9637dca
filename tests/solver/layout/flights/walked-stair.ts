/**
 * A stair of several flights built in space, step by step, out of none of the solver's formulas: every riser face is two points in plan and
 * the height of the tread on top of it, and a turn is made by standing on the landing and looking left or right.
 */

export type Spot = readonly [x: number, y: number];

export interface FlightBuilt {
  readonly risers: number;
  readonly run: number;
  readonly width: number;
  readonly turn: "none" | "quarter left" | "quarter right" | "half left" | "half right";
  readonly landingDepth: number;
  readonly well: number;
  readonly setBack: number;
}

/** A riser face, seen going up, and the height of what is on top of it. */
export interface RiserFace {
  readonly left: Spot;
  readonly right: Spot;
  readonly top: number;
}

export interface WalkedFlight {
  readonly faces: readonly RiserFace[];
  /** One step of a unit up the flight. */
  readonly ahead: Spot;
  readonly landing: readonly Spot[];
}

const plus = ([a, b]: Spot, [c, d]: Spot, by = 1): Spot => [a + c * by, b + d * by];
const toTheRight = ([x, y]: Spot): Spot => [y, -x];
const back = ([x, y]: Spot): Spot => [-x, -y];
const toTheLeft = (way: Spot): Spot => back(toTheRight(way));

export const walked = (flights: readonly FlightBuilt[], rise: number): readonly WalkedFlight[] => {
  const found: WalkedFlight[] = [];
  let left: Spot = [0, 0];
  let ahead: Spot = [0, 1];
  let height = 0;
  for (const [index, flight] of flights.entries()) {
    const next = flights[index + 1];
    const right = (): Spot => plus(left, toTheRight(ahead), flight.width);
    const faces: RiserFace[] = [];
    for (let riser = 0; riser < flight.risers; riser++) {
      if (riser > 0) left = plus(left, ahead, flight.run);
      height += rise;
      faces.push({ left, right: right(), top: height });
    }
    const [l, r, on] = [left, right(), ahead];
    const [leftHand, rightHand] = [toTheLeft(on), toTheRight(on)];
    if (next === undefined) {
      found.push({ faces, ahead: on, landing: [] });
      break;
    }
    // What of the landing lies beyond the flight's own sides, at a half turn: the well and the flight beside it.
    const beside = flight.turn.startsWith("half") ? flight.well + next.width : 0;
    const nearLeft = flight.turn === "half left" ? plus(l, leftHand, beside) : l;
    const widest = flight.turn === "none" && next.width > flight.width ? plus(l, rightHand, next.width) : r;
    const nearRight = flight.turn === "half right" ? plus(r, rightHand, beside) : widest;
    found.push({
      faces, ahead: on, landing: [nearLeft, nearRight, plus(nearRight, on, flight.landingDepth), plus(nearLeft, on, flight.landingDepth)],
    });
    switch (flight.turn) {
      case "none":
        left = plus(l, on, flight.landingDepth);
        break;
      case "quarter left":
        // Facing left, the near corner is on the left hand.
        ahead = leftHand;
        left = plus(l, rightHand, flight.setBack);
        break;
      case "quarter right":
        // Facing right, the near corner is on the right hand.
        ahead = rightHand;
        left = plus(plus(r, leftHand, flight.setBack), toTheLeft(rightHand), next.width);
        break;
      case "half left":
        // Turned about to the left, the well is on the left hand.
        ahead = back(on);
        left = plus(plus(l, leftHand, flight.well), on, flight.setBack);
        break;
      case "half right":
        // Turned about to the right, the well is on the right hand, and the left hand is a width away from it.
        ahead = back(on);
        left = plus(plus(r, rightHand, flight.well + next.width), on, flight.setBack);
    }
  }
  return found;
};

/** Everything the stair covers in plan: between the first and the last face of each flight, and its landings. */
export const coveredSpots = (stair: readonly WalkedFlight[]): readonly Spot[] =>
  stair.flatMap(({ faces, landing }) => [...faces.flatMap(({ left, right }) => [left, right]), ...landing]);

/** A point of a line over another point of the way up: two points of it, and how far along a third one lies. */
export const onTheLine = ([ax, az]: Spot, [bx, bz]: Spot, x: number): number => az + ((bz - az) / (bx - ax)) * (x - ax);

/** Nosings of a flight, how far up the flight from its first riser face and how high; the last is the landing's. */
export const nosings = ({ faces, ahead }: WalkedFlight, nosing: number): readonly Spot[] =>
  faces.map(({ left, top }) => {
    const [x, y] = plus(left, faces[0]?.left ?? left, -1);
    return [x * ahead[0] + y * ahead[1] - nosing, top];
  });
