import type { Declaration } from "../../functions/declare";
import { argumentsOf } from "../../functions/formula";
import { type Drawing, drawnCall, isDrawn } from "./drawn-call";

/** Which example of a function is drawn, from 1, and its drawings. */
export interface ExampleDrawings {
  readonly example: number;
  readonly drawings: readonly Drawing[];
}

/** The drawings of a function's first example that can be drawn; undefined where none can. */
export const exampleDrawings = (declaration: Declaration): ExampleDrawings | undefined => {
  if (!isDrawn(declaration.id)) return undefined;
  for (const [place, { given }] of declaration.examples.entries()) {
    const drawings = drawnCall(declaration.id, argumentsOf(declaration, given));
    if (typeof drawings !== "string") return { example: place + 1, drawings };
  }
  return undefined;
};
