import type { Measured, ResultRow } from "./declare";
import { words } from "../solver/words";

type Kinds<Values> = { readonly [K in keyof Values]: Measured["kind"] };

/** Rows of label and value out of a record, its keys as words, each value with its kind; what is not known has a note instead. */
export const labelRows = <Values extends object>(
  values: Values,
  kinds: Kinds<Values>,
  notes: Partial<Record<keyof Values, string>> = {},
): ResultRow[] =>
  (Object.keys(kinds) as (keyof Values & string)[]).map((key) => {
    const value = values[key] as Measured["value"] | undefined;
    return {
      label: words(key),
      value: value === undefined ? undefined : { kind: kinds[key], value },
      note: value === undefined ? notes[key] : undefined,
    };
  });
