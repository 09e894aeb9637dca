import path from "node:path";

/** What is asked for on the command line. */
export interface Options {
  readonly folder?: string;
  /** Carpenter jobs. */
  readonly jobs: number;
  readonly isQuick: boolean;
}

const CARPENTER_JOBS = 500;
const QUICK_JOBS = 20;

/** `[folder] [--jobs N] [--quick]`; the folder as seen from where the command was typed. */
export const optionsOf = (words: readonly string[], from: string): Options => {
  let folder: string | undefined;
  let jobs: number | undefined;
  let isQuick = false;
  const left = [...words];
  for (let word = left.shift(); word !== undefined; word = left.shift()) {
    if (word === "--quick") isQuick = true;
    else if (word === "--jobs") {
      const count = left.shift() ?? "";
      if (!/^[1-9]\d*$/.test(count)) throw new Error(`--jobs wants a whole number from 1, not "${count}"`);
      jobs = Number(count);
    } else if (word.startsWith("-") || folder !== undefined)
      throw new Error(`"${word}" is not understood; write: npm run bench:yield -- [folder] [--jobs N] [--quick]`);
    else folder = path.resolve(from, word);
  }
  return { jobs: jobs ?? (isQuick ? QUICK_JOBS : CARPENTER_JOBS), isQuick, ...(folder === undefined ? {} : { folder }) };
};
