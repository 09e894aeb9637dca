import { element } from "./element";

/** Hands a file to the browser to save. */
export const savedFile = (name: string, content: string | Uint8Array, type: string): void => {
  const link = element(document, "a");
  link.href = URL.createObjectURL(new Blob([typeof content === "string" ? content : new Uint8Array(content)], { type }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};
