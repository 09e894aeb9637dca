import type { Finding } from "./bad-cells";
import type { Cell } from "./job";
import { isErrorCell, isRows, type Result } from "./job-run";

/** Every sentence a result holds, each once: of the whole call, or of its cells with the step of their row. */
export const findings = (result: Result): readonly Finding[] => {
  if (isErrorCell(result)) return [{ says: result.message }];
  if (!isRows(result)) return [];
  const steps = (result[0] ?? []).indexOf("step");
  const found = result.flatMap((row) => {
    const step = row[steps];
    return row.filter(isErrorCell).map(({ message }): Finding => (step === undefined || isErrorCell(step) ? { says: message } : { says: message, step: step as Cell }));
  });
  return found.filter((one, index) => found.findIndex(({ says, step }) => says === one.says && step === one.step) === index);
};
