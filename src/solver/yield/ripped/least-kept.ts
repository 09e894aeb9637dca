import { Exact } from "../../length/exact";
import type { Length } from "../../length/length";
import type { RippingJob } from "./ripping-job";

/** The narrowest width wanted: less is no use to keep unless it is asked for. */
const narrowest = ({ pieces }: Pick<RippingJob, "pieces">): Length =>
  pieces.reduce<Length | undefined>((least, { width }) =>
    width !== undefined && (least === undefined || width.lt(least)) ? width : least, undefined) ?? new Exact(0);

/** The least of a board that is worth keeping; undefined where nothing is said of it. */
export const leastKept = (job: Pick<RippingJob, "keep" | "pieces">): { readonly length: Length; readonly width: Length } | undefined =>
  job.keep === undefined ? undefined : { length: job.keep.length, width: job.keep.width ?? narrowest(job) };
