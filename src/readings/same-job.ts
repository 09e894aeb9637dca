import { wordKey } from "../solver/word-key";

/** Whether two names are of one job: a message curls quotation marks and changes spaces. */
export const isSameJob = (one: string, other: string): boolean => wordKey(one) === wordKey(other);
