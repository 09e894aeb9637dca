import type { Length } from "../../length/length";
import type { Flight, Landing } from "./flight-stair";

/** Tops of two rails on the centre of the newel at a turn, over the finished landing; both stand `height` over their nosings. */
export interface TurnRails {
  readonly fromBelow: Length;
  readonly fromAbove: Length;
}

/** Each rail runs on along the line of its nosings, which stand a nosing in front of the riser faces. */
export const turnRails = (
  flight: Flight, landing: Landing, next: Flight, unitRise: Length, nosing: Length, height: Length,
): TurnRails => ({
  fromBelow: height.plus(landing.newelPast.plus(nosing).times(unitRise).div(flight.run)),
  fromAbove: height.plus(unitRise).plus(nosing.minus(landing.newelShort).times(unitRise).div(next.run)),
});
