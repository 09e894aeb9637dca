import { LIMIT } from "../../functions/code/limit";
import type { Unit } from "../../solver/length/length";
import { call } from "./call";

/** The greatest rise of a code, in the unit of the job; a limit of two figures ends with the greater. An empty text where there is none. */
export const greatestRise = (unit: Unit, code: string): string => {
  const limit = `INDEX(${call(LIMIT, unit, { code, item: '"riser height"' })},1,1)`;
  return `IFERROR(LET(a,${limit},IFERROR(VALUE(MID(a,FIND(" to ",a)+4,9)),a)),"")`;
};
