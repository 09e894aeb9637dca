import { RADIANS_PER_DEGREE } from "../../solver/degrees";
import type { Unit } from "../../solver/length/length";
import { type WinderGiven, type WinderNosing, type WinderProblem, type WinderTurn, winderTurn } from "../../solver/layout/winder-turn";
import { isProblem, type Problem } from "../../solver/problem";
import type { Point } from "../figure";
import { inRows } from "./dimension-rows";
import { dimensionText, type Draft, type DraftMark, inside, line, note, running } from "./draft";

const ARC_PARTS = 48;

const onCircle = (radius: number, angle: number): Point => [radius * Math.cos(angle), radius * Math.sin(angle)];

export const arcPoints = (radius: number, from: number, to: number): Point[] =>
  Array.from({ length: ARC_PARTS + 1 }, (_, part) => onCircle(radius, from + ((to - from) * part) / ARC_PARTS));

/** Where a nosing meets a string, by what the solver measures along it; the turn begins on the level to the right of its centre. */
const spotOf = ({ string, along }: WinderNosing, { innerRadius, width, turn }: WinderGiven): Point => {
  const away = innerRadius + width;
  const end = turn * RADIANS_PER_DEGREE;
  if (string === "inner") return innerRadius === 0 ? [0, 0] : onCircle(innerRadius, along / innerRadius);
  if (string === "outer") return onCircle(away, along / away);
  if (string === "first") return [away, along];
  const [x, y] = onCircle(away, end);
  return [x + along * Math.sin(end), y - along * Math.cos(end)];
};

const widthEnds = (given: WinderGiven, found: WinderTurn): { readonly wide: Point[]; readonly narrow: Point[] } => {
  const { winders, innerRadius, turn } = given;
  const wide = found.nosings.filter(({ string }) => string !== "inner").map((one) => spotOf(one, given));
  const narrow = Array.from({ length: winders + 1 }, (_, nosing): Point => 
    onCircle(innerRadius, (turn * RADIANS_PER_DEGREE * nosing) / winders));
  return { wide, narrow };
};

/** The strings: round about the centre, or walls that meet in a corner. */
const strings = (given: WinderGiven): DraftMark[] => {
  const { innerRadius, width, turn } = given;
  const away = innerRadius + width;
  const end = turn * RADIANS_PER_DEGREE;
  const [fx, fy] = onCircle(away, end);
  const corner: Point = onCircle(away / Math.cos(end / 2), end / 2);
  return [
    line("thick", ...arcPoints(innerRadius, 0, end)),
    given.strings === "round" ? line("thick", ...arcPoints(away, 0, end)) : line("thick", [away, 0], corner, [fx, fy]),
  ];
};

/** Where each nosing meets its string, measured along it. */
const places = (given: WinderGiven, found: WinderTurn, unit: Unit): DraftMark[] =>
  found.nosings.filter(({ string, along }) => string !== "inner" && along > 0).map((one): DraftMark => {
    const at = spotOf(one, given);
    if (one.string === "outer") return note(at, `${one.nosing}: arc ${dimensionText(one.along, unit)}`, at[0] < 0 ? "left" : "right");
    const foot = spotOf({ ...one, along: 0 }, given);
    return running(foot, at, one.along, `${one.nosing}:`, one.string === "first" ? "right" : "above");
  });

/** Winders in plan, or why there are none. */
export const windersDrawing = (given: WinderGiven, unit: Unit): Draft | Problem<WinderProblem> => {
  const found = winderTurn(given);
  if (isProblem(found)) return found;
  const { innerRadius, width, walkline, winders } = given;
  const { wide, narrow } = widthEnds(given, found);
  const end = given.turn * RADIANS_PER_DEGREE;
  const middle = Math.floor(winders / 2);
  const [from, to] = [(end * middle) / winders, (end * (middle + 1)) / winders];
  const away = innerRadius + width;
  return {
    title: "Winders in plan",
    says: `${winders} winders in plan, turning ${given.turn} degrees to the left, with their walkline.`,
    unit,
    marks: [
      ...strings(given),
      ...wide.map((spot, nosing) => line(nosing === 0 || nosing === winders ? "thick" : "thin", narrow[nosing] ?? spot, spot)),
      line("centre", ...arcPoints(found.walklineRadius, 0, end)),
      { kind: "dot", at: [0, 0] },
      inside(onCircle(found.walklineRadius, from), onCircle(found.walklineRadius, to), found.depthAtTheWalkline, "at the walkline"),
      ...(innerRadius === 0 ? [] : [
        inside(onCircle(innerRadius, from), onCircle(innerRadius, to), found.depthAtTheNarrowEnd, "narrow end"),
      ]),
      ...places(given, found, unit),
      ...inRows([
        { side: "below", from: [0, 0], to: [innerRadius, 0], value: innerRadius, name: "inner radius" },
        { side: "below", from: [innerRadius, 0], to: [away, 0], value: width, name: "width" },
        { side: "below", from: [innerRadius, 0], to: [found.walklineRadius, 0], value: walkline, name: "walkline" },
        { side: "below", from: [0, 0], to: [found.walklineRadius, 0], value: found.walklineRadius, name: "walkline radius" },
      ]),
      note(onCircle(away, 0), "up, nosing 1", "below"),
    ],
    notes: [
      "Turning to the left; for a turn to the right mirror it. Noses are drawn, not risers. Depths straight from nose to nose, " +
        `along the walkline ${dimensionText(found.arcAtTheWalkline, unit)}.`,
      given.strings === "round"
        ? "Arcs along the outer string from nosing 1, each marked with the number of its nosing."
        : "Along each wall from the foot of its perpendicular to the centre of the turn, each mark with the number of its nosing.",
    ],
  };
};
