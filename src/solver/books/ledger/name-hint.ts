import type { NearName } from "../../goods/near-names";
import { isWithinSlips } from "../../goods/within-slips";
import type { Article } from "./article";

/** Names compared for hints in one table: the work is bounded, whatever the names. */
const MOST_COMPARED = 200_000;
/** Letters and figures from which two slips may be one name. */
const TWO_SLIPS_FROM = 9;

/**
 * A name that goods which are short may be entered under: one slip of the hand away, in its figures too, for here a wrong number is as
 * likely as a wrong letter. Nothing is merged.
 */
export const nameHint = (articles: readonly Article[], near: NearName): ((article: Article) => string) => {
  let compared = 0;
  const known = new Map<string, string>();
  const found = ({ key, name }: Article): string => {
    const suspect = near(name);
    if (suspect !== undefined) return ` (like "${suspect.item}" in row ${suspect.row})`;
    const slips = key.length >= TWO_SLIPS_FROM ? 2 : 1;
    for (let allowed = 1; allowed <= slips; allowed += 1) {
      for (const other of articles) {
        if (other.key === key || Math.abs(other.key.length - key.length) > allowed) continue;
        compared += 1;
        if (compared > MOST_COMPARED) return "";
        if (isWithinSlips(key, other.key, allowed)) return ` (like "${String(other.name)}" in row ${other.row})`;
      }
    }
    return "";
  };
  return (article) => {
    const hint = known.get(article.key) ?? found(article);
    known.set(article.key, hint);
    return hint;
  };
};
