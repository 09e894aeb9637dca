import type { WorkedCase } from "../case-kind";

/** 7.33 to the nearest half, quarter and so on: 14.66, 29.32, 58.64, 117.28, 234.56 and 469.12 of them. */
const AS_READ = { 2: '7 1/2"', 4: '7 1/4"', 8: '7 3/8"', 16: '7 5/16"', 32: '7 11/32"', 64: '7 21/64"' } as const;

const STEPS = [["label", "value"], ["rise", 7], ["run", 10]] as const;

export const notationCases: Readonly<Record<string, readonly WorkedCase[]>> = {
  TOINCHES: [{ given: { measure: 254, unit: "mm" }, gives: 10, from: "by definition, 25.4 mm to the inch" }],
  TAPE: Object.entries(AS_READ).map(([denominator, gives]) => ({
    given: { length: 7.33, denominator },
    gives,
    from: `by hand: 7.33 x ${denominator} to the nearest whole number`,
  })),
  PICK: [
    { given: { table: STEPS, label: "rise" }, gives: 7, from: "by hand: beside rise stands 7" },
    { given: { table: STEPS, label: "run" }, gives: 10, from: "by hand: beside run stands 10" },
  ],
};
