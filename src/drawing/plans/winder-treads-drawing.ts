import type { Unit } from "../../solver/length/length";
import { type WinderTread, winderTreads, type WinderTreadsGiven, type WinderTreadsProblem } from "../../solver/layout/winder-treads";
import { isProblem, type Problem } from "../../solver/problem";
import type { Point } from "../figure";
import { inRows, type Unplaced } from "./dimension-rows";
import { box, closed, type Draft, line } from "./draft";
import { arcPoints } from "./winders-drawing";

interface NamedTread {
  readonly name: string;
  readonly draft: Draft;
}

const endOf = (corner: string): string => corner.replace(/^.*, /, "");

/** The edge of a tread from corner to corner, in an arc about the centre of the turn where its end is round. */
const edgeOf = ({ corners }: WinderTread, isRound: (name: string) => boolean): Point[] =>
  corners.flatMap(({ corner, along, back }, place): Point[] => {
    const next = corners[(place + 1) % corners.length];
    const isArc = next !== undefined && isRound(corner) && isRound(next.corner) && endOf(corner) === endOf(next.corner);
    if (!isArc) return [[along, back]];
    return arcPoints(Math.hypot(along, back), Math.atan2(back, along), Math.atan2(next.back, next.along));
  });

/** From the narrow end of the blank, and square back from the nose, of each corner that lies on neither. */
const sizesOf = ({ corners, blank }: WinderTread): Unplaced[] => [
  ...corners.flatMap(({ corner, along, back }): Unplaced[] => [
    { side: "below", from: [blank.from, 0], to: [along, back], value: along - blank.from, name: corner },
    { side: "right", from: [along, 0], to: [along, back], value: back, name: corner },
  ]),
  { side: "above", from: [blank.from, blank.depth], to: [blank.from + blank.length, blank.depth], value: blank.length, name: "blank" },
  { side: "left", from: [blank.from, 0], to: [blank.from, blank.depth], value: blank.depth, name: "blank" },
];

const draftOf = (tread: WinderTread, name: string, given: WinderTreadsGiven, unit: Unit): Draft => {
  const { blank } = tread;
  const isRound = (corner: string): boolean =>
    (given.strings === "round" && corner.endsWith("wide end")) || (given.newel === 0 && corner.endsWith("narrow end"));
  return {
    title: `Tread of ${name}`,
    says: `The tread of ${name} of a turn, face up, nose toward the reader, on its blank, the narrow end on the left.`,
    unit,
    marks: [
      closed("thick", ...edgeOf(tread, isRound)),
      closed("dashed", ...box([blank.from, 0], [blank.from + blank.length, blank.depth])),
      line("centre", [Math.min(0, blank.from), 0], [blank.from, 0]),
      { kind: "dot", at: [0, 0] },
      ...inRows(sizesOf(tread)),
    ],
    notes: [
      "Face up, nose toward you, for a stair that turns left going up; for a turn to the right mirror it. Net sizes: add what is housed " +
        "in strings or newel. Grain along the nose.",
      "Below, from the narrow end of the blank, dashed; at the right, square back from the nose. The dot is the centre of the turn.",
    ],
  };
};

/** Each tread of a turn on its blank; treads that are alike are drawn once. */
export const winderTreadsDrawings = (given: WinderTreadsGiven, unit: Unit): readonly NamedTread[] | Problem<WinderTreadsProblem> => {
  const found = winderTreads(given);
  if (isProblem(found)) return found;
  const keyOf = ({ corners }: WinderTread): string => corners.map(({ along, back }) => `${along.toFixed(6)} ${back.toFixed(6)}`).join();
  const keys = found.map(keyOf);
  return found.flatMap((tread, place) => {
    if (keys.indexOf(keys[place] ?? "") !== place) return [];
    const alike = keys.flatMap((key, one) => (key === keys[place] ? [one + 1] : []));
    const name = alike.length === 1 ? `winder ${place + 1}` : `winders ${alike.join(", ")}`;
    return [{ name, draft: draftOf(tread, name, given, unit) }];
  });
};
