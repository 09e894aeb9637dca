import type { PieceKind } from "../solver/fit/acts";

/** Where an end of the tape is held: a corner of the opening as one sees it facing the stair, or the middle of an edge. */
export type Spot = "far left" | "far right" | "near left" | "near right" | "far" | "near";

/** A reading of one step, under the heading of its column in the readings table. */
export interface Asked {
  readonly reading: string;
  /** From the hook to where it is read; far is away from the reader, at the top of the sketch. */
  readonly tape: readonly [hook: Spot, read: Spot];
  readonly says: string;
}

const HOOK = "Hook at the bar.";

/** What is taped at each step, in the order of the hands. The first of a tread is taken again only where it changes. */
export const ASKED: Readonly<Record<PieceKind, readonly Asked[]>> = {
  tread: [
    {
      reading: "run", tape: ["far", "near"],
      says: `from the finished riser behind to the finished face of the riser in front, square across. ${HOOK}`,
    },
    { reading: "back", tape: ["far left", "far right"], says: "along the riser face, skirt to skirt." },
    { reading: "front", tape: ["near left", "near right"], says: "along the front edge, skirt to skirt." },
    { reading: "diagonal", tape: ["far left", "near right"], says: `left back corner to right front corner. ${HOOK}` },
    { reading: "secondDiagonal", tape: ["far right", "near left"], says: `right back corner to left front corner. ${HOOK}` },
  ],
  riser: [
    { reading: "height", tape: ["near", "far"], says: `from the bottom line to the top line, square across. ${HOOK}` },
    { reading: "top", tape: ["far left", "far right"], says: "along the top, skirt to skirt." },
    { reading: "bottom", tape: ["near left", "near right"], says: "along the bottom, skirt to skirt." },
    { reading: "diagonal", tape: ["far left", "near right"], says: `left top corner to right bottom corner. ${HOOK}` },
    { reading: "secondDiagonal", tape: ["far right", "near left"], says: `right top corner to left bottom corner. ${HOOK}` },
  ],
};

/** Read once and taken for the steps above too, until it is read anew. */
export const RUN = "run";

export const askedOf = (piece: PieceKind, reading: string): Asked | undefined => ASKED[piece].find((one) => one.reading === reading);

/** What is taped at a step: the run only where the reading of treads begins. */
export const askedAt = (piece: PieceKind, isFirst: boolean): readonly Asked[] =>
  ASKED[piece].filter(({ reading }) => reading !== RUN || isFirst);
