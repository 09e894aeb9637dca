import { type Injector, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import { IRenderManagerService } from "@univerjs/engine-render";
import { SheetSkeletonManagerService } from "@univerjs/preset-sheets-core";
import { ConditionalFormattingViewModel } from "@univerjs/sheets-conditional-formatting";

/** The sheet on the screen is drawn anew when rules come to another look. */
export const redrawnLooks = (injector: Injector): void => {
  const instances = injector.get(IUniverInstanceService);
  let isAsked = false;
  const draw = (): void => {
    isAsked = false;
    const unit = instances.getCurrentUnitOfType(UniverInstanceType.UNIVER_SHEET)?.getUnitId();
    const shown = unit === undefined ? undefined : injector.get(IRenderManagerService).getRenderById(unit);
    shown?.with(SheetSkeletonManagerService).reCalculate();
    shown?.mainComponent?.makeDirty();
  };
  injector.get(ConditionalFormattingViewModel).markDirty$.subscribe(() => {
    if (isAsked) return;
    isAsked = true;
    requestAnimationFrame(draw);
  });
};
