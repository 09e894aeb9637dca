import { ICommandService, type Injector, type IRange, type Nullable } from "@univerjs/core";
import {
  FormulaDataModel, FormulaExecuteStageType, type ISetFormulaCalculationNotificationMutation, SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation, SetFormulaCalculationStartMutation, SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";

/** A spilled block by its size, by how many of its cells hold something, and by what they hold. */
interface Block {
  readonly height: number;
  readonly width: number;
  readonly filled: number;
  readonly held: string;
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
          const held: unknown[] = [];
          for (let r = range.startRow; r <= range.endRow; r += 1) {
            for (let c = range.startColumn; c <= range.endColumn; c += 1) {
              const cell = cells[unit]?.[sheet]?.[r]?.[c];
              held.push(cell ? (cell.v ?? "") : null);
            }
          }
          found.set([unit, sheet, row, column].join(" "), {
            height: range.endRow - range.startRow,
            width: range.endColumn - range.startColumn,
            filled: held.filter((one) => one !== null).length,
            held: JSON.stringify(held),
          });
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

/** Whether two blocks or more differ, so that one of them may have been worked out from what the other held before. */
const haveChanged = (before: Blocks, now: Blocks): boolean =>
  [...now].filter(([key, block]) => {
    const last = before.get(key);
    return last === undefined || last.height !== block.height || last.width !== block.width || last.held !== block.held;
  }).length > 1;

// A block may shrink because another one did; three rounds end a chain that never comes to rest.
const ROUNDS = 3;
const LONGEST_WAIT = 120_000;

/** What the engine keeps of the calculations it owes: commands it has not yet answered by one, and one stopped that is to begin anew. */
interface Owed {
  readonly _waitingCommandQueue: readonly unknown[];
  readonly _restartCalculation: boolean;
}

const owed = (injector: Injector): Owed => {
  const found = injector.get(TriggerCalculationController) as unknown as Owed;
  if (!Array.isArray(found._waitingCommandQueue) || typeof found._restartCalculation !== "boolean") {
    throw new Error("The sheet engine no longer says what it still has to calculate: see settle-rule.ts.");
  }
  return found;
};

export interface Settling {
  /** Has the first calculation of a workbook just loaded asked for now: in a page the engine would wait until the sheet is drawn. */
  readonly begin: () => void;
  readonly settled: () => Promise<void>;
  readonly dispose: () => void;
}

/** Waits until the engine rests, and gives up where it does not: it joins those waiting, and asks once whether it rests already. */
const rested = (waiting: Set<() => void>, ask: () => void): Promise<void> =>
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
    ask();
  });

/**
 * Knows when the engine is at rest, and sees to it that it rests on right values: formulas that read cells of a spill keep the old values
 * where the spill shrank or was blocked, and where it follows another spill by cells below its first; so everything is worked out once
 * more.
 */
export const settling = (injector: Injector): Settling => {
  const commands = injector.get(ICommandService);
  const waiting = new Set<() => void>();
  let before: Blocks = new Map();
  let rounds = 0;
  let running = 0;
  let isForced = false;
  let isDisposed = false;

  const isAtRest = (): boolean => {
    const { _waitingCommandQueue: queue, _restartCalculation: isStopped } = owed(injector);
    return queue.length === 0 && !isStopped && running === 0;
  };

  // What a command of the engine sets off comes before the next turn, so that only then it is seen whether anything is left to do.
  const rest = (): void => {
    setTimeout(() => {
      if (isDisposed || !isAtRest()) return;
      rounds = 0;
      for (const go of waiting) go();
      waiting.clear();
    }, 0);
  };

  const recheck = (): void => {
    const now = blocks(injector.get(FormulaDataModel));
    const isStale = hasShrunk(before, now) || (!isForced && haveChanged(before, now));
    before = now;
    if (!isStale || rounds >= ROUNDS) return;
    rounds += 1;
    void commands.executeCommand(
      SetTriggerFormulaCalculationStartMutation.id,
      { commands: [], forceCalculation: true },
      { onlyLocal: true },
    );
  };

  const follow = (stage: FormulaExecuteStageType | undefined): void => {
    // Each calculation tells its start and its end, stopped or not; two of them may overlap.
    if (stage === FormulaExecuteStageType.START) running += 1;
    if (stage !== FormulaExecuteStageType.CALCULATION_COMPLETED) return;
    running -= 1;
    rest();
  };

  const listener = commands.onCommandExecuted(({ id, params }) => {
    if (id === SetFormulaCalculationStartMutation.id)
      isForced = (params as { readonly forceCalculation?: boolean }).forceCalculation === true;
    else if (id === SetFormulaCalculationResultMutation.id) recheck();
    else if (id === SetFormulaCalculationNotificationMutation.id)
      follow((params as ISetFormulaCalculationNotificationMutation).stageInfo?.stage);
  });

  return {
    begin: () => void injector.get(TriggerCalculationController),
    settled: () => rested(waiting, rest),
    dispose: () => {
      isDisposed = true;
      listener.dispose();
    },
  };
};
