/** What the engine's number formats get in the place of its core: the core, with fractions written as a cell shows them. */
import { numfmt as plain } from "@univerjs/core";
import { shownFraction } from "./shown-fraction";

export * from "@univerjs/core";
export const numfmt: typeof plain = { ...plain, format: shownFraction };
