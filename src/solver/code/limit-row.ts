import { type Applicability, type Figure, figure, type Limit, type OutOfScope, type PublishedUnit, type Source, type SourceStatus } from "./profile";

export const inches = (value: string): Figure => figure(value, "in");
export const millimetres = (value: string): Figure => figure(value, "mm");
export const centimetres = (value: string): Figure => figure(value, "cm");
export const degrees = (value: string): Figure => figure(value, "deg");
export const count = (value: string): Figure => figure(value, "count");

/** What most rows of a code have in common. */
interface Common {
  readonly unit: PublishedUnit;
  readonly status: SourceStatus;
  readonly sources: readonly Source[];
}

type Defaulted = "applies" | "exceptions" | "advisory" | "remark" | keyof Common;

type Row = Omit<Limit, Defaulted> & Partial<Pick<Limit, Exclude<Defaulted, "applies">>> & { readonly applies?: Applicability | readonly Applicability[] };

/** Rows of one code: without condition, binding, in the unit and from the source that most of them have, unless a row says otherwise. */
export const limitRow = (common: Common) =>
  (row: Row): Limit => ({
    ...common, exceptions: [], advisory: false, remark: "", ...row, applies: "applies" in row ? [row.applies ?? []].flat() : [],
  });

/** Records of one code that no check of an ordinary stair's sizes can hold. */
export const outsideRow = (common: Omit<Common, "unit">) =>
  (row: Omit<OutOfScope, keyof Omit<Common, "unit">> & Partial<Omit<Common, "unit">>): OutOfScope => ({ ...common, ...row });
