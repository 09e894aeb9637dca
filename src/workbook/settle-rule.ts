import { ICommandService, type Injector } from "@univerjs/core";
import {
  FormulaDataModel, SetFormulaCalculationResultMutation, SetFormulaCalculationStartMutation, SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import { engineRest, type EngineRest } from "./engine-rest";
import { grownForSpills } from "./sheet-room";
import { type Blocks, hasShrunk, haveChanged, spilledBlocks } from "./spilled-blocks";
import { takenBack } from "./taken-back";

// A block may shrink because another one did; three rounds end a chain that never comes to rest.
const ROUNDS = 3;

export interface Settling extends EngineRest {
  /** Has the first calculation of a workbook just loaded asked for now: in a page the engine would wait until the sheet is drawn. */
  readonly begin: () => void;
}

/**
 * Sees to it that the engine rests on right values, by working everything out once more: formulas that read cells of a spill keep the old
 * values where the spill shrank, was blocked or taken back, and where it follows another spill by cells below its first; and what spills
 * past the end of a sheet shows only once the sheet has grown.
 */
export const settling = (injector: Injector): Settling => {
  const commands = injector.get(ICommandService);
  let before: Blocks = new Map();
  let rounds = 0;
  let isForced = false;
  const wasTakenBack = takenBack(injector);

  const recheck = (): void => {
    const now = spilledBlocks(injector.get(FormulaDataModel));
    const hasRoom = grownForSpills(injector);
    const isStale = wasTakenBack() || hasRoom || hasShrunk(before, now) || (!isForced && haveChanged(before, now));
    before = now;
    if (!isStale || rounds >= ROUNDS) return;
    rounds += 1;
    const everything = { commands: [], forceCalculation: true };
    void commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, everything, { onlyLocal: true });
  };

  const listener = commands.onCommandExecuted(({ id, params }) => {
    if (id === SetFormulaCalculationStartMutation.id)
      isForced = (params as { readonly forceCalculation?: boolean }).forceCalculation === true;
    else if (id === SetFormulaCalculationResultMutation.id) recheck();
  });
  const rest = engineRest(injector, () => {
    rounds = 0;
  });

  return {
    begin: () => void injector.get(TriggerCalculationController),
    settled: rest.settled,
    dispose: () => {
      rest.dispose();
      listener.dispose();
    },
  };
};
