import { ICommandService, type ICellData, type Injector, type Nullable, ObjectMatrix } from "@univerjs/core";
import { type BaseFunction, IFunctionService, Lexer, LexerNode, ValueObjectFactory } from "@univerjs/engine-formula";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/sheets";
import { anchorArrayFormula } from "./anchor-array-formula";
import { compareByValue } from "./compared-values";
import { asOperator, withExactMode } from "./comparison-operators";
import { keepEmptyTexts } from "./empty-text";
import { withoutFetching } from "./no-pictures";
import type { FunctionsJson } from "./function-metadata";
import { ownTree } from "./own-tree";
import { refusedOverSheets, severalSheets } from "./several-sheets";
import { withRoomToGrow } from "./sheet-room";
import { spillFunctions, withSpillTexts } from "./spill-reference";
import type { StandIn } from "./stand-in";
import { worksheetExecutors } from "./worksheet-executor";

// The sentence of an error stays in the cell until something else is written there, so writing a value takes it away.
const withoutOldSentences = (injector: Injector): void => {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== SetRangeValuesMutation.id) return;
    const { cellValue } = params as ISetRangeValuesMutationParams;
    new ObjectMatrix<Nullable<ICellData>>(cellValue ?? {}).forValue((_row, _column, cell) => {
      if (cell && ("v" in cell || "f" in cell) && cell.custom === undefined) cell.custom = null;
    });
  });
};

const withSpillReferences = (injector: Injector): void => {
  const lexer = injector.get(Lexer);
  const treeBuilder = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula: string, ...rest) => {
    const onSheets = formula.includes(":") ? refusedOverSheets(formula) : formula;
    const tree = treeBuilder(onSheets.includes("#") ? anchorArrayFormula(onSheets) : onSheets, ...rest);
    return tree instanceof LexerNode ? ownTree(tree) : tree;
  };
};

// Functions that hand a text on as it is. The engine would take "1/2" among their arguments for the 2nd of January.
const TEXT_TAKERS: ReadonlySet<string> = new Set([
  "IF",
  "IFS",
  "IFERROR",
  "IFNA",
  "SWITCH",
  "CHOOSE",
  "LET",
  "VSTACK",
  "HSTACK",
  "XLOOKUP",
  "VLOOKUP",
  "HLOOKUP",
  "LOOKUP",
  "MATCH",
  "XMATCH",
  "CONCAT",
  "CONCATENATE",
  "TEXTJOIN",
  "EXACT",
  "LEN",
  "LEFT",
  "RIGHT",
  "MID",
  "FIND",
  "SEARCH",
  "REPLACE",
  "SUBSTITUTE",
  "TRIM",
  "UPPER",
  "LOWER",
  "PROPER",
  "REPT",
  "TEXTSPLIT",
  "TEXTBEFORE",
  "TEXTAFTER",
  "T",
  "ISTEXT",
  "ISNUMBER",
]);

/** The engine sorts in place what it keeps of the cells for every other formula of the round. */
const ofACopy = (sort: BaseFunction): void => {
  const plain = sort.calculate.bind(sort);
  sort.calculate = (given, ...rest) => plain(given.isArray() ? given.mapValue((cell) => cell) : given, ...rest);
};

const MENDS: Readonly<Record<string, (executor: BaseFunction, injector: Injector) => void>> = {
  COMPARE: asOperator,
  IMAGE: withoutFetching,
  INDIRECT: withSpillTexts,
  RANDARRAY: withRoomToGrow,
  SEQUENCE: withRoomToGrow,
  SORT: ofACopy,
  XLOOKUP: withExactMode(4),
  XMATCH: withExactMode(2),
};

/** The engine makes its own functions after ours: each is put right when it is first asked for. */
const withFunctionsPutRight = (injector: Injector): void => {
  const functions = injector.get(IFunctionService);
  const executorOf = functions.getExecutor.bind(functions);
  const seen = new WeakSet<BaseFunction>();
  functions.getExecutor = (name) => {
    const executor = executorOf(name);
    if (!executor || seen.has(executor)) return executor;
    seen.add(executor);
    if (TEXT_TAKERS.has(String(name))) executor.isArgumentsIgnoreNumberPattern = () => true;
    MENDS[String(name)]?.(executor, injector);
    return executor;
  };
};

const isQuoted = (raw: unknown): boolean => typeof raw === "string" && raw.length > 1 && raw.startsWith('"') && raw.endsWith('"');

// The same for the texts of a constant array such as {"1/2","3/4"}, which the engine reads without saying how.
const plainCreate = ValueObjectFactory.create.bind(ValueObjectFactory);
ValueObjectFactory.create = (raw, isText) => plainCreate(raw, isText ?? isQuoted(raw));

// What every workbook of a process shares is put right once.
compareByValue();
keepEmptyTexts();

/** Teaches an engine, before its first workbook, our functions and A1#, and to keep the sentence of an error with its cell. */
export const teachEngine = (injector: Injector, metadata: FunctionsJson, built: StandIn): void => {
  injector.get(IFunctionService).registerExecutors(...spillFunctions(), severalSheets(), ...worksheetExecutors(metadata.functions, built));
  withFunctionsPutRight(injector);
  withSpillReferences(injector);
  withoutOldSentences(injector);
};
