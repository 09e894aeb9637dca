import { type ICellData, type Injector, IUniverInstanceService, type Nullable, UniverInstanceType, type Workbook as EngineWorkbook } from "@univerjs/core";
import { HoverManagerService, IEditorBridgeService, IMessageService } from "@univerjs/preset-sheets-core";
import { cellAddress } from "../../sheets/cell-address";
import { linkTarget } from "../link-target";

/** Milliseconds that a sentence stays on the screen. */
const READ_IN = 6000;

const linkIn = (cell: Nullable<ICellData>): string | undefined => {
  const links = cell?.p?.body?.customRanges?.flatMap(({ properties }): readonly unknown[] => (properties ? [properties["url"]] : []));
  return links?.find((link) => typeof link === "string");
};

/** A click on a cell that links to a place of the workbook goes there. */
export const followLinks = (injector: Injector, show: (sheet: string, address: string) => Promise<void>): void => {
  const say = (content: string): void => void injector.get(IMessageService).show({ content, duration: READ_IN });
  injector.get(HoverManagerService).currentClickedCell$.subscribe(({ location: { unitId, subUnitId, row, col } }) => {
    // In a formula being typed the click names the cell.
    if (injector.get(IEditorBridgeService).isVisible().visible) return;
    const book = injector.get(IUniverInstanceService).getUnit<EngineWorkbook>(unitId, UniverInstanceType.UNIVER_SHEET);
    const from = book?.getSheetBySheetId(subUnitId);
    const link = linkIn(from?.getCell(row, col));
    if (!book || !from || link === undefined) return;
    const target = linkTarget(link);
    if (target === undefined) return say(`“${link}” is no place in this workbook, and addresses outside it are not opened here.`);
    const named = target.sheet?.toLowerCase();
    const sheet = named === undefined ? from : book.getSheets().find((one) => one.getName().toLowerCase() === named);
    if (sheet === undefined) return say(`There is no sheet “${target.sheet}” in this workbook: the link leads nowhere.`);
    const address = cellAddress(target);
    if (target.row >= sheet.getRowCount() || target.column >= sheet.getColumnCount()) return say(`${sheet.getName()} has no cell ${address}.`);
    void show(sheet.getName(), address);
  });
};
