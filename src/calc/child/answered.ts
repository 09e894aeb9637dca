/** A cell as it goes over the pipe: an empty one is null, an error its code with the sentence. */
export type SentCell = string | number | boolean | null | { readonly error: string; readonly says: string };

export type Answered = { readonly value: SentCell | readonly (readonly SentCell[])[] } | { readonly error: string; readonly says: string };

export type WorksheetFunction = (...cells: readonly unknown[]) => unknown;

const isError = (cell: unknown): cell is { readonly code: string; readonly message: string } =>
  typeof cell === "object" && cell !== null && "code" in cell && "message" in cell;

const sent = (cell: unknown): SentCell => {
  if (isError(cell)) return { error: cell.code, says: cell.message };
  return typeof cell === "string" || typeof cell === "number" || typeof cell === "boolean" ? cell : null;
};

/** What a function answers to cells as Calc gives them: an argument left out is null. */
export const answered = (solve: WorksheetFunction, given: readonly unknown[]): Answered => {
  try {
    const value = solve(...given);
    return { value: Array.isArray(value) ? (value as unknown[][]).map((row) => row.map(sent)) : sent(value) };
  } catch (error) {
    if (isError(error)) return { error: error.code, says: error.message };
    return { error: "#VALUE!", says: error instanceof Error ? error.message : String(error) };
  }
};
