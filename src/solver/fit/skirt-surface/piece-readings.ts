import type { RiserReading } from "../riser-reading";
import type { TreadReading } from "../tread-reading";
import type { PieceReading, Place, PieceKind } from "./flight-readings";

const present = <Value extends object>(value: Value): { [K in keyof Value]?: Exclude<Value[K], undefined> } =>
  Object.fromEntries(Object.entries(value).filter(([, each]) => each !== undefined)) as never;

/** A tread's readings as the skirts are seen through them; a tapered step's diagonals span no single run, and a bar's length no line. */
export const treadPiece = (reading: TreadReading): PieceReading => {
  const { step, run, leftRun, rightRun, depth, at, back, front, diagonal, secondDiagonal } = reading;
  const [left, right] = [leftRun ?? run, rightRun ?? run];
  const isTapered = left !== right;
  return present({
    step,
    distance: left !== undefined && right !== undefined ? (left + right) / 2 : (left ?? right ?? depth),
    near: at === undefined ? back : undefined,
    far: front,
    diagonal: isTapered ? undefined : diagonal,
    secondDiagonal: isTapered ? undefined : secondDiagonal,
  });
};

export const riserPiece = ({ step, height, top, bottom, diagonal, secondDiagonal }: RiserReading): PieceReading =>
  present({ step, distance: height, near: top, far: bottom, diagonal, secondDiagonal });

/** What each reading is called in its own table. */
export const READING_NAMES: Readonly<Record<PieceKind, Readonly<Record<Place, string>>>> = {
  tread: { near: "back", far: "front", diagonal: "diagonal", secondDiagonal: "second diagonal" },
  riser: { near: "top", far: "bottom", diagonal: "diagonal", secondDiagonal: "second diagonal" },
};
