import { EXIT } from "./exit-codes";
import { refusal } from "./refusal";

/** The time that a command may take. */
export interface Limit {
  /** Ends the command where it has taken longer. */
  readonly check: () => void;
  /** The seconds that are left. */
  readonly left: () => number;
  /** Waits for work as long as there is time. */
  readonly within: (work: Promise<unknown>) => Promise<void>;
}

const MILLISECONDS = 1000;

/** So many seconds from now on. */
export const timeLimit = (seconds: number): Limit => {
  // A clock that goes on where the day was set.
  const end = performance.now() + seconds * MILLISECONDS;
  const late = (): Error => refusal(`It took longer than ${seconds} s; nothing was written. Give it more with --limit.`, EXIT.tooLong);
  const check = (): void => {
    if (performance.now() > end) throw late();
  };
  return {
    check,
    left: () => (end - performance.now()) / MILLISECONDS,
    within: async (work) => {
      check();
      let ends: NodeJS.Timeout | undefined;
      const over = new Promise<never>((_, reject) => {
        ends = setTimeout(() => reject(late()), end - performance.now());
      });
      try {
        await Promise.race([work, over]);
      } finally {
        clearTimeout(ends);
      }
    },
  };
};
