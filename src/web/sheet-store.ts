/** Sheets as the browser keeps them between visits. */
export interface KeptSheets {
  /** Counts the times they were kept; a tab that knows an older count has been overtaken by another. */
  readonly revision: number;
  readonly data: unknown;
}

/** Where the sheets of this page are kept between visits. */
export interface SheetStore {
  readonly read: () => Promise<KeptSheets | undefined>;
  /** Keeps the sheets unless another tab has kept newer ones since `known`; answers the new revision, or undefined where it did not. */
  readonly keep: (data: unknown, known: number) => Promise<number | undefined>;
}

const DATABASE = "treadsheet";
const VERSION = 1;
const STORE = "sheets";
const KEY = "workbook";

const settled = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's store did not answer"));
  });

const opened = async (factory: IDBFactory): Promise<IDBDatabase> => {
  const request = factory.open(DATABASE, VERSION);
  request.onupgradeneeded = () => request.result.createObjectStore(STORE);
  return settled(request);
};

const isKept = (record: unknown): record is KeptSheets =>
  typeof record === "object" && record !== null && "data" in record && "revision" in record && typeof record.revision === "number";

/** The browser's own store, or a store of nothing where the browser keeps none for this page. */
export const sheetStore = async (factory: IDBFactory): Promise<SheetStore> => {
  const database = await opened(factory);
  const record = async (store: IDBObjectStore): Promise<KeptSheets | undefined> => {
    const found: unknown = await settled(store.get(KEY));
    return isKept(found) ? found : undefined;
  };
  return {
    read: () => record(database.transaction(STORE, "readonly").objectStore(STORE)),
    keep: async (data, known) => {
      // One transaction reads and writes, so that no other tab comes between.
      const store = database.transaction(STORE, "readwrite").objectStore(STORE);
      const kept = await record(store);
      if (kept !== undefined && kept.revision !== known) return undefined;
      const revision = known + 1;
      await settled(store.put({ revision, data } satisfies KeptSheets, KEY));
      return revision;
    },
  };
};
