import {
  ICommandService, type Injector, type IRange, IUniverInstanceService, type Nullable, UniverInstanceType, type Workbook as EngineWorkbook,
} from "@univerjs/core";
import { type FindModel, FindScope, IFindReplaceService } from "@univerjs/find-replace";
import { SelectRangeCommand, SetWorksheetActivateCommand } from "@univerjs/sheets";
import { SheetsFindReplaceController } from "@univerjs/sheets-find-replace";

/** What the engine says of a cell found. */
interface Found {
  readonly unitId: string;
  readonly range: { readonly subUnitId: string; readonly range: IRange };
}

/** What the engine keeps of the cells it has found. */
interface FoundCells {
  readonly getMatches: () => readonly unknown[];
  _findNextMatchByRange?: (found: readonly Found[], from: IRange, isSelf?: boolean) => readonly [Found | undefined, number];
}

const isAfter = (at: IRange, from: IRange, isSelf: boolean): boolean =>
  at.startRow > from.startRow ||
  (at.startRow === from.startRow && (isSelf ? at.startColumn >= from.startColumn : at.startColumn > from.startColumn));

/** The engine begins with the last cell found where none is selected; here with the next one from the selected cell on. */
const fromSelected = (model: FindModel, shownSheet: () => string | undefined): FindModel => {
  const cells = model as unknown as FoundCells;
  if (cells._findNextMatchByRange === undefined) throw new Error("The sheet engine no longer finds from a cell on: see finding.ts.");
  cells._findNextMatchByRange = (found, from, isSelf = false) => {
    const isHere = found[0]?.range.subUnitId === shownSheet();
    const next = (isHere ? found.find(({ range }) => isAfter(range.range, from, isSelf)) : undefined) ?? found[0];
    return [next, cells.getMatches().indexOf(next)];
  };
  return model;
};

/**
 * Find looks through all sheets and selects the cell it comes to. It only finds: what it would replace in a length is not what the cell
 * shows.
 */
export const finding = (injector: Injector): void => {
  const find = injector.get(IFindReplaceService);
  const commands = injector.get(ICommandService);
  const shownSheet = (): string | undefined =>
    injector
      .get(IUniverInstanceService)
      .getCurrentUnitOfType<EngineWorkbook>(UniverInstanceType.UNIVER_SHEET)
      ?.getActiveSheet()
      .getSheetId();

  const register = find.registerFindReplaceProvider.bind(find);
  find.registerFindReplaceProvider = (provider) =>
    register({
      find: async (query) => (await provider.find(query)).map((model) => fromSelected(model, shownSheet)),
      terminate: () => provider.terminate(),
    });
  const start = find.start.bind(find);
  find.start = () => {
    const isOpen = start(false);
    if (isOpen) find.changeFindScope(FindScope.UNIT);
    return isOpen;
  };
  find.revealReplace = () => undefined;

  // The engine's own search follows a move of the user, of which this is none.
  const quietly = { fromFindReplace: true };
  const stand = async ({ unitId, range: { subUnitId, range } }: Found): Promise<void> => {
    if (subUnitId !== shownSheet()) await commands.executeCommand(SetWorksheetActivateCommand.id, { unitId, subUnitId }, quietly);
    await commands.executeCommand(SelectRangeCommand.id, { unitId, subUnit: subUnitId, range }, quietly);
  };
  find.currentMatch$.subscribe((match: Nullable<unknown>) => {
    if (match) void stand(match as Found);
  });
  // Otherwise it comes seconds after the sheet.
  injector.get(SheetsFindReplaceController);
};
