import { type IDisposable, type Injector, IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import { IDialogService, ILayoutService, ISheetCellDropdownManagerService, SheetsSelectionsService } from "@univerjs/preset-sheets-core";
import { SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";

const NO_WAIT = 0;

type Dropdown = Parameters<ISheetCellDropdownManagerService["showDropdown"]>[0];

/** The engine takes the value that is there already, chosen once more, for one to be taken away. */
const keepingChosen = (given: Dropdown): Dropdown => {
  if (given.type !== "list" || given.props.multiple) return given;
  const { onChange } = given.props;
  if (!onChange) return given;
  const keeping = (chosen: string[]): ReturnType<typeof onChange> => chosen.length === 0 || onChange(chosen);
  return { ...given, props: { ...given.props, onChange: keeping } };
};

/** The engine looks at entries again in an idle moment, when their workbook may have made way for another. */
const onlyWhatIsThere = (injector: Injector): void => {
  const instances = injector.get(IUniverInstanceService);
  const validator = injector.get(SheetsDataValidationValidatorService);
  const validated = validator.validatorRanges.bind(validator);
  validator.validatorRanges = async (unitId, subUnitId, ranges) => {
    const sheet = instances.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)?.getSheetBySheetId(subUnitId);
    return sheet ? validated(unitId, subUnitId, ranges) : [];
  };
};

/**
 * An opened list of choices closes by Escape and when another cell is selected, be it one with a list of its own; and once the sentence
 * about a wrong entry is read, keys go to the cell again.
 */
export const choiceLists = (injector: Injector): void => {
  onlyWhatIsThere(injector);
  const dropdowns = injector.get(ISheetCellDropdownManagerService);
  const showDropdown = dropdowns.showDropdown.bind(dropdowns);
  let open: { readonly at: string; readonly shown: IDisposable } | undefined;
  dropdowns.showDropdown = (given) => {
    const shown = showDropdown(keepingChosen(given));
    open = { at: `${given.location.row} ${given.location.col}`, shown };
    return shown;
  };
  const close = (): void => {
    open?.shown.dispose();
    open = undefined;
  };
  injector.get(SheetsSelectionsService).selectionMoveEnd$.subscribe((selections) => {
    const primary = selections.at(-1)?.primary;
    if (primary && open?.at !== `${primary.actualRow} ${primary.actualColumn}`) close();
  });
  document.addEventListener("keydown", ({ key }) => (key === "Escape" ? close() : undefined), true);
  let isAsked = false;
  injector.get(IDialogService).getDialogs$().subscribe((dialogs) => {
    const isOpen = dialogs.some(({ open: is }) => is);
    if (isAsked && !isOpen) setTimeout(() => injector.get(ILayoutService).focus(), NO_WAIT);
    isAsked = isOpen;
  });
};
