import fc from "fast-check";

/** Which of what there is: counted round. */
const which = fc.nat(100_000);

/** What a person types into a yellow cell: mostly what belongs there, at times a size near it, at times what does not. */
const said = fc.oneof(
  { weight: 12, arbitrary: fc.constant("as in the demo" as const) },
  { weight: 4, arbitrary: fc.integer({ min: -9, max: 9 }) },
  { weight: 2, arbitrary: fc.constantFrom<string | number>("7 5/8", "37 3/16", "none", "any", "x", 0, -1, 1e6) },
);

const reading = fc.tuple(fc.integer({ min: 1, max: 15 }), fc.integer({ min: 0, max: 16 }), fc.integer({ min: 0, max: 16 }));

/** An act of a random person on the workbook of a job. */
export const jobActs = fc.oneof(
  { weight: 70, arbitrary: fc.record({ kind: fc.constant("type" as const), which, said }) },
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("clear" as const), which }) },
  { weight: 8, arbitrary: fc.record({ kind: fc.constant("undo" as const) }) },
  {
    weight: 3,
    arbitrary: fc.record({ kind: fc.constant("readings" as const), read: fc.array(reading, { minLength: 1, maxLength: 5 }) }),
  },
  { weight: 4, arbitrary: fc.record({ kind: fc.constant("pause" as const) }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant("reload" as const) }) },
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("kill" as const), inTheMiddle: fc.boolean() }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("file" as const) }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("command" as const) }) },
).map((act): JobAct => act);

export interface JobAct {
  readonly kind: "type" | "clear" | "undo" | "readings" | "pause" | "reload" | "kill" | "file" | "command";
  readonly which?: number;
  readonly said?: string | number;
  /** Step, and two lengths in sixteenths over 36. */
  readonly read?: readonly (readonly [step: number, one: number, other: number])[];
  readonly inTheMiddle?: boolean;
}
