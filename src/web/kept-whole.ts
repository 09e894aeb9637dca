import type { WorkbookData } from "../workbook/workbook-data";
import { editChain } from "./edit-chain";
import type { KeptWhole, Opening } from "./opening";
import type { PlacedEdit } from "./records";
import { bookOf, putApart, rescue, rescuedIn, type ShelfStore, wholeOf } from "./shelf-steps";

/** Up to which edit of each opening the sheets hold them, once they hold these; of what they held before, what was not yet cleared away. */
const heldThen = (
  before: Readonly<Record<string, number>> | undefined, found: readonly PlacedEdit[], now: readonly Pick<PlacedEdit, "opening" | "edit">[],
): Readonly<Record<string, number>> => {
  const held: Record<string, number> = {};
  for (const { opening } of found) if (before?.[opening] !== undefined) held[opening] = before[opening];
  for (const { opening, edit } of now) held[opening] = Math.max(held[opening] ?? 0, edit);
  return held;
};

/** What a tab wrote under its earlier opening before it heard that another had been before. */
const editsLeft = async (shelf: ShelfStore, { book, opening }: Pick<Opening, "book" | "opening">): Promise<readonly PlacedEdit[]> =>
  (await shelf.store.edits(book)).filter((edit) => edit.opening === opening);

/** Keeps sheets whole in the place of the edits that they hold, or apart where another tab was before. */
export const keptWhole = async (shelf: ShelfStore, known: Opening, edit: number, data: WorkbookData): Promise<KeptWhole> => {
  const edits = await shelf.store.edits(known.book);
  const left = known.instead === undefined ? [] : await editsLeft(shelf, known.instead);
  const mine = [...edits.filter((one) => one.opening === known.opening && one.edit <= edit), ...left];
  const [kept, gone] = await shelf.store.change(async (records): Promise<[KeptWhole, readonly PlacedEdit[]]> => {
    const book = await bookOf(records, known.book);
    const { main, others } = editChain(book, edits);
    if (book.revision !== known.revision || main.some((one) => one.opening !== known.opening && one.place > known.after)) {
      const copy = await putApart(shelf, records, book, known.opening, edit, data);
      const instead = { book: known.book, opening: known.opening };
      return [{ copy: copy.name, known: { book: copy.id, opening: shelf.newId(), revision: copy.revision, after: 0, instead } }, mine];
    }
    const theirs = new Map([...others].filter(([opening]) => opening !== known.opening));
    if (theirs.size > 0) await rescue(shelf, records, book, await wholeOf(shelf, records, known.book), theirs);
    const { deleted: _deleted, ...rest } = book;
    const followed = main.filter((one) => one.opening !== known.opening);
    const holds = heldThen(book.holds, edits, [...followed, ...left, { opening: known.opening, edit }]);
    const revision = book.revision + 1;
    await records.putBook({ ...rest, revision, keptBy: known.opening, holds, changed: shelf.now() });
    await records.putSheets(known.book, data);
    return [{ revision }, [...mine, ...followed, ...rescuedIn(theirs)]];
  });
  await shelf.store.removeEdits(gone);
  return kept;
};
