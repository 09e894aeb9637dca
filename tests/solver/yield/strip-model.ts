import { modelInWork } from "./model-in-work";
import type { WholeModel } from "./whole-model";

/** What is to be cut in two stages, in whole marks and cents. Sheets and boards are the same to it. */
export interface StripJob {
  /** How many of each kind. */
  readonly wanted: readonly number[];
  readonly kerf: number;
  /** What is paid for at once: a board, a sheet, a lot. */
  readonly goods: readonly { readonly cents: number; readonly available: number; readonly rectangles: readonly Rectangle[] }[];
}

/** It is cut in one of these ways, or not at all. */
export type Rectangle = readonly StripWay[];

/** Strips run along `long` and lie side by side across `wide`. */
export interface StripWay {
  readonly long: number;
  readonly wide: number;
  /** Pieces as they may lie in these strips; a kind that may be turned has two. */
  readonly shapes: readonly Shape[];
}

export interface Shape {
  readonly kind: number;
  readonly along: number;
  readonly across: number;
}

type InWork = ReturnType<typeof modelInWork>;

/** One of the ways of a rectangle: 1 where it is taken; each strip, 1 where it is cut; and how many of each shape lie in it. */
const addWay = ({ row, column, inTurn }: InWork, { long, wide, shapes }: StripWay, { wanted, kerf }: StripJob, taken: number): void => {
  const fitting = shapes.filter(({ along, across }) => along <= long && across <= wide);
  if (fitting.length === 0) return;
  const depth = row(-Infinity, 0);
  column(0, 1, [[taken, 1], [depth, -(wide + kerf)]]);
  for (const widest of fitting) {
    const strips = Math.min(wanted[widest.kind]!, Math.floor((wide + kerf) / (widest.across + kerf)));
    const turns = inTurn(strips);
    for (const turn of turns) {
      const length = row(-Infinity, 0);
      column(0, 1, [[widest.kind, 1], [depth, widest.across + kerf], [length, widest.along - long], ...turn]);
      for (const { kind, along, across } of fitting) {
        const room = Math.min(wanted[kind]!, Math.floor((long - widest.along) / (along + kerf)));
        if (across <= widest.across && room > 0) column(0, room, [[kind, 1], [length, along + kerf]]);
      }
    }
  }
};

/**
 * A strip is opened by a piece that makes it as wide as it is and takes others that are no wider: the level model of Lodi, Martello and
 * Vigo (2004, from memory). At least what is wanted is cut, at least cost.
 */
export const stripModel = (job: StripJob): WholeModel => {
  const inWork = modelInWork();
  for (const wanted of job.wanted) inWork.row(wanted, Infinity);
  for (const { cents, available, rectangles } of job.goods)
    for (const turn of inWork.inTurn(available)) {
      const taken = rectangles.map(() => inWork.row(-Infinity, 0));
      inWork.column(cents, 1, [...taken.map((row) => [row, -1] as const), ...turn]);
      rectangles.forEach((ways, at) => {
        for (const way of ways) addWay(inWork, way, job, taken[at]!);
      });
    }
  return inWork.model;
};
