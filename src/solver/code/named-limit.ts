import { wordKey } from "../word-key";
import type { CodeProfile, Limit } from "./profile";

/**
 * Words for one quantity, of which codes and shops use one or another; with the rest of an item behind them too (`run public`, `going
 * infrequent`).
 * Common practice and the codes on file, no source.
 */
const ONE_QUANTITY: readonly (readonly string[])[] = [
  ["tread depth", "going", "run"],
  ["riser height", "unit rise", "rise height", "rise", "riser"],
  ["tread uniformity", "going uniformity", "run uniformity"],
];

/** The other ways to say an item, as keys. */
const otherWays = (key: string): readonly string[] =>
  ONE_QUANTITY.flatMap((ways) => {
    const keys = ways.map(wordKey);
    return keys.filter((way) => key.startsWith(way)).flatMap((way) => keys.map((other) => `${other}${key.slice(way.length)}`));
  });

/** The limit of a code that an item names, as the code has it or in another word for the same quantity. */
export const namedLimit = ({ limits }: CodeProfile, item: string): Limit | undefined => {
  const byKey = (key: string): Limit | undefined => limits.find((limit) => wordKey(limit.item) === key);
  const key = wordKey(item);
  return byKey(key) ?? otherWays(key).map(byKey).find((limit) => limit !== undefined);
};
