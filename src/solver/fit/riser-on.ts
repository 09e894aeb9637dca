import type { LabelValue } from "../layout/stair-facts";
import type { STAIR_LABELS } from "../stair-labels";

/**
 * Which finished risers were in place when a tread was read: none (from the rough riser to the sub-tread's edge), the one behind it (from
 * its face to the sub-tread's edge), or both (from the face behind to the face in front).
 */
export type RiserOn = LabelValue<(typeof STAIR_LABELS)["riserOn"]>;

/** Where a tread lies between two lines `distance` apart: how far its back is in front of the near one, and how deep it is. */
export const treadSpan = (
  distance: number,
  riserOn: RiserOn,
  riserThickness: number,
  nosing: number,
): { readonly from: number; readonly depth: number } => ({
  // The riser behind goes on the near line and pushes the tread forward.
  from: riserOn === "off" ? riserThickness : 0,
  // With no riser on, one behind and one in front make up for each other; with the one behind on, the one in front is still to come.
  depth: distance + nosing + (riserOn === "behind" ? riserThickness : 0),
});
