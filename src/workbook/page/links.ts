import {
  type ICellData, type Injector, IUniverInstanceService, type Nullable, UniverInstanceType, type Workbook as EngineWorkbook, type Worksheet,
} from "@univerjs/core";
import { HoverManagerService, IEditorBridgeService } from "@univerjs/preset-sheets-core";
import { cellAddress } from "../../sheets/cell-address";
import { type LinkTarget, linkTarget } from "../link-target";
import { saying } from "./saying";

const NO_WAIT = 0;

const linkIn = (cell: Nullable<ICellData>): string | undefined => {
  const links = cell?.p?.body?.customRanges?.flatMap(({ properties }): readonly unknown[] => (properties ? [properties["url"]] : []));
  return links?.find((link) => typeof link === "string");
};

const sheetOf = ({ sheet, sheetId }: LinkTarget, book: EngineWorkbook, from: Worksheet): Nullable<Worksheet> => {
  if (sheetId !== undefined) return book.getSheetBySheetId(sheetId);
  const named = sheet?.toLowerCase();
  return named === undefined ? from : book.getSheets().find((one) => one.getName().toLowerCase() === named);
};

/** A click on a cell that links to a place of the workbook goes there. */
export const followLinks = (injector: Injector, show: (sheet: string, address: string) => Promise<void>): void => {
  const say = saying(injector);
  let isDown = false;
  window.addEventListener("pointerdown", () => void (isDown = true), true);
  window.addEventListener("pointerup", () => void (isDown = false), true);
  injector.get(HoverManagerService).currentClickedCell$.subscribe(({ location: { unitId, subUnitId, row, col } }) => {
    // In a formula being typed the click names the cell.
    if (injector.get(IEditorBridgeService).isVisible().visible) return;
    const book = injector.get(IUniverInstanceService).getUnit<EngineWorkbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    const from = book?.getSheetBySheetId(subUnitId);
    const link = linkIn(from?.getCell(row, col));
    if (!book || !from || link === undefined) return;
    const target = linkTarget(link);
    if (target === undefined) return say(`“${link}” is no place in this workbook, and addresses outside it are not opened here.`);
    const sheet = sheetOf(target, book, from);
    const which = target.sheet === undefined ? "The sheet of this link is no longer" : `There is no sheet “${target.sheet}”`;
    if (!sheet) return say(`${which} in this workbook: the link leads nowhere.`);
    const address = cellAddress(target);
    const name = sheet.getName();
    if (target.row >= sheet.getRowCount() || target.column >= sheet.getColumnCount()) return say(`${name} has no cell ${address}.`);
    // The engine speaks of a click when the button goes down; what is selected stands once it is up.
    const goTo = (): void => void setTimeout(() => void show(name, address), NO_WAIT);
    if (isDown) window.addEventListener("pointerup", goTo, { once: true });
    else goTo();
  });
};
