import { element } from "../pane/element";

/** Hands a file to the browser to save. */
export const savedFile = (name: string, text: string, type: string): void => {
  const link = element(document, "a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
