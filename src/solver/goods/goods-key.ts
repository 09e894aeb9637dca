import { TAKEOFF_ITEMS } from "../takeoff/items";
import { wordKey } from "../word-key";
import { words } from "../words";
import { plainMarks } from "./plain-marks";

/** The price row for every hour that has no price of its own. */
export const LABOUR = "labour";

const OWN: ReadonlyMap<string, string> = new Map(
  [...Object.keys(TAKEOFF_ITEMS).map(words), LABOUR].map((name) => [wordKey(name), plainMarks(name)]),
);

const OWN_KEYS: ReadonlySet<string> = new Set(OWN.values());

/** Whether a key is of an item of ours: of a takeoff, or labour. */
export const isOwnKey = (key: string): boolean => OWN_KEYS.has(key);

/** Keys of names that were asked for: a call asks several times for each of thousands. */
const asked = new Map<string, string>();
const MOST_KEPT = 50_000;

/**
 * What two spellings of one item share. An item of ours, of a closed list, is matched by its words; of every other item each mark counts,
 * for oak 4/4 is not oak 44: only case, spaces that part no numbers, and the several signs for one mark are alike.
 */
export const goodsKey = (item: string | number): string => {
  const name = String(item);
  const known = asked.get(name);
  if (known !== undefined) return known;
  const key = OWN.get(wordKey(name)) ?? plainMarks(name);
  if (asked.size >= MOST_KEPT) asked.clear();
  asked.set(name, key);
  return key;
};
