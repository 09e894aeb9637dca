/**
 * What a search may still spend, in steps of its inner loops: the same on every host and every day, so that a plan depends on
 * nothing but the job.
 */
export interface Effort {
  left: number;
}

export const isSpent = (effort: Effort): boolean => effort.left <= 0;

/** Does the work with a share of the effort, and takes off what it used. */
export const withShare = <T>(effort: Effort, most: number, work: (share: Effort) => T): T => {
  const granted = Math.min(effort.left, most);
  const share = { left: granted };
  const result = work(share);
  effort.left -= granted - share.left;
  return result;
};
