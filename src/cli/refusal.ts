import { EXIT } from "./exit-codes";

const NAME = "Refusal";

/** An end of the command in one sentence, which says what would do. */
export const refusal = (sentence: string, code: number = EXIT.refused): Error =>
  Object.assign(new Error(sentence), { name: NAME, code });

export const isRefusal = (error: unknown): error is Error & { readonly code: number } => error instanceof Error && error.name === NAME;
