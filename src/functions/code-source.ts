import { namedLimit } from "../solver/code/named-limit";
import { foundCode } from "../solver/code/profiles";
import { isProblem } from "../solver/problem";

/** A building code with its edition, and where one of its limits stands and was read. */
export interface CodeSource {
  readonly edition: string;
  readonly clause?: string;
  /** The limit as it is printed, with its unit. */
  readonly printed?: string;
  /** The unit it is printed in; empty where it has none. */
  readonly unit?: string;
  readonly status?: string;
  readonly read?: readonly string[];
}

/** The edition of a code, and the clause of an item of it where it has that item; undefined for a code that is not known. */
export const codeSource = (code: string, item: string | undefined): CodeSource | undefined => {
  const found = foundCode(code);
  if (isProblem(found)) return undefined;
  const { profile } = found;
  const edition = `${profile.title}, edition ${profile.edition}`;
  const limit = item === undefined ? undefined : namedLimit(profile, item);
  if (limit === undefined) return { edition };
  const unit = limit.unit === "count" || limit.unit === "ratio" ? "" : limit.unit;
  return {
    edition, clause: limit.clause, printed: `${limit.text} ${unit}`.trim(), unit, status: limit.status,
    read: limit.sources.map(({ title }) => title),
  };
};
