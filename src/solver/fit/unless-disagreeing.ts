import type { Act, AsRead } from "./acts";
import { saysDisagreeing } from "./closure-notes";

interface Noted {
  readonly note: string;
  readonly closure?: number;
}

/**
 * The acts of a fit; where its readings disagree the one to read again, as whatever is doubtful may be any of them: nothing is marked, so
 * that nothing is sawn.
 */
export const unlessDisagreeing = (
  { note, closure }: Noted, acts: readonly Act[],
): { readonly acts: readonly Act[]; readonly asRead?: AsRead } =>
  saysDisagreeing(note)
    ? { acts: [{ kind: "read again", note }], asRead: { acts, ...(closure === undefined ? {} : { closure }) } }
    : { acts };
