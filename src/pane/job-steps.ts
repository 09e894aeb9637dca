export interface ListedFunction {
  readonly id: string;
  readonly group: string;
  readonly says: string;
}

export interface JobStep<F extends ListedFunction> {
  readonly name: string;
  readonly functions: readonly F[];
}

/** The functions gathered under their step of the job; steps and functions keep the order in which they are listed. */
export const jobSteps = <F extends ListedFunction>(functions: readonly F[]): readonly JobStep<F>[] =>
  [...new Set(functions.map(({ group }) => group))].map((name) => ({
    name,
    functions: functions.filter(({ group }) => group === name),
  }));
