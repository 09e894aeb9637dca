import { isSoundTaking, type KeptTaking } from "./sound-taking";

export type { KeptTaking } from "./sound-taking";

/** The part of the browser's store that is asked. */
export type Store = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

const STAIR = "treadsheet at the stair/";
const OPEN = "treadsheet at the stair: open";
const VERSION = 1;

export const keyOf = (id: string): string => `${STAIR}${id}`;

/** Keeps a stair as it is after a touch: written before the next touch can come. */
export const keep = (store: Store, taking: KeptTaking): void => {
  store.setItem(keyOf(taking.id), JSON.stringify({ version: VERSION, ...taking }));
  store.setItem(OPEN, taking.id);
};

const read = (text: string | null): KeptTaking | undefined => {
  if (text === null) return undefined;
  try {
    const { version, ...taking } = Object(JSON.parse(text)) as { readonly version?: unknown };
    return version === VERSION && isSoundTaking(taking) ? taking : undefined;
  } catch {
    return undefined;
  }
};

export const kept = (store: Store, id: string): KeptTaking | undefined => read(store.getItem(keyOf(id)));

/** Every stair kept here, the last begun first. */
export const allKept = (store: Store): readonly KeptTaking[] =>
  Array.from({ length: store.length }, (_, place) => store.key(place) ?? "")
    .filter((key) => key.startsWith(STAIR))
    .flatMap((key) => read(store.getItem(key)) ?? [])
    .sort((one, other) => (one.id < other.id ? 1 : -1));

/** The stair that was open when the page was left. */
export const keptOpen = (store: Store): KeptTaking | undefined => {
  const id = store.getItem(OPEN);
  return id === null ? undefined : kept(store, id);
};

/** Leaves the open stair where it is kept. */
export const close = (store: Store): void => store.removeItem(OPEN);

export const remove = (store: Store, id: string): void => {
  store.removeItem(keyOf(id));
  store.removeItem(OPEN);
};

/** A store that lasts as long as the page, for a browser that keeps nothing. */
export const passingStore = (): Store => {
  const values = new Map<string, string>();
  return {
    getItem: (key) => values.get(key) ?? null,
    setItem: (key, value) => void values.set(key, value),
    removeItem: (key) => void values.delete(key),
    key: (place) => [...values.keys()][place] ?? null,
    get length() {
      return values.size;
    },
  };
};
