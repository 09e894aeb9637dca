import { openWorkbook } from "../../src/web/open-workbook";
import type { RecordStore } from "../../src/web/records";
import type { Workbook } from "../../src/workbook/workbook";
import { shelfOf } from "../web/shelf";

/** A tab on a store: once killed it reaches the store no more, not even to end what it had begun. */
export const tabOf = (book: Workbook, records: RecordStore, id: string) => {
  let isAlive = true;
  const news = { opened: () => undefined, kept: () => undefined, notKept: () => undefined, overtaken: () => undefined };
  const whileAlive = <Parts extends object>(parts: Parts): Parts =>
    new Proxy(parts, {
      get: (target, name, self) => {
        if (!isAlive) throw new Error("the tab was killed");
        return Reflect.get(target, name, self) as unknown;
      },
    });
  const store: RecordStore = { ...records, change: (work) => records.change((found) => work(whileAlive(found))) };
  const open = openWorkbook(
    { ...book, onChange: (tell) => book.onChange((touched) => (isAlive ? tell(touched) : undefined)) },
    shelfOf(whileAlive(store)), news, () => ({ again: () => undefined, stop: () => undefined }),
  );
  return {
    id,
    shown: open.show(id),
    keep: open.keep,
    kill: () => {
      isAlive = false;
    },
  };
};
