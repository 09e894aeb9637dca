import type { Cell } from "./job";

const PLAIN_NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)$/;

/** What stands in a cell when a text is typed into it: a plain number becomes a number, everything else stays as typed. */
export const typedCell = (text: string): Cell => {
  const typed = text.trim();
  return PLAIN_NUMBER.test(typed) ? Number(typed) : typed;
};
