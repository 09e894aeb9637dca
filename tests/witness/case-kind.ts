import type { Declaration } from "../../src/functions/declare";

type Example = Declaration["examples"][number];

/** What holds of an answer, whatever its figures are. */
interface Law {
  readonly given: Example["given"];
  readonly keeps: (rows: Rows) => boolean;
  readonly from: string;
}

/** An example of a declaration, or a case of the tests in the same form: what is given, what must come out, and where that is from. */
export type WorkedCase = Example | Law;

/** An answer as rows of plain cells; an error cell is its code and sentence. */
export type Rows = readonly (readonly unknown[])[];
