import { ICommandService, type ICommandInfo, type IExecutionOptions, type Injector, type IRange, type Nullable } from "@univerjs/core";
import {
  FormulaDataModel, IActiveDirtyManagerService, SetFormulaCalculationNotificationMutation, SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation, SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { ClearSelectionFormatCommand, SetBorderCommand, SetRangeValuesMutation, SetStyleCommand } from "@univerjs/sheets";

/** A spilled block by its size and by how many of its cells hold something. */
interface Block {
  readonly height: number;
  readonly width: number;
  readonly filled: number;
}

type Blocks = ReadonlyMap<string, Block>;

const blocks = (model: FormulaDataModel): Blocks => {
  const found = new Map<string, Block>();
  const cells = model.getArrayFormulaCellData();
  for (const [unit, sheets] of Object.entries(model.getArrayFormulaRange())) {
    for (const [sheet, rows] of Object.entries(sheets ?? {})) {
      for (const [row, columns] of Object.entries(rows ?? {})) {
        for (const [column, range] of Object.entries<Nullable<IRange>>(columns ?? {})) {
          if (!range) continue;
          let filled = 0;
          for (let r = range.startRow; r <= range.endRow; r += 1) {
            for (let c = range.startColumn; c <= range.endColumn; c += 1) if (cells[unit]?.[sheet]?.[r]?.[c]) filled += 1;
          }
          found.set([unit, sheet, row, column].join(" "), { height: range.endRow - range.startRow, width: range.endColumn - range.startColumn, filled });
        }
      }
    }
  }
  return found;
};

const hasShrunk = (before: Blocks, now: Blocks): boolean =>
  [...before].some(([key, block]) => {
    const next = now.get(key);
    return next === undefined || next.height < block.height || next.width < block.width || next.filled < block.filled;
  });

// A block may shrink because another one did; three rounds end a chain that never comes to rest.
const ROUNDS = 3;
const LONGEST_WAIT = 120_000;
const STYLE_COMMANDS: readonly unknown[] = [SetStyleCommand.id, SetBorderCommand.id, ClearSelectionFormatCommand.id];

export interface Settling {
  readonly settled: () => Promise<void>;
  readonly dispose: () => void;
}

/**
 * Knows when the engine is at rest, and sees to it that it rests on right values: formulas that read cells of a spill that shrank or was
 * blocked keep the old values until everything is worked out once more, so that is asked for.
 */
export const settling = (injector: Injector): Settling => {
  const commands = injector.get(ICommandService);
  const waiting = new Set<() => void>();
  let before: Blocks = new Map();
  let rounds = 0;
  let isDue = false;
  let isRunning = false;

  const isAtRest = (): boolean => !isDue && !isRunning;

  const rest = (): void => {
    setTimeout(() => {
      if (!isAtRest()) return;
      rounds = 0;
      for (const go of waiting) go();
      waiting.clear();
    }, 0);
  };

  const startsCalculation = ({ id, params }: Readonly<ICommandInfo>, how?: IExecutionOptions): boolean => {
    if (injector.get(IActiveDirtyManagerService).get(id) === undefined) return false;
    if (id !== SetRangeValuesMutation.id) return true;
    return how?.onlyLocal !== true && !STYLE_COMMANDS.includes((params as { readonly trigger?: unknown } | undefined)?.trigger);
  };

  const recheck = (): void => {
    const now = blocks(injector.get(FormulaDataModel));
    const shrunk = hasShrunk(before, now);
    before = now;
    if (!shrunk || rounds >= ROUNDS) return;
    rounds += 1;
    void commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, { commands: [], forceCalculation: true }, { onlyLocal: true });
  };

  const listener = commands.onCommandExecuted((command, how) => {
    if (command.id === SetFormulaCalculationStartMutation.id) {
      isDue = false;
      isRunning = true;
    } else if (command.id === SetFormulaCalculationResultMutation.id) recheck();
    else if (command.id === SetFormulaCalculationNotificationMutation.id) {
      if ((command.params as { readonly functionsExecutedState?: number }).functionsExecutedState === undefined) return;
      isRunning = false;
      rest();
    } else if (startsCalculation(command, how)) isDue = true;
  });

  return {
    settled: () =>
      new Promise((resolve, reject) => {
        const limit = setTimeout(() => {
          waiting.delete(go);
          reject(new Error(`The sheet is still calculating after ${LONGEST_WAIT / 1000} seconds.`));
        }, LONGEST_WAIT);
        const go = (): void => {
          clearTimeout(limit);
          resolve();
        };
        waiting.add(go);
        rest();
      }),
    dispose: () => listener.dispose(),
  };
};
