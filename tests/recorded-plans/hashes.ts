import { createHash } from "node:crypto";

/** One plan as text: what each function answers, as JSON, and its SHA-256. */
export const hashOf = (answers: readonly unknown[]): string => createHash("sha256").update(JSON.stringify(answers)).digest("hex");
