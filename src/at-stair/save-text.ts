import { part } from "./parts";

/** Signs that a file's name may not have on one system or another. */
const NOT_IN_NAMES = /[\\/:*?"<>|]+/g;

/** Hands a text to the browser to save as a file. */
export const saveText = (name: string, text: string): void => {
  const link = part("a", "");
  link.href = URL.createObjectURL(new Blob([text], { type: "text/plain" }));
  link.download = name.replace(NOT_IN_NAMES, " ");
  link.click();
  URL.revokeObjectURL(link.href);
};
