import {
  type ICellData,
  ICommandService,
  type Injector,
  type IStyleData,
  IUniverInstanceService,
  type IWorkbookData,
  type Nullable,
  type Univer,
  UniverInstanceType,
  type Workbook as EngineWorkbook,
  type Worksheet,
} from "@univerjs/core";
import { engineSnapshot } from "./engine-snapshot";
import { forgetRules } from "./rules-kept";
import { workbookData } from "./workbook-data";

// The engine keeps the formulas it has read, with the functions in them, by workbook: no two in a process may go by one name.
let loads = 0;
// Nor may two sheets of a workbook, those taken away again among them.
let added = 0;

/** The workbook that an engine holds, which one after another takes the place of, for the parts that read it and write into it. */
export interface OpenBook {
  readonly injector: Injector;
  readonly load: (data: unknown) => void;
  readonly current: () => EngineWorkbook;
  readonly sheetNamed: (name: string) => Worksheet;
  /** The name of a sheet by the engine's own name for it. */
  readonly nameOf: (id: string) => string | undefined;
  readonly newSheetId: () => string;
  readonly styleOf: (cell: Nullable<ICellData>) => Nullable<IStyleData>;
  /** Has the engine do something on a sheet; false where it refuses. */
  readonly onSheet: (command: string, name: string, params: object) => boolean;
}

export const openBook = (univer: Univer): OpenBook => {
  const injector = univer.__getInjector();
  let book: EngineWorkbook | undefined;

  const current = (): EngineWorkbook => {
    if (book === undefined) throw new Error("The workbook is empty: load one first.");
    return book;
  };
  const sheetNamed = (name: string): Worksheet => {
    const sheet = current().getSheetBySheetName(name);
    if (!sheet) throw new Error(`sheet: there is no "${name}"; there are ${current().getSheets().map((one) => one.getName()).join(", ")}`);
    return sheet;
  };

  return {
    injector,
    current,
    sheetNamed,
    load: (data) => {
      const checked = workbookData(data);
      if (book !== undefined) {
        forgetRules(injector, book.getUnitId());
        injector.get(IUniverInstanceService).disposeUnit(book.getUnitId());
      }
      loads += 1;
      const snapshot = engineSnapshot(`workbook-${loads}`, checked);
      book = univer.createUnit<IWorkbookData, EngineWorkbook>(UniverInstanceType.UNIVER_SHEET, snapshot);
    },
    nameOf: (id) => book?.getSheetBySheetId(id)?.getName(),
    newSheetId: () => {
      added += 1;
      return `added-${loads}-${added}`;
    },
    styleOf: (cell) => (cell ? current().getStyles().getStyleByCell(cell) : undefined),
    onSheet: (command, name, params) => {
      const where = { unitId: current().getUnitId(), subUnitId: sheetNamed(name).getSheetId() };
      return injector.get(ICommandService).syncExecuteCommand(command, { ...where, ...params });
    },
  };
};
