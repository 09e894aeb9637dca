import { TAKEOFF_ITEMS } from "../takeoff/items";
import { words } from "../words";
import { plainMarks } from "./plain-marks";

/** The price row for every hour that has no price of its own. */
export const LABOUR = "labour";

/** American spellings of words in names of ours. */
const BRITISH: Readonly<Record<string, string>> = { labor: LABOUR, mitered: "mitred" };

const singular = (word: string): string => word.replace(/(?<=ch|sh|ss|x)es$|(?<!s)s$/, "");

/** Names of ours are a closed list, so letters and digits alone tell them apart, in either spelling, one or many. */
const folded = (name: string): string =>
  name
    .normalize("NFC")
    .toLowerCase()
    .split(/[^\p{L}\p{N}+]+/u)
    .map((word) => singular(BRITISH[word] ?? word))
    .join("");

const OWN: ReadonlyMap<string, string> = new Map([...Object.keys(TAKEOFF_ITEMS).map(words), LABOUR].map((name) => [folded(name), plainMarks(name)]));

const OWN_KEYS: ReadonlySet<string> = new Set(OWN.values());

/** Whether a key is of an item of ours: of a takeoff, or labour. */
export const isOwnKey = (key: string): boolean => OWN_KEYS.has(key);

/**
 * What two spellings of one item share. An item of ours is matched by its letters; of every other item each mark counts, for oak 4/4 is not
 * oak 44: only case, spaces that part no numbers, and the several signs for one mark are alike.
 */
export const goodsKey = (item: string | number): string => {
  const name = String(item);
  return OWN.get(folded(name)) ?? plainMarks(name);
};
