/**
 * What two spellings of an item or a unit share: letters, digits and + alone, without regard to case. A mark on its own, such as ' for
 * feet, stands for itself.
 */
export const itemKey = (name: string | number): string => {
  const text = String(name).normalize("NFC").trim().toLowerCase();
  return text.replace(/[^\p{L}\p{N}+]/gu, "") || text;
};
