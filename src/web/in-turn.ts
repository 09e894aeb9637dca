/** Begins each step once the one before has ended, well or not. */
export const inTurn = (): (<Value>(step: () => Promise<Value>) => Promise<Value>) => {
  let before: Promise<unknown> = Promise.resolve();
  return (step) => {
    const mine = before.then(step);
    before = mine.catch(() => undefined);
    return mine;
  };
};
