import { ICommandService, type Injector } from "@univerjs/core";
import {
  FormulaExecuteStageType, type ISetFormulaCalculationNotificationMutation, SetFormulaCalculationNotificationMutation,
} from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";

const LONGEST_WAIT = 120_000;

/** What the engine keeps of the calculations it owes: commands it has not yet answered by one, and one stopped that is to begin anew. */
interface Owed {
  readonly _waitingCommandQueue: readonly unknown[];
  readonly _restartCalculation: boolean;
}

const isNoneOwed = (injector: Injector): boolean => {
  const { _waitingCommandQueue: queue, _restartCalculation: isStopped } = injector.get(TriggerCalculationController) as unknown as Owed;
  if (!Array.isArray(queue) || typeof isStopped !== "boolean") {
    throw new Error("The sheet engine no longer says what it still has to calculate: see engine-rest.ts.");
  }
  return queue.length === 0 && !isStopped;
};

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

export interface EngineRest {
  /** When the engine is at rest. */
  readonly settled: () => Promise<void>;
  readonly dispose: () => void;
}

/** Knows when the engine is at rest, by what it says of itself and never by a clock; `came` is called whenever it has come to it. */
export const engineRest = (injector: Injector, came: () => void): EngineRest => {
  const waiting = new Set<() => void>();
  let running = 0;
  let isDisposed = false;

  // What a command of the engine sets off comes before the next turn, so that only then it is seen whether anything is left to do.
  const rest = (): void => {
    setTimeout(() => {
      if (isDisposed || running > 0 || !isNoneOwed(injector)) return;
      came();
      for (const go of waiting) go();
      waiting.clear();
    }, 0);
  };

  const listener = injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
    if (id !== SetFormulaCalculationNotificationMutation.id) return;
    const stage = (params as ISetFormulaCalculationNotificationMutation).stageInfo?.stage;
    // Each calculation tells its start and its end, stopped or not; two of them may overlap.
    if (stage === FormulaExecuteStageType.START) running += 1;
    if (stage !== FormulaExecuteStageType.CALCULATION_COMPLETED) return;
    running -= 1;
    rest();
  });

  return {
    settled: () => rested(waiting, rest),
    dispose: () => {
      isDisposed = true;
      listener.dispose();
    },
  };
};
