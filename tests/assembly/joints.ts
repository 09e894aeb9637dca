import { openEndOf } from "../functions/seated-return";
import { type Misreading, type Printed, sawn, xAt } from "../functions/simulated-saw";
import { pointOn } from "../solver/fit/space";
import { type House, inchesPer, type RoughFlight, type RoughStep, type Side, SIDES, type Sizes, way } from "./house";
import { skirtAt, type Tickets, topsOf } from "./tickets";

/** The pieces sawn by the tickets, put in their places in the house, and every joint measured, in inches. */
export interface Joint {
  readonly where: string;
  readonly off: number;
}

type Sawn = ReturnType<typeof sawn>;
/** A skirt's face as the piece lies: x at each y from the far edge and z from underneath. */
type Face = (y: number, z: number) => number;

interface Placed {
  readonly piece: Sawn;
  readonly faces: Readonly<Record<Side, Face>>;
  /** How far it was slid to the right, to where both ends fit best. */
  readonly slid: number;
  readonly ends: readonly Joint[];
}

interface Laid {
  readonly step: RoughStep;
  readonly thickness: number;
  readonly faces: Readonly<Record<Side, Face>>;
  readonly piece: Sawn;
  readonly undercut: number;
}

interface Place {
  readonly where: string;
  /** How far it lies to the right of where it belongs. */
  readonly right: number;
}

export const isOpen = ({ openEnd }: Sizes, side: Side): boolean => openEnd === side || openEnd === "both";

const endOf = (piece: Sawn, side: Side) => {
  const plane = piece.ends.get(side);
  if (plane === undefined) throw new Error(`no ${side} end was sawn`);
  return plane;
};

/** An end at a skirt: all its corners, or where it is undercut the face's two, which alone are to touch. */
const endAtSkirt = ({ piece, step, thickness, undercut, faces }: Laid, side: Side): readonly Place[] => {
  const { gap, perY, perZ } = step.skirts[side];
  // The gap is square to the skirt, so its distance along x is longer.
  const room = gap * Math.hypot(1, perY, perZ);
  return [0, piece.depth].flatMap((y) =>
    (undercut === 0 ? [0, thickness] : [thickness]).map((z) => ({
      where: `${side} end, ${y === 0 ? "far" : "near"} edge, ${z === 0 ? "underneath" : "face"}`,
      right: xAt(endOf(piece, side), y, z) - (faces[side](y, z) - way(side) * room),
    })),
  );
};

/** A line of the return: the skirt's own at the tread's underside, moved square to itself. */
const beside = (face: Face, side: Side, by: number) => pointOn([face(0, 0), 0, 0], [face(1, 0), 1, 0], way(side) * by);

const openTreadEnd = ({ piece, faces }: Laid, side: Side, { overhang, returnWidth }: Sizes): readonly Place[] => {
  const made = openEndOf(piece, side);
  const [outer, inner] = [beside(faces[side], side, overhang), beside(faces[side], side, overhang - returnWidth)];
  return [
    { where: `${side} toe`, right: made.toe[0] - outer(made.toe[1]) },
    { where: `${side} heel`, right: made.heel[0] - inner(made.heel[1]) },
    { where: `${side} return line at the riser`, right: made.back[0] - inner(made.back[1]) },
  ];
};

const openRiserEnd = ({ piece, faces }: Laid, side: Side, { runPast }: Sizes): readonly Place[] =>
  [0, piece.depth].map((y) => ({
    where: `${side} end past the skirt, ${y === 0 ? "top" : "bottom"}`,
    right: xAt(endOf(piece, side), y, 0) - (faces[side](y, 0) + way(side) * runPast),
  }));

const slidBetween = (places: readonly Place[]): Pick<Placed, "slid" | "ends"> => {
  const offs = places.map(({ right }) => right);
  const slid = -(Math.max(...offs) + Math.min(...offs)) / 2;
  return { slid, ends: places.map(({ where, right }) => ({ where, off: Math.abs(right + slid) })) };
};

interface Bench {
  readonly sizes: Sizes;
  readonly misread: Misreading;
}

const cut = (rows: readonly Printed[], thickness: number, { sizes: { unit }, misread }: Bench): Sawn => {
  const piece = sawn(rows, { thickness, unit, ...(misread === undefined ? {} : { misread }) });
  if (piece.contradictions.length > 0) throw new Error(piece.contradictions.join("; "));
  return piece;
};

const treadPlaced = (rows: readonly Printed[], step: RoughStep, back: number, underside: number, bench: Bench): Placed => {
  const { sizes } = bench;
  const piece = cut(rows, sizes.thickness, bench);
  const face = (side: Side): Face => {
    const at = skirtAt(step, side);
    return (y, z) => at(back - y, underside + z);
  };
  const faces = { left: face("left"), right: face("right") };
  const laid = { piece, step, faces, thickness: sizes.thickness, undercut: sizes.undercut };
  const places = SIDES.flatMap((side) => (isOpen(sizes, side) ? openTreadEnd(laid, side, sizes) : endAtSkirt(laid, side)));
  return { piece, faces, ...slidBetween(places) };
};

/** Its back lies against the rough riser, its top under the tread above. */
const riserPlaced = (rows: readonly Printed[], step: RoughStep, underside: number, bench: Bench): Placed => {
  const { sizes } = bench;
  const piece = cut(rows, sizes.riserThickness, bench);
  const face = (side: Side): Face => {
    const at = skirtAt(step, side);
    return (y, z) => at(step.riser - z, underside - y);
  };
  const faces = { left: face("left"), right: face("right") };
  const laid = { piece, step, faces, thickness: sizes.riserThickness, undercut: sizes.undercut };
  const places = SIDES.flatMap((side) => (isOpen(sizes, side) ? openRiserEnd(laid, side, sizes) : endAtSkirt(laid, side)));
  return { piece, faces, ...slidBetween(places) };
};

/** How much nearer the skirt an undercut end's underside lies than its face: it must never. */
const proud = ({ piece, faces }: Placed, thickness: number, side: Side): number =>
  Math.max(
    ...[0, piece.depth].map((y) => {
      const clear = (z: number): number => way(side) * (faces[side](y, z) - xAt(endOf(piece, side), y, z));
      return clear(thickness) - clear(0);
    }),
  );

/** Where the return's long point and the outer corner of its free end lie from where they belong. */
const returnOff = ({ piece, faces, slid }: Placed, side: Side, depth: number, { overhang }: Sizes): number => {
  const outer = beside(faces[side], side, overhang);
  const { freeOuter, longPoint } = openEndOf(piece, side);
  return Math.max(
    Math.hypot(freeOuter[0] + slid - outer(-overhang), freeOuter[1] + overhang),
    Math.hypot(longPoint[0] + slid - outer(depth), longPoint[1] - depth),
  );
};

/** How much of the return, run back past the riser above, lies in that riser's wood beside its notch: none where it clears. */
const inRiser = (tread: Placed, riser: Placed, side: Side): number => {
  const along = riser.piece.notch.get(side)?.along ?? 0;
  const inner = openEndOf(tread.piece, side).back[0] + tread.slid;
  const end = xAt(endOf(riser.piece, side), riser.piece.depth, 0) + riser.slid;
  return way(side) * (end - way(side) * along - inner);
};

/** A stair of one flight, built. Lengths in inches, rises too. */
export interface Built {
  readonly joints: readonly Joint[];
  readonly rises: readonly number[];
  readonly nosings: readonly number[];
  readonly returns: readonly Joint[];
  readonly inRiser: readonly number[];
  readonly notches: readonly { readonly along: number; readonly up: number }[];
  readonly proud: readonly number[];
  readonly riserHeights: readonly number[];
}

export const built = ({ sizes }: House, flight: RoughFlight, tickets: Tickets, misread?: Misreading): Built => {
  const inches = (length: number): number => length / inchesPer[sizes.unit];
  const { steps } = flight;
  const tops = topsOf(flight, tickets.packing, sizes.thickness);
  const below = [flight.floor, ...tops];
  const under = tops.map((top) => top - sizes.thickness);
  const bench = { sizes, misread };
  const riserFace = steps.map(({ riser }) => riser - sizes.riserThickness);
  const backs = riserFace.slice(1).map((face) => face - sizes.backGap);
  const risers = steps.map((step, index) => riserPlaced(tickets.risers[index] ?? [], step, under[index] ?? NaN, bench));
  const treads = backs.map((back, index) => {
    const step = steps[index];
    if (step === undefined) throw new Error("no step");
    return treadPlaced(tickets.treads[index] ?? [], step, back, under[index] ?? NaN, bench);
  });
  const noseOf = (index: number): number => (riserFace[index] ?? NaN) - sizes.nosing;
  const open = SIDES.filter((side) => isOpen(sizes, side));
  const closed = SIDES.filter((side) => !isOpen(sizes, side));
  const joint = (where: string, off: number): Joint => ({ where, off: inches(off) });
  const endsOf = (kind: string, placed: readonly Placed[]): readonly Joint[] =>
    placed.flatMap(({ ends }, index) => ends.map(({ where, off }) => joint(`${kind} ${String(index + 1)}, ${where}`, off)));
  const reaching = risers.map(({ piece }, index) => {
    // Riser 1 stands on the floor, the others lap the tread below.
    const foot = (below[index] ?? NaN) - (index === 0 ? 0 : sizes.lap);
    return joint(`riser ${String(index + 1)}, top under the tread above`, Math.abs((under[index] ?? NaN) - foot - piece.depth));
  });
  return {
    joints: [...reaching, ...endsOf("riser", risers), ...endsOf("tread", treads)],
    rises: tops.map((top, index) => inches(top - (below[index] ?? NaN))),
    nosings: treads.map(({ piece }, index) => inches((riserFace[index] ?? NaN) - (backs[index] ?? NaN) + piece.depth)),
    returns: treads.flatMap((tread, index) =>
      open.map((side) =>
        joint(`return ${String(index + 1)} ${side}`, returnOff(tread, side, (backs[index] ?? NaN) - noseOf(index), sizes)))),
    inRiser: treads.flatMap((tread, index) => {
      const riser = risers[index + 1];
      return riser === undefined ? [] : open.map((side) => inches(inRiser(tread, riser, side)));
    }),
    notches: risers.flatMap(({ piece }) => [...piece.notch.values()]),
    proud:
      sizes.undercut === 0
        ? []
        : [
            ...treads.flatMap((tread) => closed.map((side) => inches(proud(tread, sizes.thickness, side)))),
            ...risers.flatMap((riser) => closed.map((side) => inches(proud(riser, sizes.riserThickness, side)))),
          ],
    riserHeights: risers.map(({ piece }) => piece.depth),
  };
};
