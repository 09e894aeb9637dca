import type { CodeProfile, OutOfScope } from "../profile";
import { builtLimit } from "./built-limit";
import type { Common, LimitRecord, LimitRow } from "./limit-record";

/** A code with its records, so that a later edition can be written as the difference from it. */
export interface Edition extends CodeProfile {
  /** The title without the words on how well it is founded. */
  readonly plainTitle: string;
  readonly records: readonly LimitRecord[];
}

/** One part in three. */
const THIRD = 3;

type Heading = Omit<CodeProfile, "limits" | "outOfScope">;

/** A code of which more than a third is not confirmed in the text of that edition says so wherever it is named. */
const founding = (records: readonly Pick<LimitRecord, "status">[], isCode = true): string => {
  const confirmed = records.filter(({ status }) => status === "checked against the code's text").length;
  if (!isCode || (records.length - confirmed) * THIRD <= records.length) return "";
  return confirmed === 0 ? " (none of the limits confirmed)" : " (more than a third of the limits not confirmed)";
};

/** A code out of its records. */
export const edition = ({
  records,
  outOfScope = [],
  ...heading
}: Heading & { readonly records: readonly LimitRecord[]; readonly outOfScope?: readonly OutOfScope[] }): Edition => {
  const all = [...records, ...outOfScope];
  const title = `${heading.title}${founding(all, heading.isCode)}`;
  return { ...heading, title, plainTitle: heading.title, records, limits: records.map(builtLimit), outOfScope };
};

/** What a later edition has otherwise than the one before it, and where that was read. */
interface Difference extends Partial<Heading> {
  readonly id: string;
  readonly edition: string;
  /** Where every record of it was read; left out where each stands as it does in the edition before. */
  readonly read?: Omit<Common, "unit">;
  /** Clause numbers, or their beginnings, before and after; the first that fits counts. */
  readonly renumbered?: readonly (readonly [string, string])[];
  /** By item: what of the record reads otherwise. */
  readonly changed?: Readonly<Record<string, Partial<LimitRow>>>;
  /** New records, which come last. */
  readonly added?: readonly LimitRecord[];
  readonly dropped?: readonly string[];
  /** New records of what no check holds, and those of the edition before that are gone, by item. */
  readonly addedOutside?: readonly OutOfScope[];
  readonly droppedOutside?: readonly string[];
}

/** A difference that names what the edition before does not have is a mistake, and would be lost in silence. */
const mistaken = (id: string, what: string): never => {
  throw new Error(`${id}: ${what} is not in the edition it differs from.`);
};

/** The edition after another: every record of the one before that is neither changed nor dropped, in that order, and then what is new. */
export const laterEdition = (base: Edition, difference: Difference): Edition => {
  const { renumbered = [], changed = {}, added = [], dropped = [], addedOutside = [], droppedOutside = [], read, ...heading } = difference;
  const { id } = heading;
  const items = base.records.map(({ item }) => item);
  for (const item of [...Object.keys(changed), ...dropped]) if (!items.includes(item)) mistaken(id, `"${item}"`);
  for (const { item } of added) {
    if (items.includes(item) && !dropped.includes(item)) throw new Error(`${id}: "${item}" stands in the edition before; change it.`);
  }
  for (const item of droppedOutside) if (!base.outOfScope.some((record) => record.item === item)) mistaken(id, `"${item}"`);
  const clauses = [...base.records, ...base.outOfScope].map(({ clause }) => clause);
  for (const [before] of renumbered) if (!clauses.some((clause) => clause.startsWith(before))) mistaken(id, `clause ${before}`);
  const numbered = (clause: string): string => {
    const [before, after] = renumbered.find(([beginning]) => clause.startsWith(beginning)) ?? ["", ""];
    return `${after}${clause.slice(before.length)}`;
  };
  const kept = base.records.filter(({ item }) => !dropped.includes(item)).map((record): LimitRecord => {
    const { applies = record.applies, ...otherwise } = changed[record.item] ?? {};
    return { ...record, clause: numbered(record.clause), ...read, ...otherwise, applies: [applies].flat() };
  });
  const keptOutside = base.outOfScope.filter(({ item }) => !droppedOutside.includes(item))
    .map((record): OutOfScope => ({ ...record, clause: numbered(record.clause), ...read }));
  const { records: _records, limits: _limits, plainTitle: title, ...before } = base;
  return edition({ ...before, title, ...heading, records: [...kept, ...added], outOfScope: [...keptOutside, ...addedOutside] });
};

/** Records of another edition for a code of which the sentences themselves were not found; each says so by its status. */
export const readInAnother = ({ id, records }: Edition, sources: Common["sources"], items: readonly string[]): readonly LimitRecord[] =>
  items.map((item) => {
    const record = records.find((one) => one.item === item) ?? mistaken(id, `"${item}"`);
    return { ...record, status: "checked against another edition", sources };
  });
