import { type Injector, LocaleService, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverFindReplacePlugin } from "@univerjs/find-replace";
import { CalculationMode, IDescriptionService, UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsDataValidationUIPlugin } from "@univerjs/sheets-data-validation-ui";
import { UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import { UniverSheetsFilterUIPlugin } from "@univerjs/sheets-filter-ui";
import { UniverSheetsFindReplacePlugin } from "@univerjs/sheets-find-replace";
import { UniverSheetsSortPlugin } from "@univerjs/sheets-sort";
import { UniverSheetsSortUIPlugin } from "@univerjs/sheets-sort-ui";
import type { FunctionsJson } from "../function-metadata";
import { liveWorkbook } from "../live-workbook";
import type { StandIn } from "../stand-in";
import { teachEngine } from "../taught-engine";
import type { Workbook } from "../workbook";
import { choiceLists } from "./choice-lists";
import { followColourScheme, isDark } from "./colour-scheme";
import { showSentences } from "./error-alerts";
import { filtering } from "./filtering";
import { explainMenu } from "./explain-menu";
import { finding } from "./finding";
import { functionHelp } from "./function-help";
import { generalNumbers } from "./general-numbers";
import { followLinks } from "./links";
import { noRawKeys } from "./no-raw-keys";
import { pageWords } from "./page-words";
import { pastedLooks } from "./pasted-looks";
import { pastedTable } from "./pasted-table";
import { takesKeys } from "./ready-for-keys";
import { type Selection, selection } from "./selection";
import { shortcutsInTime } from "./shortcuts-in-time";
import { findWithinReach, menus } from "./menus";
import { refusedNames } from "./refused-names";
import { redrawnLooks } from "./redrawn-looks";
import { sorting } from "./sorting";
import { spilledCopies } from "./spilled-copies";
import { tabChain } from "./tab-chain";
import { touch } from "./touch";
import { editSizes, readTyping } from "./typing";
import { typingKept } from "./typing-kept";

export type { SelectedCell } from "./selection";

/** The workbook in the page, with what only a page has. */
export interface SheetPage extends Workbook, Pick<Selection, "selected" | "onSelection" | "select"> {
  /** Calls after another workbook was loaded. */
  readonly onLoad: (tell: () => void) => void;
  /** Calls when somebody wants the cell selected explained. */
  readonly onExplain: (tell: () => void) => void;
}

const mounted = (element: HTMLElement): Univer => {
  const locales = { [LocaleType.EN_US]: pageWords };
  const univer = new Univer({ locale: LocaleType.EN_US, locales, logLevel: LogLevel.WARN, darkMode: isDark() });
  noRawKeys(univer.__getInjector().get(LocaleService));
  const formula = { initialFormulaComputing: CalculationMode.FORCED };
  // A text is no fault of its cell: no flag in the corner, no warning.
  const sheets = { disableForceStringMark: true, disableForceStringAlert: true };
  const flags = { disableTextFormatMark: true, disableTextFormatAlert: true, sheets };
  const { plugins } = UniverSheetsCorePreset({ container: element, ribbonType: "simple", menu: menus, formula, ...flags });
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationUIPlugin, { showEditOnDropdown: false, showSearchOnDropdown: false });
  univer.registerPlugin(UniverSheetsFilterPlugin);
  univer.registerPlugin(UniverSheetsFilterUIPlugin);
  univer.registerPlugin(UniverFindReplacePlugin);
  univer.registerPlugin(UniverSheetsFindReplacePlugin);
  univer.registerPlugin(UniverSheetsSortPlugin);
  univer.registerPlugin(UniverSheetsSortUIPlugin);
  return univer;
};

const mend = (injector: Injector, metadata: FunctionsJson, workbook: Workbook): void => {
  injector.get(IDescriptionService).registerDescriptions(metadata.functions.map(functionHelp));
  readTyping(injector);
  editSizes(injector);
  generalNumbers(injector);
  showSentences(injector, workbook);
  shortcutsInTime(injector);
  typingKept(injector);
  spilledCopies(injector, workbook);
  pastedTable(injector);
  pastedLooks(injector);
  tabChain(injector);
  choiceLists(injector);
  redrawnLooks(injector);
  refusedNames(injector);
  findWithinReach(injector);
  finding(injector);
  sorting(injector, workbook);
  filtering(injector);
  followColourScheme(injector);
};

/** Mounts the sheet in an element of the page that has a height. */
export const sheetPage = (element: HTMLElement, metadata: FunctionsJson, built: StandIn): SheetPage => {
  const univer = mounted(element);
  const injector = univer.__getInjector();
  teachEngine(injector, metadata, built);
  const workbook = liveWorkbook(univer);
  let isSetUp = false;
  let isLoading = false;
  let isNew = false;
  const loaded: (() => void)[] = [];
  const explaining: (() => void)[] = [];
  const { selected, onSelection, select, takeKeys, tell, follow } = selection(injector, workbook, () => isLoading);

  // What is mended is there once the first workbook is.
  const setUp = (): void => {
    if (isSetUp) return;
    isSetUp = true;
    mend(injector, metadata, workbook);
    followLinks(injector, select);
    explainMenu(injector, () => {
      for (const hears of explaining) hears();
    });
    touch(element, injector);
    follow();
  };

  return {
    ...workbook,
    // A page is at rest once it is also drawn and a key would go to the selected cell.
    settled: async () => {
      await workbook.settled();
      await takesKeys(injector);
      // A workbook that comes once the sheet is drawn does not take the keys by itself.
      if (isNew) await takeKeys();
      isNew = false;
    },
    load: (data) => {
      isLoading = true;
      try {
        workbook.load(data);
      } finally {
        isLoading = false;
      }
      isNew = true;
      setUp();
      tell();
      for (const hears of loaded) hears();
    },
    onLoad: (hears) => void loaded.push(hears),
    onExplain: (hears) => void explaining.push(hears),
    selected,
    onSelection,
    select,
  };
};
