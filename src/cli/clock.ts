/** Makes the time stand still for whoever asks from now on: TODAY and NOW of a workbook then answer the same on every run. */
export const standStill = (moment: Date): void => {
  const Running = Date;
  const still = moment.getTime();
  class StillDate extends Running {
    constructor(...given: readonly unknown[]) {
      super(...((given.length === 0 ? [still] : given) as ConstructorParameters<DateConstructor>));
    }

    static override now(): number {
      return still;
    }
  }
  Object.assign(globalThis, { Date: StillDate });
};
